// Swatches as other eyes see them: the style sheet applies a filter of the page to every swatch, by what is chosen.

function bindEyes() {
  const choice = byId("eyes");
  const show = () => {
    document.body.dataset.eyes = choice.value;
    byId("eyes_note").hidden = choice.value === "";
  };
  choice.addEventListener("input", show);
  // A browser may have kept what was chosen before.
  show();
}
