// The engine's reading, put into sentences.

// "a", "a and b", "a, b and c".
function inARow(words) {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

function nameOfTime(months) {
  return TIMES.find((time) => time.months === months)?.words ?? age(months);
}

function judgedInWords({ months, light }) {
  return `${nameOfTime(months)}, in ${LIGHT_WORDS[light]}`;
}

// What is seen at the time and in the light judged, how it goes on, and whether it reaches the goal.
function readingOf(state, survey) {
  const place = LIGHTS.indexOf(state.light);
  const now = survey.moments.find((moment) => moment.months === state.months).seen[place];
  const said = [`${capitalised(judgedInWords(state))}: ${now.reading.words}.`, goalInWords(state, now)];
  const last = survey.moments.at(-1);
  if (hasMix(state) && state.months < last.months) {
    const later = last.seen[place];
    const same = later.reading.words === now.reading.words;
    said.push(`After ${nameOfTime(last.months)}: ${same ? "the same words still hold" : later.reading.words}.`);
  }
  const apart = new Map();
  for (const seen of survey.moments.find((moment) => moment.months === state.months).seen) {
    const tone = seen.reading.words.split(", ").at(-1);
    if (seen.reading.tone !== now.reading.tone) apart.set(tone, [...(apart.get(tone) ?? []), LIGHT_WORDS[seen.light]]);
  }
  const elsewhere = [...apart].map(([tone, lights]) => `${tone} in ${inARow(lights)}`);
  if (elsewhere.length > 0 && hasMix(state)) said.push(`Other light changes the word: ${elsewhere.join("; ")}.`);
  if (!hasMix(state)) said.unshift("No new work: the mix is empty.");
  return said.join(" ");
}

function goalInWords(state, seen) {
  const { name, tolerance } = goalOf(state);
  const away = seen.delta_e_2000_to_goal;
  const reached = away <= tolerance ? "reached" : "not reached";
  return `The goal, ${name}, is ${reached}: ΔE00 ${fixed(away, 1)} from it, ${short(tolerance, 1)} allowed.`;
}
