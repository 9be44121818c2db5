// The place under the cursor on the map of the circuit, both ways.
const SVG = "http://www.w3.org/2000/svg";

export function wireMap(data, point) {
  const drawing = document.querySelector(".map svg");
  if (!drawing) return;
  const { stepM, x, y } = data.map;
  const here = document.createElementNS(SVG, "circle");
  here.setAttribute("class", "here");
  here.setAttribute("r", "11");
  drawing.append(here);

  document.addEventListener("here", (event) => {
    const station = event.detail;
    here.classList.toggle("seen", station !== null);
    if (station === null) return;
    const at = (((station / stepM) % x.length) + x.length) % x.length;
    const i = Math.floor(at);
    const next = (i + 1) % x.length;
    here.setAttribute("cx", x[i] + (at - i) * (x[next] - x[i]));
    here.setAttribute("cy", y[i] + (at - i) * (y[next] - y[i]));
  });
  drawing.addEventListener("pointermove", (event) => {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(drawing.getScreenCTM().inverse());
    let nearest = 0;
    let least = Infinity;
    for (let i = 0; i < x.length; i++) {
      const away = (x[i] - at.x) ** 2 + (y[i] - at.y) ** 2;
      if (away < least) {
        least = away;
        nearest = i;
      }
    }
    if (least < 60 * 60) point(nearest * stepM);
  });
}
