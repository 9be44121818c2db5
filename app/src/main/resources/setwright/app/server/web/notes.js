// Notes about a stint or the day.
import { post } from "./ask.js";

export function wireNotes() {
  for (const form of document.querySelectorAll("form.note")) {
    form.addEventListener("submit", async (event) => {
      event.preventDefault();
      const field = form.elements.namedItem("words");
      const came = form.querySelector(".came");
      try {
        await post("/notes", { words: field.value, stint: Number(form.dataset.note) });
        const entries = document.getElementById("entries");
        if (entries) {
          const entry = document.createElement("li");
          entry.textContent = field.value;
          entries.append(entry);
        }
        came.textContent = "Noted.";
        field.value = "";
        if (!entries) location.reload();
      } catch (e) {
        came.textContent = e.message;
      }
    });
  }
}
