//! The difficulties of greatest likelihood. Entry point: [`minimise`].
//!
//! Limited-memory BFGS (Nocedal 1980): Newton's steps with a curvature learnt on the way, begun from each item's own, which
//! is nearly right already; each step is halved until the value falls (Armijo's rule). The problem is convex and has one
//! solution.

use super::conditional::{Conditional, Point, centre};

/// Steps remembered.
const MEMORY: usize = 12;
/// Most steps. About ten are needed where all answered all, some tens where papers hang together loosely.
const MOST_STEPS: usize = 500;
/// Most halvings of one step.
const MOST_HALVINGS: usize = 40;
/// Slope over curvature, in logits, at which the estimate is done: a millionth of the smallest standard error worth
/// reporting.
const DONE: f64 = 1e-9;
/// Longest change of a difficulty in one step, logits.
const LONGEST: f64 = 2.0;
/// Share of the value within which two values are one, for rounding.
const SAME: f64 = 1e-13;

struct Step {
    moved: Vec<f64>,
    bent: Vec<f64>,
}

/// Difficulties centred at 0; `None` where there are none or the search does not settle.
pub(super) fn minimise(likelihood: &Conditional) -> Option<Vec<f64>> {
    if likelihood.items() < 2 {
        return None;
    }
    let mut at = likelihood.start();
    let mut here = likelihood.at(&at)?;
    let mut steps: Vec<Step> = Vec::new();
    for _ in 0..MOST_STEPS {
        if is_done(&here) {
            return Some(at);
        }
        let mut direction = direction(&here, &steps, likelihood.items());
        let mut fall = dot(&direction, &here.slope);
        if fall >= 0.0 {
            // What was remembered misleads: begin anew.
            steps.clear();
            direction = self::direction(&here, &steps, likelihood.items());
            fall = dot(&direction, &here.slope);
        }
        let longest = direction.iter().fold(0.0_f64, |most, d| most.max(d.abs()));
        let mut length = if longest > LONGEST { LONGEST / longest } else { 1.0 };
        let mut found = None;
        for _ in 0..MOST_HALVINGS {
            let mut to: Vec<f64> = at.iter().zip(&direction).map(|(x, d)| x + length * d).collect();
            centre(&mut to);
            let slack = SAME * here.value.abs();
            if let Some(there) = likelihood.at(&to)
                && there.value <= here.value + 1e-4 * length * fall + slack
            {
                found = Some((to, there));
                break;
            }
            length *= 0.5;
        }
        let Some((to, there)) = found else { break };
        let moved = to.iter().zip(&at).map(|(new, old)| new - old).collect::<Vec<_>>();
        let bent = there.slope.iter().zip(&here.slope).map(|(new, old)| new - old).collect::<Vec<_>>();
        if dot(&moved, &bent) > 0.0 {
            steps.push(Step { moved, bent });
            if steps.len() > MEMORY {
                steps.remove(0);
            }
        }
        (at, here) = (to, there);
    }
    is_done(&here).then_some(at)
}

fn is_done(point: &Point) -> bool {
    point.slope.iter().zip(&point.curvature).all(|(slope, curvature)| slope.abs() <= DONE * curvature)
}

/// Where to go: the two loops of Nocedal (1980).
fn direction(point: &Point, steps: &[Step], items: usize) -> Vec<f64> {
    let mut q = point.slope.clone();
    let mut shares = Vec::with_capacity(steps.len());
    for step in steps.iter().rev() {
        let share = dot(&step.moved, &q) / dot(&step.moved, &step.bent);
        q.iter_mut().zip(&step.bent).for_each(|(q, bent)| *q -= share * bent);
        shares.push(share);
    }
    // Items pull on each other; for n equal items a step along one's own curvature is too long by n / (n - 1).
    let own = (items as f64 - 1.0) / items as f64;
    q.iter_mut().zip(&point.curvature).for_each(|(q, curvature)| *q *= own / curvature);
    for (step, share) in steps.iter().zip(shares.into_iter().rev()) {
        let back = dot(&step.bent, &q) / dot(&step.moved, &step.bent);
        q.iter_mut().zip(&step.moved).for_each(|(q, moved)| *q += (share - back) * moved);
    }
    q.iter_mut().for_each(|q| *q = -*q);
    centre(&mut q);
    q
}

fn dot(one: &[f64], other: &[f64]) -> f64 {
    one.iter().zip(other).map(|(a, b)| a * b).sum()
}
