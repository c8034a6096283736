// What the engine answers, put into sentences.

// A reading of a colour: how deep it is, and its tone.
function toneInWords(reading) {
  return message("reading-words", { depth: depthInWords(reading), tone: toneAlone(reading) });
}

// Its tone alone.
function toneAlone({ tone }) {
  return message(`reading-tone-${tone}`);
}

// How deep it is alone.
function depthInWords({ depth }) {
  return message(`reading-depth-${depth.replaceAll(" ", "-")}`);
}

// A time as the name of a mark in a plane.
function markOfTime(months) {
  return message(`bench-mark-${TIMES.find((time) => time.months === months).name}`, { years: months / 12 });
}

// Which way a colour has gone, the greatest change first: only changes of at least this much, or the greatest.
function senses(shift, least) {
  const names = [["lighter", "deeper"], ["redder", "greener"], ["warmer", "cooler"]];
  const all = shift.map((change, axis) => ({ change: Math.abs(change), sense: names[axis][change > 0 ? 0 : 1] }));
  all.sort((one, other) => other.change - one.change);
  const counted = Math.max(1, all.filter(({ change }) => change >= least).length);
  return all.slice(0, counted).filter(({ change }) => change > 0).map(({ sense }) => sense);
}

// With its sign and one decimal.
function signed(value) {
  return `${value < 0 ? "\u2212" : "+"}${fixed(Math.abs(value), 1)}`;
}

// How sure a colour is: the region's main axis, said both ways.
function likelyInWords(state, { within_delta_e_2000: within, region }) {
  const judged = capitalised(judgedInWords(state));
  if (within < 1e-9) return message("bench-likely-nothing", { judged });
  const { half_length, direction } = region.axes[0];
  const found = (way) => (half_length > 0 ? senses(direction.map((part) => way * part), 0.5) : []).map((sense) => message(`bench-sense-${sense}`));
  const [one, other] = [found(1), found(-1)];
  return message(one.length > 1 ? "bench-likely-several" : "bench-likely", { judged, distance: Math.ceil(within), one: inARow(one), other: inARow(other) });
}

// What is seen at the time and in the light judged, how it goes on, and whether it reaches the goal.
function readingOf(state, survey) {
  const place = LIGHTS.indexOf(state.light);
  const now = survey.moments.find((moment) => moment.months === state.months).seen[place];
  const said = [seenInWords(state, now), ...touchUpInWords(state), goalInWords(state, now)];
  const last = survey.moments.at(-1);
  if (hasMix(state) && state.months < last.months) {
    const [words, years] = [toneInWords(last.seen[place].reading), last.months / 12];
    said.push(words === toneInWords(now.reading) ? message("bench-later-same", { years }) : message("bench-later", { years, words }));
  }
  const apart = new Map();
  for (const seen of survey.moments.find((moment) => moment.months === state.months).seen) {
    const { tone } = seen.reading;
    if (tone !== now.reading.tone) apart.set(tone, [...(apart.get(tone) ?? []), lightInWords(seen.light, "-in")]);
  }
  const elsewhere = [...apart].map(([tone, lights]) => message("bench-tone-in", { tone: toneAlone({ tone }), lights: inARow(lights) }));
  if (elsewhere.length > 0 && hasMix(state)) said.push(message("bench-other-light", { tones: elsewhere.join("; ") }));
  if (!hasMix(state)) said.unshift(message("bench-no-work"));
  return said.join(" ");
}

// Whether the same mix was placed again by the time judged.
function touchUpInWords({ touchUp, months }) {
  return touchUp > 0 && touchUp <= months ? [message("bench-touched-up", { age: age(touchUp, "-after") })] : [];
}

function seenInWords(state, { reading }) {
  return message("bench-seen", { judged: capitalised(judgedInWords(state)), words: toneInWords(reading) });
}

function goalInWords(state, seen) {
  const { name, tolerance } = goalOf(state);
  const away = seen.delta_e_2000_to_goal;
  return message(away <= tolerance ? "bench-goal-reached" : "bench-goal-missed", { name, distance: fixed(away, 1), tolerance: short(tolerance, 1) });
}
