/** The engine takes the focus whenever nothing else has it; here the keyboard goes to the grid only by the user's doing. */
import type { Univer } from "@univerjs/core";
import { ILayoutService } from "@univerjs/ui";

const isEditor = (target: EventTarget | null): target is HTMLElement =>
  target instanceof HTMLElement && target.closest('[data-u-comp="editor"]') !== null;

/** @returns puts the focus into the grid */
export function guardFocus(univer: Univer, container: HTMLElement): () => void {
  const isInside = (target: EventTarget | null): boolean => target instanceof Node && container.contains(target);
  let invited = false;
  const watch = <K extends keyof WindowEventMap>(type: K, call: (event: WindowEventMap[K]) => void): void =>
    addEventListener(type, call, { capture: true });
  watch("pointerdown", ({ target }) => (invited = isInside(target)));
  watch("keydown", ({ key }) => (invited ||= key === "Tab"));
  watch("focusin", (event) => {
    const { target, relatedTarget } = event;
    if (!isEditor(target)) {
      // The engine hands on what its other elements get.
      invited = isInside(target);
      return;
    }
    if (invited || isInside(relatedTarget)) return;
    // Otherwise the engine would take the keys of the whole page.
    event.stopImmediatePropagation();
    if (relatedTarget instanceof HTMLElement) relatedTarget.focus();
    else target.blur();
  });
  return () => {
    invited = true;
    univer.__getInjector().get(ILayoutService).focus();
  };
}
