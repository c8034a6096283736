//! The browser's door: the engine behind plain functions that any WebAssembly host can call.
//!
//! Entry point: [`Door`]. It takes texts and gives texts (JSON), so that it is the same code natively and in the browser; a test
//! compares the two to the last bit. The exported functions pass texts through one buffer:
//!
//! 1. `reserve(length)` makes room for a question of so many bytes and returns where it starts; the host writes it there.
//! 2. `shelf()`, once, takes colourants and bottles; `foresee()` and the others answer a question. They return 1, or 0 where the
//!    answer is an error `{"error": {"field", "why"}}`.
//! 3. `answer()` and `answer_length()` tell where the answer lies.

use crate::foresee::{
    Answer, Likely, Moment, Ranking, Request, RequestError, Survey, SurveyRequest, Task, UnderLight,
};
use crate::pigment::Shelf;
use crate::search::Search;
use serde::{Deserialize, Serialize};
use std::sync::{Mutex, PoisonError};

/// What a host talks to: a shelf, and questions about it.
#[derive(Debug, Default)]
pub struct Door {
    shelf: Shelf,
    /// The last search on this shelf: a page asks for the same list of mixes in the next skin.
    searched: Mutex<Option<Search>>,
}

/// Why there is no answer.
#[derive(Serialize)]
struct Refusal<'e> {
    error: &'e RequestError,
}

impl Door {
    /// Takes the colourants and bottles that questions are about: a [`Shelf`] in JSON. Answers with the number of bottles.
    ///
    /// # Errors
    /// A refusal in JSON when the text is not a shelf; the shelf before stays.
    pub fn shelf(&mut self, text: &str) -> Result<String, String> {
        let shelf: Shelf = read(text)?;
        if let Some(bottle) = shelf.bottles.iter().find(|bottle| {
            bottle.recipe.iter().any(|&(place, amount)| {
                place >= shelf.colourants.len() || !amount.is_finite() || amount < 0.0
            })
        }) {
            let why = "its recipe names a colourant that is not there, or an amount that is none";
            return Err(refusal(&RequestError {
                field: format!("bottles.{}", bottle.id),
                why: why.to_owned(),
            }));
        }
        self.shelf = shelf;
        self.searched = Mutex::default();
        Ok(self.shelf.bottles.len().to_string())
    }

    /// What `healedhue foresee --json` answers to the same request.
    ///
    /// # Errors
    /// A refusal in JSON when the request is not understood.
    pub fn foresee(&self, text: &str) -> Result<String, String> {
        Ok(written(&Answer::of(&self.shelf, &self.task(text)?)))
    }

    /// What `healedhue foresee --timeline --json` answers to the same request.
    ///
    /// # Errors
    /// As [`Door::foresee`].
    pub fn timeline(&self, text: &str) -> Result<String, String> {
        Ok(written(&Moment::all(&self.shelf, &self.task(text)?)))
    }

    /// What `healedhue foresee --lights --json` answers to the same request.
    ///
    /// # Errors
    /// As [`Door::foresee`].
    pub fn lights(&self, text: &str) -> Result<String, String> {
        Ok(written(&UnderLight::all(&self.shelf, &self.task(text)?)))
    }

    /// A [`Survey`]: on the day, healed, and years later, under every light, for a [`SurveyRequest`].
    ///
    /// # Errors
    /// As [`Door::foresee`].
    pub fn survey(&self, text: &str) -> Result<String, String> {
        let asked = SurveyRequest::from_json(text).map_err(|error| refusal(&error))?;
        let goal = asked.goal().map_err(|error| refusal(&error))?;
        let case = Request { worlds: 0, search: None, ..asked.case };
        let task = case.resolve(&self.shelf).map_err(|error| refusal(&error))?;
        Ok(written(&Survey::of(&self.shelf, &task, goal)))
    }

    /// The region of likely outcomes with its outlines ([`Likely`]) for a request; `null` where it asks for no worlds.
    ///
    /// # Errors
    /// As [`Door::foresee`].
    pub fn likely(&self, text: &str) -> Result<String, String> {
        Ok(written(&Likely::of(&self.shelf, &self.task(text)?)))
    }

    /// The [`Ranking`] of every mix, for a request with a search.
    ///
    /// # Errors
    /// As [`Door::foresee`]; also where there is no search.
    pub fn ranking(&self, text: &str) -> Result<String, String> {
        let request = Request::from_json(text).map_err(|error| refusal(&error))?;
        let case = Request { worlds: 0, ..request };
        let mut searched = self.searched.lock().unwrap_or_else(PoisonError::into_inner);
        let task = case.resolve_after(searched.as_ref(), &self.shelf).map_err(|error| refusal(&error))?;
        searched.clone_from(&task.search);
        drop(searched);
        Ranking::of(&self.shelf, &task).map(|ranking| written(&ranking)).map_err(|error| refusal(&error))
    }

    fn task(&self, text: &str) -> Result<Task, String> {
        Request::from_json(text)
            .and_then(|request| request.resolve(&self.shelf))
            .map_err(|error| refusal(&error))
    }
}

fn read<'t, T: Deserialize<'t>>(text: &'t str) -> Result<T, String> {
    serde_json::from_str(text)
        .map_err(|error| refusal(&RequestError { field: "shelf".to_owned(), why: error.to_string() }))
}

fn refusal(error: &RequestError) -> String {
    written(&Refusal { error })
}

/// JSON of something that always has one.
fn written(answer: &impl Serialize) -> String {
    serde_json::to_string(answer)
        .unwrap_or_else(|error| format!("{{\"error\":{{\"field\":\"answer\",\"why\":\"{error}\"}}}}"))
}

// The browser's practice is a module of its own, with a door of its own.
#[cfg(all(target_arch = "wasm32", not(feature = "practice")))]
#[allow(unsafe_code)] // Exported names only; nothing here reads or writes through a pointer.
mod exports {
    use super::Door;
    use crate::desk::Desk;
    use std::sync::{LazyLock, Mutex, MutexGuard, PoisonError};

    fn desk() -> MutexGuard<'static, Desk<Door>> {
        static DESK: LazyLock<Mutex<Desk<Door>>> = LazyLock::new(|| Mutex::new(Desk::new(Door::default())));
        DESK.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn ask(how: impl FnOnce(&mut Door, &str) -> Result<String, String>) -> u32 {
        desk().ask(how)
    }

    #[unsafe(no_mangle)]
    extern "C" fn reserve(length: usize) -> *mut u8 {
        desk().reserve(length)
    }

    #[unsafe(no_mangle)]
    extern "C" fn shelf() -> u32 {
        ask(|door, text| door.shelf(text))
    }

    #[unsafe(no_mangle)]
    extern "C" fn foresee() -> u32 {
        ask(|door, text| door.foresee(text))
    }

    #[unsafe(no_mangle)]
    extern "C" fn timeline() -> u32 {
        ask(|door, text| door.timeline(text))
    }

    #[unsafe(no_mangle)]
    extern "C" fn lights() -> u32 {
        ask(|door, text| door.lights(text))
    }

    #[unsafe(no_mangle)]
    extern "C" fn survey() -> u32 {
        ask(|door, text| door.survey(text))
    }

    #[unsafe(no_mangle)]
    extern "C" fn likely() -> u32 {
        ask(|door, text| door.likely(text))
    }

    #[unsafe(no_mangle)]
    extern "C" fn ranking() -> u32 {
        ask(|door, text| door.ranking(text))
    }

    #[unsafe(no_mangle)]
    extern "C" fn answer() -> *const u8 {
        desk().answer().as_ptr()
    }

    #[unsafe(no_mangle)]
    extern "C" fn answer_length() -> usize {
        desk().answer().len()
    }
}
