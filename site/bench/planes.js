// The planes a*b* and L*C* of CIELAB: skin, the work over time, the goal's outline and that of likely outcomes. Marks have names and
// shapes, so that colour is never the only carrier; the numbers stand in the table of all times.

const FIELD = { width: 400, height: 340, left: 58, right: 14, top: 14, bottom: 44 };

// Where a colour lies in a plane, and what its axes are called.
const PLANES = [
  { key: "ab", x: "a*", y: "b*", title: message("bench-plane-ab"), at: ([, a, b]) => [a, b], most: [[-5, 25], [-5, 25]] },
  { key: "cl", x: "C*", y: "L*", title: message("bench-plane-cl"), at: ([l, a, b]) => [Math.hypot(a, b), l], most: [[0, 30], [30, 70]] },
];

class Plane {
  constructor(plane) {
    this.plane = plane;
    this.svg = drawn("svg", { viewBox: `0 0 ${FIELD.width} ${FIELD.height}`, role: "img", focusable: "false", class: "plane" });
    this.layers = ["grid", "region", "goal", "trail", "marks", "names"].map((name) => drawn("g", { class: `plane-${name}` }));
    this.svg.append(...this.layers);
    this.figure = made("figure", "plane-figure", made("figcaption", "small", plane.title), this.svg);
  }

  // Marks: {name, lab, fill, shape, judged, star}. Outlines may be missing.
  paint({ marks, trail, goal, region, words }) {
    const at = this.plane.at;
    const points = marks.map((mark) => at(mark.lab));
    const lines = [goal?.outline[this.plane.key], region?.[this.plane.key]];
    const field = this.fieldOf([...points, ...lines.filter(Boolean).flat()]);
    const [grid, regionLayer, goalLayer, trailLayer, marksLayer, names] = this.layers;
    if (field.key !== this.key) {
      grid.replaceChildren(...this.grid(field));
      this.key = field.key;
    }
    const path = (line, close) => line.map((point, place) => `${place ? "L" : "M"}${field.to(point).map((x) => x.toFixed(1)).join(" ")}`).join("") + (close ? "Z" : "");
    goalLayer.replaceChildren(...(lines[0] ? [drawn("path", { d: path(lines[0], true) })] : []));
    regionLayer.replaceChildren(...(lines[1] ? [drawn("path", { d: path(lines[1], true) })] : []));
    trailLayer.replaceChildren(drawn("path", { d: path(trail.map(at), false) }));
    marksLayer.replaceChildren(...marks.flatMap((mark, place) => shapeOf(mark, field.to(points[place]))));
    names.replaceChildren(...this.names(field, marks.map((mark, place) => [mark, field.to(points[place])]), lines.map((line) => line?.map(field.to))));
    this.svg.setAttribute("aria-label", message("bench-plane-described", { title: this.plane.title, marks: words }));
  }

  // Bounds in whole tens that hold everything, with equal units on both axes.
  fieldOf(points) {
    const bounds = [0, 1].map((axis) => {
      const values = points.map((point) => point[axis]);
      const least = Math.min(this.plane.most[axis][0], ...values);
      const most = Math.max(this.plane.most[axis][1], ...values);
      return [Math.floor(least / 5) * 5, Math.ceil(most / 5) * 5];
    });
    const [width, height] = [FIELD.width - FIELD.left - FIELD.right, FIELD.height - FIELD.top - FIELD.bottom];
    const unit = Math.min(width / (bounds[0][1] - bounds[0][0]), height / (bounds[1][1] - bounds[1][0]));
    // Room that is left over goes to both sides, or to the far one of an axis that begins at nothing.
    const room = [width, height].map((size, axis) => size / unit - (bounds[axis][1] - bounds[axis][0]));
    const from = bounds.map(([least], axis) => (least === 0 ? 0 : least - room[axis] / 2));
    const upTo = from.map((least, axis) => least + [width, height][axis] / unit);
    return {
      key: JSON.stringify(bounds), from, upTo, unit,
      to: ([x, y]) => [FIELD.left + (x - from[0]) * unit, FIELD.height - FIELD.bottom - (y - from[1]) * unit],
    };
  }

  grid(field) {
    const made = [];
    const ticks = (axis) => {
      const all = [];
      for (let value = Math.ceil(field.from[axis] / 10) * 10; value <= field.upTo[axis]; value += 10) all.push(value);
      return all;
    };
    const [left, right, top, bottom] = [FIELD.left, FIELD.width - FIELD.right, FIELD.top, FIELD.height - FIELD.bottom];
    for (const value of ticks(0)) {
      const [x] = field.to([value, 0]);
      made.push(drawn("path", { d: `M${x.toFixed(1)} ${top}V${bottom}`, class: value === 0 ? "zero" : "" }), drawn("text", { x: x.toFixed(1), y: bottom + 16, "text-anchor": "middle" }, fixed(value, 0)));
    }
    for (const value of ticks(1)) {
      const [, y] = field.to([0, value]);
      made.push(drawn("path", { d: `M${left} ${y.toFixed(1)}H${right}`, class: value === 0 ? "zero" : "" }), drawn("text", { x: left - 7, y: (y + 4).toFixed(1), "text-anchor": "end" }, fixed(value, 0)));
    }
    made.push(drawn("text", { x: (left + right) / 2, y: bottom + 36, "text-anchor": "middle", class: "axis" }, this.plane.x));
    made.push(drawn("text", { x: 8, y: (top + bottom) / 2, class: "axis" }, this.plane.y));
    return made;
  }

  // Names beside their marks, each where there is still room and the fewest lines run; then those of the outlines.
  names(field, marks, [goal, region]) {
    const taken = marks.map(([, [x, y]]) => [x - 7, y - 7, x + 7, y + 7]);
    const lines = [...between(marks.filter(([mark]) => mark.shape === "round").map(([, at]) => at)), ...between(goal ?? []), ...between(region ?? [])];
    const crossed = (box) => lines.filter(([x, y]) => x > box[0] && x < box[2] && y > box[1] && y < box[3]).length;
    const free = (box) => box[0] > FIELD.left && box[2] < FIELD.width && box[1] > 2 && box[3] < FIELD.height - FIELD.bottom
      && taken.every((other) => box[2] < other[0] || box[0] > other[2] || box[3] < other[1] || box[1] > other[3]);
    const name = (text, [x, y], far) => {
      const width = 7.6 * text.length + 2;
      let best = null;
      for (const away of [11, 20, 32, 46]) {
        for (const [dx, dy] of [[1, 0], [-1, 0], [0, -1], [0, 1], [0.8, -0.8], [-0.8, -0.8], [0.8, 0.8], [-0.8, 0.8]]) {
          const middle = [x + dx * (away + width / 2), y + dy * (away + 4)];
          const box = [middle[0] - width / 2, middle[1] - 7, middle[0] + width / 2, middle[1] + 7];
          const cost = away + 2 * crossed(box);
          if (free(box) && (!best || cost < best.cost)) best = { cost, away, middle, box, dy };
        }
      }
      if (!best) return [];
      const { away, middle, box, dy } = best;
      taken.push(box);
      const written = drawn("text", { x: middle[0].toFixed(1), y: (middle[1] + 4).toFixed(1), "text-anchor": "middle" }, text);
      if (away < 20 || far) return [written];
      const end = [middle[0], middle[1] + (dy > 0 ? -7 : dy < 0 ? 7 : 0)];
      // The next name does not stand on this one's line.
      lines.push(...between([[x, y], end]));
      return [drawn("path", { d: `M${x.toFixed(1)} ${y.toFixed(1)}L${end[0].toFixed(1)} ${end[1].toFixed(1)}` }), written];
    };
    // The times between the day and the last are told by the line through them, unless one is judged: named all, they would lie on each other.
    const times = marks.filter(([mark]) => mark.shape === "round");
    const named = marks.filter((mark) => mark[0].judged || !times.includes(mark) || mark === times[0] || mark === times.at(-1));
    named.sort(([one], [other]) => Number(other.judged ?? false) - Number(one.judged ?? false));
    const made = named.flatMap(([mark, at]) => name(mark.name + (mark.star ? "*" : ""), at));
    const top = (line) => line.reduce((highest, point) => (point[1] < highest[1] ? point : highest));
    if (region) made.push(...name(message("bench-mark-likely"), top(region), true));
    return made;
  }
}

// Points along a line, near enough to each other that none of it slips through a name.
function between(line) {
  return line.slice(1).flatMap(([x, y], place) => {
    const [fromX, fromY] = line[place];
    const steps = Math.max(1, Math.ceil(Math.hypot(x - fromX, y - fromY) / 4));
    return Array.from({ length: steps }, (_, step) => [fromX + ((x - fromX) * step) / steps, fromY + ((y - fromY) * step) / steps]);
  });
}

function shapeOf({ fill, shape, judged }, [x, y]) {
  const [left, top] = [x.toFixed(1), y.toFixed(1)];
  const shapes = {
    square: () => drawn("rect", { x: (x - 5).toFixed(1), y: (y - 5).toFixed(1), width: 10, height: 10, fill }),
    lozenge: () => drawn("path", { d: `M${left} ${(y - 7).toFixed(1)}l7 7l-7 7l-7 -7Z`, fill, class: "filled" }),
    round: () => drawn("circle", { cx: left, cy: top, r: 5, fill }),
    cross: () => drawn("path", { d: `M${(x - 6).toFixed(1)} ${top}h12M${left} ${(y - 6).toFixed(1)}v12`, class: "cross" }),
  };
  const ring = judged ? [drawn("circle", { cx: left, cy: top, r: 9, class: "ring" })] : [];
  return [...ring, shapes[shape]()];
}
