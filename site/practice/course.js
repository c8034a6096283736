// What the page takes along of the course.

const COURSE = globalThis.healedhueCourse;

// Old work is drawn as it was made, new work in the usual way.
function techniqueOf(technique) {
  return { manner: technique };
}

// The written questions of the modules that a session draws on, from files of their own: no session needs all there are, and progress none.
class Questions {
  constructor(maker) {
    Object.assign(this, { maker, loaded: new Set() });
  }

  // `what` is "", "lesson=ID" or "skill=ID".
  async load(what) {
    const [kind, id] = what.split("=");
    const draws = (lesson, drill) => (kind === "lesson" ? lesson.id === id : kind !== "skill" || drill.skill === id);
    const asks = (module) => module.lessons.some((lesson) => lesson.drills.some((drill) => drill.questions.length > 0 && draws(lesson, drill)));
    const files = COURSE.course.modules.filter(asks).map((module) => COURSE.links.questions[module.id]).filter((file) => !this.loaded.has(file));
    if (files.length === 0) return;
    await Promise.all(files.map(scriptLoaded));
    for (const file of files) this.loaded.add(file);
    // Modules may ask the same question.
    COURSE.course.questions = [...new Map(globalThis.healedhueQuestions.map((question) => [question.id, question])).values()];
    await this.maker.ask("course", COURSE.course);
  }
}

function scriptLoaded(file) {
  return new Promise((fulfil, refuse) => {
    const script = document.createElement("script");
    Object.assign(script, { src: file, onload: fulfil, onerror: () => refuse(new Error(file)) });
    document.head.append(script);
  });
}

function now() {
  return Math.floor(Date.now() / 1000);
}

// A place for the seed of a session: any whole number that both sides write alike.
function anySeed() {
  const [high, low] = crypto.getRandomValues(new Uint32Array(2));
  return (high % 2 ** 21) * 2 ** 32 + low;
}
