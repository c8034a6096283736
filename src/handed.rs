//! Files that people hand in as text: what they hold, in whatever encoding an editor or a spreadsheet wrote it; and what they are, where that
//! is no text.
//!
//! Entry point: [`text_of`].

use thiserror::Error;

/// Why a file is no text.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum NoText {
    /// It is something else, by its first bytes: "a picture (PNG)".
    #[error("this is {0}, not text")]
    Kind(&'static str),
    /// It is of no encoding that is read.
    #[error(
        "line {}, column {}: the byte {byte:02X} is no UTF-8; save the file as UTF-8",
        before.line(),
        before.column()
    )]
    NotUtf8 {
        /// The text before that byte.
        before: Before,
        /// The byte.
        byte: u8,
    },
    /// It begins as UTF-16, and does not go on so.
    #[error(
        "line {}, column {}: the file begins as UTF-16, and this is no character of it; save the file as UTF-8",
        before.line(),
        before.column()
    )]
    NotUtf16 {
        /// The text before what is none.
        before: Before,
    },
}

/// The text before something that is none: it tells where that is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Before(pub String);

impl Before {
    /// The line, from 1.
    pub fn line(&self) -> usize {
        self.0.matches('\n').count() + 1
    }

    /// The column, in characters from 1.
    pub fn column(&self) -> usize {
        let (_, line) = self.0.rsplit_once('\n').unwrap_or(("", &self.0));
        line.chars().count() + 1
    }
}

/// First bytes of what is handed in by mistake, from the published formats: PNG (W3C), JPEG (ITU-T T.81), GIF89a, TIFF 6.0, PDF (ISO 32000), ZIP
/// (APPNOTE), gzip (RFC 1952), compound files (MS-CFB) and RTF 1.9.
const KINDS: [(&[u8], &str); 11] = [
    (b"\x89PNG\r\n\x1a\n", "a picture (PNG)"),
    (b"\xff\xd8\xff", "a picture (JPEG)"),
    (b"GIF8", "a picture (GIF)"),
    (b"II*\0", "a picture (TIFF)"),
    (b"MM\0*", "a picture (TIFF)"),
    (b"%PDF-", "a document (PDF)"),
    (b"PK\x03\x04", "a packed file (ZIP), or a spreadsheet or document of that form"),
    (b"PK\x05\x06", "an empty packed file (ZIP)"),
    (b"\x1f\x8b", "a packed file (gzip)"),
    (b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1", "a spreadsheet or document of an older form"),
    (b"{\\rtf", "a document (RTF)"),
];

/// What a file is that is no text, by its first bytes.
fn kind_of(bytes: &[u8]) -> Option<&'static str> {
    let begins = |at: usize, with: &[u8]| bytes.get(at..).is_some_and(|rest| rest.starts_with(with));
    // Two formats that keep their name behind a length: WebP (RFC 9649) and those of ISO/IEC 14496-12, among them HEIF.
    if begins(0, b"RIFF") && begins(8, b"WEBP") {
        return Some("a picture (WebP)");
    }
    if begins(0, b"\0") && begins(4, b"ftyp") {
        let is_picture = [&b"heic"[..], b"heix", b"mif1", b"avif"].iter().any(|name| begins(8, name));
        return Some(if is_picture { "a picture (HEIF)" } else { "a film" });
    }
    if let Some((_, kind)) = KINDS.iter().find(|(first, _)| begins(0, first)) {
        return Some(kind);
    }
    let text = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes).trim_ascii_start();
    let is_page = [&b"<!doctype html"[..], b"<html"]
        .iter()
        .any(|tag| text.get(..tag.len()).is_some_and(|first| first.eq_ignore_ascii_case(tag)));
    is_page.then_some("a web page (HTML)")
}

/// How units of UTF-16 are read out of two bytes.
type Unit = fn([u8; 2]) -> u16;

/// The two orders of bytes.
const LITTLE: Unit = u16::from_le_bytes;
const BIG: Unit = u16::from_be_bytes;

/// Units by which text in UTF-16 is known that does not say so.
const KNOWN_BY: usize = 4;

/// The order of bytes of text in UTF-16 without a byte order mark. What is handed in begins with figures, brackets and letters of ASCII, of which
/// every second byte is zero then; a text in UTF-8 holds no such byte.
fn unmarked(bytes: &[u8]) -> Option<Unit> {
    let (units, _) = bytes.as_chunks::<2>();
    let first = &units[..units.len().min(KNOWN_BY)];
    let all = |unit: Unit| first.len() > 1 && first.iter().all(|two| (1..0x80).contains(&unit(*two)));
    [LITTLE, BIG].into_iter().find(|unit| all(*unit))
}

/// Whether a file is text in UTF-16, with a byte order mark or without one.
pub(crate) fn is_utf16(bytes: &[u8]) -> bool {
    bytes.starts_with(b"\xff\xfe") || bytes.starts_with(b"\xfe\xff") || unmarked(bytes).is_some()
}

/// The text of a file in UTF-8 or UTF-16, with a byte order mark, which is left out, or without one.
///
/// # Errors
/// [`NoText`] where it is something else.
pub fn text_of(bytes: &[u8]) -> Result<String, NoText> {
    if let Some(kind) = kind_of(bytes) {
        return Err(NoText::Kind(kind));
    }
    for (mark, unit) in [(b"\xff\xfe", LITTLE), (b"\xfe\xff", BIG)] {
        if let Some(rest) = bytes.strip_prefix(mark) {
            return of_utf16(rest, unit);
        }
    }
    if let Some(unit) = unmarked(bytes) {
        return of_utf16(bytes, unit);
    }
    let bytes = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    match std::str::from_utf8(bytes) {
        Ok(text) => Ok(text.to_owned()),
        Err(error) => {
            let (before, rest) = bytes.split_at(error.valid_up_to());
            let before = Before(String::from_utf8_lossy(before).into_owned());
            Err(NoText::NotUtf8 { before, byte: rest.first().copied().unwrap_or_default() })
        }
    }
}

fn of_utf16(bytes: &[u8], unit: Unit) -> Result<String, NoText> {
    let (units, odd) = bytes.as_chunks::<2>();
    let mut text = String::with_capacity(units.len());
    for read in char::decode_utf16(units.iter().map(|two| unit(*two))) {
        match read {
            Ok(read) => text.push(read),
            Err(_) => return Err(NoText::NotUtf16 { before: Before(text) }),
        }
    }
    if odd.is_empty() { Ok(text) } else { Err(NoText::NotUtf16 { before: Before(text) }) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn kinds_are_told_by_their_first_bytes() {
        for (bytes, kind) in [
            (&b"\x89PNG\r\n\x1a\n\0\0"[..], "a picture (PNG)"),
            (b"RIFF\x10\0\0\0WEBPVP8 ", "a picture (WebP)"),
            (b"\0\0\0\x18ftypheic", "a picture (HEIF)"),
            (b"\0\0\0\x18ftypisom", "a film"),
            (b"%PDF-1.7", "a document (PDF)"),
            (b"\xef\xbb\xbf\n<!DOCTYPE HTML>", "a web page (HTML)"),
        ] {
            assert_eq!(text_of(bytes), Err(NoText::Kind(kind)));
        }
    }

    /// Words of a text are none of those bytes.
    #[test]
    fn text_that_only_looks_like_it_is_read() {
        for text in ["four ftypheic", "RIFF and WEBP", "PK, Perrin Knoll", "<table>"] {
            assert_eq!(text_of(text.as_bytes()).as_deref(), Ok(text));
        }
    }

    #[test]
    fn broken_text_is_told_by_its_place() {
        let told = |bytes: &[u8]| text_of(bytes).unwrap_err().to_string();
        assert_eq!(
            told("ab\nçd".as_bytes().iter().chain(b"\xe9f").copied().collect::<Vec<u8>>().as_slice()),
            "line 2, column 3: the byte E9 is no UTF-8; save the file as UTF-8"
        );
        // Half a pair, and half a unit.
        for half in [&b"\xff\xfea\0\0\xd8b\0"[..], b"\xff\xfea\0b"] {
            assert!(told(half).starts_with("line 1, column 2: the file begins as UTF-16"));
        }
        assert!(told(b"a\0b\0c").starts_with("line 1, column 3: the file begins as UTF-16"));
        assert_eq!(text_of(b""), Ok(String::new()));
    }

    proptest! {
        /// Whatever an editor wrote, the same text is read; JSON begins with none of the marks above.
        #[test]
        fn prop_every_encoding_gives_the_text_back(text in any::<String>()) {
            let text = format!("{{{text}");
            prop_assume!(!text.starts_with("{\\rtf") && !text.contains('\0'));
            let little: Vec<u8> = text.encode_utf16().flat_map(u16::to_le_bytes).collect();
            let big: Vec<u8> = text.encode_utf16().flat_map(u16::to_be_bytes).collect();
            prop_assert_eq!(text_of(text.as_bytes()), Ok(text.clone()));
            prop_assert_eq!(text_of(&[b"\xef\xbb\xbf", text.as_bytes()].concat()), Ok(text.clone()));
            prop_assert_eq!(text_of(&[&b"\xff\xfe"[..], &little].concat()), Ok(text.clone()));
            prop_assert_eq!(text_of(&[&b"\xfe\xff"[..], &big].concat()), Ok(text));
        }

        /// Without a mark, what begins as every slip, register, record and assignment does.
        #[test]
        fn prop_utf_16_is_read_without_a_mark(
            head in prop::sample::select(vec!["{\"form", "id,name\n", "id;name\r\n", "id\tname\n", "id: week"]),
            rest in any::<String>(),
        ) {
            let text = format!("{head}{rest}");
            let little: Vec<u8> = text.encode_utf16().flat_map(u16::to_le_bytes).collect();
            let big: Vec<u8> = text.encode_utf16().flat_map(u16::to_be_bytes).collect();
            prop_assert_eq!(text_of(&little), Ok(text.clone()));
            prop_assert_eq!(text_of(&big), Ok(text));
        }
    }
}
