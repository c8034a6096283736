// Search: reads the words, asks the library, and lists what it finds. Everything found is set as text, never as markup.
(() => {
  const MOST = 30;
  const AROUND = 90;
  const form = document.getElementById("search_form");
  const field = document.getElementById("search_words");
  const count = document.getElementById("search_count");
  const list = document.getElementById("search_findings");
  const findings = globalThis.healedhueCourse;
  // Letters with and without accents are the same; an asterisk of L*a*b* is no part of a word.
  const plain = (word) => word.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  // Every word of the course.
  const known = new Set();
  const index = new MiniSearch({
    fields: ["title", "also", "part", "text"],
    processTerm: (word) => {
      const term = plain(word);
      known.add(term);
      return term || null;
    },
    searchOptions: {
      processTerm: (word) => plain(word) || null,
      boost: { title: 4, also: 4, part: 2 },
      prefix: (word) => word.length > 2,
      fuzzy: (word) => (word.length > 5 ? 0.2 : 0),
      combineWith: "AND",
      boostDocument: (id) => (findings[id].kind === "Lesson" ? 1 : 1.3),
    },
  });
  index.addAll(findings);
  const begins = (word) => known.has(word) || (word.length > 2 && [...known].some((other) => other.startsWith(word)));
  // What a word becomes where two neighbouring letters are exchanged, if that is a word of the course: one slip of the fingers, though
  // two letters are wrong.
  const exchanged = (word) => {
    const letters = [...word];
    const swaps = letters.slice(1).map((letter, at) => [...letters.slice(0, at), letter, letters[at], ...letters.slice(at + 2)].join(""));
    return [...new Set(swaps)].filter((swap) => swap !== word && begins(swap));
  };
  // Of words of four or five letters so many are like one another that a slip is looked for only where there is nothing else, and only in
  // words that are not there as they are written.
  const forgiving = (written) => {
    const word = plain(written);
    if (word.length < 4 || begins(word)) return word;
    const swaps = exchanged(word);
    if (swaps.length > 0) return { combineWith: "OR", fuzzy: 0, queries: swaps };
    return { queries: [word], fuzzy: word.length > 5 ? 0.2 : 1 };
  };
  const find = (words) => {
    const found = index.search(words);
    if (found.length > 0) return found;
    const queries = MiniSearch.getDefault("tokenize")(words).filter((word) => plain(word) !== "").map(forgiving);
    return index.search({ combineWith: "AND", queries });
  };

  const element = (name, text, kind) => {
    const made = document.createElement(name);
    if (text) made.textContent = text;
    if (kind) made.className = kind;
    return made;
  };

  // The words around the first of the terms, the terms marked.
  const excerpt = (text, terms) => {
    const said = text.replace(/\s+/g, " ").trim();
    const words = [...said.matchAll(/[\p{L}\p{N}]+/gu)].filter((word) => terms.has(plain(word[0])));
    const first = words.length > 0 ? words[0].index : 0;
    const from = first > AROUND ? said.indexOf(" ", first - AROUND) + 1 : 0;
    const end = from + 2 * AROUND >= said.length ? said.length : said.lastIndexOf(" ", from + 2 * AROUND);
    const shown = element("p", "", "finding-text");
    let at = from;
    if (from > 0) shown.append("… ");
    for (const word of words.filter(({ index, 0: found }) => index >= from && index + found.length <= end)) {
      shown.append(said.slice(at, word.index), element("mark", word[0]));
      at = word.index + word[0].length;
    }
    shown.append(said.slice(at, end), end < said.length ? " …" : "");
    return shown;
  };

  const show = () => {
    const words = field.value.trim();
    const found = words === "" ? [] : find(words);
    list.replaceChildren(
      ...found.slice(0, MOST).map(({ id, terms }) => {
        const { href, kind, title, part, text } = findings[id];
        const entry = element("li");
        const head = element("p", "", "finding-title");
        const link = element("a", part === "" ? title : message("search-part", { title, part }));
        link.href = href;
        head.append(link, " ", element("span", message(`search-${kind.toLowerCase()}`)));
        entry.append(head, excerpt(text, new Set(terms)));
        return entry;
      }),
    );
    if (words === "") count.textContent = "";
    else if (found.length === 0) count.textContent = message("search-nothing");
    else if (found.length > MOST) count.textContent = message("search-found-many", { count: found.length, most: MOST });
    else count.textContent = message("search-found", { count: found.length });
    // The words stay in the address, so that going back finds them again.
    history.replaceState(null, "", words === "" ? location.pathname : `#${encodeURIComponent(words)}`);
  };

  form.hidden = false;
  form.addEventListener("submit", (event) => event.preventDefault());
  field.addEventListener("input", show);
  try {
    field.value = decodeURIComponent(location.hash.slice(1));
  } catch {
    field.value = "";
  }
  if (field.value === "") field.focus({ preventScroll: true });
  else show();
})();
