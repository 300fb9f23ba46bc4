/** Names and roles of the engine's own controls, which it draws as icons without either. */

/** What a control does, by the engine's command. */
const BY_COMMAND: Readonly<Record<string, string>> = {
  "univer.command.undo": "Undo",
  "univer.command.redo": "Redo",
  "sheet.command.set-once-format-painter": "Copy format",
  "sheet.command.clear-selection-all": "Clear",
  "sheet.command.set-range-font-family": "Font",
  "sheet.command.set-range-fontsize": "Font size",
  "sheet.command.set-range-font-increase": "Larger text",
  "sheet.command.set-range-font-decrease": "Smaller text",
  "sheet.command.set-range-bold": "Bold",
  "sheet.command.set-range-italic": "Italic",
  "sheet.command.set-range-underline": "Underline",
  "sheet.command.set-range-stroke": "Strike through",
  "sheet.command.set-range-text-color": "Text color",
  "sheet.command.set-background-color": "Fill color",
  "sheet.command.set-border-basic": "Borders",
  "sheet.command.set-horizontal-text-align": "Horizontal alignment",
  "sheet.command.set-vertical-text-align": "Vertical alignment",
  "sheet.command.set-text-wrap": "Wrap text",
  "sheet.command.set-text-rotation": "Rotate text",
  "sheet.command.add-worksheet-merge": "Merge cells",
  "sheet.operation.open.numfmt.panel": "Number format",
  "sheet.command.numfmt.set.percent": "Percent",
  "sheet.command.numfmt.set.currency": "Currency",
  "sheet.command.numfmt.add.decimal.command": "More decimals",
  "sheet.command.numfmt.subtract.decimal.command": "Fewer decimals",
  "sheet.command.add-range-protection-from-toolbar": "Protect cells",
  "base-ui.operation.toggle-shortcut-panel": "Keyboard shortcuts",
  "sheet.toolbar.text-to-number": "Text to number",
  "sheet.command.toggle-gridlines": "Gridlines",
};

/** Controls without a command, by where the engine puts them or by their icon. */
const BY_PLACE: readonly (readonly [selector: string, name: string])[] = [
  ['[data-u-comp="defined-name"] input', "Cell or name to go to"],
  ['[data-u-comp="defined-name"] a', "Names"],
  ['[data-u-comp="sheet-bar-append-button"]:has(.univerjs-icon-increase-icon)', "Add sheet"],
  ['[data-u-comp="sheet-bar-append-button"]:has(.univerjs-icon-convert-icon)', "All sheets"],
  ['[data-u-comp="button"]:has(.univerjs-icon-reduce-icon)', "Zoom out"],
  ['[data-u-comp="button"]:has(.univerjs-icon-increase-icon)', "Zoom in"],
  [
    '[data-u-comp="sheet-bar-append-button"]:has(.univerjs-icon-more-icon:not(.univer-rotate-180))',
    "Scroll to sheets on the right",
  ],
  [
    '[data-u-comp="sheet-bar-append-button"]:has(.univerjs-icon-more-icon.univer-rotate-180)',
    "Scroll to sheets on the left",
  ],
  ["header button:has(.univerjs-icon-close-icon)", "Stop calculating"],
];

const set = (element: Element, attribute: string, value: string): void => {
  if (element.getAttribute(attribute) !== value) element.setAttribute(attribute, value);
};

/** What opens a list: a division without a role. One around another control keeps none, for it would hide that one. */
function nameOpeners(container: Element): void {
  for (const opener of container.querySelectorAll("[type=button][aria-haspopup]:not(button)")) {
    if (opener.querySelector("button, input") !== null) continue;
    set(opener, "role", "button");
    const own = opener.closest("[data-u-command]") ?? opener.querySelector("[data-u-command]");
    const name = BY_COMMAND[own?.getAttribute("data-u-command") ?? ""];
    if (name !== undefined && opener.textContent.trim() === "") set(opener, "aria-label", name);
  }
}

/** The engine's roles "track" and "handle" are none of the standard's. */
function nameZoom(container: Element): void {
  for (const track of container.querySelectorAll('[role="track"]')) {
    set(track, "role", "group");
    set(track, "aria-label", "Zoom");
    for (const middle of track.querySelectorAll('a[role="button"]')) set(middle, "aria-label", "Zoom to 100%");
    for (const handle of track.querySelectorAll('[role="handle"]')) {
      handle.removeAttribute("role");
      set(handle, "aria-label", "Zoom, by dragging");
    }
  }
}

function nameAll(container: Element): void {
  for (const element of container.querySelectorAll("button[data-u-command], [data-u-command] input")) {
    const command = element.closest("[data-u-command]")?.getAttribute("data-u-command") ?? "";
    const name = BY_COMMAND[command];
    if (name !== undefined) set(element, "aria-label", name);
  }
  for (const [selector, name] of BY_PLACE)
    for (const element of container.querySelectorAll(selector)) set(element, "aria-label", name);
  nameOpeners(container);
  nameZoom(container);
  container.querySelectorAll("section[aria-live]").forEach((region, at) => {
    set(region, "aria-label", at === 0 ? "Notifications" : `Notifications ${String(at + 1)}`);
  });
  // In the page's own order of the keyboard.
  for (const canvas of container.querySelectorAll('canvas[tabindex="1"]')) set(canvas, "tabindex", "0");
}

/** The engine opens lists beside the container, in the page's body. */
function nameOpened(): void {
  for (const opened of document.querySelectorAll('[role="dialog"][data-slot="popover-content"]')) {
    set(opened, "aria-label", "Tools");
    nameAll(opened);
  }
}

/** Names the controls now, and those that the engine draws later. */
export function nameControls(container: Element): void {
  nameAll(container);
  new MutationObserver(() => nameAll(container)).observe(container, {
    childList: true,
    subtree: true,
    attributeFilter: ["tabindex", "role"],
  });
  new MutationObserver(nameOpened).observe(document.body, { childList: true });
}
