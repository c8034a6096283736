//! Papers, from the blueprint to the mark book.

mod book;
mod cache;
mod cases;
mod fixture;
mod paper;
mod report;
mod slips;
mod walk;
