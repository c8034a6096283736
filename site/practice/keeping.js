// Saving, loading and wiping the record, by the buttons below it.

class Keeping {
  // `changed` is called when another record has taken the place of this one.
  constructor(maker, record, changed) {
    Object.assign(this, { maker, record, changed });
    byId("save").addEventListener("click", () => {
      this.record.save();
      say(byId("keep_words"), message("practice-saved", { name: this.record.name }));
    });
    byId("load").addEventListener("click", () => byId("load_file").click());
    byId("load_file").addEventListener("change", () => this.load());
    byId("wipe").addEventListener("click", () => this.wipe());
  }

  // Shows what the record says with `standing`; a record that cannot be read is left as it is.
  async open() {
    this.settle();
    try {
      await this.changed();
    } catch (error) {
      // Whoever wrote it may still read it.
      this.unreadable = this.record.text;
      this.record.text = "";
      this.record.keeps = false;
      say(byId("keep_words"), message("practice-unreadable", { why: error.message.replace(/^progress: /, "") }));
      await this.changed();
    }
  }

  // Says what holds at any time: whatever was said of an earlier deed is over.
  settle() {
    if (this.unreadable === undefined) say(byId("keep_words"), message(this.record.keeps ? "practice-kept" : "practice-not-kept"));
  }

  // Asks what the record says, and keeps for other pages what is due when.
  async overview() {
    const overview = await this.maker.ask("overview", { progress: this.record.text, now: now() });
    if (this.unreadable === undefined) this.record.keepDue(overview.skills);
    for (const id of ["save", "wipe"]) byId(id).hidden = this.record.text === "" && this.unreadable === undefined;
    byId("save").hidden ||= this.record.text === "";
    return overview;
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
    this.settle();
    if (await asked("wipe")) await this.take("", message("practice-wiped"));
  }

  // Puts another record in place of this one.
  async take(text, said) {
    if (this.unreadable !== undefined) this.record.keeps = true;
    this.unreadable = undefined;
    const kept = this.record.keep(text);
    say(byId("keep_words"), kept ? said : `${said} ${message("practice-not-kept")}`);
    await this.changed();
  }
}
