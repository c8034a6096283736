//! What a session says: a question with its case, what follows from an answer.

use super::super::terminal::{Painter, wrapped};
use crate::colour::{Lab, Srgb};
use crate::course::{Client, Course};
use crate::exercise::{Answer, Case, Choice, Exercise, Form, bottles_named, outcome};
use crate::healing::Appearance;
use crate::language::Language;
use crate::say;

/// Says things about a course's exercises.
pub(super) struct Telling<'c> {
    pub course: &'c Course,
    pub painter: Painter,
}

impl Telling<'_> {
    /// A question with its case.
    pub fn question(&self, exercise: &Exercise) -> String {
        let mut text = String::new();
        if let Some(case) = &exercise.case
            && let Some(client) = self.course.client(&case.client)
        {
            text += &self.case(case, client);
        }
        text += &(wrapped(&exercise.ask, 0) + "\n");
        text + &self.offered(exercise)
    }

    /// What is in the bottles that an exercise names.
    pub fn bottles(&self, exercise: &Exercise) -> String {
        let (language, shelf) = (&self.course.language, &self.course.shelf);
        let named = bottles_named(self.course, exercise);
        if named.is_empty() {
            return wrapped(&say!(language, "terminal-no-bottle"), 2) + "\n";
        }
        let told = named.iter().filter_map(|id| shelf.bottle(id)).map(|bottle| {
            let contents: Vec<String> = bottle
                .shares()
                .into_iter()
                .map(|(place, share)| {
                    let share = language.decimal(100.0 * share, 0);
                    say!(language, "terminal-colourant", id = &shelf.colourants[place].id, share = share)
                })
                .collect();
            let contents = contents.join(", ");
            let said = say!(
                language,
                "terminal-bottle",
                name = &bottle.name,
                about = &bottle.about,
                contents = contents
            );
            wrapped(&said, 2) + "\n"
        });
        told.collect()
    }

    fn case(&self, case: &Case, client: &Client) -> String {
        let language = &self.course.language;
        let (name, age) = (&client.name, client.age);
        let who = if case.skin_is_told {
            let undertone = client.undertone.said(language);
            let redness = client.redness.said(language);
            let phototype = client.phototype.word();
            say!(
                language,
                "terminal-person-skin",
                name = name,
                age = age,
                phototype = phototype,
                undertone = undertone,
                redness = redness,
                hair = &client.hair
            )
        } else {
            say!(language, "terminal-person", name = name, age = age, hair = &client.hair)
        };
        let wish = case.is_wished_for().then(|| say!(language, "terminal-wish", wish = &client.wish));
        let who = [who].into_iter().chain(wish).collect::<Vec<_>>().join(" ");
        let mut text = wrapped(&who, 2) + "\n";
        for note in &client.health {
            text += &(wrapped(&say!(language, "terminal-health", note = &note.note), 2) + "\n");
        }
        if client.health.is_empty() {
            let none = say!(language, "question-health-nothing");
            text += &(wrapped(&say!(language, "terminal-health", note = none), 2) + "\n");
        }
        let label = case.skin_label(language, client);
        let label = label.unwrap_or_else(|| say!(language, "terminal-bare"));
        text += &self.swatch(&label, &case.bare, &case.bare, "");
        if case.now.reflectance != case.bare.reflectance {
            let label = say!(language, "terminal-now");
            text += &self.swatch(&label, &case.bare, &case.now, &case.now_reading.words);
        }
        for exhibit in &case.exhibits {
            text += &self.swatch(&exhibit.label, &case.bare, &exhibit.seen, &exhibit.reading.words);
        }
        if let Some(goal) = &case.goal {
            let [l, a, b] = axes(language, goal.lab);
            let within =
                say!(language, "terminal-within", b = b, tolerance = format!("{:.0}", goal.tolerance));
            let colour = Srgb::from_lab(goal.lab);
            let label = say!(language, "terminal-goal");
            text += &self.painter.labelled(&label, case.bare.srgb, colour, &[l, a, within], "");
        }
        if let Some(placed) = &case.placed {
            let place = placed.placement;
            let number = |value| language.decimal(value, 2);
            let words = say!(
                language,
                "terminal-placed",
                depth = number(place.depth_mm),
                thickness = number(place.thickness_mm),
                load = number(place.load),
                coverage = format!("{:.0}", place.coverage * 100.0)
            );
            text += &(wrapped(&words, 2) + "\n");
        }
        text
    }

    /// What there is to choose from.
    fn offered(&self, exercise: &Exercise) -> String {
        match &exercise.form {
            Form::One(one) => {
                let pictured = exercise.case.as_ref().filter(|_| one.pictured);
                let mut text = String::new();
                for (place, option) in one.options.iter().enumerate() {
                    text += &lettered(place, &option.label);
                    if let Some((case, seen)) = pictured.zip(option.healed.as_ref()) {
                        text += &self.picture(case, seen);
                    }
                }
                text
            }
            Form::Several(several) => listed(several.options.iter().map(|option| option.label.as_str())),
            Form::Order(order) => listed(order.steps.iter().map(|step| step.say.as_str())),
            Form::Drops(drops) => {
                let names = drops
                    .bottles()
                    .into_iter()
                    .map(|id| self.course.shelf.bottle(id).map_or(id, |bottle| bottle.name.as_str()));
                let limits = &drops.limits;
                let how = say!(
                    self.course.language,
                    "terminal-drops-limits",
                    bottles = letters(&self.course.language, 0, limits.bottles.len()),
                    drops = limits.drops,
                    modifiers = limits.modifier_drops
                );
                listed(names) + &wrapped(&how, 2) + "\n"
            }
            Form::Number(_) => String::new(),
        }
    }

    /// A colour whose words and numbers stand above it.
    fn picture(&self, case: &Case, seen: &Appearance) -> String {
        let swatch = self.painter.swatch(case.bare.srgb, seen.srgb);
        if swatch.is_empty() { String::new() } else { format!("     {}\n", swatch.trim_end()) }
    }

    fn swatch(&self, label: &str, skin: &Appearance, seen: &Appearance, words: &str) -> String {
        let language = &self.course.language;
        let mut pieces = axes(language, seen.lab);
        if !seen.srgb.in_gamut {
            pieces[2] += &format!(" {}", say!(language, "terminal-beyond"));
        }
        self.painter.labelled(label, skin.srgb, seen.srgb, &pieces, words)
    }

    /// What follows from an answer, which was marked as `chosen`.
    pub fn answer(&self, exercise: &Exercise, chosen: &Choice) -> String {
        let mark = &chosen.mark;
        let full = mark.credit >= 1.0;
        let language = &self.course.language;
        let head = match mark.credit {
            credit if credit >= 1.0 => "terminal-right",
            credit if credit > 0.0 => "terminal-part",
            _ => "terminal-nothing",
        };
        let head = self.painter.strong(&language.say(head, &[]));
        let credit = percent(language, mark.credit);
        let head = match mark.credit > 0.0 {
            true => say!(language, "terminal-credit", verdict = head, share = credit),
            // "No credit" says it already.
            false => head,
        };
        let mut text = head + "\n";
        text += &(wrapped(&mark.consequence, 2) + "\n");
        let best = outcome(self.course, exercise, &exercise.form.key()).ok();
        if let Some(case) = &exercise.case {
            if let Some(healed) = &chosen.healed {
                text += &self.swatch(&say!(language, "terminal-yours"), &case.bare, healed, "");
            }
            if let Some(healed) = best.as_ref().filter(|_| !full).and_then(|best| best.healed.as_ref()) {
                text += &self.swatch(&say!(language, "terminal-best"), &case.bare, healed, "");
            }
        }
        if let Some(best) = best.as_ref().filter(|_| !full && !matches!(exercise.form, Form::Number(_))) {
            text += &(wrapped(&self.best(exercise, best), 2) + "\n");
        }
        if let Some(misconception) =
            mark.misconception.as_deref().and_then(|id| self.course.misconception(id))
        {
            let behind = say!(language, "terminal-behind", belief = &misconception.belief);
            let truth = say!(language, "terminal-truth", truth = &misconception.truth);
            text += &(wrapped(&behind, 2) + "\n" + &wrapped(&truth, 2) + "\n");
        }
        if !full && let Some((_, lesson)) = self.course.lesson(&mark.lesson) {
            let again = say!(language, "terminal-read-again", lesson = &lesson.page.title);
            text += &(wrapped(&again, 2) + "\n");
        }
        text
    }

    /// The best answer in words.
    fn best(&self, exercise: &Exercise, best: &Choice) -> String {
        let language = &self.course.language;
        match (&exercise.form, exercise.form.key()) {
            (Form::Order(order), Answer::Order(places)) => {
                let steps: Vec<&str> = places.iter().map(|&place| order.steps[place].say.as_str()).collect();
                say!(language, "terminal-right-order", steps = steps.join("; "))
            }
            (Form::Several(several), _) => {
                let right: Vec<&str> =
                    several.right().iter().map(|&place| several.options[place].label.as_str()).collect();
                say!(language, "terminal-these-hold", statements = right.join("; "))
            }
            _ => say!(language, "terminal-best-is", best = &best.label, why = &best.mark.consequence),
        }
    }
}

/// How to answer, for the prompt: "a to d", "letters, such as a c".
pub(super) fn how_to_answer(language: &Language, form: &Form) -> String {
    let letters = |count| letters(language, 0, count);
    match form {
        Form::One(one) => letters(one.options.len()),
        Form::Several(several) => {
            say!(language, "terminal-how-several", letters = letters(several.options.len()))
        }
        Form::Order(order) => say!(language, "terminal-how-order", letters = letters(order.steps.len())),
        Form::Drops(drops) => {
            let (all, first) = (drops.limits.drops, drops.limits.bottles.len());
            let example =
                if all > 1 && drops.limits.most_modifier_drops() > 0 && !drops.limits.modifiers.is_empty() {
                    format!("a{} {}1", all - 1, letter(first))
                } else {
                    format!("a{all}")
                };
            say!(language, "terminal-how-drops", example = example)
        }
        Form::Number(number) => say!(language, "terminal-how-number", unit = &number.unit),
    }
}

/// "a to d".
fn letters(language: &Language, from: usize, count: usize) -> String {
    let (from, to) = (letter(from), letter(from + count.saturating_sub(1)));
    say!(language, "terminal-letters", from = from.to_string(), to = to.to_string())
}

/// L*, a* and b*, each by its name.
fn axes(language: &Language, lab: Lab) -> [String; 3] {
    let [l, a, b] = language.lab(lab);
    [format!("L* {l}"), format!("a* {a}"), format!("b* {b}")]
}

fn letter(place: usize) -> char {
    char::from(b'a' + place.min(25) as u8)
}

fn listed<'s>(options: impl Iterator<Item = &'s str>) -> String {
    options.enumerate().map(|(place, option)| lettered(place, option)).collect()
}

fn lettered(place: usize, option: &str) -> String {
    let lines = wrapped(option, 5);
    format!("  {}) {}\n", letter(place), lines.trim_start())
}

/// A share in whole percent; 100% only for all of it.
pub(super) fn percent(language: &Language, share: f64) -> String {
    let most = if share < 1.0 { 99.0 } else { 100.0 };
    say!(language, "screen-percent", number = format!("{:.0}", (share * 100.0).min(most)))
}
