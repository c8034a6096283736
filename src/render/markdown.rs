//! The course's CommonMark as HTML.
//!
//! Entry point: [`TextWriter`], one for each page. Nothing an author writes becomes markup: raw HTML is shown as the text it is,
//! and only links to the web, to mail and within the course stay links. Links to `.md` files lead to the pages made of them,
//! headings get the ids that mdBook gives them, and a quotation that begins with **Caution** is marked as one.

use super::RenderError;
use super::frame::Link;
use super::plan::{href_to, resolve, text_path};
use crate::course::markdown_options;
use pulldown_cmark::{Alignment, BlockQuoteKind, Event, HeadingLevel, LinkType, Parser, Tag, TagEnd};
use std::collections::BTreeSet;

/// Ids that our own markup uses on pages with text.
const TAKEN: [&str; 2] = ["page_top", "page_main"];

/// Turns the text of one page into HTML, block by block.
pub(super) struct TextWriter<'a> {
    /// The page, as in the summary, without `.md`.
    page: &'a str,
    /// Every page of the course's text.
    pages: &'a BTreeSet<String>,
    /// Ids of the headings so far.
    ids: BTreeSet<String>,
    /// Headings of the second level so far, as links to them.
    outline: Vec<Link>,
}

impl<'a> TextWriter<'a> {
    /// A writer for the page at this course path.
    pub fn new(page: &'a str, pages: &'a BTreeSet<String>) -> Self {
        TextWriter { page, pages, ids: TAKEN.map(str::to_owned).into(), outline: Vec::new() }
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
        // For each open link, whether it is kept.
        let mut links = Vec::new();
        // Where each open heading begins.
        let mut headings = Vec::new();
        for event in Parser::new_ext(text, markdown_options()) {
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
                // A site holds no pictures but its own; what the picture shows is said instead.
                Event::Start(Tag::Image { .. }) => {
                    events.push(trusted(r#"<span class="picture">[Picture: "#))
                }
                Event::End(TagEnd::Image) => events.push(trusted("]</span>")),
                Event::Start(Tag::Heading { level, .. }) => {
                    headings.push(events.len());
                    events.push(Event::Start(heading(level)));
                }
                Event::End(TagEnd::Heading(level)) => {
                    if let Some(start) = headings.pop() {
                        let text = plain_text(&events[start..]);
                        let id = self.new_id(&text);
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
                    events.push(trusted(
                        r#"<div class="table" role="region" aria-label="Table" tabindex="0">"#,
                    ));
                    events.push(Event::Start(Tag::Table(vec![Alignment::None; columns.len()])));
                }
                Event::End(TagEnd::Table) => {
                    events.push(Event::End(TagEnd::Table));
                    events.push(trusted("</div>\n"));
                }
                other => events.push(other),
            }
        }
        mark_cautions(&mut events);
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
        let here = text_path(self.page);
        if path.is_empty() {
            return Ok(Some(href_to(&here, &here, &decoded(anchor))));
        }
        let broken = || RenderError::BrokenLink { page: self.page.to_owned(), target: link.to_owned() };
        // A site holds the course's pages and no other file of it.
        let path = path.split('?').next().unwrap_or_default();
        let Some(page) = path.strip_suffix(".md").map(decoded) else { return Ok(None) };
        let page = resolve(self.page, &page).filter(|page| self.pages.contains(page)).ok_or_else(broken)?;
        let mut target = href_to(&here, &text_path(&page), &decoded(anchor));
        if target.ends_with('#') {
            target.pop();
        }
        // A link of a page to its own top.
        Ok(Some(if target.is_empty() { "#page_top".to_owned() } else { target }))
    }

    /// An id for a heading, unique on the page, made as mdBook makes it.
    fn new_id(&mut self, heading: &str) -> String {
        let stem: String = heading
            .trim()
            .chars()
            .filter_map(|c| match c {
                c if c.is_whitespace() => Some('-'),
                c if c.is_alphanumeric() || c == '_' || c == '-' => Some(c),
                _ => None,
            })
            .flat_map(char::to_lowercase)
            .collect();
        let stem = if stem.is_empty() { "section".to_owned() } else { stem };
        let mut id = stem.clone();
        let mut count = 0;
        while !self.ids.insert(id.clone()) {
            count += 1;
            id = format!("{stem}-{count}");
        }
        id
    }
}

/// Markup of our own in a stream of events.
fn trusted(markup: &'static str) -> Event<'static> {
    Event::InlineHtml(markup.into())
}

fn heading_level(level: HeadingLevel) -> HeadingLevel {
    if level == HeadingLevel::H1 { HeadingLevel::H2 } else { level }
}

/// A heading, one level down where it would compete with the page's title.
fn heading<'a>(level: HeadingLevel) -> Tag<'a> {
    Tag::Heading { level: heading_level(level), id: None, classes: Vec::new(), attrs: Vec::new() }
}

/// What events say, without markup.
fn plain_text(events: &[Event]) -> String {
    events
        .iter()
        .map(|event| match event {
            Event::Text(text) | Event::Code(text) => text.as_ref(),
            Event::SoftBreak | Event::HardBreak => " ",
            _ => "",
        })
        .collect()
}

/// Gives quotations that begin with a bold "Caution" the class by which the style sheet sets them apart.
fn mark_cautions(events: &mut [Event]) {
    for at in 0..events.len().saturating_sub(3) {
        let is_caution = matches!(
            &events[at..at + 4],
            [
                Event::Start(Tag::BlockQuote(_)),
                Event::Start(Tag::Paragraph),
                Event::Start(Tag::Strong),
                Event::Text(text),
            ] if text.starts_with("Caution")
        );
        if is_caution {
            events[at] = Event::Start(Tag::BlockQuote(Some(BlockQuoteKind::Caution)));
        }
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

    fn html_of(text: &str) -> Result<String, RenderError> {
        let pages = ["a/b", "a/c", "d/e"].map(str::to_owned).into();
        TextWriter::new("a/b", &pages).html(text)
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
            ("handout.pdf", None),
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
        for link in ["x.md", "../../d/e.md"] {
            assert!(
                matches!(html_of(&format!("[t]({link})")), Err(RenderError::BrokenLink { .. })),
                "{link}"
            );
        }
    }

    #[test]
    fn headings_have_unique_ids() {
        let html = html_of("# A *title*\n## Main\n## Main\n## 100 % ?\n## Größe").unwrap();
        let ids: Vec<&str> = html.lines().filter_map(|line| line.split('"').nth(1)).collect();
        assert_eq!(ids, ["a-title", "main", "main-1", "100--", "größe"]);
        assert!(html.starts_with("<h2 "));
    }

    #[test]
    fn tables_carry_no_style_and_pictures_say_what_they_show() {
        let html = html_of("| a |\n|--:|\n| 1 |\n\n![A brow](x.png)").unwrap();
        assert!(
            !html.contains("style=") && html.contains("<td>1</td>") && html.contains("[Picture: A brow]"),
            "{html}"
        );
    }

    #[test]
    fn cautions_are_set_apart() {
        assert!(html_of("> **Caution.** Wait.").unwrap().contains("markdown-alert-caution"));
        assert!(!html_of("> **Note.** Go.").unwrap().contains("markdown-alert"));
    }
}
