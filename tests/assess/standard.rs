//! Pass marks, skills and misconceptions.

use healedhue::assess::cohort::{
    Leads, Shown, SkillAnswer, misconceptions, misconceptions_of, skills, wilson,
};
use healedhue::assess::standard::{Certainty, Judge, angoff, decide};
use proptest::prelude::*;

fn judge(name: &str, estimates: &[f64]) -> Judge {
    Judge { name: name.to_owned(), estimates: estimates.to_vec() }
}

/// Sums 1.4, 1.8 and 1.6: mean 1.6, deviation 0.2, standard error 0.2/√3.
#[test]
fn the_pass_mark_is_the_mean_of_the_judges_sums() {
    let judges = [judge("a", &[0.5, 0.9]), judge("b", &[0.8, 1.0]), judge("c", &[0.8, 0.8])];
    let mark = angoff(&[1.0, 1.0], &judges).expect("a mark");
    assert!((mark.mark - 1.6).abs() < 1e-12 && (mark.share - 0.8).abs() < 1e-12);
    assert!((mark.standard_error.expect("an error") - 0.2 / 3.0_f64.sqrt()).abs() < 1e-12);
    assert!((mark.items[0].mean - 0.7).abs() < 1e-12);
    assert!((mark.items[1].deviation.expect("a deviation") - 0.1).abs() < 1e-12);
    let single = angoff(&[1.0, 1.0], &judges[..1]).expect("a mark");
    assert_eq!((single.standard_error, single.items[0].deviation), (None, None));
}

#[test]
fn estimates_that_cannot_be_are_named() {
    let said = [
        angoff(&[1.0], &[]),
        angoff(&[], &[judge("a", &[])]),
        angoff(&[0.0], &[judge("a", &[0.5])]),
        angoff(&[1.0, 1.0], &[judge("a", &[0.5])]),
        angoff(&[1.0, 1.0], &[judge("a", &[0.5, 1.2])]),
        angoff(&[1.0], &[judge("a", &[f64::NAN])]),
        angoff(&[-1.0], &[judge("a", &[0.5])]),
    ]
    .map(|mark| mark.expect_err("wrong on purpose").to_string());
    insta::assert_snapshot!(said.join("\n"));
}

#[test]
fn a_score_is_held_against_the_mark_and_its_error() {
    for (score, error, passed, certainty) in [
        (40.0, Some(3.0), true, Certainty::WithinOneError),
        // A sum of tenths is not quite the number it means.
        (0.1 + 0.2 + 39.7, Some(0.0), true, Certainty::WithinOneError),
        (43.0, Some(3.0), true, Certainty::WithinOneError),
        (43.1, Some(3.0), true, Certainty::Clear),
        (37.0, Some(3.0), false, Certainty::WithinOneError),
        (36.9, Some(3.0), false, Certainty::Clear),
        (50.0, None, true, Certainty::Unknown),
        (0.0, Some(f64::NAN), false, Certainty::Unknown),
    ] {
        let decision = decide(score, 40.0, error);
        assert_eq!((decision.passed, decision.certainty), (passed, certainty), "{score}");
    }
}

#[test]
fn skills_are_means_with_an_honest_interval() {
    let answer = |person, skill, credit| SkillAnswer { person, skill, credit };
    let answers = [
        answer("ana", "hue", 1.0),
        answer("ana", "hue", 0.5),
        answer("ben", "hue", 0.0),
        answer("ana", "depth", 1.0),
    ];
    let table = skills(answers).expect("within 0 to 1");
    assert_eq!(table.people.len(), 2);
    let ana = &table.people[0];
    let read: Vec<_> = ana.skills.iter().map(|s| (s.skill.as_str(), s.answers, s.mean)).collect();
    assert_eq!(read, [("depth", 1, 1.0), ("hue", 2, 0.75)]);
    // One right answer leaves much open.
    assert!(ana.skills[0].interval.low < 0.25 && ana.skills[0].interval.high == 1.0);
    assert_eq!((table.cohort[1].answers, table.cohort[1].mean), (3, 0.5));
    let error = skills([answer("ana", "hue", -0.1)]).expect_err("below 0").to_string();
    assert_eq!(error, "`credit` is -0.1, outside 0 to 1");
    assert!(skills([]).expect("nothing").people.is_empty());
}

#[test]
fn misconceptions_are_chosen_by_offered() {
    let options = [Leads::Right, Leads::From("opposite"), Leads::From("black"), Leads::From("opposite")];
    let plain = [Leads::Right, Leads::From("black")];
    let shown = |person, options, chosen| Shown { person, options, chosen };
    let mut all = vec![shown("ana", &options[..], Some(1)); 8];
    all.extend([
        shown("ana", &options[..], Some(3)),
        shown("ana", &options[..], Some(0)),
        shown("ben", &options[..], None),
        shown("ben", &plain[..], Some(1)),
        // An answer beyond the options is none of them.
        shown("ben", &plain[..], Some(7)),
    ]);
    let counts = misconceptions(all.iter().copied());
    let read: Vec<_> = counts
        .iter()
        .map(|c| {
            (c.misconception.as_str(), c.chosen, c.offered, c.people_chosen, c.people_offered, c.stands_out)
        })
        .collect();
    assert_eq!(read, [("opposite", 9, 11, 1, 2, true), ("black", 1, 13, 1, 2, false)]);
    // Two of four options bear it.
    assert!((counts[0].by_guessing - 0.5).abs() < 1e-12);
    // One person's own answers.
    let ben: Vec<Shown<'_>> = all.iter().copied().filter(|one| one.person == "ben").collect();
    let ben = misconceptions_of(&ben);
    assert_eq!((ben[0].misconception.as_str(), ben[0].chosen, ben[0].offered), ("black", 1, 3));
    assert!(!ben[0].stands_out);
}

proptest! {
    #[test]
    fn prop_wilson_contains_the_share_and_narrows(right in 0_usize..40, wrong in 0_usize..40) {
        let n = right + wrong;
        prop_assert_eq!(wilson(0.0, 0), None);
        prop_assume!(n > 0);
        let interval = wilson(right as f64, n).expect("answers");
        let share = right as f64 / n as f64;
        prop_assert!(0.0 <= interval.low && interval.low <= share && share <= interval.high && interval.high <= 1.0);
        let more = wilson(4.0 * right as f64, 4 * n).expect("answers");
        prop_assert!(more.high - more.low < interval.high - interval.low);
    }

    #[test]
    fn prop_a_higher_estimate_never_lowers_the_mark(
        estimates in prop::collection::vec(prop::collection::vec(0.0..=1.0_f64, 4), 1..6),
        judge_at in 0_usize..6,
        item in 0_usize..4,
    ) {
        let judges: Vec<Judge> = estimates.iter().map(|row| judge("j", row)).collect();
        let questions = [1.0, 2.0, 10.0, 5.0];
        let mark = angoff(&questions, &judges).expect("a mark");
        prop_assert!((0.0..=18.0 + 1e-9).contains(&mark.mark));
        let mut raised = judges.clone();
        let at = judge_at % raised.len();
        raised[at].estimates[item] = 1.0;
        prop_assert!(angoff(&questions, &raised).expect("a mark").mark >= mark.mark - 1e-12);
    }
}
