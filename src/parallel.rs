//! Many independent computations, on one core or on all of them: the results and their order are the same.
//!
//! Entry point: [`map`]. A browser's engine has no threads: there, all cores are one.

/// On how many cores something is computed. The result never depends on it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Cores {
    /// On the one that asks: for work that is itself one of many done side by side.
    One,
    /// On all there are.
    #[default]
    All,
}

/// `work` of every item, in the items' order. Each core gets a state of its own from `start`, which must not carry anything over
/// from one item to the next.
pub(crate) fn map<T: Sync, S, R: Send>(
    cores: Cores,
    items: &[T],
    start: impl Fn() -> S + Sync + Send,
    work: impl Fn(&mut S, &T) -> R + Sync + Send,
) -> Vec<R> {
    #[cfg(feature = "program")]
    if cores == Cores::All {
        use rayon::prelude::*;
        return items.par_iter().map_init(start, work).collect();
    }
    let _ = cores;
    let mut state = start();
    items.iter().map(|item| work(&mut state, item)).collect()
}
