// What follows from an answer: yours and the best side by side, in words and on that skin over time, the misconception, what to reread.

function verdictOf({ credit, right }) {
  if (credit === 0) return message("practice-nothing");
  return message(right ? "practice-right" : "practice-part", { share: wholePercent(credit) });
}

function showOutcome(into, view, told) {
  const parts = [made("h3", "outcome-title", message("practice-outcome"))];
  parts[0].tabIndex = -1;
  const { yours, best } = told;
  parts.push(answersOf(view, told));
  // A number is about the skin that is shown, whatever was answered.
  if (view.form.kind === "number" && view.case) parts.push(gridOf([[bareOf(view.case)]]));
  if (yours.seen.length > 0 || best?.seen.length > 0) parts.push(...besideOf(view, told));
  if (told.misconception) parts.push(beliefOf(told.misconception));
  for (const rule of new Set([...yours.restricted, ...(best?.restricted ?? [])])) {
    parts.push(made("p", "warning", made("strong", "", message("screen-restricted")), ` ${rule}.`));
  }
  if (told.lesson) parts.push(made("p", "reread", ...around("practice-reread", "lesson", lessonLink(told.lesson))));
  const { name, level, known, before } = told.skill;
  parts.push(made("p", "small", message(`practice-now-${level}`, { name, share: wholePercent(known), before: wholePercent(before) })));
  parts.push(worthOf(view, told));
  into.replaceChildren(...parts);
  return parts[0];
}

function lessonLink({ id, title }) {
  const link = made("a", "", title);
  link.href = COURSE.links.lessons[id];
  return link;
}

// Both answers in words; one entry where yours is the best.
function answersOf({ form }, { right, yours, best, best_consequence: follows, worth, tolerance }) {
  const list = made("dl", "sides");
  list.dataset.form = form.kind;
  const entry = (term, ...content) => list.append(made("div", "", made("dt", "", term), made("dd", "", ...content)));
  const saidOf = ({ say: all }) => wordsOf(form.kind, all, worth);
  if (form.kind === "number") {
    entry(message("practice-yours"), made("b", "", yours.say[0]));
    // Of a number, the right one comes first among what is worth something; the verdict has told how it comes about.
    entry(message("practice-right-number"), made("b", "", worth[0].say), " ", made("span", "small", message("practice-within", { tolerance })));
  } else {
    entry(message(right && !best ? "practice-yours-best" : "practice-yours"), ...saidOf(yours));
    if (best) entry(bestName(right), ...saidOf(best), ...(follows ? [made("p", "", follows)] : []));
  }
  return list;
}

const bestName = (right) => message(right ? "practice-also-good" : "practice-best");

// Options and statements with the letter that the question gave them, steps with their numbers.
function wordsOf(kind, all, worth) {
  if (kind === "order") return [made("ol", "", ...all.map((step) => made("li", "", step)))];
  const lettered = (said) => [...markOf(kind, worth.findIndex((known) => known.say === said)), said];
  return kind === "several" ? [made("ul", "", ...all.map((said) => made("li", "", ...lettered(said))))] : lettered(all[0]);
}

// Colours on that skin: at the same moments together. A colour that nothing leads to has one moment, and causes differ in age: both are shown
// there, and then over time by themselves.
function besideOf(view, told) {
  const { right, yours, best } = told;
  const alone = right && !best;
  const rows = [[message("practice-yours"), yours.seen], [bestName(right), best?.seen ?? []]].filter(([, seen]) => seen.length > 0).map(([who, seen]) => [who, view.case?.months === null ? untilJudged(seen) : seen]);
  const part = (title, shown) => made("div", "beside-part", made("h4", "", title), gridOf(momentsOf(view, shown)));
  // Where the best is to do no work, nobody should think that the other would have gone well.
  if (best && best.seen.length === 0) return [part(message("practice-not-to-do"), rows)];
  const lasting = rows.filter(([, seen]) => seen.length > 1);
  const ages = new Set(lasting.map(([, seen]) => seen.find((moment) => moment.judged)?.months));
  if (lasting.length === rows.length && ages.size < 2) return [part(alone ? message("practice-over-time-of", { who: message("practice-yours-best") }) : message("practice-over-time"), rows)];
  const judged = rows.map(([who, seen]) => [who, seen.filter((moment) => moment.judged)]);
  const once = alone ? message("practice-one-moment-of", { who: message("practice-yours-best") }) : message("practice-one-moment");
  return [part(once, judged), ...lasting.map((row) => part(message("practice-over-time-of", { who: row[0] }), [row]))];
}

// What has led to today, where it is today that is asked about.
function untilJudged(seen) {
  const today = seen.find((moment) => moment.judged)?.months ?? Infinity;
  return seen.filter(({ months }) => months === null || months <= today);
}

// For each moment, in order of time, the swatch of each row; where each has one alone they stand beside each other, however old.
function momentsOf(view, rows) {
  if (rows.every(([, all]) => all.length === 1)) return [rows.map(([who, [seen]]) => seenOf(view, who, seen, false))];
  const times = [...new Set(rows.flatMap(([, all]) => all.map(({ months }) => months)))].sort((one, other) => one - other);
  const atTime = ([who, all], time) => {
    const seen = all.find(({ months }) => months === time);
    return seen ? seenOf(view, who, seen, true) : null;
  };
  return times.map((time) => rows.map((row) => atTime(row, time)));
}

function seenOf(view, who, seen, marked) {
  const site = view.case?.site ?? "brow";
  // Where no work is to be placed, the question is about what is there now.
  const time = seen.judged && view.case?.months === null ? message("practice-today") : nameOfTime(seen.months);
  const notes = seen.from_goal === null ? [] : [message("screen-from-goal", { distance: fixed(seen.from_goal, 1) })];
  // A reading of bare skin is skin all over.
  const skin = view.family === "skin" ? { bare_skin: seen.colour } : {};
  const figure = swatchOf(message("practice-at", { who, time }), { ...seen, ...skin }, site, { notes, bare: view.family === "skin" });
  figure.classList.toggle("is-judged", seen.judged && marked);
  return figure;
}

// Moments in order of time, two columns on a phone, and rows where there is room; a gap where a row has nothing at a moment.
function gridOf(moments) {
  const grid = made("div", "beside", ...moments.flat().map((swatch) => swatch ?? made("span")));
  grid.dataset.rows = moments[0].length;
  grid.dataset.times = moments.length;
  return grid;
}

function beliefOf({ id, belief, truth }) {
  const link = made("a", "", message("practice-belief-more"));
  link.href = COURSE.links.misconceptions[id];
  const part = (term, ...content) => made("div", "", made("dt", "", term), made("dd", "", ...content));
  return made("dl", "belief", part(message("practice-belief"), made("q", "", belief)), part(message("practice-truth"), `${truth} `, link));
}

// Steps have their number; options the letter that the question gave them; mixes and numbers neither.
function markOf(kind, place) {
  if (kind === "order") return [made("b", "", String(place + 1)), " "];
  return kind === "one" || kind === "several" ? [made("b", "", letterOf(place)), " "] : [];
}

function worthOf(view, told) {
  const list = made("ol", "outcomes");
  told.worth.forEach(({ say: said, credit, why }, place) => {
    const head = made("p", "outcome-head", ...markOf(view.form.kind, place), `${said} `);
    if (credit !== null) head.append(made("i", "", message("practice-credit", { share: wholePercent(credit) })));
    list.append(made("li", "", head, made("p", "", why)));
  });
  const rest = [];
  if (told.proof) rest.push(made("p", "small", message("practice-proved", { proof: told.proof })));
  rest.push(made("p", "small", message("practice-source", { source: told.source, drill: view.drill, number: view.number })));
  return made("details", "", made("summary", "", message("practice-worth")), list, ...rest);
}
