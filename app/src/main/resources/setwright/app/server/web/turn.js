// Items of the setup as sliders: what another position would have done is asked for at once and drawn on the ribbon.
import { html, render, nothing } from "./library/lit-html/lit-html.js";
import { get, post, say } from "./ask.js";

const MINUS = "\u2212";

/** With its sign; what rounds to nothing has none. */
function signed(value, decimals) {
  const size = Math.abs(value).toFixed(decimals);
  return Number(size) === 0 ? size : (value < 0 ? MINUS : "+") + size;
}

const SETTLE_MS = 150;

let asking = false;
let wanted = "";

const form = () => document.getElementById("turn");
const shown = () => document.getElementById("turned");
const knobs = () => Array.from(form().querySelectorAll("input[type=range]"));
const stepsOf = (knob) => Number(knob.value);

function valueOf(knob) {
  return Number((Number(knob.dataset.driven) + stepsOf(knob) * Number(knob.dataset.step)).toPrecision(10));
}

/** The change as the program's own words have it: an item by so many steps. */
function wordsOf(knob) {
  const steps = stepsOf(knob);
  return `${steps > 0 ? "+" : ""}${steps}step${Math.abs(steps) === 1 ? "" : "s"}`;
}

const turned = () => knobs().filter((knob) => stepsOf(knob) !== 0);

function label(knob) {
  const words = `${valueOf(knob)} ${knob.dataset.unit}`;
  knob.setAttribute("aria-valuetext", words);
  const out = knob.parentElement.querySelector("output");
  out.textContent = words;
  knob.parentElement.classList.toggle("turned-now", stepsOf(knob) !== 0);
}

const effect = (one, decimals, unit) => html`<span class=${one.sure ? "sure" : "open"}>${signed(one.central, decimals)} ${unit}</span> <span class="tag">${signed(one.low, decimals)} to ${signed(one.high, decimals)}</span>`;

function answer(what) {
  const phases = ["braking", "entry", "mid", "exit"];
  return html`
    <p class="answer">${what.headline}.</p>
    <p>Lap ${effect(what.lap, 2, "s")}. <span class="tag">Eight times in ten it lies between the two; pale where even the sign is open.</span></p>
    <div class="scroll" tabindex="0" role="region" aria-label="Corner by corner"><table class="plain turned-corners">
      <thead><tr><th scope="col">Corner</th>${phases.map((phase) => html`<th scope="col" class="n">${phase}, deg</th>`)}<th scope="col" class="n">time, s</th></tr></thead>
      <tbody>${what.corners.map((corner) => html`<tr data-corner=${corner.number}><th scope="row"><a href="#corner-${corner.number}" data-corner=${corner.number}>${corner.number}</a></th>
        ${phases.map((phase) => html`<td class="n ${corner.balance[phase]?.sure ? "sure" : "open"}">${corner.balance[phase] ? signed(corner.balance[phase].central, 2) : ""}</td>`)}
        <td class="n ${corner.time.sure ? "sure" : "open"}">${signed(corner.time.central, 3)}</td></tr>`)}</tbody>
    </table></div>
    ${what.reasons.length ? html`<h4>Why</h4><ul class="next">${what.reasons.map((reason) => html`<li>${reason}</li>`)}</ul>` : nothing}
    ${what.doubts.length ? html`<h4>Doubts</h4><ul class="next">${what.doubts.map((doubt) => html`<li>${doubt}</li>`)}</ul>` : nothing}
    ${acts()}`;
}

function acts() {
  const locked = form().dataset.locked;
  const several = turned().length > 1;
  return html`<div class="act">
    ${locked ? html`<p class="locked">${locked}</p>` : html`
      ${several ? html`<label>Why do they belong together? <input id="together" autocomplete="off" maxlength="300"></label>` : nothing}
      <button type="button" class="main" @click=${tryIt}>Try this back to back</button>`}
    <button type="button" @click=${back}>As driven</button>
    <span class="came" id="tried-came" role="status"></span></div>`;
}

async function tryIt() {
  const came = document.getElementById("tried-came");
  try {
    const told = await (await post(`/stints/${form().dataset.stint}/trial`, {
      changes: turned().map((knob) => `${knob.name}=${wordsOf(knob)}`),
      together: document.getElementById("together")?.value ?? "",
    })).json();
    came.textContent = told.message;
    location.hash = "#trial";
    location.reload();
  } catch (e) {
    came.textContent = e.message;
  }
}

/** How the ribbon would look: a line in each phase where its bar would end, and what the corner's time would do. */
function onRibbon(what) {
  document.querySelector(".ribbon .would-key")?.remove();
  for (const mark of document.querySelectorAll(".ribbon .would")) mark.remove();
  if (!what) return;
  const key = document.createElement("span");
  key.className = "would-key";
  key.textContent = "lines: with what is turned; beside the number: its time, ms";
  document.querySelector(".ribbon .key").prepend(key);
  for (const corner of what.corners) {
    const cell = document.querySelector(`.ribbon .place[data-corner="${corner.number}"]`);
    if (!cell) continue;
    for (const bar of cell.querySelectorAll(".bar[data-deg]")) {
      const effect = corner.balance[bar.dataset.phase];
      if (!effect) continue;
      const place = 50 * (1 - (Number(bar.dataset.deg) + effect.central) / Number(bar.dataset.fullDeg));
      const line = document.createElement("i");
      line.className = `would line ${effect.sure ? "" : "open"}`;
      line.style.top = `${Math.max(0, Math.min(98, place))}%`;
      bar.append(line);
    }
    const time = document.createElement("span");
    time.className = `would time ${corner.time.sure ? "" : "open"}`;
    time.textContent = `${signed(1000 * corner.time.central, 0)}`;
    time.title = `${signed(corner.time.central, 3)} s`;
    cell.querySelector(".number").append(time);
  }
}

const queryOf = (changes) => changes.map((knob) => `turn=${encodeURIComponent(`${knob.name}=${wordsOf(knob)}`)}`).join("&");

function asDriven() {
  onRibbon(null);
  render(html`<p class="hint">As driven. Move an item: what it would have done on these laps appears here and on the ribbon.</p>`, shown());
}

/** Asks roughly while an item is being moved, and once more in full when it stays where it is; the last position counts. */
async function ask() {
  wanted = queryOf(turned());
  if (asking) return;
  asking = true;
  for (let answered = null; answered !== wanted;) {
    const query = wanted;
    answered = query;
    if (!query) {
      asDriven();
      continue;
    }
    try {
      await fill(query, true);
      await new Promise((resolve) => setTimeout(resolve, SETTLE_MS));
      if (wanted === query) await fill(query, false);
    } catch (e) {
      onRibbon(null);
      render(html`<p class="wrong">${e.message}</p>`, shown());
    }
  }
  asking = false;
}

async function fill(query, rough) {
  const began = performance.now();
  const what = await (await get(`/stints/${form().dataset.stint}/what-if?${query}${rough ? "&rough" : ""}`)).json();
  if (wanted !== query) return;
  render(answer(what), shown());
  onRibbon(what);
  shown().classList.toggle("rough", rough);
  shown().dataset[rough ? "roughMs" : "fullMs"] = Math.round(performance.now() - began);
}

function back() {
  for (const knob of knobs()) {
    knob.value = 0;
    label(knob);
  }
  ask();
}

export function wireTurning() {
  if (!form()) return;
  shown().replaceChildren();
  for (const knob of knobs()) {
    knob.value = 0;
    label(knob);
    knob.addEventListener("input", () => { label(knob); ask(); });
  }
  form().addEventListener("submit", (event) => event.preventDefault());
  hint();
}

/** Says what to do, and offers the proposed change where there is one. */
function hint() {
  const [item, value] = form().dataset.chosen.split("=");
  const knob = item ? knobs().find((one) => one.name === item) : null;
  const show = () => {
    knob.value = Math.round((Number(value) - Number(knob.dataset.driven)) / Number(knob.dataset.step));
    label(knob);
    ask();
  };
  render(html`<p class="hint">Move an item: what it would have done on these laps appears here and on the ribbon.
    ${knob ? html`<button type="button" @click=${show}>Show the proposed change</button>` : nothing}</p>`, shown());
}

/** Items are turned while the page is read already: what is proposed comes in when it is known; sliders stay as they are. */
export function wireChangePart() {
  const part = document.getElementById("change-part");
  if (!part) return;
  part.addEventListener("click", async (event) => {
    const again = event.target.closest(".propose-again");
    if (!again) return;
    try {
      await post(`/stints/${again.dataset.stint}/propose`, {});
      location.reload();
    } catch (e) {
      say(e.message);
    }
  });
  if (part.dataset.job === "0") return;
  document.addEventListener("jobs", async function come(event) {
    const job = event.detail.find((one) => String(one.id) === part.dataset.job);
    if (!job || job.state === "RUNNING" || job.state === "WAITING") return;
    document.removeEventListener("jobs", come);
    try {
      const text = await (await get(`/stints/${part.dataset.stint}/change`)).text();
      const made = new DOMParser().parseFromString(text, "text/html"); // by our own templates: escaped there
      part.querySelector(".proposed").replaceWith(made.querySelector(".proposed"));
      const chosen = made.getElementById("turn")?.dataset.chosen ?? "";
      if (!form()) return;
      form().dataset.chosen = chosen;
      if (!turned().length) hint();
    } catch (e) {
      part.querySelector(".hint").textContent = e.message;
    }
  });
}
