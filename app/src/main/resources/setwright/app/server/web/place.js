// One place selected means the same place everywhere: ribbon, tables, map, traces.
const corners = () => Array.from(document.querySelectorAll(".ribbon .place"), (place) => place.dataset.corner);

/** What is selected; parts listen to "place" on the document. */
export const place = { corner: null, lap: null };

function tell() {
  document.dispatchEvent(new CustomEvent("place", { detail: { ...place } }));
}

export function choose(corner) {
  if (!corners().includes(corner)) return;
  place.corner = corner;
  for (const element of document.querySelectorAll("[data-corner]")) {
    const chosen = element.dataset.corner === corner;
    element.classList.toggle("chosen", chosen);
    if (element.matches(".place")) {
      element.tabIndex = chosen ? 0 : -1;
      if (chosen) element.setAttribute("aria-current", "true");
      else element.removeAttribute("aria-current");
    }
  }
  const choice = document.getElementById("corner-choice");
  if (choice) choice.value = corner;
  history.replaceState(null, "", `#corner-${corner}`);
  tell();
}

/** Chooses a lap; chosen once more it is given up, unless it is to stay. */
export function chooseLap(lap, stay = false) {
  place.lap = place.lap === lap && !stay ? null : lap;
  tell();
}

function step(by) {
  const all = corners();
  choose(all[(all.indexOf(place.corner) + by + all.length) % all.length]);
}

export function wirePlaces() {
  const all = corners();
  if (!all.length) return;
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
  document.getElementById("corner-choice")?.addEventListener("change", (event) => choose(event.target.value));
  for (const button of document.querySelectorAll(".step")) {
    button.addEventListener("click", () => step(Number(button.dataset.step)));
  }
  addEventListener("hashchange", () => {
    if (location.hash.startsWith("#corner-")) choose(location.hash.slice("#corner-".length));
  });
  const told = location.hash.startsWith("#corner-") ? location.hash.slice("#corner-".length) : null;
  const first = document.querySelector(".place.chosen")?.dataset.corner ?? all[0];
  place.corner = all.includes(told) ? told : first;
  if (place.corner !== first) choose(place.corner);
}
