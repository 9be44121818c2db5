// The live list of jobs, and what a page waits for.
import { html, render, nothing } from "./library/lit-html/lit-html.js";
import { post, say } from "./ask.js";

const STATES = { WAITING: "waiting", RUNNING: "running", DONE: "done", FAILED: "did not work", STOPPED: "stopped" };
const over = (job) => job.state !== "WAITING" && job.state !== "RUNNING";

async function stop(job) {
  try {
    await post(`/jobs/${job.id}/stop`, {});
  } catch (e) {
    say(e.message);
  }
}

const bar = (job) => html`<progress max=${job.steps} value=${job.done} aria-label=${job.title}></progress>`;

const row = (job) => html`<li class="job ${job.state.toLowerCase()}">
  <p><span>${job.title}</span> <span class="tag">${job.stopping ? "stops after this step" : STATES[job.state]}</span></p>
  ${over(job) ? nothing : html`<div class="running">${bar(job)} <span class="tag">${job.step}</span>
    <button type="button" ?disabled=${job.stopping} @click=${() => stop(job)}>Stop</button></div>`}
  ${job.message || job.link ? html`<p>${job.message} ${job.link ? html`<a href=${job.link}>Look</a>` : nothing}</p>` : nothing}
</li>`;

function list(jobs) {
  const busy = jobs.filter((job) => !over(job)).length;
  return html`<details class="jobs">
    <summary>Jobs <span class="count">${busy || "none"}</span></summary>
    ${jobs.length ? html`<ul>${jobs.map(row)}</ul>` : html`<p class="hint">Nothing has been done since the program was started.</p>`}
  </details>`;
}

/** Shows how a job goes where the page waits for it; then goes to what came of it. */
function wait(jobs) {
  for (const part of document.querySelectorAll("[data-follow]")) {
    const job = jobs.find((one) => String(one.id) === part.dataset.follow);
    const shown = part.querySelector(".follow");
    if (!job || !shown) continue;
    if (job.link === part.dataset.link) {
      part.removeAttribute("data-follow"); // once is enough
      location.reload();
      return;
    }
    render(job.state === "FAILED" || job.state === "STOPPED"
      ? html`<p class="wrong">${job.message}</p><p><a href=${location.pathname}>Try again</a> or go <a href="/">to the stints</a>.</p>`
      : html`${bar(job)} <span class="tag">${job.step || "waits its turn"}</span> <button type="button" @click=${() => stop(job)}>Stop</button>`, shown);
  }
}

let last = [];

/** The jobs as they were told last. */
export const jobsNow = () => last;

let run = null;

function connect(told) {
  const stream = new EventSource("/jobs/stream");
  stream.addEventListener("run", (event) => {
    if (run && run !== event.data) location.reload(); // the program was started anew
    run = event.data;
    say("");
  });
  stream.addEventListener("jobs", (event) => told(JSON.parse(event.data)));
  stream.addEventListener("error", () => say("The program does not answer. If it was stopped, start it again; this page then goes on."));
  return stream;
}

/** Follows them while the page is seen: browsers allow six connections to a server, however many tabs there are. */
export function followJobs() {
  const place = document.getElementById("jobs");
  render(list([]), place);
  const told = (jobs) => {
    last = jobs;
    render(list(jobs), place);
    wait(jobs);
    document.dispatchEvent(new CustomEvent("jobs", { detail: jobs }));
  };
  let stream = null;
  const follow = () => {
    if (document.visibilityState === "hidden") {
      stream?.close();
      stream = null;
    } else {
      stream ??= connect(told);
    }
  };
  document.addEventListener("visibilitychange", follow);
  addEventListener("pagehide", () => stream?.close());
  addEventListener("pageshow", (event) => { if (event.persisted) location.reload(); });
  follow();
}
