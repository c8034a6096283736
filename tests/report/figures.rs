//! What a report says is what the library computes, and what the pages show is what the report says.

use super::{COHORT, COURSE, PAGES, Plan, REPORT, report, simulated, tags, text};
use healedhue::assess::cohort::wilson;
use healedhue::assess::items::{Answer, Candidate, Flag, Item, Sitting, analyse, reliability};
use healedhue::assess::report::{ItemKind, Standing};
use std::collections::BTreeMap;

#[test]
fn skills_are_counted_from_the_answers() {
    let cohort = &COHORT.0;
    let skill_of: BTreeMap<&str, &str> =
        cohort.questions.iter().map(|question| (question.id.as_str(), question.skill.as_str())).collect();
    let mut credits: BTreeMap<&str, Vec<f64>> = BTreeMap::new();
    for answer in cohort.sheets.iter().flat_map(|sheet| &sheet.answers) {
        credits.entry(skill_of[answer.question.as_str()]).or_default().push(answer.credit);
    }
    assert_eq!(REPORT.skills.len(), credits.len());
    let page = text(&PAGES["index.html"]);
    for skill in &REPORT.skills {
        let credits = &credits[skill.mean.skill.as_str()];
        let sum: f64 = credits.iter().sum();
        let range = wilson(sum, credits.len()).expect("answers");
        assert!((skill.mean.mean - sum / credits.len() as f64).abs() < 1e-12);
        assert_eq!(skill.mean.interval, range);
        let percent = |share: f64| format!("{:.0}%", share * 100.0);
        let row = format!(
            "{} {} {} to {} {} {} of {}",
            percent(skill.mean.mean),
            "",
            percent(range.low),
            percent(range.high),
            credits.len(),
            skill.below,
            skill.people
        );
        let row = row.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(page.contains(&row), "the page shows {row}");
    }
    let highs: Vec<f64> = REPORT.skills.iter().map(|skill| skill.mean.interval.high).collect();
    assert!(highs.is_sorted(), "the most surely weak first");
}

/// The third question of a section is one item, whatever was put there.
#[test]
fn reliability_is_of_the_places_on_the_paper() {
    let cohort = &COHORT.0;
    let places = cohort.sheets[0].answers.len();
    let items = (0..places).map(|at| Item { id: at.to_string(), options: Vec::new() }).collect();
    let people = cohort.sheets.iter().map(|sheet| Candidate {
        id: sheet.person.clone(),
        answers: sheet
            .answers
            .iter()
            .enumerate()
            .map(|(item, answer)| Answer { item, credit: answer.credit, chosen: None, offered: None })
            .collect(),
    });
    let wanted = reliability(&Sitting::new(items, people.collect()).expect("in order"));
    let paper = &REPORT.papers[0];
    assert_eq!(paper.reliability, wanted);
    assert_eq!((paper.sheets, paper.places.len(), paper.marks.iter().sum::<usize>()), (90, 30, 90));
    let page = text(&PAGES["index.html"]);
    for (name, found) in [("Alpha", wanted.alpha), ("KR-20", wanted.kr20)] {
        let found = found.expect("a coefficient");
        let shown =
            format!("{name} {:.2}, standard error {:.1} questions", found.value, found.standard_error);
        assert!(page.contains(&shown), "the page shows {shown}");
    }
}

/// Facility and the distractor table of a drill, counted by hand over all of its exercises.
#[test]
fn a_drill_is_one_item() {
    let cohort = &COHORT.0;
    let drills = REPORT.items.iter().filter(|item| item.kind == ItemKind::Drill);
    let mut seen = 0;
    for item in drills {
        let questions: BTreeMap<&str, _> = cohort
            .questions
            .iter()
            .filter(|question| question.drill.as_deref() == Some(&item.id))
            .map(|question| (question.id.as_str(), question))
            .collect();
        let answers: Vec<_> = cohort
            .sheets
            .iter()
            .flat_map(|sheet| &sheet.answers)
            .filter_map(|answer| Some((answer, *questions.get(answer.question.as_str())?)))
            .collect();
        assert_eq!((item.classical.answers, item.questions), (answers.len(), questions.len()));
        let facility = answers.iter().map(|answer| answer.0.credit).sum::<f64>() / answers.len() as f64;
        assert!((item.classical.facility.expect("answers") - facility).abs() < 1e-12);
        for row in &item.options {
            let leads = |option: &healedhue::assess::report::OptionPut| {
                option.right == row.key && option.misconception == row.misconception
            };
            let chosen = answers
                .iter()
                .filter(|(answer, question)| answer.chosen.is_some_and(|at| leads(&question.options[at])));
            let offered = answers.iter().filter(|(_, question)| question.options.iter().any(leads));
            assert_eq!(
                (row.chosen, row.offered),
                (chosen.count(), offered.count()),
                "{}: {}",
                item.id,
                row.label
            );
        }
        seen += 1;
    }
    assert_eq!(seen, 8);
}

#[test]
fn the_page_shows_every_item() {
    let page = text(&PAGES["index.html"]);
    for (at, item) in REPORT.items.iter().enumerate() {
        let kind = if item.kind == ItemKind::Drill { "drill" } else { "question" };
        let facility =
            item.classical.facility.map_or("–".to_owned(), |share| format!("{:.0}%", share * 100.0));
        let row =
            format!("{} {kind} {} {} {} {facility}", at + 1, item.id, item.skill, item.classical.answers);
        assert!(page.contains(&row), "the page shows {row}");
    }
}

/// Two exercises of a drill share one difficulty: against the likelihood written out, every way to score so many of four.
#[test]
fn exercises_of_one_drill_share_a_difficulty() {
    // Items 0, 0, 1, 2: right or wrong, and how many people answered so.
    let patterns: [([bool; 4], usize); 8] = [
        ([true, false, false, false], 7),
        ([false, true, true, false], 5),
        ([true, true, false, false], 9),
        ([false, false, true, false], 4),
        ([false, false, false, true], 3),
        ([true, true, true, false], 6),
        ([true, false, true, true], 4),
        ([false, true, false, true], 2),
    ];
    const ITEMS: [usize; 4] = [0, 0, 1, 2];
    let people = patterns.iter().enumerate().flat_map(|(at, (answers, people))| {
        (0..*people).map(move |person| Candidate {
            id: format!("{at} {person}"),
            answers: answers
                .iter()
                .zip(ITEMS)
                .map(|(&right, item)| Answer {
                    item,
                    credit: f64::from(u8::from(right)),
                    chosen: None,
                    offered: None,
                })
                .collect(),
        })
    });
    let items = (0..3).map(|at| Item { id: at.to_string(), options: Vec::new() }).collect();
    let sitting = Sitting::of_drills(items, people.collect()).expect("in order");
    let analysis = analyse(&sitting);
    let found: Vec<f64> = analysis.items.iter().map(|item| item.rasch.difficulty.expect("linked")).collect();
    let weight = |difficulties: &[f64], answers: &[bool; 4]| {
        let sum: f64 =
            answers.iter().zip(ITEMS).filter(|answer| *answer.0).map(|answer| difficulties[answer.1]).sum();
        (-sum).exp()
    };
    let all = || (0..16_u32).map(|bits| [0, 1, 2, 3].map(|at| bits >> at & 1 == 1));
    let score = |answers: &[bool; 4]| answers.iter().filter(|right| **right).count();
    let minus_log = |difficulties: &[f64]| -> f64 {
        patterns
            .iter()
            .map(|(answers, people)| {
                let ways: f64 = all()
                    .filter(|other| score(other) == score(answers))
                    .map(|other| weight(difficulties, &other))
                    .sum();
                -(*people as f64) * (weight(difficulties, answers) / ways).ln()
            })
            .sum()
    };
    let least = minus_log(&found);
    // Any step away, of a size that counts, is worse; and the curvature gives the standard errors.
    let step = 1e-3;
    let curvature = |i: usize, j: usize| {
        let at = |a: f64, b: f64| {
            let mut moved = found.clone();
            moved[i] += a;
            moved[j] += b;
            minus_log(&moved)
        };
        assert!(at(step, 0.0) > least - 1e-12 && at(-step, 0.0) > least - 1e-12);
        (at(step, step) - at(step, -step) - at(-step, step) + at(-step, -step)) / (4.0 * step * step)
    };
    // Difficulties sum to 0: two are free, and the third follows.
    let h = |i: usize, j: usize| curvature(i, j) - curvature(i, 2) - curvature(2, j) + curvature(2, 2);
    let (a, b, c) = (h(0, 0), h(0, 1), h(1, 1));
    let wanted = [c / (a * c - b * b), a / (a * c - b * b)].map(f64::sqrt);
    for (item, wanted) in analysis.items.iter().zip(wanted) {
        let error = item.rasch.standard_error.expect("an error");
        assert!((error - wanted).abs() < 1e-4, "{error} is not {wanted}");
    }
    assert!(analysis.reliability.alpha.is_none() && analysis.reliability.why_not.is_some());
}

#[test]
fn a_person_is_told_what_the_answers_say() {
    let (cohort, _) = &*COHORT;
    for person in REPORT.people.iter().take(20) {
        let sheet = cohort.sheets.iter().find(|sheet| sheet.person == person.id).expect("the sheet");
        let mean = sheet.answers.iter().map(|a| a.credit).sum::<f64>() / sheet.answers.len() as f64;
        assert!((person.mean.expect("answers") - mean).abs() < 1e-12);
        for skill in &person.skills {
            // One wrong answer alone says nothing of a person.
            let standing = if skill.mean.answers < 4 {
                Standing::Level
            } else if skill.mean.interval.high < skill.cohort {
                Standing::Below
            } else if skill.mean.interval.low > skill.cohort {
                Standing::Above
            } else {
                Standing::Level
            };
            assert_eq!(skill.standing, Some(standing));
        }
        let weakest: Vec<&str> = person
            .skills
            .iter()
            .filter(|skill| skill.mean.mean < 1.0)
            .take(3)
            .map(|skill| skill.mean.skill.as_str())
            .collect();
        let next: Vec<&str> = person.next.iter().map(|next| next.skill.as_str()).collect();
        assert_eq!(next, weakest);
        let page = text(&PAGES[&format!("people/id-{}.html", person.id)]);
        for next in &person.next {
            assert!(page.contains(&next.why) && page.contains(&next.name), "{}", next.why);
            assert!(!next.lessons.is_empty(), "{} has a lesson to reread", next.name);
        }
        for entry in &person.misconceptions {
            assert!(page.contains(&entry.belief) && page.contains(&entry.truth), "{}", entry.id);
            assert!(page.contains(&entry.lesson.as_ref().expect("a lesson").title));
        }
    }
}

/// Who has a misconception and met it four times or more is told of it, first, in nine cases out of ten.
#[test]
fn beliefs_are_found_again() {
    let plan = Plan { people: 300, drills: 6, of_each: 8, bank: 0, seed: 9 };
    let (cohort, held) = simulated(&COURSE, plan);
    let report = report(&cohort, &COURSE).expect("in order");
    let (mut met, mut found) = (0, 0);
    for person in &report.people {
        let place = cohort.sheets.iter().position(|sheet| sheet.person == person.id).expect("the sheet");
        let offered = cohort.sheets[place]
            .answers
            .iter()
            .filter(|answer| {
                let question = cohort.questions.iter().find(|question| question.id == answer.question);
                question.is_some_and(|question| {
                    question.options.iter().any(|option| option.misconception.as_ref() == Some(&held[place]))
                })
            })
            .count();
        if offered >= 4 {
            met += 1;
            found += usize::from(person.misconceptions.iter().take(2).any(|entry| entry.id == held[place]));
        }
    }
    assert!(met > 100 && found * 10 >= met * 9, "{found} of {met}");
}

#[test]
fn a_drill_with_the_wrong_key_is_flagged_in_words() {
    let mut cohort = COHORT.0.clone();
    let drill = cohort.questions[0].drill.clone().expect("a drill");
    // The key of the whole drill is given to another option: the able choose what now counts as wrong.
    for question in cohort.questions.iter_mut().filter(|question| question.drill.as_ref() == Some(&drill)) {
        let right = question.options.iter().position(|option| option.right).expect("a key");
        let other = (right + 1) % question.options.len();
        question.options[right].right = false;
        question.options[other].right = true;
    }
    for sheet in &mut cohort.sheets {
        for answer in &mut sheet.answers {
            let question = cohort.questions.iter().find(|question| question.id == answer.question);
            if let Some(question) = question.filter(|question| question.drill.as_ref() == Some(&drill)) {
                let is_right = answer.chosen.is_some_and(|at| question.options[at].right);
                answer.credit = f64::from(u8::from(is_right));
            }
        }
    }
    let report = report(&cohort, &COURSE).expect("in order");
    let item = report.items.iter().find(|item| item.id == drill).expect("the drill");
    assert!(item.revise.iter().any(|reason| reason.contains("check the key")), "{:?}", item.revise);
    insta::assert_snapshot!(item.revise.join("\n"));
    let few = Flag::FewAnswers { answers: 3 }.words(&COURSE.language);
    assert!(!item.revise.contains(&few));
}

#[test]
fn what_stands_out_reads_well() {
    let revise: Vec<String> = REPORT
        .items
        .iter()
        .filter(|item| !item.revise.is_empty())
        .map(|item| format!("{}: {}", item.id, item.revise.join("; ")))
        .collect();
    insta::assert_snapshot!([REPORT.summary.clone(), REPORT.notes.clone(), revise].concat().join("\n"));
}

#[test]
fn what_to_practise_next_reads_well() {
    let page = text(&PAGES["people/id-a00003.html"]);
    insta::assert_snapshot!(page.replace(". ", ".\n"));
}

#[test]
fn drawings_have_titles_and_pages_ask_for_nothing() {
    for (path, page) in PAGES.iter() {
        let drawings = page.matches("<svg").count();
        assert_eq!(page.matches("role=\"img\"").count(), drawings, "{path}");
        assert_eq!(page.matches("<title").count(), drawings + 1, "{path}");
        for tag in tags(page) {
            assert!(
                !["script", "img", "iframe", "object"].contains(&tag.name.as_str()),
                "{path}: {}",
                tag.name
            );
            let href = tag.get("href").unwrap_or_default();
            assert!(!href.contains("//"), "{path}: {href}");
            assert!(
                tag.attributes.iter().all(|(name, _)| name != "style" && !name.starts_with("on")),
                "{path}"
            );
        }
    }
    assert!(PAGES["index.html"].matches("<svg").count() > 50);
}

/// What stands at the axes of the plot of items: each value once, a round one, evenly spaced and in order.
#[test]
fn the_plot_of_items_has_round_values_at_its_axes() {
    let page = &PAGES["index.html"];
    let drawn =
        page.split_once("class=\"scatter\"").expect("a plot").1.split_once("</svg>").expect("its end").0;
    let at_axis = |anchor: &str, place: &str| -> Vec<(f64, String)> {
        drawn
            .split("<text ")
            .skip(1)
            .filter(|text| text.contains(anchor) && !text.contains("plot-name"))
            .map(|text| {
                let (tag, words) = text.split_once('>').expect("a tag");
                let value = tag.split_once(place).expect("a place").1.split_once('"').expect("its end").0;
                (value.parse().expect("a number"), words.split_once('<').expect("its end").0.to_owned())
            })
            .collect()
    };
    let words: Vec<String> = at_axis("\"middle\"", "x=\"").into_iter().map(|at| at.1).collect();
    assert_eq!(words, ["0%", "20%", "40%", "60%", "80%", "100%"]);
    let up = at_axis("\"end\"", " y=\"");
    assert!(up.len() >= 6);
    let values: Vec<f64> =
        up.iter().map(|at| at.1.replace('\u{2212}', "-").parse().expect("a number")).collect();
    for (pair, places) in values.windows(2).zip(up.windows(2)) {
        assert!((pair[1] - pair[0] - 0.2).abs() < 1e-9, "{values:?}");
        assert!(places[0].0 - places[1].0 > 12.0, "labels of 11 stand above one another: {up:?}");
    }
}
