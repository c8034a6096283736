// What follows from an answer: yours and the best side by side on that skin over time, the misconception, what to reread.

// A share in whole percent; 100% only for all of it.
function wholePercent(share) {
  return percent(share < 1 ? Math.min(share, 0.99) : 1);
}

function verdictOf({ credit, right }) {
  if (credit === 0) return WORDS.verdict.none;
  const word = right ? WORDS.verdict.right : WORDS.verdict.part;
  return `${word} ${WORDS.credit(wholePercent(credit))}`;
}

function showOutcome(into, view, told) {
  const parts = [made("h3", "outcome-title", WORDS.outcome)];
  parts[0].tabIndex = -1;
  const { yours, best } = told;
  if (view.form.kind !== "one" || !told.right) parts.push(made("p", "", WORDS.yoursSaid(yours.say)));
  if (best) parts.push(made("p", "", told.right ? WORDS.alsoGood(best.say) : `${WORDS.bestSaid(best.say)} ${told.best_consequence ?? ""}`));
  if (yours.seen.length > 0 || best?.seen.length > 0) parts.push(besideOf(view, yours, best));
  if (told.misconception) parts.push(beliefOf(told.misconception));
  for (const rule of new Set([...yours.restricted, ...(best?.restricted ?? [])])) {
    parts.push(made("p", "warning", made("strong", "", WORDS.restricted), ` ${rule}.`));
  }
  if (told.lesson) parts.push(made("p", "reread", `${WORDS.reread} `, lessonLink(told.lesson)));
  const { name, level, known, before } = told.skill;
  const shares = [wholePercent(known), wholePercent(before)];
  parts.push(made("p", "small", level === "mastered" ? WORDS.mastered(name, ...shares) : WORDS.known(name, WORDS.level[level], ...shares)));
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
  const rows = [[WORDS.you, yours.seen], [WORDS.best, best?.seen ?? []]].filter(([, seen]) => seen.length > 0);
  const count = Math.max(...rows.map(([, seen]) => seen.length));
  const grid = made("div", "beside");
  grid.dataset.rows = rows.length;
  grid.dataset.times = count;
  for (let at = 0; at < count; at += 1) {
    for (const [who, all] of rows) {
      const seen = all[at];
      if (!seen) continue;
      const when = seen.months === null ? "" : `, ${nameOfMonths(seen.months)}`;
      const notes = seen.from_goal === null ? [] : [WORDS.fromGoal(fixed(seen.from_goal, 1))];
      const figure = swatchOf(`${who}${when}`, seen, site, { notes });
      figure.classList.toggle("is-judged", seen.judged && count > 1);
      grid.append(figure);
    }
  }
  const title = made("h4", "", WORDS.overTime);
  return made("div", "beside-part", ...(count > 1 ? [title] : []), grid);
}

function beliefOf({ id, belief, truth }) {
  const link = made("a", "", WORDS.beliefMore);
  link.href = COURSE.links.misconceptions[id];
  const part = (term, ...content) => made("div", "", made("dt", "", term), made("dd", "", ...content));
  return made("dl", "belief", part(WORDS.belief, made("q", "", belief)), part(WORDS.truth, `${truth} `, link));
}

const COLOUR_FAMILIES = ["foresight", "hindsight", "light", "skin"];

function worthOf(view, told) {
  const list = made("ol", "outcomes");
  told.worth.forEach(({ say: said, credit, why }, place) => {
    const head = made("p", "outcome-head", made("strong", "", view.form.kind === "order" ? String(place + 1) : letterOf(place)), ` ${said} `);
    if (credit !== null) head.append(made("span", "outcome-credit", WORDS.worthCredit(wholePercent(credit))));
    list.append(made("li", "", head, made("p", "", why)));
  });
  const rest = [];
  if (told.proof) rest.push(made("p", "small", COLOUR_FAMILIES.includes(view.family) ? WORDS.proofColours(told.proof) : WORDS.proofMixes(told.proof)));
  rest.push(made("p", "small", WORDS.source(told.source, view.drill, view.number)));
  return made("details", "", made("summary", "", WORDS.worth), list, ...rest);
}
