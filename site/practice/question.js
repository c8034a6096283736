// A question on the page: the case, and what it is answered with. `readers` make the answer that the engine is asked about.

function swatchOf(label, { colour, bare_skin, around, words, light }, site, { notes = [], bare = false, here = light, technique = "powder-with-strokes" } = {}) {
  const swatch = new Swatch(label);
  const inLight = here === "D65" ? [] : [message("screen-in-light", { light: lightInWords(here, "-in") })];
  swatch.paint({ colour, skin: bare_skin, around, words, site, technique, bare, notes: [...inLight, ...notes] });
  return swatch.figure;
}

function caseOf(view) {
  const { name, light, site, bare, around, now: today, goal } = view;
  const link = made(view.skin ? "a" : "span", "", message("practice-person", { name, age: view.age }));
  // Where the skin is asked for, nothing leads to where it is told.
  if (view.skin) link.href = COURSE.links.clients[view.client];
  const facts = made("dl", "facts");
  const fact = (term, text) => facts.append(made("div", "", made("dt", "", term), made("dd", "", text)));
  if (view.skin) fact(message("practice-skin"), skinInWords(view.skin));
  fact(message("practice-hair"), view.hair);
  if (view.placement) fact(message("practice-placement"), placementInWords(view.placement));
  if (view.months !== null) fact(message("practice-judged"), judgedInWords({ months: view.months, light }));
  for (const old of view.old_work) fact(message("practice-old"), message("practice-old-told", { age: capitalised(age(old.months)), note: old.note }));
  for (const note of view.health.length ? view.health : [message("practice-health-nothing")]) fact(message("practice-health"), note);
  const swatches = made("div", "swatches");
  if (today) swatches.append(swatchOf(message("practice-work-now", { name }), today, site, { technique: view.technique_now }));
  else swatches.append(bareOf(view));
  for (const exhibit of view.exhibits) swatches.append(swatchOf(exhibit.label, exhibit, site));
  if (goal) {
    const seen = { ...goal, bare_skin: bare, around, light };
    swatches.append(swatchOf(message("screen-goal", { name: goal.name }), seen, site, { notes: [message("screen-within", { tolerance: fixed(goal.tolerance, 1) })] }));
  }
  const wish = view.wish ? [made("p", "case-wish", made("q", "", view.wish))] : [];
  return made("div", "case", made("p", "case-about", made("strong", "", link, "."), view.skin ? ` ${view.about}` : ""), ...wish, facts, swatches);
}

// The place without work.
function bareOf({ name, light, site, bare, around, bare_label: label, bare_words: words }) {
  return swatchOf(label ?? message("practice-skin-now", { name, site }), { colour: bare, bare_skin: bare, around, words, light }, site, { bare: true });
}

function skinInWords([phototype, undertone, redness]) {
  const values = { phototype, undertone: message(`screen-undertone-${undertone}`), redness: message(`screen-redness-${redness}`) };
  return message("practice-skin-words", values);
}

function placementInWords({ depth_mm, thickness_mm, load, coverage }) {
  const values = { depth: short(depth_mm), thickness: short(thickness_mm), share: percent(coverage) };
  return load === 1 ? message("practice-placed-full", values) : message("practice-placed", { ...values, load: short(load) });
}

// A swatch whose words and numbers stand beside it already.
function pictureOf({ colour, bare_skin, around, light }, site) {
  const drawing = new Drawing();
  drawing.paint(bare_skin, colour, site, "powder-with-strokes", around);
  drawing.svg.setAttribute("aria-hidden", "true");
  const notes = [...(light === "D65" ? [] : [message("screen-in-light", { light: lightInWords(light, "-in") })]), ...outsideNotes(colour, around ?? bare_skin)];
  return made("span", "swatch", drawing.svg, ...notes.map((note) => made("i", "", note)));
}

const letterOf = (place) => String.fromCharCode(65 + place);

function optionOf(kind, place, option, site) {
  const input = Object.assign(made("input"), { type: kind, name: "option", value: place });
  const label = made("label", "option", input, " ", made("span", "option-letter", letterOf(place)), " ", made("span", "", option.say));
  if (option.picture) label.append(" ", pictureOf(option.picture, site));
  return label;
}

// For each form: what it is answered with, and how the answer is read; `null` where there is none yet.
const forms = {
  one({ options }, site) {
    const pictured = options.some((option) => option.picture);
    const list = made("div", pictured ? "options pictured" : "options", ...options.map((option, place) => optionOf("radio", place, option, site)));
    const read = () => {
      const chosen = list.querySelector("input:checked");
      return chosen ? { one: Number(chosen.value) } : null;
    };
    return { parts: [list], read };
  },

  several({ options }, site) {
    const list = made("div", "options", ...options.map((option, place) => optionOf("checkbox", place, option, site)));
    const read = () => {
      const chosen = [...list.querySelectorAll("input:checked")].map((input) => Number(input.value));
      return chosen.length > 0 ? { several: chosen } : null;
    };
    return { parts: [made("p", "how", message("practice-several")), list], read };
  },

  order({ steps }) {
    const list = made("ol", "steps");
    const said = made("p", "unseen");
    said.setAttribute("role", "status");
    const items = () => [...list.children];
    const move = (item, by, button) => {
      const all = items();
      const to = all.indexOf(item) + by;
      if (to < 0 || to >= all.length) return;
      if (by < 0) all[to].before(item);
      else all[to].after(item);
      mark();
      button.focus();
      say(said, message("practice-now-step", { step: steps[item.dataset.place], place: to + 1, count: all.length }));
    };
    const mark = () => {
      const all = items();
      all.forEach((item, at) => {
        const [up, down] = item.querySelectorAll("button");
        up.setAttribute("aria-disabled", at === 0);
        down.setAttribute("aria-disabled", at === all.length - 1);
      });
    };
    steps.forEach((step, place) => {
      const button = (text, name, by) => {
        const made_ = Object.assign(made("button", "step-move", text), { type: "button" });
        made_.setAttribute("aria-label", name);
        made_.addEventListener("click", () => move(item, by, made_));
        return made_;
      };
      const item = made("li", "step", made("span", "step-text", step), made("span", "step-moves", button("↑", message("practice-earlier", { step }), -1), button("↓", message("practice-later", { step }), 1)));
      item.dataset.place = place;
      list.append(item);
    });
    mark();
    return { parts: [made("p", "how", message("practice-order")), list, said], read: () => ({ order: items().map((item) => Number(item.dataset.place)) }) };
  },

  drops({ bottles, drops: count, modifier_drops: most }) {
    const sum = made("p", "drops-sum");
    sum.setAttribute("role", "status");
    const rows = bottles.map((bottle) => {
      const drawing = new Drawing();
      drawing.paint(bottle.colour, null);
      drawing.svg.setAttribute("aria-hidden", "true");
      const input = Object.assign(made("input"), { type: "number", min: 0, max: count, step: 1, value: 0, inputMode: "numeric" });
      input.setAttribute("aria-label", message("screen-drops-label", { name: bottle.name }));
      const button = (text, name, by) => {
        const made_ = Object.assign(made("button", "", text), { type: "button" });
        made_.setAttribute("aria-label", name);
        made_.addEventListener("click", () => {
          input.value = Math.min(count, Math.max(0, (Number(input.value) || 0) + by));
          tell();
        });
        return made_;
      };
      input.addEventListener("input", () => tell());
      const name = made("p", "", made("strong", "", bottle.name), bottle.modifier ? ` ${message("practice-modifier")}` : "");
      const text = made("div", "drop-text", name, made("p", "small", `${COURSE.bottles[bottle.id].words}, ${labInWords(bottle.colour.lab)}`));
      const counter = made("div", "drop-count", button("−", message("screen-drop-less", { name: bottle.name }), -1), input, button("+", message("screen-drop-more", { name: bottle.name }), 1));
      const row = made("li", "drop-row", made("div", "drop-chip", drawing.svg), text, counter);
      return { row, input, id: bottle.id };
    });
    const tell = () => {
      let counted = 0;
      for (const { row, input } of rows) {
        counted += Number(input.value) || 0;
        row.classList.toggle("is-in", Number(input.value) > 0);
      }
      say(sum, message("practice-drops-sum", { sum: counted, count }));
    };
    tell();
    const read = () => {
      const given = rows.map(({ id, input }) => [id, Math.min(1000, Math.max(0, Math.round(Number(input.value) || 0)))]).filter(([, taken]) => taken > 0);
      return given.length > 0 ? { drops: Object.fromEntries(given) } : null;
    };
    const list = made("ul", "drops", ...rows.map(({ row }) => row));
    return { parts: [made("p", "how", message("practice-drops-how", { count, most })), list, sum], read };
  },

  number({ name, unit }) {
    const input = Object.assign(made("input"), { type: "text", inputMode: "decimal", size: 8 });
    const label = made("label", "option", made("span", "", unit === "°" ? message("practice-number-degrees", { name }) : message("practice-number", { name, unit })), " ", input, made("span", "", unit));
    return { parts: [label], read: () => (input.value.trim() ? { written: input.value } : null) };
  },
};

// What is in the bottles that a question names, as worksheets tell it: closed, so that who knows them is not kept.
function bottlesOf({ bottles }) {
  const entries = bottles.map((id) => {
    const { name, about, recipe, words, colour, href, rules } = COURSE.bottles[id];
    const link = made("a", "", name);
    link.href = href;
    const drawing = new Drawing();
    drawing.paint(colour, null);
    drawing.svg.setAttribute("aria-hidden", "true");
    const text = [made("p", "", made("strong", "", link), ` ${about}`), made("p", "small", `${words}, ${labInWords(colour.lab)}`), made("p", "small", recipe)];
    const restricted = rules.map((rule) => made("p", "warning", made("strong", "", message("screen-restricted")), ` ${rule}.`));
    return made("li", "named-bottle", made("div", "drop-chip", drawing.svg), made("div", "drop-text", ...text, ...restricted));
  });
  const title = made("summary", "", message("practice-bottles", { count: bottles.length }));
  return made("details", "named-bottles", title, made("p", "small", message("practice-bottles-about")), made("ul", "", ...entries));
}

// Draws a question into the form; gives the reader of its answer.
function showQuestion(form, view) {
  const site = view.case?.site ?? "brow";
  const { parts, read } = forms[view.form.kind](view.form, site);
  const answer = made("fieldset", "", made("legend", "", view.ask), ...parts);
  const content = view.case ? [caseOf(view.case), answer] : [answer];
  if (view.bottles.length > 0) content.push(bottlesOf(view));
  if (view.case) {
    const link = made("a", "", message("practice-caution"));
    link.href = COURSE.links.cautions;
    content.push(made("p", "small", ...around("practice-health-first", "caution", link)));
  }
  form.replaceChildren(...content);
  return { read, close: () => (answer.disabled = true), first: () => answer.querySelector("input, button") };
}
