//! What the whole program promises, one module a feature.

mod colour;
mod demo;
mod door;
mod exercises;
mod loading;
mod optics;
mod outcome;
mod program;
mod readme;
mod search;
mod residuals;
mod site;
mod skin;
mod snapshots;
mod time;
mod trade;
