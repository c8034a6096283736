//! What the whole program promises, one module a feature.

mod assess;
mod assign;
mod colour;
mod demo;
mod door;
mod exercises;
mod loading;
mod optics;
mod outcome;
mod papers;
mod pigment;
mod practise;
mod program;
mod readme;
mod report;
mod reproof;
mod residuals;
mod search;
mod site;
mod skin;
mod snapshots;
mod survey;
mod time;
mod trade;
