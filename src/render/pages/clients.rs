//! The clients of the course, each drawn on their own skin: by phototype, with ways to find one by what is left of old work and by site.
//!
//! Entry point: [`Pages::clients`]. While they are few, all are on one page; else that page lists them, and each phototype has a page of
//! its own, or several.

use super::Pages;
use crate::colour::Light;
use crate::course::{Client, Show, Technique};
use crate::exercise::foresee;
use crate::healing::{HEALED_MONTHS, Placement, Tone};
use crate::render::RenderError;
use crate::render::drawing::Drawn;
use crate::render::exercise::{HealthView, health_views, old_work};
use crate::render::frame::{Frame, Link, Section};
use crate::render::output::SiteFile;
use crate::render::plan::{self, href};
use crate::render::swatch::Swatch;
use crate::say;
use crate::skin::{ItaClass, Phototype, Site, ita_degrees};
use rayon::prelude::*;
use serde::Serialize;

/// The context of `clients.html`.
#[derive(Serialize)]
struct ClientsPage {
    frame: Frame,
    /// By phototype.
    groups: Vec<GroupView>,
    /// Whether the clients are on pages of their own, and here only listed.
    apart: bool,
    /// Who has old work, by what is left of it.
    by_residual: Vec<FoundBy>,
    /// Everybody whose work is elsewhere than on the brow.
    by_site: Vec<FoundBy>,
    /// The same people from the lightest skin to the deepest.
    by_angle: Vec<AngleView>,
}

/// The context of `clients-part.html`.
#[derive(Serialize)]
struct PartPage {
    frame: Frame,
    title: String,
    clients: Vec<ClientView>,
    previous: Option<Link>,
    next: Option<Link>,
}

/// Clients of one phototype.
#[derive(Serialize)]
struct GroupView {
    phototype: &'static str,
    /// Their page, or the first of several, where they are apart.
    href: String,
    clients: Vec<ClientView>,
}

/// Clients who have something in common, by their names.
#[derive(Serialize)]
struct FoundBy {
    name: String,
    clients: Vec<Link>,
}

/// A client with what the pages sort by.
struct Known<'c> {
    client: &'c Client,
    /// Typology angle, where the place is skin as it was born: no lip, areola or scar.
    ita: Option<f64>,
    /// What is left of old work.
    residual: Option<Tone>,
    view: ClientView,
}

/// A line of the table that sets phototype and typology angle side by side.
#[derive(Serialize)]
struct AngleView {
    client: Link,
    phototype: &'static str,
    ita: String,
    ita_class: String,
}

#[derive(Clone, Serialize)]
struct ClientView {
    anchor: String,
    /// The name, with a link to where the client is shown, from the list of all.
    client: Link,
    age: u32,
    about: String,
    phototype: &'static str,
    /// Phototype, undertone and redness in words.
    skin: String,
    /// The same without the phototype.
    skin_of_phototype: String,
    /// Individual typology angle in degrees.
    /// Typology angle and its class, where there is one.
    ita: Option<(String, String)>,
    site: String,
    hair: String,
    wish: String,
    health: Vec<HealthView>,
    /// Whether any of these answers raises a caution.
    cautioned: bool,
    old_work: Vec<String>,
    swatches: Vec<Swatch>,
    /// The bench with this client chosen, where the site has one.
    bench: Option<String>,
}

/// A page of the clients of one phototype.
struct Part<'k, 'c> {
    path: String,
    title: String,
    clients: &'k [&'k Known<'c>],
}

impl Pages<'_> {
    /// The clients: a page, and where they are many further ones.
    pub(super) fn clients(&self) -> Result<Vec<SiteFile>, RenderError> {
        let clients: Vec<Known> =
            self.course.clients.par_iter().filter_map(|client| self.known_client(client)).collect();
        let of_phototype =
            |phototype| clients.iter().filter(move |known| known.client.phototype == phototype);
        let groups: Vec<(Phototype, Vec<&Known>)> = Phototype::ALL
            .iter()
            .map(|&(phototype, _)| (phototype, of_phototype(phototype).collect::<Vec<_>>()))
            .filter(|(_, clients)| !clients.is_empty())
            .collect();
        let mut files = vec![self.all_clients(&clients, &groups)?];
        if plan::clients_are_apart(self.course) {
            let parts: Vec<Part> = groups.iter().flat_map(|group| self.parts_of(group)).collect();
            for place in 0..parts.len() {
                files.push(self.clients_part(&parts, place)?);
            }
        }
        Ok(files)
    }

    /// The page of all clients.
    fn all_clients(
        &self,
        clients: &[Known],
        groups: &[(Phototype, Vec<&Known>)],
    ) -> Result<SiteFile, RenderError> {
        let language = &self.course.language;
        let frame = self
            .frame(plan::CLIENTS, &say!(language, "frame-clients"), Section::Clients)
            .described(&say!(language, "clients-description"));
        let found = |holds: &dyn Fn(&Known) -> bool| -> Vec<Link> {
            clients.iter().filter(|known| holds(known)).map(|known| known.view.client.clone()).collect()
        };
        let by_residual = Tone::ALL.iter().map(|&(tone, _)| FoundBy {
            name: tone.said(language),
            clients: found(&|known| known.residual == Some(tone)),
        });
        let by_site = Site::ALL.iter().filter(|(site, _)| *site != Site::Brow).map(|&(site, _)| FoundBy {
            name: language.site(site),
            clients: found(&|known| known.client.site == site),
        });
        let mut by_angle: Vec<(f64, AngleView)> =
            clients.iter().filter_map(|known| Some((known.ita?, known.view.angle()?))).collect();
        by_angle.sort_by(|(one, _), (other, _)| other.total_cmp(one));
        let context = ClientsPage {
            frame,
            groups: groups
                .iter()
                .map(|(phototype, clients)| GroupView {
                    phototype: phototype.word(),
                    href: href(plan::CLIENTS, &plan::clients_path(*phototype, 0)),
                    clients: clients.iter().map(|known| known.view.clone()).collect(),
                })
                .collect(),
            apart: plan::clients_are_apart(self.course),
            by_residual: peopled(by_residual),
            by_site: peopled(by_site),
            by_angle: by_angle.into_iter().map(|(_, view)| view).collect(),
        };
        self.page(plan::CLIENTS, "clients.html", context)
    }

    /// The pages of a phototype.
    fn parts_of<'k, 'c>(
        &self,
        (phototype, clients): &'k (Phototype, Vec<&'k Known<'c>>),
    ) -> Vec<Part<'k, 'c>> {
        let language = &self.course.language;
        let pages = clients.chunks(plan::MOST_CLIENTS);
        let of = pages.len();
        pages
            .enumerate()
            .map(|(part, clients)| {
                let phototype_in_words = say!(language, "clients-of-phototype", phototype = phototype.word());
                let title = if of == 1 {
                    phototype_in_words
                } else {
                    say!(language, "clients-part", title = phototype_in_words, part = part + 1, of = of)
                };
                Part { path: plan::clients_path(*phototype, part), title, clients }
            })
            .collect()
    }

    /// One page of several.
    fn clients_part(&self, parts: &[Part], place: usize) -> Result<SiteFile, RenderError> {
        let language = &self.course.language;
        let Part { path, title, clients } = &parts[place];
        let way = vec![Link::new(say!(language, "frame-clients"), href(path, plan::CLIENTS))];
        let link = |part: &Part| Link::new(&part.title, href(path, &part.path));
        let context = PartPage {
            frame: self
                .frame(path, title, Section::Clients)
                .described(&say!(language, "clients-description"))
                .below(way),
            title: title.clone(),
            clients: clients.iter().map(|known| known.view.clone()).collect(),
            previous: place.checked_sub(1).map(|before| link(&parts[before])),
            next: parts.get(place + 1).map(link),
        };
        self.page(path.clone(), "clients-part.html", context)
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
        let on = Drawn::at(client, Light::D65);
        let bare = say!(language, "clients-bare", site = client.site.word());
        let mut swatches = vec![Swatch::skin(language, &bare, &now.bare, on, Light::D65)];
        if !client.existing.is_empty() {
            let label = say!(language, "clients-now");
            let made = Drawn::on(client, client.technique_now(), Light::D65);
            swatches.push(Swatch::foreseen(language, &label, &now, made, Light::D65));
        }
        let goal = self.course.goal(&client.goal)?;
        let wished = (goal.name.as_str(), goal.lab, goal.tolerance);
        swatches.push(Swatch::goal(language, wished, &now.bare, on, Light::D65));
        let is_skin = !client.scar && !client.site.has_edge();
        let ita = is_skin.then(|| ita_degrees(now.bare.lab));
        let path = plan::client_path(self.course, client);
        let view = ClientView {
            anchor: client.id.clone(),
            client: Link::new(&client.name, plan::href_to_client(plan::CLIENTS, self.course, client)),
            age: client.age,
            about: client.about.clone(),
            phototype: client.phototype.word(),
            skin: language.skin(client),
            skin_of_phototype: language.skin_of_phototype(client),
            ita: ita.map(|ita| (language.fixed(ita, 0), language.ita_class(ItaClass::of(ita)))),
            site: language.site(client.site),
            hair: client.hair.clone(),
            wish: client.wish.clone(),
            health: health_views(self.course, client, &path),
            cautioned: client.cautions().next().is_some(),
            old_work: old_work(language, client),
            swatches,
            bench: self.bench_with(&path, client, &[]),
        };
        let residual = (!client.existing.is_empty()).then_some(now.reading.tone);
        Some(Known { client, ita, residual, view })
    }
}

/// Groups that somebody is in.
fn peopled(groups: impl Iterator<Item = FoundBy>) -> Vec<FoundBy> {
    groups.filter(|group| !group.clients.is_empty()).collect()
}

impl ClientView {
    fn angle(&self) -> Option<AngleView> {
        let (ita, ita_class) = self.ita.clone()?;
        Some(AngleView { client: self.client.clone(), phototype: self.phototype, ita, ita_class })
    }
}
