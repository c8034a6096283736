//! Whatever an author writes is shown and never obeyed.

use super::fixture::{built, pages, tiny};
use super::html::{decoded, tags};
use std::collections::BTreeSet;

const HOSTILE: &str =
    r#"</script><script>alert(1)</script>"><img src=x onerror=alert(1)>' onload='{{ 7*7 }}</title>&lt;"#;

#[test]
fn hostile_names_stay_text() {
    let site = |say: &dyn Fn(&str) -> String| pages(&built(&tiny(say)));
    let plain = site(&|text| text.to_owned());
    let hostile = site(&|text| format!("{text} {HOSTILE}"));
    let shape = |html: &str| -> Vec<(String, Vec<String>)> {
        let of =
            |tag: super::html::Tag| (tag.name, tag.attributes.into_iter().map(|(name, _)| name).collect());
        tags(html).into_iter().map(of).collect()
    };
    assert_eq!(plain.keys().collect::<BTreeSet<_>>(), hostile.keys().collect::<BTreeSet<_>>());
    for (path, html) in &hostile {
        // The same tags with the same attributes as without it, but for paragraphs that Markdown breaks where HTML begins.
        let without_paragraphs =
            |html: &str| shape(html).into_iter().filter(|(name, _)| name != "p").collect::<Vec<_>>();
        assert_eq!(without_paragraphs(html), without_paragraphs(&plain[path]), "{path}");
        assert!(decoded(html).contains(HOSTILE.split('"').next().unwrap()), "{path} shows it");
    }
}

#[test]
fn templates_are_not_made_of_what_an_author_writes() {
    let site = built(&tiny(|text| format!("{text} {{{{ 6*7919 }}}}")));
    for (path, html) in pages(&site) {
        assert!(html.contains("{{ 6*7919 }}") && !html.contains("47514"), "{path}");
    }
}
