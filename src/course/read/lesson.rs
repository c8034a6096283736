//! The YAML files beside pages: `module.yaml` and one for every lesson.

use super::Reader;
use super::drill::read_drill;
use super::fields::Fields;
use super::names::Thing;
use super::node::Node;
use super::suggest::{nearest, quoted};
use crate::course::shared::Shared;
use crate::course::source::{At, Place};
use crate::course::{Block, Drill, bounds};

/// What a module's YAML file says.
pub(crate) struct ModuleNotes {
    /// Its id.
    pub id: String,
    /// One sentence.
    pub about: String,
}

/// What a lesson's YAML file says.
pub(crate) struct LessonNotes {
    /// Its id.
    pub id: At<String>,
    /// What the apprentice can do afterwards.
    pub objectives: Vec<String>,
    /// Minutes it takes.
    pub minutes: u32,
    /// Lessons to read before.
    pub needs: Vec<At<String>>,
    /// Skills it trains.
    pub skills: Vec<String>,
    /// Its drills, each at its id.
    pub drills: Vec<At<Drill>>,
}

/// Reads `module.yaml`.
pub(crate) fn read_module(root: &Node, reader: &mut Reader) -> Option<ModuleNotes> {
    let mut fields = Fields::of(root, "a module", &["id", "about"], reader)?;
    Some(ModuleNotes { id: fields.id(Thing::Module).value, about: fields.text("about").value })
}

/// Reads a lesson's YAML file.
pub(crate) fn read_lesson(root: &Node, shared: &Shared, reader: &mut Reader) -> Option<LessonNotes> {
    let keys = ["id", "objectives", "minutes", "needs", "skills", "drills"];
    let mut fields = Fields::of(root, "a lesson", &keys, reader)?;
    let id = fields.id(Thing::Lesson);
    let objectives = fields.some("objectives");
    let objectives = objectives.iter().map(|node| fields.reader.text("objectives", node).value).collect();
    let minutes = fields.whole(&bounds::MINUTES);
    let needs = fields.references("needs", Thing::Lesson);
    let skills = fields.references("skills", Thing::Skill).into_iter().map(|id| id.value).collect();
    let drills =
        fields.list("drills").iter().filter_map(|node| read_drill(node, shared, fields.reader)).collect();
    Some(LessonNotes { id, objectives, minutes, needs, skills, drills })
}

/// Checks that the drills of a lesson and the places for drills in its text belong together.
pub(crate) fn check_places(lesson: &LessonNotes, blocks: &[At<Block>], reader: &mut Reader) {
    let mut placed: Vec<(&str, &Place)> = Vec::new();
    for block in blocks {
        let Block::Drill(id) = &block.value else { continue };
        if let Some((_, first)) = placed.iter().find(|(other, _)| other == id) {
            let (line, _) = first.line_and_column();
            reader
                .warning(&block.place, format!("the drill {} is placed twice", quoted(id)))
                .help(format!("the first place is in line {line}"));
        }
        placed.push((id, &block.place));
        if lesson.drills.iter().any(|drill| drill.value.id == *id) {
            continue;
        }
        let own = lesson.drills.iter().map(|drill| drill.value.id.as_str());
        let help = match nearest(id, own) {
            Some(near) => format!("did you mean {}?", quoted(near)),
            None if reader.names.has(Thing::Drill, id) => "it belongs to another lesson".to_owned(),
            None => "drills are defined in the YAML file beside the lesson".to_owned(),
        };
        reader.error(&block.place, format!("this lesson has no drill {}", quoted(id))).help(help);
    }
    for drill in &lesson.drills {
        let id = &drill.value.id;
        if !id.is_empty() && placed.iter().all(|(other, _)| other != id) {
            reader
                .warning(&drill.place, format!("the drill {} is placed nowhere in the text", quoted(id)))
                .help("put a fenced block `drill` that holds its id where its exercises shall stand");
        }
    }
}

/// Checks the order of lessons against what they need; `lessons` is in teaching order.
pub(crate) fn check_needs(lessons: &[&LessonNotes], reader: &mut Reader) {
    let number = |id: &str| lessons.iter().position(|lesson| lesson.id.value == id);
    for (here, lesson) in lessons.iter().enumerate() {
        for need in &lesson.needs {
            // What comes before cannot close a circle by itself: every circle has a need that does not.
            let Some(there) = number(&need.value).filter(|there| *there >= here) else { continue };
            match way(there, here, lessons) {
                Some(way) => {
                    let names = way.iter().map(|step| quoted(&lessons[*step].id.value));
                    let chain = std::iter::once(quoted(&lesson.id.value)).chain(names).collect::<Vec<_>>();
                    reader
                        .error(
                            &need.place,
                            format!("lessons that need each other: {}", chain.join(" needs ")),
                        )
                        .help("remove one of the needs");
                }
                None => {
                    reader
                        .warning(&need.place, format!("{} comes later in the summary", quoted(&need.value)))
                        .help("put it before this lesson, or remove the need");
                }
            }
        }
    }
}

/// The shortest chain of needs from one lesson to another, both included.
fn way(from: usize, to: usize, lessons: &[&LessonNotes]) -> Option<Vec<usize>> {
    let mut ways = vec![vec![from]];
    let mut seen = vec![false; lessons.len()];
    seen[from] = true;
    while !ways.is_empty() {
        let mut longer = Vec::new();
        for way in ways {
            let last = *way.last()?;
            if last == to {
                return Some(way);
            }
            for need in &lessons[last].needs {
                if let Some(next) = lessons.iter().position(|lesson| lesson.id.value == need.value)
                    && !std::mem::replace(&mut seen[next], true)
                {
                    longer.push([&way[..], &[next]].concat());
                }
            }
        }
        ways = longer;
    }
    None
}
