// Saving, loading and wiping the record, by the buttons below it.

class Keeping {
  // `shown` shows what the record says, again where another record has taken its place.
  constructor(maker, record, shown) {
    Object.assign(this, { maker, record, shown });
    byId("save").addEventListener("click", () => this.save());
    byId("load").addEventListener("click", () => byId("load_file").click());
    byId("load_file").addEventListener("change", () => this.load());
    byId("wipe").addEventListener("click", () => this.wipe());
    // Another window has practised, loaded or wiped. A session notices by itself.
    addEventListener("storage", ({ key }) => {
      if ((key === COURSE.record || key === null) && byId("save").closest("section").checkVisibility()) this.catchUp();
    });
  }

  // Shows what the record says; one that cannot be read is left as it is.
  async open() {
    this.settle();
    try {
      await this.shown();
    } catch (error) {
      // Whoever wrote it may still read it.
      this.record.text = "";
      this.record.left = true;
      this.unreadable = message("practice-unreadable", { why: error.message.replace(/^progress: /, "") });
      this.settle();
      await this.shown();
    }
  }

  async catchUp() {
    if (!this.record.catchUp()) return;
    this.settle();
    await this.shown();
  }

  // Says what holds at any time: whatever was said of an earlier deed is over. That nothing is kept also stands at the head of the page.
  settle() {
    const { keeps, stored } = this.record;
    const amiss = this.unreadable ?? (keeps ? "" : message(stored === "" ? "practice-not-kept" : "practice-not-kept-new"));
    say(byId("keep_words"), amiss || message("practice-kept"));
    say(byId("keep_note"), amiss);
    byId("keep_note").hidden = amiss === "";
  }

  // Asks what the record says, and keeps for other pages what is due when.
  async overview() {
    const overview = await this.maker.ask("overview", { progress: this.record.text, now: now() });
    this.record.keepDue(overview.skills);
    for (const id of ["save", "wipe"]) byId(id).hidden = this.record.text === "" && this.unreadable === undefined;
    byId("save").hidden ||= this.record.text === "";
    return overview;
  }

  async save() {
    await this.catchUp();
    this.record.save();
    say(byId("keep_words"), message("practice-saved", { name: this.record.name }));
  }

  async load() {
    const [file] = byId("load_file").files;
    byId("load_file").value = "";
    if (!file) return;
    try {
      const text = await file.text();
      // A record without a word is a beginner's; a file without one has gone wrong on its way.
      if (text.trim() === "") throw new Error(message("practice-file-empty"));
      await this.maker.ask("overview", { progress: text, now: now() });
      await this.catchUp();
      const has = this.record.text !== "" || this.unreadable !== undefined;
      if (has && !(await asked("load"))) {
        this.settle();
        return;
      }
      await this.take(text, message("practice-loaded"));
    } catch (error) {
      say(byId("keep_words"), message("practice-refused", { why: error.message.replace(/^progress: /, "") }));
    }
  }

  async wipe() {
    await this.catchUp();
    this.settle();
    if (await asked("wipe")) await this.take("", message("practice-wiped"));
  }

  // Puts another record in place of this one; a session that was left with this one cannot go on.
  async take(text, said) {
    this.record.left = false;
    this.unreadable = undefined;
    Kept.drop();
    this.record.keep(text);
    this.settle();
    say(byId("keep_words"), this.record.keeps ? said : `${said} ${byId("keep_note").textContent}`);
    await this.shown();
  }
}
