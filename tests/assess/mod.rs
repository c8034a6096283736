//! Assessment: statistics of papers against independent packages, small examples by hand, and what must hold for all answers.

mod items;
mod knowledge;
mod reference;
mod standard;
