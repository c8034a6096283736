//! Assessment: statistics of papers against independent packages, small examples by hand, and what must hold for all answers.

mod diagnosis;
mod items;
mod knowledge;
mod reference;
mod session;
mod standard;
