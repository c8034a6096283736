// What the page takes along of the course.

const COURSE = globalThis.healedhueCourse;

// Old work is drawn as it was made, new work in the usual way.
function techniqueOf(technique) {
  return { manner: technique };
}

function now() {
  return Math.floor(Date.now() / 1000);
}

// A place for the seed of a session: any whole number that both sides write alike.
function anySeed() {
  const [high, low] = crypto.getRandomValues(new Uint32Array(2));
  return (high % 2 ** 21) * 2 ** 32 + low;
}
