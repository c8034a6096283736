//! Which misconceptions a question offered, and which one an answer to it showed. Entry point: [`answer_shown`].

use crate::assess::cohort::{Leads, Shown};
use crate::exercise::{Answer, Choice, Exercise, Form, Mark};

/// A question with its answer, as the count of misconceptions wants it.
#[derive(Debug, Clone, PartialEq)]
pub struct AnswerShown {
    /// For every option, what leads to it. Where there are no options to choose from (drops, numbers), the right answer stands
    /// for one, every tempting one for another, and any other wrong one for the last.
    pub options: Vec<Leads<String>>,
    /// Index of what was chosen.
    pub chosen: Option<usize>,
}

impl AnswerShown {
    /// What leads to the options, for [`AnswerShown::of`].
    pub fn leads(&self) -> Vec<Leads<&str>> {
        self.options.iter().map(Leads::as_deref).collect()
    }

    /// The same as somebody's answer.
    pub fn of<'a>(&self, person: &'a str, leads: &'a [Leads<&'a str>]) -> Shown<'a> {
        Shown { person, options: leads, chosen: self.chosen }
    }
}

/// What an answer that was marked so shows; `None` where the question offers no misconception.
pub fn answer_shown(exercise: &Exercise, answer: &Answer, mark: &Mark) -> Option<AnswerShown> {
    let of = |choice: &Choice| Leads::new(choice.mark.credit == 1.0, choice.mark.misconception.clone());
    let (options, chosen): (Vec<Leads<String>>, Option<usize>) = match (&exercise.form, answer) {
        (Form::One(one), Answer::One(place)) => (one.options.iter().map(of).collect(), Some(*place)),
        (Form::Several(several), Answer::Several(places)) => {
            let options: Vec<Leads<String>> = several.options.iter().map(of).collect();
            // One statement speaks for the answer: the one it was marked by, or a wrong one; the first if all hold.
            let speaks = |by: &dyn Fn(&Leads<String>) -> bool| {
                places.iter().copied().find(|&place| options.get(place).is_some_and(by))
            };
            let chosen = speaks(&|option| {
                mark.misconception.is_some() && option.misconception() == mark.misconception.as_ref()
            })
            .or_else(|| speaks(&|option| *option != Leads::Right))
            .or(places.first().copied().filter(|_| mark.credit == 1.0));
            (options, chosen)
        }
        (Form::Drops(drops), _) => {
            open(drops.tempting.iter().filter_map(|choice| choice.mark.misconception.clone()), mark)
        }
        (Form::Number(number), _) => {
            open(number.tempting.iter().map(|wrong| wrong.misconception.clone()), mark)
        }
        _ => return None,
    };
    options.iter().any(|option| option.misconception().is_some()).then_some(AnswerShown { options, chosen })
}

/// The right answer, the tempting ones, and any other wrong one.
fn open(tempting: impl Iterator<Item = String>, mark: &Mark) -> (Vec<Leads<String>>, Option<usize>) {
    let mut options = vec![Leads::Right];
    options.extend(tempting.map(Leads::From));
    options.push(Leads::Wrong);
    let tempted = mark.misconception.as_ref();
    let tempted = tempted.and_then(|id| options.iter().position(|option| option.misconception() == Some(id)));
    let chosen = tempted.unwrap_or(if mark.credit == 1.0 { 0 } else { options.len() - 1 });
    (options, Some(chosen))
}
