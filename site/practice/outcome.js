// What follows from an answer: yours and the best side by side on that skin over time, the misconception, what to reread.

function verdictOf({ credit, right }) {
  if (credit === 0) return message("practice-nothing");
  return message(right ? "practice-right" : "practice-part", { share: wholePercent(credit) });
}

function showOutcome(into, view, told) {
  const parts = [made("h3", "outcome-title", message("practice-outcome"))];
  parts[0].tabIndex = -1;
  const { yours, best } = told;
  if (view.form.kind !== "one" || !told.right) parts.push(made("p", "", message("practice-yours-said", { said: yours.say })));
  // Of a number the verdict may have said it already.
  const said = told.best_consequence && told.consequence.includes(told.best_consequence);
  if (best && !said) parts.push(made("p", "", told.right ? message("practice-also-good", { said: best.say }) : `${message("practice-best-said", { said: best.say })} ${told.best_consequence ?? ""}`));
  if (yours.seen.length > 0 || best?.seen.length > 0) parts.push(besideOf(view, yours, best));
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

// Pairs in order of time: two columns on a phone, two rows where there is room.
function besideOf(view, yours, best) {
  const site = view.case?.site ?? "brow";
  const rows = [[message("practice-yours"), yours.seen], [message("practice-best"), best?.seen ?? []]].filter(([, seen]) => seen.length > 0);
  const count = Math.max(...rows.map(([, seen]) => seen.length));
  const grid = made("div", "beside");
  grid.dataset.rows = rows.length;
  grid.dataset.times = count;
  for (let at = 0; at < count; at += 1) {
    for (const [who, all] of rows) {
      const seen = all[at];
      if (!seen) continue;
      const label = seen.months === null ? who : message("practice-at", { who, time: nameOfTime(seen.months) });
      const notes = seen.from_goal === null ? [] : [message("screen-from-goal", { distance: fixed(seen.from_goal, 1) })];
      const figure = swatchOf(label, seen, site, { notes });
      figure.classList.toggle("is-judged", seen.judged && count > 1);
      grid.append(figure);
    }
  }
  const title = made("h4", "", message("practice-over-time"));
  return made("div", "beside-part", ...(count > 1 ? [title] : []), grid);
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
