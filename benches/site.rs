//! What a large course costs to build: 200 lessons and 2,000 drills, cold and with kept proofs. `cargo bench --bench site`; what was measured
//! stands in docs/benchmarks.md.
//!
//! The course is the demo, its modules copied under new ids and each lesson's drills repeated, every one a drill of its own with exercises of its own.
//! It lies in `target/tmp/large-course` afterwards, to be built again or looked at. `cargo bench --bench site -- 1` has each drill show one
//! exercise instead of as many as in the demo.

use std::error::Error;
use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Instant;

type Outcome<T> = Result<T, Box<dyn Error>>;

/// Lessons of the large course, at least.
const LESSONS: usize = 200;
/// Its drills, at least.
const DRILLS: usize = 2000;

/// A module of the demo.
struct Module {
    /// Its line of the summary, then those of its lessons: title and path.
    pages: Vec<(String, String)>,
    folder: String,
}

fn main() -> Outcome<()> {
    let shown = std::env::args().skip(1).find_map(|argument| argument.parse::<u32>().ok());
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("large-course");
    let (lessons, drills) = write_course(Path::new(env!("CARGO_MANIFEST_DIR")), &folder, shown)?;
    println!("{lessons} lessons, {drills} drills in {}; load {}", folder.display(), load());
    for what in ["cold", "with kept proofs"] {
        let start = Instant::now();
        let told = Command::new(env!("CARGO_BIN_EXE_healedhue"))
            .current_dir(&folder)
            .args(["build", "--out", "public"])
            .output()?;
        let wall = start.elapsed();
        if !told.status.success() {
            return Err(String::from_utf8_lossy(&told.stderr).into_owned().into());
        }
        println!("{what}: {:.1} s; load {}", wall.as_secs_f64(), load());
        println!("{}", String::from_utf8_lossy(&told.stdout));
    }
    Ok(())
}

/// How many processes want the machine, where the system says so.
fn load() -> String {
    fs::read_to_string("/proc/loadavg").unwrap_or_else(|_| "unknown".into()).trim().to_owned()
}

/// Writes the large course; `shown` is how many exercises of a drill a lesson shows. Tells how many lessons and drills it has.
fn write_course(demo: &Path, to: &Path, shown: Option<u32>) -> Outcome<(usize, usize)> {
    if to.exists() {
        fs::remove_dir_all(to)?;
    }
    let (from, lessons_to) = (demo.join("lessons"), to.join("lessons"));
    copy_folder(&from, &lessons_to)?;
    // Lessons of ten drills are no fault here.
    let manifest = fs::read_to_string(demo.join("book.toml"))?.replace("strict = true", "strict = false");
    fs::write(to.join("book.toml"), manifest)?;

    let summary = fs::read_to_string(from.join("SUMMARY.md"))?;
    let (prefix, modules) = modules_of(&summary);
    let of_demo: usize = modules.iter().map(|module| module.pages.len() - 1).sum();
    let copies = LESSONS.div_ceil(of_demo);
    let mut summary = prefix;
    let mut lessons: Vec<(PathBuf, usize)> = Vec::new();
    for copy in 1..=copies {
        for module in &modules {
            let folder = renamed(&module.folder, copy);
            if copy > 1 {
                copy_folder(&from.join(&module.folder), &lessons_to.join(&folder))?;
            }
            for (at, (title, path)) in module.pages.iter().enumerate() {
                let indent = if at == 0 { "" } else { "    " };
                let title = if copy == 1 { title.clone() } else { format!("{title} {copy}") };
                writeln!(summary, "{indent}- [{title}]({folder}/{path})")?;
                let page = lessons_to.join(&folder).join(path);
                if copy > 1 {
                    name_anew(&page, &title, copy)?;
                }
                if at > 0 {
                    lessons.push((page.with_extension("yaml"), copy));
                }
            }
        }
    }
    fs::write(lessons_to.join("SUMMARY.md"), summary)?;

    let count = |path: &Path| -> Outcome<usize> { Ok(drills_of(&fs::read_to_string(path)?).1.len()) };
    let all = lessons.iter().map(|(path, _)| count(path)).sum::<Outcome<usize>>()?;
    // Each drill stands as often, and the first few once more, until there are as many as asked for.
    let (times, mut more) = (DRILLS / all, DRILLS % all);
    let mut drills = 0;
    for (path, _) in &lessons {
        let (mut text, blocks) = drills_of(&fs::read_to_string(path)?);
        let page = path.with_extension("md");
        let mut words = fs::read_to_string(&page)?;
        for time in 1..=times + 1 {
            for block in &blocks {
                if time > times {
                    if more == 0 {
                        break;
                    }
                    more -= 1;
                }
                let drill = repeated(block, time, shown);
                if time > 1 {
                    let id = drill.lines().next().and_then(|line| line.strip_prefix("  - id: "));
                    words += &format!("\n```drill\n{}\n```\n", id.unwrap_or_default());
                }
                text += &drill;
                drills += 1;
            }
        }
        fs::write(path, text)?;
        fs::write(page, words)?;
    }
    Ok((lessons.len(), drills))
}

/// A name in the copy with this number.
fn renamed(name: &str, copy: usize) -> String {
    if copy == 1 { name.to_owned() } else { format!("{name}-{copy}") }
}

fn copy_folder(from: &Path, to: &Path) -> Outcome<()> {
    fs::create_dir_all(to)?;
    for entry in fs::read_dir(from)? {
        let entry = entry?;
        let (from, to) = (entry.path(), to.join(entry.file_name()));
        if from.is_dir() {
            copy_folder(&from, &to)?;
        } else {
            fs::copy(from, to)?;
        }
    }
    Ok(())
}

/// What stands before the list of a summary, and its modules.
fn modules_of(summary: &str) -> (String, Vec<Module>) {
    let mut prefix = String::new();
    let mut modules: Vec<Module> = Vec::new();
    for line in summary.lines() {
        let entry = line.trim_start().strip_prefix("- [").and_then(|entry| entry.strip_suffix(')'));
        let Some((title, path)) = entry.and_then(|entry| entry.split_once("](")) else {
            prefix += line;
            prefix.push('\n');
            continue;
        };
        let (folder, page) = path.split_once('/').unwrap_or(("", path));
        if !line.starts_with(' ') {
            modules.push(Module { pages: Vec::new(), folder: folder.to_owned() });
        }
        if let Some(module) = modules.last_mut() {
            module.pages.push((title.to_owned(), page.to_owned()));
        }
    }
    (prefix, modules)
}

/// Gives a copied page a title and ids of its own.
fn name_anew(page: &Path, title: &str, copy: usize) -> Outcome<()> {
    let mut text = String::new();
    let mut after_fence = false;
    for (at, line) in fs::read_to_string(page)?.lines().enumerate() {
        if at == 0 {
            text += &format!("# {title}");
        } else if after_fence {
            text += &renamed(line, copy);
        } else {
            text += line;
        }
        text.push('\n');
        after_fence = line == "```drill";
    }
    fs::write(page, text)?;
    let beside = page.with_extension("yaml");
    let mut text = String::new();
    for line in fs::read_to_string(&beside)?.lines() {
        let is_id = line.starts_with("id: ") || line.starts_with("  - id: ");
        text += &if is_id { renamed(line, copy) } else { line.to_owned() };
        text.push('\n');
    }
    fs::write(beside, text)?;
    Ok(())
}

/// What stands before a lesson's drills, and the text of each.
fn drills_of(text: &str) -> (String, Vec<String>) {
    let Some((before, list)) = text.split_once("drills:\n") else { return (text.to_owned(), Vec::new()) };
    let mut blocks: Vec<String> = Vec::new();
    for line in list.lines() {
        if line.starts_with("  - ") {
            blocks.push(String::new());
        }
        if let Some(block) = blocks.last_mut() {
            *block += line;
            block.push('\n');
        }
    }
    (format!("{before}drills:\n"), blocks)
}

/// A drill's text where it stands in its lesson for the nth time.
fn repeated(block: &str, time: usize, shown: Option<u32>) -> String {
    let mut text = String::new();
    for line in block.lines() {
        match shown {
            _ if line.starts_with("  - id: ") && time > 1 => text += &format!("{line}-again-{time}"),
            Some(shown) if line.starts_with("    exercises: ") => text += &format!("    exercises: {shown}"),
            _ => text += line,
        }
        text.push('\n');
    }
    text
}
