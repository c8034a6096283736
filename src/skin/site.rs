//! Sites of the body, as far as they change the layers.

use super::{Canvas, Skin};
use crate::colour::Spectrum;
use serde::{Deserialize, Serialize};

/// Where the work goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Site {
    /// Brow.
    #[default]
    Brow,
    /// Eyelid, for liner.
    Eyelid,
    /// Red of the lips.
    Lip,
    /// Areola.
    Areola,
    /// Scalp.
    Scalp,
}

/// How a site differs from the brow of the same person.
struct Difference {
    word: &'static str,
    epidermis_mm: f64,
    melanin: f64,
    blood: f64,
}

impl Site {
    /// Every site with its word in files.
    pub const ALL: [(Site, &'static str); 5] = [
        (Site::Brow, Site::Brow.difference().word),
        (Site::Eyelid, Site::Eyelid.difference().word),
        (Site::Lip, Site::Lip.difference().word),
        (Site::Areola, Site::Areola.difference().word),
        (Site::Scalp, Site::Scalp.difference().word),
    ];

    /// Epidermis 0.08 mm on the brow: the project's design. Everything else is representative: eyelid skin is the thinnest of the
    /// face; the red of the lips is thin, full of blood and poor in melanin; the areola is rich in melanin and blood; the scalp is
    /// like the face with a thicker epidermis.
    const fn difference(self) -> Difference {
        match self {
            Site::Brow => Difference { word: "brow", epidermis_mm: 0.08, melanin: 1.0, blood: 1.0 },
            Site::Eyelid => Difference { word: "eyelid", epidermis_mm: 0.05, melanin: 1.0, blood: 1.2 },
            Site::Lip => Difference { word: "lip", epidermis_mm: 0.05, melanin: 0.3, blood: 8.0 },
            Site::Areola => Difference { word: "areola", epidermis_mm: 0.08, melanin: 2.5, blood: 2.0 },
            Site::Scalp => Difference { word: "scalp", epidermis_mm: 0.10, melanin: 0.9, blood: 1.0 },
        }
    }

    /// Word in files and on screens.
    pub fn word(self) -> &'static str {
        self.difference().word
    }

    /// Thickness of the epidermis in mm.
    pub fn epidermis_mm(self) -> f64 {
        self.difference().epidermis_mm
    }

    /// The skin of this site of a person whose brow has the skin `brow`; kept within the bounds of skin.
    pub fn skin_of(self, brow: Skin) -> Skin {
        let difference = self.difference();
        Skin {
            melanin: (brow.melanin * difference.melanin).min(super::MELANIN.most),
            blood: (brow.blood * difference.blood).min(super::BLOOD.most),
            ..brow
        }
    }

    /// The skin of the brow of a person whose skin at this site is this one: the way back of [`Site::skin_of`], but for what was kept
    /// within bounds there.
    pub fn brow_of(self, skin: Skin) -> Skin {
        let difference = self.difference();
        Skin { melanin: skin.melanin / difference.melanin, blood: skin.blood / difference.blood, ..skin }
            .within_bounds()
    }

    /// Whether the place has an edge, with skin of another kind around it.
    pub fn has_edge(self) -> bool {
        matches!(self, Site::Lip | Site::Areola)
    }

    /// Reflectance of the calm, bare skin around a place that has an edge, of a person whose brow has the skin `brow`; none for other
    /// sites, whose own skin goes on around them. Face and breast are taken to be like the brow (representative).
    pub fn around(self, brow: &Skin) -> Option<Spectrum> {
        self.has_edge().then(|| Canvas::<4>::new(brow, Site::Brow).bare)
    }
}

impl Skin {
    /// This skin as a flat, pale scar (representative): melanin and vessels mostly lost, denser fibres that scatter less.
    pub fn scarred(self) -> Skin {
        Skin {
            melanin: self.melanin * 0.3,
            blood: self.blood * 0.6,
            scattering: self.scattering * 0.7,
            ..self
        }
    }
}
