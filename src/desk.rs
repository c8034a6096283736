//! How texts pass a module's door in a browser: through one buffer, which the host writes and reads.
//!
//! Entry point: [`Desk`]. What lies behind the door is the module's own.

/// A door with a question that waits and the last answer.
pub(crate) struct Desk<D> {
    pub door: D,
    question: Vec<u8>,
    answer: String,
}

impl<D> Desk<D> {
    /// A desk with nothing on it.
    pub fn new(door: D) -> Self {
        Desk { door, question: Vec::new(), answer: String::new() }
    }

    /// Makes room for a question of so many bytes; returns where it starts.
    pub fn reserve(&mut self, length: usize) -> *mut u8 {
        self.question = vec![0; length];
        self.question.as_mut_ptr()
    }

    /// Takes the question that waits, and keeps the answer; 1 where it is one, 0 where it is a refusal.
    pub fn ask(&mut self, how: impl FnOnce(&mut D, &str) -> Result<String, String>) -> u32 {
        let question = std::mem::take(&mut self.question);
        let answer = how(&mut self.door, &String::from_utf8_lossy(&question));
        let fine = u32::from(answer.is_ok());
        self.answer = answer.unwrap_or_else(|refusal| refusal);
        fine
    }

    /// The last answer.
    pub fn answer(&self) -> &str {
        &self.answer
    }
}
