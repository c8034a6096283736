//! Foreseeing in JSON: what the terminal's `foresee` and the browser's engine are asked, and what they answer.
//!
//! Entry points: [`Request`] is what is written; [`Request::resolve`] checks it against a shelf and gives a [`Task`];
//! [`Answer::of`] solves that. Both doors use the same code, so that they give the same numbers.

mod answer;
mod error;
mod outcome;
mod request;
mod search;
mod skin;
mod task;

pub use answer::Answer;
pub use error::RequestError;
pub use request::{Existing, Request};
pub use search::{SearchAnswer, SearchRequest, TriedAnswer};
pub use skin::SkinRequest;
pub use task::Task;
