//! The individual typology angle: skin colour as measured, unlike phototype.

use crate::colour::Lab;

/// ITA = atan((L* - 50) / b*) in degrees, by the quadrant-aware arctangent, so that b* = 0 is no exception.
///
/// Source: Chardon, Cretois and Hourseau (1991), from memory.
pub fn ita_degrees(lab: Lab) -> f64 {
    libm::atan2(lab.l - 50.0, lab.b).to_degrees()
}

/// Classes of ITA with the published limits 55, 41, 28, 10 and -30 degrees (Chardon 1991; Del Bino and Bernerd 2013; from
/// memory).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ItaClass {
    /// Above 55°.
    VeryLight,
    /// Above 41° to 55°.
    Light,
    /// Above 28° to 41°.
    Intermediate,
    /// Above 10° to 28°.
    Tan,
    /// Above -30° to 10°.
    Brown,
    /// -30° and below.
    Dark,
}

impl ItaClass {
    /// Class of an angle in degrees.
    pub fn of(degrees: f64) -> Self {
        match degrees {
            d if d > 55.0 => ItaClass::VeryLight,
            d if d > 41.0 => ItaClass::Light,
            d if d > 28.0 => ItaClass::Intermediate,
            d if d > 10.0 => ItaClass::Tan,
            d if d > -30.0 => ItaClass::Brown,
            _ => ItaClass::Dark,
        }
    }

    /// The class in words.
    pub fn word(self) -> &'static str {
        match self {
            ItaClass::VeryLight => "very light",
            ItaClass::Light => "light",
            ItaClass::Intermediate => "intermediate",
            ItaClass::Tan => "tan",
            ItaClass::Brown => "brown",
            ItaClass::Dark => "dark",
        }
    }
}
