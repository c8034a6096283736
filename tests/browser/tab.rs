//! A tab: pages opened in it, what is found on them, keys pressed, and everything that went wrong meanwhile.

use crate::devtools::DevTools;
use crate::keys::Key;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use serde_json::{Value, json};
use std::path::Path;
use std::time::{Duration, Instant};

/// Long enough for a page with an engine on a machine that has other things to do.
const PATIENCE: Duration = Duration::from_secs(60);

/// A tab of a browser.
pub struct Tab {
    devtools: DevTools,
    /// What the browser calls it.
    pub target: String,
}

impl Tab {
    pub fn new(mut devtools: DevTools, target: &str) -> Self {
        for domain in ["Page", "Runtime", "Network", "Log"] {
            devtools.call(&format!("{domain}.enable"), json!({}));
        }
        devtools.call("Page.setLifecycleEventsEnabled", json!({"enabled": true}));
        Tab { devtools, target: target.to_owned() }
    }

    /// Any method of DevTools.
    pub fn call(&mut self, method: &str, parameters: Value) -> Value {
        self.devtools.call(method, parameters)
    }

    /// Opens an address and waits until the page and all it needs have been loaded.
    pub fn open(&mut self, address: &str) {
        // From one place of a page to another, nothing would be loaded.
        self.go("about:blank");
        self.devtools.events.clear();
        self.go(address);
    }

    fn go(&mut self, address: &str) {
        let went = self.call("Page.navigate", json!({"url": address}));
        assert!(went.get("errorText").is_none(), "{address}: {went}");
        let loaded = |method: &str, told: &Value| {
            method == "Page.lifecycleEvent" && told["name"] == "load" && told["loaderId"] == went["loaderId"]
        };
        assert!(self.devtools.wait_for(PATIENCE, loaded), "{address} is not loaded within {PATIENCE:?}");
    }

    /// Loads the page again.
    pub fn reload(&mut self) {
        self.devtools.events.clear();
        self.call("Page.reload", json!({}));
        let loaded = self.devtools.wait_for(PATIENCE, |method, _| method == "Page.loadEventFired");
        assert!(loaded, "the page is not loaded within {PATIENCE:?}");
    }

    /// The value of an expression on the page, of a promise once it is kept.
    pub fn value(&mut self, expression: &str) -> Value {
        let asked = json!({"expression": expression, "returnByValue": true, "awaitPromise": true, "userGesture": true});
        let mut told = self.call("Runtime.evaluate", asked);
        assert!(told.get("exceptionDetails").is_none(), "{expression}: {}", told["exceptionDetails"]);
        told["result"]["value"].take()
    }

    /// The same, as text.
    pub fn text(&mut self, expression: &str) -> String {
        let value = self.value(expression);
        value.as_str().unwrap_or_else(|| panic!("{expression} is {value}")).to_owned()
    }

    /// The same, as a list of texts.
    pub fn texts(&mut self, expression: &str) -> Vec<String> {
        let value = self.value(expression);
        serde_json::from_value(value.clone()).unwrap_or_else(|_| panic!("{expression} is {value}"))
    }

    /// Whether an expression holds.
    pub fn holds(&mut self, expression: &str) -> bool {
        self.value(&format!("Boolean({expression})")) == true
    }

    /// Waits until an expression holds.
    pub fn wait_until(&mut self, expression: &str) {
        let end = Instant::now() + PATIENCE;
        while !self.holds(expression) {
            assert!(Instant::now() < end, "not within {PATIENCE:?}: {expression}\n{:?}", self.troubles());
            std::thread::sleep(Duration::from_millis(15));
        }
    }

    /// Presses a key as often as told.
    pub fn press(&mut self, key: Key, times: usize) {
        for event in (0..times).flat_map(|_| key.events()) {
            self.call("Input.dispatchKeyEvent", event);
        }
    }

    /// Types text where the focus is.
    pub fn write(&mut self, text: &str) {
        self.call("Input.insertText", json!({"text": text}));
    }

    /// Shows pages on a screen so many CSS pixels wide.
    pub fn width(&mut self, width: u32) {
        let screen = json!({"width": width, "height": 900, "deviceScaleFactor": 1, "mobile": false});
        self.call("Emulation.setDeviceMetricsOverride", screen);
    }

    /// What the device asks pages for, as CSS names it.
    pub fn prefers(&mut self, feature: &str, value: &str) {
        self.call("Emulation.setEmulatedMedia", json!({"features": [{"name": feature, "value": value}]}));
    }

    /// Switches scripts of pages off.
    pub fn without_scripts(&mut self) {
        self.call("Emulation.setScriptExecutionDisabled", json!({"value": true}));
    }

    /// The page on paper of a size in inches, as a PDF.
    pub fn printed(&mut self, (width, height): (f64, f64)) -> Vec<u8> {
        let paper = json!({"paperWidth": width, "paperHeight": height, "printBackground": true});
        let pdf = self.call("Page.printToPDF", paper);
        STANDARD.decode(pdf["data"].as_str().expect("a PDF")).expect("base64")
    }

    /// The whole page as a PNG.
    pub fn picture(&mut self) -> Vec<u8> {
        let picture = self.call("Page.captureScreenshot", json!({"captureBeyondViewport": true}));
        STANDARD.decode(picture["data"].as_str().expect("a picture")).expect("base64")
    }

    /// Puts a file where the page asks for one.
    pub fn choose_file(&mut self, selector: &str, file: &Path) {
        let found = self
            .call("Runtime.evaluate", json!({"expression": format!("document.querySelector({selector:?})")}));
        self.call("DOM.setFileInputFiles", json!({"files": [file], "objectId": found["result"]["objectId"]}));
    }

    /// Lets the page save files into a folder.
    pub fn save_into(&mut self, folder: &Path) {
        self.call("Page.setDownloadBehavior", json!({"behavior": "allow", "downloadPath": folder}));
    }

    /// What went wrong since the page was opened: errors that were told to the console, exceptions, dialogs, whatever the page's policy
    /// refused, and requests.
    pub fn troubles(&mut self) -> Vec<String> {
        // What is on its way has arrived once a call is answered.
        self.call("Runtime.evaluate", json!({"expression": "0"}));
        self.devtools.events.iter().filter_map(|(method, told)| trouble(method, told)).collect()
    }

    /// The addresses that were asked for since the page was opened, but for those in the page's own memory.
    pub fn requests(&mut self) -> Vec<String> {
        self.call("Runtime.evaluate", json!({"expression": "0"}));
        let asked = self.devtools.events.iter().filter(|(method, _)| method == "Network.requestWillBeSent");
        let addresses = asked.filter_map(|(_, told)| told["request"]["url"].as_str());
        addresses
            .filter(|url| !url.starts_with("data:") && !url.starts_with("blob:"))
            .map(str::to_owned)
            .collect()
    }

    /// Asserts that nothing went wrong, that no text was run as a script (see `site::PAYLOAD`), and that nothing outside of a folder or
    /// site was asked for.
    pub fn expect_quiet(&mut self, site: &str) {
        let page = self.text("location.href");
        assert_eq!(self.troubles(), Vec::<String>::new(), "{page}");
        assert!(!self.holds("typeof fired !== 'undefined'"), "{page} has run what it should have shown");
        for address in self.requests() {
            assert!(address.starts_with(site), "{page} asks for {address}");
        }
    }
}

fn trouble(method: &str, told: &Value) -> Option<String> {
    match method {
        "Runtime.exceptionThrown" => Some(told["exceptionDetails"].to_string()),
        "Runtime.consoleAPICalled" if told["type"] == "error" || told["type"] == "assert" => {
            Some(told["args"].to_string())
        }
        "Log.entryAdded" if told["entry"]["level"] == "error" => Some(told["entry"]["text"].to_string()),
        "Page.javascriptDialogOpening" => Some(format!("a dialog: {}", told["message"])),
        "Network.loadingFailed" => Some(format!("not loaded: {told}")),
        _ => None,
    }
}
