// Marks the exercises of a study page, on the page.
//
// Everything that follows from every option was computed when the site was built and stands in the page, in the list of answers below
// each exercise. Without this script that list can be opened by hand. With it, the list stays closed until an answer has been
// given. Steps: read what was given, by the form of the answer; say what is amiss, or the credit and what follows.
const forms = document.querySelectorAll(".exercise form");
for (const form of forms) prepare(form);
const library = document.querySelector('[data-part="library"]');
if (library) moveLinks(library, forms);

// The page links all bottles of its exercises once, at its end. Each exercise is given the links to those it names instead.
function moveLinks(all, exercises) {
  const links = [...all.querySelectorAll("a")];
  const without = new Set(links);
  for (const form of exercises) {
    const asked = [form.querySelector("fieldset"), ...form.querySelectorAll(".case .swatch b")].map((part) => part.textContent).join(" ");
    const words = new Set(asked.match(/[\p{L}\p{N}]+/gu));
    const named = links.filter(({ textContent: name }) => words.has(name) || (name.includes(" ") && asked.includes(name)));
    if (named.length === 0) continue;
    const line = paragraph("small to-library", message("drill-bottles"));
    named.forEach((link, place) => line.append(place > 0 ? ", " : " ", link.cloneNode(true)));
    form.querySelector("fieldset").after(line);
    for (const link of named) without.delete(link);
  }
  all.hidden = without.size === 0;
}

function prepare(form) {
  const part = (name) => form.querySelector(`[data-part="${name}"]`);
  const [mark, again, result, answers] = ["mark", "again", "result", "answers"].map(part);
  const inputs = [...form.querySelectorAll("fieldset input")];

  const reset = () => {
    result.replaceChildren();
    answers.hidden = true;
    answers.open = false;
    again.hidden = true;
  };

  mark.hidden = false;
  reset();

  form.addEventListener("change", reset);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const { amiss, shown } = markers[form.dataset.form](form, inputs);
    if (amiss) {
      result.replaceChildren(paragraph("verdict", amiss));
      inputs[0]?.focus();
      return;
    }
    result.replaceChildren(...shown);
    answers.hidden = false;
    again.hidden = false;
  });
  again.addEventListener("click", () => {
    for (const input of inputs) {
      if (input.type === "radio" || input.type === "checkbox") input.checked = false;
      else input.value = "";
    }
    reset();
    inputs[0]?.focus();
  });
}

// One for each form of an answer. Each gives what is amiss, or what is shown.
const markers = {
  one(form, inputs) {
    const chosen = inputs.find((input) => input.checked);
    if (!chosen) return { amiss: message("drill-choose-one") };
    const outcome = form.querySelector(`[data-option="${chosen.value}"]`);
    return { shown: report(form, outcome) };
  },

  // Of those that hold, the share found, less as much for each one chosen that does not.
  several(form, inputs) {
    if (!inputs.some((input) => input.checked)) return { amiss: message("drill-choose-some") };
    const outcomes = inputs.map((input) => form.querySelector(`[data-option="${input.value}"]`));
    const holds = outcomes.map((outcome) => "best" in outcome.dataset);
    const found = inputs.filter((input, place) => input.checked && holds[place]).length;
    const wrong = inputs.filter((input, place) => input.checked && !holds[place]).length;
    const credit = Math.max(0, (found - wrong) / holds.filter(Boolean).length);
    const amiss = outcomes.filter((_, place) => inputs[place].checked !== holds[place]);
    return { shown: [verdict(credit), ...amiss.map(copyOf).flatMap((copy) => [...copy.children]), ...(amiss.length > 0 ? rereadOf(form) : [])] };
  },

  // Kendall's rank correlation with the right order, nothing where it is not positive.
  order(form, inputs) {
    const turns = inputs.map((input) => Number(input.value));
    const all = inputs.map((_, place) => place + 1);
    if (!all.every((turn) => turns.includes(turn))) return { amiss: message("drill-number-steps", { count: all.length }) };
    const right = form.dataset.order.split(" ").map(Number);
    const given = right.map((place) => turns[place]);
    let swapped = 0;
    for (let i = 0; i < given.length; i += 1) for (let j = i + 1; j < given.length; j += 1) if (given[i] > given[j]) swapped += 1;
    const pairs = (given.length * (given.length - 1)) / 2;
    const partly = "allOrNothing" in form.dataset ? 0 : Math.max(0, 1 - (2 * swapped) / pairs);
    return { shown: [verdict(swapped === 0 ? 1 : partly)] };
  },

  drops(form, inputs) {
    const counts = inputs.map((input) => Number(input.value || 0));
    const { drops, modifierDrops, table, readings } = form.dataset;
    const modifiers = inputs.map((input) => "modifier" in input.dataset);
    const sum = (wanted) => counts.filter((_, place) => modifiers[place] === wanted).reduce((total, count) => total + count, 0);
    if (counts.some((count) => !Number.isInteger(count) || count < 0)) return { amiss: message("drill-whole-drops") };
    if (sum(true) + sum(false) !== Number(drops)) return { amiss: message("drill-drops-counted", { drops: Number(drops), counted: sum(true) + sum(false) }) };
    if (sum(true) > Number(modifierDrops)) return { amiss: message("drill-most-modifiers", { count: Number(modifierDrops) }) };
    if (counts.filter((count, place) => count > 0 && !modifiers[place]).length !== 1) return { amiss: message("drill-one-bottle") };
    const row = table?.split("\n").find((line) => line.startsWith(`${counts.join(" ")}|`));
    if (!row) return { shown: [paragraph("verdict", message("drill-compare"))] };
    const [, credit, error, reading] = row.split("|");
    const words = readings.split("|")[Number(reading)];
    const swatches = document.createElement("div");
    swatches.className = "swatches";
    const { best, goal } = besideOf(form);
    swatches.append(...best, ...goal);
    return { shown: [verdictOf(credit), paragraph("", message("drill-mix-heals-to", { words, distance: error })), swatches] };
  },

  number(form, inputs) {
    const value = Number(inputs[0].value.trim().replace("−", "-").replace(",", ".") || NaN);
    if (!Number.isFinite(value)) return { amiss: message("drill-write-number") };
    const { key, tolerance, worthless } = form.dataset;
    const away = Math.abs(value - Number(key));
    const credit = Math.min(1, Math.max(0, 1 - (away - Number(tolerance)) / (Number(worthless) - Number(tolerance))));
    const best = copyOf(form.querySelector("[data-best] .outcome-body"));
    return { shown: [verdict(credit), best, ...(credit < 1 ? rereadOf(form) : [])] };
  },
};

function verdict(credit) {
  return verdictOf(message("drill-percent", { number: Math.round(credit * 100) }));
}

function verdictOf(credit) {
  const said = paragraph("verdict", `${message(Number.parseInt(credit, 10) === 100 ? "drill-right" : "drill-not-best")} `);
  const figure = document.createElement("strong");
  figure.textContent = message("drill-credit", { credit });
  said.append(figure);
  return said;
}

// The verdict in words, then a copy of what the list of answers says about the chosen option.
function report(form, outcome) {
  const best = "best" in outcome.dataset;
  const { letter, credit } = outcome.dataset;
  const said = paragraph("verdict", `${message(best ? "drill-best-letter" : "drill-not-best-letter", { letter })} `);
  const figure = document.createElement("strong");
  figure.textContent = message("drill-credit", { credit });
  said.append(figure);
  const body = copyOf(outcome.querySelector(".outcome-body"));
  const beside = besideOf(form);
  if (!best) body.append(...rereadOf(form));
  addSwatches(body, best ? beside.goal : [...beside.best, ...beside.goal]);
  return [said, body];
}

// A copy in which every misconception is told in full: a page tells each once, where it first comes up.
function copyOf(part) {
  const copy = part.cloneNode(true);
  for (const short of copy.querySelectorAll("[data-belief]")) {
    const full = document.querySelector(`.exercise [data-belief="${CSS.escape(short.dataset.belief)}"]`);
    if (full) short.replaceWith(full.cloneNode(true));
  }
  return copy;
}

// A copy of what is to be reread after any wrong answer, where that is the same.
function rereadOf(form) {
  return [...form.querySelectorAll('[data-part="reread"]')].map((reread) => reread.cloneNode(true));
}

// Copies of the swatches that any answer is shown beside: what the best heals to, by its name there, and the goal, the last of the case.
function besideOf(form) {
  const { hasGoal } = form.dataset;
  const { bestLabel } = form.querySelector('[data-part="answers"]').dataset;
  const copies = (selector) => [...form.querySelectorAll(selector)].map((swatch) => swatch.cloneNode(true));
  const best = bestLabel === undefined ? [] : copies("[data-best] .swatch").slice(0, 1);
  for (const swatch of best) {
    const [name, drawing] = [swatch.querySelector("figcaption > b"), swatch.querySelector("svg")];
    drawing.setAttribute("aria-label", drawing.getAttribute("aria-label").replace(name.textContent, bestLabel));
    name.textContent = bestLabel;
  }
  return { best, goal: hasGoal === undefined ? [] : copies(".case .swatches > .swatch:last-child") };
}

// Sets these beside what the chosen option heals to.
function addSwatches(body, swatches) {
  if (swatches.length === 0) return;
  const row = document.createElement("div");
  row.className = "swatches";
  const own = body.querySelector(":scope > .swatch");
  body.querySelector("p").after(row);
  row.append(...(own ? [own] : []), ...swatches);
}

function paragraph(name, text) {
  const made = document.createElement("p");
  made.className = name;
  made.textContent = text;
  return made;
}
