//! What a session says: a question with its case, what follows from an answer.

use super::super::terminal::{Painter, wrapped};
use crate::assess::visible;
use crate::colour::{Lab, Light, Srgb};
use crate::course::{Client, Course};
use crate::exercise::{
    Answer, AnswerError, AskedFor, Case, CaseGoal, Choice, Exercise, Form, LimitsError, bottles_named,
    outcome,
};
use crate::healing::{Appearance, Reading};
use crate::language::Language;
use crate::render::bare_in_words;
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
        if let Some((case, client)) = self.on(exercise) {
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

    /// The case of an exercise with its client.
    fn on<'e>(&self, exercise: &'e Exercise) -> Option<(&'e Case, &Client)> {
        let case = exercise.case.as_ref()?;
        Some((case, self.course.client(&case.client)?))
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
        // Most descriptions name what is asked for where the skin is not told.
        let about = case.skin_is_told.then(|| client.about.clone());
        let wish = case.is_wished_for().then(|| say!(language, "terminal-wish", wish = &client.wish));
        let who = [who].into_iter().chain(about).chain(wish).collect::<Vec<_>>().join(" ");
        let mut text = wrapped(&who, 2) + "\n";
        // Of old work that is made up, the client's own tells nothing.
        for old in client.existing.iter().filter(|_| case.is_wished_for()) {
            let told = language.old_work(old.work.months, &old.note);
            text += &(wrapped(&say!(language, "terminal-old-work", told = told), 2) + "\n");
        }
        for note in &client.health {
            text += &(wrapped(&say!(language, "terminal-health", note = &note.note), 2) + "\n");
        }
        if client.health.is_empty() {
            let none = say!(language, "question-health-nothing");
            text += &(wrapped(&say!(language, "terminal-health", note = none), 2) + "\n");
        }
        let label = case.skin_label(language, client);
        let label = label.unwrap_or_else(|| say!(language, "terminal-bare", site = client.site.word()));
        let beside = beside(case, client, case.light);
        let words = bare_in_words(language, client.site, case.bare.lab);
        text += &self.swatch(&label, beside, &case.bare, &words);
        if case.now.reflectance != case.bare.reflectance {
            let label = say!(language, "terminal-now");
            text += &self.swatch(&label, beside, &case.now, &case.now_reading.words);
        }
        for exhibit in &case.exhibits {
            let beside = self::beside(case, client, exhibit.light);
            text += &self.swatch(&exhibit.label, beside, &exhibit.seen, &exhibit.reading.words);
        }
        if let Some(goal) = &case.goal {
            text += &self.goal(goal, case, client);
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

    /// A wished colour. Its name, which the question says, may be of another tone than what it is beside this skin.
    fn goal(&self, goal: &CaseGoal, case: &Case, client: &Client) -> String {
        let language = &self.course.language;
        let [l, a, b] = axes(language, goal.lab);
        let within = say!(language, "terminal-within", b = b, tolerance = format!("{:.0}", goal.tolerance));
        let reading = Reading::of(goal.lab, case.bare.lab, client.site);
        let words = say!(
            language,
            "terminal-goal-words",
            depth = reading.depth_said(language),
            site = client.site.word(),
            tone = reading.tone.said(language)
        );
        let (beside, colour) = (beside(case, client, case.light), Srgb::from_lab(goal.lab));
        self.painter.labelled(&say!(language, "terminal-goal"), beside, colour, &[l, a, within], &words)
    }

    /// What there is to choose from.
    fn offered(&self, exercise: &Exercise) -> String {
        match &exercise.form {
            Form::One(one) => {
                let pictured = self.on(exercise).filter(|_| one.pictured);
                let beside = pictured.map(|(case, client)| beside(case, client, case.light));
                let mut text = String::new();
                for (place, option) in one.options.iter().enumerate() {
                    text += &lettered(place, &option.label);
                    if let Some((beside, seen)) = beside.zip(option.healed.as_ref()) {
                        text += &self.picture(beside, seen);
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
                    bottles = letters(&self.course.language, limits.bottles.len()),
                    drops = limits.drops,
                    modifiers = limits.most_modifier_drops()
                );
                listed(names) + &wrapped(&how, 2) + "\n"
            }
            Form::Number(_) => String::new(),
        }
    }

    /// A colour whose words and numbers stand above it.
    fn picture(&self, beside: Srgb, seen: &Appearance) -> String {
        let swatch = self.painter.swatch(beside, seen.srgb);
        if swatch.is_empty() { String::new() } else { format!("     {}\n", swatch.trim_end()) }
    }

    fn swatch(&self, label: &str, beside: Srgb, seen: &Appearance, words: &str) -> String {
        let language = &self.course.language;
        let mut pieces = axes(language, seen.lab);
        if !seen.srgb.in_gamut {
            pieces[2] += &format!(" {}", say!(language, "terminal-beyond"));
        }
        self.painter.labelled(label, beside, seen.srgb, &pieces, words)
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
        if let Some((case, client)) = self.on(exercise) {
            let beside = beside(case, client, case.light);
            let came_to = |label: &str, choice: &Choice| {
                let words = choice.reading.as_ref().map_or("", |reading| &reading.words);
                let seen = choice.healed.as_ref();
                seen.map_or_else(String::new, |seen| self.swatch(label, beside, seen, words))
            };
            text += &came_to(&say!(language, "terminal-yours"), chosen);
            if let Some(best) = best.as_ref().filter(|_| !full) {
                text += &came_to(&say!(language, "terminal-best"), best);
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
        if let Some(proof) = &exercise.proof {
            let proof = proof.said(language, exercise.family);
            text += &(wrapped(&say!(language, "question-proved", proof = proof), 2) + "\n");
        }
        let identity = format!("{} {}", exercise.drill, exercise.number);
        let source = say!(language, "question-source", source = &exercise.source, identity = identity);
        text + &wrapped(&source, 2) + "\n"
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
    let letters = |count| letters(language, count);
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

/// Asks again, in the form that the prompt names and with its letters.
pub(super) fn once_more(language: &Language, form: &Form, error: &AnswerError) -> String {
    let spaced = |places: &[usize]| {
        places.iter().map(|&place| letter(place).to_string()).collect::<Vec<_>>().join(" ")
    };
    let count = match form {
        Form::One(one) => one.options.len(),
        Form::Several(several) => several.options.len(),
        Form::Order(order) => order.steps.len(),
        Form::Drops(drops) => drops.bottles().len(),
        Form::Number(_) => 0,
    };
    let why = match error {
        AnswerError::Form(AskedFor::One) => say!(language, "terminal-one-letter"),
        AnswerError::Form(AskedFor::Several) => {
            let example = if count > 2 { spaced(&[0, 2]) } else { spaced(&[0]) };
            say!(language, "terminal-letters-alone", example = example)
        }
        AnswerError::Form(AskedFor::Order) => {
            // The other way round, so that it is an order and no advice.
            let example = spaced(&(0..count).rev().collect::<Vec<_>>());
            say!(language, "terminal-letters-alone", example = example)
        }
        AnswerError::Form(AskedFor::Drops) => say!(language, "terminal-whole-drops"),
        AnswerError::NoOption { place, .. } => {
            let (place, letters) = (letter(*place).to_string(), letters(language, count));
            say!(language, "terminal-no-letter", letter = place, letters = letters)
        }
        AnswerError::NotAnOrder(_) => {
            say!(language, "terminal-each-once", letters = letters(language, count))
        }
        AnswerError::Limits(LimitsError::NoBottle { bottle, .. }) => {
            let letters = letters(language, count);
            say!(language, "terminal-no-bottle-here", bottle = visible(bottle).as_ref(), letters = letters)
        }
        other => other.said(language),
    };
    say!(language, "terminal-again", how = how_to_answer(language, form), why = why)
}

/// What a colour is drawn on: the place without work, or the skin around it where it has an edge.
fn beside(case: &Case, client: &Client, light: Light) -> Srgb {
    client.around(light).map_or(case.bare.srgb, |around| around.srgb)
}

/// "a to d"; "a" where there is one.
fn letters(language: &Language, count: usize) -> String {
    let (first, last) = (letter(0).to_string(), letter(count.saturating_sub(1)).to_string());
    if first == last { first } else { say!(language, "terminal-letters", from = first, to = last) }
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
