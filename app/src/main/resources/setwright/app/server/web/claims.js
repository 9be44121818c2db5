// Laps and corners that a sentence names become links: what proves a claim is one click away.
import { chooseLap } from "./place.js";

const NAMED = /\b(laps?|corners?)((?:\s|\u00a0)\d+(?:(?:,\s|\sand\s)\d+)*)/gi;
const NUMBER = /\d+/g;

function link(kind, number, known) {
  if (!known.has(number)) return document.createTextNode(number);
  const anchor = document.createElement("a");
  anchor.href = kind === "lap" ? "#traces" : `#corner-${number}`;
  anchor.dataset[kind === "lap" ? "lap" : "corner"] = number;
  anchor.textContent = number;
  return anchor;
}

function linked(text, laps, corners) {
  const parts = document.createDocumentFragment();
  let done = 0;
  for (const match of text.matchAll(NAMED)) {
    const kind = match[1].toLowerCase().startsWith("lap") ? "lap" : "corner";
    const known = kind === "lap" ? laps : corners;
    const from = match.index + match[1].length;
    parts.append(text.slice(done, from));
    let at = 0;
    for (const number of match[2].matchAll(NUMBER)) {
      parts.append(match[2].slice(at, number.index), link(kind, number[0], known));
      at = number.index + number[0].length;
    }
    parts.append(match[2].slice(at));
    done = from + match[2].length;
  }
  if (!done) return null;
  parts.append(text.slice(done));
  return parts;
}

/** Wires the claims of a part of the page; only texts are touched, so that whatever they hold stays text. */
export function wireClaims(part, laps, corners) {
  const texts = [];
  const walker = document.createTreeWalker(part, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    if (!walker.currentNode.parentElement.closest("a, button, label, summary, svg, option, caption, output, h1, h2, h3, h4, .ribbon, .live-traces, #turned")) texts.push(walker.currentNode);
  }
  for (const text of texts) {
    const parts = linked(text.data, laps, corners);
    if (parts) text.replaceWith(parts);
  }
}

document.addEventListener("click", (event) => {
  const anchor = event.target.closest("a[data-lap]");
  if (!anchor) return;
  event.preventDefault();
  chooseLap(Number(anchor.dataset.lap), true);
  document.getElementById("traces").scrollIntoView();
});
