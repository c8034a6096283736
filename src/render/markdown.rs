//! The course's CommonMark as HTML.
//!
//! Entry point: [`TextWriter`], one for each page. Nothing an author writes becomes markup: raw HTML is shown as the text it is,
//! and only links to the web, to mail and within the course stay links. Links to `.md` files lead to the pages made of them,
//! headings get the ids by which the course knows them, pictures of the course are shown, a quotation that begins with
//! **Caution**, in the course's language, is marked as one, and the first mention of each glossary term leads to it.

use super::RenderError;
use super::frame::Link;
use super::glossary::{Glossary, Mentions};
use super::plan::{asset_path, href, href_to, resolve, text_path};
use super::templates::write_escaped;
use crate::course::{HeadingIds, Page, markdown_options, plain_text};
use crate::language::Language;
use crate::say;
use pulldown_cmark::{
    Alignment, BlockQuoteKind, CowStr, Event, HeadingLevel, LinkType, Parser, Tag, TagEnd, TextMergeStream,
};
use std::collections::BTreeSet;

/// Turns the text of one page into HTML, block by block.
pub(super) struct TextWriter<'a> {
    /// The language of what is added to the author's text.
    language: &'a Language,
    /// The page, as in the summary, without `.md`.
    page: &'a str,
    /// Where the text is shown, in the site.
    here: String,
    /// Every page of text that is part of the site.
    pages: &'a BTreeSet<String>,
    /// Every page of the course's text: a link to one that is not part of the site stays text.
    whole: &'a BTreeSet<String>,
    /// Every picture and download of the course.
    assets: &'a BTreeSet<String>,
    /// Ids of the headings so far.
    ids: HeadingIds,
    /// Glossary terms so far.
    mentions: Mentions<'a>,
    /// Headings of the second level so far, as links to them.
    outline: Vec<Link>,
}

impl<'a> TextWriter<'a> {
    /// A writer for a page that is shown at `here` in a site with these pages of text (of the course's whole), pictures and downloads,
    /// and terms.
    pub fn new(
        language: &'a Language,
        here: String,
        page: &'a Page,
        (pages, whole): (&'a BTreeSet<String>, &'a BTreeSet<String>),
        assets: &'a BTreeSet<String>,
        glossary: &'a Glossary,
    ) -> Self {
        TextWriter {
            language,
            page: &page.path,
            pages,
            whole,
            assets,
            ids: HeadingIds::below(&page.anchor),
            mentions: glossary.mentions(&here),
            here,
            outline: Vec::new(),
        }
    }

    /// Links to the headings of the second level, once all text is written.
    pub fn into_outline(self) -> Vec<Link> {
        self.outline
    }

    /// The HTML of one block of text.
    ///
    /// # Errors
    /// When a link leads to a page that the course does not have.
    pub fn html(&mut self, text: &str) -> Result<String, RenderError> {
        let mut events: Vec<Event> = Vec::new();
        // For each open image, whether it is shown.
        let mut images = Vec::new();
        // For each open link, whether it is kept.
        let mut links = Vec::new();
        // Where each open heading begins.
        let mut headings = Vec::new();
        // A term may run over the end of a line: line breaks are part of the text.
        let parser = Parser::new_ext(text, markdown_options()).map(|event| match event {
            Event::SoftBreak => Event::Text("\n".into()),
            event => event,
        });
        for event in TextMergeStream::new(parser) {
            match event {
                Event::Html(raw) | Event::InlineHtml(raw) => events.push(Event::Text(raw)),
                Event::Start(Tag::HtmlBlock) => events.push(Event::Start(Tag::Paragraph)),
                Event::End(TagEnd::HtmlBlock) => events.push(Event::End(TagEnd::Paragraph)),
                Event::Start(Tag::Link { link_type, dest_url, title, id }) => {
                    // The parser has checked the address and adds `mailto:` itself.
                    let is_address = link_type == LinkType::Email;
                    let target =
                        if is_address { Some(dest_url.to_string()) } else { self.target(&dest_url)? };
                    links.push(target.is_some());
                    if let Some(target) = target {
                        events.push(Event::Start(Tag::Link {
                            link_type,
                            dest_url: target.into(),
                            title,
                            id,
                        }));
                    }
                }
                Event::End(TagEnd::Link) => {
                    if links.pop() == Some(true) {
                        events.push(Event::End(TagEnd::Link));
                    }
                }
                Event::Start(Tag::Image { link_type, dest_url, title, id }) => {
                    let target = self.picture(&dest_url)?;
                    images.push(target.is_some());
                    events.push(match target {
                        Some(target) => {
                            Event::Start(Tag::Image { link_type, dest_url: target.into(), title, id })
                        }
                        // A site shows no pictures but its own; what this one shows is said instead.
                        None => {
                            let said = escaped(&say!(self.language, "text-picture"));
                            trusted(format!(r#"<span class="no-picture">[{said} "#))
                        }
                    });
                }
                Event::End(TagEnd::Image) => events.push(match images.pop() {
                    Some(true) => Event::End(TagEnd::Image),
                    _ => trusted("]</span>"),
                }),
                Event::Start(Tag::Heading { level, .. }) => {
                    headings.push(events.len());
                    events.push(Event::Start(heading(level)));
                }
                Event::End(TagEnd::Heading(level)) => {
                    if let Some(start) = headings.pop() {
                        let text = plain_text(&events[start..]);
                        let id = self.ids.next(&text);
                        if heading_level(level) == HeadingLevel::H2 {
                            self.outline.push(Link::new(text, href_to("", "", &id)));
                        }
                        if let Event::Start(Tag::Heading { id: place, .. }) = &mut events[start] {
                            *place = Some(id.into());
                        }
                    }
                    events.push(Event::End(heading(level).to_end()));
                }
                // Alignment would need a style attribute, which the pages' content policy forbids.
                Event::Start(Tag::Table(columns)) => {
                    let name = escaped(&say!(self.language, "text-table"));
                    events.push(trusted(format!(
                        r#"<div class="table" role="group" aria-label="{name}" tabindex="0">"#
                    )));
                    events.push(Event::Start(Tag::Table(vec![Alignment::None; columns.len()])));
                }
                Event::End(TagEnd::Table) => {
                    events.push(Event::End(TagEnd::Table));
                    events.push(trusted("</div>\n"));
                }
                other => events.push(other),
            }
        }
        mark_cautions(&mut events, &say!(self.language, "text-caution"));
        set_pictures_apart(&mut events);
        let events = self.mentions.linked(events);
        let mut html = String::new();
        pulldown_cmark::html::push_html(&mut html, events.into_iter());
        Ok(html)
    }

    /// Where a link leads in the site; `None` when it may not stay a link.
    fn target(&self, link: &str) -> Result<Option<String>, RenderError> {
        let lower = link.to_ascii_lowercase();
        if ["http://", "https://", "mailto:"].iter().any(|scheme| lower.starts_with(scheme)) {
            return Ok(Some(link.to_owned()));
        }
        let (path, anchor) = link.split_once('#').unwrap_or((link, ""));
        // Another scheme (`javascript:`), another host (`//host`), or a path of the machine that shows the page.
        if path.contains(':') || path.starts_with(['/', '\\']) {
            return Ok(None);
        }
        let here = &self.here;
        if path.is_empty() {
            return Ok(Some(href_to(here, here, &decoded(anchor))));
        }
        let broken = || RenderError::BrokenLink { page: self.page.to_owned(), target: link.to_owned() };
        let path = path.split('?').next().unwrap_or_default();
        let Some(page) = path.strip_suffix(".md").map(decoded) else {
            let target = self.asset(path).ok_or_else(broken)?;
            // Such as `#page=3` of a PDF.
            let is_plain = |c: char| c.is_ascii_alphanumeric() || "-._~=&,".contains(c);
            let is_kept = !anchor.is_empty() && anchor.chars().all(is_plain);
            return Ok(Some(if is_kept { format!("{target}#{anchor}") } else { target }));
        };
        let page = resolve(self.page, &page).filter(|page| self.whole.contains(page)).ok_or_else(broken)?;
        if !self.pages.contains(&page) {
            return Ok(None);
        }
        let mut target = href_to(here, &text_path(&page), &decoded(anchor));
        if target.ends_with('#') {
            target.pop();
        }
        // A link of a page to its own top.
        Ok(Some(if target.is_empty() { "#page_top".to_owned() } else { target }))
    }

    /// Where a picture of the course lies in the site; `None` for pictures that are none of the course.
    fn picture(&self, link: &str) -> Result<Option<String>, RenderError> {
        let path = link.split(['#', '?']).next().unwrap_or_default();
        if path.is_empty() || path.contains(':') || path.starts_with(['/', '\\']) {
            return Ok(None);
        }
        let broken = || RenderError::BrokenLink { page: self.page.to_owned(), target: link.to_owned() };
        self.asset(path).map(Some).ok_or_else(broken)
    }

    /// The way to a picture or a download of the course.
    fn asset(&self, path: &str) -> Option<String> {
        let path = resolve(self.page, &decoded(path)).filter(|path| self.assets.contains(path))?;
        Some(href(&self.here, &asset_path(&path)))
    }
}

/// Markup of our own in a stream of events.
fn trusted(markup: impl Into<CowStr<'static>>) -> Event<'static> {
    Event::InlineHtml(markup.into())
}

/// Text as it stands in HTML.
fn escaped(text: &str) -> String {
    let mut out = String::new();
    // Writing into a string cannot fail.
    let _ = write_escaped(&mut out, text);
    out
}

fn heading_level(level: HeadingLevel) -> HeadingLevel {
    if level == HeadingLevel::H1 { HeadingLevel::H2 } else { level }
}

/// A heading, one level down where it would compete with the page's title.
fn heading<'a>(level: HeadingLevel) -> Tag<'a> {
    Tag::Heading { level: heading_level(level), id: None, classes: Vec::new(), attrs: Vec::new() }
}

/// Gives quotations that begin with this word in bold, "Caution", the class by which the style sheet sets them apart.
fn mark_cautions(events: &mut [Event], word: &str) {
    for at in 0..events.len().saturating_sub(3) {
        let is_caution = matches!(
            &events[at..at + 4],
            [
                Event::Start(Tag::BlockQuote(_)),
                Event::Start(Tag::Paragraph),
                Event::Start(Tag::Strong),
                Event::Text(text),
            ] if text.starts_with(word)
        );
        if is_caution {
            events[at] = Event::Start(Tag::BlockQuote(Some(BlockQuoteKind::Caution)));
        }
    }
}

/// Makes a figure of every picture that stands alone in its paragraph, its title the caption.
fn set_pictures_apart(events: &mut [Event]) {
    for start in 0..events.len().saturating_sub(1) {
        let [Event::Start(Tag::Paragraph), Event::Start(Tag::Image { .. })] = &events[start..start + 2]
        else {
            continue;
        };
        let mut depth = 0;
        let end = events[start + 1..].iter().position(|event| {
            match event {
                Event::Start(Tag::Image { .. }) => depth += 1,
                Event::End(TagEnd::Image) => depth -= 1,
                _ => {}
            }
            depth == 0
        });
        let Some(after) = end.map(|end| start + 1 + end + 1) else { continue };
        if events.get(after) != Some(&Event::End(TagEnd::Paragraph)) {
            continue;
        }
        let mut foot = "</figure>\n".to_owned();
        if let Event::Start(Tag::Image { title, .. }) = &mut events[start + 1]
            && !title.is_empty()
        {
            let caption = escaped(title);
            foot = format!("<figcaption>{caption}</figcaption>{foot}");
            *title = "".into();
        }
        events[start] = trusted("<figure class=\"picture\">\n");
        events[after] = Event::InlineHtml(foot.into());
    }
}

/// `%XX` as the bytes they stand for; whatever is not valid stays as it is.
fn decoded(text: &str) -> String {
    let bytes = text.as_bytes();
    let mut decoded = Vec::with_capacity(bytes.len());
    let mut at = 0;
    while at < bytes.len() {
        let hex = bytes.get(at + 1..at + 3).and_then(|two| std::str::from_utf8(two).ok());
        match (bytes[at], hex.and_then(|two| u8::from_str_radix(two, 16).ok())) {
            (b'%', Some(byte)) => {
                decoded.push(byte);
                at += 3;
            }
            (byte, _) => {
                decoded.push(byte);
                at += 1;
            }
        }
    }
    String::from_utf8(decoded).unwrap_or_else(|_| text.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::course::Term;

    fn html_of(text: &str) -> Result<String, RenderError> {
        html_in("en", text)
    }

    fn html_in(language: &str, text: &str) -> Result<String, RenderError> {
        let pages = ["a/b", "a/c", "d/e"].map(str::to_owned).into();
        let assets = ["a/brow.png", "d/hand out.pdf"].map(str::to_owned).into();
        let term = Term {
            id: "hue".into(),
            term: "hue".into(),
            forms: Vec::new(),
            not_in: Vec::new(),
            means: String::new(),
            see: Vec::new(),
        };
        let page = Page { title: "B".into(), path: "a/b".into(), anchor: "b".into(), blocks: Vec::new() };
        let (language, glossary) = (Language::of(language), Glossary::new(&[term]));
        TextWriter::new(&language, text_path("a/b"), &page, (&pages, &pages), &assets, &glossary).html(text)
    }

    #[test]
    fn raw_html_is_shown_and_not_obeyed() {
        for (text, shown) in [
            ("<script>alert(1)</script>", "&lt;script&gt;alert(1)&lt;/script&gt;"),
            ("a <img src=x onerror=alert(1)> b", "a &lt;img src=x onerror=alert(1)&gt; b"),
            ("<div>\nx\n</div>", "&lt;div&gt;\nx\n&lt;/div&gt;"),
        ] {
            assert_eq!(html_of(text).unwrap().trim(), format!("<p>{shown}</p>"));
        }
    }

    #[test]
    fn only_harmless_links_stay() {
        for (link, href) in [
            ("https://example.org/a", Some("https://example.org/a")),
            ("mailto:a@example.org", Some("mailto:a@example.org")),
            ("c.md", Some("c.html")),
            ("../d/e.md#Some-Part", Some("../d/e.html#Some-Part")),
            ("c.md?x=1#y", Some("c.html#y")),
            ("#part", Some("#part")),
            ("b.md", Some("#page_top")),
            ("javascript:alert(1)", None),
            ("JaVaScRiPt:alert(1)", None),
            ("data:text/html,x", None),
            ("file:///etc/passwd", None),
            ("//example.org/x", None),
            ("/x.md", None),
            ("../d/hand%20out.pdf?x#page=2", Some("../d/hand%20out.pdf#page=2")),
            ("../d/hand out.pdf#\"&", Some("../d/hand%20out.pdf")),
            ("brow.png", Some("brow.png")),
        ] {
            let html = html_of(&format!("[text](<{link}>)")).unwrap();
            let expected =
                href.map_or("<p>text</p>".to_owned(), |href| format!("<p><a href=\"{href}\">text</a></p>"));
            assert_eq!(html.trim(), expected, "{link}");
        }
    }

    #[test]
    fn addresses_in_angle_brackets_are_links() {
        assert_eq!(
            html_of("<a@example.org>").unwrap().trim(),
            r#"<p><a href="mailto:a@example.org">a@example.org</a></p>"#
        );
    }

    #[test]
    fn a_link_to_no_page_is_an_error() {
        for text in ["[t](x.md)", "[t](../../d/e.md)", "[t](x.pdf)", "![t](x.png)", "![t](c.md)"] {
            assert!(matches!(html_of(text), Err(RenderError::BrokenLink { .. })), "{text}");
        }
    }

    #[test]
    fn headings_have_unique_ids() {
        let html = html_of("# A *title*\n## Main\n## Main\n## B").unwrap();
        let ids: Vec<&str> = html.lines().filter_map(|line| line.split('"').nth(1)).collect();
        assert_eq!(ids, ["a-title", "main", "main-1", "b-1"]);
        assert!(html.starts_with("<h2 "));
    }

    #[test]
    fn tables_carry_no_style() {
        let html = html_of("| a |\n|--:|\n| 1 |").unwrap();
        assert!(!html.contains("style=") && html.contains("<td>1</td>"), "{html}");
    }

    #[test]
    fn pictures_of_the_course_are_shown_and_others_told() {
        for (text, html) in [
            (
                "![A *brow* & more](brow.png)",
                "<figure class=\"picture\">\n<img src=\"brow.png\" alt=\"A brow &amp; more\" /></figure>",
            ),
            (
                "![A brow](../a/brow.png \"A <b> \\\"hue\\\"\")",
                "<figure class=\"picture\">\n<img src=\"brow.png\" alt=\"A brow\" />\
                 <figcaption>A &lt;b&gt; &quot;hue&quot;</figcaption></figure>",
            ),
            (
                "See ![a hue](brow.png \"t\") here",
                "<p>See <img src=\"brow.png\" alt=\"a hue\" title=\"t\" /> here</p>",
            ),
            (
                "![A brow](https://example.org/brow.png)",
                "<p><span class=\"no-picture\">[Picture: A brow]</span></p>",
            ),
        ] {
            assert_eq!(html_of(text).unwrap().trim(), html);
        }
    }

    #[test]
    fn cautions_are_set_apart() {
        assert!(html_of("> **Caution.** Wait.").unwrap().contains("markdown-alert-caution"));
        assert!(!html_of("> **Note.** Go.").unwrap().contains("markdown-alert"));
        assert!(html_in("de", "> **Vorsicht.** Warten.").unwrap().contains("markdown-alert-caution"));
    }
}
