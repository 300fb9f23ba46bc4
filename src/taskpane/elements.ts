/** A small builder of DOM elements. */

type Property = string | number | boolean | undefined | ((event: Event) => void);
export type Properties = Readonly<Record<string, Property>>;
export type Child = Node | string | undefined | readonly Child[];

const appendAll = (parent: Node, children: readonly Child[]): void => {
  for (const child of children) {
    if (child === undefined) continue;
    if (typeof child === "string" || child instanceof Node) parent.appendChild(textOrNode(child));
    else appendAll(parent, child);
  }
};

const textOrNode = (child: Node | string): Node => (typeof child === "string" ? document.createTextNode(child) : child);

const set = (element: Element, properties: Properties): void => {
  for (const [name, value] of Object.entries(properties)) {
    if (value === undefined || value === false) continue;
    if (typeof value === "function") element.addEventListener(name, value);
    else element.setAttribute(name, value === true ? "" : String(value));
  }
};

/** An element with attributes (true is an empty attribute, false and undefined none; a function listens) and children. */
export function h<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  properties?: Properties,
  ...children: readonly Child[]
): HTMLElementTagNameMap[K];
export function h(tag: string, properties?: Properties, ...children: readonly Child[]): HTMLElement;
export function h(tag: string, properties: Properties = {}, ...children: readonly Child[]): HTMLElement {
  const element = document.createElement(tag);
  set(element, properties);
  appendAll(element, children);
  return element;
}

const SVG = "http://www.w3.org/2000/svg";

/** A one-path picture in the colour of the surrounding text; decorative, always next to a word. */
export function shape(path: string): SVGElement {
  const svg = document.createElementNS(SVG, "svg");
  set(svg, { viewBox: "0 0 16 16", class: "shape", "aria-hidden": "true", focusable: "false" });
  const outline = document.createElementNS(SVG, "path");
  set(outline, { d: path, fill: "currentColor", "fill-rule": "evenodd" });
  svg.append(outline);
  return svg;
}

const keyed = (root: Element): readonly HTMLElement[] => [...root.querySelectorAll<HTMLElement>("[data-key]")];

/**
 * Replaces the children of an element. The focused element keeps the focus by its `data-key`; if it is gone, the view's
 * heading gets it. Disclosures stay open or closed as the user left them.
 */
export function replace(root: HTMLElement, ...children: readonly Child[]): void {
  const active = document.activeElement;
  const focused = active !== null && root.contains(active);
  const key = focused && active instanceof HTMLElement ? active.dataset["key"] : undefined;
  const open = new Map(
    keyed(root).flatMap((element) =>
      element instanceof HTMLDetailsElement ? [[element.dataset["key"], element.open] as const] : [],
    ),
  );
  root.replaceChildren();
  appendAll(root, children);
  for (const element of keyed(root)) {
    const was = open.get(element.dataset["key"]);
    if (element instanceof HTMLDetailsElement && was !== undefined) element.open = was;
  }
  if (!focused) return;
  const same = key === undefined ? undefined : keyed(root).find((element) => element.dataset["key"] === key);
  same?.focus();
  // A missing or hidden element can't take the focus.
  if (same === undefined || document.activeElement !== same)
    root.closest(".view")?.querySelector<HTMLElement>("[tabindex='-1']")?.focus();
}

/** Lets the keyboard scroll what doesn't fit: boxes of the class `wide` that overflow become focusable, others don't. */
export function markScrollable(root: HTMLElement): void {
  for (const box of root.querySelectorAll<HTMLElement>(".wide")) {
    if (box.scrollWidth > box.clientWidth + 1) box.tabIndex = 0;
    else box.removeAttribute("tabindex");
  }
}

interface ActionOptions {
  readonly key: string;
  readonly primary?: boolean;
  /** An accessible name, if the label alone is not enough. */
  readonly name?: string;
  readonly title?: string;
}

/** A push button. `run` is not started again while it runs. */
export function action(label: string, run: () => Promise<void> | void, options: ActionOptions): HTMLElement {
  let busy = false;
  const click = (): void => {
    if (busy) return;
    busy = true;
    void Promise.resolve(run()).finally(() => {
      busy = false;
    });
  };
  return h(
    "fluent-button",
    {
      // The control has this role already; the attribute shows it to accessibility checkers.
      role: "button",
      "data-key": options.key,
      appearance: options.primary === true ? "primary" : "outline",
      "aria-label": options.name,
      title: options.title,
      click,
    },
    label,
  );
}
