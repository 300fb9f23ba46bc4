/** Values of a picture under the pointer, and by keyboard on a slider below it. */
import type { Picture } from "../../../core/pictures";
import { h } from "../elements";
import { stopsOf, type Stop } from "./stops";

const SVG = "http://www.w3.org/2000/svg";

/** Where a value of the x axis is in the drawing, in pixels. */
export type Across = (x: number | string) => number;

export interface PictureReading {
  /** The slider and the line that shows the values. */
  readonly root: HTMLElement;
  /** Follows the pointer over a new drawing. */
  attach(drawing: Element, across: Across): void;
}

function nearest(stops: readonly Stop[], across: Across, at: number): number {
  const distance = ({ x }: Stop): number => Math.abs(across(x) - at);
  return stops.reduce((best, stop, place) => {
    const known = stops[best];
    return known === undefined || distance(stop) < distance(known) ? place : best;
  }, 0);
}

function cursorIn(drawing: Element): SVGLineElement {
  const line = document.createElementNS(SVG, "line");
  line.setAttribute("class", "cursor");
  line.setAttribute("y1", "30");
  line.setAttribute("y2", String(Number(drawing.getAttribute("height")) - 38));
  line.setAttribute("visibility", "hidden");
  drawing.append(line);
  return line;
}

/** Scrolls a drawing that is wider than its place until the cursor shows. */
function inSight(line: SVGLineElement | undefined, x: number): void {
  const place = line?.closest(".picture");
  if (!place || place.scrollWidth <= place.clientWidth) return;
  place.scrollLeft = x - place.clientWidth / 2;
}

/** Undefined where a picture has no values along it. */
export function readingOf(picture: Picture, key: string): PictureReading | undefined {
  const stops = stopsOf(picture);
  if (stops.length < 2) return undefined;
  const slider = h("input", {
    type: "range",
    min: 0,
    max: stops.length - 1,
    step: 1,
    value: 0,
    "data-key": `${key} reading`,
    "aria-label": `Values along the picture: ${picture.title}`,
  });
  const output = h("p", { class: "reading-text", "aria-hidden": "true" }, "Point at the picture, or move the slider.");
  let [line, scale]: [SVGLineElement | undefined, Across | undefined] = [undefined, undefined];
  const show = (): void => {
    const stop = stops[Number(slider.value)];
    if (stop === undefined) return;
    output.textContent = stop.text;
    slider.setAttribute("aria-valuetext", stop.text);
    const x = String(scale?.(stop.x) ?? 0);
    line?.setAttribute("x1", x);
    line?.setAttribute("x2", x);
    line?.setAttribute("visibility", "visible");
  };
  slider.setAttribute("aria-valuetext", stops[0]?.text ?? "");
  slider.addEventListener("input", () => {
    show();
    inSight(line, scale?.(stops[Number(slider.value)]?.x ?? 0) ?? 0);
  });
  return {
    root: h("div", { class: "reading" }, slider, output),
    attach(drawing, across) {
      const wasShown = line?.getAttribute("visibility") === "visible";
      line = cursorIn(drawing);
      scale = across;
      if (wasShown) show();
      drawing.addEventListener("pointermove", (event) => {
        const { left, width } = drawing.getBoundingClientRect();
        const pixels = ((event as PointerEvent).clientX - left) * (Number(drawing.getAttribute("width")) / width);
        slider.value = String(nearest(stops, across, pixels));
        show();
      });
    },
  };
}
