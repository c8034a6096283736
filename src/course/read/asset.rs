//! Which files pages may show or offer: pictures and downloads, and nothing that a browser would run.
//!
//! Entry points: [`check_name`], when a page refers to a file, and [`check_content`], when the file has been read.

use super::drawing::check_drawing;
use super::suggest::quoted;

/// The longest picture or download that is read, in bytes.
pub(crate) const MOST_BYTES: u64 = 4_000_000;

/// How a page refers to a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Use {
    /// Shown as a picture.
    Shown,
    /// Offered by a link.
    Linked,
}

/// What may be done with files of a format.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    /// Shown or offered.
    Picture,
    /// Shown, where it runs nothing; opened by itself, it could hold scripts.
    Drawing,
    /// Offered.
    Download,
}

/// A format, known by its ending.
struct Format {
    ending: &'static str,
    name: &'static str,
    kind: Kind,
    /// Whether content looks like this format, as far as its first bytes tell.
    fits: fn(&[u8]) -> bool,
}

const FORMATS: [Format; 18] = [
    picture("png", "PNG", |content| content.starts_with(b"\x89PNG\r\n\x1a\n")),
    picture("jpg", "JPEG", |content| content.starts_with(b"\xff\xd8\xff")),
    picture("jpeg", "JPEG", |content| content.starts_with(b"\xff\xd8\xff")),
    picture("webp", "WebP", |content| content.starts_with(b"RIFF") && content.get(8..12) == Some(b"WEBP")),
    picture("gif", "GIF", |content| content.starts_with(b"GIF87a") || content.starts_with(b"GIF89a")),
    picture("avif", "AVIF", |content| {
        matches!(content.get(4..12), Some(b"ftypavif" | b"ftypavis" | b"ftypmif1"))
    }),
    Format { ending: "svg", name: "SVG", kind: Kind::Drawing, fits: is_svg },
    download("pdf", "PDF", |content| content.starts_with(b"%PDF-")),
    download("csv", "CSV", |_| true),
    download("tsv", "TSV", |_| true),
    download("txt", "text", |_| true),
    download("ods", "OpenDocument", is_zip),
    download("odt", "OpenDocument", is_zip),
    download("odp", "OpenDocument", is_zip),
    download("xlsx", "Office Open XML", is_zip),
    download("docx", "Office Open XML", is_zip),
    download("pptx", "Office Open XML", is_zip),
    download("zip", "ZIP", is_zip),
];

const fn picture(ending: &'static str, name: &'static str, fits: fn(&[u8]) -> bool) -> Format {
    Format { ending, name, kind: Kind::Picture, fits }
}

const fn download(ending: &'static str, name: &'static str, fits: fn(&[u8]) -> bool) -> Format {
    Format { ending, name, kind: Kind::Download, fits }
}

fn is_svg(content: &[u8]) -> bool {
    std::str::from_utf8(content).is_ok_and(|text| text.contains("<svg"))
}

fn is_zip(content: &[u8]) -> bool {
    content.starts_with(b"PK")
}

/// The format that a path's ending names, in capitals or not.
fn format_of(path: &str) -> Option<&'static Format> {
    let name = path.rsplit_once('/').map_or(path, |(_, name)| name);
    let (_, ending) = name.rsplit_once('.')?;
    FORMATS.iter().find(|format| format.ending.eq_ignore_ascii_case(ending))
}

/// Whether a page may refer to the file at this path in this way, as far as its name tells.
///
/// # Errors
/// What is wrong, and what to do.
pub(crate) fn check_name(path: &str, used: Use) -> Result<(), (String, String)> {
    let endings = |kinds: &[Kind]| {
        let endings = FORMATS.iter().filter(|format| kinds.contains(&format.kind));
        endings.map(|format| format!("`.{}`", format.ending)).collect::<Vec<_>>().join(", ")
    };
    match (format_of(path).map(|format| format.kind), used) {
        (Some(Kind::Picture), _)
        | (Some(Kind::Drawing), Use::Shown)
        | (Some(Kind::Download), Use::Linked) => Ok(()),
        (Some(Kind::Drawing), Use::Linked) => Err((
            format!("a link to the drawing {}, which could hold scripts", quoted(path)),
            "show it in the page, where it runs nothing: `![what is to be seen](drawing.svg)`".to_owned(),
        )),
        (_, Use::Shown) => Err((
            format!("{} is no picture that a page can show", quoted(path)),
            format!("pictures end in {}", endings(&[Kind::Picture, Kind::Drawing])),
        )),
        (None, Use::Linked) => Err((
            format!("{} is no file that a page can offer", quoted(path)),
            format!("pages link to pages (`.md`), to pictures, and to {}", endings(&[Kind::Download])),
        )),
    }
}

/// Whether a file's content is what its name says, as far as can be told.
///
/// # Errors
/// What is wrong, and what to do.
pub(crate) fn check_content(path: &str, content: &[u8]) -> Result<(), (String, &'static str)> {
    let format = format_of(path);
    match format {
        Some(format) if !(format.fits)(content) => Err((
            format!("{} is no {} file, whatever its name says", quoted(path), format.name),
            "save it anew in that format, or give it the ending of the format that it is in",
        )),
        Some(Format { kind: Kind::Drawing, .. }) => check_drawing(content).map_err(|amiss| {
            (
                format!("{} is more than a drawing: {amiss}", quoted(path)),
                "opened by itself it would act in the reader's browser: export it anew as plain SVG, without scripts, links, animation \
                 and linked files, or as a PNG",
            )
        }),
        _ => Ok(()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_browser_would_run_is_never_offered() {
        for path in [
            "a/x.html",
            "x.HTM",
            "x.xhtml",
            "x.js",
            "x.mjs",
            "x.xml",
            "x.svg.html",
            "x.png/y",
            "x",
            ".png/",
            "x.wasm",
            "x.yaml",
        ] {
            assert!(
                check_name(path, Use::Linked).is_err() && check_name(path, Use::Shown).is_err(),
                "{path}"
            );
        }
        assert!(check_name("x.svg", Use::Linked).is_err() && check_name("x.svg", Use::Shown).is_ok());
        assert!(check_name("x.pdf", Use::Linked).is_ok() && check_name("x.pdf", Use::Shown).is_err());
        assert!(check_name("X.PNG", Use::Linked).is_ok() && check_name("X.PNG", Use::Shown).is_ok());
    }

    #[test]
    fn content_is_held_against_the_name() {
        for (path, content) in [
            ("a.png", &b"\x89PNG\r\n\x1a\n..."[..]),
            ("a.JPG", b"\xff\xd8\xff\xe0"),
            ("a.webp", b"RIFF\x01\x02\x03\x04WEBP"),
            ("a.avif", b"\0\0\0\x20ftypavif"),
            ("a.gif", b"GIF89a"),
            ("a.svg", b"<?xml version='1.0'?>\n<svg/>"),
            ("a.pdf", b"%PDF-1.7"),
            ("a.csv", b""),
            ("a.ods", b"PK\x03\x04"),
        ] {
            assert_eq!(check_content(path, content), Ok(()), "{path}");
            let is_free = path.ends_with("csv");
            assert_eq!(check_content(path, b"<!doctype html>").is_ok(), is_free, "{path}");
        }
    }
}
