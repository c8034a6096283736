// Talking with the engine: one buffer, JSON in and out. The same function serves the page and its workers, which get its source.

// Opens the engine with what it is to know first, a shelf as a rule; gives a function that asks it.
async function openEngine(bytes, known, taker = "shelf") {
  const { instance } = await WebAssembly.instantiate(bytes, {});
  const engine = instance.exports;
  const ask = (what, question) => {
    const text = new TextEncoder().encode(JSON.stringify(question));
    const at = engine.reserve(text.length);
    new Uint8Array(engine.memory.buffer, at, text.length).set(text);
    const fine = engine[what]();
    const from = engine.answer();
    const answer = JSON.parse(new TextDecoder().decode(new Uint8Array(engine.memory.buffer, from, engine.answer_length())));
    if (!fine) throw Object.assign(new Error(`${answer.error.field}: ${answer.error.why}`), { field: answer.error.field });
    return answer;
  };
  ask(taker, known);
  return ask;
}

// The engine's bytes out of the script that holds them.
async function engineBytes() {
  const packed = Uint8Array.from(atob(globalThis.healedhueEngine), (letter) => letter.charCodeAt(0));
  const unpacked = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Response(unpacked).arrayBuffer();
}
