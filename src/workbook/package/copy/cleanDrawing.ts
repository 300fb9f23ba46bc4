/** Takes out of drawings and charts what leads to something that isn't in the copy, and the values that they remember. */
import { attributeOf, descendants, localName, named, withAttributes, without, type XmlNode } from "../xml/node";
import { escapedXml, type Splice } from "../xml/text";
import { LOCAL_PATH } from "./reach";

/** Whether a formula of a chart or shape may stay. */
export type Stays = (formula: string) => boolean;

/** What a graphic frame or a shape shows that a copy never takes along. */
const LEFT_BEHIND = /slicer|timeslicer|webextension|oleObject|ole"/i;

const isAnchor = ({ name }: XmlNode): boolean => /Anchor$/.test(localName(name));

function anchors(root: XmlNode): readonly XmlNode[] {
  return root.children.flatMap((child) =>
    localName(child.name) === "AlternateContent" ? [child] : isAnchor(child) ? [child] : [],
  );
}

/** A frame whose chart, or a picture whose image, isn't there; a control or an object of another program. */
function isLost(anchor: XmlNode, relations: ReadonlySet<string>): boolean {
  return [...descendants(anchor)].some((node) => {
    const local = localName(node.name);
    if (local === "compatExt" || local === "contentPart") return true;
    if (local === "graphicData" && LEFT_BEHIND.test(node.attributes["uri"] ?? "")) return true;
    if (local === "chart" || local === "relIds") {
      const ids = Object.entries(node.attributes).flatMap(([name, value]) =>
        /^[A-Za-z]+:(?:id|dm|lo|qs|cs)$/.test(name) ? [value] : [],
      );
      return ids.some((id) => !relations.has(id));
    }
    if (local !== "blip") return false;
    const embedded = attributeOf(node.attributes, "embed");
    const link = attributeOf(node.attributes, "link");
    return embedded === undefined ? link !== undefined : !relations.has(embedded);
  });
}

/** What one element of a kept shape loses. */
function cleanShape(source: string, node: XmlNode, relations: ReadonlySet<string>, stays: Stays): Splice[] {
  const local = localName(node.name);
  const changes: Record<string, string | undefined> = {};
  if (local === "blip" && attributeOf(node.attributes, "link") !== undefined) changes["[A-Za-z]+:link"] = undefined;
  if ((node.attributes["macro"] ?? "") !== "") changes["macro"] = "";
  const text = node.attributes["textlink"];
  if (text !== undefined && text !== "" && !stays(text)) changes["textlink"] = undefined;
  for (const name of ["descr", "title"]) if (LOCAL_PATH.test(node.attributes[name] ?? "")) changes[name] = undefined;
  const id = attributeOf(node.attributes, "id");
  if (/^hlink/.test(local) && id !== undefined && id !== "" && !relations.has(id)) return [without(node)];
  return Object.keys(changes).length === 0 ? [] : [withAttributes(source, node, changes)];
}

export function cleanDrawing(
  source: string,
  root: XmlNode,
  relations: ReadonlySet<string>,
  stays: Stays,
): readonly Splice[] {
  return anchors(root).flatMap((anchor) =>
    isLost(anchor, relations)
      ? [without(anchor)]
      : [...descendants(anchor)].flatMap((node) => cleanShape(source, node, relations, stays)),
  );
}

/** Values that a chart remembers are worked out again from the cells. */
const REMEMBERED = /Cache$|^lvl$/;
/** Links to the workbook that a chart's data came from, to its pivot table, to a printer, and series that are filtered out. */
const DROPPED_OF_CHART = new Set(["externalData", "pivotSource", "pivotFmts", "legacyDrawingHF"]);

export function cleanChart(
  source: string,
  root: XmlNode,
  relations: ReadonlySet<string>,
  stays: Stays,
): readonly Splice[] {
  return [...descendants(root)].flatMap((node) => {
    const local = localName(node.name);
    if (REMEMBERED.test(local) || DROPPED_OF_CHART.has(local) || /^filtered/.test(local)) return [without(node)];
    if ((local === "f" || local === "sqref") && node.text.trim() !== "" && !stays(node.text.trim()))
      return [{ from: node.openEnd, to: node.closeStart, text: escapedXml("#REF!") }];
    if (local === "pageSetup") return [withAttributes(source, node, { "[A-Za-z]+:id": undefined })];
    return cleanShape(source, node, relations, stays);
  });
}

/** Notes' boxes alone; controls and objects of other programs go. */
export function cleanNoteBoxes(root: XmlNode): readonly Splice[] {
  return named(root, "shape")
    .filter((shape) => named(shape, "ClientData").some(({ attributes }) => attributes["ObjectType"] !== "Note"))
    .map(without);
}

/** Names of people, and ids that lead to them. */
export function cleanComments(root: XmlNode): readonly Splice[] {
  return named(root, "author").map(({ openEnd, closeStart }) => ({ from: openEnd, to: closeStart, text: "" }));
}
