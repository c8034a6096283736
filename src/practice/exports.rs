//! The door's functions as a browser's module exports them.
#![allow(unsafe_code)] // Exported names only; nothing here reads or writes through a pointer.

use super::{Practice, read_course};
use crate::desk::Desk;
use std::sync::{LazyLock, Mutex, MutexGuard, PoisonError};

type Door = Option<Practice<'static>>;

fn desk() -> MutexGuard<'static, Desk<Door>> {
    static DESK: LazyLock<Mutex<Desk<Door>>> = LazyLock::new(|| Mutex::new(Desk::new(None)));
    DESK.lock().unwrap_or_else(PoisonError::into_inner)
}

fn ask(how: impl FnOnce(&mut Practice<'static>, &str) -> Result<String, String>) -> u32 {
    desk().ask(|door, text| match door {
        Some(practice) => how(practice, text),
        None => Err(super::ask::refusal("course", "none has been given")),
    })
}

#[unsafe(no_mangle)]
extern "C" fn reserve(length: usize) -> *mut u8 {
    desk().reserve(length)
}

/// Takes a course; it stays in memory as long as the page. Answers with its version.
#[unsafe(no_mangle)]
extern "C" fn course() -> u32 {
    desk().ask(|door, text| {
        let course = Box::leak(Box::new(read_course(text)?));
        *door = Some(Practice::new(course));
        Ok(super::ask::written(&course.version))
    })
}

#[unsafe(no_mangle)]
extern "C" fn overview() -> u32 {
    ask(|practice, text| practice.overview(text))
}

#[unsafe(no_mangle)]
extern "C" fn begin() -> u32 {
    ask(|practice, text| practice.begin(text))
}

#[unsafe(no_mangle)]
extern "C" fn next() -> u32 {
    ask(|practice, text| practice.next(text))
}

#[unsafe(no_mangle)]
extern "C" fn reply() -> u32 {
    ask(|practice, text| practice.answer(text))
}

#[unsafe(no_mangle)]
extern "C" fn summary() -> u32 {
    ask(|practice, text| practice.summary(text))
}

#[unsafe(no_mangle)]
extern "C" fn answer() -> *const u8 {
    desk().answer().as_ptr()
}

#[unsafe(no_mangle)]
extern "C" fn answer_length() -> usize {
    desk().answer().len()
}
