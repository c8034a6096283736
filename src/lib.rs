//! healedhue: a course compiler and quiz engine for academies of cosmetic tattooing.
//!
//! An academy writes lessons, clients and drills in Markdown and YAML; healedhue makes randomised exercises whose answers a
//! physical model of pigment in skin proves, marks every answer by the colour it would have healed to, and renders a study
//! site and worksheets.
//!
//! ```text
//!  course files ──course──▶ Course ──▶ diagnostics
//!                             │
//!                drill + seed ▼
//!  colour ─ optics ─ skin ─ pigment ─ healing ─ search ─ foresee ──▶ exercise (generate, prove, mark)
//!  └─────────────── the engine ────────────────────────┘         │
//!                                                              ├──▶ practice (in a browser)
//!                                                              ├──▶ assess (papers, slips, marks, mark book)
//!                                                              ├──▶ render (site, worksheets, papers)
//!                                                              └──▶ cli (terminal)
//! ```
//!
//! The physics knows nothing of courses, the teaching knows nothing of HTML, and the faces decide nothing.

#[cfg(feature = "practice")]
pub mod assess;
#[cfg(feature = "program")]
pub mod cli;
pub mod colour;
#[cfg(feature = "practice")]
pub mod course;
#[cfg(target_arch = "wasm32")]
mod desk;
#[cfg(feature = "practice")]
pub mod exercise;
#[cfg(feature = "practice")]
pub mod figure;
pub mod foresee;
#[cfg(feature = "program")]
mod handed;
pub mod healing;
mod json;
#[cfg(feature = "practice")]
pub mod language;
pub mod optics;
mod parallel;
pub mod pigment;
#[cfg(feature = "practice")]
pub mod practice;
pub mod quantity;
#[cfg(feature = "program")]
pub mod render;
pub mod search;
pub mod skin;
pub mod wasm;

pub use parallel::Cores;
