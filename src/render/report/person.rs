//! The page of one apprentice, and the page of everybody.

use super::super::RenderError;
use super::super::figures::{counted, fixed, percent};
use super::super::output::SiteFile;
use super::super::plan::href;
use super::frame::Frame;
use super::plot::Range;
use super::shown::shown;
use super::{EVERYBODY, Pages};
use crate::assess::report::{MisconceptionEntry, PersonEntry, PersonSkill, Reread, Standing};
use serde::Serialize;
use std::collections::BTreeSet;

#[derive(Serialize)]
struct PersonPage {
    frame: Frame,
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
    kind: &'static str,
    blueprint: String,
    attempt: Option<u32>,
    answers: String,
    percent: Option<String>,
    minutes: Option<String>,
    decision: Option<String>,
}

#[derive(Serialize)]
struct NextView {
    name: String,
    why: String,
    lessons: Vec<LessonView>,
    command: String,
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
    standing: &'static str,
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
struct EverybodyPage {
    frame: Frame,
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
        let name = shown(&person.name);
        let title = match self.report.title.trim() {
            "" => "What to practise next".to_owned(),
            title => shown(title),
        };
        let context = PersonPage {
            // U+2068 and U+2069 isolate the name's direction, where no element can.
            frame: self.frame(path, format!("\u{2068}{name}\u{2069}")),
            id: shown(&person.id),
            name,
            title,
            sheets: person
                .sheets
                .iter()
                .map(|sheet| SheetView {
                    kind: if sheet.practice { "Practice" } else { "Paper" },
                    blueprint: shown(&sheet.blueprint),
                    attempt: (sheet.attempt > 1).then_some(sheet.attempt),
                    answers: counted(sheet.answers, "answer"),
                    minutes: sheet.minutes.map(|minutes| fixed(minutes, 0)),
                    percent: sheet.percent.map(|mark| fixed(mark, 0) + "%"),
                    decision: sheet.decision.clone(),
                })
                .collect(),
            next: person
                .next
                .iter()
                .map(|next| NextView {
                    name: next.name.clone(),
                    why: next.why.clone(),
                    lessons: next.lessons.iter().map(|lesson| self.lesson(lesson, 1)).collect(),
                    command: format!("healedhue practise --skill {}", next.skill),
                })
                .collect(),
            nothing_next: person.nothing_next.clone(),
            compared: person.skills.iter().any(|skill| skill.standing.is_some()),
            skills: person.skills.iter().map(skill_view).collect(),
            misconceptions: person.misconceptions.iter().map(|entry| self.belief(entry)).collect(),
        };
        self.page(path, "report-person.html", context)
    }

    /// Everybody with a link.
    pub(super) fn everybody(&self) -> Result<SiteFile, RenderError> {
        let people = self.report.people.iter().zip(&self.paths);
        let context = EverybodyPage {
            frame: self.frame(EVERYBODY, "Everybody".to_owned()),
            title: shown(&self.report.title),
            people: people.map(|(person, path)| self.name(person, path, EVERYBODY)).collect(),
        };
        self.page(EVERYBODY, "report-people.html", context)
    }

    /// A person in a list on the page at `from`.
    pub(super) fn name(&self, person: &PersonEntry, path: &str, from: &str) -> NameView {
        NameView {
            name: shown(&person.name),
            id: shown(&person.id),
            href: href(from, path),
            mean: person.mean.map_or_else(|| "no answers".to_owned(), percent),
            weakest: person.next.first().map_or_else(|| "none".to_owned(), |next| next.name.clone()),
        }
    }

    /// A lesson on a page so many folders below the report's.
    pub(super) fn lesson(&self, lesson: &Reread, below: usize) -> LessonView {
        let href = self.site.map(|site| site.lesson(&lesson.path, below));
        LessonView { title: lesson.title.clone(), href }
    }

    fn belief(&self, entry: &MisconceptionEntry) -> BeliefView {
        let mut seen = Vec::new();
        if let Some(count) = entry.count.as_ref().filter(|count| count.chosen > 0) {
            let times = match count.offered {
                1 => "the one question that offered it".to_owned(),
                offered => format!("{} of the {offered} questions that offered it", count.chosen),
            };
            let guessing = percent(count.by_guessing);
            seen.push(format!("Chosen in {times}; blind guessing would choose it in {guessing}."));
        }
        if entry.freely > 0 {
            seen.push(format!("Shown in {} without options.", counted(entry.freely, "answer")));
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

fn skill_view(skill: &PersonSkill) -> SkillView {
    let mean = &skill.mean;
    let group = skill.standing.map(|_| ("the group", skill.cohort));
    SkillView {
        name: skill.name.clone(),
        mean: percent(mean.mean),
        range: format!("{} to {}", percent(mean.interval.low), percent(mean.interval.high)),
        answers: mean.answers,
        standing: match skill.standing {
            Some(Standing::Below) => "below the group",
            Some(Standing::Above) => "above the group",
            Some(Standing::Level) => "no clear difference",
            None => "",
        },
        plot: Range::new("Credit", mean.mean, mean.interval, group),
    }
}
