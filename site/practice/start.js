// The page: what to practise, the session, the record.

class Practice {
  constructor(maker) {
    this.maker = maker;
    this.record = new Record();
    this.questions = new Questions(maker);
    this.sitting = new Sitting(maker, this.record, { answered: () => this.keeping.overview(), over: () => this.over() });
    byId("choose").addEventListener("submit", (event) => {
      event.preventDefault();
      this.begin();
    });
    byId("go_on").addEventListener("click", () => this.goOn());
    byId("let_go").addEventListener("click", () => {
      Kept.drop();
      this.offer();
      byId("begin").focus();
    });
    this.keeping = new Keeping(maker, this.record, () => {
      this.offer();
      return this.standing();
    });
    addEventListener("hashchange", () => this.follow());
    bindEyes();
  }

  async start() {
    await this.keeping.open();
    byId("practice").hidden = false;
    this.follow(true);
    if (!byId("kept").hidden && location.hash === "") byId("go_on").focus({ preventScroll: true });
  }

  // Offers to go on with a session that was left.
  offer() {
    const { questions, extent } = Kept.left() ?? { questions: [] };
    byId("kept").hidden = questions.length === 0;
    if (questions.length === 0) return;
    const { skill } = questions.at(-1);
    const values = { number: questions.length, count: Number(extent), skill, answers: questions.filter(({ reply }) => reply).length };
    say(byId("kept_words"), message(values.count > 0 ? "practice-left-of" : "practice-left-at", values));
  }

  async standing() {
    showStanding(await this.keeping.overview());
  }

  // A link to a lesson's or a skill's practice: it is chosen, and one key begins.
  follow(first = false) {
    const what = decodeURIComponent(location.hash.slice(1));
    if (!/^(lesson|skill)=/.test(what)) return;
    const known = [...byId("what").options].some((option) => option.value === what);
    if (!known) {
      this.trouble(message("practice-link-unknown"));
      return;
    }
    byId("what").value = what;
    if (this.sitting.running) return;
    byId("summary").hidden = true;
    byId("begin").focus({ preventScroll: first });
  }

  trouble(text) {
    say(byId("practice_trouble"), text);
    byId("practice_trouble").hidden = text === "";
  }

  begin() {
    return this.running(byId("what").value, () => this.sitting.begin(byId("what").value, byId("extent").value));
  }

  goOn() {
    const kept = Kept.left();
    return this.running(kept.what, () => this.sitting.goOn(kept));
  }

  // Has a session of these questions begun by `open`.
  async running(what, open) {
    this.trouble("");
    for (const id of ["begin", "go_on"]) byId(id).disabled = true;
    try {
      this.record.catchUp();
      for (const id of ["summary", "choose", "kept", "standing"]) byId(id).hidden = true;
      this.keeping.settle();
      await this.questions.load(what);
      await open();
    } catch (error) {
      this.trouble(message("practice-failed", { why: error.message }));
      Kept.drop();
      await this.over();
    }
    for (const id of ["begin", "go_on"]) byId(id).disabled = false;
  }

  async over() {
    this.sitting.running = false;
    byId("session").hidden = true;
    this.offer();
    byId("choose").hidden = false;
    byId("standing").hidden = false;
    this.keeping.settle();
    await this.standing();
  }
}

async function start() {
  byId("practice_wait").hidden = false;
  try {
    const maker = await Maker.open(await engineBytes(), COURSE.course);
    await new Practice(maker).start();
  } catch (error) {
    say(byId("practice_trouble"), message("practice-needs", { why: error.message }));
    byId("practice_trouble").hidden = false;
  }
  byId("practice_wait").hidden = true;
}

start();
