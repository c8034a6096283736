// "What would be best": every mix tried by all engines together, and the first of them to be taken over.

// Asks the pool in so many shares that no engine is busy for long when the case changes meanwhile.
async function rank(pool, request) {
  const of = pool.size * (request.search.bottles > 2 ? 8 : 2);
  const share = (_, place) => pool.ask("ranking", { case: request, share: { place, of } });
  const shares = await Promise.all(Array.from({ length: of }, share));
  return pool.ask("ranking", { case: request, shares });
}

function showRanking(state, ranking, take) {
  const { search, first, own } = ranking;
  const said = [`${capitalised(search.words)}.`];
  if (own) {
    const place = own.nearer === 0 ? "No mix tried comes nearer than yours" : `${own.nearer} of ${search.mixes} mixes come nearer than yours`;
    said.push(`${place} (ΔE00 ${fixed(own.delta_e_2000, 1)}).`);
  }
  said.push(`Judged ${judgedInWords(state)}.`);
  say(byId("best_words"), said.join(" "));
  const head = made("tr", "", ...["Place", "Mix", "ΔE00 from the goal", "L* a* b*", ""].map((text, place) => {
    const cell = made(text ? "th" : "td", place === 2 ? "number" : "", text);
    if (text) cell.scope = "col";
    return cell;
  }));
  const rows = first.map((tried, place) => {
    const words = mixInWords(tried.mix);
    const heading = made("th", "", String(place + 1));
    heading.scope = "row";
    const button = made("button", "", "Take it");
    button.type = "button";
    button.setAttribute("aria-label", `Take it: ${words}`);
    button.addEventListener("click", () => take(tried.mix));
    const row = made("tr", "", heading, made("td", "", words), made("td", "number", fixed(tried.delta_e_2000, 1)), made("td", "lab", tried.lab.map((number) => fixed(number, 1)).join("  ")), made("td", "", button));
    row.dataset.error = JSON.stringify(tried.delta_e_2000);
    return row;
  });
  byId("best").replaceChildren(made("thead", "", head), made("tbody", "", ...rows));
}

function mixInWords(mix) {
  const entries = Object.entries(mix).filter(([, count]) => count > 0).sort(([, one], [, other]) => other - one);
  return entries.map(([id, count]) => `${drops(count)} ${bottleOf(id)?.name ?? id}`).join(", ");
}
