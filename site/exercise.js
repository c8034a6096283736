// Marks the exercises of a study page, on the page.
//
// Everything that follows from every option was computed when the site was built and stands in the page, in the list of answers below
// each exercise. Without this script that list can be opened by hand. With it, the list stays closed until an answer has been
// given. Steps: read what was given, by the form of the answer; say what is amiss, or the credit and what follows.
for (const form of document.querySelectorAll(".exercise form")) prepare(form);

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
    return { shown: report(outcome, form.querySelector('[data-part="beside"]')) };
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
    return { shown: [verdict(credit), ...amiss.map((outcome) => outcome.cloneNode(true)).flatMap((copy) => [...copy.children])] };
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
    const { drops, modifierDrops, table } = form.dataset;
    const modifiers = inputs.map((input) => "modifier" in input.dataset);
    const sum = (wanted) => counts.filter((_, place) => modifiers[place] === wanted).reduce((total, count) => total + count, 0);
    if (counts.some((count) => !Number.isInteger(count) || count < 0)) return { amiss: message("drill-whole-drops") };
    if (sum(true) + sum(false) !== Number(drops)) return { amiss: message("drill-drops-counted", { drops: Number(drops), counted: sum(true) + sum(false) }) };
    if (sum(true) > Number(modifierDrops)) return { amiss: message("drill-most-modifiers", { count: Number(modifierDrops) }) };
    if (counts.filter((count, place) => count > 0 && !modifiers[place]).length !== 1) return { amiss: message("drill-one-bottle") };
    const row = table && JSON.parse(table)[counts.join(" ")];
    if (!row) return { shown: [paragraph("verdict", message("drill-compare"))] };
    const [credit, error, words] = row;
    const beside = form.querySelector('[data-part="beside"]');
    const swatches = document.createElement("div");
    swatches.className = "swatches";
    if (beside) swatches.append(beside.content.cloneNode(true));
    return { shown: [verdictOf(credit), paragraph("", message("drill-mix-heals-to", { words, distance: error })), swatches] };
  },

  number(form, inputs) {
    const value = Number(inputs[0].value.trim().replace("−", "-").replace(",", ".") || NaN);
    if (!Number.isFinite(value)) return { amiss: message("drill-write-number") };
    const { key, tolerance, worthless } = form.dataset;
    const away = Math.abs(value - Number(key));
    const credit = Math.min(1, Math.max(0, 1 - (away - Number(tolerance)) / (Number(worthless) - Number(tolerance))));
    const best = form.querySelector("[data-best] .outcome-body").cloneNode(true);
    return { shown: [verdict(credit), best] };
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
function report(outcome, beside) {
  const best = "best" in outcome.dataset;
  const { letter, credit } = outcome.dataset;
  const said = paragraph("verdict", `${message(best ? "drill-best-letter" : "drill-not-best-letter", { letter })} `);
  const figure = document.createElement("strong");
  figure.textContent = message("drill-credit", { credit });
  said.append(figure);
  const body = outcome.querySelector(".outcome-body").cloneNode(true);
  if (beside) addSwatches(body, [...beside.content.cloneNode(true).querySelectorAll(".swatch")], best);
  return [said, body];
}

// Sets the best answer and the goal beside what the chosen option heals to. The template holds the goal last.
function addSwatches(body, swatches, best) {
  let row = body.querySelector(".swatches");
  if (!row) {
    row = document.createElement("div");
    row.className = "swatches";
    body.querySelector("p").after(row);
  }
  row.append(...(best ? swatches.slice(-1) : swatches));
}

function paragraph(name, text) {
  const made = document.createElement("p");
  made.className = name;
  made.textContent = text;
  return made;
}
