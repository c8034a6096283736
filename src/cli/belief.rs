//! A misconception with how often it was chosen, in words.

use crate::assess::cohort::MisconceptionCount;
use crate::course::Course;

/// "“Belief.” Chosen 2 of the 3 times it was offered"; `None` where the course has no such misconception.
pub(super) fn belief_in_words(course: &Course, count: &MisconceptionCount) -> Option<String> {
    let belief = &course.misconception(&count.misconception)?.belief;
    Some(match (count.chosen, count.offered) {
        (1, 1) => format!("“{belief}” Chosen the one time it was offered"),
        (chosen, offered) if chosen == offered => {
            format!("“{belief}” Chosen all {offered} times it was offered")
        }
        (chosen, offered) => format!("“{belief}” Chosen {chosen} of the {offered} times it was offered"),
    })
}
