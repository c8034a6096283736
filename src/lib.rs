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
//!                                                              ├──▶ assess (papers, slips, marks, mark book)
//!                                                              ├──▶ render (site, worksheets, papers)
//!                                                              └──▶ cli (terminal)
//! ```
//!
//! The physics knows nothing of courses, the teaching knows nothing of HTML, and the faces decide nothing.

#[cfg(feature = "program")]
pub mod assess;
#[cfg(feature = "program")]
pub mod cli;
pub mod colour;
#[cfg(feature = "program")]
pub mod course;
#[cfg(feature = "program")]
pub mod exercise;
#[cfg(feature = "program")]
pub mod figure;
pub mod foresee;
pub mod healing;
pub mod optics;
mod parallel;
pub mod pigment;
pub mod quantity;
#[cfg(feature = "program")]
pub mod render;
pub mod search;
pub mod skin;
pub mod wasm;

pub use parallel::Cores;
