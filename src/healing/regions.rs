//! Regions of an area in which several works overlap by chance.
//!
//! Entry point: [`regions`]. A work that covers 85% of the area also covers 85% of what another one covers (Demichel). Up to
//! [`EXACT_WORKS`] works every combination is a region of its own. Beyond that their number would double with every work; the mean
//! over all combinations is then taken by bivariate dimension reduction (H. Xu and S. Rahman, "A generalized dimension-reduction
//! method for multidimensional integration in stochastic mechanics", Int. J. Numer. Meth. Engng 61 (2004), from memory): each pair of
//! works is combined exactly while all others lie evenly spread at their mean amount. What is lost is how three and more works act
//! together beyond pairs: 0.02 to 0.10 ΔE00 on seven and eight works of strong bottles that cover 50 to 92% each, against all 128 and 256
//! combinations (the tests repeat one of these). It is continuous in every number.

use super::layers::Deposit;
use std::ops::Range;

/// Most works whose every combination is solved.
pub const EXACT_WORKS: usize = 6;

/// A share of the area, and the places of the deposits that lie in it. Shares add up to 1; in a mean by dimension reduction some are
/// negative.
pub(super) type Shared = (f64, Vec<usize>);

/// The deposits that lie in any region, and the regions of works, each given by its coverage (0 where nothing is left of it) and its
/// deposits.
pub(super) fn regions(works: Vec<(f64, Vec<Deposit>)>) -> (Vec<Deposit>, Vec<Shared>) {
    let mut deposits = Vec::new();
    let placed = |(coverage, own): (f64, Vec<Deposit>)| {
        let from = deposits.len();
        deposits.extend(own);
        (coverage, from..deposits.len())
    };
    let works: Vec<(f64, Range<usize>)> = works.into_iter().map(placed).collect();
    let regions =
        if works.len() <= EXACT_WORKS { every_combination(&works) } else { by_pairs(&works, &mut deposits) };
    (deposits, regions)
}

/// Every combination that covers some area.
fn every_combination(works: &[(f64, Range<usize>)]) -> Vec<Shared> {
    let mut regions = vec![(1.0, Vec::new())];
    for (coverage, deposits) in works {
        regions = regions
            .into_iter()
            .flat_map(|(share, below): Shared| {
                let mut with = below.clone();
                with.extend(deposits.clone());
                [(share * (1.0 - coverage), below), (share * coverage, with)]
            })
            .filter(|(share, _)| *share > 0.0)
            .collect();
    }
    regions
}

/// Regions whose weighted mean stands for that over all combinations, pairs exact.
fn by_pairs(works: &[(f64, Range<usize>)], all: &mut Vec<Deposit>) -> Vec<Shared> {
    // What covers everything or nothing is no matter of chance.
    let chance: Vec<usize> = (0..works.len()).filter(|&i| works[i].0 > 0.0 && works[i].0 < 1.0).collect();
    let mean: Vec<f64> = works.iter().map(|(coverage, _)| *coverage).collect();
    let mut spread = |(coverage, own): &(f64, Range<usize>)| {
        let from = all.len();
        all.extend(own.clone().map(|place| all[place].times(*coverage)).collect::<Vec<Deposit>>());
        from..all.len()
    };
    let at_mean: Vec<Range<usize>> = works.iter().map(&mut spread).collect();
    let with = |amounts: &[f64]| {
        let mut deposits = Vec::new();
        for (amount, ((_, own), at_mean)) in amounts.iter().zip(works.iter().zip(&at_mean)) {
            if *amount > 0.0 {
                deposits.extend(if *amount < 1.0 { at_mean.clone() } else { own.clone() });
            }
        }
        deposits
    };
    let count = chance.len() as f64;
    let mut found = Vec::new();
    let mut add = |share: f64, amounts: &[f64]| {
        if share != 0.0 {
            found.push((share, with(amounts)));
        }
    };
    let ends = |i: usize| [(0.0, 1.0 - works[i].0), (1.0, works[i].0)];
    let mut amounts = mean.clone();
    add((count - 1.0) * (count - 2.0) / 2.0, &mean);
    for (place, &i) in chance.iter().enumerate() {
        for (one, share) in ends(i) {
            amounts[i] = one;
            add(-(count - 2.0) * share, &amounts);
            for &j in &chance[place + 1..] {
                for (other, also) in ends(j) {
                    amounts[j] = other;
                    add(share * also, &amounts);
                }
                amounts[j] = mean[j];
            }
        }
        amounts[i] = mean[i];
    }
    found
}
