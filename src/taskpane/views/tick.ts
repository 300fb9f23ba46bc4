/** A box to tick, with its label and a hint below. */
import { h } from "../elements";

const checkedOf = (event: Event): boolean => event.target instanceof HTMLInputElement && event.target.checked;

export function tick(
  label: string,
  {
    key,
    checked,
    change,
    hint,
  }: { key: string; checked: boolean; change: (on: boolean) => void; hint?: string | undefined },
): HTMLElement {
  const input = h("input", {
    type: "checkbox",
    "data-key": key,
    checked,
    change: (event) => change(checkedOf(event)),
  });
  return h(
    "label",
    { class: "tick" },
    input,
    h("span", {}, label, hint === undefined ? undefined : h("span", { class: "hint" }, hint)),
  );
}
