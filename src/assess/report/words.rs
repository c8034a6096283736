//! What a report says in sentences: what stands out, what limits it, and why to practise something.

use super::input::Checked;
use super::people::{PersonSkill, Standing};
use super::{ItemKind, PaperEntry, Report};
use crate::assess::items::Unreliable;
use crate::course::Course;
use crate::language::Language;
use crate::say;
use std::collections::BTreeSet;

/// People below which the statistics of a paper are a first look: a correlation of 0.3 then still has a 95% interval that
/// holds 0 (1.96/√n). Common practice, no single source.
const FEW_PEOPLE: usize = 40;

/// A share in whole percent.
fn percent(language: &Language, share: f64) -> String {
    say!(language, "report-percent", number = language.decimal(share * 100.0, 0))
}

/// Why a coefficient of reliability is missing, in words.
pub fn unreliable(language: &Language, why: Unreliable) -> String {
    match why {
        Unreliable::Repeats => say!(language, "report-unreliable-repeats"),
        Unreliable::FewQuestions => say!(language, "report-unreliable-few-questions"),
        Unreliable::FewPeople { items, people } => {
            say!(language, "report-unreliable-few-people", items = items, people = people)
        }
        Unreliable::SameScore => say!(language, "report-unreliable-same-score"),
    }
}

/// What limits a report.
pub(super) fn notes(checked: &Checked, course: &Course) -> Vec<String> {
    let language = &course.language;
    let cohort = checked.cohort;
    let mut notes = Vec::new();
    if cohort.sheets.is_empty() {
        return vec![say!(language, "report-note-empty")];
    }
    let people: BTreeSet<&str> = cohort.sheets.iter().map(|sheet| sheet.person.as_str()).collect();
    if people.len() == 1 {
        notes.push(say!(language, "report-note-alone"));
    } else if people.len() < FEW_PEOPLE {
        notes.push(say!(language, "report-note-few", people = people.len(), few = FEW_PEOPLE));
    }
    let papers = cohort.sheets.iter().filter(|sheet| !sheet.practice).count();
    let sat: BTreeSet<&str> =
        cohort.sheets.iter().filter(|sheet| !sheet.practice).map(|sheet| sheet.person.as_str()).collect();
    if papers > sat.len() {
        notes.push(say!(language, "report-note-again"));
    }
    if papers < cohort.sheets.len() {
        notes.push(say!(language, "report-note-sets", count = cohort.sheets.len() - papers));
    }
    let versions: BTreeSet<&str> =
        cohort.sheets.iter().map(|sheet| sheet.paper.course.as_str()).filter(|v| !v.is_empty()).collect();
    if versions.len() > 1 {
        notes.push(say!(language, "report-note-versions", count = versions.len()));
    }
    if versions.iter().any(|version| *version != course.version) {
        notes.push(say!(language, "report-note-changed"));
    }
    let empty = cohort.sheets.iter().filter(|sheet| sheet.answers.is_empty()).count();
    if empty > 0 {
        notes.push(say!(language, "report-note-no-answer", count = empty));
    }
    notes
}

/// What stands out.
pub(super) fn summary(report: &Report, language: &Language) -> Vec<String> {
    let mut summary: Vec<String> = report.papers.iter().map(|each| paper(each, language)).collect();
    if report.skills.iter().all(|skill| skill.mean.mean == 1.0) {
        if !report.skills.is_empty() {
            summary.push(say!(language, "report-all-right"));
        }
    } else if let Some(weakest) = report.skills.first() {
        let mean = &weakest.mean;
        summary.push(say!(
            language,
            "report-weakest",
            skill = &weakest.name,
            share = percent(language, mean.mean),
            answers = mean.answers,
            low = percent(language, mean.interval.low),
            high = percent(language, mean.interval.high)
        ));
    }
    let out: Vec<_> = report
        .misconceptions
        .iter()
        .filter_map(|entry| Some((entry, entry.count.as_ref().filter(|count| count.stands_out)?)))
        .collect();
    if let Some((entry, count)) = out.first() {
        let mut text = say!(
            language,
            "report-widespread",
            belief = entry.belief.trim_end_matches('.'),
            share = percent(language, count.share),
            guessing = percent(language, count.by_guessing)
        );
        if out.len() > 1 {
            text = format!("{text} {}", say!(language, "report-more-stand-out", count = out.len() - 1));
        }
        summary.push(text);
    } else if !report.skills.is_empty() {
        summary.push(say!(language, "report-none-widespread"));
    }
    let revise = |kind| report.items.iter().filter(|i| i.kind == kind && !i.revise.is_empty()).count();
    match (revise(ItemKind::Drill), revise(ItemKind::Question)) {
        (0, 0) if report.items.iter().any(|item| item.limits.is_empty()) => {
            summary.push(say!(language, "report-again-nothing"));
        }
        (0, 0) if report.items.is_empty() => {}
        (0, 0) => summary.push(say!(language, "report-again-too-few")),
        (drills, 0) => summary.push(say!(language, "report-again-drills", drills = drills)),
        (0, questions) => summary.push(say!(language, "report-again-questions", questions = questions)),
        (drills, questions) => {
            summary.push(say!(language, "report-again-both", drills = drills, questions = questions));
        }
    }
    summary
}

/// A paper in a sentence.
fn paper(paper: &PaperEntry, language: &Language) -> String {
    let sheets = say!(language, "report-paper-sheets", blueprint = &paper.title, count = paper.sheets);
    let mut marks = vec![sheets];
    if let Some(mean) = paper.mean {
        marks.push(say!(language, "report-paper-mean", mean = language.decimal(mean, 0)));
    }
    let PaperEntry { passed, decided, close, .. } = *paper;
    if decided > 0 && close > 0 {
        marks.push(say!(
            language,
            "report-paper-passed-close",
            passed = passed,
            decided = decided,
            close = close
        ));
    } else if decided > 0 {
        marks.push(say!(language, "report-paper-passed", passed = passed, decided = decided));
    }
    let reliability = &paper.reliability;
    let sure = match (reliability.alpha, reliability.why_not) {
        (Some(alpha), _) => Some(say!(
            language,
            "report-paper-alpha",
            alpha = language.decimal(alpha.value, 2),
            error = language.decimal(alpha.standard_error, 1),
            items = reliability.items
        )),
        (None, Some(why)) => Some(unreliable(language, why)),
        (None, None) => None,
    };
    let parts: Vec<String> = [marks.join(", ")].into_iter().chain(sure).collect();
    parts.join("; ") + "."
}

/// Why to practise a skill.
pub(super) fn why(skill: &PersonSkill, language: &Language) -> String {
    let mean = &skill.mean;
    let id = match skill.standing {
        Some(Standing::Below) => "report-why-below",
        Some(Standing::Above) => "report-why-above",
        Some(Standing::Level) | None => "report-why",
    };
    say!(
        language,
        id,
        share = percent(language, mean.mean),
        answers = mean.answers,
        low = percent(language, mean.interval.low),
        high = percent(language, mean.interval.high),
        group = percent(language, skill.cohort)
    )
}

/// What to say to somebody who lost no credit.
pub(super) fn nothing_next(answers: usize, language: &Language) -> String {
    match answers {
        0 => say!(language, "report-next-no-answer"),
        1 => say!(language, "report-next-one-right"),
        _ => say!(language, "report-next-all-right", answers = answers),
    }
}
