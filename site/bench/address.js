// The case in the address, behind the #, so that it can be sent as a link. Only what differs from a fresh case stands there.
//
// client=ID  skin=II,cool,ruddy  melanin=0.03  blood=…  background=…  scar=yes  site=lip  old=…;…  technique=strokes
// placement=DEPTH,THICKNESS,LOAD,COVERAGE  mix=ID~DROPS,…  goal=ID  own=L,a,b,TOLERANCE  touch=MONTHS  sun= oil= aftercare=  months=12
// light=A  most=BOTTLES,DROPS. Old work: c: (colourants) or m: (mix), ID~AMOUNT,… @ its placement @ its months.

const NUMBER = /^-?\d+(\.\d+)?(e-?\d+)?$/i;

function writeAddress(state) {
  const parts = [];
  const add = (key, value) => parts.push(`${key}=${encodeURIComponent(value).replace(/%(2C|3A|3B|40)/g, decodeURIComponent)}`);
  const placed = ({ depth_mm, thickness_mm, load, coverage }) => [depth_mm, thickness_mm, load, coverage].join(",");
  const amounts = (of) => Object.entries(of).filter(([, amount]) => amount > 0).map(([id, amount]) => `${id}~${amount}`).join(",");
  const old = (work) => `${work.mix ? "m" : "c"}:${amounts(work.mix ?? work.colourants)}@${placed(work.placement)}@${work.months}`;
  const based = withClient(freshCase(), state.client);
  const client = clientOf(state.client);
  if (client) add("client", state.client);
  const words = ["phototype", "undertone", "redness"];
  if (!client || words.some((word) => state[word] !== based[word])) add("skin", words.map((word) => state[word]).join(","));
  for (const name of ["melanin", "blood", "background"]) if (state[name] !== null) add(name, state[name]);
  if (state.scar !== based.scar) add("scar", state.scar ? "yes" : "no");
  if (!client || state.site !== based.site) add("site", state.site);
  const [olds, were] = [state.existing, client ? based.existing : []].map((list) => list.map(old).join(";"));
  if (olds !== were) add("old", olds || "none");
  add("technique", state.technique);
  if (placed(state.placement) !== placed(techniqueOf(state.technique).placement)) add("placement", placed(state.placement));
  add("mix", amounts(state.mix) || "none");
  if (!state.goal) add("own", [...state.ownGoal.lab, state.ownGoal.tolerance].join(","));
  else if (!client || state.goal !== based.goal) add("goal", state.goal);
  if (state.touchUp > 0) add("touch", state.touchUp);
  for (const name of ["sun", "oil", "aftercare", "months", "light"]) if (state[name] !== based[name]) add(name, state[name]);
  if (state.mostBottles !== 2 || state.mostDrops !== 6) add("most", `${state.mostBottles},${state.mostDrops}`);
  return `#${parts.join("&")}`;
}

// The case that an address tells of, and the parts of it that say nothing. Names that are not known and numbers out of range are left
// out one by one: a link that was cut short still shows what it can.
function readAddress(hash) {
  const amiss = [];
  const parts = new Map();
  for (const part of hash.replace(/^#/, "").split("&").filter(Boolean)) {
    const at = part.indexOf("=");
    try {
      if (at < 0) throw new URIError(part);
      parts.set(part.slice(0, at), decodeURIComponent(part.slice(at + 1)));
    } catch {
      amiss.push(part);
    }
  }
  let state = freshCase();
  if (parts.has("client") || parts.has("skin")) state = withClient(state, clientOf(parts.get("client")) ? parts.get("client") : "");
  if (parts.has("skin") && !clientOf(parts.get("client"))) state.existing = [];
  for (const [key, text] of parts) if (!(READERS.get(key)?.(state, text) ?? false)) amiss.push(key);
  return { state, amiss };
}

function numbers(text, count) {
  const found = text.split(",");
  return found.length === count && found.every((number) => NUMBER.test(number)) ? found.map(Number) : null;
}

function within(value, [least, most]) {
  return value >= least && value <= most;
}

function readPlacement(text) {
  const found = numbers(text, 4);
  if (!found) return null;
  const [depth_mm, thickness_mm, load, coverage] = found;
  const fine = within(depth_mm, [0, 3]) && within(thickness_mm, [0.01, 2]) && within(load, [0, 5]) && within(coverage, [0, 1]);
  return fine ? { depth_mm, thickness_mm, load, coverage } : null;
}

// Amounts by id, all of them known; null otherwise.
function readAmounts(text, known, most) {
  const found = {};
  for (const entry of text === "none" ? [] : text.split(",")) {
    const [id, amount] = entry.split("~");
    if (!known(id) || !NUMBER.test(amount ?? "") || !within(Number(amount), [0, most])) return null;
    Object.defineProperty(found, id, { value: Number(amount), enumerable: true, writable: true, configurable: true });
  }
  return found;
}

function readOld(text) {
  const [what, where, months] = text.split("@");
  const placement = readPlacement(where ?? "");
  if (!placement || !NUMBER.test(months ?? "") || !within(Number(months), [0, 600])) return null;
  const amounts = what.slice(2);
  const colourant = (id) => COURSE.shelf.colourants.some((known) => known.id === id && !known.of_bottle);
  if (what.startsWith("m:")) {
    const mix = readAmounts(amounts, bottleOf, 1000);
    return mix && Object.values(mix).every(Number.isInteger) ? { mix, placement, months: Number(months) } : null;
  }
  const colourants = what.startsWith("c:") ? readAmounts(amounts, colourant, 20) : null;
  return colourants && { colourants, placement, months: Number(months) };
}

// One for each part. Each changes the case and says whether it understood.
const READERS = new Map([
  ["client", (_, text) => Boolean(clientOf(text))],
  ["skin", (state, text) => {
    const words = text.split(",");
    const names = ["phototype", "undertone", "redness"];
    if (words.length !== 3 || !names.every((name, place) => CHOICES[name].includes(words[place]))) return false;
    names.forEach((name, place) => (state[name] = words[place]));
    return true;
  }],
  ...["melanin", "blood", "background"].map((name) => [name, (state, text) => {
    const fine = NUMBER.test(text) && within(Number(text), [0, COURSE.skin_sliders[name][1]]);
    if (fine) state[name] = Number(text);
    return fine;
  }]),
  ["scar", (state, text) => {
    const fine = ["yes", "no"].includes(text);
    if (fine) state.scar = text === "yes";
    return fine;
  }],
  ["touch", (state, text) => {
    const fine = NUMBER.test(text) && within(Number(text), [0.5, LATEST_TOUCH_UP]);
    if (fine) state.touchUp = Number(text);
    return fine;
  }],
  ...["site", "sun", "oil", "aftercare"].map((name) => [name, (state, text) => {
    const fine = CHOICES[name].includes(text);
    if (fine) state[name] = text;
    return fine;
  }]),
  ["old", (state, text) => {
    const works = text === "none" ? [] : text.split(";").map(readOld);
    const fine = works.length <= MOST_OLD && works.every(Boolean);
    if (fine) state.existing = works;
    return fine;
  }],
  ["technique", (state, text) => {
    const technique = techniqueOf(text);
    if (technique) Object.assign(state, { technique: text, placement: { ...technique.placement } });
    return Boolean(technique);
  }],
  ["placement", (state, text) => {
    const placement = readPlacement(text);
    if (placement) state.placement = placement;
    return Boolean(placement);
  }],
  ["mix", (state, text) => {
    const mix = readAmounts(text, bottleOf, MOST_DROPS);
    const fine = mix && Object.values(mix).every(Number.isInteger);
    if (fine) state.mix = mix;
    return Boolean(fine);
  }],
  ["goal", (state, text) => {
    const fine = COURSE.goals.some((goal) => goal.id === text);
    if (fine) state.goal = text;
    return fine;
  }],
  ["own", (state, text) => {
    const found = numbers(text, 4);
    const fine = found && within(found[0], [0, 100]) && found.slice(1, 3).every((x) => within(x, [-128, 128])) && within(found[3], [0.5, 20]);
    if (fine) Object.assign(state, { goal: "", ownGoal: { lab: found.slice(0, 3), tolerance: found[3] } });
    return Boolean(fine);
  }],
  ["months", (state, text) => {
    const time = TIMES.find(({ months }) => String(months) === text);
    if (time) state.months = time.months;
    return Boolean(time);
  }],
  ["light", (state, text) => {
    const fine = LIGHTS.includes(text);
    if (fine) state.light = text;
    return fine;
  }],
  ["most", (state, text) => {
    const found = numbers(text, 2);
    const fine = found && [1, 2, 3].includes(found[0]) && [3, 4, 6, 8].includes(found[1]);
    if (fine) [state.mostBottles, state.mostDrops] = found;
    return Boolean(fine);
  }],
]);
