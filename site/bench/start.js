// The bench itself. Each change is answered by the page's own engine in the next frame; when the controls rest, the region of likely
// outcomes and the ranking are asked for beside the page, the reading is said, and the address is written.

// Milliseconds without a change after which the controls count as resting, and after which the reading is read out.
const REST = 60;
const SPEAK = 500;

class Bench {
  constructor(ask, pool) {
    Object.assign(this, { ask, pool, region: null, turn: 0 });
    this.swatches = new Map();
    this.planes = PLANES.map((plane) => new Plane(plane));
    byId("planes").replaceChildren(...this.planes.map((plane) => plane.figure));
    const { state, amiss } = readAddress(location.hash);
    if (amiss.length > 0) trouble(`Parts of this link were not understood and left out: ${[...new Set(amiss)].join(", ")}.`);
    this.controls = new Controls(state, () => this.change());
    byId("link_copy").addEventListener("click", () => this.copyLink());
    byId("again").addEventListener("click", () => this.controls.replace(freshCase()));
    byId("all_details").addEventListener("toggle", () => this.showAll());
    addEventListener("hashchange", () => this.follow());
    this.controls.show();
    this.change();
  }

  get state() {
    return this.controls.state;
  }

  // The address was changed by hand or by going back.
  follow() {
    if (location.hash === this.written) return;
    this.controls.replace(readAddress(location.hash).state);
  }

  change() {
    this.region = null;
    this.turn += 1;
    this.pool.clear();
    if (!this.frame) this.frame = requestAnimationFrame(() => this.paint());
    clearTimeout(this.resting);
    clearTimeout(this.speaking);
    this.resting = setTimeout(() => this.rest(), REST);
    this.speaking = setTimeout(() => this.speak(), SPEAK);
  }

  paint() {
    this.frame = null;
    performance.mark("bench-asked");
    try {
      this.survey = this.ask("survey", surveyRequestOf(this.state));
    } catch (error) {
      trouble(`The engine cannot answer this case: ${error.message}.`);
      return;
    }
    this.controls.showAnswers(this.survey);
    this.showTimes();
    this.showLights();
    this.showGoal();
    this.showPlanes();
    this.showAll();
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
    return { colour: { ...seen }, skin: seen.bare_skin, words: seen.reading.words, site, technique, bare };
  }

  showTimes() {
    const { state, survey } = this;
    const place = LIGHTS.indexOf(state.light);
    const row = byId("times");
    this.swatch("bare", row, "bare skin", "skin").paint(this.shown(survey.bare[place], true));
    const now = this.swatch("today", row, "as it is now", "now");
    now.figure.hidden = survey.today.length === 0;
    if (survey.today.length > 0) now.paint(this.shown(survey.today[place]));
    survey.moments.forEach((moment, at) => {
      const swatch = this.swatch(`time ${at}`, row, TIMES[at].words, TIMES[at].mark);
      swatch.paint(this.shown(moment.seen[place]));
      swatch.figure.classList.toggle("is-judged", moment.months === state.months);
    });
    row.dataset.swatches = survey.today.length > 0 ? 7 : 6;
    const judged = survey.moments.find((moment) => moment.months === state.months).seen[place];
    say(byId("sight_words"), `${capitalised(judgedInWords(state))}: ${judged.reading.words}. ${goalInWords(state, judged)}`);
  }

  showLights() {
    const { state, survey } = this;
    const moment = survey.moments.find(({ months }) => months === state.months);
    moment.seen.forEach((seen) => {
      const swatch = this.swatch(`light ${seen.light}`, byId("lights"), `${nameOfTime(state.months)}, ${LIGHT_WORDS[seen.light]}`);
      swatch.paint({ ...this.shown(seen), name: `${nameOfTime(state.months)}, ${LIGHT_WORDS[seen.light]}`, notes: [`ΔE00 ${fixed(seen.delta_e_2000_to_goal, 1)} from the goal`] });
      swatch.figure.classList.toggle("is-judged", seen.light === state.light);
    });
  }

  showGoal() {
    const { state, survey } = this;
    const { name, tolerance } = goalOf(state);
    const skin = survey.bare[0].bare_skin;
    this.swatch("goal", byId("goal_swatch"), "").paint({
      colour: survey.goal, skin, words: survey.goal.reading.words, site: state.site, technique: state.technique,
      name: `Goal: ${name}`, notes: [`reached within ΔE00 ${short(tolerance, 1)}`],
    });
  }

  showPlanes() {
    const { state, survey } = this;
    const place = LIGHTS.indexOf(state.light);
    const mark = (name, seen, shape, judged = false) => ({ name, lab: seen.lab, fill: paintOf(seen), shape, judged, star: !isShown(seen) });
    const marks = [mark("skin", survey.bare[place], "square")];
    if (survey.today.length > 0) marks.push(mark("now", survey.today[place], "lozenge"));
    const trail = survey.moments.map((moment) => moment.seen[place].lab);
    survey.moments.forEach((moment, at) => marks.push(mark(TIMES[at].mark, moment.seen[place], "round", moment.months === state.months)));
    marks.push(mark("goal", survey.goal, "cross"));
    const words = marks.map(({ name, lab }) => `${name}: L* ${fixed(lab[0], 1)}, a* ${fixed(lab[1], 1)}, b* ${fixed(lab[2], 1)}`).join("; ");
    for (const plane of this.planes) plane.paint({ marks, trail, goal: survey.goal, region: this.region?.outline, words });
  }

  showAll() {
    if (!byId("all_details").open || !this.survey) return;
    const { survey } = this;
    const rows = [["bare skin", survey.bare, true], ...(survey.today.length > 0 ? [["as it is now", survey.today]] : [])];
    survey.moments.forEach((moment, at) => rows.push([TIMES[at].words, moment.seen]));
    const head = (text, scope) => Object.assign(made("th", "", text), { scope });
    const cell = (seen, bare) => {
      const drawing = new Drawing();
      drawing.paint(seen.bare_skin, bare ? null : seen, this.state.site, this.state.technique);
      drawing.svg.setAttribute("aria-label", bare ? "bare skin" : seen.reading.words);
      const words = made("span", "small", bare ? "" : `${seen.reading.words}; ΔE00 ${fixed(seen.delta_e_2000_to_goal, 1)} from the goal`);
      const lab = made("span", "lab", ...["L*", "a*", "b*"].map((axis, at) => made("span", "", `${axis}\u00a0${fixed(seen.lab[at], 1)} `)));
      const outside = isShown(seen) ? [] : [made("span", "small", "beyond this screen")];
      const made_ = made("td", "", drawing.svg, lab, words, ...outside);
      made_.dataset.lab = JSON.stringify(seen.lab);
      return made_;
    };
    byId("all").replaceChildren(
      made("thead", "", made("tr", "", made("td"), ...LIGHTS.map((light) => head(LIGHT_WORDS[light], "col")))),
      made("tbody", "", ...rows.map(([name, seen, bare]) => made("tr", "", head(name, "row"), ...seen.map((one) => cell(one, bare))))),
    );
  }

  async rest() {
    const { turn, state } = this;
    performance.mark("bench-rested");
    this.showAddress();
    byId("planes").setAttribute("aria-busy", "true");
    const results = document.querySelectorAll("#likely, #best_words, #best");
    for (const result of results) result.classList.add("is-old");
    const current = () => turn === this.turn;
    const job = async (promise, into, show) => {
      const slow = setTimeout(() => current() && say(byId(into), "Working …"), 600);
      try {
        const answer = await promise;
        if (current()) show(answer);
      } catch (error) {
        if (current() && !(error instanceof Superseded)) say(byId(into), `There is no answer: ${error.message}.`);
      }
      clearTimeout(slow);
    };
    await Promise.all([
      job(this.pool.ask("likely", requestOf(state)), "likely", (region) => {
        this.region = region;
        say(byId("likely"), `${capitalised(judgedInWords(state))}: ${region.outcome.words}. ${LIKELY_WORDS}`);
        byId("likely").dataset.outcome = JSON.stringify(region.outcome);
        this.showPlanes();
        performance.measure("bench-likely", "bench-rested");
      }),
      job(rank(this.pool, searchRequestOf(state)), "best_words", (ranking) => {
        showRanking(state, ranking, (mix) => this.take(mix));
        performance.measure("bench-ranked", "bench-rested");
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
    byId("link").value = `${location.href.split("#")[0]}${this.written}`;
    say(byId("request"), JSON.stringify(requestOf(this.state), null, 1));
  }

  async copyLink() {
    const link = byId("link");
    link.select();
    try {
      await navigator.clipboard.writeText(link.value);
      say(byId("link_note"), "The link is copied.");
    } catch {
      say(byId("link_note"), "The link is marked: copy it with your browser.");
    }
  }
}

const LIKELY_WORDS = "Skin, depth, load and the life of every colourant were varied within what one can be wrong about.";

function trouble(text) {
  byId("bench_trouble").hidden = false;
  say(byId("bench_trouble"), text);
}

async function start() {
  byId("bench_wait").hidden = false;
  try {
    const bytes = await engineBytes();
    const ask = await openEngine(bytes, COURSE.shelf);
    byId("bench").hidden = false;
    new Bench(ask, new Pool(bytes, COURSE.shelf, ask));
  } catch (error) {
    trouble(`The bench cannot run here: your browser has no WebAssembly, or one that is too old (from 2023 on they do). The lessons work without it. (${error.message})`);
  }
  byId("bench_wait").hidden = true;
}

start();
