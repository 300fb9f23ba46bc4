/** A picture in a dialog over the whole panel. Esc closes it, and the focus goes back to its button. */
import type { Picture, Scheme } from "../../../core/pictures";
import { action, h } from "../elements";
import type { Drawing } from "./drawing";
import { canvas } from "./canvas";

/** The least width, and height by width: a narrow panel scrolls sideways. */
const LEAST = 560;
const heightAt = (width: number): number => Math.round(Math.min(0.62 * width, 620));

export function largerButton(picture: Picture | Scheme, drawing: Drawing, key: string): HTMLElement {
  const open = (): void => {
    const panel = button.closest(".panel");
    if (panel === null) return;
    const close = action("Close", () => dialog.close(), { key: `${key} close` });
    const drawn = canvas(picture, drawing, { key: `${key} large`, least: "parts" in picture ? 0 : LEAST, heightAt });
    const dialog = h(
      "dialog",
      { class: "larger pictures", "aria-label": picture.title },
      h("h3", {}, picture.title),
      drawn,
      h("p", { class: "actions" }, close),
    );
    dialog.addEventListener("close", () => {
      dialog.remove();
      button.focus();
    });
    panel.append(dialog);
    dialog.showModal();
  };
  const button = action("Larger view", open, { key: `${key} larger`, name: `Larger view: ${picture.title}` });
  return button;
}
