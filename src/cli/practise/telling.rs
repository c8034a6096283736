//! What a session says: a question with its case, what follows from an answer.

use super::super::terminal::{Painter, lab_in_pieces, wrapped};
use crate::colour::Srgb;
use crate::course::{Client, Course};
use crate::exercise::{Answer, Case, Choice, Exercise, Form, outcome};
use crate::healing::Appearance;

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

    fn case(&self, case: &Case, client: &Client) -> String {
        let mut who = format!("{}, {}", client.name, client.age);
        if case.skin_is_told {
            who += &format!(
                ": phototype {}, undertone {}, {} skin",
                client.phototype.word(),
                client.undertone.word(),
                client.redness.word()
            );
        }
        who += &format!("; hair: {}. “{}”", client.hair, client.wish);
        let mut text = wrapped(&who, 2) + "\n";
        for note in &client.health {
            text += &(wrapped(&format!("Health: {}", note.note), 2) + "\n");
        }
        text += &self.swatch("skin without work", &case.bare, &case.bare, "");
        if !client.existing.is_empty() {
            text += &self.swatch("as it is now", &case.bare, &case.now, &case.now_reading.words);
        }
        for exhibit in &case.exhibits {
            text += &self.swatch(&exhibit.label, &case.bare, &exhibit.seen, &exhibit.reading.words);
        }
        if let Some(goal) = &case.goal {
            let said = [
                format!("L* {:.1}", goal.lab.l),
                format!("a* {:.1}", goal.lab.a),
                format!("b* {:.1}, within ΔE00 {:.0}", goal.lab.b, goal.tolerance),
            ];
            let colour = Srgb::from_lab(goal.lab);
            text += &self.painter.labelled("goal", case.bare.srgb, colour, &said, "");
        }
        if let Some(placed) = &case.placed {
            let place = placed.placement;
            let words = format!(
                "Placed {:.2} mm deep, {:.2} mm thick, load {:.2}, coverage {:.0}%.",
                place.depth_mm,
                place.thickness_mm,
                place.load,
                place.coverage * 100.0
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
                listed(names)
                    + &wrapped(
                        &format!(
                            "One bottle ({}) with drops of modifiers, {} drops in all, at most {} of them modifiers.",
                            letters(0, limits.bottles.len()),
                            limits.drops,
                            limits.modifier_drops
                        ),
                        2,
                    )
                    + "\n"
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
        self.painter.labelled(label, skin.srgb, seen.srgb, &lab_in_pieces(seen), words)
    }

    /// What follows from an answer, which was marked as `chosen`.
    pub fn answer(&self, exercise: &Exercise, chosen: &Choice) -> String {
        let mark = &chosen.mark;
        let full = mark.credit >= 1.0;
        let head = match mark.credit {
            credit if credit >= 1.0 => "Right",
            credit if credit > 0.0 => "Not the best answer",
            _ => "No credit",
        };
        let mut text = format!("{}, credit {}\n", self.painter.strong(head), percent(mark.credit));
        text += &(wrapped(&mark.consequence, 2) + "\n");
        let best = outcome(self.course, exercise, &exercise.form.key()).ok();
        if let Some(case) = &exercise.case {
            if let Some(healed) = &chosen.healed {
                text += &self.swatch("yours", &case.bare, healed, "");
            }
            if let Some(healed) = best.as_ref().filter(|_| !full).and_then(|best| best.healed.as_ref()) {
                text += &self.swatch("the best", &case.bare, healed, "");
            }
        }
        if let Some(best) = best.as_ref().filter(|_| !full && !matches!(exercise.form, Form::Number(_))) {
            text += &(wrapped(&self.best(exercise, best), 2) + "\n");
        }
        if let Some(misconception) =
            mark.misconception.as_deref().and_then(|id| self.course.misconception(id))
        {
            text += &(wrapped(&format!("Behind it often: “{}”", misconception.belief), 2) + "\n");
            text += &(wrapped(&format!("What really happens: {}", misconception.truth), 2) + "\n");
        }
        if !full && let Some((_, lesson)) = self.course.lesson(&mark.lesson) {
            text += &(wrapped(&format!("Read again: {}", lesson.page.title), 2) + "\n");
        }
        text
    }

    /// The best answer in words.
    fn best(&self, exercise: &Exercise, best: &Choice) -> String {
        match (&exercise.form, exercise.form.key()) {
            (Form::Order(order), Answer::Order(places)) => {
                let steps: Vec<&str> = places.iter().map(|&place| order.steps[place].say.as_str()).collect();
                format!("The right order: {}.", steps.join("; "))
            }
            (Form::Several(several), _) => {
                let right: Vec<&str> =
                    several.right().iter().map(|&place| several.options[place].label.as_str()).collect();
                format!("These hold: {}.", right.join("; "))
            }
            _ => format!("Best: {}. {}", best.label, best.mark.consequence),
        }
    }
}

/// How to answer, for the prompt: "a to d", "letters, such as a c".
pub(super) fn how_to_answer(form: &Form) -> String {
    match form {
        Form::One(one) => letters(0, one.options.len()),
        Form::Several(several) => format!("every one of {} that holds", letters(0, several.options.len())),
        Form::Order(order) => format!("{} in their order", letters(0, order.steps.len())),
        Form::Drops(drops) => {
            let (all, first) = (drops.limits.drops, drops.limits.bottles.len());
            if all > 1 && drops.limits.most_modifier_drops() > 0 && !drops.limits.modifiers.is_empty() {
                format!("drops by letter, such as a{} {}1", all - 1, letter(first))
            } else {
                format!("drops by letter, such as a{all}")
            }
        }
        Form::Number(number) => format!("a number in {}", number.unit),
    }
}

/// "a to d".
fn letters(from: usize, count: usize) -> String {
    format!("{} to {}", letter(from), letter(from + count.saturating_sub(1)))
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
pub(super) fn percent(share: f64) -> String {
    let most = if share < 1.0 { 99.0 } else { 100.0 };
    format!("{:.0}%", (share * 100.0).min(most))
}
