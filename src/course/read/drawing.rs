//! Whether a drawing (SVG) is one and nothing more: on a page a browser shows it as a picture, where it runs nothing, but its file can also
//! be opened by itself, and then it would run what it holds on the site's own pages' ground.
//!
//! Entry point: [`check_drawing`]. What drawings need is allowed, whatever else there is, is not: elements by a list, attributes but those
//! that react to events, addresses but those inside the drawing and pictures it brings along.

use roxmltree::{Document, Node, NodeType};

const SVG: &str = "http://www.w3.org/2000/svg";
const XHTML: &str = "http://www.w3.org/1999/xhtml";
const MATHML: &str = "http://www.w3.org/1998/Math/MathML";

/// Elements of SVG that a still picture is made of, filter effects (`fe…`) besides.
const STILL: [&str; 32] = [
    "svg",
    "g",
    "defs",
    "symbol",
    "use",
    "switch",
    "title",
    "desc",
    "metadata",
    "view",
    "path",
    "rect",
    "circle",
    "ellipse",
    "line",
    "polyline",
    "polygon",
    "text",
    "tspan",
    "textPath",
    "image",
    "linearGradient",
    "radialGradient",
    "stop",
    "clipPath",
    "mask",
    "pattern",
    "marker",
    "style",
    "filter",
    "solidcolor",
    "hatch",
];

/// Checks that a drawing runs nothing, goes nowhere and loads nothing, also where it is opened by itself.
///
/// # Errors
/// What is amiss, in words, with its line in the drawing.
pub(super) fn check_drawing(content: &[u8]) -> Result<(), String> {
    // A document type may name entities that grow without end; the parser refuses one.
    let text = std::str::from_utf8(content).map_err(|_| "it is no UTF-8".to_owned())?;
    let drawing = Document::parse(text.trim_start_matches('\u{feff}')).map_err(|error| error.to_string())?;
    for node in drawing.descendants() {
        let amiss = match node.node_type() {
            NodeType::Element => amiss_in(node),
            NodeType::PI => Some("a processing instruction".to_owned()),
            NodeType::Root | NodeType::Text | NodeType::Comment => None,
        };
        if let Some(amiss) = amiss {
            let line = drawing.text_pos_at(node.range().start).row;
            return Err(format!("{amiss} in line {line}"));
        }
    }
    Ok(())
}

fn amiss_in(element: Node) -> Option<String> {
    let name = element.tag_name().name();
    match element.tag_name().namespace() {
        Some(SVG) | None if STILL.contains(&name) || name.starts_with("fe") => {}
        Some(SVG | XHTML | MATHML) | None => return Some(format!("an element `{name}`")),
        // What programs for drawing note down for themselves.
        Some(_) => {}
    }
    if name == "style" && element.children().filter_map(|child| child.text()).any(loads) {
        return Some("a style that loads something".to_owned());
    }
    element.attributes().find_map(|attribute| {
        let (name, value) = (attribute.name(), attribute.value());
        let is_address = ["href", "src"].contains(&name);
        let lower = name.to_ascii_lowercase();
        // Names of events are letters alone.
        if lower.strip_prefix("on").is_some_and(|event| event.bytes().all(|byte| byte.is_ascii_lowercase())) {
            Some(format!("an attribute `{name}`, which reacts to events,"))
        } else if is_address && !stays_inside(value) {
            Some(format!("an address in `{name}` that leads out of the drawing"))
        } else if !is_address && loads(value) {
            Some(format!("an attribute `{name}` that loads something"))
        } else {
            None
        }
    })
}

/// Whether an address leads to a part of the drawing or is a picture that it brings along.
fn stays_inside(address: &str) -> bool {
    let address = address.trim();
    let pictures = ["png", "jpeg", "jpg", "webp", "gif", "avif"];
    let brought = address.strip_prefix("data:image/").and_then(|rest| rest.split_once([';', ',']));
    address.starts_with('#') || brought.is_some_and(|(kind, _)| pictures.contains(&kind))
}

/// Whether a style names anything outside the drawing. An escape (`\`) could hide such a name.
fn loads(style: &str) -> bool {
    let style = style.to_ascii_lowercase();
    let parts: Vec<&str> = style.split("url(").collect();
    let outside = |part: &&str| !stays_inside(part.trim_start().trim_start_matches(['"', '\'']));
    let has_address = parts.len() > 1;
    parts[1..].iter().any(outside)
        || style.contains("@import")
        || style.contains("image-set(")
        || (has_address || style.contains(['{', '@'])) && style.contains('\\')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pictures_are_allowed_and_whatever_acts_is_not() {
        let svg = |inside: &str| {
            format!(
                r##"<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" xmlns:ink="http://drawing.example/own">{inside}</svg>"##
            )
        };
        for fine in [
            r##"<defs><linearGradient id="a"><stop offset="0"/></linearGradient></defs><rect fill="url(#a)" style="stroke:url('#a')"/><use xlink:href="#a"/>"##,
            "<style>.a { fill: #8b8b8b } /* a comment */</style><ink:view ink:on-screen='1' zoom='2'/>",
            r#"<image href="data:image/png;base64,AAAA"/><text>1 &lt; 2, onload=, C:\new</text>"#,
            "<filter id='f'><feGaussianBlur stdDeviation='2'/></filter><title>Skin</title><!-- said -->",
        ] {
            assert_eq!(check_drawing(svg(fine).as_bytes()), Ok(()), "{fine}");
        }
        for (acts, why) in [
            ("<script>x</script>", "`script`"),
            ("\n<g>\n<script href='#x'/></g>", "in line 3"),
            ("<g onload='x'/>", "`onload`"),
            ("<ink:g onLoad='x'/>", "`onLoad`"),
            ("<foreignObject/>", "`foreignObject`"),
            ("<ink:x><body xmlns='http://www.w3.org/1999/xhtml'/></ink:x>", "`body`"),
            ("<script xmlns='http://www.w3.org/1999/xhtml'>x</script>", "`script`"),
            ("<math xmlns='http://www.w3.org/1998/Math/MathML'/>", "`math`"),
            ("<a href='javascript:x'/>", "`a`"),
            ("<set attributeName='href' to='javascript:x'/>", "`set`"),
            ("<animate/>", "`animate`"),
            ("<image href='https://x.example/y.png'/>", "`href`"),
            ("<image href='data:image/svg+xml,%3Csvg/%3E'/>", "`href`"),
            ("<use xlink:href=' other.svg#a'/>", "`href`"),
            ("<style>@import 'x.css';</style>", "style"),
            ("<style>a { fill: u\\72l(x) }</style>", "style"),
            ("<style>@\\69mport 'x.css';</style>", "style"),
            ("<rect style='fill:url(//x.example/y)'/>", "`style`"),
            ("<rect fill=\"url( 'x' )\"/>", "`fill`"),
            ("<?xml-stylesheet href='x'?>", "processing"),
            ("<unclosed>", "expected"),
        ] {
            let told = check_drawing(svg(acts).as_bytes()).expect_err(acts);
            assert!(told.contains(why), "{acts}: {told}");
        }
        let bomb = r#"<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]><svg>&b;</svg>"#;
        assert!(check_drawing(bomb.as_bytes()).is_err());
    }
}
