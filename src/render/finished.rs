//! What a finished page of ours says, part by part, for the search: pages that are put together out of messages have no other text.
//!
//! Entry point: [`parts`]. It reads what our templates write, not HTML at large: attributes are quoted, and text is escaped.

/// What stands under a heading.
#[derive(Debug, PartialEq, Eq)]
pub(super) struct PartOfPage {
    /// Id of the heading; empty for what stands before the first one.
    pub anchor: String,
    /// The heading.
    pub heading: String,
    /// What stands below it, up to the next one.
    pub text: String,
}

/// The parts of the main text of a page: what stands before its first heading of the second level, and what stands under each.
pub(super) fn parts(html: &str) -> Vec<PartOfPage> {
    let main = between(html, "<main", "</main>").and_then(|main| main.split_once('>')).map_or("", |it| it.1);
    let text = without(&without(&without(main, "<nav", "</nav>"), "<svg", "</svg>"), "<h1", "</h1>");
    let mut parts = text.split("<h2");
    let first = PartOfPage {
        anchor: String::new(),
        heading: String::new(),
        text: said(parts.next().unwrap_or_default()),
    };
    let headed = parts.filter_map(|part| {
        let (tag, rest) = part.split_once('>')?;
        let (heading, text) = rest.split_once("</h2>")?;
        let anchor = between(tag, "id=\"", "\"").unwrap_or_default();
        Some(PartOfPage { anchor: anchor.to_owned(), heading: said(heading), text: said(text) })
    });
    std::iter::once(first).chain(headed).filter(|part| !part.text.is_empty()).collect()
}

/// The heading of a page.
pub(super) fn title(html: &str) -> String {
    let heading = between(html, "<h1", "</h1>").and_then(|heading| heading.split_once('>'));
    said(heading.map_or("", |(_, words)| words))
}

/// What lies between the first `start` and the `end` after it.
fn between<'h>(html: &'h str, start: &str, end: &str) -> Option<&'h str> {
    let from = html.find(start)? + start.len();
    let length = html[from..].find(end)?;
    Some(&html[from..from + length])
}

/// The same without every element that begins and ends so.
fn without(html: &str, start: &str, end: &str) -> String {
    let mut kept = String::with_capacity(html.len());
    let mut rest = html;
    while let Some(at) = rest.find(start) {
        kept += &rest[..at];
        rest = rest[at..].find(end).map_or("", |after| &rest[at + after + end.len()..]);
    }
    kept + rest
}

/// The words without their marks, in one line.
fn said(html: &str) -> String {
    let mut pieces = html.split('<');
    let mut text = pieces.next().unwrap_or_default().to_owned();
    for piece in pieces {
        let (tag, after) = piece.split_once('>').unwrap_or((piece, ""));
        if !IN_A_LINE.contains(&tag.trim_start_matches('/').split(' ').next().unwrap_or_default()) {
            text.push(' ');
        }
        text += after;
    }
    let text = ENTITIES.iter().fold(text, |text, (entity, letter)| text.replace(entity, letter));
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Marks that do not part words.
const IN_A_LINE: [&str; 8] = ["a", "strong", "em", "code", "span", "sub", "sup", "q"];

/// What our pages escape, the ampersand last.
const ENTITIES: [(&str, &str); 8] = [
    ("&nbsp;", " "),
    ("&lt;", "<"),
    ("&gt;", ">"),
    ("&quot;", "\""),
    // As the templates escape text, and as their library does.
    ("&#39;", "'"),
    ("&#x27;", "'"),
    ("&#x2f;", "/"),
    ("&amp;", "&"),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_page_is_read_part_by_part() {
        let html = "<body><main id=\"m\"><h1>Title</h1><p>First &amp;<strong>last</strong>.</p><nav>x</nav>\
                    <h2 id=\"a\">One <em>a</em></h2><p>L*&nbsp;5<svg><text>no</text></svg></p><ul><li>b</li><li>c</li></ul>\
                    <h2 id=\"b\">Empty</h2></main></body>";
        let part = |anchor: &str, heading: &str, text: &str| PartOfPage {
            anchor: anchor.to_owned(),
            heading: heading.to_owned(),
            text: text.to_owned(),
        };
        assert_eq!(parts(html), [part("", "", "First &last."), part("a", "One a", "L* 5 b c")]);
        assert_eq!(title(html), "Title");
        assert_eq!(parts("<p>nothing"), []);
    }
}
