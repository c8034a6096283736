//! The time of a session: the machine's, or one that stands still but for the minutes that exercises are planned to take.

use crate::assess::knowledge::Seconds;
use std::cell::Cell;
use std::time::{SystemTime, UNIX_EPOCH};

/// A clock.
pub(super) enum Clock {
    /// The machine's.
    Machine,
    /// One that is moved on by hand.
    Set(Cell<Seconds>),
}

impl Clock {
    /// The machine's clock, or one that is set.
    pub fn new(now: Option<Seconds>) -> Self {
        now.map_or(Clock::Machine, |now| Clock::Set(Cell::new(now)))
    }

    /// Seconds since the beginning of 1970.
    pub fn now(&self) -> Seconds {
        match self {
            Clock::Machine => SystemTime::now()
                .duration_since(UNIX_EPOCH)
                .map_or(0, |since| i64::try_from(since.as_secs()).unwrap_or(i64::MAX)),
            Clock::Set(now) => now.get(),
        }
    }

    /// So many minutes have passed; the machine's clock knows that by itself.
    pub fn pass(&self, minutes: f64) {
        if let Clock::Set(now) = self {
            now.set(now.get().saturating_add((minutes * 60.0) as Seconds));
        }
    }
}
