//! The clients of the course, each drawn on their own skin: by phototype, with ways to find one by what is left of old work and by site.

use super::Pages;
use crate::colour::Light;
use crate::course::{Client, Show, Technique};
use crate::exercise::foresee;
use crate::healing::{HEALED_MONTHS, Placement, Tone};
use crate::render::RenderError;
use crate::render::exercise::{HealthView, health_views, old_work};
use crate::render::frame::{Frame, Section};
use crate::render::output::SiteFile;
use crate::render::plan;
use crate::render::swatch::Swatch;
use crate::say;
use crate::skin::{ItaClass, Phototype, Site, ita_degrees};
use rayon::prelude::*;
use serde::Serialize;

#[derive(Serialize)]
struct ClientsPage {
    frame: Frame,
    /// By phototype.
    groups: Vec<Group<ClientView>>,
    /// Who has old work, by what is left of it.
    by_residual: Vec<Group<Found>>,
    /// Everybody whose work is elsewhere than on the brow.
    by_site: Vec<Group<Found>>,
    /// The same people from the lightest skin to the deepest.
    by_angle: Vec<AngleView>,
}

/// Clients who have something in common.
#[derive(Serialize)]
struct Group<C> {
    anchor: &'static str,
    name: String,
    clients: Vec<C>,
}

/// A client who is found by their name.
#[derive(Clone, Serialize)]
struct Found {
    anchor: String,
    name: String,
}

/// A client with what the page sorts by.
struct Known<'c> {
    client: &'c Client,
    ita: f64,
    /// What is left of old work.
    residual: Option<Tone>,
    view: ClientView,
}

/// A line of the table that sets phototype and typology angle side by side.
#[derive(Serialize)]
struct AngleView {
    anchor: String,
    name: String,
    phototype: &'static str,
    ita: String,
    ita_class: String,
}

#[derive(Serialize)]
struct ClientView {
    anchor: String,
    name: String,
    age: u32,
    about: String,
    phototype: &'static str,
    /// Phototype, undertone and redness in words.
    skin: String,
    /// Individual typology angle in degrees.
    ita: String,
    ita_class: String,
    site: String,
    hair: String,
    wish: String,
    goal_name: String,
    health: Vec<HealthView>,
    old_work: Vec<String>,
    swatches: Vec<Swatch>,
}

impl Pages<'_> {
    /// The clients.
    pub(super) fn clients(&self) -> Result<SiteFile, RenderError> {
        let language = &self.course.language;
        let frame = self
            .frame(plan::CLIENTS, &say!(language, "frame-clients"), Section::Clients)
            .described(&say!(language, "clients-description"));
        let clients: Vec<Known> =
            self.course.clients.par_iter().filter_map(|client| self.known_client(client)).collect();
        let found = |holds: &dyn Fn(&Known) -> bool| -> Vec<Found> {
            clients.iter().filter(|known| holds(known)).map(Known::found).collect()
        };
        let by_residual = Tone::ALL.iter().map(|&(tone, _)| Group {
            anchor: "",
            name: tone.said(language),
            clients: found(&|known| known.residual == Some(tone)),
        });
        let by_site = Site::ALL.iter().filter(|(site, _)| *site != Site::Brow).map(|&(site, _)| Group {
            anchor: "",
            name: language.site(site),
            clients: found(&|known| known.client.site == site),
        });
        let (by_residual, by_site) = (peopled(by_residual), peopled(by_site));
        let mut by_angle: Vec<(f64, AngleView)> =
            clients.iter().map(|known| (known.ita, known.view.angle())).collect();
        by_angle.sort_by(|(one, _), (other, _)| other.total_cmp(one));
        let mut groups: Vec<Group<ClientView>> = Phototype::ALL
            .iter()
            .map(|(_, word)| Group { anchor: word, name: (*word).to_owned(), clients: Vec::new() })
            .collect();
        for known in clients {
            groups[known.client.phototype as usize].clients.push(known.view);
        }
        let context = ClientsPage {
            frame,
            groups: peopled(groups),
            by_residual,
            by_site,
            by_angle: by_angle.into_iter().map(|(_, view)| view).collect(),
        };
        self.page(plan::CLIENTS, "clients.html", context)
    }

    fn known_client<'c>(&self, client: &'c Client) -> Option<Known<'c>> {
        let show = Show {
            label: client.name.clone(),
            client: client.id.clone(),
            bare: false,
            mix: None,
            months: HEALED_MONTHS,
            placement: Placement::default(),
            technique: Technique::default(),
            light: Light::D65,
        };
        let language = &self.course.language;
        let now = foresee(self.course, &show)?;
        let mut swatches =
            vec![Swatch::skin(language, &say!(language, "clients-bare"), &now.bare, Light::D65)];
        if !client.existing.is_empty() {
            let label = say!(language, "clients-now");
            swatches.push(Swatch::foreseen(
                language,
                &label,
                &now,
                (client.site, client.technique_now()),
                Light::D65,
            ));
        }
        let goal = self.course.goal(&client.goal)?;
        let wished = (goal.name.as_str(), goal.lab, goal.tolerance);
        swatches.push(Swatch::goal(language, wished, &now.bare, client.site, Light::D65));
        let ita = ita_degrees(now.bare.lab);
        let view = ClientView {
            anchor: client.id.clone(),
            name: client.name.clone(),
            age: client.age,
            about: client.about.clone(),
            phototype: client.phototype.word(),
            skin: language.skin(client),
            ita: language.fixed(ita, 0),
            ita_class: language.ita_class(ItaClass::of(ita)),
            site: language.site(client.site),
            hair: client.hair.clone(),
            wish: client.wish.clone(),
            goal_name: goal.name.clone(),
            health: health_views(self.course, client, plan::CLIENTS),
            old_work: old_work(language, client),
            swatches,
        };
        let residual = (!client.existing.is_empty()).then_some(now.reading.tone);
        Some(Known { client, ita, residual, view })
    }
}

/// Groups that somebody is in.
fn peopled<C>(groups: impl IntoIterator<Item = Group<C>>) -> Vec<Group<C>> {
    groups.into_iter().filter(|group| !group.clients.is_empty()).collect()
}

impl Known<'_> {
    fn found(&self) -> Found {
        Found { anchor: self.view.anchor.clone(), name: self.view.name.clone() }
    }
}

impl ClientView {
    fn angle(&self) -> AngleView {
        AngleView {
            anchor: self.anchor.clone(),
            name: self.name.clone(),
            phototype: self.phototype,
            ita: self.ita.clone(),
            ita_class: self.ita_class.clone(),
        }
    }
}
