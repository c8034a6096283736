//! Which items to revise, in words, and the limits behind the words. Entry points: [`Flag`], [`flags`].

use super::classical::Classical;
use super::options::OptionRow;
use super::rasch::{ItemMeasure, Unlinked};
use crate::assess::cohort::wilson;
use crate::language::Language;
use crate::say;
use serde::Serialize;

/// Answers below which nothing is said about an item but that they are few: with 20 answers the 95% interval of a share
/// still spans about
/// 0.2 to each side. Common practice, no source for the number itself.
pub const FEWEST_ANSWERS: usize = 20;
/// People who must have chosen an option before their mean is held against the key's. Common practice, no source.
pub const FEWEST_CHOOSERS: usize = 5;
/// Mean credit above which an item counts as too easy: it tells hardly anybody apart. Common practice in test analysis, no
/// single source; a certificate may well keep such items where everybody must know the answer.
pub const FACILITY_MOST: f64 = 0.95;
/// Mean credit below which an item counts as too hard. Common practice in test analysis, no single source.
pub const FACILITY_LEAST: f64 = 0.20;
/// Discrimination below which an item hardly separates the stronger from the weaker: the lower limit that Ebel gave for the
/// upper-lower index (from memory), used for the point-biserial by common practice.
pub const DISCRIMINATION_LEAST: f64 = 0.20;
/// Mean square below which answers are more regular than the model expects. Wright and Linacre (1994) for ordinary
/// multiple-choice tests.
pub const FIT_LEAST: f64 = 0.7;
/// Mean square above which answers are more erratic than the model expects. Wright and Linacre (1994), likewise.
pub const FIT_MOST: f64 = 1.3;
/// Size that the t of a mean square must have as well, so that chance in small groups is not called misfit: about 95% of a
/// standard normal deviate.
pub const FIT_T: f64 = 2.0;

/// A reason to look at an item again.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Flag {
    /// Too few answers to judge it by.
    FewAnswers {
        /// How many there are.
        answers: usize,
    },
    /// Nearly everybody gets it right.
    TooEasy {
        /// Mean credit.
        facility: f64,
    },
    /// Hardly anybody gets it right.
    TooHard {
        /// Mean credit.
        facility: f64,
    },
    /// Fewer get it right than by guessing, beyond the 95% interval of the share.
    BelowGuessing {
        /// Share who got it right.
        right: f64,
        /// Share who would by choosing blindly.
        guessing: f64,
    },
    /// The weaker get it right more often: discrimination is further below 0 than one standard error, 1/√answers.
    NegativeDiscrimination {
        /// Corrected point-biserial.
        discrimination: f64,
    },
    /// The stronger get it right hardly more often, or not at all.
    WeakDiscrimination {
        /// Corrected point-biserial.
        discrimination: f64,
    },
    /// A wrong option draws better candidates than the key.
    DrawsBetter {
        /// The option in words.
        option: String,
        /// Mean credit elsewhere of who chose it.
        mean_rest: f64,
        /// The same of who chose the key.
        key_rest: f64,
    },
    /// Nobody chooses a wrong option.
    Unchosen {
        /// The option in words.
        option: String,
        /// People who were shown it.
        offered: usize,
    },
    /// Answers are more erratic than difficulty and ability explain.
    Erratic {
        /// Mean square furthest above 1.
        mean_square: f64,
    },
    /// Answers are more regular than difficulty and ability explain.
    TooRegular {
        /// Mean square furthest below 1.
        mean_square: f64,
    },
    /// It cannot be placed on the scale of difficulty.
    Unlinked {
        /// Why not.
        why: Unlinked,
    },
}

impl Flag {
    /// In words.
    pub fn words(&self, language: &Language) -> String {
        let percent = |share: f64| {
            say!(language, "report-percent", number = language.decimal(libm::round(share * 100.0), 0))
        };
        let hundredths = |number: f64| language.decimal(number, 2);
        // Without the sign of a zero.
        let signed = |number: f64| hundredths(libm::round(number * 100.0) / 100.0 + 0.0);
        match self {
            Flag::FewAnswers { answers } => {
                say!(language, "report-flag-few-answers", answers = *answers, least = FEWEST_ANSWERS)
            }
            Flag::TooEasy { facility } => {
                say!(language, "report-flag-too-easy", facility = hundredths(*facility))
            }
            Flag::TooHard { facility } => {
                say!(language, "report-flag-too-hard", facility = hundredths(*facility))
            }
            Flag::BelowGuessing { right, guessing } => say!(
                language,
                "report-flag-below-guessing",
                right = percent(*right),
                guessing = percent(*guessing)
            ),
            Flag::NegativeDiscrimination { discrimination } => {
                say!(language, "report-flag-negative", discrimination = signed(*discrimination))
            }
            Flag::WeakDiscrimination { discrimination } => {
                say!(language, "report-flag-weak", discrimination = signed(*discrimination))
            }
            Flag::DrawsBetter { option, mean_rest, key_rest } => say!(
                language,
                "report-flag-draws-better",
                option = option,
                rest = percent(*mean_rest),
                key = percent(*key_rest)
            ),
            Flag::Unchosen { option, offered } => {
                say!(language, "report-flag-unchosen", offered = *offered, option = option)
            }
            Flag::Erratic { mean_square } => {
                say!(language, "report-flag-erratic", square = hundredths(*mean_square))
            }
            Flag::TooRegular { mean_square } => {
                say!(language, "report-flag-too-regular", square = hundredths(*mean_square))
            }
            Flag::Unlinked { why } => {
                let why = language.say(
                    match why {
                        Unlinked::Unanswered => "report-unlinked-unanswered",
                        Unlinked::AllRight => "report-unlinked-all-right",
                        Unlinked::NoneRight => "report-unlinked-none-right",
                        Unlinked::Apart => "report-unlinked-apart",
                    },
                    &[],
                );
                say!(language, "report-flag-unlinked", why = why)
            }
        }
    }
}

/// All flags of one item.
pub(super) fn flags(classical: &Classical, options: &[OptionRow], rasch: &ItemMeasure) -> Vec<Flag> {
    if classical.answers < FEWEST_ANSWERS {
        return vec![Flag::FewAnswers { answers: classical.answers }];
    }
    let mut flags = Vec::new();
    match classical.facility {
        Some(facility) if facility > FACILITY_MOST => flags.push(Flag::TooEasy { facility }),
        Some(facility) if facility < FACILITY_LEAST => flags.push(Flag::TooHard { facility }),
        _ => {}
    }
    if let (Some(right), Some(guessing)) = (classical.right, guessing(classical, options))
        && wilson(right * classical.answers as f64, classical.answers)
            .is_some_and(|range| range.high < guessing)
    {
        flags.push(Flag::BelowGuessing { right, guessing });
    }
    match classical.discrimination {
        // Further below 0 than one standard error of a correlation that is really 0: a random answer is not called
        // misleading.
        Some(discrimination) if discrimination < -1.0 / libm::sqrt(classical.answers as f64) => {
            flags.push(Flag::NegativeDiscrimination { discrimination });
        }
        Some(discrimination) if discrimination < DISCRIMINATION_LEAST => {
            flags.push(Flag::WeakDiscrimination { discrimination });
        }
        _ => {}
    }
    flags.extend(option_flags(options));
    flags.extend(fit_flag(rasch));
    if let Some(unlinked) = rasch.unlinked {
        flags.push(Flag::Unlinked { why: unlinked });
    }
    flags
}

/// By how much the choosers of a wrong option must do better elsewhere than the key's (representative): less says nothing.
pub const BETTER_LEAST: f64 = 0.02;

/// Share of right answers by choosing blindly among the options shown; `None` where there is not one key.
fn guessing(classical: &Classical, options: &[OptionRow]) -> Option<f64> {
    let shown: usize = options.iter().map(|option| option.offered).sum();
    let one_key = options.iter().filter(|option| option.key).count() == 1;
    (one_key && options.len() > 1 && shown > 0).then(|| (classical.answers as f64 / shown as f64).min(1.0))
}

fn option_flags(options: &[OptionRow]) -> Vec<Flag> {
    // With several keys, the one whose choosers do best stands for them.
    let key_rest =
        options.iter().filter(|option| option.key).filter_map(|option| option.mean_rest).reduce(f64::max);
    let mut flags = Vec::new();
    for option in options.iter().filter(|option| !option.key) {
        if let (Some(mean_rest), Some(key_rest)) = (option.mean_rest, key_rest)
            && option.chosen >= FEWEST_CHOOSERS
            && mean_rest >= key_rest + BETTER_LEAST
        {
            flags.push(Flag::DrawsBetter { option: option.label.clone(), mean_rest, key_rest });
        }
        if option.chosen == 0 && option.offered >= FEWEST_ANSWERS {
            flags.push(Flag::Unchosen { option: option.label.clone(), offered: option.offered });
        }
    }
    flags
}

fn fit_flag(rasch: &ItemMeasure) -> Option<Flag> {
    let fit = rasch.fit?;
    let tails = [(fit.infit, fit.infit_t), (fit.outfit, fit.outfit_t)];
    let sure = |above: bool| {
        tails.iter().filter(move |(_, t)| t.is_some_and(|t| if above { t > FIT_T } else { t < -FIT_T }))
    };
    let most = sure(true).map(|tail| tail.0).fold(f64::NEG_INFINITY, f64::max);
    let least = sure(false).map(|tail| tail.0).fold(f64::INFINITY, f64::min);
    // Erratic answers spoil a paper, regular ones only waste a question.
    if most > FIT_MOST {
        Some(Flag::Erratic { mean_square: most })
    } else if least < FIT_LEAST {
        Some(Flag::TooRegular { mean_square: least })
    } else {
        None
    }
}
