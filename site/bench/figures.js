// Numbers and times as people read them, and small tools for making elements. The same forms as on the other pages.

const LIGHTS = ["D65", "A", "LED-B3", "FL2"];
const LIGHT_WORDS = { D65: "daylight", A: "tungsten light", "LED-B3": "white LED light", FL2: "cool fluorescent light" };
const TIMES = [
  { months: 0, words: "on the day", mark: "day" },
  { months: 1.5, words: "six weeks", mark: "6 w" },
  { months: 12, words: "1 year", mark: "1 y" },
  { months: 24, words: "2 years", mark: "2 y" },
  { months: 36, words: "3 years", mark: "3 y" },
];

function byId(id) {
  return document.getElementById(id);
}

// With so many decimals, a true minus sign and no negative zero.
function fixed(value, decimals) {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && /[1-9]/.test(text) ? `\u2212${text}` : text;
}

// At most so many decimals, none of them a closing zero.
function short(value, decimals = 2) {
  const text = fixed(value, decimals);
  return text.includes(".") ? text.replace(/0+$/, "").replace(/\.$/, "") : text;
}

function percent(share) {
  return `${short(share * 100, share < 0.1 ? 1 : 0)}%`;
}

function age(months) {
  const years = months / 12;
  if (months >= 24) return `${short(years, 1)} years`;
  return months === 12 ? "1 year" : `${short(months, 1)} months`;
}

function capitalised(text) {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function drops(count) {
  return `${count} ${count === 1 ? "drop" : "drops"}`;
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
