/** Takes validations and conditional formats out of a sheet whose formulas may not stay. */
import { localName, named, withAttributes, without, type XmlNode } from "../xml/node";
import type { Splice } from "../xml/text";
import { areasOf, formatsIn, formulasIn, ruleFormulas, validationsIn } from "./elements";

export interface FoundRule {
  readonly kind: "validation" | "conditional format";
  readonly areas: string;
  readonly formulas: readonly string[];
}

/** The rules of a sheet's element, with their extensions. */
export function rulesOf(node: XmlNode): readonly FoundRule[] {
  return [
    ...validationsIn(node).map((one) => ({
      kind: "validation" as const,
      areas: areasOf(one),
      formulas: formulasIn(one),
    })),
    ...formatsIn(node).flatMap((format) =>
      named(format, "cfRule").map((rule) => ({
        kind: "conditional format" as const,
        areas: areasOf(format),
        formulas: ruleFormulas(rule),
      })),
    ),
  ];
}

type Drop = (formulas: readonly string[]) => boolean;

function validationSplices(source: string, list: XmlNode, drop: Drop): Splice[] {
  const all = validationsIn(list);
  const gone = all.filter((one) => drop(formulasIn(one)));
  if (gone.length === 0) return [];
  if (gone.length === all.length) return [without(list)];
  return [withAttributes(source, list, { count: String(all.length - gone.length) }), ...gone.map(without)];
}

/** Rules that an extension completes carry its id. */
const idOf = (rule: XmlNode): string | undefined => rule.attributes["id"] ?? named(rule, "id")[0]?.text.trim();

function formatSplices(format: XmlNode, gone: ReadonlySet<XmlNode>): Splice[] {
  const rules = named(format, "cfRule");
  const dropped = rules.filter((rule) => gone.has(rule));
  return dropped.length === rules.length && rules.length > 0 ? [without(format)] : dropped.map(without);
}

const isList = (node: XmlNode, local: string): boolean => localName(node.name) === local;

/** @param elements all elements of the sheet that hold no cells */
export function ruleSplices(source: string, elements: readonly XmlNode[], drop: Drop): readonly Splice[] {
  const lists = elements.flatMap((node) => named(node, "dataValidations"));
  const formats = elements.flatMap((node) => formatsIn(node));
  const rules = formats.flatMap((format) => named(format, "cfRule"));
  const first = rules.filter((rule) => drop(ruleFormulas(rule)));
  const ids = new Set(first.map(idOf).filter((id) => id !== undefined));
  const gone = new Set(rules.filter((rule) => first.includes(rule) || ids.has(idOf(rule) ?? "")));
  const splices = [
    ...lists.flatMap((list) => validationSplices(source, list, drop)),
    ...formats.flatMap((format) => formatSplices(format, gone)),
  ];
  return [...splices, ...emptiedExtensions(elements, splices)];
}

/** An extension that nothing is left of goes as a whole. */
function emptiedExtensions(elements: readonly XmlNode[], splices: readonly Splice[]): Splice[] {
  const isGone = ({ start, end }: XmlNode): boolean =>
    splices.some(({ from, to, text }) => text === "" && from <= start && to >= end);
  return elements
    .filter((node) => isList(node, "extLst"))
    .flatMap((list) => list.children)
    .filter((ext) => {
      const inner = ext.children.flatMap((child) =>
        isList(child, "conditionalFormattings") ? child.children : [child],
      );
      return inner.length > 0 && inner.every(isGone);
    })
    .map(without);
}
