// The words of a page's script: messages in the course's language.

// A function that gives the message with an id, its values filled in; an id without a message comes back in angle brackets. A number
// decides about singular and plural and is written in whole, without marks between thousands; numbers with decimals are given as text.
function healedhueWords(tag, messages) {
  const bundle = new Fluent.FluentBundle([tag, "en"], { useIsolating: false });
  bundle.addResource(new Fluent.FluentResource(messages));
  const filled = (value) => (typeof value === "number" ? new Fluent.FluentNumber(value, { useGrouping: false }) : value);
  return (id, values = {}) => {
    const found = bundle.getMessage(id);
    if (!found?.value) return `⟨${id}⟩`;
    return bundle.formatPattern(found.value, Object.fromEntries(Object.entries(values).map(([name, value]) => [name, filled(value)])));
  };
}
