// Asks the server; what goes wrong comes back as an Error whose message is for people.
const token = document.querySelector("meta[name=setwright-token]")?.content ?? "";
export const units = document.querySelector("meta[name=setwright-units]")?.content ?? "metric";

async function answered(response) {
  if (response.ok) return response;
  let message = "The program did not answer as it should.";
  try {
    message = (await response.json()).message || message;
  } catch {
    // not ours; the general words stand
  }
  throw new Error(message);
}

async function asked(request) {
  try {
    return await request();
  } catch (e) {
    if (e.name === "AbortError") throw e;
    throw new Error("The program does not answer. It may have been stopped; start it again, then load this page again.");
  }
}

export async function get(path, signal) {
  return answered(await asked(() => fetch(path, { headers: { Accept: "application/json" }, signal })));
}

export async function post(path, body) {
  return answered(await asked(() => fetch(path, {
    method: "POST",
    headers: { Accept: "application/json", "Setwright-Token": token, "Content-Type": "application/json" },
    body: JSON.stringify(body),
  })));
}

/**
 * Sends a file, and tells how much of it is there.
 *
 * @param told  hears shares from 0 to 1
 */
export function send(path, file, told) {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest(); // the only one that tells how far it has come
    request.open("POST", path);
    request.setRequestHeader("Accept", "application/json");
    request.setRequestHeader("Setwright-Token", token);
    request.setRequestHeader("Content-Type", "application/octet-stream");
    request.responseType = "json";
    request.upload.addEventListener("progress", (event) => told(event.loaded / Math.max(1, event.total)));
    request.addEventListener("load", () => {
      if (request.status === 200) resolve(request.response);
      else reject(new Error(request.response?.message || "The program did not answer as it should."));
    });
    request.addEventListener("error", () => reject(new Error("The file did not arrive. Is the program still running, and is the file not too long?")));
    request.send(file);
  });
}

/** Says something where a screen reader hears it and everybody sees it. */
export function say(words) {
  document.getElementById("said").textContent = words;
}
