// Recordings come in: chosen or dropped, sent one after the other, read by jobs.
import { post } from "./ask.js";
import { jobsNow } from "./jobs.js";
import { wireUnderstanding } from "./understand.js";

async function send(file) {
  return (await (await post(`/uploads?name=${encodeURIComponent(file.name)}`, file)).json()).key;
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
  const sent = document.getElementById("sent");
  const field = (name) => form.elements.namedItem(name);

  for (const kind of ["dragover", "dragenter"]) {
    drop.addEventListener(kind, (event) => { event.preventDefault(); drop.classList.add("over"); });
  }
  drop.addEventListener("dragleave", () => drop.classList.remove("over"));
  drop.addEventListener("drop", (event) => {
    event.preventDefault();
    drop.classList.remove("over");
    recordings.files = event.dataTransfer.files;
  });

  const known = wireUnderstanding(async () => {
    const file = recordings.files[0];
    if (!file) {
      recordings.focus();
      throw new Error("Choose a recording first.");
    }
    const sheet = field("sheet").files[0];
    return { file, recording: await send(file), sheet: sheet ? await send(sheet) : "", car: field("car").value };
  });

  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    const button = form.querySelector("button");
    const files = Array.from(recordings.files);
    sent.replaceChildren();
    if (!files.length) {
      line(sent, "Choose a recording first.");
      recordings.focus();
      return;
    }
    button.disabled = true;
    for (const file of files) {
      const told = line(sent, `${file.name}: on its way`);
      try {
        const key = await send(file);
        // Sent anew for each: a file is thrown away once it was read.
        const sheet = field("sheet").files[0] ? await send(field("sheet").files[0]) : "";
        const map = known.map && known.file === file ? known.map : field("map").files[0] ? await send(field("map").files[0]) : "";
        const job = await (await post("/recordings", {
          recording: key, sheet, map, car: field("car").value, driver: field("driver").value, circuit: field("circuit").value,
        })).json();
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
    for (const told of sent.querySelectorAll("[data-job]")) {
      const job = jobs.find((one) => String(one.id) === told.dataset.job);
      if (!job) continue;
      if (job.state === "DONE" && job.link) {
        const link = document.createElement("a");
        link.href = job.link;
        link.textContent = "Look at it";
        told.replaceChildren(`${job.message} `, link);
        delete told.dataset.job;
      } else if (job.message) {
        told.textContent = job.message;
        told.classList.toggle("wrong", job.state === "FAILED");
      }
    }
  }
  document.addEventListener("jobs", (event) => follow(event.detail));
}
