//! Whatever is done to the files of a course, loading it ends with an answer.

use super::fixture::{Fixture, files_of, minimal};
use healedhue::course::{Severity, report};
use proptest::prelude::*;

/// Loads the course with one file replaced.
fn load_with(path: &str, content: &[u8]) {
    let fixture = Fixture::minimal().with(path, content);
    let loaded = fixture.load();
    let errors = loaded.diagnostics.iter().filter(|d| d.severity == Severity::Error).count();
    assert_eq!(loaded.course.is_none(), errors > 0);
    for problem in &loaded.diagnostics {
        assert!(problem.line >= 1 && problem.column >= 1 && !problem.message.is_empty(), "{problem:?}");
    }
    let _ = report(&loaded.diagnostics, true);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn prop_a_truncated_file_never_panics(file in any::<prop::sample::Index>(), end in any::<prop::sample::Index>()) {
        let files = files_of(&minimal());
        let (path, content) = file.get(&files);
        load_with(path, &content[..end.index(content.len())]);
    }

    #[test]
    fn prop_a_mutated_file_never_panics(
        file in any::<prop::sample::Index>(),
        changes in prop::collection::vec((any::<prop::sample::Index>(), 0usize..3, "[-\\[\\]{}:,#&*!|>'\"%@`~<?\t\r\n \\\\a0.é]|\u{feff}|\0"), 1..6),
    ) {
        let files = files_of(&minimal());
        let (path, content) = file.get(&files);
        let mut text: Vec<char> = String::from_utf8_lossy(content).chars().collect();
        for (at, way, new) in &changes {
            let at = at.index(text.len().max(1));
            match way {
                0 if at < text.len() => _ = text.remove(at),
                1 if at < text.len() => text[at] = new.chars().next().unwrap_or(' '),
                _ => text.insert(at.min(text.len()), new.chars().next().unwrap_or(' ')),
            }
        }
        load_with(path, text.iter().collect::<String>().as_bytes());
    }

    #[test]
    fn prop_bytes_at_random_never_panic(file in any::<prop::sample::Index>(), content in prop::collection::vec(any::<u8>(), 0..200)) {
        let files = files_of(&minimal());
        let (path, _) = file.get(&files);
        load_with(path, &content);
    }

    #[test]
    fn prop_lines_in_another_order_never_panic(file in any::<prop::sample::Index>(), from in any::<prop::sample::Index>(), to in any::<prop::sample::Index>()) {
        let files = files_of(&minimal());
        let (path, content) = file.get(&files);
        let text = String::from_utf8_lossy(content);
        let mut lines: Vec<&str> = text.lines().collect();
        let line = lines.remove(from.index(lines.len()));
        lines.insert(to.index(lines.len() + 1), line);
        load_with(path, lines.join("\n").as_bytes());
    }
}

/// Files made to take long: an answer comes in reasonable time, and what is shown stays short.
#[test]
fn a_hostile_course_is_answered_soon() {
    let many = |line: fn(usize) -> String| {
        (0..)
            .map(line)
            .scan(0, |sum, line| {
                *sum += line.len();
                (*sum < 999_000).then_some(line)
            })
            .collect::<String>()
    };
    let cases = [
        ("lessons/skills.yaml", many(|n| format!("k{n}: x\n"))),
        ("lessons/skills.yaml", format!("skills:\n{}", many(|n| format!("  - {{id: s{n}, name: x}}\n")))),
        (
            "lessons/glossary.yaml",
            format!("terms:\n  - {{id: a, term: a, means: a, see: [{}]}}", many(|n| format!("t{n}, "))),
        ),
        ("lessons/SUMMARY.md", many(|n| format!("- [x](m{n}/module.md)\n"))),
        ("lessons/welcome.md", format!("# Welcome\n\n{}", many(|n| format!("[x](n{n}.md) <b>")))),
        ("lessons/welcome.md", format!("# Welcome\n\n{}", many(|n| format!("## a\n[x](#n{n})\n")))),
        ("lessons/welcome.md", format!("# Welcome\n\n{}", "[".repeat(900_000))),
        ("lessons/goals.yaml", format!("goals: [{}]", many(|n| format!("{{id: g{n}}}, ")))),
        ("lessons/clients/ruvan.yaml", many(|_| "\u{9b}".to_owned())),
    ];
    for (path, content) in cases {
        let started = std::time::Instant::now();
        let fixture = Fixture::minimal().with(path, &content);
        let told = fixture.told();
        // Seconds are usual, minutes where the machine is slow and busy; a search that grows with the square of the file would take
        // many times as long.
        assert!(started.elapsed().as_secs() < 900, "{path}: {:?}", started.elapsed());
        assert!(told.len() < 200_000, "{path}: {}", told.len());
    }
}
