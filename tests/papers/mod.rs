//! Papers, from the blueprint to the mark book.

mod book;
mod cache;
mod cases;
mod exports;
mod fixture;
mod german;
mod handing_in;
mod keys;
mod paper;
mod report;
mod slips;
mod walk;

pub use cache::provable;
pub use fixture::small_course;
