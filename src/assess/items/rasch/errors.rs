//! Standard errors of difficulties. Entry point: [`standard_errors`].

use super::conditional::Conditional;
use super::pattern::Chances;

/// Work (sets of items × the cube of their size, and the cube of all items) up to which the whole information matrix is
/// built.
const MOST_WORK: usize = 400_000_000;

/// Standard error of each difficulty, in logits, and whether they are exact.
///
/// Exact: roots of the diagonal of the inverse information matrix under the condition that difficulties sum to 0. Otherwise
/// each item's own information stands for the matrix, corrected as for equal items: (n - 1) / n / √information.
pub(super) fn standard_errors(likelihood: &Conditional, difficulties: &[f64]) -> (Vec<Option<f64>>, bool) {
    let n = likelihood.items();
    let cube = |n: usize| n.saturating_mul(n).saturating_mul(n);
    let work: usize = likelihood
        .patterns
        .iter()
        .fold(cube(n), |work, pattern| work.saturating_add(cube(pattern.items.len()) / 2));
    if work <= MOST_WORK
        && let Some(variances) = exact(likelihood, difficulties)
    {
        return (variances.into_iter().map(|variance| Some(libm::sqrt(variance))).collect(), true);
    }
    let own = (n as f64 - 1.0) / n as f64;
    let curvature = likelihood.at(difficulties).map(|point| point.curvature);
    let errors = (0..n)
        .map(|i| curvature.as_ref().map(|c| own / libm::sqrt(c[i])).filter(|error| error.is_finite()))
        .collect();
    (errors, false)
}

/// Diagonal of the inverse of the information matrix where difficulties sum to 0.
fn exact(likelihood: &Conditional, difficulties: &[f64]) -> Option<Vec<f64>> {
    let n = likelihood.items();
    let mut matrix = vec![0.0; n * n];
    for pattern in &likelihood.patterns {
        let chances = Chances::new(pattern, difficulties);
        let all = pattern.people.len();
        let rights: Vec<Vec<f64>> = (0..pattern.items.len())
            .map(|i| {
                let mut right = vec![0.0; all];
                chances.right(i, &mut right);
                right
            })
            .collect();
        let mut both = vec![0.0; all];
        for (i, &row) in pattern.items.iter().enumerate() {
            for (j, &column) in pattern.items.iter().enumerate().take(i + 1) {
                if i == j {
                    both.copy_from_slice(&rights[i]);
                } else {
                    chances.both_right(&rights[i], j, &mut both);
                }
                let covariance: f64 = (0..all)
                    .filter(|&r| pattern.people[r] > 0.0)
                    .map(|r| pattern.people[r] * (both[r] - rights[i][r] * rights[j][r]))
                    .sum();
                // The lower triangle only: items of a pattern are in rising order. Two exercises of one drill meet on the
                // diagonal, where each of them stands for the other's half too.
                let times = if i != j && row == column { 2.0 } else { 1.0 };
                matrix[row * n + column] += times * covariance;
            }
        }
    }
    // The matrix knows nothing of a shift of all difficulties; a constant fills that gap and is taken out again.
    let constant = (0..n).map(|i| matrix[i * n + i]).sum::<f64>() / n as f64;
    for row in 0..n {
        for column in 0..=row {
            matrix[row * n + column] += constant;
        }
    }
    let shift = 1.0 / (constant * n as f64 * n as f64);
    let variances: Vec<f64> = inverse_diagonal(matrix, n)?.into_iter().map(|v| v - shift).collect();
    variances.iter().all(|&variance| variance.is_finite() && variance > 0.0).then_some(variances)
}

/// Diagonal of the inverse of a symmetric positive matrix given by its lower triangle, by Cholesky's factor and its
/// inverse. In a fixed order of operations, which a linear-algebra library with its choice of processor instructions would
/// not promise.
fn inverse_diagonal(mut l: Vec<f64>, n: usize) -> Option<Vec<f64>> {
    for row in 0..n {
        for column in 0..=row {
            let sum: f64 = (0..column).map(|k| l[row * n + k] * l[column * n + k]).sum();
            let left = l[row * n + column] - sum;
            if row == column {
                if left <= 0.0 || !left.is_finite() {
                    return None;
                }
                l[row * n + row] = libm::sqrt(left);
            } else {
                l[row * n + column] = left / l[column * n + column];
            }
        }
    }
    let mut diagonal = vec![0.0; n];
    let mut solved = vec![0.0; n];
    for (column, out) in diagonal.iter_mut().enumerate() {
        // A column of the factor's inverse; the sum of its squares is the entry sought.
        for row in column..n {
            let unit = if row == column { 1.0 } else { 0.0 };
            let sum: f64 = (column..row).map(|k| l[row * n + k] * solved[k]).sum();
            solved[row] = (unit - sum) / l[row * n + row];
        }
        *out = solved[column..].iter().map(|value| value * value).sum();
    }
    Some(diagonal)
}
