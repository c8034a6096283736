// The case on the bench: what is chosen and set, and the request that the engine is asked with.

const COURSE = globalThis.healedhueCourse;
const CHOICES = {
  phototype: ["I", "II", "III", "IV", "V", "VI"],
  undertone: ["cool", "neutral", "warm", "olive"],
  redness: ["calm", "rosy", "flushed", "ruddy"],
  site: ["brow", "eyelid", "lip", "areola", "scalp"],
  sun: ["sheltered", "everyday", "outdoors"],
  oil: ["dry", "balanced", "oily"],
  aftercare: ["followed", "neglected"],
};
const MOST_OLD = 4;
const MOST_DROPS = 30;
const WORLDS = 256;
// The latest touch-up, in months after the first placement: that of the last time shown.
const LATEST_TOUCH_UP = 36;

function techniqueOf(id) {
  return COURSE.techniques.find((technique) => technique.id === id);
}

function clientOf(id) {
  return COURSE.clients.find((client) => client.id === id);
}

function bottleOf(id) {
  return COURSE.shelf.bottles.find((bottle) => bottle.id === id);
}

// Whether a bottle is meant for a site: one that names none is meant for every site.
function isMeantFor(bottle, site) {
  return bottle.sites.length === 0 || bottle.sites.includes(site);
}

// A mix to begin with at a site; null where the course has no bottle for it.
function firstMix(site) {
  const bottle = COURSE.shelf.bottles.find((known) => !known.modifier && isMeantFor(known, site) && !COURSE.restricted.includes(known.id));
  return bottle ? { [bottle.id]: 4 } : null;
}

// The case a page without an address begins with.
function freshCase() {
  const first = COURSE.clients.find((client) => client.existing.length === 0 && client.site === "brow") ?? COURSE.clients[0];
  const blank = {
    client: "",
    phototype: "III", undertone: "neutral", redness: "calm", scar: false, site: "brow",
    melanin: null, blood: null, background: null,
    existing: [],
    technique: "both",
    placement: { ...techniqueOf("both").placement },
    mix: firstMix("brow") ?? {},
    // Mixes that gave way at another site, by site.
    aside: {},
    goal: COURSE.goals[0]?.id ?? "",
    ownGoal: { lab: [45, 8, 12], tolerance: 4 },
    // Months until the same mix is placed again; 0 for never.
    touchUp: 0,
    sun: "everyday", oil: "balanced", aftercare: "followed",
    months: 1.5, light: "D65",
    mostBottles: 2, mostDrops: 6,
  };
  return first ? withClient(blank, first.id) : blank;
}

// The same case on another client; an empty id keeps the skin and describes it.
function withClient(state, id) {
  const client = clientOf(id);
  if (!client) return { ...state, client: "" };
  const { phototype, undertone, redness, scar, site, goal } = client;
  const existing = client.existing.map(({ work }) => structuredClone(work));
  return { ...withSite(state, site), client: id, phototype, undertone, redness, scar, goal, existing };
}

// The same case at a site, with the skin its words give. At another one a mix that is not meant for it is put aside for the way back, and one that
// is takes its place: what was put aside there, or a first one.
function withSite(state, site) {
  const there = { ...state, site, melanin: null, blood: null, background: null };
  const meant = Object.entries(state.mix).every(([id, count]) => count === 0 || isMeantFor(bottleOf(id), site));
  if (site === state.site || meant) return there;
  return { ...there, mix: state.aside[site] ?? firstMix(site) ?? state.mix, aside: { ...state.aside, [state.site]: state.mix } };
}

function goalOf(state) {
  return COURSE.goals.find((goal) => goal.id === state.goal) ?? { name: message("bench-goal-own"), ...state.ownGoal };
}

function skinOf(state) {
  const skin = { phototype: state.phototype, undertone: state.undertone, redness: state.redness };
  for (const name of ["melanin", "blood", "background"]) if (state[name] !== null) skin[name] = state[name];
  if (state.scar) skin.scar = true;
  return skin;
}

// The request, as `healedhue foresee` reads it.
function requestOf(state) {
  const { site, light, months, placement, existing, sun, oil, aftercare } = state;
  const mix = Object.fromEntries(Object.entries(state.mix).filter(([, count]) => count > 0));
  const touchUps = state.touchUp > 0 ? { touch_ups: [{ months: state.touchUp }] } : {};
  return { skin: skinOf(state), site, light, months, mix, placement, existing, sun, oil, aftercare, ...touchUps, worlds: WORLDS };
}

function surveyRequestOf(state) {
  const { lab, tolerance } = goalOf(state);
  return { case: { ...requestOf(state), worlds: 0 }, goal: { lab, tolerance } };
}

function searchRequestOf(state) {
  const { lab, tolerance } = goalOf(state);
  const search = { goal: lab, tolerance, bottles: state.mostBottles, drops: state.mostDrops };
  return { ...requestOf(state), worlds: 0, search };
}

// Rules that restrict anything in a mix, by the places of the colourants on the shelf.
function restrictionsOf(mix) {
  const inMix = Object.entries(mix).filter(([, count]) => count > 0).flatMap(([id]) => bottleOf(id)?.recipe ?? []);
  const places = [...new Set(inMix.map(([place]) => place))].sort((one, other) => one - other);
  const colourants = places.map((place) => COURSE.shelf.colourants[place]);
  return colourants.flatMap(({ id, name, restrictions }) => restrictions.map((rule) => message("bench-restriction", { id, name, ...rule })));
}

function hasMix(state) {
  return Object.values(state.mix).some((count) => count > 0);
}

// What old work is made of, in words.
function oldInWords(work) {
  const of = (amounts, name) => Object.entries(amounts).map(([id, amount]) => name(id, amount)).join(", ");
  if (work.mix) return of(work.mix, (id, count) => message("screen-drops-of", { count, name: bottleOf(id)?.name ?? id }));
  const named = (id) => COURSE.shelf.colourants.find((colourant) => colourant.id === id && !colourant.of_bottle)?.name;
  return of(work.colourants, (id) => (named(id) ? message("bench-colourant", { name: named(id), id }) : id));
}
