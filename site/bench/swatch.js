// Swatches as on the other pages: grey, the client's skin on it, the work on that, words and L*a*b* below. Made once and then only
// repainted, so that a slider is answered within a frame.

const WIDE = Boolean(globalThis.matchMedia?.("(color-gamut: p3)").matches && globalThis.CSS?.supports("color", "color(display-p3 0 0 0)"));

// The colour for this screen, as CSS writes it.
function paintOf({ srgb, in_gamut, display_p3 }) {
  if (!in_gamut && WIDE) return `color(display-p3 ${display_p3.rgb.map((part) => part.toFixed(4)).join(" ")})`;
  return `#${srgb.map((part) => part.toString(16).padStart(2, "0")).join("")}`;
}

// Whether this screen shows the colour as it is.
function isShown({ in_gamut, display_p3 }) {
  return in_gamut || (WIDE && display_p3.in_gamut);
}

// Decoration where words stand beside it anyway; a picture with a name otherwise.
class Drawing {
  constructor() {
    this.svg = drawn("svg", { viewBox: "0 0 240 144", role: "img", focusable: "false" });
    this.skin = drawn("rect", { x: 14, y: 14, width: 212, height: 116 });
    this.work = drawn("g");
    this.svg.append(drawn("rect", { width: 240, height: 144, fill: COURSE.surround }), this.skin, this.work);
  }

  // `work` is null for a place without any; `around` is the skin around a place that has an edge, whose shape is then drawn in either case.
  paint(bare, work, site, technique, around = null) {
    const patch = around ? (work ?? bare) : work;
    const shape = patch ? `${site} ${technique}` : "";
    if (shape !== this.shape) {
      const paths = patch ? COURSE.drawings[site][techniqueOf(technique).manner] : [];
      this.work.replaceChildren(...paths.map((d) => drawn("path", { d })));
      this.shape = shape;
    }
    this.skin.setAttribute("fill", paintOf(around ?? bare));
    if (patch) this.work.setAttribute("fill", paintOf(patch));
  }
}

// Bare skin in words, as on the other pages: by how light it is alone.
function skinInPlainWords({ lab: [l] }) {
  return (COURSE.skin_words.find(([least]) => l >= least) ?? COURSE.skin_words.at(-1))[1];
}

class Swatch {
  // `brief` stands for the label where there is little room.
  constructor(label, brief = label) {
    this.drawing = new Drawing();
    this.parts = { label: made("b"), words: made("span"), lab: made("small"), note: made("i") };
    this.numbers = ["L*", "a*", "b*"].map((axis) => {
      const number = made("span", "swatch-number");
      this.parts.lab.append(made("span", "swatch-axis", `${axis}\u00a0`, number), " ");
      return number;
    });
    this.label = made("span", "swatch-full", label);
    const short = made("span", "swatch-brief", brief);
    short.setAttribute("aria-hidden", "true");
    this.parts.label.append(this.label, short);
    this.figure = made("figure", "swatch", this.drawing.svg, made("figcaption", "", ...Object.values(this.parts)));
  }

  // `colour` is what is seen; `skin` the place without work, both the same where there is none; `around` the skin around a place with an edge.
  paint({ colour, skin, around = null, words, site, technique, bare = false, notes = [], name = "" }) {
    this.drawing.paint(skin, bare ? null : colour, site, technique, around);
    const label = name || this.label.textContent;
    const said = bare && !around ? skinInPlainWords(colour) : words;
    this.drawing.svg.setAttribute("aria-label", message("screen-named", { name: label, words: bare ? `${message("screen-bare", { site })}, ${said}` : said }));
    if (name) say(this.label, name);
    say(this.parts.words, said);
    colour.lab.forEach((number, place) => say(this.numbers[place], fixed(number, 1)));
    this.figure.dataset.lab = JSON.stringify(colour.lab);
    say(this.parts.note, [...notes, ...outsideNotes(colour, around ?? skin)].join("; "));
  }
}

function outsideNotes(colour, skin) {
  if (!isShown(colour) || !isShown(skin)) return [message("screen-beyond-nearest")];
  return colour.in_gamut && skin.in_gamut ? [] : [message("screen-beyond-srgb")];
}
