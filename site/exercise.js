// Marks the exercises of a study page, on the page.
//
// Everything that follows from every option was computed when the site was built and stands in the page, in the list of answers below
// each exercise. Without this script that list can be opened by hand. With it, the list stays closed until an answer has been
// given, and the part about that answer is shown at once, beside the best one.
"use strict";

for (const form of document.querySelectorAll(".exercise form")) prepare(form);

function prepare(form) {
  const part = (name) => form.querySelector(`[data-part="${name}"]`);
  const [mark, again, result, answers, beside] = ["mark", "again", "result", "answers", "beside"].map(part);
  const choices = [...form.querySelectorAll('input[type="radio"]')];

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
    const chosen = choices.find((choice) => choice.checked);
    if (!chosen) {
      result.replaceChildren(paragraph("verdict", "Choose one option first."));
      choices[0]?.focus();
      return;
    }
    const outcome = answers.querySelector(`[data-option="${chosen.value}"]`);
    result.replaceChildren(...report(outcome, beside));
    answers.hidden = false;
    again.hidden = false;
  });
  again.addEventListener("click", () => {
    for (const choice of choices) choice.checked = false;
    reset();
    choices[0]?.focus();
  });
}

// The verdict in words, then a copy of what the list of answers says about the chosen option.
function report(outcome, beside) {
  const best = "best" in outcome.dataset;
  const { letter, credit } = outcome.dataset;
  const verdict = paragraph("verdict", best ? `${letter} is the best answer. ` : `${letter} is not the best answer. `);
  const figure = document.createElement("strong");
  figure.textContent = `Credit: ${credit}`;
  verdict.append(figure);
  const body = outcome.querySelector(".outcome-body").cloneNode(true);
  if (beside) addSwatches(body, [...beside.content.cloneNode(true).querySelectorAll(".swatch")], best);
  return [verdict, body];
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
