//! The study site and the worksheets: what a built site holds and what building one may touch.

pub use fixture::{files, pages};
pub use html::{decoded, tags};

pub mod fixture;
mod html;

mod bench;
mod bottles;
mod clients;
mod display;
mod escaping;
mod folder;
mod fragments;
mod german;
mod glossary;
mod links;
mod pictures;
mod practice;
mod search;
mod sheets;
mod teaching;
mod weight;
mod words;
