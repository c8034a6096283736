// A paper on the screen: keeps the time, keeps the answers on the device, and makes the answer slip.
//
// Nothing here knows what is right. Steps: begin; read every answer as it is given and keep it; hand in, or be handed in when the time
// is over; give the slip as a file and as a code. The check over a slip is reckoned as in src/assess/slip.rs. What it tells of time: from
// the beginning to handing in, and for each question from the answer before to its own, while the page was open.
const part = (name) => document.querySelector(`[data-part="${name}"]`);
const paper = JSON.parse(document.getElementById("identity").textContent);
const [form, begin, finish, slip, clock] = ["paper", "begin", "finish", "slip", "clock"].map(part);
const questions = [...document.querySelectorAll(".question")];
const place = `healedhue-paper-${paper.digest}-${paper.candidate}`;
// What is kept: when it was `begun`, what the `fields` hold, the time `spent` on each question, the time `left` as it was last seen, the time it
// `took` once handed in, and how many `turns` it was kept.
const kept = recall();
const shelf = new Promise((fulfil) => {
  // A device that does not answer is not waited for.
  setTimeout(fulfil, 1000);
  try {
    const request = indexedDB.open("healedhue-papers", 1);
    Object.assign(request, { onupgradeneeded: () => request.result.createObjectStore("kept"), onsuccess: () => fulfil(request.result), onerror: () => fulfil() });
  } catch {
    fulfil();
  }
});
const length = Number(clock.dataset.minutes) * 60000;
// When the last answer was given, or the questions were shown.
let last = Date.now();
// When the time left was last seen, on a clock that nobody sets.
let seen = performance.now();

form.hidden = true;
finish.hidden = false;

begin.addEventListener("click", () => {
  kept.begun = Date.now();
  keep();
  start();
  // From the head of the questions, where a case may stand before the first.
  form.scrollIntoView();
  questions[0]?.querySelector("input")?.focus({ preventScroll: true });
});
form.addEventListener("input", (event) => {
  count(questions.findIndex((question) => question.contains(event.target)));
  kept.fields = fields().map((field) => (field.type === "radio" || field.type === "checkbox" ? field.checked : field.value));
  withdraw();
});
// The same paper in another tab: what was answered last, and whether it is handed in, holds in both.
window.addEventListener("storage", (event) => {
  if (event.key !== place) return;
  take(recall());
  restore();
  goOn();
});
form.addEventListener("submit", (event) => {
  event.preventDefault();
  handIn();
});
// Enter in a field would hand in; only the button does.
form.addEventListener("keydown", (event) => {
  if (event.key === "Enter" && event.target instanceof HTMLInputElement) event.preventDefault();
});
// Back to the first question without an answer, or to the first of all.
part("back").addEventListener("click", () => {
  withdraw();
  showQuestions();
  goTo(Math.max(0, read().findIndex((one) => !one.answer)));
});
part("copy").addEventListener("click", async () => {
  const code = part("code");
  code.select();
  try {
    await navigator.clipboard.writeText(code.value);
    part("copy").textContent = message("paper-copied");
  } catch {
    if (document.execCommand("copy")) part("copy").textContent = message("paper-copied");
  }
});
// On paper nothing is folded away.
window.addEventListener("beforeprint", () => {
  for (const folded of document.querySelectorAll("details")) folded.open = true;
});

// Shows the questions, or the slip of what is handed in.
function goOn() {
  if (!Number.isFinite(kept.begun)) return;
  start();
  if (kept.took !== undefined) handIn(kept.left <= 0);
  else if (kept.left > 0) showQuestions();
}

function showQuestions() {
  slip.hidden = true;
  form.hidden = false;
}

// What is changed is not handed in.
function withdraw() {
  delete kept.took;
  keep();
}

function start() {
  if (!clock.hidden) return;
  begin.hidden = true;
  form.hidden = false;
  clock.hidden = false;
  last = Date.now();
  seen = performance.now();
  tick();
  const ticking = setInterval(() => {
    if (!tick()) clearInterval(ticking);
  }, 1000);
}

// Shows the time left; false when there is none.
function tick() {
  // A clock of the device that is set back gives no time back.
  const passed = performance.now() - seen;
  seen += passed;
  const before = Number.isFinite(kept.left) ? Math.min(kept.left, length) : length;
  kept.left = Math.max(0, Math.min(kept.begun + length - Date.now(), before - passed));
  const left = Math.ceil(kept.left / 1000);
  if (left <= 0 || left % 15 === 0) keep();
  if (left <= 0) {
    clock.textContent = message("paper-over");
    for (const field of fields()) field.disabled = true;
    part("back").hidden = true;
    // What was handed in before stays as it is.
    if (kept.took === undefined) handIn(true);
    return false;
  }
  const minutes = Math.floor(left / 60);
  clock.textContent = left > 300 ? message("paper-minutes-left", { minutes: Math.ceil(left / 60) }) : message("paper-clock-left", { clock: `${minutes}:${String(left % 60).padStart(2, "0")}` });
  clock.toggleAttribute("data-late", left <= 300);
  if (left <= 300) part("late").textContent = message("paper-late");
  return true;
}

// Counts the time since the answer before for this question.
function count(at) {
  if (at < 0) return;
  if (!counted()) kept.spent = questions.map(() => 0);
  kept.spent[at] = Number(kept.spent[at] || 0) + Math.max(0, Date.now() - last);
  last = Date.now();
}

// Whether time was counted for each question.
function counted() {
  return Array.isArray(kept.spent) && kept.spent.length === questions.length;
}

// What the slip tells of time, in whole seconds; no clock of the device makes it longer than the paper.
function told() {
  const seconds = (spent) => Math.round(Math.min(Math.max(Number(spent) || 0, 0), length) / 1000);
  return { form: "healedhue-time-1", seconds: seconds(kept.took), each: counted() ? kept.spent.map(seconds) : [] };
}

function fields() {
  return [...form.querySelectorAll("input")];
}

function recall() {
  try {
    const found = JSON.parse(localStorage.getItem(place));
    if (found && typeof found === "object") return found;
  } catch {
    // Nothing is kept on this device, or nothing may be.
  }
  return {};
}

// Puts what was kept elsewhere in place of what is known here.
function take(found) {
  for (const name of Object.keys(kept)) delete kept[name];
  Object.assign(kept, found);
}

// Whether it could be kept where another tab sees it.
function keep() {
  kept.turns = (Number(kept.turns) || 0) + 1;
  const text = JSON.stringify(kept);
  shelf.then((open) => open?.transaction("kept", "readwrite", { durability: "strict" }).objectStore("kept").put(text, place)).catch(() => {});
  try {
    localStorage.setItem(place, text);
    return true;
  } catch {
    // The answers stay in the page until it is closed.
    return false;
  }
}

// What the device wrote at once: what localStorage holds it may write a minute later, too late for a battery that gives out.
async function recallWritten() {
  try {
    const open = await shelf;
    const request = open.transaction("kept").objectStore("kept").get(place);
    const text = await new Promise((fulfil, fail) => Object.assign(request, { onsuccess: () => fulfil(request.result), onerror: fail }));
    const found = JSON.parse(text);
    return found && typeof found === "object" ? found : {};
  } catch {
    return {};
  }
}

function restore() {
  if (!Array.isArray(kept.fields)) return;
  fields().forEach((field, at) => {
    const value = kept.fields[at];
    if (typeof value === "boolean") field.checked = value;
    else if (typeof value === "string") field.value = value;
  });
}

// One for each form of an answer: the answer as it is written on a slip, or what is amiss.
const letter = (at) => String.fromCharCode(65 + Number(at));
const readers = {
  one: (inputs) => ({ answer: inputs.filter((input) => input.checked).map((input) => letter(input.value)).join("") }),
  several: (inputs) => ({ answer: inputs.filter((input) => input.checked).map((input) => letter(input.value)).join(" ") }),
  order(inputs) {
    const turns = inputs.map((input) => input.value.trim());
    if (turns.every((turn) => turn === "")) return { answer: "" };
    const steps = inputs.map((_, at) => turns.indexOf(String(at + 1)));
    if (steps.includes(-1)) return { amiss: message("drill-number-steps", { count: inputs.length }) };
    return { answer: steps.map(letter).join(" ") };
  },
  drops(inputs, question) {
    const counts = inputs.map((input) => Number(input.value || 0));
    const { drops, modifierDrops } = question.dataset;
    const sum = (wanted) => counts.filter((_, at) => "modifier" in inputs[at].dataset === wanted).reduce((all, count) => all + count, 0);
    if (counts.every((count) => count === 0)) return { answer: "" };
    if (counts.some((count) => !Number.isInteger(count) || count < 0)) return { amiss: message("drill-whole-drops") };
    if (sum(true) + sum(false) !== Number(drops)) return { amiss: message("drill-drops-counted", { drops: Number(drops), counted: sum(true) + sum(false) }) };
    if (sum(true) > Number(modifierDrops)) return { amiss: message("drill-most-modifiers", { count: Number(modifierDrops) }) };
    if (counts.filter((count, at) => count > 0 && !("modifier" in inputs[at].dataset)).length !== 1) return { amiss: message("drill-one-bottle") };
    return { answer: counts.map((count, at) => (count > 0 ? `${letter(at)}${count}` : "")).filter(Boolean).join(" ") };
  },
  number(inputs) {
    const text = inputs[0].value.trim().replace("−", "-").replace(",", ".");
    if (text === "" || Number.isFinite(Number(text))) return { answer: text };
    return { amiss: message("drill-write-number") };
  },
};

// What was answered to each question.
function read() {
  return questions.map((question) => readers[question.dataset.form]([...question.querySelectorAll("input")], question));
}

// Shows a question and puts the focus where it is answered.
function goTo(at) {
  questions[at]?.scrollIntoView();
  questions[at]?.querySelector("input")?.focus({ preventScroll: true });
}

// `over`: there is no time left, so that the slip is made as the answers are.
function handIn(over = false) {
  const found = read();
  const amiss = found.findIndex((one) => one.amiss);
  questions.forEach((question, at) => {
    question.querySelector(".amiss").textContent = found[at].amiss ?? "";
  });
  if (amiss >= 0 && !over) {
    goTo(amiss);
    // A case may fill the screen: what is amiss stands below it, with the fields.
    questions[amiss].querySelector(".amiss").scrollIntoView({ block: "center" });
    return;
  }
  const answers = found.map((one) => one.answer ?? "");
  const numbers = (which) => found.flatMap((one, at) => (which(one) ? [at + 1] : [])).join(", ");
  const [empty, begun] = [numbers(({ answer }) => answer === ""), numbers((one) => one.amiss)];
  // Only once: another tab that hears of it hands in too.
  if (kept.took === undefined) {
    kept.took = length - kept.left;
    keep();
  }
  const text = JSON.stringify({ form: "healedhue-slip-1", paper, answers, check: check(answers), time: told() }, null, 1);
  const download = part("download");
  if (download.href.startsWith("blob:")) URL.revokeObjectURL(download.href);
  download.href = URL.createObjectURL(new Blob([text + "\n"], { type: "application/json" }));
  download.download = `slip-${paper.blueprint}-${paper.candidate}.json`;
  part("code").value = `healedhue-slip:${base64(new TextEncoder().encode(text))}`;
  part("copy").textContent = message("paper-copy");
  const said = [empty ? message("paper-without-answer", { numbers: empty }) : "", begun ? message("paper-incomplete", { numbers: begun }) : ""].filter(Boolean).join(" ") || message("paper-all-answered");
  part("said").textContent = kept.left > 0 ? message("paper-go-back", { said }) : over ? message("paper-over-said", { said }) : said;
  part("answers").textContent = message("paper-your-answers", { answers: answers.map((answer, at) => `${at + 1}: ${answer || "–"}`).join("; ") });
  part("code_printed").textContent = part("code").value;
  form.hidden = true;
  slip.hidden = false;
  slip.focus();
  slip.scrollIntoView();
}

function check(answers) {
  const lines = [paper.course, paper.blueprint, paper.candidate, String(paper.seed), paper.digest, ...answers];
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(lines.map((line) => `${line}\n`).join(""))) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, "0");
}

function base64(bytes) {
  let binary = "";
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

// Last, when everything above stands: where the time is over already, the slip is made at once.
recallWritten().then((found) => {
  if ((found.turns ?? 0) > (kept.turns ?? 0)) take(found);
  restore();
  part("forgets").hidden = keep();
  begin.hidden = Number.isFinite(kept.begun);
  goOn();
});
