//! Chromium's DevTools protocol: one WebSocket to one target, calls and the events that come between their answers.
//!
//! Every message is JSON. A call has a number, its answer the same number; whatever has none is an event. A dialog stops a page until
//! somebody answers it, so that here it is dismissed as soon as it is told of.

use serde_json::{Value, json};
use std::io::ErrorKind;
use std::net::TcpStream;
use std::time::{Duration, Instant};
use tungstenite::{Error, Message, WebSocket};

/// A call that is not answered within this time fails.
const PATIENCE: Duration = Duration::from_secs(60);

/// A connection to one target.
pub struct DevTools {
    socket: WebSocket<TcpStream>,
    last: u64,
    /// What happened since the connection was made, or since the events were last taken: method and parameters.
    pub events: Vec<(String, Value)>,
}

impl DevTools {
    /// Connects to the target of a `ws:` address.
    pub fn connect(address: &str) -> Self {
        let host = address.trim_start_matches("ws://").split('/').next().expect("a host");
        let stream = TcpStream::connect(host).unwrap_or_else(|error| panic!("{address}: {error}"));
        stream.set_nodelay(true).expect("a socket");
        let (socket, _) = tungstenite::client(address, stream).expect("a WebSocket");
        DevTools { socket, last: 0, events: Vec::new() }
    }

    /// Calls a method and gives its result.
    pub fn call(&mut self, method: &str, parameters: Value) -> Value {
        self.try_call(method, parameters).unwrap_or_else(|error| panic!("{method}: {error}"))
    }

    /// The same, where the browser may refuse or go away.
    pub fn try_call(&mut self, method: &str, parameters: Value) -> Result<Value, String> {
        let number = self.send(method, parameters)?;
        let end = Instant::now() + PATIENCE;
        while Instant::now() < end {
            let Some(mut message) = self.read(end - Instant::now())? else { break };
            if message["id"] == number {
                return match message.get("error") {
                    Some(error) => Err(error.to_string()),
                    None => Ok(message["result"].take()),
                };
            }
        }
        Err(format!("no answer within {PATIENCE:?}"))
    }

    /// Waits for an event of which something holds; the events up to it are kept. False where none comes.
    pub fn wait_for(&mut self, patience: Duration, wanted: impl Fn(&str, &Value) -> bool) -> bool {
        let end = Instant::now() + patience;
        let mut seen = 0;
        loop {
            if self.events[seen..].iter().any(|(method, told)| wanted(method, told)) {
                return true;
            }
            seen = self.events.len();
            let left = end.saturating_duration_since(Instant::now());
            if left.is_zero() {
                return false;
            }
            self.read(left).unwrap_or_else(|error| panic!("{error}"));
        }
    }

    fn send(&mut self, method: &str, parameters: Value) -> Result<u64, String> {
        self.last += 1;
        let call = json!({"id": self.last, "method": method, "params": parameters}).to_string();
        self.socket.send(Message::text(call)).map_err(|error| error.to_string())?;
        Ok(self.last)
    }

    /// The next message that is an answer; events are kept. Nothing where none comes in time or an event did.
    fn read(&mut self, patience: Duration) -> Result<Option<Value>, String> {
        let patience = patience.max(Duration::from_millis(1));
        self.socket.get_ref().set_read_timeout(Some(patience)).expect("a socket");
        let text = match self.socket.read() {
            Ok(Message::Text(text)) => text,
            Ok(_) => return Ok(Some(Value::Null)),
            Err(Error::Io(error)) if matches!(error.kind(), ErrorKind::WouldBlock | ErrorKind::TimedOut) => {
                return Ok(None);
            }
            Err(error) => return Err(error.to_string()),
        };
        let mut message: Value = serde_json::from_str(&text).map_err(|error| error.to_string())?;
        let Some(method) = message["method"].as_str().map(str::to_owned) else { return Ok(Some(message)) };
        if method == "Page.javascriptDialogOpening" {
            self.send("Page.handleJavaScriptDialog", json!({"accept": false}))?;
        }
        self.events.push((method, message["params"].take()));
        Ok(Some(Value::Null))
    }
}
