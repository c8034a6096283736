// The bench itself. Each change is answered by the page's own engine in the next frame, after which the region of likely outcomes and
// the ranking are asked for beside the page; while changes follow each other, as when a slider is drawn, only once they pause. When the
// controls rest, the reading is said and the address is written.

// Milliseconds after which a further change is no longer of the same movement, without a change after which a movement pauses, after
// which the address is written (browsers refuse to write it hundreds of times in a few seconds), and after which the reading is read out.
const MOVING = 150;
const PAUSE = 24;
const WRITE = 200;
const SPEAK = 500;
// The field that the engine names where a search has too many mixes: the page offers no other limit of drops that it minds.
const TOO_MANY = "search.drops";

class Bench {
  constructor(ask, pool) {
    Object.assign(this, { ask, pool, region: null, turn: 0, changed: -Infinity });
    this.swatches = new Map();
    this.planes = PLANES.map((plane) => new Plane(plane));
    byId("planes").replaceChildren(...this.planes.map((plane) => plane.figure));
    bindEyes();
    this.controls = new Controls(this.read(), () => this.change());
    byId("link_copy").addEventListener("click", () => this.copyLink());
    byId("to_results").addEventListener("click", (event) => this.skip(event));
    byId("again").addEventListener("click", () => {
      trouble("");
      this.controls.replace(freshCase());
    });
    byId("all_details").addEventListener("toggle", () => this.showAll());
    addEventListener("hashchange", () => this.follow());
    this.controls.show();
    this.change();
  }

  // The address holds the case, so that it cannot hold a place of the page too.
  skip(event) {
    event.preventDefault();
    // The results are longer than a screen: they begin at its top.
    byId("bench_results").focus({ preventScroll: true });
    byId("bench_results").scrollIntoView();
  }

  get state() {
    return this.controls.state;
  }

  // The address was changed by hand or by going back.
  follow() {
    if (location.hash === this.written) return;
    this.controls.replace(this.read());
  }

  // The case in the address; what of it says nothing is told.
  read() {
    const { state, amiss } = readAddress(location.hash);
    trouble(amiss.length > 0 ? message("bench-link-amiss", { parts: [...new Set(amiss)].join(", ") }) : "");
    return state;
  }

  change() {
    this.region = null;
    this.turn += 1;
    this.pool.clear();
    const now = performance.now();
    this.moving = now - this.changed < MOVING;
    this.changed = now;
    if (!this.frame) this.frame = requestAnimationFrame(() => this.paint());
    for (const timer of [this.pausing, this.writing, this.speaking]) clearTimeout(timer);
    this.pausing = this.moving ? setTimeout(() => this.look(), PAUSE) : null;
    this.writing = setTimeout(() => this.showAddress(), WRITE);
    this.speaking = setTimeout(() => this.speak(), SPEAK);
  }

  // What is shown at once; after a single change the rest is asked for in the same frame.
  paint() {
    this.frame = null;
    this.show();
    if (!this.moving) this.look();
  }

  show() {
    performance.mark("bench-asked");
    try {
      this.survey = this.ask("survey", surveyRequestOf(this.state));
    } catch (error) {
      trouble(message("bench-no-case", { why: error.message }));
      return;
    }
    this.controls.showAnswers(this.survey);
    this.showTimes();
    this.showLights();
    this.showGoal();
    this.showPlanes();
    this.showAll();
    this.controls.tell();
    performance.measure("bench-painted", "bench-asked");
  }

  swatch(key, into, label, brief) {
    let swatch = this.swatches.get(key);
    if (!swatch) {
      swatch = new Swatch(label, brief);
      this.swatches.set(key, swatch);
    }
    if (swatch.figure.parentNode !== into) into.append(swatch.figure);
    return swatch;
  }

  // What one swatch shows, as the engine saw it.
  shown(seen, bare) {
    const { site, technique } = this.state;
    const words = bare ? toneAlone(seen.reading) : toneInWords(seen.reading);
    return { colour: { ...seen }, skin: seen.bare_skin, around: this.around(seen.light), words, site, technique, bare };
  }

  // The skin around the place under a light; null where the place has no edge.
  around(light) {
    return this.survey.around[LIGHTS.indexOf(light)] ?? null;
  }

  // What a swatch of the goal shows.
  wished() {
    const { state, survey } = this;
    return { colour: survey.goal, skin: survey.bare[0].bare_skin, around: this.around("D65"), words: depthInWords(survey.goal.reading), site: state.site, technique: state.technique };
  }

  showTimes() {
    const { state, survey } = this;
    const place = LIGHTS.indexOf(state.light);
    const row = byId("times");
    const bare = message("screen-bare", { site: state.site });
    this.swatch("bare", row, bare, message("bench-mark-skin", { site: state.site })).paint({ ...this.shown(survey.bare[place], true), name: bare });
    const now = this.swatch("today", row, message("bench-as-it-is"), message("bench-mark-now"));
    now.figure.hidden = survey.today.length === 0;
    if (survey.today.length > 0) now.paint(this.shown(survey.today[place]));
    survey.moments.forEach((moment) => {
      const swatch = this.swatch(`time ${moment.months}`, row, nameOfTime(moment.months), markOfTime(moment.months));
      swatch.paint(this.shown(moment.seen[place]));
      swatch.figure.classList.toggle("is-judged", moment.months === state.months);
    });
    // Last, where the eye can go from what is judged to what is wished.
    const goal = this.swatch("goal beside", row, message("bench-goal"), message("bench-mark-goal"));
    goal.paint({ ...this.wished(), name: message("screen-goal", { name: goalOf(state).name }) });
    row.append(goal.figure);
    row.dataset.swatches = survey.today.length > 0 ? 8 : 7;
    const judged = survey.moments.find((moment) => moment.months === state.months).seen[place];
    say(byId("sight_words"), [seenInWords(state, judged), ...touchUpInWords(state), goalInWords(state, judged)].join(" "));
  }

  showLights() {
    const { state, survey } = this;
    const moment = survey.moments.find(({ months }) => months === state.months);
    moment.seen.forEach((seen) => {
      const name = message("bench-time-in-light", { time: nameOfTime(state.months), light: lightInWords(seen.light) });
      const swatch = this.swatch(`light ${seen.light}`, byId("lights"), name);
      swatch.paint({ ...this.shown(seen), name, notes: [message("screen-from-goal", { distance: fixed(seen.delta_e_2000_to_goal, 1) })] });
      swatch.figure.classList.toggle("is-judged", seen.light === state.light);
    });
  }

  showGoal() {
    const { state, survey } = this;
    const { name, tolerance } = goalOf(state);
    this.swatch("goal", byId("goal_swatch"), "").paint({
      ...this.wished(),
      name: message("screen-goal", { name }),
      notes: [message("screen-within", { tolerance: short(tolerance, 1) }), message("screen-goal-tone", { site: state.site, tone: toneAlone(survey.goal.reading) })],
    });
  }

  showPlanes() {
    const { state, survey } = this;
    const place = LIGHTS.indexOf(state.light);
    const mark = (name, seen, shape, judged = false) => ({ name, lab: seen.lab, fill: paintOf(seen), shape, judged, star: !isShown(seen) });
    const marks = [mark(message("bench-mark-skin", { site: state.site }), survey.bare[place], "square")];
    if (survey.today.length > 0) marks.push(mark(message("bench-mark-now"), survey.today[place], "lozenge"));
    const trail = survey.moments.map((moment) => moment.seen[place].lab);
    survey.moments.forEach((moment) => marks.push(mark(markOfTime(moment.months), moment.seen[place], "round", moment.months === state.months)));
    marks.push(mark(message("bench-mark-goal"), survey.goal, "cross"));
    const words = marks.map(({ name, lab: [l, a, b] }) => message("bench-plane-mark", { name, l: fixed(l, 1), a: fixed(a, 1), b: fixed(b, 1) })).join("; ");
    for (const plane of this.planes) plane.paint({ marks, trail, goal: survey.goal, region: this.region?.outline, words });
  }

  showAll() {
    if (!byId("all_details").open || !this.survey) return;
    const { survey, state: { site, technique } } = this;
    const rows = [[message("screen-bare", { site }), survey.bare, true], ...(survey.today.length > 0 ? [[message("bench-as-it-is"), survey.today]] : [])];
    survey.moments.forEach((moment) => rows.push([nameOfTime(moment.months), moment.seen]));
    const head = (text, scope) => Object.assign(made("th", "", text), { scope });
    const cell = (seen, bare) => {
      const drawing = new Drawing();
      const around = this.around(seen.light);
      drawing.paint(seen.bare_skin, bare ? null : seen, site, technique, around);
      drawing.svg.setAttribute("aria-label", bare ? message("screen-bare", { site }) : toneInWords(seen.reading));
      const bareInWords = around ? toneAlone(seen.reading) : skinInPlainWords(seen);
      const words = made("span", "small", bare ? bareInWords : `${toneInWords(seen.reading)}; ${message("screen-from-goal", { distance: fixed(seen.delta_e_2000_to_goal, 1) })}`);
      const lab = made("span", "lab", ...["L*", "a*", "b*"].map((axis, at) => made("span", "", `${axis}\u00a0${fixed(seen.lab[at], 1)} `)));
      const outside = isShown(seen) ? [] : [made("span", "small", message("screen-beyond"))];
      const made_ = made("td", "", drawing.svg, lab, words, ...outside);
      made_.dataset.lab = JSON.stringify(seen.lab);
      return made_;
    };
    byId("all").replaceChildren(
      made("thead", "", made("tr", "", made("td"), ...LIGHTS.map((light) => head(lightInWords(light), "col")))),
      made("tbody", "", ...rows.map(([name, seen, bare]) => made("tr", "", head(name, "row"), ...seen.map((one) => cell(one, bare))))),
    );
  }

  // Asks for what takes longer, beside the page.
  async look() {
    const { turn, state } = this;
    performance.mark("bench-changed", { startTime: this.changed });
    byId("planes").setAttribute("aria-busy", "true");
    const results = document.querySelectorAll("#likely, #best_words, #best");
    for (const result of results) result.classList.add("is-old");
    const current = () => turn === this.turn;
    this.written = writeAddress(state);
    byId("link").value = `${location.href.split("#")[0]}${this.written}`;
    say(byId("request"), JSON.stringify(requestOf(state), null, 1));
    const why = (error) => message("bench-no-answer", { why: error.message });
    const job = async (promise, into, show, fail = (error) => say(byId(into), why(error))) => {
      const slow = setTimeout(() => current() && say(byId(into), message("bench-working")), 600);
      try {
        const answer = await promise;
        if (current()) show(answer);
      } catch (error) {
        if (current() && !(error instanceof Superseded)) fail(error);
      }
      clearTimeout(slow);
    };
    await Promise.all([
      job(this.pool.ask("likely", requestOf(state)), "likely", (region) => {
        this.region = region;
        say(byId("likely"), likelyInWords(state, region.outcome));
        byId("likely").dataset.outcome = JSON.stringify(region.outcome);
        this.showPlanes();
        performance.measure("bench-likely", "bench-changed");
      }),
      job(this.pool.ask("ranking", searchRequestOf(state)), "best_words", (ranking) => {
        showRanking(state, ranking, (mix) => this.take(mix));
        performance.measure("bench-ranked", "bench-changed");
      }, (error) => {
        // No ranking of another case stays behind.
        byId("best").replaceChildren();
        say(byId("best_words"), error.field === TOO_MANY ? message("bench-too-many") : why(error));
      }),
    ]);
    if (!current()) return;
    byId("planes").removeAttribute("aria-busy");
    for (const result of results) result.classList.remove("is-old");
  }

  take(mix) {
    this.controls.set(() => (this.state.mix = { ...mix }));
    // The list is about to be made anew: without this, the focus would be lost with the button.
    byId("reading").focus();
  }

  speak() {
    if (this.survey) say(byId("reading"), readingOf(this.state, this.survey));
  }

  showAddress() {
    this.written = writeAddress(this.state);
    if (location.hash !== this.written && (this.began || location.hash)) {
      try {
        history.replaceState(null, "", this.written);
      } catch {
        // Some browsers keep the address of a page from a disk as it is; the link below holds the case all the same.
      }
    }
    this.began = true;
  }

  async copyLink() {
    const link = byId("link");
    link.select();
    try {
      await navigator.clipboard.writeText(link.value);
      say(byId("link_note"), message("bench-link-copied"));
    } catch {
      say(byId("link_note"), message("bench-link-marked"));
    }
  }
}

function trouble(text) {
  byId("bench_trouble").hidden = text === "";
  say(byId("bench_trouble"), text);
}

async function start() {
  byId("bench_wait").hidden = false;
  try {
    const bytes = await engineBytes();
    // Workers start and open their engines while the page opens its own.
    const pool = new Pool(bytes, COURSE.shelf, (what, question) => ask(what, question));
    const ask = await openEngine(bytes, COURSE.shelf);
    byId("bench").hidden = false;
    new Bench(ask, pool);
  } catch (error) {
    trouble(message("bench-cannot-run", { why: error.message }));
  }
  byId("bench_wait").hidden = true;
}

start();
