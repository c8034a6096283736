//! What a course covers, in the terminal: a table of gaps, and a full table of everything counted.
//!
//! Entry points: [`gaps`] and [`full`].

use crate::course::coverage::{Coverage, Gap};
use crate::course::{Course, Stands};

/// The gaps, a line each, with the place of what has the gap; one line when there is none.
pub(super) fn gaps(gaps: &[Gap], stands: &Stands) -> String {
    if gaps.is_empty() {
        return "coverage: no gaps\n".to_owned();
    }
    let width = gaps.iter().map(|gap| gap.id.chars().count()).max().unwrap_or(0);
    let lacks = gaps.iter().map(|gap| gap.lacks.chars().count()).max().unwrap_or(0);
    let mut text = format!("coverage: {} gap{}\n", gaps.len(), if gaps.len() == 1 { "" } else { "s" });
    for gap in gaps {
        let place =
            stands.of(gap.kind, &gap.id).map_or_else(String::new, |(file, line, _)| format!("{file}:{line}"));
        let line = format!("  {:13} {:width$}  {:lacks$}  {place}", gap.kind, gap.id, gap.lacks);
        text += line.trim_end();
        text.push('\n');
    }
    text
}

/// Everything that was counted.
pub(super) fn full(course: &Course, coverage: &Coverage) -> String {
    let mut text = format!("{:32} {:>6} {:>9}  families\n", "skill", "drills", "questions");
    for skill in &coverage.skills {
        let families = skill.families.join(", ");
        text += &format!("{:32} {:>6} {:>9}  {families}\n", skill.id, skill.drills, skill.questions);
    }
    text += &format!("\n{:32} {:>6}  treated by\n", "misconception", "drills");
    for one in &coverage.misconceptions {
        let lesson = one.lesson.as_deref().unwrap_or("no lesson");
        text += &format!("{:32} {:>6}  {lesson}\n", one.id, one.drills);
    }
    text += &format!("\n{:32} {:>6} {:>6} {:>11}\n", "lesson", "words", "drills", "readability");
    for lesson in &coverage.lessons {
        let lix = lesson.reading.lix.map_or_else(|| "-".to_owned(), |lix| format!("{lix:.0}"));
        text += &format!("{:32} {:>6} {:>6} {lix:>11}\n", lesson.id, lesson.reading.words, lesson.drills);
    }
    text += &format!("\n{:32} {:>6} {:>9}\n", "term", "pages", "questions");
    for (term, counted) in course.terms.iter().zip(&coverage.terms) {
        text += &format!("{:32} {:>6} {:>9}\n", term.id, counted.pages, counted.questions);
    }
    text
}
