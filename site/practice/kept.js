// A session that goes on where it was left: what was asked of the engine, in order, kept for this tab. The same record, seed, times and
// answers give the same session, so that all of it is asked again and nothing else need be kept.

class Kept {
  // The session that this tab was in; nothing where there is none, or it was kept of another course.
  static left() {
    try {
      const kept = JSON.parse(sessionStorage.getItem(Kept.place) ?? "null");
      return kept?.course === COURSE.course.version ? new Kept(kept) : undefined;
    } catch {
      return undefined;
    }
  }

  static get place() {
    return `${COURSE.record} session`;
  }

  static begun(what, extent, request, stored) {
    const kept = new Kept({ course: COURSE.course.version, what, extent, request, stored, questions: [] });
    kept.keep();
    return kept;
  }

  // Nothing is left to go on with.
  static drop() {
    try {
      sessionStorage.removeItem(Kept.place);
    } catch {
      // Then nothing was kept either.
    }
  }

  // `questions` are those that were shown: how each was asked for, which one it was, and what was replied, if anything; `stored` is the record
  // that the device held last.
  constructor({ course, what, extent, request, stored, questions }) {
    Object.assign(this, { course, what, extent, request, stored, questions });
  }

  asked(next, { drill, number, skill }) {
    this.questions.push({ next, drill, number, skill });
    this.keep();
  }

  replied(reply, stored) {
    this.questions.at(-1).reply = reply;
    this.stored = stored;
    this.keep();
  }

  keep() {
    try {
      sessionStorage.setItem(Kept.place, JSON.stringify(this));
    } catch {
      // No room, or no storage: then a session ends with its page, as nobody can help.
    }
  }
}
