//! Worlds: the same case with skin, depth and load a little different, to see whether an answer still holds.

use super::draw::Setting;
use super::seed::{normal, stream};
use crate::colour::Spectrum;
use crate::healing::{Deviation, HEALED_MONTHS, Placement, Scene, Spread, Work, World};
use crate::pigment::Shelf;
use crate::skin::{Canvas, Site, Skin};
use rand::Rng;
use std::collections::VecDeque;
use std::sync::{Arc, Mutex, OnceLock, PoisonError};

/// Worlds tried for each exercise.
pub const WORLDS: u32 = 200;
/// Share of worlds in which the key must hold.
pub const NEEDED_SHARE: f64 = 0.95;
/// How much wider than the stated spread the worlds of a proof lie. At the stated spread a key that holds in 190 of 200 worlds may hold in
/// 185 of 200 others, and about one exercise in forty did. What fails in 5% of worlds one and a half times as far away lies 1.64 of their
/// standard deviations off, hence 2.47 of the stated ones, and fails in 0.7% of those: so it holds in 95% of any 200 of them, but for one case in
/// millions. Were shares of failure evenly spread, one exercise in 7,500 would fall below 95% in other worlds (one in 260 at a factor of 1.3, in
/// 1,300 at 1.4, in 6 at 1); to ask for 200 of 200 at the stated spread would throw away more draws, and leave one in 2,300 (normal
/// distribution and binomial).
const WIDENED: f64 = 1.5;

/// The worlds of one draw: the name of their stream and, where they were tried before, how many held.
pub(super) struct Named<'w> {
    /// Words that name the stream.
    pub words: [&'w str; 4],
    /// Whether they differ in melanin.
    pub melanin: Melanin,
    /// How often all clients of the drill have had their turn before: the first turns share the clients' skins with other exercises.
    pub round: u32,
    /// Of all worlds, how many were found to hold.
    pub held: Option<u32>,
}

/// A world of a draw: the placement lies a little elsewhere, in one of the skins that the client may have.
pub(super) struct Sample<'s> {
    /// Where the work lies in it.
    pub placement: Placement,
    /// How many of the draw's worlds lie farther from the stated case.
    pub farther: u32,
    skin: &'s OfSkin,
    site: Site,
}

impl Sample<'_> {
    /// The scene of this world so many months after a new placement, with this existing work.
    pub fn scene<'a>(&self, shelf: &'a Shelf, existing: &[Work], months: f64) -> Scene<'a> {
        if months < HEALED_MONTHS {
            return Scene::new(shelf, &self.skin.skin, self.site, existing, months);
        }
        Scene::healed(shelf, self.skin.canvas(self.site), existing, months)
    }

    /// Reflectance of the skin itself.
    pub fn bare(&self) -> Spectrum {
        self.skin.canvas(self.site).bare
    }
}

/// Tries worlds until all were tried, or so many have failed that the key cannot hold any more. Returns (tried, held).
///
/// `holds` is asked about each world, unless it is known how many hold.
pub(super) fn try_worlds(
    setting: &Setting,
    worlds: &Named,
    mut holds: impl FnMut(&Sample) -> bool,
) -> (u32, u32) {
    if let Some(held) = worlds.held {
        return (WORLDS, held);
    }
    let may_fail = WORLDS - libm::ceil(NEEDED_SHARE * f64::from(WORLDS)) as u32;
    let (mut tried, mut held) = (0, 0);
    let skins = Skins::of(setting, worlds);
    for (at, depth, load) in farthest_first(&skins, &mut stream(setting.seed, &worlds.words)) {
        let deviation = Deviation { skin: [0.0; 6], depth, load };
        let World { placement, .. } =
            World::at(&Spread::SEEN, &deviation, &setting.client.skin, &setting.placement);
        if holds(&Sample { placement, farther: tried, skin: &skins.skins[at], site: skins.site }) {
            held += 1;
        } else if tried - held == may_fail {
            // One failure too many: this world does not count as tried, so that fewer than all always means that the key does not hold.
            break;
        }
        tried += 1;
    }
    (tried, held)
}

/// The worlds of a draw, each with the place of its skin and the deviations of depth and load, farthest first: those fail most, and a key that
/// cannot hold is found out soonest. How many of all hold does not depend on their order.
fn farthest_first(skins: &Skins, rng: &mut impl Rng) -> Vec<(usize, f64, f64)> {
    let mut worlds: Vec<(f64, (usize, f64, f64))> = skins
        .skins
        .iter()
        .enumerate()
        .map(|(at, skin)| {
            let (depth, load) = (WIDENED * normal(rng), WIDENED * normal(rng));
            (skin.far + depth * depth + load * load, (at, depth, load))
        })
        .collect();
    worlds.sort_by(|(one, _), (other, _)| other.total_cmp(one));
    worlds.into_iter().map(|(_, world)| world).collect()
}

/// The skins that a client may have, one for each world: the same in all of the client's exercises, so that their layers are worked out once.
/// Where no draw holds in them, the client's next turn comes with others.
struct Skins {
    seed: u64,
    client: String,
    stated: Skin,
    site: Site,
    melanin: Melanin,
    skins: Vec<OfSkin>,
}

/// Whether worlds differ in melanin.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Melanin {
    /// They do.
    Varies,
    /// They do not: how dark the skin is, is seen.
    Seen,
}

/// One of a client's skins.
struct OfSkin {
    skin: Skin,
    /// Sum of the squares of its deviations.
    far: f64,
    canvas: OnceLock<Arc<Canvas<4>>>,
}

impl OfSkin {
    fn canvas(&self, site: Site) -> Arc<Canvas<4>> {
        self.canvas.get_or_init(|| Arc::new(Canvas::new(&self.skin, site))).clone()
    }
}

/// Clients whose skins are kept, 2.6 MB each once all worlds were tried.
const MOST_KEPT: usize = 48;
/// The skins of the clients who were asked after last.
static KEPT: Mutex<VecDeque<Arc<Skins>>> = Mutex::new(VecDeque::new());

impl Skins {
    /// The skins of a setting's client.
    fn of(setting: &Setting, worlds: &Named) -> Arc<Self> {
        let (client, melanin) = (setting.client, worlds.melanin);
        if worlds.round > 0 {
            return Arc::new(Skins::draw(setting, worlds));
        }
        // A poisoned lock only means that another proof panicked; what is kept is whole.
        let mut kept = KEPT.lock().unwrap_or_else(PoisonError::into_inner);
        let known = kept.iter().position(|skins| {
            skins.client == client.id
                && (skins.seed, skins.stated, skins.site) == (setting.seed, client.skin, client.site)
                && skins.melanin == melanin
        });
        let skins = match known.and_then(|at| kept.remove(at)) {
            Some(skins) => skins,
            None => Arc::new(Skins::draw(setting, worlds)),
        };
        kept.push_back(skins.clone());
        if kept.len() > MOST_KEPT {
            kept.pop_front();
        }
        skins
    }

    fn draw(setting: &Setting, worlds: &Named) -> Self {
        let (client, melanin) = (setting.client, worlds.melanin);
        let mut rng = stream(setting.seed, &["skins", &client.id, &worlds.round.to_string()]);
        let mut skin = || {
            let mut number = || WIDENED * normal(&mut rng);
            // Vessels do not vary where skin is seen: their deviation counts for nothing.
            let mut skin = [number(), number(), number(), number(), number(), 0.0];
            if melanin == Melanin::Seen {
                skin[0] = 0.0;
            }
            let deviation = Deviation { skin, ..Deviation::default() };
            let World { skin: varied, .. } =
                World::at(&Spread::SEEN, &deviation, &client.skin, &Placement::default());
            OfSkin {
                skin: varied,
                far: skin.iter().map(|number| number * number).sum(),
                canvas: OnceLock::new(),
            }
        };
        Skins {
            seed: setting.seed,
            client: client.id.clone(),
            stated: client.skin,
            site: client.site,
            melanin,
            skins: (0..WORLDS).map(|_| skin()).collect(),
        }
    }
}
