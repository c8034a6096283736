//! A folder served on the loopback address below a path of its own, as an academy's site is; for tests alone.

use std::fs;
use std::io::{BufRead, BufReader, Write};
use std::net::{TcpListener, TcpStream};
use std::path::{Component, Path, PathBuf};
use std::sync::Arc;

/// The path below which the site is served.
const BELOW: &str = "/academy/study%20site/";

/// Serves a folder for as long as the tests run; gives the address of its top.
pub fn serve(folder: &Path) -> String {
    let listener = TcpListener::bind("127.0.0.1:0").expect("a port");
    let address = format!("http://{}{BELOW}", listener.local_addr().expect("an address"));
    let folder = Arc::new(folder.to_owned());
    std::thread::spawn(move || {
        for stream in listener.incoming().flatten() {
            let folder = folder.clone();
            // A browser that goes away in the middle of an answer is none of the tests' business.
            std::thread::spawn(move || answer(stream, &folder).ok());
        }
    });
    address
}

fn answer(stream: TcpStream, folder: &Path) -> std::io::Result<()> {
    let mut lines = BufReader::new(&stream).lines();
    let first = lines.next().transpose()?.unwrap_or_default();
    for line in lines.by_ref() {
        if line?.is_empty() {
            break;
        }
    }
    let path = first.split(' ').nth(1).unwrap_or_default().split('?').next().unwrap_or_default();
    let found = path.strip_prefix(BELOW).and_then(|path| file(folder, path)).filter(|file| file.is_file());
    let (status, kind, content) = match &found {
        Some(file) => ("200 OK", kind(file), fs::read(file)?),
        None => ("404 Not Found", "text/plain", Vec::new()),
    };
    let head = format!(
        "HTTP/1.1 {status}\r\nContent-Type: {kind}\r\nContent-Length: {}\r\nConnection: close\r\n\r\n",
        content.len()
    );
    (&stream).write_all(&[head.as_bytes(), &content].concat())
}

/// The file of a path, which stays in the folder.
fn file(folder: &Path, path: &str) -> Option<PathBuf> {
    let path = if path.is_empty() { "index.html" } else { path };
    Path::new(path).components().all(|part| matches!(part, Component::Normal(_))).then(|| folder.join(path))
}

fn kind(file: &Path) -> &'static str {
    match file.extension().and_then(|ending| ending.to_str()).unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        _ => "application/octet-stream",
    }
}
