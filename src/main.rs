//! The program: parses the command line, runs, returns the exit code.

use std::process::ExitCode;

fn main() -> ExitCode {
    healedhue::cli::run()
}
