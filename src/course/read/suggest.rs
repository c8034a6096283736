//! "Did you mean": the right word nearest to a wrong one, and words quoted safely in messages.

/// The candidate nearest to `word`, if one is near enough to be meant.
pub(crate) fn nearest<'c>(word: &str, candidates: impl IntoIterator<Item = &'c str>) -> Option<&'c str> {
    // Nobody means a word by a whole paragraph, and the distance would take long to work out.
    if word.len() > 100 {
        return None;
    }
    let plain = |text: &str| text.to_lowercase().replace(['_', ' '], "-");
    let wanted = plain(word);
    let length = wanted.chars().count();
    let most = (length / 3).max(1);
    candidates
        .into_iter()
        .map(|candidate| {
            let meant = plain(candidate);
            let begun =
                length >= 4 && (meant.starts_with(&wanted) || wanted.starts_with(&meant) && meant.len() >= 4);
            // The beginning of a word is as good as a slip of the pen.
            (if begun { 1 } else { strsim::damerau_levenshtein(&wanted, &meant) }, candidate)
        })
        .filter(|(distance, _)| *distance <= most && *distance < length)
        .min_by_key(|(distance, _)| *distance)
        .map(|(_, candidate)| candidate)
}

/// The path nearest to `path`, if one is near enough to be meant; long folders do not make a short name alike.
pub(crate) fn nearest_path<'c>(path: &str, candidates: impl IntoIterator<Item = &'c str>) -> Option<&'c str> {
    let name = path.rsplit_once('/').map_or(path, |(_, name)| name);
    let stem = name.split_once('.').map_or(name, |(stem, _)| stem);
    let most = (stem.chars().count() / 3).max(1);
    candidates
        .into_iter()
        .filter(|candidate| path.len() <= 200 && candidate.len().abs_diff(path.len()) <= 4 * most)
        .map(|candidate| {
            (strsim::damerau_levenshtein(&path.to_lowercase(), &candidate.to_lowercase()), candidate)
        })
        .filter(|(distance, _)| *distance <= most)
        .min_by_key(|(distance, _)| *distance)
        .map(|(_, candidate)| candidate)
}

/// A number of things: "1 question", "2 questions".
pub(crate) fn counted(count: usize, thing: &str) -> String {
    format!("{count} {thing}{}", if count == 1 { "" } else { "s" })
}

/// What an author wrote, between backticks: shortened, and without characters that would disturb a terminal.
pub(crate) fn quoted(text: &str) -> String {
    const MOST: usize = 60;
    let mut shown: String = text
        .chars()
        .take(MOST)
        .map(|c| if c.is_control() { char::REPLACEMENT_CHARACTER } else { c })
        .collect();
    if text.chars().count() > MOST {
        shown.push('…');
    }
    format!("`{shown}`")
}

/// Words in a row, each between backticks: `a`, `b`.
pub(crate) fn listed<'c>(words: impl IntoIterator<Item = &'c str>) -> String {
    words.into_iter().map(quoted).collect::<Vec<_>>().join(", ")
}
