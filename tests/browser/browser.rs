//! The built site in Chromium, as people meet it: on phones and desks, with keys alone, without scripts, from a disk, on paper.
//!
//! Run by `cargo build && cargo test -p healedhue-browser --features browser`. What has to be installed stands in DEVELOPERS.md.

mod axe;
mod bench;
mod chromium;
mod devtools;
mod hostile;
mod keyboard;
mod keys;
mod pages;
mod paper;
mod practice;
mod print;
mod progress;
mod scripts_off;
mod search;
mod server;
mod site;
mod speed;
mod tab;
