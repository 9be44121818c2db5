// Somebody says that the car was in good order in a stint, or takes that back.
import { post } from "./ask.js";

export function wireOrder() {
  const button = document.querySelector("button[data-order]");
  if (!button) return;
  button.addEventListener("click", async () => {
    button.disabled = true;
    try {
      await post(`/stints/${button.dataset.stint}/order`, { good: button.dataset.order === "yes" });
      location.reload();
    } catch (e) {
      button.disabled = false;
      button.parentElement.querySelector(".came").textContent = e.message;
    }
  });
}
