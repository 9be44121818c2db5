// Recordings come in: chosen or dropped, sent one after the other, read by jobs.
import { get, post, send } from "./ask.js";
import { jobsNow } from "./jobs.js";
import { wireUnderstanding } from "./understand.js";

/** Sends a file and returns what it is asked for by. */
async function sent(file, told = () => {}) {
  return (await send(`/uploads?name=${encodeURIComponent(file.name)}`, file, told)).key;
}

const isSheet = (file) => /\.ya?ml$/i.test(file.name);

/** Files as a field holds them. */
function held(files) {
  const transfer = new DataTransfer();
  files.forEach((file) => transfer.items.add(file));
  return transfer.files;
}

/** The list of stints as it is now. */
async function showStints() {
  const text = await (await get("/")).text();
  const made = new DOMParser().parseFromString(text, "text/html"); // by our own template: escaped there
  document.getElementById("stints").replaceWith(document.adoptNode(made.getElementById("stints")));
}

function line(list, words) {
  const item = document.createElement("li");
  item.textContent = words;
  list.append(item);
  return item;
}

export function wireBringing() {
  const form = document.getElementById("bring");
  if (!form) return;
  const drop = document.getElementById("drop");
  const recordings = document.getElementById("recordings");
  const list = document.getElementById("sent");
  const field = (name) => form.elements.namedItem(name);

  for (const kind of ["dragover", "dragenter"]) {
    drop.addEventListener(kind, (event) => { event.preventDefault(); drop.classList.add("over"); });
  }
  drop.addEventListener("dragleave", () => drop.classList.remove("over"));
  drop.addEventListener("drop", (event) => {
    event.preventDefault();
    drop.classList.remove("over");
    const files = Array.from(event.dataTransfer.files);
    const sheets = files.filter(isSheet);
    recordings.files = held(files.filter((file) => !isSheet(file)));
    if (sheets.length) field("sheet").files = held(sheets.slice(0, 1));
  });
  for (const kind of ["dragover", "drop"]) { // beside the box the browser would leave the page for the file
    addEventListener(kind, (event) => { if (event.dataTransfer?.types.includes("Files")) event.preventDefault(); });
  }

  /** Sends what was recorded in the same run; that belongs to one recording only. */
  async function sentBeside() {
    const files = Array.from(field("beside").files);
    if (files.length && recordings.files.length > 1) throw new Error("with several recordings nothing tells to which of them it belongs. Bring them in one by one.");
    const keys = [];
    for (const file of files) keys.push(await sent(file));
    return keys;
  }

  const known = wireUnderstanding(async () => {
    const file = recordings.files[0];
    if (!file) {
      recordings.focus();
      throw new Error("Choose a recording first.");
    }
    const sheet = field("sheet").files[0];
    return { file, recording: await sent(file), beside: await sentBeside(), sheet: sheet ? await sent(sheet) : "", car: field("car").value };
  });

  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    const button = form.querySelector("button");
    const files = Array.from(recordings.files);
    list.replaceChildren();
    if (!files.length) {
      line(list, "Choose a recording first.");
      recordings.focus();
      return;
    }
    button.disabled = true;
    for (const file of files) {
      const told = line(list, `${file.name}: on its way`);
      try {
        const looked = known.file === file;
        const key = looked ? known.key : await sent(file, (share) => { told.textContent = `${file.name}: ${Math.round(100 * share)} % sent`; });
        // Sent anew for each: a file is thrown away once it was read.
        const sheet = field("sheet").files[0] ? await sent(field("sheet").files[0]) : "";
        const map = looked && known.map ? known.map : field("map").files[0] ? await sent(field("map").files[0]) : "";
        const job = await (await post("/recordings", {
          recording: key, beside: looked ? known.beside : await sentBeside(), sheet, map, car: field("car").value, driver: field("driver").value, circuit: field("circuit").value,
        })).json();
        if (looked) known.file = null; // what was sent is thrown away once it was read
        told.textContent = `${file.name}: being read`;
        told.dataset.job = job.id;
        follow(jobsNow()); // it may be over before this is known
      } catch (e) {
        told.textContent = `${file.name}: ${e.message}`;
      }
    }
    button.disabled = false;
  });

  function follow(jobs) {
    for (const told of list.querySelectorAll("[data-job]")) {
      const job = jobs.find((one) => String(one.id) === told.dataset.job);
      if (!job) continue;
      if (job.state === "DONE" && job.link) {
        const link = document.createElement("a");
        link.href = job.link;
        link.textContent = "Look at it";
        told.replaceChildren(`${job.message} `, link);
        delete told.dataset.job;
        showStints();
      } else if (job.message) {
        told.textContent = job.message;
        told.classList.toggle("wrong", job.state === "FAILED");
      }
    }
  }
  const met = new Set();
  let first = true;

  /** What came in by another way, such as a watched folder, is in the list at once. */
  function news(jobs) {
    const ready = jobs.filter((job) => job.link?.startsWith("/stints/") && !met.has(job.id));
    ready.forEach((job) => met.add(job.id));
    if (ready.length && !first) showStints();
    first = false;
  }
  document.addEventListener("jobs", (event) => { follow(event.detail); news(event.detail); });
}
