//! Bounds of the numbers in course files. Those of placements and times are declared by [`crate::healing`],
//! those of colours and goals by [`crate::colour`] and [`crate::search`].

pub use crate::colour::{BLUE_YELLOW, GREEN_RED, LIGHTNESS};
use crate::quantity::Quantity;
pub use crate::search::TOLERANCE;

/// Age of a client.
pub const AGE: Quantity = Quantity::new("age", "years", 16.0, 110.0);
/// Exercises of a drill that a lesson shows.
pub const EXERCISES: Quantity = Quantity::new("exercises", "", 1.0, 12.0);
/// Exercises of a practice set that is assigned.
pub const ASSIGNED_EXERCISES: Quantity = Quantity::new("exercises", "", 1.0, 60.0);
/// Seed of an assignment.
pub const SEED: Quantity = Quantity::new("seed", "", 0.0, 4_294_967_295.0);
/// Options of an exercise.
pub const OPTIONS: Quantity = Quantity::new("options", "", 2.0, 6.0);
/// Drops in a whole mix; the search through every mix grows steeply with it.
pub const DROPS: Quantity = Quantity::new("drops", "", 1.0, 12.0);
/// Drops of modifiers in a mix.
pub const MODIFIER_DROPS: Quantity = Quantity::new("modifier_drops", "", 0.0, 11.0);
/// Distance by which a wrong answer is worse.
pub const MARGIN: Quantity = Quantity::new("margin", "ΔE00", 1.5, 20.0);
/// Minutes a lesson takes.
pub const MINUTES: Quantity = Quantity::new("minutes", "minutes", 1.0, 600.0);
/// Strength of a bottle against its colourants' reference amounts.
pub const STRENGTH: Quantity = Quantity::new("strength", "", 0.05, 5.0);
/// Share of a colourant in a bottle's recipe.
pub const PARTS: Quantity = Quantity::new("parts", "", 0.001, 1000.0);
/// Wavelength of an edge or a peak.
pub const AT_NM: Quantity = Quantity::new("at_nm", "nm", 200.0, 1100.0);
/// Width of an edge or a peak.
pub const WIDTH_NM: Quantity = Quantity::new("width_nm", "nm", 1.0, 300.0);
/// Height of an edge or a peak.
pub const PER_MM: Quantity = Quantity::new("per_mm", "per mm", 0.0, 500.0);
/// Absorption at every wavelength.
pub const FLAT_PER_MM: Quantity = Quantity::new("flat_per_mm", "per mm", 0.0, 500.0);
/// Reduced scattering at 550 nm.
pub const AT_550_PER_MM: Quantity = Quantity::new("at_550_per_mm", "per mm", 0.0, 500.0);
/// Exponent of scattering.
pub const EXPONENT: Quantity = Quantity::new("exponent", "", 0.0, 4.0);
/// Absorption of a band.
pub const BAND_ABSORPTION: Quantity = Quantity::new("absorption_per_mm", "per mm", 0.0, 20_000.0);
/// Reduced scattering of a band.
pub const BAND_SCATTERING: Quantity = Quantity::new("reduced_scattering_per_mm", "per mm", 0.0, 20_000.0);
/// Thickness of dried paint that one full pass leaves in the skin.
pub const DOSE_MM: Quantity = Quantity::new("dose_mm", "mm", 0.0005, 2.0);
/// Half-life of a colourant in skin.
pub const HALF_LIFE_MONTHS: Quantity = Quantity::new("half_life_months", "months", 0.5, 5000.0);
/// How far a colourant wanders.
pub const DRIFT_MM: Quantity = Quantity::new("drift_mm", "mm", 0.0, 1.0);

/// Questions of a section, and of a whole paper.
pub const QUESTIONS: Quantity = Quantity::new("questions", "", 1.0, 200.0);
/// Share of a section in the whole mark.
pub const WEIGHT: Quantity = Quantity::new("weight", "percent", 1.0, 100.0);
/// Share of its credit that a question is expected to cost a candidate who is just good enough.
pub const DIFFICULTY: Quantity = Quantity::new("difficulty", "", 0.0, 1.0);
/// Share of the credit that a candidate who is just good enough is expected to earn.
pub const ESTIMATE: Quantity = Quantity::new("estimate", "", 0.0, 1.0);
/// Questions of a paper in which one client may come.
pub const MOST_PER_CLIENT: Quantity = Quantity::new("most_per_client", "", 1.0, 20.0);
/// Clients that can carry a case of a paper.
pub const CASE_CLIENTS: Quantity = Quantity::new("clients", "", 2.0, 200.0);
/// Exercises of each drill to pick a paper's questions from.
pub const POOL: Quantity = Quantity::new("pool", "", 1.0, 200.0);

/// Mixes that a drill may offer: every one is tried for each exercise.
pub const MOST_MIXES: u64 = 5_000;
