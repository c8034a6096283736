//! Randomness: every stream is a ChaCha generator seeded by words, the same on every machine.

use rand::{Rng, RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use sha2::{Digest, Sha256};

/// A stream named by the course's seed and some words.
pub(crate) fn stream(seed: u64, words: &[&str]) -> ChaCha8Rng {
    let mut hash = Sha256::new();
    hash.update(seed.to_le_bytes());
    for word in words {
        hash.update((word.len() as u64).to_le_bytes());
        hash.update(word.as_bytes());
    }
    ChaCha8Rng::from_seed(hash.finalize().into())
}

/// A whole number below `count`, which is at least 1.
pub(crate) fn below(rng: &mut impl Rng, count: usize) -> usize {
    // Drawn as u64, so that 32-bit and 64-bit machines agree.
    rng.random_range(0..count as u64) as usize
}

/// Puts a list in random order (Fisher and Yates).
pub(crate) fn shuffle<T>(rng: &mut impl Rng, list: &mut [T]) {
    for last in (1..list.len()).rev() {
        list.swap(last, below(rng, last + 1));
    }
}

/// A standard normal number (Box and Muller 1958).
pub(super) fn normal(rng: &mut impl Rng) -> f64 {
    // (0, 1]: the logarithm of zero is never taken.
    let u = 1.0 - rng.random::<f64>();
    let v = rng.random::<f64>();
    libm::sqrt(-2.0 * libm::log(u)) * libm::cos(std::f64::consts::TAU * v)
}
