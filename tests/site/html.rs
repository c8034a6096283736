//! Just enough of an HTML reader for our own pages: every tag with its attributes, in order.

/// A start tag.
#[derive(Debug)]
pub struct Tag {
    pub name: String,
    /// Attributes in order, values with their entities undone.
    pub attributes: Vec<(String, String)>,
}

impl Tag {
    /// The value of an attribute.
    pub fn get(&self, name: &str) -> Option<&str> {
        self.attributes.iter().find(|(found, _)| found == name).map(|(_, value)| value.as_str())
    }
}

/// Every start tag of a page.
///
/// # Panics
/// On an attribute without quotes or a tag that never ends: our pages have neither.
pub fn tags(page: &str) -> Vec<Tag> {
    let mut found = Vec::new();
    let mut rest = page;
    while let Some(at) = rest.find('<') {
        rest = &rest[at + 1..];
        if rest.starts_with(|c: char| c.is_ascii_alphabetic()) {
            let (tag, after) = tag(rest);
            found.push(tag);
            rest = after;
        }
    }
    found
}

fn tag(text: &str) -> (Tag, &str) {
    let end = text.find(|c: char| !c.is_ascii_alphanumeric()).expect("a tag ends");
    let mut tag = Tag { name: text[..end].to_ascii_lowercase(), attributes: Vec::new() };
    let mut rest = text[end..].trim_start();
    loop {
        if let Some(after) = rest.strip_prefix('>') {
            return (tag, after);
        }
        if let Some(after) = rest.strip_prefix('/') {
            rest = after;
            continue;
        }
        let end = rest.find(['=', '>', ' ', '\n', '/']).expect("an attribute ends");
        let name = rest[..end].to_ascii_lowercase();
        rest = rest[end..].trim_start();
        let mut value = String::new();
        if let Some(after) = rest.strip_prefix('=') {
            let quoted =
                after.strip_prefix('"').unwrap_or_else(|| panic!("`{name}` has no quotes: {}", &after[..20]));
            let end = quoted.find('"').expect("a value ends");
            value = decoded(&quoted[..end]);
            rest = quoted[end + 1..].trim_start();
        }
        tag.attributes.push((name, value));
    }
}

/// Entities undone.
pub fn decoded(text: &str) -> String {
    text.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&nbsp;", "\u{a0}")
        .replace("&amp;", "&")
}
