import { expect, test } from "vitest";
import { checkManifest } from "../../scripts/manifest/check";
import { parseXml, everyElement, type XmlElement } from "../../scripts/manifest/xml";
import { sampleBuild, sampleXml } from "./sample";

function goodRoot(): XmlElement {
  const parsed = parseXml(sampleXml());
  if ("fault" in parsed) throw new Error(parsed.fault);
  return parsed.root;
}

const root = goodRoot();
const XSI = 'xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"';
const escaped = (text: string): string => text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/"/g, "&quot;");

/** Writes the tree as XML again; `change` may give an element's children, attributes or text anew, or leave it out (null). */
function written(element: XmlElement, change: (element: XmlElement) => XmlElement | null): string {
  const changed = change(element);
  if (changed === null) return "";
  const attributes = [...changed.attributes].map(([name, value]) => ` ${name}="${escaped(value)}"`).join("");
  const inside = escaped(changed.text) + changed.children.map((child) => written(child, change)).join("");
  return `<${changed.name} xmlns="${changed.uri}" ${XSI}${attributes}>${inside}</${changed.name}>`;
}

const faults = (change: (element: XmlElement) => XmlElement | null): number =>
  checkManifest(written(root, change), sampleBuild()).length;

/** The manifest may live without these: the first-run bubble and the page for commands without a pane. */
const DISPENSABLE = ["GetStarted", "FunctionFile"];

const elements = everyElement(root);
const named = (element: XmlElement): string => `<${element.name}> of line ${element.line}`;

test("the manifest written anew from its tree has no fault, so what follows tests the edits", () => {
  expect(
    checkManifest(
      written(root, (element) => element),
      sampleBuild(),
    ),
  ).toEqual([]);
  expect(elements.length).toBeGreaterThan(70);
});

const needed = elements.filter((element) => element !== root && !DISPENSABLE.includes(element.name));

test.each(needed.map((element) => [named(element), element] as const))("leaving out %s is a fault", (_name, gone) => {
  expect(faults((element) => (element === gone ? null : element))).toBeGreaterThan(0);
});

test.each(
  elements.filter(({ name }) => DISPENSABLE.includes(name)).map((element) => [named(element), element] as const),
)("leaving out %s breaks nothing but what only it used", (_name, gone) => {
  const kept = written(root, (element) => (element === gone ? null : element));
  const others = checkManifest(kept, sampleBuild()).filter(({ message }) => !message.endsWith("is used nowhere"));
  expect(others).toEqual([]);
});

const neighbours = elements.flatMap((parent) =>
  parent.children.slice(1).flatMap((second, place) => {
    const first = parent.children[place];
    return first && first.name !== second.name
      ? [[`${named(first)} and ${named(second)}`, parent, place] as const]
      : [];
  }),
);

test.each(neighbours)("swapping %s is a fault", (_name, parent, place) => {
  const swapped = (element: XmlElement): XmlElement => {
    if (element !== parent) return element;
    const { children } = element;
    return {
      ...element,
      children: [
        ...children.slice(0, place),
        ...children.slice(place, place + 2).reverse(),
        ...children.slice(place + 2),
      ],
    };
  };
  expect(faults(swapped)).toBeGreaterThan(0);
});

const attributes = elements.flatMap((element) =>
  [...element.attributes.keys()].map((name) => [`${name} of ${named(element)}`, element, name] as const),
);

/** Without it the set's own MinVersion still stands. */
const SPARE = ["DefaultMinVersion"];

test.each(attributes.filter(([, , name]) => !SPARE.includes(name)))("emptying %s is a fault", (_name, holder, name) => {
  const emptied = (element: XmlElement): XmlElement =>
    element === holder ? { ...element, attributes: new Map([...element.attributes, [name, ""]]) } : element;
  expect(faults(emptied)).toBeGreaterThan(0);
});
