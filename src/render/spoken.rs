//! Numbers, times and the engine's own words as pages in the course's language write them.

use super::figures;
use crate::colour::Light;
use crate::course::{Client, Date};
use crate::healing::HEALED_MONTHS;
use crate::language::Language;
use crate::pigment::{Basis, Bottle, ColourantClass};
use crate::say;
use crate::skin::{ItaClass, Redness, Site, Undertone};

impl Language {
    /// A number with so many decimals, with a true minus sign.
    pub(super) fn fixed(&self, value: f64, decimals: usize) -> String {
        self.decimal(value, decimals)
    }

    /// A number with at most two decimals, none of them a closing zero.
    pub(super) fn short(&self, value: f64) -> String {
        self.marked(figures::short(value))
    }

    /// A share between 0 and 1 in whole percent.
    pub(crate) fn percent(&self, share: f64) -> String {
        say!(self, "figure-percent", number = figures::fixed(share * 100.0, 0))
    }

    /// Minutes, from an hour on with hours: "22 min", "2 h 45 min".
    pub(super) fn minutes(&self, minutes: u32) -> String {
        match (minutes / 60, minutes % 60) {
            (0, rest) => say!(self, "figure-minutes", minutes = rest),
            (hours, 0) => say!(self, "figure-hours", hours = hours),
            (hours, rest) => say!(self, "figure-hours-minutes", hours = hours, minutes = rest),
        }
    }

    /// A date as people write it: "14 March 2026".
    pub(crate) fn date(&self, date: Date) -> String {
        let (year, month, day) = date.parts();
        let month = self.say(&format!("assignment-month-{month}"), &[]);
        say!(self, "assignment-date", day = day, month = month, year = year)
    }

    /// "3 modules, 8 lessons, 2 h 45 min".
    pub(super) fn extent(&self, modules: usize, lessons: usize, minutes: u32) -> String {
        say!(self, "figure-extent", modules = modules, lessons = lessons, time = self.minutes(minutes))
    }

    /// A time after a placement: "on the day", "six weeks", "4 months", "3 years".
    pub(super) fn time(&self, months: f64) -> String {
        match Span::of(months) {
            Span::Day => say!(self, "time-on-the-day"),
            Span::Healed => say!(self, "time-healed"),
            Span::Years(years) => say!(self, "time-years", years = years),
            Span::Months(count) => say!(self, "time-months", count = count, months = self.short(count)),
        }
    }

    /// Old work with its age: "3 years old. A dark grey brow."
    pub(crate) fn old_work(&self, months: f64, note: &str) -> String {
        match Span::of(months) {
            Span::Day => say!(self, "age-on-the-day", note = note),
            Span::Healed => say!(self, "age-healed", note = note),
            Span::Years(years) => say!(self, "age-years", years = years, note = note),
            Span::Months(count) => {
                say!(self, "age-months", count = count, months = self.short(count), note = note)
            }
        }
    }

    /// "brow, eyelid and scalp".
    pub(super) fn all_of(&self, words: &[String]) -> String {
        match words {
            [others @ .., last] if !others.is_empty() => {
                say!(self, "figure-and", others = others.join(", "), last = last)
            }
            _ => words.concat(),
        }
    }

    /// One after another, numbers among them: "ΔE00 1.0, ΔE00 2.1".
    pub(super) fn in_order(&self, words: &[String]) -> String {
        let next = |before: String, next: &String| say!(self, "figure-next", before = before, next = next);
        words.iter().cloned().reduce(|before, word| next(before, &word)).unwrap_or_default()
    }

    /// A light by its name: "daylight (D65)".
    pub(super) fn light(&self, light: Light) -> String {
        say!(self, &format!("term-light-{}", id_of(light.name())))
    }

    /// What is seen in a light: "in daylight (D65)".
    pub(super) fn in_light(&self, light: Light) -> String {
        say!(self, &format!("term-in-light-{}", id_of(light.name())))
    }

    /// Where a number comes from.
    pub(super) fn basis(&self, basis: Basis) -> String {
        say!(self, &format!("term-basis-{}", figures::basis(basis)))
    }

    /// A class of colourants.
    pub(super) fn class(&self, class: ColourantClass) -> String {
        say!(self, &format!("term-class-{}", id_of(class.words())))
    }

    /// A site of work.
    pub(super) fn site(&self, site: Site) -> String {
        say!(self, &format!("term-site-{}", site.word()))
    }

    /// What a bottle is meant for, unless that is every site.
    pub(super) fn meant_for(&self, bottle: &Bottle) -> Option<String> {
        let sites: Vec<String> = bottle.sites.iter().map(|site| self.site(*site)).collect();
        (!sites.is_empty()).then(|| say!(self, "bottles-sites", sites = self.all_of(&sites)))
    }

    /// A class of typology angles.
    pub(super) fn ita_class(&self, class: ItaClass) -> String {
        say!(self, &format!("term-ita-{}", id_of(class.word())))
    }

    /// The three words of a person's skin, and whether the place is a scar.
    pub(super) fn skin(&self, client: &Client) -> String {
        let (undertone, redness) = (self.undertone(client.undertone), self.redness(client.redness));
        let phototype = client.phototype.word();
        let skin = say!(self, "term-skin", phototype = phototype, undertone = undertone, redness = redness);
        self.scarred(client, skin)
    }

    /// The same without the phototype, below a heading that tells it.
    pub(super) fn skin_of_phototype(&self, client: &Client) -> String {
        let (undertone, redness) = (self.undertone(client.undertone), self.redness(client.redness));
        self.scarred(client, say!(self, "term-skin-alone", undertone = undertone, redness = redness))
    }

    fn undertone(&self, undertone: Undertone) -> String {
        say!(self, &format!("term-undertone-{}", undertone.word()))
    }

    fn redness(&self, redness: Redness) -> String {
        say!(self, &format!("term-redness-{}", redness.word()))
    }

    fn scarred(&self, client: &Client, skin: String) -> String {
        if client.scar { say!(self, "exercise-case-scar", skin = skin) } else { skin }
    }
}

/// A word of the engine as a part of an id.
fn id_of(word: &str) -> String {
    word.to_lowercase().replace(' ', "-")
}

/// A time as people count it.
enum Span {
    Day,
    Healed,
    Months(f64),
    Years(f64),
}

impl Span {
    fn of(months: f64) -> Self {
        let years = months / 12.0;
        if months == 0.0 {
            Span::Day
        } else if months == HEALED_MONTHS {
            Span::Healed
        } else if months == 12.0 || (years >= 2.0 && years.fract() == 0.0) {
            Span::Years(years)
        } else {
            Span::Months(months)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_and_times_in_both_languages() {
        let [english, german] = ["en", "de"].map(Language::of);
        assert_eq!(english.fixed(-1.25, 1), "\u{2212}1.2");
        assert_eq!([german.fixed(-1.25, 1), german.short(0.15)], ["\u{2212}1,2", "0,15"]);
        assert_eq!([english.percent(0.946), german.percent(0.946)], ["95%", "95\u{a0}%"]);
        let times = [0.0, 1.0, 1.5, 2.5, 12.0, 30.0, 36.0];
        assert_eq!(
            times.map(|months| english.time(months)),
            ["on the day", "1 month", "six weeks", "2.5 months", "1 year", "30 months", "3 years"]
        );
        assert_eq!(
            times.map(|months| german.old_work(months, "")).map(|said| said.trim_end().to_owned()),
            [
                "Vom selben Tag.",
                "1 Monat alt.",
                "Sechs Wochen alt.",
                "2,5 Monate alt.",
                "1 Jahr alt.",
                "30 Monate alt.",
                "3 Jahre alt."
            ]
        );
        assert_eq!([22, 60, 165].map(|minutes| english.minutes(minutes)), ["22 min", "1 h", "2 h 45 min"]);
        let sites = [Site::Brow, Site::Eyelid, Site::Scalp].map(|site| german.site(site));
        assert_eq!(german.all_of(&sites), "Augenbraue, Augenlid und Kopfhaut");
        assert_eq!(german.all_of(&sites[..1]), "Augenbraue");
    }
}
