// Saves the answers of an assignment's page as an answer slip.
//
// A slip holds whose it is, which set of exercises, and the answers as they were given; what they are worth is found out by whoever
// collects the slips. Nothing on this page says what is right. Steps: read each answer, by its form; write the slip; say what is open.
for (const form of document.querySelectorAll("form.slip")) prepare(form);

function prepare(form) {
  const part = (name) => form.querySelector(`[data-part="${name}"]`);
  const [save, result, copy, text] = ["save", "result", "copy", "text"].map(part);
  let unsaved = false;

  save.hidden = false;
  form.addEventListener("input", () => {
    unsaved = true;
  });
  window.addEventListener("beforeunload", (event) => {
    if (unsaved) event.preventDefault();
  });

  // Enter in a field would save a slip; only the button does.
  form.addEventListener("keydown", (event) => {
    if (event.key === "Enter" && event.target instanceof HTMLInputElement) event.preventDefault();
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const questions = [...form.querySelectorAll(".question")];
    const given = questions.map((question) => answers[question.dataset.form]([...question.querySelectorAll("fieldset input")]));
    const { slip, assignment, person, course, set } = form.dataset;
    const content = `${JSON.stringify({ form: slip, assignment, person, course, set, answers: given.map(({ answer }) => answer) }, null, 2)}\n`;
    const name = `slip-${assignment}-${person}.json`;
    download(name, content);
    unsaved = false;
    text.value = content;
    copy.hidden = false;
    const numbers = (kept) => questions.filter((_, place) => kept(given[place])).map((question) => question.dataset.number).join(", ");
    const open = numbers(({ answer, amiss }) => answer === "" && !amiss);
    const amiss = numbers(({ amiss }) => amiss);
    const answered = given.filter(({ answer }) => answer !== "").length;
    const said = [paragraph("verdict", message("assignment-saved", { name, answered, count: questions.length }))];
    if (open) said.push(paragraph("", message("assignment-open", { numbers: open })));
    if (amiss) said.push(paragraph("", message("assignment-amiss", { numbers: amiss })));
    if (open || amiss) said.push(paragraph("", message("assignment-again")));
    result.replaceChildren(...said);
  });
}

const letter = (place) => String.fromCharCode(65 + place);

// One for each form of an answer: what stands on the slip, and whether something was begun that is no answer.
const answers = {
  one: (inputs) => ({ answer: chosen(inputs) }),
  several: (inputs) => ({ answer: chosen(inputs) }),
  order(inputs) {
    const turns = inputs.map((input) => Number(input.value));
    const order = inputs.map((_, turn) => turns.indexOf(turn + 1));
    if (order.every((place) => place >= 0)) return { answer: order.map(letter).join(" ") };
    return { answer: "", amiss: inputs.some((input) => input.value !== "") };
  },
  drops: (inputs) => ({
    answer: inputs
      .map((input, place) => [letter(place), Number(input.value)])
      .filter(([, count]) => count > 0)
      .map(([bottle, count]) => `${bottle}${count}`)
      .join(" "),
  }),
  number: (inputs) => ({ answer: inputs[0].value.trim() }),
};

function chosen(inputs) {
  return inputs.flatMap((input, place) => (input.checked ? [letter(place)] : [])).join(" ");
}

function download(name, content) {
  const link = document.createElement("a");
  link.download = name;
  link.href = URL.createObjectURL(new Blob([content], { type: "application/json" }));
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

function paragraph(name, text) {
  const made = document.createElement("p");
  made.className = name;
  made.textContent = text;
  return made;
}
