//! Where a link leads, as far as can be told without a network.

use super::suggest::quoted;

/// Where a link leads.
#[derive(Debug, PartialEq, Eq)]
pub(crate) enum Target {
    /// To the web or to a mailbox.
    Outside,
    /// To a place on the same page.
    SamePage,
    /// To a file, as a path relative to the course folder.
    File(String),
}

/// Where `destination`, on the page at `page`, leads; both the page and the answer are relative to the course folder, and
/// nothing above the folder `top` can be reached.
///
/// # Errors
/// What is wrong with it, and what to do.
pub(crate) fn follow(destination: &str, page: &str, top: &str) -> Result<Target, (String, &'static str)> {
    if destination.is_empty() {
        return Err(("a link that leads nowhere".to_owned(), "write its destination between the brackets"));
    }
    if let Some(scheme) = scheme(destination) {
        return match scheme.to_ascii_lowercase().as_str() {
            "http" | "https" | "mailto" => Ok(Target::Outside),
            _ => Err((
                format!("a link with the scheme {}", quoted(scheme)),
                "links begin with http:, https: or mailto:, or are paths relative to the page",
            )),
        };
    }
    let path = destination.split(['#', '?']).next().unwrap_or_default();
    if path.is_empty() {
        return Ok(Target::SamePage);
    }
    if path.starts_with('/') {
        return Err((
            format!("{} is not relative to the page", quoted(path)),
            "write the way from this page's folder",
        ));
    }
    let Some(path) = decode(path) else {
        return Err((format!("{} is not valid UTF-8", quoted(path)), "write the file's name as it is"));
    };
    if path.contains('\\') {
        return Err((format!("{} holds a backslash", quoted(&path)), "write `/` between folders"));
    }
    let folder = page.rsplit_once('/').map_or("", |(folder, _)| folder);
    let mut parts: Vec<&str> = folder.split('/').collect();
    let depth = top.split('/').count();
    for part in path.split('/') {
        match part {
            "" | "." => {}
            ".." if parts.len() > depth => _ = parts.pop(),
            ".." => {
                return Err((
                    format!("{} leads out of the folder of lessons", quoted(&path)),
                    "keep what pages show in the folder of lessons",
                ));
            }
            part => parts.push(part),
        }
    }
    Ok(Target::File(parts.join("/")))
}

/// The anchor that a link leads to, with its percent escapes undone; nothing for the page as a whole.
pub(crate) fn anchor_of(destination: &str) -> Option<String> {
    let (_, anchor) = destination.split_once('#')?;
    let anchor = decode(anchor).unwrap_or_else(|| anchor.to_owned());
    (!anchor.is_empty()).then_some(anchor)
}

/// The scheme of a URL, if it has one.
fn scheme(destination: &str) -> Option<&str> {
    let (scheme, _) = destination.split_once(':')?;
    let well_formed = scheme.starts_with(|c: char| c.is_ascii_alphabetic())
        && scheme.chars().all(|c| c.is_ascii_alphanumeric() || matches!(c, '+' | '-' | '.'));
    well_formed.then_some(scheme)
}

/// A path with its percent escapes undone, if the outcome is a text.
fn decode(path: &str) -> Option<String> {
    let bytes = path.as_bytes();
    let mut decoded = Vec::with_capacity(bytes.len());
    let mut at = 0;
    while at < bytes.len() {
        let escape = path.get(at + 1..at + 3).filter(|_| bytes[at] == b'%');
        match escape.and_then(|digits| u8::from_str_radix(digits, 16).ok()) {
            Some(byte) => {
                decoded.push(byte);
                at += 3;
            }
            None => {
                decoded.push(bytes[at]);
                at += 1;
            }
        }
    }
    String::from_utf8(decoded).ok().filter(|path| !path.contains('\0'))
}
