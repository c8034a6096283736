// The controls: what they show of a case, and what they change in it.

// Sliders of the skin run by ratio, since the eye does.
function ratioOf(name, value) {
  const [least, most] = COURSE.skin_sliders[name];
  return Math.round((1000 * Math.log(Math.max(value, least) / least)) / Math.log(most / least));
}

function valueOf(name, position) {
  const [least, most] = COURSE.skin_sliders[name];
  return Number((least * (most / least) ** (position / 1000)).toPrecision(3));
}

const SKIN_NUMBERS = ["melanin", "blood", "background"];
const IN_WORDS = {
  melanin: (value) => message("bench-of-epidermis", { share: percent(value) }),
  blood: (value) => message("bench-of-dermis", { share: percent(value) }),
  background: (value) => message("bench-times-typical", { number: short(value) }),
  depth: (value) => message("screen-in-mm", { number: short(value) }),
  thickness: (value) => message("screen-in-mm", { number: short(value) }),
  load: (value) => message("bench-of-full-pass", { number: short(value) }),
  coverage: (value) => percent(value),
  touch_up: (value) => (value > 0 ? message("bench-touch-up-after", { age: age(value, "-after") }) : message("bench-touch-up-none")),
  age: (value) => message("screen-old", { age: age(value) }),
};
const PLACED = { depth: "depth_mm", thickness: "thickness_mm", load: "load", coverage: "coverage" };

function showSlider(id, kind, position, value) {
  const slider = byId(id);
  if (slider !== document.activeElement || Number(slider.value) !== Number(position)) slider.value = position;
  const words = IN_WORDS[kind](value);
  slider.setAttribute("aria-valuetext", words);
  say(byId(`${id}_value`), words);
}

class Controls {
  // `changed` is called after each change of `this.state`.
  constructor(state, changed) {
    this.state = state;
    this.changed = changed;
    this.form = byId("controls");
    this.rows = [...document.querySelectorAll(".drop-row")];
    this.lists = [...document.querySelectorAll(".drop-line")];
    this.form.addEventListener("submit", (event) => event.preventDefault());
    this.bindSkin();
    this.bindPlacement();
    this.bindMix();
    this.bindOld();
    this.bindGoal();
    for (const name of ["sun", "oil", "aftercare"]) this.on(name, (value) => (this.state[name] = value));
    for (const name of ["months", "light", "technique"]) {
      for (const input of document.querySelectorAll(`input[name="${name}"]`)) {
        input.addEventListener("change", () => this.set(() => this.choose(name, input.value)));
      }
    }
    this.on("most_bottles", (value) => (this.state.mostBottles = Number(value)));
    this.on("most_drops", (value) => (this.state.mostDrops = Number(value)));
  }

  set(change) {
    change();
    this.show();
    this.changed();
  }

  on(id, change, event = "input") {
    const input = byId(id);
    input.addEventListener(event, () => this.set(() => change(input.value)));
  }

  replace(state) {
    this.state = state;
    this.oldShown = null;
    this.openFilled();
    this.show();
    this.changed();
  }

  choose(name, value) {
    if (name === "months") this.state.months = Number(value);
    else if (name === "light") this.state.light = value;
    else Object.assign(this.state, { technique: value, placement: { ...techniqueOf(value).placement } });
  }

  bindSkin() {
    this.on("client", (id) => {
      this.become(withClient(this.state, id));
      this.oldShown = null;
    });
    for (const name of ["phototype", "undertone", "redness"]) {
      this.on(name, (value) => Object.assign(this.state, { [name]: value, melanin: null, blood: null, background: null }));
    }
    this.on("site", (value) => this.become(withSite(this.state, value)));
    for (const name of SKIN_NUMBERS) this.on(name, (position) => (this.state[name] = valueOf(name, Number(position))));
    byId("scar").addEventListener("change", ({ target }) => this.set(() => (this.state.scar = target.checked)));
    byId("skin_back").addEventListener("click", () => this.set(() => Object.assign(this.state, { melanin: null, blood: null, background: null })));
  }

  // Another case; whoever does not see it is told that another mix is in the bottle.
  become(state) {
    const { site, mix } = state;
    say(byId("mix_note"), mix === this.state.mix ? "" : message("bench-mix-instead", { site: message(`bench-site-${site}`), mix: mixInWords(mix) }));
    this.state = state;
  }

  bindPlacement() {
    this.on("touch_up", (value) => (this.state.touchUp = Number(value)));
    for (const [id, key] of Object.entries(PLACED)) this.on(id, (value) => (this.state.placement[key] = Number(value)));
  }

  bindMix() {
    for (const row of this.rows) {
      const { bottle } = row.dataset;
      const input = row.querySelector("input");
      const put = (count) => {
        this.set(() => (this.state.mix = { ...this.state.mix, [bottle]: Math.min(MOST_DROPS, Math.max(0, count)) }));
        this.noteMost(row, count > MOST_DROPS);
      };
      input.addEventListener("input", () => {
        if (/^\d+$/.test(input.value)) put(Number(input.value));
      });
      input.addEventListener("change", () => put(Math.round(Number(input.value)) || 0));
      for (const button of row.querySelectorAll("button")) {
        button.addEventListener("click", () => put((this.state.mix[bottle] ?? 0) + Number(button.dataset.step)));
      }
    }
    byId("mix_empty").addEventListener("click", () => this.set(() => (this.state.mix = {})));
    this.openFilled();
  }

  // Says in a bottle's row, and to whoever does not see it, that no further drop was taken.
  noteMost(row, asked) {
    this.note?.remove();
    this.note = null;
    const text = asked ? message("bench-most-reached", { name: bottleOf(row.dataset.bottle)?.name ?? "", count: MOST_DROPS }) : "";
    say(byId("mix_note"), text);
    if (!asked) return;
    this.note = made("p", "drop-note", text);
    this.note.setAttribute("aria-hidden", "true");
    row.append(this.note);
  }

  // What is in the mix stands open, and in sight where its list scrolls.
  openFilled() {
    const filled = this.rows.filter((row) => this.state.mix[row.dataset.bottle] > 0);
    for (const row of filled.reverse()) {
      const list = row.parentNode;
      row.closest("details").open = true;
      list.scrollTop = row.offsetTop - list.offsetTop;
    }
  }

  bindOld() {
    byId("old_add").addEventListener("click", () => {
      const bottle = COURSE.shelf.bottles.find((known) => !known.modifier);
      if (!bottle || this.state.existing.length >= MOST_OLD) return;
      this.set(() => this.state.existing.push({ mix: { [bottle.id]: 1 }, placement: { ...techniqueOf("both").placement }, months: 36 }));
      byId(`old_${this.state.existing.length - 1}_what`)?.focus();
    });
  }

  bindGoal() {
    this.on("goal", (id) => {
      if (!id) this.state.ownGoal = { lab: [...goalOf(this.state).lab], tolerance: goalOf(this.state).tolerance };
      this.state.goal = id;
    });
    const own = [["goal_l", 0, 0, 100], ["goal_a", 1, -60, 60], ["goal_b", 2, -60, 60]];
    for (const [id, place, least, most] of own) {
      this.on(id, (value) => {
        if (value !== "" && within(Number(value), [least, most])) this.state.ownGoal.lab[place] = Number(value);
      }, "change");
    }
    this.on("goal_tolerance", (value) => {
      if (within(Number(value), [0.5, 20])) this.state.ownGoal.tolerance = Number(value);
    }, "change");
  }

  // Writes the case into the controls.
  show() {
    const { state } = this;
    for (const name of ["client", "phototype", "undertone", "redness", "site", "sun", "oil", "aftercare", "goal"]) byId(name).value = state[name];
    byId("scar").checked = state.scar;
    showSlider("touch_up", "touch_up", state.touchUp, state.touchUp);
    byId("most_bottles").value = state.mostBottles;
    byId("most_drops").value = state.mostDrops;
    for (const name of ["months", "light", "technique"]) {
      for (const input of document.querySelectorAll(`input[name="${name}"]`)) input.checked = input.value === String(state[name]);
    }
    for (const [id, key] of Object.entries(PLACED)) showSlider(id, id, state.placement[key], state.placement[key]);
    for (const row of this.rows) {
      const count = state.mix[row.dataset.bottle] ?? 0;
      const input = row.querySelector("input");
      if (Number(input.value) !== count || (input.value === "" && input !== document.activeElement)) input.value = count;
      row.classList.toggle("is-in", count > 0);
      row.querySelector('[data-step="-1"]').setAttribute("aria-disabled", String(count === 0));
      row.querySelector('[data-step="1"]').setAttribute("aria-disabled", String(count >= MOST_DROPS));
    }
    say(byId("mix_now"), hasMix(state) ? capitalised(mixInWords(state.mix)) : message("bench-mix-nothing"));
    this.showSite();
    this.showClient();
    this.showOld();
    const own = !state.goal;
    byId("own_goal").hidden = !own;
    const { lab, tolerance } = goalOf(state);
    [["goal_l", lab[0]], ["goal_a", lab[1]], ["goal_b", lab[2]], ["goal_tolerance", tolerance]].forEach(([id, value]) => (byId(id).value = value));
  }

  // Bottles that are meant for the site come first, in each list and of the lists; the others say what they are meant for.
  showSite() {
    const { site } = this.state;
    if (this.siteShown === site) return;
    const meant = (row) => isMeantFor(bottleOf(row.dataset.bottle), site);
    const meantFirst = (all, isMeant) => [...all.filter(isMeant), ...all.filter((one) => !isMeant(one))];
    const lists = this.lists.map((list) => ({ list, rows: this.rows.filter((row) => list.contains(row)) }));
    for (const { list, rows } of lists) {
      list.querySelector("ul").append(...meantFirst(rows, meant));
      for (const row of rows) row.querySelector(".drop-site")?.toggleAttribute("hidden", meant(row));
    }
    const inOrder = meantFirst(lists, ({ rows }) => rows.some(meant)).map(({ list }) => list);
    this.lists[0]?.parentNode.append(...inOrder);
    // The page stands as it was made until another site is chosen.
    if (this.siteShown || site !== "brow") {
      inOrder.forEach((list, place) => (list.open = place === 0));
      this.openFilled();
    }
    this.siteShown = site;
  }

  showClient() {
    if (this.clientShown === this.state.client) return;
    this.clientShown = this.state.client;
    const client = clientOf(this.state.client);
    const about = client ? [made("p", "small", client.about), made("p", "case-wish", made("q", "", client.wish))] : [];
    for (const { note, caution, href } of client?.health ?? []) {
      const link = made("a", "", caution);
      link.href = href;
      about.push(made("p", "warning", made("strong", "", message("bench-caution")), " ", ...around("bench-caution-see", "caution", link, { note })));
    }
    byId("client_about").replaceChildren(...about);
  }

  // Tells the whole case in words, for paper, where there are no controls.
  tell() {
    const { state } = this;
    const into = (name, text) => say(document.querySelector(`[data-told="${name}"]`), text);
    const chosen = (id) => byId(id).selectedOptions[0]?.textContent.trim() ?? "";
    const labelled = (id, value) => `${document.querySelector(`label[for="${id}"]`).textContent} ${IN_WORDS[id](value)}`;
    const placed = (placement, ids) => ids.map((id) => labelled(id, placement[PLACED[id]])).join(", ");
    const restricted = restrictionsOf(state.mix).map((text) => `${message("screen-restricted")} ${text}`);
    into("mix", [hasMix(state) ? capitalised(mixInWords(state.mix)) : message("bench-mix-nothing"), ...restricted].join(". "));
    const scar = state.scar ? [byId("scar").parentNode.textContent.trim()] : [];
    const skin = ["phototype", "undertone", "redness", "site"].map((id) => `${document.querySelector(`label[for="${id}"]`).textContent} ${chosen(id)}`);
    const numbers = SKIN_NUMBERS.filter((name) => state[name] !== null).map((name) => labelled(name, state[name]));
    into("client", [...(state.client ? [chosen("client")] : []), ...skin, ...numbers, ...scar].join("; "));
    const old = state.existing.map((work) => message("bench-old-told", {
      what: capitalised(oldInWords(work)), age: IN_WORDS.age(work.months), placed: placed(work.placement, Object.keys(PLACED)),
    }));
    into("old", old.join(". ") || message("bench-old-none"));
    const technique = document.querySelector('input[name="technique"]:checked').parentNode.textContent.trim();
    into("placed", `${technique}; ${placed(state.placement, Object.keys(PLACED))}`);
    const wear = message("bench-sun-and-care", Object.fromEntries(["sun", "oil", "aftercare"].map((id) => [id, `${document.querySelector(`label[for="${id}"]`).textContent} ${chosen(id)}`])));
    into("wear", `${wear}; ${labelled("touch_up", state.touchUp)}`);
    const { name, lab, tolerance } = goalOf(state);
    into("goal", `${name}, ${labInWords(lab)}; ${message("screen-within", { tolerance: short(tolerance, 1) })}`);
  }

  // The list of old work is made anew only when works come or go.
  showOld() {
    const { existing, client } = this.state;
    say(byId("old_count"), existing.length === 0 ? message("bench-old-none") : message("bench-old-count", { count: existing.length }));
    byId("old_add").disabled = existing.length >= MOST_OLD;
    const key = JSON.stringify([client, existing.map((work) => Object.keys(work.mix ?? work.colourants))]);
    if (key !== this.oldShown) {
      this.oldShown = key;
      byId("old_list").replaceChildren(...existing.map((work, place) => this.oldRow(work, place)));
    }
    existing.forEach((work, place) => {
      showSlider(`old_${place}_age`, "age", work.months, work.months);
      showSlider(`old_${place}_depth`, "depth", work.placement.depth_mm, work.placement.depth_mm);
      showSlider(`old_${place}_load`, "load", work.placement.load, work.placement.load);
    });
  }

  oldRow(work, place) {
    const row = made("fieldset", "old", made("legend", "", message("bench-old-number", { number: place + 1 })));
    const told = clientOf(this.state.client)?.existing.find((old) => JSON.stringify(old.work.colourants ?? old.work.mix) === JSON.stringify(work.colourants ?? work.mix))?.note;
    if (told) row.append(made("p", "small", told));
    const what = made("select");
    what.id = `old_${place}_what`;
    const single = work.mix && Object.keys(work.mix).length === 1 ? Object.keys(work.mix)[0] : "";
    if (!single) what.append(new Option(oldInWords(work), ""));
    for (const { id, name } of COURSE.shelf.bottles) what.append(new Option(name, id));
    what.value = single;
    what.addEventListener("input", () => this.set(() => {
      if (!what.value) return;
      delete work.colourants;
      work.mix = { [what.value]: 1 };
    }));
    const label = made("label", "", message("bench-old-made-of"));
    label.htmlFor = what.id;
    row.append(made("div", "choice", label, what));
    const slider = (kind, name, least, most, step, put) => {
      const id = `old_${place}_${kind}`;
      const [input, output, words] = [made("input"), made("output"), made("label", "", name)];
      Object.assign(input, { type: "range", id, min: least, max: most, step });
      words.htmlFor = id;
      output.id = `${id}_value`;
      input.addEventListener("input", () => this.set(() => put(Number(input.value))));
      row.append(made("div", "slider", words, output, input));
    };
    slider("age", message("bench-old-age"), 0, 240, 1, (value) => (work.months = value));
    slider("depth", message("bench-depth"), 0.05, 1, 0.01, (value) => (work.placement.depth_mm = value));
    slider("load", message("bench-load"), 0, 2.5, 0.05, (value) => (work.placement.load = value));
    const remove = made("button", "", message("bench-old-remove"));
    remove.type = "button";
    remove.setAttribute("aria-label", message("bench-old-remove-number", { number: place + 1 }));
    remove.addEventListener("click", () => {
      this.set(() => this.state.existing.splice(place, 1));
      byId("old_add").focus();
    });
    row.append(made("p", "buttons", remove));
    return row;
  }

  // What only the engine knows: the numbers behind the words for a skin, and restrictions.
  showAnswers(survey) {
    for (const name of SKIN_NUMBERS) showSlider(name, name, ratioOf(name, survey.skin[name]), survey.skin[name]);
    // Of a lip, an areola or a scar the angle of skin types would say something else.
    byId("skin_angle").hidden = this.state.scar || ["lip", "areola"].includes(this.state.site);
    say(byId("skin_angle"), message("bench-angle", { degrees: fixed(survey.ita_degrees, 0) }));
    const warnings = restrictionsOf(this.state.mix);
    if (warnings.join("\n") !== this.warningsShown) {
      this.warningsShown = warnings.join("\n");
      byId("mix_warnings").replaceChildren(...warnings.map((text) => made("p", "warning", made("strong", "", message("screen-restricted")), ` ${text}`)));
    }
  }
}
