//! What a report says in sentences: what stands out, what limits it, and why to practise something.

use super::input::Checked;
use super::people::{PersonSkill, Standing};
use super::{ItemKind, PaperEntry, Report};
use crate::assess::cohort::Interval;
use crate::course::Course;
use std::collections::BTreeSet;

/// People below which the statistics of a paper are a first look: a correlation of 0.3 then still has a 95% interval that
/// holds 0 (1.96/√n). Common practice, no single source.
const FEW_PEOPLE: usize = 40;

fn percent(share: f64) -> String {
    format!("{:.0}%", share * 100.0)
}

/// "1 sheet", "2 sheets".
fn counted(count: usize, one: &str, many: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { many })
}

fn range(interval: Interval) -> String {
    format!("{} to {}", percent(interval.low), percent(interval.high))
}

/// What limits a report.
pub(super) fn notes(checked: &Checked, course: &Course) -> Vec<String> {
    let cohort = checked.cohort;
    let mut notes = Vec::new();
    if cohort.sheets.is_empty() {
        return vec!["There are no sheets yet: there is nothing to report.".to_owned()];
    }
    let people: BTreeSet<&str> = cohort.sheets.iter().map(|sheet| sheet.person.as_str()).collect();
    if people.len() == 1 {
        notes.push(
            "There is one person only: nobody can be compared, and questions cannot be judged by one answer."
                .to_owned(),
        );
    } else if people.len() < FEW_PEOPLE {
        notes.push(format!(
            "With {} people all statistics of questions are a first look: from about {FEW_PEOPLE} on they begin to hold.",
            people.len()
        ));
    }
    let papers = cohort.sheets.iter().filter(|sheet| !sheet.practice).count();
    let sat: BTreeSet<&str> =
        cohort.sheets.iter().filter(|sheet| !sheet.practice).map(|sheet| sheet.person.as_str()).collect();
    if papers > sat.len() {
        notes.push(
            "Some people handed in more than one sheet. Each counts by itself in the statistics of papers and questions, and all of a \
             person's count together for skills and misconceptions."
                .to_owned(),
        );
    }
    if papers < cohort.sheets.len() {
        notes.push(format!(
            "{} among the sheets: practice counts for skills, misconceptions and what to practise next, and for neither marks nor the \
             statistics of papers and questions, since it was answered at leisure.",
            counted(cohort.sheets.len() - papers, "assigned set is", "assigned sets are")
        ));
    }
    let versions: BTreeSet<&str> =
        cohort.sheets.iter().map(|sheet| sheet.paper.course.as_str()).filter(|v| !v.is_empty()).collect();
    if versions.len() > 1 {
        notes.push(format!(
            "The sheets come from {} versions of the course: an exercise that was changed in between counts as one.",
            versions.len()
        ));
    }
    if versions.iter().any(|version| *version != course.version) {
        notes.push(
            "The course has changed since some papers were made: names, truths and lessons here are those of today.".to_owned(),
        );
    }
    let empty = cohort.sheets.iter().filter(|sheet| sheet.answers.is_empty()).count();
    if empty > 0 {
        let sheets = counted(empty, "sheet has", "sheets have");
        notes.push(format!("{sheets} no answer that counts; nothing follows from that, for or against."));
    }
    notes
}

/// What stands out.
pub(super) fn summary(report: &Report) -> Vec<String> {
    let mut summary: Vec<String> = report.papers.iter().map(paper).collect();
    if report.skills.iter().all(|skill| skill.mean.mean == 1.0) {
        if !report.skills.is_empty() {
            summary.push("Every answer was right to the full: no skill stands out.".to_owned());
        }
    } else if let Some(weakest) = report.skills.first() {
        let mean = &weakest.mean;
        summary.push(format!(
            "Weakest skill: {}, {} of the credit over {} (likely {}).",
            weakest.name,
            percent(mean.mean),
            counted(mean.answers, "answer", "answers"),
            range(mean.interval)
        ));
    }
    let out: Vec<_> = report
        .misconceptions
        .iter()
        .filter_map(|entry| Some((entry, entry.count.as_ref().filter(|count| count.stands_out)?)))
        .collect();
    if let Some((entry, count)) = out.first() {
        let others = match out.len() - 1 {
            0 => String::new(),
            1 => " One more stands out.".to_owned(),
            more => format!(" {more} more stand out."),
        };
        summary.push(format!(
            "Most surely widespread misconception: “{}”, chosen in {} of the answers that offered it (blind guessing: {}).{others}",
            entry.belief.trim_end_matches('.'),
            percent(count.share),
            percent(count.by_guessing)
        ));
    } else if !report.skills.is_empty() {
        summary.push(
            "No misconception is chosen more often than by blind guessing, as far as can be told.".to_owned(),
        );
    }
    let revise = |kind| report.items.iter().filter(|i| i.kind == kind && !i.revise.is_empty()).count();
    let (drills, questions) = (revise(ItemKind::Drill), revise(ItemKind::Question));
    if drills + questions > 0 {
        let parts: Vec<String> = [
            (drills, counted(drills, "drill", "drills")),
            (questions, counted(questions, "question of the bank", "questions of the bank")),
        ]
        .into_iter()
        .filter(|part| part.0 > 0)
        .map(|part| part.1)
        .collect();
        summary.push(format!("To look at again: {}; the reasons stand below.", parts.join(" and ")));
    } else if report.items.iter().any(|item| item.limits.is_empty()) {
        summary.push("No drill and no question needs to be looked at again.".to_owned());
    } else if !report.items.is_empty() {
        summary.push("No drill and no question has enough answers to be judged yet.".to_owned());
    }
    summary
}

/// A paper in a sentence.
fn paper(paper: &PaperEntry) -> String {
    let mut text = format!("{}: {}", paper.blueprint, counted(paper.sheets, "sheet", "sheets"));
    if let Some(mean) = paper.mean {
        text += &format!(", mean mark {mean:.0}%");
    }
    if paper.decided > 0 {
        text += &format!(", {} of {} passed", paper.passed, paper.decided);
        if paper.close > 0 {
            text += &format!(
                " ({} within one standard error of the pass mark)",
                counted(paper.close, "sheet", "sheets")
            );
        }
    }
    let reliability = &paper.reliability;
    match (reliability.alpha, &reliability.why_not) {
        (Some(alpha), _) => {
            text += &format!(
                "; alpha {:.2}, standard error {:.1} of {} questions",
                alpha.value, alpha.standard_error, reliability.items
            );
        }
        (None, Some(why)) => text += &format!("; {why}"),
        (None, None) => {}
    }
    text + "."
}

/// Why to practise a skill.
pub(super) fn why(skill: &PersonSkill) -> String {
    let mean = &skill.mean;
    let mut text = format!(
        "{} of the credit over {}; likely between {} and {}",
        percent(mean.mean),
        counted(mean.answers, "answer", "answers"),
        percent(mean.interval.low),
        percent(mean.interval.high)
    );
    match skill.standing {
        Some(Standing::Below) => text += &format!(", clearly below the group's {}", percent(skill.cohort)),
        Some(Standing::Above) => {
            text +=
                &format!(", above the group's {}, and still the place to gain most", percent(skill.cohort));
        }
        Some(Standing::Level) | None => {}
    }
    text + "."
}

/// What to say to somebody who lost no credit.
pub(super) fn nothing_next(answers: usize) -> String {
    match answers {
        0 => "There is no answer to learn from yet.".to_owned(),
        1 => "The one answer was right to the full. That is too little to advise anything.".to_owned(),
        _ => format!(
            "All {answers} answers were right to the full: nothing here asks for practice. What is not used is forgotten; a short session \
             now and then keeps it."
        ),
    }
}
