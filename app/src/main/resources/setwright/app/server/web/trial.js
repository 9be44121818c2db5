// A trial is judged or given up.
import { post } from "./ask.js";
import { jobsNow } from "./jobs.js";

export function wireTrial() {
  const acts = document.getElementById("trial-acts");
  if (!acts) return;
  const came = acts.querySelector(".came");
  let job = null;
  acts.addEventListener("click", async (event) => {
    const act = event.target.dataset.act;
    if (!act) return;
    if (act === "drop" && event.target.dataset.sure !== "yes") {
      event.target.dataset.sure = "yes";
      event.target.textContent = "Really give it up";
      return;
    }
    try {
      const answer = await (await post(`/trials/${act}`, { car: acts.dataset.car })).json();
      if (act === "judge") {
        job = answer.id;
        came.textContent = "The runs are being read.";
        follow(jobsNow());
      } else {
        location.reload();
      }
    } catch (e) {
      came.textContent = e.message;
    }
  });
  function follow(jobs) {
    const mine = jobs.find((one) => one.id === job);
    if (!mine) return;
    came.textContent = mine.message || mine.step;
    if (mine.link) {
      const link = document.createElement("a");
      link.href = mine.link;
      link.textContent = "See the verdict";
      came.append(" ", link);
    }
  }
  document.addEventListener("jobs", (event) => follow(event.detail));
}
