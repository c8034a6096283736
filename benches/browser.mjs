// How fast the kept WebAssembly engine answers one request, in node or in a browser; docs/benchmarks.md says what was measured.
//
//   node benches/browser.mjs SHELF.json             times it in node
//   node benches/browser.mjs SHELF.json PAGE.html   writes a page that times it in whatever browser opens it
//
// `cargo bench --bench engine` leaves the demo course's shelf as target/tmp/shelf.json.

import fs from 'node:fs';
import zlib from 'node:zlib';

// Runs in node and, as text, in the page: hence no reference to anything outside.
async function measure(engine, shelf, clock) {
  const { instance } = await WebAssembly.instantiate(engine, {});
  const exported = instance.exports;
  const ask = (name, text) => {
    const bytes = new TextEncoder().encode(text);
    const at = exported.reserve(bytes.length);
    new Uint8Array(exported.memory.buffer, at, bytes.length).set(bytes);
    const fine = exported[name]();
    const answer = new Uint8Array(exported.memory.buffer, exported.answer(), exported.answer_length());
    const told = new TextDecoder().decode(answer);
    if (!fine) throw new Error(told);
    return told;
  };
  ask('shelf', shelf);
  const bare = { skin: { phototype: 'II' }, mix: { kelderwick: 4, emberlow: 2 }, worlds: 0 };
  const old = { ...bare, existing: [{ colourants: { PBk7: 0.8 }, months: 84, placement: { depth_mm: 0.3 } }] };
  const lines = [];
  for (const [name, request] of [['bare skin', bare], ['old work', old]]) {
    const times = [];
    // Other numbers each time, as from a slider. The first 50 warm up the browser's compiler and are not counted.
    for (let i = 0; i < 550; i++) {
      const text = JSON.stringify({ ...request, placement: { depth_mm: 0.1 + i * 1e-4 } });
      const start = clock();
      // Browsers round their clocks: ten requests are timed together.
      for (let k = 0; k < 10; k++) JSON.parse(ask('foresee', text));
      if (i >= 50) times.push((clock() - start) / 10);
    }
    times.sort((a, b) => a - b);
    const [least, median, late] = [0, 250, 475].map((place) => times[place].toFixed(3));
    lines.push(`${name}: least ${least} ms, median ${median} ms, 95th percentile ${late} ms`);
  }
  return lines.join('\n');
}

const [shelfFile, page] = process.argv.slice(2);
const engine = zlib.gunzipSync(fs.readFileSync(new URL('../site/engine/engine.wasm.gz', import.meta.url)));
const shelf = fs.readFileSync(shelfFile, 'utf8');
if (page) {
  const bytes = `Uint8Array.from(atob(${JSON.stringify(engine.toString('base64'))}), (c) => c.charCodeAt(0))`;
  const run = `measure(${bytes}, ${JSON.stringify(shelf)}, () => performance.now())`;
  fs.writeFileSync(
    page,
    `<!doctype html><meta charset="utf-8"><title>…</title><pre>timing…</pre><script>${measure}
${run}.catch(String).then((told) => { document.querySelector('pre').textContent = told; document.title = 'done'; });</script>\n`,
  );
} else {
  console.log('by the clock on the wall\n' + (await measure(engine, shelf, () => performance.now())));
  const processor = () => {
    const { user, system } = process.cpuUsage();
    return (user + system) / 1000;
  };
  console.log('by processor time\n' + (await measure(engine, shelf, processor)));
}
