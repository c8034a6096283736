// "What would be best": every mix ranked by the engine, and the first of them to be taken over.

function showRanking(state, ranking, take) {
  const { mixes, first, own } = ranking;
  const said = [`${rankingInWords(ranking)}.`];
  if (own) {
    const distance = fixed(own.delta_e_2000, 1);
    said.push(own.nearer === 0 ? message("bench-own-best", { distance }) : message("bench-own-nearer", { nearer: own.nearer, mixes, distance }));
  }
  said.push(message("bench-judged-at", { judged: judgedInWords(state) }));
  if (touchUpInWords(state).length > 0) said.push(message("bench-best-touch-up"));
  say(byId("best_words"), said.join(" "));
  const head = made("tr", "", ...["place", "mix", "distance", "lab-head", ""].map((name) => (name ? message(`bench-${name}`) : "")).map((text, place) => {
    const cell = made(text ? "th" : "td", place === 2 ? "number" : "", text);
    if (text) cell.scope = "col";
    return cell;
  }));
  const rows = first.map((tried, place) => {
    const words = mixInWords(tried.mix);
    const heading = made("th", "", String(place + 1));
    heading.scope = "row";
    const button = made("button", "", message("bench-take"));
    button.type = "button";
    button.setAttribute("aria-label", message("bench-take-mix", { mix: words }));
    button.addEventListener("click", () => take(tried.mix));
    const row = made("tr", "", heading, made("td", "", words), made("td", "number", fixed(tried.delta_e_2000, 1)), made("td", "lab", leftToRight(labCell(tried.lab))), made("td", "", button));
    row.dataset.error = JSON.stringify(tried.delta_e_2000);
    return row;
  });
  byId("best").replaceChildren(made("thead", "", head), made("tbody", "", ...rows));
}

function labCell([l, a, b]) {
  return message("bench-lab-cell", { l: fixed(l, 1), a: fixed(a, 1), b: fixed(b, 1) });
}

// Numbers that keep their order below a heading, whichever way a language runs.
function leftToRight(text) {
  return Object.assign(made("bdi", "", text), { dir: "ltr" });
}

// What was found, without a full stop.
function rankingInWords(ranking) {
  const { mixes, first: [best], near_ties: ties, miss, gap } = ranking;
  const [mix, distance] = [mixInWords(best.mix), fixed(best.delta_e_2000, 1)];
  const said = [];
  if (miss) {
    const { l, a, b } = miss.shift;
    const ways = inARow(senses([l, a, b], ranking.just_visible).map((sense) => message(`bench-excess-${sense}`)));
    said.push(message("bench-best-missed", { mixes, mix, distance, beyond: fixed(miss.beyond, 1), ways, l: signed(l), a: signed(a), b: signed(b) }));
  } else {
    said.push(message("bench-best-reached", { mixes, mix, distance }));
  }
  if (ties > 0) said.push(message("bench-best-ties", { count: ties }));
  // Rounded down: never more than it is.
  if (gap !== null) said.push(message(ties > 0 ? "bench-best-gap-further" : "bench-best-gap", { distance: fixed(Math.floor(gap * 10) / 10, 1) }));
  const untouched = ranking.untouched_delta_e_2000;
  if (untouched <= best.delta_e_2000) said.push(message("bench-best-untouched", { distance: fixed(untouched, 1) }));
  return said.join("; ");
}

function mixInWords(mix) {
  const entries = Object.entries(mix).filter(([, count]) => count > 0).sort(([, one], [, other]) => other - one);
  return entries.map(([id, count]) => message("screen-drops-of", { count, name: bottleOf(id)?.name ?? id })).join(", ");
}
