//! What a search found, for the terminal.

use super::terminal::{Painter, axes, lab_in_words, wrapped};
use crate::foresee::{SearchAnswer, Task};
use crate::healing::Appearance;
use crate::pigment::Shelf;
use crate::search::{Found, Tried};

/// Near-ties shown; `--json` has all of them.
const SHOWN: usize = 8;

/// The best, what cannot be told from it, and all in words.
pub(super) fn ranking(shelf: &Shelf, task: &Task, found: &Found, painter: Painter) -> String {
    let scene = task.scene(shelf, task.months, &task.upkeep);
    let trial = scene.trial(&task.placement);
    let bare = Appearance::of(scene.bare(), task.light);
    let line = |label: &str, tried: &Tried| {
        let seen = Appearance::of(trial.with(&tried.paint), task.light);
        format!(
            "  {label:18} {}{}  ΔE00 {:.1}, {}\n",
            painter.swatch(bare.srgb, seen.srgb),
            lab_in_words(&seen),
            tried.error,
            shelf.mix_in_words(&tried.mix)
        )
    };
    let goal = found.goal;
    let mut text = format!(
        "{} {} within ΔE00 {}\n",
        painter.strong("searched for"),
        axes(goal.lab).join("  "),
        goal.tolerance
    );
    text += &line("best", found.best());
    let ties = found.near_ties();
    for tie in ties.iter().take(SHOWN) {
        text += &line("as near to the eye", tie.tried);
    }
    if ties.len() > SHOWN {
        text += &format!(
            "  and {} more that an eye cannot rank below the best (--json has all)\n",
            ties.len() - SHOWN
        );
    }
    text + &wrapped(&format!("{}.", SearchAnswer::of(shelf, found).words), 2) + "\n"
}
