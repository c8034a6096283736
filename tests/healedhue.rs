//! What the whole program promises, one module a feature.

mod colour;
mod demo;
mod exercises;
mod loading;
mod optics;
mod program;
mod readme;
mod residuals;
mod site;
mod skin;
mod snapshots;
mod time;
mod trade;
