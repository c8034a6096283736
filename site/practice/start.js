// The page: what to practise, the session, the record.

class Practice {
  constructor(maker) {
    this.maker = maker;
    this.record = new Record();
    this.questions = new Questions(maker);
    this.sitting = new Sitting(maker, this.record, () => this.over());
    byId("choose").addEventListener("submit", (event) => {
      event.preventDefault();
      this.begin();
    });
    this.keeping = new Keeping(maker, this.record, () => this.standing());
    addEventListener("hashchange", () => this.follow());
    bindEyes();
  }

  async start() {
    await this.keeping.open();
    byId("practice").hidden = false;
    this.follow(true);
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

  async begin() {
    this.trouble("");
    byId("begin").disabled = true;
    try {
      const elsewhere = this.record.elsewhere();
      if (elsewhere !== undefined) this.record.text = elsewhere;
      byId("summary").hidden = true;
      byId("choose").hidden = true;
      byId("standing").hidden = true;
      this.keeping.settle();
      await this.questions.load(byId("what").value);
      await this.sitting.begin(byId("what").value, byId("extent").value);
    } catch (error) {
      this.trouble(message("practice-failed", { why: error.message }));
      await this.over();
    }
    byId("begin").disabled = false;
  }

  async over() {
    byId("session").hidden = true;
    byId("choose").hidden = false;
    byId("standing").hidden = false;
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
