//! The built site in Chromium, as people meet it: on phones and desks, with keys alone, without scripts, from a disk, on paper.
//!
//! Run by `cargo test --features browser --test browser`. What has to be installed stands in DEVELOPERS.md.

#[path = "browser/axe.rs"]
mod axe;
#[path = "browser/bench.rs"]
mod bench;
#[path = "browser/chromium.rs"]
mod chromium;
#[path = "browser/devtools.rs"]
mod devtools;
#[path = "browser/hostile.rs"]
mod hostile;
#[path = "browser/keyboard.rs"]
mod keyboard;
#[path = "browser/keys.rs"]
mod keys;
#[path = "browser/pages.rs"]
mod pages;
#[path = "browser/paper.rs"]
mod paper;
#[path = "browser/practice.rs"]
mod practice;
#[path = "browser/print.rs"]
mod print;
#[path = "browser/progress.rs"]
mod progress;
#[path = "browser/scripts_off.rs"]
mod scripts_off;
#[path = "browser/server.rs"]
mod server;
#[path = "browser/site.rs"]
mod site;
#[path = "browser/speed.rs"]
mod speed;
#[path = "browser/tab.rs"]
mod tab;
