//! Places: where the right answer stands among its options is drawn, so that nothing but knowledge finds it.
//!
//! Entry points: [`order_of`] is the order in which options are shown; [`Place`] says where the key shall stand in length of text, in lightness,
//! in chroma, in yellowness and by the mean of all colours, and judges whether it stands there among some wrong answers.

use super::seed::{below, shuffle, stream};
use super::tempt::Wording;
use crate::colour::{Lab, difference};
use crate::course::Limits;
use rand::Rng;
use std::ops::Range;

/// The order in which the options of an exercise are shown, by their places in the order made; the right one is made first.
///
/// It comes from a stream of its own, named by the exercise and not by the draw: what is drawn and thrown away on the way to an exercise does not touch it.
pub(super) fn order_of(seed: u64, drill: &str, exercise: &str, options: usize) -> Vec<usize> {
    let mut order: Vec<usize> = (0..options).collect();
    shuffle(&mut stream(seed, &["order", drill, exercise]), &mut order);
    order
}

/// What of its options an exercise shows before one is chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Shown {
    /// Their texts and their colours.
    Colours,
    /// Their texts; of what they lead to little is known before.
    Texts,
    /// Their texts, and they have no colours.
    Words,
    /// Bottles alone and mixes, worded like this. Most wrong ones come out darker than the best, whatever is chosen among them.
    Mixes(Wording),
    /// The same, all of a kind: bottles alone.
    Bottles,
    /// Mixes beside answers that place none, of which more is to be known than how light they are.
    MixesOrNone(Wording),
    /// Bottles alone beside such answers.
    BottlesOrNone,
}

/// What somebody might go by who does not know the answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Clue {
    /// Which options are of a kind.
    Kind,
    /// Whether there is anything to be told by kind.
    Unlike,
    Length,
    Lightness,
    Chroma,
    Yellowness,
    /// Which colour is nearest to the mean of all.
    Mean,
}

/// Of colours, the draws after which nothing is asked for of a first clue, of a second one and so on: by then no draw has allowed all of them together,
/// and better one exercise in a hundred that leans than none. Which is given up first is drawn, so that none of them always is.
const GIVEN_UP: [u32; 5] = [32, 44, 56, 72, 100];

impl Shown {
    /// What mixes within these limits show that are worded like this.
    pub fn of(limits: &Limits, wording: Wording) -> Self {
        if limits.most_modifier_drops() == 0 { Shown::Bottles } else { Shown::Mixes(wording) }
    }

    /// The same beside answers that place no mix.
    pub fn or_none(self) -> Self {
        match self {
            Shown::Mixes(wording) => Shown::MixesOrNone(wording),
            Shown::Bottles => Shown::BottlesOrNone,
            other => other,
        }
    }

    /// Whether the place in lightness that was drawn shall be had in most draws, and not just about.
    fn is_strict(self) -> bool {
        matches!(self, Shown::Mixes(_) | Shown::Bottles)
    }

    /// What the key's place is drawn in, each with the draws in which it is asked for. Of causes and skins little differs from draw to draw, and of
    /// mixes a draw costs the whole grid.
    fn clues(self, rng: &mut impl Rng) -> Vec<(Clue, Range<u32>)> {
        match self {
            Shown::Colours => {
                let mut first = [Clue::Chroma, Clue::Yellowness, Clue::Length];
                let mut last = [Clue::Lightness, Clue::Mean];
                shuffle(rng, &mut first);
                shuffle(rng, &mut last);
                first.into_iter().chain(last).zip(GIVEN_UP).map(|(clue, draw)| (clue, 0..draw)).collect()
            }
            Shown::Words => vec![(Clue::Kind, 0..120), (Clue::Length, 0..120)],
            Shown::Texts => vec![(Clue::Lightness, 0..30), (Clue::Mean, 0..30), (Clue::Length, 0..60)],
            // Where the best is always of one kind, as it is in some drills, all of them shall be of that kind.
            Shown::Mixes(_) | Shown::MixesOrNone(_) => vec![
                (Clue::Lightness, 0..if self.is_strict() { 160 } else { 48 }),
                (Clue::Kind, 0..36),
                (Clue::Unlike, 36..100),
                (Clue::Length, 0..100),
            ],
            Shown::Bottles | Shown::BottlesOrNone => {
                vec![(Clue::Lightness, 0..if self.is_strict() { 120 } else { 24 }), (Clue::Length, 0..80)]
            }
        }
    }
}

/// What is seen of an option before it is chosen.
#[derive(Debug, Clone, Copy)]
pub(super) struct Looks {
    /// Its colour.
    pub lab: Lab,
    /// Characters of its text.
    pub length: usize,
    /// Whether it is of the kind that is told at a glance: a bottle alone, or an answer that says whom to ask.
    pub of_kind: bool,
}

/// Where the key shall stand among its options. It is drawn for the exercise, not for the draw, so that places which few draws allow come no less
/// often; draws are thrown away that do not allow it.
#[derive(Debug, Clone)]
pub(super) struct Place {
    /// How many wrong colours are darker.
    darker: usize,
    /// How many wrong colours have less chroma, and how many are less yellow: of browns the one hardly ever goes without the other.
    duller: usize,
    /// How many wrong texts are shorter.
    shorter: usize,
    /// How many options are of the kind: some and not all.
    of_kind: usize,
    /// Its place among the options if those of the kind came first.
    behind: usize,
    /// What is asked for in this draw.
    clues: Vec<Clue>,
    /// Whether nothing less will do in this draw.
    is_strict: bool,
}

/// Of so many draws, one is content with a place that is about the one drawn. Most wrong mixes come out darker than the best: were each draw content,
/// the lightest would stand for the darkest again and again; were none, some clients would hardly have an exercise.
const CONTENT_ONCE_IN: u32 = 5;

impl Place {
    /// The place in an exercise with so many options, of which this is shown: each equally often. So many draws were thrown away before.
    pub fn of_exercise(
        seed: u64,
        drill: &str,
        exercise: &str,
        (options, shown): (usize, Shown),
        draw: u32,
    ) -> Self {
        let mut rng = stream(seed, &["place", drill, exercise]);
        let mut place = || below(&mut rng, options.max(1));
        let (darker, shorter, duller, behind) = (place(), place(), place(), place());
        let of_kind = 1 + below(&mut rng, options.max(2) - 1);
        let shorter = match shown {
            Shown::Mixes(wording) | Shown::MixesOrNone(wording) => {
                length_of_mix(options, (of_kind, behind), wording, &mut rng)
            }
            _ => shorter,
        };
        let clues = shown.clues(&mut rng);
        let clues =
            clues.into_iter().filter(|(_, draws)| draws.contains(&draw)).map(|(clue, _)| clue).collect();
        Place {
            darker,
            duller,
            shorter,
            of_kind,
            behind,
            clues,
            is_strict: shown.is_strict() && !(draw + 1).is_multiple_of(CONTENT_ONCE_IN),
        }
    }

    /// How many options shall be of the kind that is told at a glance.
    pub fn of_kind(&self) -> usize {
        self.of_kind
    }

    /// Whether the key has its place among these wrong answers, as far as that is still asked for.
    pub fn is_had_by(&self, key: Looks, wrong: &[Looks]) -> bool {
        self.clues.iter().all(|clue| self.holds(*clue, key, wrong))
    }

    /// The same, where in one draw of some it is enough that the key is between the wrong colours or not, as it shall be: either end may stand for the
    /// other.
    pub fn is_about_had_by(&self, key: Looks, wrong: &[Looks]) -> bool {
        if self.is_strict {
            return self.is_had_by(key, wrong);
        }
        let is_between = |darker: usize| darker > 0 && darker < wrong.len();
        let is_about = || is_between(self.darker) == is_between(less(key, wrong, lightness));
        self.clues.iter().all(|clue| match clue {
            Clue::Lightness => is_about(),
            _ => self.holds(*clue, key, wrong),
        })
    }

    fn holds(&self, clue: Clue, key: Looks, wrong: &[Looks]) -> bool {
        match clue {
            Clue::Kind => self.is_kind(key, wrong),
            Clue::Unlike => wrong.iter().all(|wrong| wrong.of_kind == key.of_kind),
            Clue::Length => self.is_length(key, wrong),
            Clue::Lightness => less(key, wrong, lightness) == self.darker,
            Clue::Chroma => less(key, wrong, chroma) == self.duller,
            Clue::Yellowness => less(key, wrong, |lab| lab.b) == self.duller,
            Clue::Mean => self.is_mean(key, wrong),
        }
    }

    /// Whether the key's text is alone the shortest, alone the longest, or neither. One text is always the shortest and one the longest: texts of
    /// the same length at an end would tell that all of them are wrong, or not.
    fn is_length(&self, key: Looks, wrong: &[Looks]) -> bool {
        let lengths = || wrong.iter().map(|wrong| wrong.length);
        let (Some(shortest), Some(longest)) = (lengths().min(), lengths().max()) else { return true };
        let is_alone = |end: usize| lengths().filter(|length| *length == end).count() == 1;
        let longest_fits = if self.shorter == wrong.len() {
            longest < key.length
        } else {
            longest > key.length && is_alone(longest)
        };
        let shortest_fits = if self.shorter == 0 {
            shortest > key.length
        } else {
            shortest < key.length && is_alone(shortest)
        };
        longest_fits && shortest_fits
    }

    /// Whether as many options are of the kind as shall be, and the key is or is not. Were any number of them welcome, those would come oftener
    /// that make it easy for the key to have its place, and so tell of it.
    fn is_kind(&self, key: Looks, wrong: &[Looks]) -> bool {
        let of_kind = wrong.iter().chain([&key]).filter(|looks| looks.of_kind).count();
        wrong.is_empty() || (of_kind == self.of_kind && key.of_kind == (self.behind < of_kind))
    }

    /// Whether the key's colour is nearest to the mean of all just where its place is the middle, by CIEDE2000 and by plain distance in L*a*b*.
    fn is_mean(&self, key: Looks, wrong: &[Looks]) -> bool {
        let is_middle = self.darker == wrong.len() / 2;
        wrong.len() < 2
            || [difference as fn(Lab, Lab) -> f64, distance]
                .iter()
                .all(|apart| is_nearest_to_mean(key, wrong, apart) == is_middle)
    }
}

/// Plain distance in L*a*b*.
fn distance(one: Lab, other: Lab) -> f64 {
    libm::hypot(one.l - other.l, libm::hypot(one.a - other.a, one.b - other.b))
}

/// How many wrong texts are shorter than a mix's, of which so many are bottles alone and come first. Bottles alone have the shortest texts or the
/// longest, by how mixes are worded, and that is drawn: so the only one of its kind is at one end, the others beside it are at the other one or of
/// middle length, and of all but the only one more are of middle length, so that over all exercises each place is as likely.
fn length_of_mix(
    options: usize,
    (of_kind, behind): (usize, usize),
    wording: Wording,
    rng: &mut impl Rng,
) -> usize {
    let last = options.max(1) - 1;
    let end = |is_longest: bool| if is_longest { last } else { 0 };
    let is_alone = behind < of_kind;
    let (alone_is_one, mix_is_one) = (of_kind == 1, of_kind == last);
    let is_only = if is_alone { alone_is_one } else { mix_is_one };
    // The only one of its kind it is in 2 of n(n - 1) cases; (n - 2) in n shall be of middle length.
    if !is_only && options > 2 && below(rng, options + 1) < last {
        return 1 + below(rng, options - 2);
    }
    // The end that those of its kind have, where that of the others has one alone or it is alone itself.
    if is_only || alone_is_one || mix_is_one {
        end(is_alone == (wording == Wording::Full))
    } else {
        end(below(rng, 2) == 1)
    }
}

fn lightness(lab: Lab) -> f64 {
    lab.l
}

fn chroma(lab: Lab) -> f64 {
    libm::hypot(lab.a, lab.b)
}

/// How many wrong colours have less of this than the key's.
fn less(key: Looks, wrong: &[Looks], of: impl Fn(Lab) -> f64) -> usize {
    wrong.iter().filter(|wrong| of(wrong.lab) < of(key.lab)).count()
}

/// Whether the key's colour is nearer to the mean of all options than any other.
fn is_nearest_to_mean(key: Looks, wrong: &[Looks], apart: &fn(Lab, Lab) -> f64) -> bool {
    let labs = || wrong.iter().map(|wrong| wrong.lab).chain([key.lab]);
    let mean = |of: fn(Lab) -> f64| labs().map(of).sum::<f64>() / (wrong.len() + 1) as f64;
    let mean = Lab::new(mean(|lab| lab.l), mean(|lab| lab.a), mean(|lab| lab.b));
    let away = apart(key.lab, mean);
    wrong.iter().all(|wrong| apart(wrong.lab, mean) > away)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeMap;

    /// Upper 0.1% of chi-square with 1 to 5 degrees of freedom (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4).
    const CRITICAL: [(usize, f64); 5] = [(1, 10.828), (2, 13.816), (3, 16.266), (4, 18.467), (5, 20.515)];

    fn is_uniform(counts: &[u32]) -> bool {
        let expected = f64::from(counts.iter().sum::<u32>()) / counts.len() as f64;
        let square: f64 = counts.iter().map(|count| (f64::from(*count) - expected).powi(2) / expected).sum();
        let (_, critical) = CRITICAL.iter().find(|(freedom, _)| freedom + 1 == counts.len()).unwrap();
        square < *critical
    }

    /// A hundred thousand exercises: of a thousand drills the first hundred numbers.
    fn orders(options: usize) -> impl Iterator<Item = Vec<usize>> {
        (0..1000).flat_map(move |drill| {
            let drill = format!("drill-{drill}");
            (0..100).map(move |number: u32| order_of(2026, &drill, &number.to_string(), options))
        })
    }

    #[test]
    fn the_key_stands_in_each_place_equally_often() {
        for options in [3, 4, 5] {
            let mut counts = vec![0; options];
            for order in orders(options) {
                counts[order.iter().position(|&from| from == 0).unwrap()] += 1;
            }
            assert_eq!(counts.iter().sum::<u32>(), 100_000);
            assert!(is_uniform(&counts), "{counts:?}");
        }
        assert!(!is_uniform(&[33_000, 33_000, 34_000]));
    }

    #[test]
    fn every_order_of_three_comes_equally_often() {
        let mut counts: BTreeMap<Vec<usize>, u32> = BTreeMap::new();
        for order in orders(3) {
            *counts.entry(order).or_default() += 1;
        }
        assert_eq!(counts.len(), 6);
        assert!(is_uniform(&counts.values().copied().collect::<Vec<_>>()), "{counts:?}");
    }

    fn place(darker: usize, shorter: usize) -> Place {
        Place { darker, duller: 0, shorter, of_kind: 1, behind: 0, clues: Vec::new(), is_strict: false }
    }

    fn long(length: usize) -> Looks {
        Looks { lab: Lab::new(50.0, 0.0, 0.0), length, of_kind: false }
    }

    fn coloured(l: f64, a: f64, b: f64) -> Looks {
        Looks { lab: Lab::new(l, a, b), length: 10, of_kind: false }
    }

    fn light(l: f64) -> Looks {
        coloured(l, 8.0, 12.0)
    }

    /// Places in length that the key has among wrong texts.
    fn lengths(key: usize, wrong: &[usize]) -> Vec<usize> {
        let looks: Vec<Looks> = wrong.iter().copied().map(long).collect();
        (0..=wrong.len()).filter(|&shorter| place(0, shorter).is_length(long(key), &looks)).collect()
    }

    /// Where all lengths differ, a text is the shortest, the longest or neither, and just the place that says so fits.
    #[test]
    fn of_different_lengths_one_place_fits() {
        assert_eq!(lengths(10, &[12, 14]), [0]);
        assert_eq!(lengths(13, &[12, 14]), [1]);
        assert_eq!(lengths(15, &[12, 14]), [2]);
        assert_eq!(lengths(13, &[12, 14, 15]), [1, 2], "neither the shortest nor the longest");
        assert_eq!(lengths(10, &[12]), [0]);
        assert_eq!(lengths(14, &[12]), [1]);
        assert_eq!(lengths(9, &[]), [0]);
    }

    /// Equal texts at an end would let somebody guess between fewer.
    #[test]
    fn equal_lengths_at_an_end_fit_no_place() {
        for wrong in [&[10, 14][..], &[12, 12], &[10, 10], &[10]] {
            assert!(lengths(10, wrong).is_empty(), "{wrong:?}");
        }
    }

    /// Of a clue, the places that fit a key among wrong answers: of `place(at)` for each place.
    fn fitting(clue: Clue, key: Looks, wrong: &[Looks], place: impl Fn(usize) -> Place) -> Vec<usize> {
        (0..=wrong.len()).filter(|&at| place(at).holds(clue, key, wrong)).collect()
    }

    /// A colour has so many darker, duller or less yellow ones beside it, and just the place that says so fits.
    #[test]
    fn one_place_in_each_coordinate_fits() {
        let darker = |key: f64, wrong: &[f64]| {
            let looks: Vec<Looks> = wrong.iter().copied().map(light).collect();
            fitting(Clue::Lightness, light(key), &looks, |darker| place(darker, 0))
        };
        assert_eq!(darker(30.0, &[40.0, 52.0]), [0]);
        assert_eq!(darker(40.0, &[30.0, 52.0]), [1]);
        assert_eq!(darker(52.0, &[30.0, 40.0]), [2]);
        assert_eq!(darker(30.0, &[40.0]), [0]);
        assert_eq!(darker(40.0, &[30.0]), [1]);
        let wrong = [coloured(50.0, 3.0, 4.0), coloured(50.0, 9.0, 12.0)];
        // Red or not, chroma is what counts: 20, then 10, then 1.
        for (at, key) in [(2, coloured(50.0, 20.0, 1.0)), (1, coloured(50.0, 8.0, 6.0))] {
            assert_eq!(fitting(Clue::Chroma, key, &wrong, |duller| Place { duller, ..place(0, 0) }), [at]);
        }
        for (at, key) in [(0, coloured(50.0, 20.0, 1.0)), (1, coloured(50.0, 8.0, 6.0))] {
            assert_eq!(
                fitting(Clue::Yellowness, key, &wrong, |duller| Place { duller, ..place(0, 0) }),
                [at]
            );
        }
    }

    /// The key is nearest to the mean of all where its place in lightness is the middle, and else not.
    #[test]
    fn the_middle_colour_is_the_mean_one() {
        let wrong = [light(30.0), light(60.0)];
        let fits = |key: f64| fitting(Clue::Mean, light(key), &wrong, |darker| place(darker, 0));
        assert_eq!(fits(44.0), [1]);
        assert_eq!(fits(20.0), [0, 2]);
        assert_eq!(fits(70.0), [0, 2]);
    }

    #[test]
    fn less_is_asked_for_the_more_draws_were_thrown_away() {
        let asked = |exercise: &str, shown: Shown, draw: u32| {
            Place::of_exercise(2026, "drill", exercise, (3, shown), draw).clues
        };
        let texts = |draw| asked("1", Shown::Texts, draw);
        assert_eq!(texts(29), [Clue::Lightness, Clue::Mean, Clue::Length]);
        assert_eq!(texts(30), [Clue::Length]);
        assert_eq!(texts(60), []);
        // Of colours one clue after the other is given up, in an order that is the exercise's own.
        let mut first = BTreeMap::new();
        for number in 0..1000 {
            let exercise = number.to_string();
            let all = asked(&exercise, Shown::Colours, 0);
            assert_eq!(all.len(), GIVEN_UP.len());
            for (at, draw) in GIVEN_UP.into_iter().enumerate() {
                assert_eq!(asked(&exercise, Shown::Colours, draw - 1), all[at..]);
                assert_eq!(asked(&exercise, Shown::Colours, draw), all[at + 1..]);
            }
            *first.entry(format!("{:?}", all[0])).or_insert(0) += 1;
        }
        // Lightness and the mean, which are seen first, are given up last.
        assert_eq!(first.len(), 3);
        assert!(is_uniform(&first.values().copied().collect::<Vec<_>>()), "{first:?}");
    }

    /// Where a clue is asked for, a key that does not have its place in it is refused.
    #[test]
    fn every_clue_that_is_asked_for_counts() {
        let wrong = [long(12), long(14)];
        let asked = |clues: &[Clue]| Place { clues: clues.to_vec(), ..place(0, 1) };
        assert!(asked(&[]).is_had_by(long(15), &wrong));
        assert!(!asked(&[Clue::Length]).is_had_by(long(15), &wrong));
        assert!(asked(&[Clue::Length]).is_had_by(long(13), &wrong));
        // The first place among the options is that of the one that is of the kind.
        let wrong = [Looks { of_kind: true, ..long(12) }, long(14)];
        assert!(!asked(&[Clue::Length, Clue::Kind]).is_had_by(long(13), &wrong));
    }

    /// Of some of a kind among the options, which are as many as shall be, the key is one in as many places as there are of them.
    #[test]
    fn a_key_is_of_a_kind_as_often_as_others() {
        let look = |of_kind: bool| Looks { of_kind, ..light(50.0) };
        let fits = |of_kind: usize, key: bool, wrong: &[bool]| -> Vec<usize> {
            let looks: Vec<Looks> = wrong.iter().copied().map(look).collect();
            fitting(Clue::Kind, look(key), &looks, |behind| Place { of_kind, behind, ..place(0, 0) })
        };
        assert_eq!(fits(1, true, &[false, false]), [0]);
        assert_eq!(fits(1, false, &[true, false]), [1, 2]);
        assert_eq!(fits(2, true, &[true, false]), [0, 1]);
        assert_eq!(fits(2, false, &[true, true]), [2]);
        for (other, key, wrong) in
            [(2, true, [false, false]), (1, true, [true, false]), (1, true, [true, true])]
        {
            assert!(fits(other, key, &wrong).is_empty());
        }
        assert_eq!(fits(1, true, &[]), [0], "nothing to be told from");
    }

    /// Texts of mixes are as often the shortest, the longest or neither, though the only one of its kind is never of middle length and nothing
    /// takes its end from it.
    #[test]
    fn a_mix_is_of_each_length_equally_often() {
        for options in [2, 3, 4, 5] {
            let mut rng = stream(2026, &["lengths"]);
            let mut counts = vec![0; options];
            for at in 0..60_000 {
                let of_kind = 1 + below(&mut rng, options - 1);
                let behind = below(&mut rng, options);
                let wording = [Wording::Plain, Wording::Full][at % 2];
                let shorter = length_of_mix(options, (of_kind, behind), wording, &mut rng);
                let is_alone = behind < of_kind;
                let is_only = (of_kind == 1 && is_alone) || (of_kind + 1 == options && !is_alone);
                // Bottles alone are the longest where they are worded in full, and else the shortest.
                if is_only {
                    let is_longest = is_alone == (wording == Wording::Full);
                    assert_eq!(shorter, if is_longest { options - 1 } else { 0 });
                } else if of_kind == 1 {
                    assert_ne!(shorter, if wording == Wording::Full { options - 1 } else { 0 });
                }
                counts[shorter] += 1;
            }
            assert!(is_uniform(&counts), "{counts:?}");
        }
    }

    /// Where it is enough to be between others or not, either end may stand for the other.
    #[test]
    fn about_may_be_enough() {
        let wrong = [light(40.0), light(52.0)];
        let about = |l: f64| {
            [0, 1, 2].map(|darker| {
                let place = Place { clues: vec![Clue::Lightness], ..place(darker, 0) };
                (place.is_had_by(light(l), &wrong), place.is_about_had_by(light(l), &wrong))
            })
        };
        assert_eq!(about(30.0), [(true, true), (false, false), (false, true)]);
        assert_eq!(about(45.0), [(false, false), (true, true), (false, false)]);
        assert_eq!(about(60.0), [(false, true), (false, false), (true, true)]);
        let strict = Place { clues: vec![Clue::Lightness], is_strict: true, ..place(2, 0) };
        assert!(!strict.is_about_had_by(light(30.0), &wrong), "the darkest is not the lightest");
        assert!(strict.is_about_had_by(light(60.0), &wrong));
    }
}
