"use strict";
(() => {
  const everywhere = () => document.querySelectorAll("[data-corner]");
  const choice = document.getElementById("corner-choice");
  if (!choice) return;
  const corners = Array.from(choice.options, (option) => option.value);

  /** The same corner everywhere: ribbon, tables, map, traces. */
  function choose(corner) {
    if (!corners.includes(corner)) return;
    choice.value = corner;
    for (const element of everywhere()) {
      element.classList.toggle("chosen", element.dataset.corner === corner);
      if (element.matches(".place")) {
        element.tabIndex = element.dataset.corner === corner ? 0 : -1;
        if (element.dataset.corner === corner) element.setAttribute("aria-current", "true");
        else element.removeAttribute("aria-current");
      }
    }
  }

  function step(by) {
    const at = corners.indexOf(choice.value) + by;
    choose(corners[(at + corners.length) % corners.length]);
  }

  document.addEventListener("click", (event) => {
    const link = event.target.closest("a[data-corner]");
    if (!link) return;
    event.preventDefault(); // nothing jumps: the place is chosen, the page stays
    choose(link.dataset.corner);
  });
  document.addEventListener("keydown", (event) => {
    const by = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    if (!by || event.altKey || event.ctrlKey || event.metaKey || event.target.matches("select, input")) return;
    const inRibbon = event.target.closest(".ribbon");
    if (!inRibbon && event.target !== document.body) return;
    event.preventDefault();
    step(by);
    if (inRibbon) document.querySelector(".place.chosen").focus();
  });
  choice.addEventListener("change", () => choose(choice.value));
  for (const button of document.querySelectorAll(".step")) {
    button.hidden = false;
    button.addEventListener("click", () => step(Number(button.dataset.step)));
  }
  document.querySelector(".pick").hidden = false;

  const wanted = location.hash.startsWith("#corner-") ? location.hash.slice("#corner-".length) : choice.value;
  if (location.hash.startsWith("#corner-")) history.replaceState(null, "", "#traces");
  choose(corners.includes(wanted) ? wanted : choice.value);

  // On paper everything is open.
  let closed = [];
  addEventListener("beforeprint", () => {
    closed = Array.from(document.querySelectorAll("details:not([open])"));
    for (const part of closed) part.open = true;
  });
  addEventListener("afterprint", () => {
    for (const part of closed) part.open = false;
  });
})();
