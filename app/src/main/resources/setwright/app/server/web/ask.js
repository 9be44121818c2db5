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
  const raw = body instanceof Blob;
  return answered(await asked(() => fetch(path, {
    method: "POST",
    headers: { Accept: "application/json", "Setwright-Token": token, "Content-Type": raw ? "application/octet-stream" : "application/json" },
    body: raw ? body : JSON.stringify(body),
  })));
}

/** Says something where a screen reader hears it and everybody sees it. */
export function say(words) {
  document.getElementById("said").textContent = words;
}
