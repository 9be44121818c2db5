// Traces of all laps over distance or time: one cursor, one window, one selected lap for all of them.
import uPlot from "./library/uplot/uPlot.esm.js";
import { html, render, nothing } from "./library/lit-html/lit-html.js";
import { fetchLaps, places, thinned, typical, valueAt } from "./columns.js";
import { channels, rangeOf, stationUnit } from "./channels.js";
import { place, chooseLap } from "./place.js";
import { wireMap } from "./map.js";
import { drawMarks } from "./marks.js";
import { wireClaims } from "./claims.js";

const HEIGHT = 118;
const AXIS = 74;
const BOLD = 2.5;
const STEP_M = 1;
const STEP_S = 0.02;
const LEAST_WINDOW = { station: 10, time: 0.3 };
const ZOOM = 1.25;
const MARKS_MS = 60;
const COARSE = 3;
const SETTLE_MS = 120;

const state = { data: null, over: "station", window: [0, 1], whole: [0, 1], every: false, plots: [], ranges: [], shown: [], curves: new Map(), refM: null };
let host;

const good = () => state.data.laps.filter((lap) => lap.good);
const best = () => good().reduce((one, other) => (other.timeS < one.timeS ? other : one), good()[0]);

/** Colours as day or night has them; asked for once, not at every frame. */
const colours = new Map();
function css(name) {
  if (!colours.has(name)) colours.set(name, getComputedStyle(document.documentElement).getPropertyValue(name).trim());
  return colours.get(name);
}

const factor = () => (state.over === "station" ? stationUnit.factor : 1);

/** Where a lap's samples lie along the axis: stations, or seconds since it passed the place that all laps are laid over each other at. */
function along(lap) {
  if (state.over === "station") return lap.columns.station;
  const key = `time ${state.refM}`;
  if (lap.alongKey !== key) {
    const zero = valueAt(lap.columns.station, lap.columns.time, state.refM) ?? 0;
    lap.along = lap.columns.time.map((time) => time - zero);
    lap.alongKey = key;
  }
  return lap.along;
}

/** Median and reach of the good laps; worked out once for each channel and axis. */
function usual(channel) {
  const key = `${channel.name} ${state.over} ${state.over === "time" ? state.refM : ""}`;
  if (!state.curves.has(key)) {
    const [from, to] = state.whole;
    const count = Math.max(2, Math.round((to - from) / (state.over === "station" ? STEP_M : STEP_S)));
    state.curves.set(key, typical(good().map((lap) => ({ x: along(lap), y: lap.columns[channel.name] })), from, to, count));
  }
  return state.curves.get(key);
}

function wholeRange() {
  if (state.over === "station") return [0, state.data.lengthM];
  const ends = good().map((lap) => along(lap)).filter((x) => x.length);
  return [Math.min(...ends.map((x) => x[0])), Math.max(...ends.map((x) => x[x.length - 1]))];
}

/** Laps drawn each on its own: the chosen one, the best one, or all. */
function single() {
  const laps = state.every ? good() : [best()];
  const chosen = state.data.laps.find((lap) => lap.number === place.lap);
  return chosen && !laps.includes(chosen) ? [...laps, chosen] : laps;
}

function dataOf(channel, laps, columns) {
  const [from, to] = state.window;
  const curve = usual(channel);
  const scaled = (y) => { for (let i = 0; i < y.length; i++) if (y[i] !== null) y[i] *= channel.factor; return y; };
  const x = places(from, to, columns);
  for (let i = 0; i < x.length; i++) x[i] *= factor();
  return [
    x,
    scaled(thinned(curve.x, curve.high, from, to, columns)),
    scaled(thinned(curve.x, curve.low, from, to, columns)),
    ...laps.map((lap) => scaled(thinned(along(lap), lap.columns[channel.name], from, to, columns))),
    scaled(thinned(curve.x, curve.middle, from, to, columns)),
  ];
}

function lineOf(lap) {
  const [colour, width] = lap.number === place.lap ? ["--chosen", 2] : lap === best() ? ["--accent", 1.5] : ["--one-lap", 1];
  return { stroke: css(colour), width, full: width };
}

/** Corners behind the traces: where each begins, is tightest and ends; over time, as the best lap passed them. */
function drawCorners(plot) {
  const { ctx, bbox } = plot;
  const lap = best();
  const at = (station) => plot.valToPos((state.over === "station" ? station : valueAt(lap.columns.station, along(lap), station) ?? NaN) * factor(), "x", true);
  ctx.save();
  ctx.beginPath();
  ctx.rect(bbox.left, bbox.top, bbox.width, bbox.height);
  ctx.clip();
  for (const corner of state.data.corners) {
    const left = at(corner.turnInM);
    const right = at(corner.endM);
    if (!Number.isFinite(left + right)) continue; // across the start line
    ctx.fillStyle = css("--phase");
    ctx.fillRect(left, bbox.top, right - left, bbox.height);
    const apex = at(corner.apexM);
    ctx.fillStyle = css("--muted");
    ctx.fillRect(apex, bbox.top, 1, bbox.height);
    ctx.font = `${String(corner.number) === place.corner ? "700 " : ""}${11 * devicePixelRatio}px system-ui, sans-serif`;
    if (plot === state.plots[0] || !state.plots.length) ctx.fillText(String(corner.number), apex + 3 * devicePixelRatio, bbox.top + 11 * devicePixelRatio);
  }
  ctx.restore();
}

function optionsOf(k, laps, width) {
  const last = k === state.shown.length - 1;
  const ink = css("--muted");
  const grid = { stroke: css("--line"), width: 1 };
  return {
    width,
    height: HEIGHT + (last ? 26 : 0),
    padding: [4, 8, 0, 0],
    legend: { show: false },
    cursor: { sync: { key: "laps" }, points: { show: false }, drag: { x: true, y: false, setScale: false }, y: false },
    scales: { x: { time: false, range: () => state.window.map((end) => end * factor()) }, y: { range: () => state.ranges[k] } },
    axes: [
      { show: last, stroke: ink, grid, ticks: grid, size: 26, font: "12px system-ui, sans-serif" },
      { stroke: ink, grid, ticks: grid, size: AXIS, font: "12px system-ui, sans-serif" },
    ],
    series: [
      {},
      { stroke: "transparent", points: { show: false } },
      { stroke: "transparent", points: { show: false } },
      ...laps.map((lap) => ({ ...lineOf(lap), points: { show: false } })),
      { stroke: css("--typical"), width: BOLD, full: BOLD, points: { show: false } },
    ],
    bands: [{ series: [1, 2], fill: css("--band") }],
    hooks: {
      drawClear: [drawCorners],
      setSelect: [(plot) => {
        if (plot.select.width < 4) return;
        const from = plot.posToVal(plot.select.left, "x") / factor();
        const to = plot.posToVal(plot.select.left + plot.select.width, "x") / factor();
        plot.setSelect({ left: 0, top: 0, width: 0, height: 0 }, false);
        setWindow(from, to);
      }],
      setCursor: [(plot) => {
        if (plot !== state.plots[0]) return; // all have the same
        pointed(plot.cursor.left >= 0 ? plot.posToVal(plot.cursor.left, "x") / factor() : null);
      }],
    },
  };
}

/** Tells the figures under the cursor, and where that is on the map. */
function pointed(x) {
  state.pointed = x;
  const chosen = state.data.laps.find((lap) => lap.number === place.lap) ?? best();
  state.shown.forEach((channel, k) => {
    const curve = usual(channel);
    const figure = (value) => (value === null ? "" : (value * channel.factor).toFixed(channel.decimals).replace("-", "\u2212"));
    const out = host.querySelectorAll("output")[k];
    out.textContent = x === null ? "" : `typical ${figure(valueAt(curve.x, curve.middle, x))}, lap ${chosen.number} ${figure(valueAt(along(chosen), chosen.columns[channel.name], x))} ${channel.unit}`;
  });
  const station = x === null ? null : stationAt(x);
  document.dispatchEvent(new CustomEvent("here", { detail: station }));
  const length = state.data.lengthM;
  const under = station === null ? null : state.data.corners.find((corner) => [station, station - length, station + length].some((s) => s >= corner.startM && s <= corner.endM));
  for (const cell of document.querySelectorAll(".ribbon .place")) cell.classList.toggle("under", cell.dataset.corner === String(under?.number));
}

function stationAt(x) {
  return state.over === "station" ? x : valueAt(along(best()), best().columns.station, x);
}

/** Shows a part of the lap, in all traces. */
function setWindow(from, to) {
  const [least, most] = state.whole;
  const width = Math.min(most - least, Math.max(LEAST_WINDOW[state.over], to - from));
  const middle = 0.5 * (from + to);
  let begin = middle - 0.5 * width;
  // A corner may begin before the start line: as far as laps reach.
  begin = Math.max(Math.min(begin, most - width), least);
  state.window = [begin, begin + width];
  draw(Math.min(2 * COARSE, Math.max(COARSE, Math.ceil(0.5 * single().length))));
  clearTimeout(state.settling);
  state.settling = setTimeout(draw, SETTLE_MS, 1);
}

const isSeen = (plot) => {
  const box = plot.root.getBoundingClientRect();
  return box.bottom > 0 && box.top < innerHeight;
};

/**
 * Draws the window, to a column of the screen or coarser. While it moves nobody sees more, nor what is out of view; and a browser without
 * a graphics card draws thin lines twice as fast as bold ones.
 */
function draw(coarse) {
  const laps = single();
  const wanted = state.plots.map((plot) => coarse === 1 || isSeen(plot)); // all asked before anything is drawn
  for (let k = 0; k < state.plots.length; k++) {
    if (!wanted[k]) continue;
    const plot = state.plots[k];
    const columns = Math.max(50, Math.round((plot.width - AXIS) / coarse));
    const data = dataOf(state.shown[k], laps, columns);
    state.ranges[k] = rangeOf(state.shown[k], data.slice(1));
    for (const series of plot.series) series.width = coarse === 1 ? series.full : Math.min(1, series.full ?? 1);
    plot.setData(data, true);
  }
  tellWindow();
}

function tellWindow() {
  host.dataset.from = state.window[0].toFixed(2);
  host.dataset.to = state.window[1].toFixed(2);
  clearTimeout(state.marking);
  state.marking = setTimeout(mark, MARKS_MS); // once the window stands still
}

/** Draws what happened where; stations become times where those are the axis. */
function mark() {
  const laps = new Map(good().map((lap) => [lap.number, lap]));
  const length = state.data.lengthM;
  const marks = [];
  for (const one of state.data.marks) {
    const lap = laps.get(one.lap);
    if (!lap) continue;
    const station = one.stationM >= length ? one.stationM - length : one.stationM;
    const at = state.over === "station" ? station : valueAt(lap.columns.station, along(lap), station);
    if (at !== null) marks.push({ ...one, at });
  }
  drawMarks(host.querySelector(".marks"), { marks, laps: [...laps.keys()], window: state.window, left: AXIS, best: best().number });
}

function build() {
  const laps = single();
  const boxes = host.querySelectorAll(".plot-box");
  state.plots = state.shown.map((channel, k) => {
    const data = dataOf(channel, laps, Math.max(50, boxes[k].clientWidth - AXIS));
    state.ranges[k] = rangeOf(channel, data.slice(1));
    const plot = new uPlot(optionsOf(k, laps, boxes[k].clientWidth), data, boxes[k]);
    plot.over.addEventListener("wheel", (event) => zoomAt(event, plot), { passive: false });
    return plot;
  });
  tellWindow();
  host.dataset.ready = "yes";
}

function zoomAt(event, plot) {
  if (!event.ctrlKey && !event.metaKey && !event.shiftKey) return; // the page scrolls, as everywhere
  event.preventDefault();
  const [from, to] = state.window;
  if (event.shiftKey) {
    const by = ((event.deltaY || event.deltaX) / plot.over.clientWidth) * (to - from);
    setWindow(from + by, to + by);
    return;
  }
  const x = plot.posToVal(event.offsetX, "x") / factor();
  const scale = event.deltaY > 0 ? ZOOM : 1 / ZOOM;
  setWindow(x - (x - from) * scale, x + (to - x) * scale);
}

/** Puts the cursor of all traces at a place, as far as the window goes. */
function pointAt(x) {
  const first = state.plots[0];
  if (!first) return;
  const [from, to] = state.window;
  first.setCursor({ left: first.valToPos(Math.min(to, Math.max(from, x)) * factor(), "x"), top: 10 });
}

function keyed(event) {
  const [from, to] = state.window;
  const width = to - from;
  const moved = { ArrowLeft: -0.1, ArrowRight: 0.1 }[event.key];
  if (moved && event.shiftKey) {
    event.preventDefault();
    event.stopPropagation();
    pointAt((state.pointed ?? 0.5 * (from + to)) + 0.1 * moved * width);
    return;
  }
  const scaled = { "+": 1 / ZOOM, "=": 1 / ZOOM, "-": ZOOM }[event.key];
  if (moved) setWindow(from + moved * width, to + moved * width);
  else if (scaled) setWindow(0.5 * (from + to) - 0.5 * width * scaled, 0.5 * (from + to) + 0.5 * width * scaled);
  else if (event.key === "0") setWindow(...state.whole);
  else return;
  event.preventDefault();
  event.stopPropagation();
}

const lapTime = (seconds) => `${Math.floor(seconds / 60)}:${(seconds % 60).toFixed(3).padStart(6, "0")}`;

function show() {
  const chosen = place.lap;
  const box = (channel) => html`<figure class="trace"><figcaption><span>${channel.title}, ${channel.unit}</span><output></output></figcaption><div class="plot-box"></div></figure>`;
  render(html`
    <div class="laps-chosen" role="group" aria-label="Laps">
      ${state.data.laps.filter((lap) => lap.columns.time.length > 1).map((lap) => html`<button type="button" class="lap ${lap.good ? "" : "aside"}" aria-pressed=${lap.number === chosen}
        title=${lap.good ? nothing : lap.why} @click=${() => chooseLap(lap.number)}>${lap.number}<span class="tag">${lap.good ? lapTime(lap.timeS) : "aside"}</span></button>`)}
      <label class="check"><input type="checkbox" .checked=${state.every} @change=${(event) => { state.every = event.target.checked; refresh(); }}> each lap on its own</label>
    </div>
    <p class="keys"><span><i class="key-typical"></i>typical lap (median)</span> <span><i class="key-band"></i>all laps</span> <span><i class="key-best"></i>best lap, ${best().number}</span>
      ${chosen !== null ? html`<span><i class="key-chosen"></i>lap ${chosen}</span>` : nothing}
      <span class="hint">Drag across: that part. Ctrl and wheel: nearer. Shift and wheel: along. With the keyboard: + \u2212 0 and arrows; Shift and arrows move the cursor.</span></p>
    <div class="plots" tabindex="0" role="group" aria-label="Traces; plus and minus zoom, arrows move, Shift and arrows move the cursor, 0 shows the whole lap" @keydown=${keyed} @dblclick=${() => setWindow(...state.whole)}>${state.shown.map(box)}</div>
    <div class="marks"></div>
    <details class="which"><summary>Which traces</summary><div class="laps-chosen">${channels.filter((channel) => state.data.columns.includes(channel.name)).map((channel) => html`
      <label class="check"><input type="checkbox" .checked=${channel.shown} @change=${(event) => { channel.shown = event.target.checked; refresh(); }}> ${channel.title}</label>`)}</div></details>`, host);
}

function refresh() {
  state.shown = channels.filter((channel) => channel.shown && state.data.columns.includes(channel.name));
  for (const plot of state.plots) plot.destroy();
  state.plots = [];
  show();
  build();
}

/** The window of the chosen corner: from its approach to its end. */
function toCorner() {
  const corner = state.data.corners.find((one) => String(one.number) === place.corner);
  if (!corner) return;
  state.refM = Math.max(0, corner.startM);
  state.whole = wholeRange();
  let window = [corner.startM, corner.endM];
  if (state.over === "time") {
    const lap = best();
    window = window.map((station) => valueAt(lap.columns.station, along(lap), Math.max(lap.columns.station[0], Math.min(station, lap.columns.station[lap.columns.station.length - 1]))));
  }
  setWindow(...window);
}

export async function wireTraces() {
  host = document.getElementById("live-traces");
  if (!host) return;
  try {
    state.data = await fetchLaps(host.dataset.stint);
  } catch (e) {
    render(html`<p class="wrong">${e.message}</p>`, host);
    return;
  }
  if (!good().length) {
    render(html`<p class="empty">No lap can be drawn.</p>`, host);
    return;
  }
  host.replaceChildren();
  state.refM = 0;
  state.whole = wholeRange();
  state.window = state.whole;
  refresh();
  toCorner();
  const numbers = (all) => new Set(all.map((one) => String(one.number)));
  wireClaims(document.getElementById("main"), numbers(state.data.laps), numbers(state.data.corners));
  wireMap(state.data, (station) => {
    const x = state.over === "station" ? station : valueAt(best().columns.station, along(best()), station);
    if (x !== null) pointAt(x);
  });
  let corner = place.corner;
  document.addEventListener("place", () => {
    refresh();
    if (place.corner !== corner) toCorner();
    corner = place.corner;
  });
  const recolour = () => {
    colours.clear();
    refresh();
  };
  document.addEventListener("light", recolour);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", recolour);
  document.getElementById("whole-lap").addEventListener("click", () => {
    state.refM = 0;
    state.whole = wholeRange();
    setWindow(...state.whole);
  });
  for (const button of document.querySelectorAll("[data-zoom]")) {
    button.addEventListener("click", () => {
      const [from, to] = state.window;
      const half = 0.5 * (to - from) * Number(button.dataset.zoom);
      setWindow(0.5 * (from + to) - half, 0.5 * (from + to) + half);
    });
  }
  const over = document.getElementById("over");
  over.options[0].text = `distance, ${stationUnit.unit}`;
  over.options[1].text = "time, s";
  over.addEventListener("change", (event) => {
    state.over = event.target.value;
    state.whole = wholeRange();
    state.window = state.whole;
    refresh();
    toCorner();
  });
  let width = host.clientWidth;
  new ResizeObserver(() => {
    if (Math.abs(host.clientWidth - width) < 4) return;
    width = host.clientWidth;
    refresh();
  }).observe(host);
}
