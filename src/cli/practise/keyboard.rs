//! What comes from whoever practises: lines that were asked for, and Ctrl-C.
//!
//! Entry points: [`Keyboard::open`] and [`Keyboard::line`]. A line is read until its Enter, and nothing ends that but the line. So a thread of its own reads, one line
//! for each that is asked for, and Ctrl-C comes by the same channel: a session that is left by it ends as by q. Pressed once more, it ends the program.

use super::super::input::read_line;
use super::super::problem::Problem;
use std::io;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, Sender, channel};

/// Exit code of a program that Ctrl-C has ended, as shells have it: 128 and the number of the signal.
const INTERRUPTED: i32 = 130;

/// What somebody did.
pub(super) enum Heard {
    /// A line, with its line break; empty at the end of the input.
    Line(Vec<u8>),
    /// Ctrl-C.
    Interrupt,
}

/// Standard input, and the interrupt of the terminal.
pub(super) struct Keyboard {
    asks: Sender<()>,
    heard: Receiver<Result<Heard, Problem>>,
    interrupted: Arc<AtomicBool>,
}

impl Keyboard {
    /// Begins to listen; nothing is read yet. Where the system gives no notice of Ctrl-C, that ends the program as it always did.
    pub fn open() -> Self {
        let (asks, asked) = channel();
        let (tells, heard) = channel();
        let interrupted = Arc::new(AtomicBool::new(false));
        let (by_hand, flag) = (tells.clone(), Arc::clone(&interrupted));
        let listens = ctrlc::set_handler(move || {
            if flag.swap(true, Ordering::SeqCst) {
                std::process::exit(INTERRUPTED);
            }
            // Nobody hears it any more once the session is over.
            drop(by_hand.send(Ok(Heard::Interrupt)));
        });
        drop(listens);
        std::thread::spawn(move || {
            let mut input = io::stdin().lock();
            while asked.recv().is_ok() && tells.send(read_line(&mut input).map(Heard::Line)).is_ok() {}
        });
        Keyboard { asks, heard, interrupted }
    }

    /// The next line, or Ctrl-C.
    ///
    /// # Errors
    /// [`Problem`] where the input cannot be read.
    pub fn line(&self) -> Result<Heard, Problem> {
        // A thread that has gone away reads no more: then the input is at its end.
        let ended = || Ok(Heard::Line(Vec::new()));
        if self.asks.send(()).is_err() {
            return ended();
        }
        self.heard.recv().unwrap_or_else(|_| ended())
    }

    /// Whether Ctrl-C was pressed.
    pub fn is_interrupted(&self) -> bool {
        self.interrupted.load(Ordering::SeqCst)
    }
}
