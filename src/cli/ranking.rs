//! What a search found, for the terminal.

use super::strip::around;
use super::terminal::{Painter, Row, axes, flowed, lab_in_pieces, wrapped};
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
    let beside = around(task, task.light).unwrap_or(bare.srgb);
    let row = |label: &str, tried: &Tried| {
        let seen = Appearance::of(trial.with(&tried.paint), task.light);
        Row {
            label: label.to_owned(),
            beside,
            seen: seen.srgb,
            said: lab_in_pieces(&seen),
            words: format!("ΔE00 {:.1}, {}", tried.error, shelf.mix_in_words(&tried.mix)),
        }
    };
    let goal = found.goal;
    let [l, a, b] = axes(goal.lab);
    let heading = "searched for";
    let searched = [format!("{heading} {l}"), a, format!("{b} within ΔE00 {}", goal.tolerance)];
    let mut text = flowed(&searched, 0).replacen(heading, &painter.strong(heading), 1) + "\n";
    let ties = found.near_ties();
    let shown = ties.iter().take(SHOWN).map(|tie| row("as near to the eye", tie.tried));
    let rows: Vec<Row> = std::iter::once(row("best", found.best())).chain(shown).collect();
    text += &painter.rows(&rows);
    if ties.len() > SHOWN {
        let more = ties.len() - SHOWN;
        let more = format!("and {more} more that an eye cannot rank below the best (--json has all)");
        text += &(wrapped(&more, 2) + "\n");
    }
    text + &wrapped(&format!("{}.", SearchAnswer::of(shelf, found, task.site).words), 2) + "\n"
}
