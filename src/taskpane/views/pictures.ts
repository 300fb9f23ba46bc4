/** A call's pictures: their script is loaded when one is first shown. */
import type { RawValue } from "../../workbook/values";
import { h, markScrollable } from "../elements";
import { PICTURED } from "../pictures/known";
import type { Picture } from "../../../core/pictures";
import type * as Pictures from "../pictures";
import { valueText } from "./result";

type Drawing = typeof Pictures;

const table = ({ head, rows, title }: Picture): HTMLElement =>
  h(
    "div",
    { class: "wide", role: "group", "aria-label": `Numbers of the picture: ${title}` },
    h(
      "table",
      { class: "grid" },
      h(
        "thead",
        {},
        h(
          "tr",
          {},
          head.map((each) => h("th", { scope: "col" }, each)),
        ),
      ),
      h(
        "tbody",
        {},
        rows.map((row) =>
          h(
            "tr",
            {},
            row.map((each) => h("td", { class: typeof each === "number" ? "number" : undefined }, valueText(each))),
          ),
        ),
      ),
    ),
  );

/** What the lines and bars mean: a sample of each beside its name. */
function legend({ curves, stacks = [] }: Picture): HTMLElement | undefined {
  const lines = curves.filter(({ tone }) => tone !== "outline");
  const entries = [
    ...lines.map(({ name, tone, dashed }) => ({ name, tone, look: dashed === true ? "dashed" : "line" })),
    ...stacks.map(({ name, tone }) => ({ name, tone, look: "bar" })),
  ];
  if (entries.length < 2) return undefined;
  return h(
    "ul",
    { class: "legend" },
    entries.map(({ name, tone, look }) =>
      h("li", {}, h("span", { class: `sample ${look} ${tone}`, "aria-hidden": "true" }), name),
    ),
  );
}

/** Draws again when the panel's width changes. */
function canvas(picture: Picture, { drawn }: Drawing): HTMLElement {
  const box = h("div", { class: "picture" });
  let width = 0;
  const draw = (): void => {
    const now = Math.floor(box.clientWidth);
    if (now === 0 || now === width) return;
    width = now;
    box.replaceChildren(drawn(picture, width));
  };
  new ResizeObserver(draw).observe(box);
  return box;
}

const figure = (picture: Picture, drawing: Drawing, key: string): HTMLElement =>
  h(
    "figure",
    {},
    h("figcaption", {}, picture.title),
    legend(picture),
    canvas(picture, drawing),
    h(
      "details",
      { "data-key": `${key} ${picture.title}` },
      h("summary", { "data-key": `${key} ${picture.title} summary` }, "Numbers of the picture"),
      table(picture),
    ),
  );

/** A place that the call's pictures come into; undefined where the function has none. */
export function picturesBox(id: string, args: readonly RawValue[], key: string): HTMLElement | undefined {
  if (!PICTURED.has(id)) return undefined;
  const box = h("div", { class: "pictures" });
  const fill = async (): Promise<void> => {
    const drawing = await import(/* webpackChunkName: "pictures" */ "../pictures");
    box.append(...drawing.picturesOf(id, args).map((picture) => figure(picture, drawing, key)));
    markScrollable(box);
  };
  fill().catch(() => {
    box.append(h("p", { class: "quiet" }, "The picture could not be loaded."));
  });
  return box;
}
