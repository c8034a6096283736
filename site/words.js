// The words of a page's script: messages in the course's language.

// A function that gives the message with an id, its values filled in; an id without a message comes back in angle brackets.
function healedhueWords(tag, messages) {
  const bundle = new Fluent.FluentBundle([tag, "en"], { useIsolating: false });
  bundle.addResource(new Fluent.FluentResource(messages));
  return (id, values = {}) => {
    const found = bundle.getMessage(id);
    return found?.value ? bundle.formatPattern(found.value, values) : `⟨${id}⟩`;
  };
}
