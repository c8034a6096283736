//! The clients of the course, each drawn on their own skin.

use super::Pages;
use crate::colour::Light;
use crate::course::{Client, Show, Technique};
use crate::exercise::foresee;
use crate::healing::{HEALED_MONTHS, Placement};
use crate::render::RenderError;
use crate::render::exercise::{HealthView, health_views, old_work};
use crate::render::frame::{Frame, Section};
use crate::render::output::SiteFile;
use crate::render::plan;
use crate::render::swatch::Swatch;
use crate::say;
use crate::skin::{ItaClass, ita_degrees};
use rayon::prelude::*;
use serde::Serialize;

#[derive(Serialize)]
struct ClientsPage {
    frame: Frame,
    clients: Vec<ClientView>,
    /// The same people from the lightest skin to the deepest.
    by_angle: Vec<AngleView>,
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
        let clients: Vec<(f64, ClientView)> =
            self.course.clients.par_iter().filter_map(|client| self.client_view(client)).collect();
        let mut by_angle: Vec<(f64, AngleView)> =
            clients.iter().map(|(ita, view)| (*ita, view.angle())).collect();
        by_angle.sort_by(|(one, _), (other, _)| other.total_cmp(one));
        let context = ClientsPage {
            frame,
            by_angle: by_angle.into_iter().map(|(_, view)| view).collect(),
            clients: clients.into_iter().map(|(_, view)| view).collect(),
        };
        self.page(plan::CLIENTS, "clients.html", context)
    }

    /// A client with the typology angle of the bare skin.
    fn client_view(&self, client: &Client) -> Option<(f64, ClientView)> {
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
        Some((ita, view))
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
