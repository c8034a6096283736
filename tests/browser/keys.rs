//! Keys as they are pressed: what a page is told of each.

use serde_json::{Value, json};

/// A key with its name, its place on the board, its number, and what it writes.
#[derive(Clone, Copy)]
pub struct Key {
    name: &'static str,
    code: &'static str,
    number: u32,
    text: &'static str,
}

const fn key(name: &'static str, code: &'static str, number: u32, text: &'static str) -> Key {
    Key { name, code, number, text }
}

pub const TAB: Key = key("Tab", "Tab", 9, "");
pub const ENTER: Key = key("Enter", "Enter", 13, "\r");
pub const ESCAPE: Key = key("Escape", "Escape", 27, "");
pub const SPACE: Key = key(" ", "Space", 32, " ");
pub const END: Key = key("End", "End", 35, "");
pub const RIGHT: Key = key("ArrowRight", "ArrowRight", 39, "");
pub const DOWN: Key = key("ArrowDown", "ArrowDown", 40, "");

impl Key {
    /// The events of one press.
    pub fn events(self) -> [Value; 2] {
        let event = |kind: &str, text: &str| {
            json!({
                "type": kind, "key": self.name, "code": self.code, "windowsVirtualKeyCode": self.number, "text": text,
            })
        };
        [event(if self.text.is_empty() { "rawKeyDown" } else { "keyDown" }, self.text), event("keyUp", "")]
    }
}
