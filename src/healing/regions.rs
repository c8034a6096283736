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

/// Most works whose every combination is solved.
pub const EXACT_WORKS: usize = 6;

/// A share of the area with what lies in it. Shares add up to 1; in a mean by dimension reduction some are negative.
pub(super) type Shared = (f64, Vec<Deposit>);

/// The regions of works, each given by its coverage (0 where nothing is left of it) and its deposits.
pub(super) fn regions(works: &[(f64, Vec<Deposit>)]) -> Vec<Shared> {
    if works.len() <= EXACT_WORKS { every_combination(works) } else { by_pairs(works) }
}

/// Every combination that covers some area.
pub(super) fn every_combination(works: &[(f64, Vec<Deposit>)]) -> Vec<Shared> {
    let mut regions = vec![(1.0, Vec::new())];
    for (coverage, deposits) in works {
        regions = regions
            .into_iter()
            .flat_map(|(share, below): Shared| {
                let mut with = below.clone();
                with.extend(deposits);
                [(share * (1.0 - coverage), below), (share * coverage, with)]
            })
            .filter(|(share, _)| *share > 0.0)
            .collect();
    }
    regions
}

/// Regions whose weighted mean stands for that over all combinations, pairs exact.
pub(super) fn by_pairs(works: &[(f64, Vec<Deposit>)]) -> Vec<Shared> {
    // What covers everything or nothing is no matter of chance.
    let chance: Vec<usize> = (0..works.len()).filter(|&i| works[i].0 > 0.0 && works[i].0 < 1.0).collect();
    let mean: Vec<f64> = works.iter().map(|(coverage, _)| *coverage).collect();
    let with = |amounts: &[f64]| {
        let mut deposits = Vec::new();
        for (amount, (_, own)) in amounts.iter().zip(works) {
            if *amount > 0.0 {
                deposits.extend(own.iter().map(|deposit| deposit.times(*amount)));
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
