// The samples of a stint's laps, and what of them a drawing of so many points shows.
import { get } from "./ask.js";

/** Fetches them: what is where, and one array of floats that all columns are windows of. */
export async function fetchLaps(stint) {
  const [about, samples] = await Promise.all([
    get(`/stints/${stint}/about`).then((response) => response.json()),
    get(`/stints/${stint}/samples`).then((response) => response.arrayBuffer()),
  ]);
  const all = new Float32Array(samples); // as the server writes them: least byte first, like every browser's machine
  const laps = about.laps.map((lap) => {
    const columns = {};
    about.columns.forEach((name, i) => {
      columns[name] = all.subarray(lap.from + i * lap.samples, lap.from + (i + 1) * lap.samples);
    });
    return { number: lap.number, timeS: lap.timeS, good: lap.good, why: lap.why, columns };
  });
  return { ...about, laps };
}

/** Returns the first index whose value is not less. */
export function indexAt(ascending, value) {
  let low = 0;
  let high = ascending.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (ascending[middle] < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

const BLOCK = 8;
const known = new WeakMap();

/** Where the least and the greatest of each few samples stand, worked out once for each column of each lap. */
function blocksOf(y) {
  let blocks = known.get(y);
  if (!blocks) {
    const count = Math.floor(y.length / BLOCK);
    blocks = { leastAt: new Uint32Array(count), mostAt: new Uint32Array(count) };
    for (let b = 0; b < count; b++) {
      let least = b * BLOCK;
      let most = b * BLOCK;
      for (let i = b * BLOCK; i < (b + 1) * BLOCK; i++) {
        if (y[i] < y[least] || y[least] !== y[least]) least = i; // gaps are nobody's least
        if (y[i] > y[most] || y[most] !== y[most]) most = i;
      }
      blocks.leastAt[b] = least;
      blocks.mostAt[b] = most;
    }
    known.set(y, blocks);
  }
  return blocks;
}

/** Returns the value at a place between samples; null outside. */
export function valueAt(x, y, place) {
  const i = indexAt(x, place);
  if (i >= x.length || (i === 0 && x[0] > place)) return null;
  if (i === 0) return finite(y[0]);
  const share = x[i] > x[i - 1] ? (place - x[i - 1]) / (x[i] - x[i - 1]) : 1;
  return finite(y[i - 1] + share * (y[i] - y[i - 1]));
}

const finite = (value) => (Number.isFinite(value) ? value : null);

/** Places at which a window is drawn: two to each of so many columns of the screen. */
export function places(from, to, columns) {
  const x = new Float64Array(2 * columns);
  const width = (to - from) / columns;
  for (let c = 0; c < columns; c++) {
    x[2 * c] = from + (c + 0.25) * width;
    x[2 * c + 1] = from + (c + 0.75) * width;
  }
  return x;
}

/**
 * Returns what a curve shows in a window. Where several samples fall into a column of the screen their least and greatest are
 * kept, in the order in which they came, so that nothing short is lost; else the curve is followed between its samples.
 */
export function thinned(x, y, from, to, columns) {
  const out = new Array(2 * columns).fill(null);
  const first = Math.max(0, indexAt(x, from) - 1);
  const last = Math.min(x.length, indexAt(x, to) + 1);
  if (last - first < 2) return out;
  const width = (to - from) / columns;
  if (last - first <= 2 * columns) {
    let i = first;
    for (let p = 0; p < 2 * columns; p++) {
      const place = from + ((p >> 1) + (p & 1 ? 0.75 : 0.25)) * width;
      while (i < last - 2 && x[i + 1] < place) i++;
      if (place < x[i] || place > x[i + 1]) continue;
      const share = x[i + 1] > x[i] ? (place - x[i]) / (x[i + 1] - x[i]) : 0;
      const value = y[i] + share * (y[i + 1] - y[i]);
      if (value === value) out[p] = value;
    }
    return out;
  }
  const blocks = last - first > 4 * BLOCK * columns ? blocksOf(y) : null;
  let i = first;
  for (let c = 0; c < columns; c++) {
    const end = from + (c + 1) * width;
    let least = Infinity;
    let most = -Infinity;
    let leastAt = 0;
    let mostAt = 0;
    while (i < last && x[i] < end) {
      if (blocks && i % BLOCK === 0 && i + BLOCK < last && x[i + BLOCK] < end) {
        const low = blocks.leastAt[i / BLOCK];
        const high = blocks.mostAt[i / BLOCK];
        if (y[low] < least) { least = y[low]; leastAt = low; }
        if (y[high] > most) { most = y[high]; mostAt = high; }
        i += BLOCK;
        continue;
      }
      const value = y[i];
      if (value < least) { least = value; leastAt = i; }
      if (value > most) { most = value; mostAt = i; }
      i++;
    }
    if (least <= most) {
      out[2 * c] = leastAt <= mostAt ? least : most;
      out[2 * c + 1] = leastAt <= mostAt ? most : least;
    } else if (c > 0 && i > first && i < last) { // no sample fell into this column
      const between = valueAt(x, y, end - 0.5 * width);
      out[2 * c] = between;
      out[2 * c + 1] = between;
    }
  }
  return out;
}

/** Returns the median of all curves and how far they reach, at even steps. */
export function typical(curves, from, to, count) {
  const x = new Float64Array(count);
  const middle = new Float64Array(count).fill(NaN);
  const low = new Float64Array(count).fill(NaN);
  const high = new Float64Array(count).fill(NaN);
  const here = [];
  const at = new Int32Array(curves.length);
  for (let p = 0; p < count; p++) {
    x[p] = from + ((to - from) * p) / (count - 1);
    here.length = 0;
    for (let k = 0; k < curves.length; k++) {
      const curve = curves[k];
      let i = at[k];
      while (i < curve.x.length - 2 && curve.x[i + 1] < x[p]) i++;
      at[k] = i;
      if (x[p] < curve.x[i] || x[p] > curve.x[i + 1]) continue;
      const share = curve.x[i + 1] > curve.x[i] ? (x[p] - curve.x[i]) / (curve.x[i + 1] - curve.x[i]) : 0;
      const value = curve.y[i] + share * (curve.y[i + 1] - curve.y[i]);
      if (value === value) here.push(value);
    }
    if (2 * here.length < curves.length || !here.length) continue;
    here.sort((a, b) => a - b);
    const half = here.length >> 1;
    middle[p] = here.length % 2 ? here[half] : 0.5 * (here[half - 1] + here[half]);
    low[p] = here[0];
    high[p] = here[here.length - 1];
  }
  return { x, middle, low, high };
}
