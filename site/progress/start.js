// Progress: what the record says of each skill, and what is due. The engine reads the record; this page draws what it answers.

class ProgressPage {
  constructor(maker) {
    this.keeping = new Keeping(maker, new Record(), () => this.show());
  }

  async start() {
    await this.keeping.open();
    byId("progress").hidden = false;
  }

  async show() {
    const overview = await this.keeping.overview();
    showStandingWords(overview);
    const skills = new Map(overview.skills.map((skill) => [skill.id, skill]));
    for (const list of document.querySelectorAll("ul[data-skills]")) {
      const own = list.dataset.skills.split(" ").map((id) => skills.get(id)).filter(Boolean);
      list.replaceChildren(...own.map(skillEntry));
      const known = own.filter((skill) => skill.level === "well" || skill.level === "mastered").length;
      say(list.closest("section").querySelector("[data-known]"), message("progress-known", { known, count: own.length }));
    }
    const due = leastKnownFirst(overview.skills.filter((skill) => skill.due_in_days === 0));
    byId("due_list").replaceChildren(...due.map((skill) => made("li", "", `${skill.name} `, skillLink(skill.id, skill.name))));
    byId("due_none").hidden = due.length > 0 || overview.answers === 0;
    byId("due").hidden = overview.answers === 0;
    const next = overview.skills.filter((skill) => skill.due_in_days > 0).map((skill) => skill.due_in_days);
    say(byId("due_none"), next.length > 0 ? message("progress-nothing-until", { when: dueInWords(Math.min(...next)) }) : message("progress-nothing"));
  }
}

async function start() {
  byId("practice_wait").hidden = false;
  try {
    const maker = await Maker.open(await engineBytes(), COURSE.course);
    await new ProgressPage(maker).start();
  } catch (error) {
    say(byId("practice_trouble"), message("practice-needs", { why: error.message }));
    byId("practice_trouble").hidden = false;
  }
  byId("practice_wait").hidden = true;
}

start();
