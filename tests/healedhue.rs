//! What the whole program promises, one module a feature.

mod colour;
mod demo;
mod exercises;
mod loading;
mod optics;
mod pigment;
mod program;
mod readme;
mod site;
mod skin;
mod snapshots;
mod trade;
