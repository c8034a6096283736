//! Foreseeing in JSON: what the terminal's `foresee` and the browser's engine are asked, and what they answer.
//!
//! Entry points: [`Request`] is what is written; [`Request::resolve`] checks it against a shelf and gives a [`Task`];
//! [`Answer::of`] solves that; [`Moment::all`] gives its course over time, [`UnderLight::all`] its look under every
//! light. [`Survey::of`] looks at many times and lights at once, [`Likely::of`] and [`Ranking::of`] answer a page that works with
//! several engines side by side. Both doors use the same code, so that they give the same numbers.

mod answer;
mod error;
mod lights;
mod likely;
mod outcome;
mod ranking;
mod request;
mod search;
mod skin;
mod survey;
mod task;
mod timeline;

pub use answer::Answer;
pub use error::RequestError;
pub use lights::UnderLight;
pub use likely::Likely;
pub use ranking::{Own, Ranking};
pub use request::{Existing, Request, TouchUpRequest};
pub use search::{SearchAnswer, SearchRequest, TriedAnswer};
pub use skin::SkinRequest;
pub use survey::{GoalRequest, SURVEY_MONTHS, Seen, Shown, Survey, SurveyGoal, SurveyMoment, SurveyRequest};
pub use task::Task;
pub use timeline::{Event, Moment};
