//! A Chromium of its own for each test, without a window and with a new profile; it ends with the test.

use crate::devtools::DevTools;
use crate::tab::Tab;
use serde_json::json;
use std::fs;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};
use tempfile::TempDir;

/// Everything a browser does besides showing pages is switched off, so that nothing but a page can cause a request.
const FLAGS: [&str; 15] = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--disable-dev-shm-usage",
    "--no-first-run",
    "--no-default-browser-check",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--disable-default-apps",
    "--force-color-profile=srgb",
    "--mute-audio",
    // A page is as wide as its window.
    "--hide-scrollbars",
    "--remote-debugging-port=0",
];

/// A running browser.
pub struct Chromium {
    process: Child,
    /// Where DevTools listens, `127.0.0.1:PORT`.
    host: String,
    browser: DevTools,
    profile: Option<TempDir>,
}

impl Chromium {
    /// Starts a browser that keeps nothing beyond this test.
    pub fn start() -> Self {
        let profile = TempDir::new().expect("a folder for the profile");
        let mut chromium = Self::start_in(profile.path());
        chromium.profile = Some(profile);
        chromium
    }

    /// Starts a browser whose profile is kept in a folder.
    pub fn start_in(profile: &Path) -> Self {
        let program = std::env::var("HEALEDHUE_CHROMIUM").unwrap_or_else(|_| "chromium".to_owned());
        let port = profile.join("DevToolsActivePort");
        fs::remove_file(&port).ok();
        let mut process = Command::new(&program)
            .args(FLAGS)
            .arg(format!("--user-data-dir={}", profile.display()))
            .arg("about:blank")
            .stdin(Stdio::null())
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .unwrap_or_else(|error| {
                panic!("{program}: {error}. Install Debian's package chromium, or name a Chromium in HEALEDHUE_CHROMIUM")
            });
        let end = Instant::now() + Duration::from_secs(60);
        let (port, path) = loop {
            let told = fs::read_to_string(&port).unwrap_or_default();
            if let Some((port, path)) = told.split_once('\n') {
                break (port.to_owned(), path.trim().to_owned());
            }
            if let Ok(Some(status)) = process.try_wait() {
                panic!("{program} ended at once: {status}");
            }
            assert!(Instant::now() < end, "{program} did not start within a minute");
            std::thread::sleep(Duration::from_millis(20));
        };
        let host = format!("127.0.0.1:{port}");
        let browser = DevTools::connect(&format!("ws://{host}{path}"));
        Chromium { process, host, browser, profile: None }
    }

    /// A tab that shares storage with the other tabs opened by this.
    pub fn tab(&mut self) -> Tab {
        let made = self.browser.call("Target.createTarget", json!({"url": "about:blank"}));
        self.attach(made["targetId"].as_str().expect("a target"))
    }

    /// A tab with a storage of its own.
    pub fn fresh_tab(&mut self) -> Tab {
        let context = self.browser.call("Target.createBrowserContext", json!({}))["browserContextId"].take();
        let target = json!({"url": "about:blank", "browserContextId": context});
        let made = self.browser.call("Target.createTarget", target);
        self.attach(made["targetId"].as_str().expect("a target"))
    }

    fn attach(&self, target: &str) -> Tab {
        Tab::new(DevTools::connect(&format!("ws://{}/devtools/page/{target}", self.host)), target)
    }

    /// Closes a tab as a person does.
    pub fn close(&mut self, tab: Tab) {
        self.browser.call("Target.closeTarget", json!({"targetId": tab.target}));
    }

    /// Ends the browser as a power cut does.
    pub fn kill(mut self) {
        self.process.kill().expect("a process");
        self.process.wait().expect("a process");
    }
}

impl Drop for Chromium {
    fn drop(&mut self) {
        self.process.kill().ok();
        self.process.wait().ok();
    }
}
