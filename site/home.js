"use strict";
// What is due for practice, on the home page: practice keeps on this device until when each skill is known well enough.
(() => {
  const due = document.getElementById("home_due");
  const entries = [...due.querySelectorAll("li[data-skill]")];
  let until;
  try {
    until = new Map(JSON.parse(localStorage.getItem(due.dataset.record) ?? "[]"));
  } catch {
    // No storage, or something else is kept there: nothing is known to be due.
    return;
  }
  const now = Date.now() / 1000;
  // In the order in which practice keeps them.
  const order = [...until.keys()];
  const known = entries.filter((entry) => Number.isFinite(until.get(entry.dataset.skill))).sort((one, other) => order.indexOf(one.dataset.skill) - order.indexOf(other.dataset.skill));
  if (known.length === 0) return;
  const open = known.filter((entry) => until.get(entry.dataset.skill) <= now);
  for (const entry of open) {
    entry.hidden = false;
    entry.parentNode.append(entry);
  }
  const next = Math.min(...known.map((entry) => until.get(entry.dataset.skill)).filter((time) => time > now));
  const later = due.querySelector("[data-later]");
  if (open.length === 0 && Number.isFinite(next)) {
    const date = later.querySelector("time");
    const day = new Date(next * 1000);
    date.dateTime = day.toISOString().slice(0, 10);
    date.textContent = day.toLocaleDateString(document.documentElement.lang === "en" ? "en-GB" : document.documentElement.lang, { dateStyle: "long", ...(day.toDateString() === new Date().toDateString() ? { timeStyle: "short" } : {}) });
    later.hidden = false;
  }
  due.hidden = false;
})();
