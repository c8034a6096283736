//! Which misconceptions a question offered, and which one an answer to it showed. Entry point: [`answer_shown`].

use crate::assess::cohort::Shown;
use crate::exercise::{Answer, Choice, Exercise, Form, Mark};

/// A question with its answer, as the count of misconceptions wants it.
#[derive(Debug, Clone, PartialEq)]
pub struct AnswerShown {
    /// For every option, the id of the misconception that leads to it. Where there are no options to choose from (drops, numbers), the
    /// right answer stands for one, and every tempting one for another.
    pub options: Vec<Option<String>>,
    /// Index of what was chosen.
    pub chosen: Option<usize>,
}

impl AnswerShown {
    /// The ids of the options, for [`AnswerShown::of`].
    pub fn ids(&self) -> Vec<Option<&str>> {
        self.options.iter().map(Option::as_deref).collect()
    }

    /// The same as somebody's answer.
    pub fn of<'a>(&self, person: &'a str, ids: &'a [Option<&'a str>]) -> Shown<'a> {
        Shown { person, options: ids, chosen: self.chosen }
    }
}

/// What an answer that was marked so shows; `None` where the question offers no misconception.
pub fn answer_shown(exercise: &Exercise, answer: &Answer, mark: &Mark) -> Option<AnswerShown> {
    let of = |choice: &Choice| choice.mark.misconception.clone();
    let (options, chosen): (Vec<Option<String>>, Option<usize>) = match (&exercise.form, answer) {
        (Form::One(one), Answer::One(place)) => (one.options.iter().map(of).collect(), Some(*place)),
        (Form::Several(several), Answer::Several(places)) => {
            let options: Vec<Option<String>> = several.options.iter().map(of).collect();
            let chosen = places
                .iter()
                .copied()
                .find(|&place| {
                    mark.misconception.is_some() && options.get(place) == Some(&mark.misconception)
                })
                .or(places.first().copied());
            (options, chosen)
        }
        (Form::Drops(drops), _) => open(drops.tempting.iter().map(of), mark),
        (Form::Number(number), _) => {
            open(number.tempting.iter().map(|wrong| Some(wrong.misconception.clone())), mark)
        }
        _ => return None,
    };
    options.iter().any(Option::is_some).then_some(AnswerShown { options, chosen })
}

/// The right answer and the tempting ones; whatever shows no misconception counts as the first.
fn open(tempting: impl Iterator<Item = Option<String>>, mark: &Mark) -> (Vec<Option<String>>, Option<usize>) {
    let options: Vec<Option<String>> = std::iter::once(None).chain(tempting).collect();
    let chosen = options.iter().position(|option| *option == mark.misconception).unwrap_or(0);
    (options, Some(chosen))
}
