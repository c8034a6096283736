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
//!                                                              ├──▶ render (site, worksheets)
//!                                                              └──▶ cli (terminal)
//! ```
//!
//! The physics knows nothing of courses, the teaching knows nothing of HTML, and the faces decide nothing.

pub mod cli;
pub mod colour;
pub mod course;
pub mod exercise;
pub mod foresee;
pub mod healing;
pub mod optics;
mod parallel;
pub mod pigment;
pub mod quantity;
pub mod render;
pub mod search;
pub mod skin;

pub use parallel::Cores;
