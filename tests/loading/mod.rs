//! Loading a course: a small valid course is copied, one thing in it is broken, and what its author is told is compared
//! with a snapshot.

pub mod fixture;

mod bank;
mod calls;
mod drills;
mod files;
mod keys;
mod manifest;
mod names;
mod numbers;
mod pages;
mod papers;
mod property;
mod reports;
mod shelf;
mod summary;
mod teaching;
mod valid;
mod yaml;
