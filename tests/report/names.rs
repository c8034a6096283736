//! Names are data: whatever they are, they are shown and never obeyed.

use super::{COURSE, Cohort, Plan, decoded, pages_of, simulated, tags};

const HOSTILE: [&str; 7] = [
    "<script>alert(1)</script>",
    r#"" onload="alert(1)' onfocus='x"#,
    "</title></bdi><img src=x onerror=alert(1)>",
    "{{ 6*7919 }} {% include 'x' %}",
    "مريم \u{202e}txet desrever",
    "=HYPERLINK(\"https://example.org\")",
    "&lt;b&gt; &amp; \u{0} \u{7}\r\n]]>",
];

fn cohort() -> Cohort {
    simulated(&COURSE, Plan { people: HOSTILE.len() + 1, drills: 4, of_each: 2, bank: 2, seed: 2 }).0
}

/// The same cohort with hostile names everywhere a name can be.
fn hostile() -> Cohort {
    let mut cohort = cohort();
    cohort.title = HOSTILE[2].to_owned();
    for (at, sheet) in cohort.sheets.iter_mut().enumerate() {
        sheet.name = HOSTILE.get(at).map_or_else(|| "W".repeat(10_000), |name| (*name).to_owned());
        sheet.paper.blueprint = HOSTILE[0].to_owned();
    }
    cohort
}

#[test]
fn hostile_names_stay_text() {
    let shape = |page: &str| -> Vec<(String, Vec<String>)> {
        tags(page)
            .into_iter()
            .map(|tag| (tag.name, tag.attributes.into_iter().map(|(name, _)| name).collect()))
            .collect()
    };
    let mut plain = cohort();
    // Names in the same order as the hostile ones, so that the same rows stand in the same places.
    let mut order: Vec<usize> = (0..plain.sheets.len()).collect();
    let hostile = hostile();
    order.sort_by_key(|&at| hostile.sheets[at].name.trim().to_lowercase());
    for (place, at) in order.into_iter().enumerate() {
        plain.sheets[at].name = format!("Name {place}");
    }
    let (plain, hostile) = (pages_of(&plain), pages_of(&hostile));
    assert_eq!(plain.keys().collect::<Vec<_>>(), hostile.keys().collect::<Vec<_>>());
    for (path, page) in &hostile {
        assert_eq!(shape(page), shape(&plain[path]), "{path}");
        assert!(!page.contains("47514"), "{path}");
        let turning = |c: char| c.is_control() && c != '\n' || ('\u{202a}'..='\u{202e}').contains(&c);
        assert!(!page.contains(turning), "{path} turns no direction and has no control characters");
    }
    let index = decoded(&hostile["index.html"]);
    for name in &HOSTILE[..4] {
        assert!(index.contains(name), "the page shows {name}");
    }
    assert!(index.contains("مريم txet desrever"));
}

#[test]
fn long_names_are_cut_and_every_name_keeps_its_direction() {
    let pages = pages_of(&hostile());
    for (path, page) in &pages {
        assert!(!page.contains(&"W".repeat(81)), "{path}");
    }
    let long =
        pages.values().filter(|page| page.contains(&("<h1><bdi>".to_owned() + &"W".repeat(80) + "…</bdi>")));
    assert_eq!(long.count(), 1);
}

/// Ids become names of files only where they can be ones everywhere.
#[test]
fn ids_lead_nowhere() {
    let mut cohort = cohort();
    for (sheet, id) in cohort
        .sheets
        .iter_mut()
        .zip(["../../x", "a/b", "CON.", "", "Ab", "aB", "ü", "ok-1"].map(str::to_owned))
    {
        sheet.person = if id.is_empty() { " ".to_owned() } else { id };
    }
    let pages = pages_of(&cohort);
    let mut names: Vec<&str> = pages.keys().filter_map(|path| path.strip_prefix("people/")).collect();
    names.sort_unstable();
    assert_eq!(names.len(), 8);
    assert_eq!(names.iter().filter(|name| name.starts_with("id-")).count(), 2);
    assert!(names.contains(&"id-ok-1.html"));
    let index = &pages["index.html"];
    for name in names {
        assert!(index.contains(&format!("href=\"people/{name}\"")), "{name}");
    }
}
