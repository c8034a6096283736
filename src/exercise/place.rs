//! Places: where the right answer stands among its options is drawn, so that nothing but knowledge finds it.
//!
//! Entry points: [`order_of`] is the order in which options are shown; [`Place`] says where the key shall stand in length of text, in lightness,
//! in chroma and by the mean of all colours, and judges whether it stands there among some wrong answers.

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

/// What of its options an exercise shows before one is chosen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Shown {
    /// Their texts and their colours.
    Colours,
    /// Their texts and their colours, most of which lie on one line from the colour by day to that under a lamp: few draws allow any place in
    /// lightness and in chroma together.
    Shifts,
    /// Their texts; of what they lead to little is known before.
    Texts,
    /// Their texts, and they have no colours.
    Words,
    /// Mixes. Most wrong ones come out darker than the best, whatever is chosen among them.
    Mixes,
}

impl Shown {
    /// Draws after which only what is shown has its place, those after which of colours only lightness has it, and those after which any place will do: better one exercise in a hundred that leans
    /// than none. Of causes and skins little differs from draw to draw, and of mixes a draw costs the whole grid.
    fn patience(self) -> [u32; 3] {
        match self {
            Shown::Colours | Shown::Shifts => [100, 150, 180],
            Shown::Words => [0, 120, 120],
            Shown::Texts => [30, 60, 60],
            Shown::Mixes => [24, 80, 80],
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
    /// Whether it is a bottle alone.
    pub alone: bool,
}

/// Where the key shall stand among its options. It is drawn for the exercise, not for the draw, so that places which few draws allow come no less
/// often; draws are thrown away that do not allow it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Place {
    /// How many wrong colours are darker.
    darker: usize,
    /// How many wrong colours have less chroma.
    duller: usize,
    /// How many wrong texts are shorter.
    shorter: usize,
    /// Its place among the options if the bottles alone came first.
    behind: usize,
    shown: Shown,
    /// Draws thrown away before.
    draw: u32,
}

impl Place {
    /// The place in an exercise with so many options: each equally often.
    pub fn of_exercise(
        seed: u64,
        drill: &str,
        exercise: &str,
        (options, shown): (usize, Shown),
        draw: u32,
    ) -> Self {
        let mut rng = stream(seed, &["place", drill, exercise]);
        let darker = below(&mut rng, options.max(1));
        let shorter = below(&mut rng, options.max(1));
        let duller = below(&mut rng, options.max(1));
        Place { darker, duller, shorter, behind: below(&mut rng, options.max(1)), shown, draw }
    }

    /// Whether the key has its place among these wrong answers, as far as that is still asked for.
    pub fn is_had_by(&self, key: Looks, wrong: &[Looks]) -> bool {
        let exactly =
            || self.is_lightness(key, wrong) && self.is_chroma(key, wrong) && self.is_mean(key, wrong);
        self.is_had(key, wrong, exactly)
    }

    /// The same, where it is enough that the key is between the wrong colours or the lightest, as it shall be; the darkest, which few draws allow,
    /// may be any.
    pub fn is_about_had_by(&self, key: Looks, wrong: &[Looks]) -> bool {
        let is_between = |darker: usize| darker > 0 && darker < wrong.len();
        self.is_had(key, wrong, || {
            self.darker == 0 || is_between(self.darker) == is_between(darker_than(key, wrong))
        })
    }

    fn is_had(&self, key: Looks, wrong: &[Looks], lightness: impl Fn() -> bool) -> bool {
        let [all, shown, lighter] = self.shown.patience();
        if self.draw < all.midpoint(shown) && !self.is_kind(key, wrong) {
            return false;
        }
        match (self.draw, self.shown) {
            (draw, _) if draw < all => self.is_length(key, wrong) && lightness(),
            (draw, Shown::Colours) if draw < shown => {
                self.is_lightness(key, wrong) && self.is_chroma(key, wrong)
            }
            (draw, Shown::Shifts) if draw < shown => {
                self.is_lightness(key, wrong) && self.is_length(key, wrong)
            }
            (draw, Shown::Colours | Shown::Shifts) if draw < lighter => self.is_lightness(key, wrong),
            (draw, _) if draw < shown => self.is_length(key, wrong),
            _ => true,
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

    /// Whether the key is a bottle alone or a mix as it shall be, where there are both.
    fn is_kind(&self, key: Looks, wrong: &[Looks]) -> bool {
        let alone = wrong.iter().chain([&key]).filter(|looks| looks.alone).count();
        alone == 0 || alone == wrong.len() + 1 || key.alone == (self.behind < alone)
    }

    /// Whether so many wrong colours are darker as shall be.
    fn is_lightness(&self, key: Looks, wrong: &[Looks]) -> bool {
        darker_than(key, wrong) == self.darker
    }

    /// Whether so many wrong colours have less chroma as shall have, where colours are what is chosen from.
    fn is_chroma(&self, key: Looks, wrong: &[Looks]) -> bool {
        let chroma = |looks: &Looks| libm::hypot(looks.lab.a, looks.lab.b);
        let duller = wrong.iter().filter(|wrong| chroma(wrong) < chroma(&key)).count();
        !matches!(self.shown, Shown::Colours | Shown::Shifts) || duller == self.duller
    }

    /// Whether the key's colour is nearest to the mean of all just where its place is the middle, by CIEDE2000 and by plain distance in L*a*b*.
    fn is_mean(&self, key: Looks, wrong: &[Looks]) -> bool {
        let is_middle = self.darker == wrong.len() / 2;
        self.shown == Shown::Mixes
            || wrong.len() < 2
            || [difference as fn(Lab, Lab) -> f64, distance]
                .iter()
                .all(|apart| is_nearest_to_mean(key, wrong, apart) == is_middle)
    }
}

/// Plain distance in L*a*b*.
fn distance(one: Lab, other: Lab) -> f64 {
    libm::hypot(one.l - other.l, libm::hypot(one.a - other.a, one.b - other.b))
}

/// How many wrong colours are darker than the key's.
fn darker_than(key: Looks, wrong: &[Looks]) -> usize {
    wrong.iter().filter(|wrong| wrong.lab.l < key.lab.l).count()
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

    fn place(darker: usize, shorter: usize, draw: u32) -> Place {
        Place { darker, duller: 0, shorter, behind: 0, shown: Shown::Texts, draw }
    }

    fn long(length: usize) -> Looks {
        Looks { lab: Lab::new(50.0, 0.0, 0.0), length, alone: false }
    }

    fn light(l: f64) -> Looks {
        Looks { lab: Lab::new(l, 8.0, 12.0), length: 10, alone: false }
    }

    /// Places in length that the key has among wrong texts.
    fn lengths(key: usize, wrong: &[usize]) -> Vec<usize> {
        let looks: Vec<Looks> = wrong.iter().copied().map(long).collect();
        (0..=wrong.len()).filter(|&shorter| place(0, shorter, 0).is_length(long(key), &looks)).collect()
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

    /// A colour has so many darker ones beside it, and just the place that says so fits.
    #[test]
    fn one_place_in_lightness_fits() {
        let fits = |key: f64, wrong: &[f64]| -> Vec<usize> {
            let looks: Vec<Looks> = wrong.iter().copied().map(light).collect();
            (0..=wrong.len()).filter(|&darker| place(darker, 0, 0).is_lightness(light(key), &looks)).collect()
        };
        assert_eq!(fits(30.0, &[40.0, 52.0]), [0]);
        assert_eq!(fits(40.0, &[30.0, 52.0]), [1]);
        assert_eq!(fits(52.0, &[30.0, 40.0]), [2]);
        assert_eq!(fits(30.0, &[40.0]), [0]);
        assert_eq!(fits(40.0, &[30.0]), [1]);
    }

    #[test]
    fn less_is_asked_for_the_more_draws_were_thrown_away() {
        let look = |l: f64, length: usize| Looks { length, ..light(l) };
        let wrong = [look(40.0, 12), look(52.0, 14)];
        // The key is the darkest, and of middle length.
        let key = look(30.0, 13);
        for shown in [Shown::Colours, Shown::Texts, Shown::Mixes] {
            let [all, half, least] = shown.patience();
            let has = |place: Place| Place { shown, ..place }.is_had_by(key, &wrong);
            let duller = |place: Place| Place { duller: 1, ..place };
            assert!(has(place(0, 1, 0)) && !has(place(1, 1, all - 1)) && !has(place(0, 0, all - 1)));
            // What is shown is asked for longer.
            let by_colour = shown == Shown::Colours;
            assert_eq!(has(place(0, 0, all)), by_colour);
            assert_eq!(has(place(1, 1, all)), !by_colour);
            assert!(!has(place(1, 0, half - 1)) && has(place(1, 0, least)));
            // Chroma is asked for of colours alone, and given up before lightness is.
            assert_eq!(has(duller(place(0, 1, half - 1))), !by_colour);
            assert!(has(duller(place(0, 1, half))));
            assert_eq!(has(place(1, 0, half)), !by_colour);
        }
    }

    /// Of some bottles alone among the options the key is one in as many places as there are of them.
    #[test]
    fn a_key_is_alone_as_often_as_others() {
        let look = |alone: bool| Looks { alone, ..light(50.0) };
        let fits = |key: bool, wrong: &[bool]| -> Vec<usize> {
            let looks: Vec<Looks> = wrong.iter().copied().map(look).collect();
            let place = |behind| Place { behind, ..place(0, 0, 0) };
            (0..=wrong.len()).filter(|&behind| place(behind).is_kind(look(key), &looks)).collect()
        };
        assert_eq!(fits(true, &[false, false]), [0]);
        assert_eq!(fits(false, &[true, false]), [1, 2]);
        assert_eq!(fits(true, &[true, false]), [0, 1]);
        assert_eq!(fits(false, &[true, true]), [2]);
        assert_eq!(fits(true, &[true, true]), [0, 1, 2], "all alike tells nothing");
        assert_eq!(fits(false, &[false, false]), [0, 1, 2]);
    }

    /// A colour has so many duller ones beside it, and just the place that says so fits.
    #[test]
    fn one_place_in_chroma_fits() {
        let chroma = |a: f64, b: f64| Looks { lab: Lab::new(50.0, a, b), length: 10, alone: false };
        let fits = |key: Looks, wrong: &[Looks]| -> Vec<usize> {
            let place = |duller| Place { duller, shown: Shown::Colours, ..place(0, 0, 0) };
            (0..=wrong.len()).filter(|&duller| place(duller).is_chroma(key, wrong)).collect()
        };
        let wrong = [chroma(3.0, 4.0), chroma(9.0, 12.0)];
        assert_eq!(fits(chroma(1.0, 1.0), &wrong), [0]);
        assert_eq!(fits(chroma(6.0, 8.0), &wrong), [1]);
        assert_eq!(fits(chroma(16.0, 12.0), &wrong), [2]);
    }

    /// Where it is enough to be between others or the lightest, the darkest may stand for the lightest, and any for the darkest.
    #[test]
    fn about_may_be_enough() {
        let look = |l: f64, length: usize| Looks { length, ..light(l) };
        let wrong = [look(40.0, 12), look(52.0, 14)];
        let about = |l: f64| {
            [0, 1, 2].map(|darker| {
                let place = Place { shown: Shown::Mixes, ..place(darker, 0, 0) };
                (place.is_had_by(look(l, 10), &wrong), place.is_about_had_by(look(l, 10), &wrong))
            })
        };
        assert_eq!(about(30.0), [(true, true), (false, false), (false, true)]);
        assert_eq!(about(45.0), [(false, true), (true, true), (false, false)]);
        assert_eq!(about(60.0), [(false, true), (false, false), (true, true)]);
    }
}
