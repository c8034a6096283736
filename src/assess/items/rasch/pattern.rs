//! One set of items that some people answered, and the chances of right answers given a score.
//!
//! With e(i) = exp(-difficulty), the sum of products of e over all ways to get r of the items right is the elementary
//! symmetric function γ(r). Given r, item i is right with chance π(i, r) = e(i) γ(r - 1 without i) / γ(r).

/// Scores of people who answered the same items, all or nothing right left out: those say nothing about difficulties.
pub(super) struct Pattern {
    /// The items, by their index among those estimated.
    pub items: Vec<usize>,
    /// People by how many they got right, from 0 to all.
    pub people: Vec<f64>,
}

/// Chances at given difficulties.
pub(super) struct Chances {
    /// e(i) of each item of the pattern, relative to the pattern's mean difficulty.
    easiness: Vec<f64>,
    /// γ(r - 1) / γ(r), from r = 0, where it is 0.
    ratios: Vec<f64>,
    /// Logarithm of γ(r) at the difficulties as given, not as centred.
    pub log_symmetric: Vec<f64>,
}

impl Chances {
    pub fn new(pattern: &Pattern, difficulties: &[f64]) -> Self {
        let n = pattern.items.len();
        let mean = pattern.items.iter().map(|&item| difficulties[item]).sum::<f64>() / n as f64;
        // Centred within the pattern: the functions stay far from the ends of the number range.
        let easiness: Vec<f64> =
            pattern.items.iter().map(|&item| libm::exp(mean - difficulties[item])).collect();
        let mut symmetric = vec![0.0; n + 1];
        symmetric[0] = 1.0;
        // Only sums of positive products: no digits are lost.
        for (done, e) in easiness.iter().enumerate() {
            for r in (1..=done + 1).rev() {
                symmetric[r] += e * symmetric[r - 1];
            }
        }
        let mut ratios = vec![0.0; n + 1];
        for r in 1..=n {
            ratios[r] = symmetric[r - 1] / symmetric[r];
        }
        let log_symmetric =
            symmetric.iter().enumerate().map(|(r, s)| libm::log(*s) - r as f64 * mean).collect();
        Chances { easiness, ratios, log_symmetric }
    }

    /// π(i, r) for r from 0 to all; `i` counts within the pattern.
    ///
    /// Who gets r right with i among them gets r - 1 right of the others: π(r) = e q(r) (1 - π(r - 1)), q being the ratio.
    /// Upwards this keeps its digits while π is at most a half; beyond, the same rule is followed from the top down.
    pub fn right(&self, i: usize, out: &mut [f64]) {
        let n = self.easiness.len();
        let e = self.easiness[i];
        out[0] = 0.0;
        out[n] = 1.0;
        let mut up = 0;
        while up + 1 < n {
            let next = e * self.ratios[up + 1] * (1.0 - out[up]);
            if next > 0.5 {
                break;
            }
            up += 1;
            out[up] = next;
        }
        for r in (up + 1..n).rev() {
            out[r] = 1.0 - out[r + 1] / (e * self.ratios[r + 1]);
        }
    }

    /// Chance that both i and j are right given r, for r from 0 to all, from π of item i. By the same rule as
    /// [`Chances::right`]: both(r) = e(j) q(r) (π(i, r - 1) - both(r - 1)).
    pub fn both_right(&self, right_i: &[f64], j: usize, out: &mut [f64]) {
        let n = self.easiness.len();
        let e = self.easiness[j];
        out[0] = 0.0;
        out[n] = 1.0;
        let mut up = 0;
        while up + 1 < n {
            let next = e * self.ratios[up + 1] * (right_i[up] - out[up]);
            if next > 0.5 * right_i[up + 1] {
                break;
            }
            up += 1;
            out[up] = next;
        }
        for r in (up + 1..n).rev() {
            out[r] = right_i[r] - out[r + 1] / (e * self.ratios[r + 1]);
        }
    }
}
