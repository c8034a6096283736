// The record of progress on this device. It is one text, as the engine writes it; nothing in here reads it.

class Record {
  // `text` is the record as this page has it, `stored` what the device held when this page last looked: less, where it took nothing since.
  // A record that is `left` stays on the device as it is.
  constructor() {
    Object.assign(this, { text: "", stored: "", keeps: true, left: false });
    try {
      this.text = this.stored = localStorage.getItem(COURSE.record) ?? "";
      // Some browsers give a storage that takes nothing.
      localStorage.setItem(`${COURSE.record} try`, "1");
      localStorage.removeItem(`${COURSE.record} try`);
    } catch {
      this.keeps = false;
    }
  }

  // What another window has written since; nothing where it is still what this one knows.
  elsewhere() {
    if (this.left) return undefined;
    try {
      const text = localStorage.getItem(COURSE.record) ?? "";
      return text === this.stored ? undefined : text;
    } catch {
      return undefined;
    }
  }

  // Takes up what another window has written; says whether there was anything.
  catchUp() {
    const text = this.elsewhere();
    if (text !== undefined) this.text = this.stored = text;
    return text !== undefined;
  }

  // Keeps a new text; says whether the device took it.
  keep(text) {
    this.text = text;
    if (this.left) return false;
    try {
      if (text) localStorage.setItem(COURSE.record, text);
      else localStorage.removeItem(COURSE.record);
      this.stored = text;
      this.keeps = true;
    } catch {
      this.keeps = false;
    }
    return this.keeps;
  }

  // Keeps for the home page until when each practised skill is known well enough, in seconds since 1970, known least first: it has no
  // engine to ask.
  keepDue(skills) {
    if (this.left) return;
    const until = leastKnownFirst(skills.filter((skill) => skill.due_in_days !== null)).map((skill) => [skill.id, now() + Math.round(skill.due_in_days * 86_400)]);
    try {
      if (until.length > 0) localStorage.setItem(`${COURSE.record} due`, JSON.stringify(until));
      else localStorage.removeItem(`${COURSE.record} due`);
    } catch {
      // No room: the home page then names nothing.
    }
  }

  get name() {
    return `${COURSE.record}.json`;
  }

  save() {
    const address = URL.createObjectURL(new Blob([this.text], { type: "application/json" }));
    const link = made("a");
    Object.assign(link, { href: address, download: this.name });
    link.click();
    setTimeout(() => URL.revokeObjectURL(address), 60_000);
  }
}

// Asks whether to wipe or to load, answered with one of two buttons; Escape is no.
function asked(what) {
  const dialog = byId("asked");
  say(byId("asked_words"), message(`practice-ask-${what}`));
  say(byId("asked_yes"), message(`practice-ask-${what}-yes`));
  say(byId("asked_no"), message(`practice-ask-${what}-no`));
  return new Promise((fulfil) => {
    let answer = false;
    byId("asked_yes").onclick = () => {
      answer = true;
      dialog.close();
    };
    byId("asked_no").onclick = () => dialog.close();
    // The end of an earlier question may be told when this one is open already.
    dialog.onclose = () => dialog.open || fulfil(answer);
    dialog.showModal();
    byId("asked_no").focus();
  });
}
