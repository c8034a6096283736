// A session: one exercise after another. The next is made while what follows from the last is read.

class Sitting {
  // `answered` is called after each answer, `over` when the session ends.
  constructor(maker, record, { answered, over }) {
    Object.assign(this, { maker, record, answered, over, running: false });
    byId("question").addEventListener("submit", (event) => {
      event.preventDefault();
      this.mark();
    });
    byId("next").addEventListener("click", () => this.show());
    byId("end").addEventListener("click", () => this.end());
  }

  // `what` is "", "lesson=ID" or "skill=ID"; `extent` a number of exercises, of minutes, or "".
  async begin(what, extent) {
    const [kind, id] = what.split("=");
    const minutes = extent.endsWith("minutes") ? Number.parseInt(extent, 10) : null;
    const request = { progress: this.record.text, seed: anySeed(), now: now(), minutes, ...(kind ? { [kind]: id } : {}) };
    await this.opened(Kept.begun(what, extent, request, this.record.stored));
    this.prepare();
    await this.show();
  }

  // Goes on with a session that was left: what was asked and replied is asked and replied again.
  async goOn(kept) {
    // What another window has kept meanwhile is noticed as in any session.
    Object.assign(this.record, { text: kept.request.progress, stored: kept.stored });
    await this.opened(kept);
    const slow = setTimeout(() => say(byId("session_wait"), message("practice-making")), 200);
    let told;
    try {
      for (const { next, drill, number, reply } of kept.questions) {
        this.view = await this.maker.ask("next", next);
        if (this.view?.drill !== drill || this.view.number !== number) throw new Error(message("practice-left-other"));
        told = reply && (await this.maker.ask("reply", reply));
        if (told) this.record.text = told.progress;
        this.number += 1;
      }
    } finally {
      clearTimeout(slow);
      say(byId("session_wait"), "");
    }
    if (this.number === 0) {
      this.prepare();
      await this.show();
      return;
    }
    this.put();
    if (told) this.tell(told);
  }

  // The engine begins a session; nothing is shown yet.
  async opened(kept) {
    const { extent, request } = kept;
    const count = request.minutes || !extent ? null : Number(extent);
    Object.assign(this, { kept, number: 0, count, minutes: request.minutes, begun: request.now, marking: false, unkept: false, view: undefined });
    const begun = await this.maker.ask("begin", request);
    say(byId("session_plan"), begun.plan.length > 0 ? message("practice-plan", { skills: begun.plan.map(({ skill, count: times }) => message("practice-plan-skill", { skill, count: times })).join("; ") }) : "");
    this.running = true;
    this.wait();
    byId("session").hidden = false;
  }

  left() {
    return this.minutes === null ? null : Math.max(0, this.minutes - (now() - this.begun) / 60);
  }

  // Has the next exercise made.
  prepare() {
    performance.mark("exercise-asked");
    this.asking = { minutes: this.left(), now: now() };
    this.coming = this.maker.ask("next", this.asking);
    this.coming.then(() => performance.measure("exercise-made", "exercise-asked"), () => {});
  }

  // Nothing can be answered until there is a question.
  wait() {
    this.open = undefined;
    byId("question").hidden = true;
    byId("session_eyes").hidden = true;
    byId("mark").hidden = true;
    byId("next").hidden = true;
    byId("verdict").replaceChildren();
    byId("outcome").replaceChildren();
  }

  async show() {
    byId("next").hidden = true;
    this.offerEnd(false);
    byId("verdict").replaceChildren();
    byId("outcome").replaceChildren();
    const slow = setTimeout(() => say(byId("session_wait"), message("practice-making")), 200);
    let view;
    try {
      view = await this.coming;
    } catch (error) {
      view = null;
      this.amiss = message("practice-impossible", { why: error.message });
    }
    clearTimeout(slow);
    say(byId("session_wait"), "");
    if (!this.running) return;
    if (!view || (this.minutes !== null && view.minutes > this.left())) {
      this.amiss ??= this.minutes !== null && this.number > 0 ? message("practice-fits-none") : "";
      await this.end();
      return;
    }
    this.number += 1;
    this.view = view;
    this.kept.asked(this.asking, view);
    this.put();
  }

  // Shows the question.
  put() {
    this.open = showQuestion(byId("question"), this.view);
    byId("question").hidden = false;
    this.offerEyes();
    const title = byId("session_title");
    say(title, this.titleOf(this.view.skill));
    byId("mark").hidden = false;
    // The question begins at the top of the screen, not below the head of the page.
    title.focus({ preventScroll: true });
    title.scrollIntoView();
  }

  // Other eyes are offered where there is anything to see with them.
  offerEyes() {
    byId("session_eyes").hidden = !byId("session").querySelector(".swatch, .drop-chip");
  }

  titleOf(skill) {
    const [number, left] = [this.number, this.left()];
    if (left !== null) return message("practice-exercise-left", { number, skill, minutes: Math.ceil(left) });
    return this.count ? message("practice-exercise-of", { number, count: this.count, skill }) : message("practice-exercise", { number, skill });
  }

  async mark() {
    if (this.marking || !this.open || byId("mark").hidden) return;
    const answer = this.open.read();
    if (!answer) {
      say(byId("verdict"), message("practice-choose-first"));
      this.open.first()?.focus();
      return;
    }
    this.marking = true;
    const elsewhere = this.record.elsewhere();
    const reply = { answer, now: now(), ...(elsewhere === undefined ? {} : { progress: elsewhere }) };
    let told;
    try {
      told = await this.maker.ask("reply", reply);
    } catch (error) {
      // "answer: what is amiss"
      say(byId("verdict"), `${capitalised(error.message.replace(/^answer: /, ""))}.`);
      return;
    } finally {
      this.marking = false;
    }
    const notes = [];
    if (elsewhere !== undefined) {
      this.record.stored = elsewhere;
      notes.push(message(elsewhere === "" ? "practice-elsewhere-wiped" : "practice-elsewhere"));
    }
    const kept = this.record.keep(told.progress);
    if (!kept && !this.unkept) notes.push(message("practice-not-kept-now"));
    this.unkept = !kept;
    this.kept.replied(reply, this.record.stored);
    this.tell(told, notes.map((note) => ` ${note}`));
    this.answered();
  }

  // After the last exercise the end is what comes next.
  offerEnd(last) {
    byId("end").classList.toggle("strong", last);
    say(byId("end"), message(last ? "practice-end-last" : "practice-end"));
  }

  // Shows what follows from the answer, and has the next question made.
  tell(told, notes = []) {
    const last = this.count !== null && this.number >= this.count;
    if (!last) this.prepare();
    this.open.close();
    byId("mark").hidden = true;
    byId("next").hidden = last;
    this.offerEnd(last);
    byId("verdict").replaceChildren(made("strong", "", verdictOf(told)), ` ${told.consequence}`, ...notes);
    const title = showOutcome(byId("outcome"), this.view, told);
    this.offerEyes();
    title.focus();
  }

  async end() {
    if (!this.running) return;
    this.running = false;
    Kept.drop();
    byId("session").hidden = true;
    const amiss = this.amiss;
    this.amiss = undefined;
    showSummary(await this.maker.ask("summary", { now: now() }));
    if (amiss) byId("summary_parts").prepend(made("p", "note", amiss));
    byId("summary").hidden = false;
    byId("summary_title").focus();
    await this.over();
  }
}
