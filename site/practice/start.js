// The page: what to practise, the session, the record.

class Practice {
  constructor(maker) {
    this.maker = maker;
    this.record = new Record();
    this.sitting = new Sitting(maker, this.record, () => this.over());
    byId("choose").addEventListener("submit", (event) => {
      event.preventDefault();
      this.begin();
    });
    byId("save").addEventListener("click", () => {
      this.record.save();
      say(byId("keep_words"), message("practice-saved", { name: this.record.name }));
    });
    byId("load").addEventListener("click", () => byId("load_file").click());
    byId("load_file").addEventListener("change", () => this.load());
    byId("wipe").addEventListener("click", () => this.wipe());
    addEventListener("hashchange", () => this.follow());
  }

  async start() {
    say(byId("keep_words"), message(this.record.keeps ? "practice-kept" : "practice-not-kept"));
    try {
      await this.standing();
    } catch (error) {
      // Left as it is: whoever wrote it may still read it.
      this.unreadable = this.record.text;
      this.record.text = "";
      this.record.keeps = false;
      say(byId("keep_words"), message("practice-unreadable", { why: error.message.replace(/^progress: /, "") }));
      await this.standing();
    }
    byId("practice").hidden = false;
    this.follow(true);
  }

  async standing() {
    showStanding(await this.maker.ask("overview", { progress: this.record.text, now: now() }));
    for (const id of ["save", "wipe"]) byId(id).hidden = this.record.text === "" && this.unreadable === undefined;
    byId("save").hidden ||= this.record.text === "";
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

  async load() {
    const [file] = byId("load_file").files;
    byId("load_file").value = "";
    if (!file) return;
    try {
      const text = await file.text();
      await this.maker.ask("overview", { progress: text, now: now() });
      const has = this.record.text !== "" || this.unreadable !== undefined;
      if (has && !(await asked("load"))) return;
      this.take(text, message("practice-loaded"));
    } catch (error) {
      say(byId("keep_words"), message("practice-refused", { why: error.message.replace(/^progress: /, "") }));
    }
  }

  async wipe() {
    if (await asked("wipe")) this.take("", message("practice-wiped"));
  }

  // Puts another record in place of this one.
  async take(text, said) {
    if (this.unreadable !== undefined) this.record.keeps = true;
    this.unreadable = undefined;
    const kept = this.record.keep(text);
    say(byId("keep_words"), kept ? said : `${said} ${message("practice-not-kept")}`);
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
