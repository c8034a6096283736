//! What `mark` prints of a course in German: whole lines in its language.

use super::fixture::{output, run, small_course, write};
use healedhue::assess::{Key, PaperPool, Slip};
use healedhue::exercise::Proofs;
use std::fs;

#[test]
fn marks_are_told_in_the_language_of_the_course() {
    let fixture = small_course().replace("book.toml", "language = \"en-GB\"", "language = \"de\"");
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name);
    fs::write(path("people.csv"), "id,name\np1,Orrin Vell\np2,Tamsel Brook\np3,Perrin Ash\n").unwrap();
    let course = fixture.load().course.expect("a course");
    let pool = PaperPool::new(&course, "small", &Proofs::none(), || ()).unwrap();
    let paper = pool.paper("p1", 5).unwrap();
    let keys: Vec<String> = Key::new(&pool, &paper)
        .questions()
        .map(|name| {
            let question = pool.questions.iter().find(|question| question.name() == name).unwrap();
            question.exercise.form.key().to_string()
        })
        .collect();
    // The last question is right; the others get the first or the second of the two wrong letters.
    let wrong = |which: usize| {
        let mut answers: Vec<String> = keys
            .iter()
            .map(|key| {
                ["A", "B", "C"].into_iter().filter(|letter| letter != key).nth(which).unwrap().to_owned()
            })
            .collect();
        answers[3].clone_from(&keys[3]);
        Slip::new(paper.id.clone(), answers)
    };
    let first = write(folder.path(), "first.json", &wrong(0));
    let second = write(folder.path(), "second.json", &wrong(1));
    let other = pool.paper("p2", 5).unwrap();
    let blank = path("blank.json");
    fs::write(&blank, Slip::blank(&other.id, other.questions.len())).unwrap();
    let mark = |slips: &[&std::path::Path], more: &[&str]| {
        let mut command = run(&["mark", "--register", "people.csv", "--empty"]);
        command.current_dir(folder.path()).arg("--course").arg(fixture.path("")).args(slips).args(more);
        // A space that is not broken and a line's end count as spaces.
        output(&mut command).split_whitespace().collect::<Vec<_>>().join(" ")
    };
    let whole = [mark(&[&first], &[]), mark(&[&second], &[])].concat();
    for german in [
        "Orrin Vell (p1): 30,0 %, Bestehensgrenze 62,0 % mit einem Standardfehler von ",
        ": nicht bestanden",
        "; First part 0 %; Second part 100 %",
        ", am besten ",
        ", Wertung 0 %",
        ", Wertung 100 %",
        "Dahinter steht oft: „Skin is clear.“",
        "; Quelle: common practice, no source.",
        "1 bewertet, 0 abgelehnt",
    ] {
        assert!(whole.contains(german), "{german}: {whole}");
    }
    let book = ["--book", "book.sqlite"];
    mark(&[&first, &blank], &book);
    let again = mark(&[&first, &blank], &book);
    for german in [
        ", nichts beantwortet",
        "; steht schon im Notenbuch; First part",
        "Ohne Abgabe Perrin Ash 2 bewertet",
    ] {
        assert!(again.contains(german), "{german}: {again}");
    }
    let alone = mark(&[&blank], &[]);
    assert!(alone.contains("1. nichts, am besten "), "{alone}");
    let english = [
        "pass mark",
        "standard error",
        "passed",
        "best ",
        "credit",
        "source:",
        "Behind",
        "marked",
        "refused",
        "Nothing",
        "answered",
    ];
    for word in english {
        for told in [&whole, &again, &alone] {
            assert!(!told.contains(&format!(" {word}")), "{word}: {told}");
        }
    }
}
