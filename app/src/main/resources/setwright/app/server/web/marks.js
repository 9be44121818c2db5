// What happened where, lap by lap: one row for each kind, under the traces and on their axis.
import { svg, render, nothing } from "./library/lit-html/lit-html.js";
import { place, chooseLap } from "./place.js";

const ROWS = ["brake on", "turn-in", "brake off", "slowest", "pick-up", "full throttle", "hands", "front lets go", "rear lets go"];
const ROW = 24;
const SPREAD = 16;

/**
 * Draws them into a box.
 *
 * @param marks   each with its lap, row, words and place along the axis
 * @param laps    numbers in driving order: each has its own height within a row
 * @param window  the part of the axis that is shown
 * @param left    width of what stands left of the traces
 * @param best    number of the best lap
 */
export function drawMarks(box, { marks, laps, window, left, best }) {
  const width = box.clientWidth - left - 8;
  const rows = ROWS.filter((row) => marks.some((mark) => mark.row === row));
  const [from, to] = window;
  const x = (at) => left + ((at - from) / (to - from)) * width;
  const y = (mark) => (rows.indexOf(mark.row) + 0.5) * ROW + (laps.length > 1 ? (laps.indexOf(mark.lap) / (laps.length - 1) - 0.5) * SPREAD : 0);
  const shown = marks.filter((mark) => mark.at >= from && mark.at <= to);
  const css = (mark) => (mark.lap === place.lap ? "mark chosen-lap" : mark.lap === best ? "mark best-lap" : "mark");
  render(svg`<svg width=${box.clientWidth} height=${rows.length * ROW} role="img" aria-label="Where each lap did what; a click on a mark chooses its lap">
    ${rows.map((row, i) => svg`<rect class=${i % 2 ? "mark-row odd" : "mark-row"} x=${left} y=${i * ROW} width=${width} height=${ROW}></rect><text class="mark-name" x="0" y=${(i + 0.5) * ROW + 4}>${row}</text>`)}
    ${shown.length > 1500 ? nothing : shown.map((mark) => svg`<circle class=${css(mark)} data-lap=${mark.lap} cx=${x(mark.at).toFixed(1)} cy=${y(mark).toFixed(1)} r=${mark.lap === place.lap ? 4 : 3} @click=${() => chooseLap(mark.lap)}><title>lap ${mark.lap}: ${mark.what}</title></circle>`)}
  </svg>`, box);
}
