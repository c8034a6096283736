//! Places: where the right answer stands among its options is drawn, so that nothing but knowledge finds it.
//!
//! Entry points: [`order_of`] is the order in which options are shown; [`Place`] says where the key shall stand in length of text, in lightness
//! and by the mean of all colours, and judges whether it stands there among some wrong answers.

use super::seed::{below, shuffle, stream};
use crate::colour::{Lab, difference};

/// The order in which the options of an exercise are shown, by their places in the order made; the right one is made first.
///
/// It comes from a stream of its own, named by the exercise and not by the draw: what is drawn and thrown away on the way to an exercise does not touch it.
pub(super) fn order_of(seed: u64, drill: &str, exercise: &str, options: usize) -> Vec<usize> {
    let mut order: Vec<usize> = (0..options).collect();
    shuffle(&mut stream(seed, &["order", drill, exercise]), &mut order);
    order
}

/// Draws after which a place that few of a drill's draws allow is asked for less strictly, and those after which any place will do: better one
/// exercise in a hundred that leans than none.
const PATIENT_DRAWS: [u32; 2] = [60, 120];

/// The same of mixes, of which it is the length of their texts that few draws allow: a draw costs the whole grid.
const LENGTH_DRAWS: [u32; 3] = [8, 16, 40];

/// What is seen of an option before it is chosen.
#[derive(Debug, Clone, Copy)]
pub(super) struct Looks {
    /// Its colour.
    pub lab: Lab,
    /// Characters of its text.
    pub length: usize,
}

/// Where the key shall stand among its options. It is drawn for the exercise, not for the draw, so that places which few draws allow come no less
/// often; draws are thrown away that do not allow it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Place {
    /// How many wrong colours are darker; or how many are lighter, if it comes to that.
    darker: usize,
    /// How many wrong texts are shorter.
    shorter: usize,
    /// Draws thrown away before.
    draw: u32,
}

impl Place {
    /// The place in an exercise with so many options: each equally often.
    pub fn of_exercise(seed: u64, drill: &str, exercise: &str, options: usize, draw: u32) -> Self {
        let mut rng = stream(seed, &["place", drill, exercise]);
        let darker = below(&mut rng, options.max(1));
        Place { darker, shorter: below(&mut rng, options.max(1)), draw }
    }

    /// Whether so many draws were thrown away that any place will do.
    fn is_anywhere(&self) -> bool {
        self.draw >= PATIENT_DRAWS[1]
    }

    /// Whether so many draws were thrown away that less will do.
    fn is_patient(&self) -> bool {
        self.draw < PATIENT_DRAWS[0]
    }

    /// Whether the key's text has its place among wrong ones of these lengths: the shortest, the longest, or neither of them. One text
    /// is always the shortest and one the longest: texts of the same length at an end would tell that all of them are wrong, or not. After some draws
    /// the key may share its end with others, and after some more it is enough that it is not alone at an end where it shall not be.
    pub fn is_length(&self, key: usize, wrong: &[usize]) -> bool {
        let [strict, shared, careful] = LENGTH_DRAWS.map(|draws| self.draw < draws);
        if strict {
            return self.is_longest(key, wrong) && self.is_shortest(key, wrong);
        }
        let all = |holds: fn(&usize, &usize) -> bool| wrong.iter().all(|length| holds(length, &key));
        let (shortest, longest) = (self.shorter == 0, self.shorter == wrong.len());
        if shared && (shortest || longest) {
            return if shortest { all(usize::ge) } else { all(usize::le) };
        }
        !careful || wrong.is_empty() || (longest || !all(usize::lt)) && (shortest || !all(usize::gt))
    }

    /// Whether the key's text is alone the longest, or alone a wrong one is, as it shall be.
    fn is_longest(&self, key: usize, wrong: &[usize]) -> bool {
        let longest = wrong.iter().copied().max().unwrap_or(0);
        let as_long = wrong.iter().filter(|length| **length == longest).count();
        wrong.is_empty()
            || if self.shorter == wrong.len() { longest < key } else { longest > key && as_long == 1 }
    }

    /// The same of the shortest.
    fn is_shortest(&self, key: usize, wrong: &[usize]) -> bool {
        let shortest = wrong.iter().copied().min().unwrap_or(0);
        let as_short = wrong.iter().filter(|length| **length == shortest).count();
        wrong.is_empty() || if self.shorter == 0 { shortest > key } else { shortest < key && as_short == 1 }
    }

    /// Whether the key has its place in length and, of colours, in lightness. `shown` are colours to choose from: then the key is also nearest to
    /// the mean of all just where its place is the middle. `strictly` asks for the shortest text as for the longest.
    pub fn is_had_by(&self, key: Looks, wrong: &[Looks], shown: bool, strictly: bool) -> bool {
        if self.is_anywhere() {
            return true;
        }
        let lengths: Vec<usize> = wrong.iter().map(|wrong| wrong.length).collect();
        self.is_longest(key.length, &lengths)
            && (!strictly || self.is_shortest(key.length, &lengths))
            && self.is_lightness(key.lab, &wrong.iter().map(|wrong| wrong.lab).collect::<Vec<_>>(), shown)
    }

    fn is_lightness(&self, key: Lab, wrong: &[Lab], shown: bool) -> bool {
        if !shown && !self.is_patient() {
            return true;
        }
        let darker = wrong.iter().filter(|wrong| wrong.l < key.l).count();
        let either_way = !(shown && self.is_patient());
        (darker == self.darker || either_way && wrong.len() - darker == self.darker)
            && (!shown
                || wrong.len() < 2
                || is_nearest_to_mean(key, wrong) == (self.darker == wrong.len() / 2))
    }
}

/// Whether the key's colour is nearer to the mean of all options than any other.
fn is_nearest_to_mean(key: Lab, wrong: &[Lab]) -> bool {
    let labs = || wrong.iter().copied().chain([key]);
    let mean = |of: fn(Lab) -> f64| labs().map(of).sum::<f64>() / (wrong.len() + 1) as f64;
    let mean = Lab::new(mean(|lab| lab.l), mean(|lab| lab.a), mean(|lab| lab.b));
    let away = difference(key, mean);
    wrong.iter().all(|wrong| difference(*wrong, mean) > away)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeMap;

    /// Upper 0.1% of chi-square with 2, 3, 4 and 5 degrees of freedom (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4).
    const CRITICAL: [(usize, f64); 4] = [(2, 13.816), (3, 16.266), (4, 18.467), (5, 20.515)];

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

    fn place(shorter: usize, draw: u32) -> Place {
        Place { darker: 0, shorter, draw }
    }

    /// Where all lengths differ, a text is the shortest, the longest or neither, and just the place that says so fits.
    #[test]
    fn of_different_lengths_one_place_fits() {
        let fits = |key, wrong: &[usize]| -> Vec<usize> {
            (0..=wrong.len()).filter(|&shorter| place(shorter, 0).is_length(key, wrong)).collect()
        };
        assert_eq!(fits(10, &[12, 14]), [0]);
        assert_eq!(fits(13, &[12, 14]), [1]);
        assert_eq!(fits(15, &[12, 14]), [2]);
        assert_eq!(fits(13, &[12, 14, 15]), [1, 2], "neither the shortest nor the longest");
        assert_eq!(fits(10, &[12]), [0]);
        assert_eq!(fits(14, &[12]), [1]);
        assert_eq!(fits(9, &[]), [0]);
    }

    /// Equal texts at an end would let somebody guess between fewer.
    #[test]
    fn equal_lengths_at_an_end_fit_no_place() {
        for wrong in [&[10, 14][..], &[12, 12], &[10, 10], &[10]] {
            assert!((0..=wrong.len()).all(|shorter| !place(shorter, 0).is_length(10, wrong)), "{wrong:?}");
        }
    }

    #[test]
    fn less_is_asked_for_the_more_draws_were_thrown_away() {
        let [strict, shared, careful] = LENGTH_DRAWS;
        // Alone the longest, and two that are equally short.
        assert!(!place(2, strict - 1).is_length(14, &[12, 12]));
        assert!(place(2, strict).is_length(14, &[12, 12]));
        assert!(!place(0, strict).is_length(14, &[12, 12]) && !place(1, strict).is_length(14, &[12, 12]));
        // Equally short as another.
        assert!(place(0, strict).is_length(12, &[12, 14]) && place(1, strict).is_length(12, &[12, 14]));
        assert!(!place(2, strict).is_length(12, &[12, 14]) && place(2, shared).is_length(12, &[12, 14]));
        assert!(place(2, strict).is_length(14, &[12, 14]));
        assert!(!place(1, careful - 1).is_length(10, &[12, 14]));
        assert!(place(1, careful).is_length(10, &[12, 14]));
    }
}
