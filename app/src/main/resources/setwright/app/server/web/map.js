// The map of the circuit: the place under the cursor, both ways, and what else than balance it can show.
import { stationUnit, speedUnit } from "./channels.js";
import { typical } from "./columns.js";

const STEPS = 5;
const SVG = "http://www.w3.org/2000/svg";

export function wireMap(data, point) {
  const drawing = document.querySelector(".map svg");
  if (!drawing) return;
  const { stepM, x, y } = data.map;
  const here = document.createElementNS(SVG, "circle");
  here.setAttribute("class", "here");
  here.setAttribute("r", "11");
  drawing.append(here);

  wireShown(drawing, data);

  document.addEventListener("here", (event) => {
    const station = event.detail;
    here.classList.toggle("seen", station !== null);
    if (station === null) return;
    const at = (((station / stepM) % x.length) + x.length) % x.length;
    const i = Math.floor(at);
    const next = (i + 1) % x.length;
    here.setAttribute("cx", x[i] + (at - i) * (x[next] - x[i]));
    here.setAttribute("cy", y[i] + (at - i) * (y[next] - y[i]));
  });
  drawing.addEventListener("pointermove", (event) => {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(drawing.getScreenCTM().inverse());
    let nearest = 0;
    let least = Infinity;
    for (let i = 0; i < x.length; i++) {
      const away = (x[i] - at.x) ** 2 + (y[i] - at.y) ** 2;
      if (away < least) {
        least = away;
        nearest = i;
      }
    }
    if (least < 60 * 60) point(nearest * stepM);
  });
}

/** Values along the lap, one to each point of the map, with words for their least and greatest. */
function along(data, name) {
  const laps = data.laps.filter((lap) => lap.good);
  const curve = typical(laps.map((lap) => ({ x: lap.columns.station, y: lap.columns[name] })), 0, data.lengthM, data.map.x.length);
  return name === "speed" ? Array.from(curve.middle) : Array.from(curve.high, (high, i) => high - curve.low[i]);
}

function path(data, from, to) {
  const { x, y } = data.map;
  let text = "";
  for (let i = from; i <= to; i++) text += `${i === from ? "M" : "L"}${x[i % x.length]} ${y[i % x.length]}`;
  return text;
}

/** Draws stretches of one shade each, from pale to full. */
function shaded(group, data, values) {
  const known = values.filter(Number.isFinite);
  const low = Math.min(...known);
  const high = Math.max(...known);
  const shade = (value) => (Number.isFinite(value) ? Math.min(STEPS - 1, Math.floor((STEPS * (value - low)) / (high - low || 1))) : -1);
  for (let from = 0; from < values.length;) {
    let to = from + 1;
    while (to < values.length && shade(values[to]) === shade(values[from])) to++;
    const stretch = document.createElementNS(SVG, "path");
    stretch.setAttribute("class", `shade shade${shade(values[from])}`);
    stretch.setAttribute("d", path(data, from, to));
    group.append(stretch);
    from = to;
  }
  return [low, high];
}

function dots(group, data) {
  const { stepM, x, y } = data.map;
  const good = new Set(data.laps.filter((lap) => lap.good).map((lap) => lap.number));
  const marks = data.marks.filter((mark) => mark.row === "hands" && good.has(mark.lap));
  for (const mark of marks) {
    const i = (((Math.round(mark.stationM / stepM) % x.length) + x.length) % x.length);
    const dot = document.createElementNS(SVG, "circle");
    dot.setAttribute("class", "hands-dot");
    dot.setAttribute("cx", x[i]);
    dot.setAttribute("cy", y[i]);
    dot.setAttribute("r", "7");
    const title = document.createElementNS(SVG, "title");
    title.textContent = `corner ${mark.corner}, lap ${mark.lap}: ${mark.what}`;
    dot.append(title);
    group.append(dot);
  }
  return marks.length;
}

const WORDS = {
  speed: (low, high) => `Speed of the typical lap: pale ${(low * speedUnit.factor).toFixed(0)}, full ${(high * speedUnit.factor).toFixed(0)} ${speedUnit.unit}.`,
  offset: (low, high) => `How far the lines of all laps lie apart: pale ${(low * stationUnit.factor).toFixed(1)}, full ${(high * stationUnit.factor).toFixed(1)} ${stationUnit.unit}.`,
};

/** A choice above the map of what it shows. */
function wireShown(drawing, data) {
  const choice = document.getElementById("map-shows");
  const words = document.getElementById("map-words");
  if (!choice) return;
  const group = document.createElementNS(SVG, "g");
  drawing.append(group);
  choice.addEventListener("change", () => {
    group.replaceChildren();
    const shown = choice.value;
    drawing.classList.toggle("plain-track", shown !== "balance");
    if (shown === "balance") words.textContent = "";
    else if (shown === "hands") words.textContent = `${dots(group, data)} gestures of the hands that the corner alone does not explain, each lap's where it began.`;
    else words.textContent = WORDS[shown](...shaded(group, data, along(data, shown)));
  });
  choice.closest("p").hidden = false;
}
