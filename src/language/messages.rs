//! A language's messages by the beginnings of their ids: what a page needs of them.

use super::Language;

impl Language {
    /// The messages whose ids begin with one of these, and what stands for all (`decimal-mark`), in Fluent's syntax without comments.
    pub fn part(&self, beginnings: &[&str]) -> String {
        let wanted = |id: &str| id == "decimal-mark" || beginnings.iter().any(|start| id.starts_with(start));
        let mut part = String::new();
        let mut inside = false;
        for line in self.0.source.lines() {
            // A message begins at the margin; what belongs to it is indented, closes a choice, or is empty.
            match line.chars().next() {
                Some(first) if first.is_ascii_alphabetic() => {
                    inside = line.split_once('=').is_some_and(|(id, _)| wanted(id.trim_end()));
                }
                Some('#') => inside = false,
                _ => {}
            }
            if inside && !line.trim().is_empty() {
                part.push_str(line);
                part.push('\n');
            }
        }
        part
    }
}
