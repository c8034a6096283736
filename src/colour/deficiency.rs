//! How a colour on a screen looks to eyes that tell fewer colours apart.
//!
//! Entry point: [`Deficiency::seen`]. Source: G. M. Machado, M. M. Oliveira and L. A. F. Fernandes, "A physiologically-based model for
//! simulation of color vision deficiency", IEEE Transactions on Visualization and Computer Graphics 15 (2009) 1291 to 1298; the
//! matrices for the full deficiency, as colour-science 0.4.7 lists them.

use super::Srgb;

/// A kind of colour-vision deficiency, at its full strength.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Deficiency {
    /// Cones for long waves are missing or changed: red is dark.
    Protan,
    /// Cones for middle waves are missing or changed: the most common one.
    Deutan,
    /// Cones for short waves are missing or changed: rare.
    Tritan,
}

impl Deficiency {
    /// Every kind.
    pub const ALL: [Deficiency; 3] = [Deficiency::Protan, Deficiency::Deutan, Deficiency::Tritan];

    /// The colour that shows others what such eyes see of `colour`.
    pub fn seen(self, colour: Srgb) -> Srgb {
        let linear = palette::Srgb::new(colour.r, colour.g, colour.b).into_linear::<f64>();
        let linear = [linear.red, linear.green, linear.blue];
        let [red, green, blue] =
            self.matrix().map(|row| row[0] * linear[0] + row[1] * linear[1] + row[2] * linear[2]);
        let shown = palette::Srgb::from_linear(palette::LinSrgb::<f64>::new(
            red.clamp(0.0, 1.0),
            green.clamp(0.0, 1.0),
            blue.clamp(0.0, 1.0),
        ));
        let byte = |part: f64| libm::round(part * 255.0) as u8;
        Srgb { r: byte(shown.red), g: byte(shown.green), b: byte(shown.blue), in_gamut: colour.in_gamut }
    }

    /// The same as a matrix from linear sRGB to linear sRGB, row by row.
    pub fn matrix(self) -> [[f64; 3]; 3] {
        match self {
            Deficiency::Protan => [
                [0.152286, 1.052583, -0.204868],
                [0.114503, 0.786281, 0.099216],
                [-0.003882, -0.048116, 1.051998],
            ],
            Deficiency::Deutan => [
                [0.367322, 0.860646, -0.227968],
                [0.280085, 0.672501, 0.047413],
                [-0.01182, 0.04294, 0.968881],
            ],
            Deficiency::Tritan => [
                [1.255528, -0.076749, -0.178779],
                [-0.078411, 0.930809, 0.147602],
                [0.004733, 0.691367, 0.3039],
            ],
        }
    }
}
