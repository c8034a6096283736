//! The study site and the worksheets: what a built site holds and what building one may touch.

mod fixture;
mod html;

mod escaping;
mod folder;
mod fragments;
mod links;
mod pictures;
mod sheets;
mod teaching;

pub use fixture::files;
