/** What the lines and bars of a picture mean: a sample of each beside its name. */
import type { Picture } from "../../../core/pictures";
import { h } from "../elements";
import { legendOf } from "./legend";

export function legend(picture: Picture): HTMLElement | undefined {
  const entries = legendOf(picture);
  if (entries.length === 0) return undefined;
  return h(
    "ul",
    { class: "legend" },
    entries.map(({ name, tone, look }) =>
      h("li", {}, h("span", { class: `sample ${look} ${tone}`, "aria-hidden": "true" }), name),
    ),
  );
}
