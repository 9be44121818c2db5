// Units and day or night: kept in cookies, so that every page and the server know them.
const YEAR = 31536000;

export function wireChoices() {
  const keep = (name, value) => { document.cookie = `${name}=${value}; path=/; max-age=${YEAR}; SameSite=Strict`; };
  document.getElementById("units").addEventListener("change", (event) => {
    keep("units", event.target.value);
    location.reload();
  });
  document.getElementById("light").addEventListener("change", (event) => {
    keep("light", event.target.value);
    document.documentElement.dataset.light = event.target.value;
    document.dispatchEvent(new CustomEvent("light"));
  });
}
