// What the record says by skill, and what a session has shown.

// A share in whole percent; 100% only for all of it.
function wholePercent(share) {
  return percent(share < 1 ? Math.min(share, 0.99) : 1);
}

function levelWords(level) {
  return message(`practice-level-${level || "none"}`);
}

// A bar with its number in words beside it.
function bar(share, name) {
  const meter = Object.assign(made("meter"), { min: 0, max: 1, value: share });
  meter.setAttribute("aria-label", name);
  meter.setAttribute("aria-valuetext", wholePercent(share));
  return meter;
}

function skillLink(id, name) {
  const link = made("a", "", message("practice-practise"));
  link.href = `${COURSE.links.practice}#skill=${encodeURIComponent(id)}`;
  link.setAttribute("aria-label", message("practice-practise-this", { name }));
  return link;
}

function leastKnownFirst(skills) {
  return [...skills].sort((one, other) => one.known - other.known);
}

function dueInWords(days) {
  if (days === 0) return message("practice-due");
  if (days < 1) return message("practice-due-within");
  return days < 2 ? message("practice-due-tomorrow") : message("practice-due-in", { days: Math.floor(days) });
}

function oftenInWords(chosen, offered) {
  if (offered === 1) return message("practice-chosen-once");
  return chosen === offered ? message("practice-chosen-always", { offered }) : message("practice-chosen", { chosen, offered });
}

// How many answers there are, in how many skills, and what is most needed; remarks of the engine on the record.
function showStandingWords(overview) {
  const { skills, answers, next, others, notes } = overview;
  const practised = skills.filter((skill) => skill.answers > 0).length;
  const names = next.map((id) => skills.find((skill) => skill.id === id)?.name).filter(Boolean);
  const due = answers > 0 && names.length > 0 ? ` ${message("practice-needed", { skills: names.join("; ") })}` : "";
  say(byId("standing_words"), answers === 0 ? message("practice-standing-none") : `${message("practice-standing", { answers, skills: practised })}${due}`);
  const said = [...notes.map((note) => `${capitalised(note)}.`), ...(others > 0 ? [message("practice-others", { count: others })] : [])];
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
    const date = new Date(skill.last * 1000).toLocaleDateString(document.documentElement.lang === "en" ? "en-GB" : document.documentElement.lang, { dateStyle: "long" });
    practice.push(message("practice-answers", { count: skill.answers }), message("practice-average", { share: wholePercent(skill.credit) }), message("practice-last-on", { date }));
    if (skill.due_in_days !== null) practice.push(dueInWords(skill.due_in_days));
  }
  const level = made("p", "skill-level", `${levelWords(skill.level)} `, ...(skill.level ? [made("span", "skill-share", wholePercent(skill.known))] : []));
  const about = made("p", "small", practice.length > 0 ? `${capitalised(practice.join(", "))}. ` : "", skillLink(skill.id, skill.name));
  return made("li", "skill", made("p", "skill-name", skill.name), bar(skill.level ? skill.known : 0, skill.name), level, about);
}

function showSummary(summary) {
  const parts = [];
  if (summary.skills.length === 0) parts.push(made("p", "", message("practice-summary-none")));
  else {
    const head = made("tr", "", ...["skill", "answers", "credit", "before", "now"].map((name) => Object.assign(made("th", "", message(`practice-head-${name}`)), { scope: "col" })));
    const known = ([share, level]) => message("practice-known-share", { level: levelWords(level), share: wholePercent(share) });
    const rows = summary.skills.map((skill) => {
      const name = Object.assign(made("th", "", skill.name), { scope: "row" });
      return made("tr", "", name, ...[String(skill.answers), wholePercent(skill.credit), known(skill.before), known(skill.after)].map((text) => made("td", "", text)));
    });
    const table = made("div", "table", made("table", "shown-table", made("thead", "", head), made("tbody", "", ...rows)));
    table.tabIndex = 0;
    table.setAttribute("role", "region");
    table.setAttribute("aria-label", message("practice-summary-skills"));
    parts.push(table);
  }
  const list = (title, items) => {
    if (items.length > 0) parts.push(made("h3", "", title), made("ul", "", ...items.map((item) => made("li", "", ...item))));
  };
  list(message("practice-summary-next"), summary.next.map(([id, name]) => [`${name} `, skillLink(id, name)]));
  list(message("practice-summary-reread"), summary.reread.map((lesson) => around("practice-lesson-answers", "lesson", lessonLink(lesson), { count: lesson.answers })));
  list(message("practice-summary-beliefs"), summary.misconceptions.map(({ id, belief, chosen, offered, stands_out }) => {
    const link = made("a", "", belief);
    link.href = COURSE.links.misconceptions[id];
    return [made("q", "", link), ` ${oftenInWords(chosen, offered)}${stands_out ? ` ${message("practice-habit")}` : ""}`];
  }));
  byId("summary_parts").replaceChildren(...parts);
}
