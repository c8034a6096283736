//! Colours that whole drop grids heal to, kept for other draws: they hang on skin, old work, time, depth and load, but not on the goal, and the
//! share that is covered only mixes them with what lies beside. So draws that differ in nothing else solve one grid between them.
//!
//! Entry point: [`healed`]. What is kept is to the bit what would be computed again. A browser's module keeps nothing, to stay small.

#[cfg(feature = "program")]
use super::draw::COVERAGES;
use super::draw::Setting;
use crate::colour::Lab;
use crate::course::Limits;
use crate::healing::{Scene, Work};
use crate::pigment::{Mix, Paint, Shelf};
use crate::skin::Skin;
use std::cell::OnceCell;

/// In which skin, with which old work and when a grid is looked at.
pub(super) struct View<'v> {
    pub skin: &'v Skin,
    pub existing: &'v [Work],
    pub months: f64,
}

/// The colours that all mixes of a drill's grid, in any order, heal to in this view, placed as the setting says. `scene` is the view's, where it is
/// worked out already.
pub(super) fn healed(
    shelf: &Shelf,
    setting: &Setting,
    (limits, mixes): (&Limits, &[(&Mix, &Paint)]),
    view: &View,
    scene: Option<&Scene>,
) -> Vec<Lab> {
    let Setting { client, placement, light, .. } = setting;
    let made = OnceCell::new();
    let worked_out = || Scene::new(shelf, view.skin, client.site, view.existing, view.months);
    let trial = || scene.unwrap_or_else(|| made.get_or_init(worked_out)).trial(placement);
    #[cfg(feature = "program")]
    if let Some(at) = COVERAGES.iter().position(|coverage| *coverage == placement.coverage) {
        let seen = memory::recall(shelf, memory::key(setting, limits, view), || {
            let trial = trial();
            let colours =
                |paint| trial.at_coverages(paint, &COVERAGES).map(|spectrum| light.lab_of(&spectrum));
            mixes.iter().map(|(mix, paint)| ((*mix).clone(), colours(paint))).collect()
        });
        return mixes.iter().map(|(mix, _)| seen[*mix][at]).collect();
    }
    let _ = limits;
    let trial = trial();
    mixes.iter().map(|(_, paint)| light.lab_of(&trial.with(paint))).collect()
}

#[cfg(feature = "program")]
mod memory {
    use super::View;
    use crate::colour::Lab;
    use crate::course::Limits;
    use crate::exercise::draw::{COVERAGES, Setting};
    use crate::pigment::{Mix, Shelf};
    use std::collections::{BTreeMap, HashMap};
    use std::sync::{Arc, Mutex, PoisonError};

    /// Colours of each mix, one for each of [`COVERAGES`].
    pub type Seen = Arc<BTreeMap<Mix, [Lab; COVERAGES.len()]>>;

    /// Grids that are kept for certain; at most twice as many are kept.
    const MOST_YOUNGER: usize = 4096;

    /// Grids of one shelf. When there are too many younger ones, the older ones are forgotten.
    struct Memory {
        shelf: Shelf,
        younger: HashMap<String, Seen>,
        older: HashMap<String, Seen>,
    }

    static MEMORY: Mutex<Option<Memory>> = Mutex::new(None);

    /// All that the colours hang on. Numbers in JSON are the numbers themselves, to the bit.
    pub fn key(setting: &Setting, limits: &Limits, view: &View) -> String {
        let Setting { client, placement, light, .. } = setting;
        let place = (placement.depth_mm, placement.thickness_mm, placement.load);
        let key = (view.skin, client.site, view.existing, view.months, place, light, limits);
        serde_json::to_string(&key).unwrap_or_default()
    }

    /// What is kept under this key, or else what `find` finds, which is then kept.
    pub fn recall(
        shelf: &Shelf,
        key: String,
        find: impl FnOnce() -> BTreeMap<Mix, [Lab; COVERAGES.len()]>,
    ) -> Seen {
        if let Some(seen) = with_memory(shelf, |memory| memory.recall(&key)) {
            return seen;
        }
        let seen = Arc::new(find());
        with_memory(shelf, |memory| memory.keep(key, seen.clone()));
        seen
    }

    fn with_memory<T>(shelf: &Shelf, ask: impl FnOnce(&mut Memory) -> T) -> T {
        // A poisoned lock only means that another proof panicked; what is kept is whole.
        let mut memory = MEMORY.lock().unwrap_or_else(PoisonError::into_inner);
        match &mut *memory {
            Some(memory) if memory.shelf == *shelf => ask(memory),
            // Another course.
            memory => ask(memory.insert(Memory {
                shelf: shelf.clone(),
                younger: HashMap::new(),
                older: HashMap::new(),
            })),
        }
    }

    impl Memory {
        fn recall(&mut self, key: &str) -> Option<Seen> {
            if let Some(seen) = self.younger.get(key) {
                return Some(seen.clone());
            }
            let (key, seen) = self.older.remove_entry(key)?;
            self.keep(key, seen.clone());
            Some(seen)
        }

        fn keep(&mut self, key: String, seen: Seen) {
            if self.younger.len() == MOST_YOUNGER {
                self.older = std::mem::take(&mut self.younger);
            }
            self.younger.insert(key, seen);
        }
    }
}
