//! The command line: words in, work done by the stages, results out.
//!
//! Entry point: [`run`]. One file per command. Results go to standard output, progress and problems to standard error. Exit
//! codes: 0 fine, 1 the course or the input has problems, 2 wrong use.

mod assign;
mod belief;
mod build;
mod cache;
mod check;
mod coverage;
mod foresee;
mod input;
mod layers;
mod lines;
mod mark;
mod paper;
mod pigment;
mod practise;
mod problem;
mod progress;
mod ranking;
mod replacement;
mod report;
mod skin;
mod slips;
mod strip;
mod table;
mod terminal;

use clap::{Parser, Subcommand};
use std::path::PathBuf;
use std::process::ExitCode;

/// Course compiler and quiz engine for cosmetic tattooing: exercises about pigment in skin, proved and marked by a physical
/// engine. Predictions are for teaching, never a promise of a result on a person.
#[derive(Debug, Parser)]
#[command(name = "healedhue", version, max_term_width = 100)]
struct Arguments {
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    /// Write the study site and the worksheets of a course.
    Build(build::Arguments),
    /// Read a course and prove every drill, without writing anything.
    Check(check::Arguments),
    /// Make a paper of a blueprint, or one for each person on a register.
    Paper(paper::Arguments),
    /// Mark answer slips.
    Mark(mark::Arguments),
    /// Give lessons and practice to people, and mark what they hand in.
    Assign(assign::Arguments),
    /// Practise in the terminal.
    Practise(practise::Arguments),
    /// Report on a cohort: skills, misconceptions, statistics of drills and questions, what to practise next.
    Report(report::Arguments),
    /// Foresee the healed colour of a placement.
    Foresee(foresee::Arguments),
    /// Reflectance and transmittance of layered media.
    Layers(layers::Arguments),
    /// Read skin parameters out of measured spectra.
    Skin(skin::Arguments),
    /// Absorption and scattering of a bottle or a colourant, out of measured drawdowns.
    Pigment(Box<pigment::Arguments>),
}

/// Where a course lies.
#[derive(Debug, clap::Args)]
struct CourseFolder {
    /// Folder of the course: the one that holds book.toml.
    #[arg(long, value_name = "FOLDER", default_value = ".")]
    course: PathBuf,
}

/// Reads a whole number between these bounds on the command line; see [`clap::builder::ValueParser`].
fn whole<T: TryFrom<u64>>(least: u64, most: u64) -> impl Fn(&str) -> Result<T, String> + Clone {
    move |text| {
        let number = text.parse::<u64>().ok().filter(|number| (least..=most).contains(number));
        let fits = number.and_then(|number| T::try_from(number).ok());
        fits.ok_or_else(|| format!("give a whole number from {least} to {most}"))
    }
}

/// Reads a number on the command line; its bounds are checked where it is used.
fn number(text: &str) -> Result<f64, String> {
    let number = text.parse::<f64>().ok().filter(|number| number.is_finite());
    number.ok_or_else(|| "give a number, such as 0.25".to_owned())
}

/// Runs the command given to this process and returns its exit code.
pub fn run() -> ExitCode {
    let arguments = Arguments::parse();
    let done = match arguments.command {
        Command::Build(arguments) => build::run(&arguments),
        Command::Check(arguments) => check::run(&arguments),
        Command::Paper(arguments) => paper::run(&arguments),
        Command::Mark(arguments) => mark::run(&arguments),
        Command::Assign(arguments) => assign::run(&arguments),
        Command::Practise(arguments) => practise::run(&arguments),
        Command::Report(arguments) => report::run(&arguments),
        Command::Foresee(arguments) => foresee::run(&arguments),
        Command::Layers(arguments) => layers::run(&arguments),
        Command::Skin(arguments) => skin::run(&arguments),
        Command::Pigment(arguments) => pigment::run(&arguments),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(problem) => {
            problem.show();
            ExitCode::from(problem.exit_code())
        }
    }
}
