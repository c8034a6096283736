//! What a record of progress says, before a session and after it.
//!
//! Entry points: [`Overview::of`], [`SummaryView::of`], [`Planned::of`].

use super::{Now, skill_name};
use crate::assess::knowledge::{Parameters, Progress, READY};
use crate::assess::session::{Level, Session, Summary};
use crate::course::Course;
use serde::Serialize;

/// What is known, by skill.
#[derive(Debug, Clone, Serialize)]
pub struct Overview<'a> {
    /// Answers in these skills.
    pub answers: u64,
    /// Skills that some drill of the course trains, in the order of the course.
    pub skills: Vec<SkillView<'a>>,
    /// Skills in the record that no drill of the course trains; they are kept.
    pub others: usize,
    /// What in the record cannot be used, in words.
    pub notes: Vec<String>,
    /// Ids of the skills that a session would begin with, at most three.
    pub next: Vec<String>,
}

/// One skill.
#[derive(Debug, Clone, Serialize)]
pub struct SkillView<'a> {
    /// Id.
    pub id: &'a str,
    /// Name.
    pub name: &'a str,
    /// Chance that it is known, 0 to 1.
    pub known: f64,
    /// The same as a word; `None` before the first answer.
    pub level: Option<Level>,
    /// Answers so far.
    pub answers: u32,
    /// Their mean credit, 0 to 1.
    pub credit: Option<f64>,
    /// When the last one was given, seconds since 1970.
    pub last: Option<Now>,
    /// Days until it is no longer known well enough to build on: 0 where it is not now, `None` where nothing was answered.
    pub due_in_days: Option<f64>,
}

impl<'a> Overview<'a> {
    /// What a record says of a course's skills.
    pub fn of(course: &'a Course, progress: &Progress, notes: Vec<String>, now: Now) -> Self {
        let trained = |id: &str| course.drills().any(|(_, drill)| drill.skill == id);
        let skills: Vec<SkillView<'a>> = course
            .skills
            .iter()
            .filter(|skill| trained(&skill.id))
            .map(|skill| SkillView::of(&skill.id, &skill.name, progress, now))
            .collect();
        let known = |id: &str| skills.iter().any(|skill| skill.id == id);
        let session = Session::new(course, course.drills(), progress.clone(), Parameters::default(), 0, now);
        Overview {
            answers: skills.iter().map(|skill| u64::from(skill.answers)).sum(),
            others: progress.skills.keys().chain(progress.unread.keys()).filter(|id| !known(id)).count(),
            next: session.summary(now).next,
            skills,
            notes,
        }
    }
}

impl<'a> SkillView<'a> {
    fn of(id: &'a str, name: &'a str, progress: &Progress, now: Now) -> Self {
        let parameters = Parameters::default();
        let trace = progress.knowledge(id, &parameters);
        let known = trace.known_at(&parameters, now);
        let practised = trace.answers > 0;
        SkillView {
            id,
            name,
            known,
            level: practised.then(|| Level::of(known)),
            answers: trace.answers,
            credit: practised.then(|| trace.credit / f64::from(trace.answers)),
            last: trace.last,
            due_in_days: trace.days_above(&parameters, READY, now),
        }
    }
}

/// What a session by minutes would ask of one skill.
#[derive(Debug, Clone, Serialize)]
pub struct Planned {
    /// Name of the skill.
    pub skill: String,
    /// How many questions.
    pub count: usize,
}

impl Planned {
    /// What a session of so many minutes would ask, in the order of first questions.
    pub fn of(course: &Course, session: &Session<'_>, minutes: f64, now: Now) -> Vec<Planned> {
        let mut counts: Vec<(&str, usize)> = Vec::new();
        for (skill, _) in session.plan(minutes, now) {
            match counts.iter_mut().find(|(id, _)| *id == skill) {
                Some((_, count)) => *count += 1,
                None => counts.push((skill, 1)),
            }
        }
        counts
            .into_iter()
            .map(|(skill, count)| Planned { skill: skill_name(course, skill).to_owned(), count })
            .collect()
    }
}

/// The end of a session.
#[derive(Debug, Clone, Serialize)]
pub struct SummaryView<'a> {
    /// Skills that were asked for, in the order in which they came.
    pub skills: Vec<SkillChangeView<'a>>,
    /// Skills most needed next, id and name.
    pub next: Vec<(String, &'a str)>,
    /// Lessons to reread, the most answers first.
    pub reread: Vec<LessonCount<'a>>,
    /// Misconceptions that showed.
    pub misconceptions: Vec<BeliefView<'a>>,
}

/// One skill before and after a session.
#[derive(Debug, Clone, Serialize)]
pub struct SkillChangeView<'a> {
    /// Id.
    pub id: String,
    /// Name.
    pub name: &'a str,
    /// Answers in this session.
    pub answers: u32,
    /// Their mean credit, 0 to 1.
    pub credit: f64,
    /// Chance that it was known when the session began, 0 to 1, and as a word.
    pub before: (f64, Level),
    /// The same now.
    pub after: (f64, Level),
}

/// A lesson to reread.
#[derive(Debug, Clone, Serialize)]
pub struct LessonCount<'a> {
    /// Id.
    pub id: &'a str,
    /// Title.
    pub title: &'a str,
    /// How many answers led there.
    pub answers: usize,
}

/// A misconception that showed.
#[derive(Debug, Clone, Serialize)]
pub struct BeliefView<'a> {
    /// Id.
    pub id: &'a str,
    /// What is believed.
    pub belief: &'a str,
    /// Questions in which some option led to it.
    pub offered: usize,
    /// Questions in which such an option was chosen.
    pub chosen: usize,
    /// Whether it seems to be a habit.
    pub stands_out: bool,
}

impl<'a> SummaryView<'a> {
    /// A summary with names in place of ids.
    pub fn of(course: &'a Course, summary: &Summary) -> Self {
        let name = |id: &str| {
            course.skills.iter().find(|skill| skill.id == id).map_or("", |skill| skill.name.as_str())
        };
        let level = |known: f64| (known, Level::of(known));
        SummaryView {
            skills: summary
                .skills
                .iter()
                .map(|change| SkillChangeView {
                    id: change.skill.clone(),
                    name: name(&change.skill),
                    answers: change.answers,
                    credit: change.credit,
                    before: level(change.before),
                    after: level(change.after),
                })
                .collect(),
            next: summary.next.iter().map(|id| (id.clone(), name(id))).collect(),
            reread: summary
                .reread
                .iter()
                .filter_map(|(id, answers)| {
                    let (_, lesson) = course.lesson(id)?;
                    Some(LessonCount { id: &lesson.id, title: &lesson.page.title, answers: *answers })
                })
                .collect(),
            misconceptions: summary
                .misconceptions
                .iter()
                .filter_map(|count| {
                    let found = course.misconception(&count.misconception)?;
                    Some(BeliefView {
                        id: &found.id,
                        belief: &found.belief,
                        offered: count.offered,
                        chosen: count.chosen,
                        stands_out: count.stands_out,
                    })
                })
                .collect(),
        }
    }
}
