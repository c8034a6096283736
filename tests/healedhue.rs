//! What the whole program promises, one module a feature.

mod colour;
mod demo;
mod door;
mod exercises;
mod loading;
mod optics;
mod papers;
mod program;
mod readme;
mod site;
mod skin;
mod snapshots;
mod trade;
