//! The page of one apprentice, and the page of everybody.

use super::super::RenderError;
use super::super::output::SiteFile;
use super::super::plan::href;
use super::frame::Frame;
use super::plot::Range;
use super::said::{mark_in_words, number, percent, range};
use super::shown::shown;
use super::{EVERYBODY, Pages};
use crate::assess::report::{MisconceptionEntry, PersonEntry, PersonSkill, Reread, SheetEntry, Standing};
use crate::assess::standard::{Certainty, Decision};
use crate::course::told_by_case;
use crate::language::Language;
use crate::say;
use serde::Serialize;
use std::collections::BTreeSet;

#[derive(Serialize)]
struct PersonPage<'p> {
    frame: Frame<'p>,
    name: String,
    id: String,
    title: String,
    sheets: Vec<SheetView>,
    next: Vec<NextView>,
    nothing_next: Option<String>,
    skills: Vec<SkillView>,
    compared: bool,
    misconceptions: Vec<BeliefView>,
}

#[derive(Serialize)]
struct SheetView {
    kind: String,
    title: String,
    attempt: Option<u32>,
    /// Answers, mark and what was decided, in a row.
    result: String,
    /// What each section earned, in a row; empty where a sheet has none.
    sections: String,
}

#[derive(Serialize)]
struct NextView {
    name: String,
    why: String,
    lessons: Vec<LessonView>,
    /// The page of practice with the skill chosen, where it is known where the site lies and a lesson trains it.
    practice: Option<String>,
    /// The command that practises it, where no site is known.
    command: Option<String>,
}

/// A lesson, linked where it is known where the site lies.
#[derive(Serialize)]
pub(super) struct LessonView {
    title: String,
    href: Option<String>,
}

#[derive(Serialize)]
struct SkillView {
    name: String,
    mean: String,
    range: String,
    answers: usize,
    standing: String,
    plot: Range,
}

#[derive(Serialize)]
struct BeliefView {
    belief: String,
    truth: String,
    lesson: Option<LessonView>,
    seen: String,
    stands_out: bool,
}

#[derive(Serialize)]
struct EverybodyPage<'p> {
    frame: Frame<'p>,
    title: String,
    people: Vec<NameView>,
}

/// A person in a list.
#[derive(Serialize)]
pub(super) struct NameView {
    name: String,
    id: String,
    href: String,
    mean: String,
    weakest: String,
}

/// Where each person's page lies: by the id where that can name a file everywhere, otherwise by number.
pub(super) fn paths(people: &[PersonEntry]) -> Vec<String> {
    let mut taken = BTreeSet::new();
    people
        .iter()
        .enumerate()
        .map(|(at, person)| {
            let plain = person.id.len() <= 64
                && person.id.bytes().all(|byte| byte.is_ascii_alphanumeric() || b"-_".contains(&byte));
            if plain && taken.insert(person.id.to_ascii_lowercase()) {
                format!("people/id-{}.html", person.id)
            } else {
                format!("people/number-{}.html", at + 1)
            }
        })
        .collect()
}

impl Pages<'_> {
    /// The page of a person.
    pub(super) fn person(&self, person: &PersonEntry, path: &str) -> Result<SiteFile, RenderError> {
        let language = &self.language;
        let name = shown(&person.name);
        let title = match self.report.title.trim() {
            "" => say!(language, "report-next"),
            title => shown(title),
        };
        let context = PersonPage {
            // U+2068 and U+2069 isolate the name's direction, where no element can.
            frame: self.frame_alone(format!("\u{2068}{name}\u{2069}")),
            id: shown(&person.id),
            name,
            title,
            sheets: person
                .sheets
                .iter()
                .map(|sheet| SheetView {
                    kind: if sheet.practice {
                        say!(language, "report-practice")
                    } else {
                        say!(language, "report-paper")
                    },
                    title: shown(&sheet.title),
                    attempt: (sheet.attempt > 1).then_some(sheet.attempt),
                    result: result(language, sheet),
                    sections: sections(language, sheet),
                })
                .collect(),
            next: person
                .next
                .iter()
                .map(|next| NextView {
                    name: next.name.clone(),
                    why: next.why.clone(),
                    lessons: next.lessons.iter().map(|lesson| self.lesson(lesson, 1)).collect(),
                    practice: self
                        .site
                        .filter(|_| !next.lessons.is_empty())
                        .map(|site| site.practice(&next.skill, 1)),
                    command: self
                        .site
                        .is_none()
                        .then(|| format!("healedhue practise --skill {}", next.skill)),
                })
                .collect(),
            nothing_next: person.nothing_next.clone(),
            compared: person.skills.iter().any(|skill| skill.standing.is_some()),
            skills: person.skills.iter().map(|skill| skill_view(language, skill)).collect(),
            misconceptions: person.misconceptions.iter().map(|entry| self.belief(entry)).collect(),
        };
        self.page(path, "report-person.html", context)
    }

    /// Everybody with a link.
    pub(super) fn everybody(&self) -> Result<SiteFile, RenderError> {
        let people = self.report.people.iter().zip(&self.paths);
        let context = EverybodyPage {
            frame: self.frame(EVERYBODY, say!(self.language, "report-everybody")),
            title: shown(&self.report.title),
            people: people.map(|(person, path)| self.name(person, path, EVERYBODY)).collect(),
        };
        self.page(EVERYBODY, "report-people.html", context)
    }

    /// A person in a list on the page at `from`.
    pub(super) fn name(&self, person: &PersonEntry, path: &str, from: &str) -> NameView {
        let language = &self.language;
        NameView {
            name: shown(&person.name),
            id: shown(&person.id),
            href: href(from, path),
            mean: person
                .mean
                .map_or_else(|| say!(language, "report-no-answers"), |mean| percent(language, mean)),
            weakest: person
                .next
                .first()
                .map_or_else(|| say!(language, "report-nothing-first"), |next| next.name.clone()),
        }
    }

    /// A lesson on a page so many folders below the report's.
    pub(super) fn lesson(&self, lesson: &Reread, below: usize) -> LessonView {
        let href = self.site.map(|site| site.lesson(&lesson.path, below));
        LessonView { title: lesson.title.clone(), href }
    }

    fn belief(&self, entry: &MisconceptionEntry) -> BeliefView {
        let language = &self.language;
        let mut seen = Vec::new();
        if let Some(count) = entry.count.as_ref().filter(|count| count.chosen > 0) {
            let guessing = percent(language, count.by_guessing);
            seen.push(match count.offered {
                1 => say!(language, "report-chosen-the-one", guessing = guessing),
                offered => say!(
                    language,
                    "report-chosen-in",
                    chosen = count.chosen,
                    offered = offered,
                    guessing = guessing
                ),
            });
        }
        if entry.freely > 0 {
            seen.push(say!(language, "report-shown-freely", count = entry.freely));
        }
        BeliefView {
            belief: entry.belief.clone(),
            truth: entry.truth.clone(),
            lesson: entry.lesson.as_ref().map(|lesson| self.lesson(lesson, 1)),
            seen: seen.join(" "),
            stands_out: entry.count.as_ref().is_some_and(|count| count.stands_out),
        }
    }
}

/// What came of a sheet.
fn result(language: &Language, sheet: &SheetEntry) -> String {
    let answers = say!(language, "report-answers", count = sheet.answers);
    let mark = sheet.percent.map(|mark| mark_in_words(language, mark));
    let decision = sheet.decision.zip(sheet.pass_mark).map(|(decision, pass_mark)| {
        let (decision, mark) = (decided(language, decision), number(language, pass_mark, 1));
        match sheet.mark_error {
            Some(error) => {
                let error = number(language, error, 1);
                say!(language, "report-decided-with-error", decision = decision, mark = mark, error = error)
            }
            None => say!(language, "report-decided", decision = decision, mark = mark),
        }
    });
    let took =
        sheet.minutes.map(|minutes| say!(language, "report-took", minutes = number(language, minutes, 0)));
    [Some(answers), mark, decision, took].into_iter().flatten().collect::<Vec<_>>().join(", ")
}

/// What the sections of a sheet earned.
fn sections(language: &Language, sheet: &SheetEntry) -> String {
    let cases: Vec<Option<String>> =
        sheet.sections.iter().map(|own| own.section.case.as_deref().map(shown)).collect();
    told_by_case(sheet.sections.iter().zip(&cases).map(|(own, case)| {
        let (title, credit) = (shown(&own.section.title), percent(language, own.credit));
        let earned = say!(language, "report-section-earned", section = title, credit = credit);
        (case.as_deref(), earned)
    }))
}

fn decided(language: &Language, decision: Decision) -> String {
    let id = match (decision.certainty, decision.passed) {
        (Certainty::Clear, true) => "report-decision-clear-passed",
        (Certainty::Clear, false) => "report-decision-clear-failed",
        (Certainty::WithinOneError, true) => "report-decision-close-passed",
        (Certainty::WithinOneError, false) => "report-decision-close-failed",
        (Certainty::Unknown, true) => "report-decision-unknown-passed",
        (Certainty::Unknown, false) => "report-decision-unknown-failed",
    };
    language.say(id, &[])
}

fn skill_view(language: &Language, skill: &PersonSkill) -> SkillView {
    let mean = &skill.mean;
    let group = say!(language, "report-the-group");
    let group = skill.standing.map(|_| (group.as_str(), skill.cohort));
    SkillView {
        name: skill.name.clone(),
        mean: percent(language, mean.mean),
        range: range(language, mean.interval),
        answers: mean.answers,
        standing: match skill.standing {
            Some(Standing::Below) => say!(language, "report-below-group"),
            Some(Standing::Above) => say!(language, "report-above-group"),
            Some(Standing::Level) => say!(language, "report-no-difference"),
            None => String::new(),
        },
        plot: Range::new(language, &say!(language, "report-credit"), mean.mean, mean.interval, group),
    }
}
