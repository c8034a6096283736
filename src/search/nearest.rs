//! The head of a ranking, without the colour of every mix: what charts show to be far from it is not solved.
//!
//! Entry point: [`Search::nearest`]. Steps: read every mix off charts ([`Chart`]), twice, the second time less well; solve some of them,
//! spread over the whole list, and see how far charts are off, counted in what lies between the two readings; solve all that could
//! belong to the head, or lie on the other side of a limit, if charts were off by several times the most that was seen; and again, until
//! nothing more could. What is told was solved like any mix. That nothing is missed is not proved but measured (DEVELOPERS.md, "How a
//! search is made").

use super::rank::ranked;
use super::{Grid, Miss, Search, Tried, healed_colours};
use crate::Cores;
use crate::colour::{JUST_VISIBLE, Lab, Light, difference};
use crate::healing::{Chart, Trial};
use crate::pigment::{Mix, Paint};

/// The head of a ranking, and what can be told of the rest.
#[derive(Debug, Clone, PartialEq)]
pub struct Nearest {
    /// The first mixes of [`Found::ranking`](super::Found::ranking).
    pub first: Vec<Tried>,
    /// How many [`Found::near_ties`](super::Found::near_ties) there are.
    pub near_ties: usize,
    /// [`Found::gap`](super::Found::gap).
    pub gap: Option<f64>,
    /// [`Found::miss`](super::Found::miss).
    pub miss: Option<Miss>,
    /// How many of all mixes come nearer to the goal than the limit; 0 without one.
    pub nearer: usize,
}

/// Mixes solved to see how far charts are off.
const PROBES: usize = 96;
/// A chart may be off by this many times the most that was seen of it. In 1,000 random cases nothing was missed from 1.5 times on, and one count
/// was one off at once that much.
const TRUST: f64 = 2.5;
/// ΔE00 that is added to what lies between two readings, which may agree by chance.
const GRAIN: f64 = 0.002;
/// A chart is drawn where there are more mixes than so many for each that it takes; fewer are all solved.
const WORTH: usize = 5;

/// A mix as charts have it, and as it is.
struct Sighted {
    /// Place in the grid.
    place: usize,
    /// ΔE00 from the goal.
    about: f64,
    /// ΔE00 between the two readings.
    grain: f64,
    /// The colour and its ΔE00 from the goal, once solved.
    solved: Option<(Lab, f64)>,
}

impl Search {
    /// The first mixes of all, so many, and how many come nearer to the goal than the limit (ΔE00).
    pub fn nearest<const N: usize>(
        &self,
        trial: &Trial<N>,
        light: Light,
        first: usize,
        limit: Option<f64>,
    ) -> Nearest {
        let paints: Vec<&Paint> = self.grid.mixes().iter().map(|(_, paint)| paint).collect();
        let goal = self.goal.lab;
        let mut mixes = sighted(trial, &self.grid, goal, light);
        let solve = |mixes: &mut [Sighted], wanted: &dyn Fn(usize, &Sighted) -> bool| {
            let wanted =
                |(at, mix): (usize, &Sighted)| (mix.solved.is_none() && wanted(at, mix)).then_some(at);
            let new: Vec<usize> = mixes.iter().enumerate().filter_map(wanted).collect();
            let new_paints: Vec<&Paint> = new.iter().map(|&at| paints[mixes[at].place]).collect();
            for (&at, healed) in new.iter().zip(healed_colours(trial, &new_paints, light, Cores::All)) {
                mixes[at].solved = Some((healed, difference(healed, goal)));
            }
            !new.is_empty()
        };
        let every = (mixes.len() / PROBES).max(1);
        solve(&mut mixes, &|at, _| at % every == 0 || at <= first);
        let head = loop {
            let doubt = doubt(&mixes);
            let head = Head::of(&mixes, first);
            let unsure = |mix: &Sighted| {
                let doubt = doubt * mix.grain;
                let near = |error: f64| (mix.about - error).abs() <= doubt;
                mix.about <= head.last + doubt
                    || near(head.tied)
                    || (mix.about >= head.tied && mix.about <= head.next + doubt)
                    || limit.is_some_and(near)
            };
            if !solve(&mut mixes, &|_, mix| unsure(mix)) {
                break head;
            }
        };
        let nearer = |than: f64| mixes.iter().filter(|mix| mix.error() < than).count();
        let tied = mixes.iter().filter(|mix| mix.error() <= head.tied).count();
        let known = mixes.iter().filter_map(|mix| mix.solved.map(|(healed, _)| (mix.place, healed)));
        let mut ranking = ranked(&self.grid, known, goal);
        ranking.truncate(first);
        Nearest {
            near_ties: tied - 1,
            gap: (tied < mixes.len()).then(|| head.next - ranking[0].error),
            miss: self.goal.missed_by(&ranking[0]),
            nearer: limit.map_or(0, nearer),
            first: ranking,
        }
    }
}

impl Sighted {
    /// As a chart has it.
    // A call for each mix: a browser compiles a function anew, better, once it was called often, and goes on with the old one where it
    // has begun; in one long loop the whole first list of a page would be read by the worse code.
    #[inline(never)]
    fn read(chart: &Chart, place: usize, paint: &Paint, goal: Lab, light: Light) -> Self {
        let [fine, rough] = chart.read(paint).map(|reflectance| light.lab_of(&reflectance));
        Sighted { place, about: difference(fine, goal), grain: GRAIN + difference(fine, rough), solved: None }
    }

    /// ΔE00 from the goal as far as it is known.
    fn error(&self) -> f64 {
        self.solved.map_or(self.about, |(_, error)| error)
    }
}

/// All mixes, nearest to the goal first as charts have it.
fn sighted<const N: usize>(trial: &Trial<N>, grid: &Grid, goal: Lab, light: Light) -> Vec<Sighted> {
    let mixes = grid.mixes();
    let bottles: Vec<&Paint> =
        mixes.iter().filter(|(mix, _)| mix.drops().count() == 1).map(|(_, paint)| paint).collect();
    let many = mixes.len() > WORTH * Chart::SOLVED;
    let chart = if many { Chart::new(trial, &bottles) } else { None };
    let sight = |(place, (_, paint)): (usize, &(Mix, Paint))| match &chart {
        Some(chart) => Sighted::read(chart, place, paint, goal, light),
        None => Sighted { place, about: 0.0, grain: f64::INFINITY, solved: None },
    };
    let mut mixes: Vec<Sighted> = mixes.iter().enumerate().map(sight).collect();
    mixes.sort_by(|one, other| one.about.total_cmp(&other.about));
    mixes
}

/// By how many times its grain a mix may be off.
fn doubt(mixes: &[Sighted]) -> f64 {
    let off = mixes.iter().filter_map(|mix| Some((mix.solved?.1 - mix.about).abs() / mix.grain));
    TRUST * off.fold(1.0, f64::max)
}

/// Distances from the goal at which something begins or ends, as far as they are known.
struct Head {
    /// Of the last of the first mixes.
    last: f64,
    /// Up to which a mix is a near-tie.
    tied: f64,
    /// Of the first mix beyond.
    next: f64,
}

impl Head {
    fn of(mixes: &[Sighted], first: usize) -> Self {
        let mut errors: Vec<f64> = mixes.iter().filter_map(|mix| Some(mix.solved?.1)).collect();
        errors.sort_by(f64::total_cmp);
        let tied = errors[0] + JUST_VISIBLE;
        let next = errors[errors.partition_point(|error| *error <= tied)..].first();
        Head {
            last: errors[first.clamp(1, errors.len()) - 1],
            tied,
            next: next.copied().unwrap_or(f64::INFINITY),
        }
    }
}
