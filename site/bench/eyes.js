// Swatches as other eyes see them: the style sheet applies a filter of the page to every swatch, by what is chosen.

function bindEyes() {
  const choice = byId("eyes");
  const show = () => {
    document.body.dataset.eyes = choice.value;
    byId("eyes_note").hidden = choice.value === "";
    // On paper there is no choice to read it from.
    say(byId("eyes_told"), choice.value === "" ? "" : message("screen-eyes-told", { eyes: choice.selectedOptions[0].textContent }));
  };
  choice.addEventListener("input", show);
  // A browser may have kept what was chosen before.
  show();
}
