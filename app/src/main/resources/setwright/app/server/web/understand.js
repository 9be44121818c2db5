// How a recording's columns are understood: shown with why, corrected by choice, put to the test each time.
import { html, render, nothing } from "./library/lit-html/lit-html.js";
import { post } from "./ask.js";

/**
 * Wires the step.
 *
 * @param sent  sends the chosen recording and sheet, and returns their keys with the car's name
 * @return what is known of it: the recording's key and that of a corrected map
 */
export function wireUnderstanding(sent) {
  const place = document.getElementById("understood");
  const known = { file: null, key: "", beside: [], map: "" };
  let asked = null;
  let now = null;

  async function show(request) {
    try {
      now = await request();
      known.map = now.map;
      render(table(""), place);
    } catch (e) {
      render(nothing, place); // choices go back to what was last believed
      render(now ? table(e.message) : html`<p class="wrong">${e.message}</p>`, place);
    }
  }

  const choiceOf = (quantity) => now.quantities.find((one) => one.quantity === quantity);

  function correct(entries) {
    return show(async () => (await post(`/uploads/${asked.recording}/map`, {
      beside: asked.beside, sheet: asked.sheet, car: asked.car, entries: entries.map(({ quantity, column, unit, otherWay }) => ({ quantity, column, unit, otherWay })),
    })).json());
  }

  function changed(entry, change) {
    correct(now.entries.map((one) => (one === entry ? { ...one, ...change } : one)));
  }

  function add(event) {
    const quantity = event.target.value;
    event.target.value = "";
    if (!quantity) return;
    const free = now.columns.find((column) => !now.entries.some((one) => one.column === column)) ?? now.columns[0];
    now = { ...now, entries: [...now.entries, { quantity, column: free, unit: choiceOf(quantity).units[0], otherWay: false, evidence: ["Choose its column, then test."] }] };
    render(table(""), place);
  }

  const row = (entry) => {
    const choice = choiceOf(entry.quantity);
    return html`<tr><th scope="row">${choice.words}</th>
      <td><select aria-label="Column of ${choice.words}" @change=${(event) => changed(entry, { column: event.target.value })}>${now.columns.map((column) => html`<option .selected=${column === entry.column}>${column}</option>`)}</select></td>
      <td><select aria-label="Unit of ${choice.words}" @change=${(event) => changed(entry, { unit: event.target.value })}>${choice.units.map((unit) => html`<option .selected=${unit === entry.unit}>${unit}</option>`)}</select></td>
      <td><label class="check"><input type="checkbox" .checked=${entry.otherWay} @change=${(event) => changed(entry, { otherWay: event.target.checked })}> other way</label></td>
      <td>${entry.evidence.map((sentence) => html`<p>${sentence}</p>`)}</td>
      <td><button type="button" aria-label="Leave out ${choice.words}" @click=${() => correct(now.entries.filter((one) => one !== entry))}>Leave out</button></td></tr>`;
  };

  const table = (wrong) => html`<h2 class="small">How its columns are understood</h2>
    ${wrong ? html`<p class="wrong" role="alert">${wrong}</p>` : nothing}
    ${known.map ? html`<p class="hint">Corrected, and tested against the data: it is read in like this.</p>` : nothing}
    ${now.remarks.map((remark) => html`<p class="hint">${remark}</p>`)}
    <div class="scroll" tabindex="0" role="region" aria-label="Columns"><table class="plain understood">
      <thead><tr><th scope="col">Quantity</th><th scope="col">Column</th><th scope="col">Unit</th><th scope="col">Counts</th><th scope="col">Why</th><th scope="col"><span class="hidden">Leave out</span></th></tr></thead>
      <tbody>${now.entries.map(row)}</tbody></table></div>
    <label>Another quantity <select @change=${add}><option value=""></option>${now.quantities.filter((one) => !now.entries.some((entry) => entry.quantity === one.quantity)).map((one) => html`<option value=${one.quantity}>${one.words}</option>`)}</select></label>`;

  document.getElementById("understand").addEventListener("click", async () => {
    now = null;
    known.map = "";
    render(html`<p class="hint">The recording is being looked at.</p>`, place);
    await show(async () => {
      asked = await sent();
      known.file = asked.file;
      known.key = asked.recording;
      known.beside = asked.beside;
      return (await post(`/uploads/${asked.recording}/understand`, { beside: asked.beside, sheet: asked.sheet, car: asked.car })).json();
    });
  });
  return known;
}
