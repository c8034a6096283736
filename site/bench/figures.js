// Numbers and times as people read them, and small tools for making elements. The same forms as on the other pages.

const LIGHTS = ["D65", "A", "LED-B3", "FL2"];
const TIMES = [
  { months: 0, name: "day" },
  { months: 1.5, name: "six-weeks" },
  { months: 12, name: "years" },
  { months: 24, name: "years" },
  { months: 36, name: "years" },
];
const DECIMAL_MARK = message("decimal-mark");

// `form` is "-in" where it stands after "in".
function lightInWords(light, form = "") {
  return message(`screen-light-${light.toLowerCase()}${form}`);
}

// A time as the name of a column.
function nameOfTime(months) {
  const time = TIMES.find((known) => known.months === months);
  return time ? message(`screen-time-${time.name}`, { years: months / 12 }) : age(months);
}

// A time as an answer to "when?".
function whenInWords(months) {
  const time = TIMES.find((known) => known.months === months);
  if (time) return message(`screen-when-${time.name}`, { years: months / 12 });
  return message("screen-when-later", { age: age(months, "-after") });
}

function judgedInWords({ months, light }) {
  return message("screen-judged", { when: whenInWords(months), light: lightInWords(light, "-in") });
}

// A message with an element in the place of one of its values, as parts of a parent.
function around(id, name, element, values = {}) {
  const place = "\u0001";
  const [before, after = ""] = message(id, { ...values, [name]: place }).split(place);
  return [before, element, after];
}

function byId(id) {
  return document.getElementById(id);
}

// With so many decimals and the language's mark before them, a true minus sign and no negative zero. Every number with decimals is
// written here.
function fixed(value, decimals) {
  const text = Math.abs(value).toFixed(decimals).replace(".", DECIMAL_MARK);
  return value < 0 && /[1-9]/.test(text) ? `\u2212${text}` : text;
}

// At most so many decimals, none of them a closing zero.
function short(value, decimals = 2) {
  const text = fixed(value, decimals);
  if (!text.includes(DECIMAL_MARK)) return text;
  const shorter = text.replace(/0+$/, "");
  return shorter.endsWith(DECIMAL_MARK) ? shorter.slice(0, -DECIMAL_MARK.length) : shorter;
}

function percent(share) {
  return message("screen-percent", { number: short(share * 100, share < 0.1 ? 1 : 0) });
}

// `form` is "-after" where a language says "after …".
function age(months, form = "") {
  const years = months / 12;
  if (months >= 24 || months === 12) return message(`screen-age-years${form}`, { years, number: short(years, 1) });
  return message(`screen-age-months${form}`, { months, number: short(months, 1) });
}

function capitalised(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

// "a", "a and b", "a, b and c".
function inARow(words) {
  if (words.length < 2) return words.join("");
  return message("screen-in-a-row", { first: words.slice(0, -1).join(", "), last: words.at(-1) });
}

function labInWords([l, a, b]) {
  // No line ends between a letter and its number.
  return message("screen-lab", { l: fixed(l, 1), a: fixed(a, 1), b: fixed(b, 1) }).replaceAll("* ", "*\u00a0");
}

// An element with a class and with text or children.
function made(name, className = "", ...content) {
  const element = document.createElement(name);
  if (className) element.className = className;
  element.append(...content);
  return element;
}

function drawn(name, attributes = {}, text = "") {
  const element = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  if (text) element.textContent = text;
  return element;
}

// Text that is only written where it changed, so that nothing is laid out or read out for nothing.
function say(element, text) {
  if (element.textContent !== text) element.textContent = text;
}
