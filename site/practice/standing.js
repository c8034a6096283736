// What the record says by skill, and what a session has shown.

function levelWords(level) {
  return level ? WORDS.level[level] : WORDS.none;
}

// A bar with its number in words beside it.
function bar(share, name) {
  const meter = Object.assign(made("meter"), { min: 0, max: 1, value: share });
  meter.setAttribute("aria-label", name);
  meter.setAttribute("aria-valuetext", wholePercent(share));
  return meter;
}

function skillLink(id, name) {
  const link = made("a", "", WORDS.practise);
  link.href = `${COURSE.links.practice}#skill=${encodeURIComponent(id)}`;
  link.setAttribute("aria-label", WORDS.practiseThis(name));
  return link;
}

// How many answers there are, in how many skills, and what is most needed; remarks of the engine on the record.
function showStandingWords(overview) {
  const { skills, answers, next, others, notes } = overview;
  const practised = skills.filter((skill) => skill.answers > 0).length;
  const names = next.map((id) => skills.find((skill) => skill.id === id)?.name).filter(Boolean);
  const due = answers > 0 && names.length > 0 ? ` ${WORDS.standingDue(names.join("; "))}` : "";
  say(byId("standing_words"), answers === 0 ? WORDS.standingNone : `${WORDS.standing(answers, practised)}${due}`);
  const said = [...notes.map((note) => `${capitalised(note)}.`), ...(others > 0 ? [WORDS.others(others)] : [])];
  byId("standing_notes").replaceChildren(...said.map((text) => made("p", "small", text)));
}

function showStanding(overview) {
  showStandingWords(overview);
  byId("skills").replaceChildren(...overview.skills.map(skillEntry));
}

// One skill: its name, how well it is known, what was practised, and the way to practise it.
function skillEntry(skill) {
  const practice = [];
  if (skill.answers > 0) {
    practice.push(WORDS.answers(skill.answers), WORDS.average(wholePercent(skill.credit)), WORDS.lastOn(new Date(skill.last * 1000).toLocaleDateString(document.documentElement.lang, { dateStyle: "long" })));
    if (skill.due_in_days !== null) practice.push(skill.due_in_days === 0 ? WORDS.due : WORDS.dueIn(skill.due_in_days));
  }
  const level = made("p", "skill-level", `${levelWords(skill.level)} `, ...(skill.level ? [made("span", "skill-share", wholePercent(skill.known))] : []));
  const about = made("p", "small", practice.length > 0 ? `${capitalised(practice.join(", "))}. ` : "", skillLink(skill.id, skill.name));
  return made("li", "skill", made("p", "skill-name", skill.name), bar(skill.level ? skill.known : 0, skill.name), level, about);
}

function showSummary(summary) {
  const parts = [];
  if (summary.skills.length === 0) parts.push(made("p", "", WORDS.summaryNone));
  else {
    const head = made("tr", "", ...WORDS.summaryHead.map((text) => Object.assign(made("th", "", text), { scope: "col" })));
    const known = ([share, level]) => `${WORDS.level[level]}, ${wholePercent(share)}`;
    const rows = summary.skills.map((skill) => {
      const name = Object.assign(made("th", "", skill.name), { scope: "row" });
      return made("tr", "", name, ...[String(skill.answers), wholePercent(skill.credit), known(skill.before), known(skill.after)].map((text) => made("td", "", text)));
    });
    const table = made("div", "table", made("table", "", made("thead", "", head), made("tbody", "", ...rows)));
    table.tabIndex = 0;
    table.setAttribute("role", "region");
    table.setAttribute("aria-label", WORDS.summaryTable);
    parts.push(table);
  }
  const list = (title, items) => {
    if (items.length > 0) parts.push(made("h3", "", title), made("ul", "", ...items.map((item) => made("li", "", ...item))));
  };
  list(WORDS.summaryNext, summary.next.map(([id, name]) => [`${name} `, skillLink(id, name)]));
  list(WORDS.summaryReread, summary.reread.map((lesson) => [lessonLink(lesson), ` (${WORDS.answers(lesson.answers)})`]));
  list(WORDS.summaryBeliefs, summary.misconceptions.map(({ id, belief, chosen, offered, stands_out }) => {
    const link = made("a", "", belief);
    link.href = COURSE.links.misconceptions[id];
    return [made("q", "", link), ` ${WORDS.beliefOften(chosen, offered)}.${stands_out ? ` ${WORDS.habit}` : ""}`];
  }));
  byId("summary_parts").replaceChildren(...parts);
}
