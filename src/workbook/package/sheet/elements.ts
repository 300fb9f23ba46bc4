/** The parts of a sheet that hold no cells: columns, merged cells, rules, views. */
import { parseCells } from "../../reader/reference";
import { childOf, childrenOf, isTrue, localName, named, numberOf, type XmlNode } from "../xml/node";
import type { ColumnFacts, FormatRuleFacts, RowFacts, StoredSheetFacts, ValidationFacts } from "./facts";
import { cellTextOf } from "../xml/text";
import type { ScannedRow } from "./scan";

export interface SheetDraft {
  columns: ColumnFacts[];
  rows: RowFacts[];
  merged: StoredSheetFacts["merged"][number][];
  validations: ValidationFacts[];
  formatRules: FormatRuleFacts[];
  protected: boolean;
  frozenRows: number;
  frozenColumns: number;
  filter?: string;
  elements: string[];
}

export const emptyDraft = (): SheetDraft => ({
  columns: [],
  rows: [],
  merged: [],
  validations: [],
  formatRules: [],
  protected: false,
  frozenRows: 0,
  frozenColumns: 0,
  elements: [],
});

function columnOf({ attributes }: XmlNode): ColumnFacts {
  const width = numberOf(attributes["width"]);
  return {
    first: (numberOf(attributes["min"]) ?? 1) - 1,
    last: (numberOf(attributes["max"]) ?? 1) - 1,
    ...(width !== undefined && { width }),
    hidden: isTrue(attributes["hidden"]),
    outline: numberOf(attributes["outlineLevel"]) ?? 0,
  };
}

export function rowFacts({ row, attributes }: ScannedRow): RowFacts | undefined {
  const height = numberOf(attributes["ht"]);
  const hidden = isTrue(attributes["hidden"]);
  const outline = numberOf(attributes["outlineLevel"]) ?? 0;
  if (height === undefined && !hidden && outline === 0) return undefined;
  return { row, ...(height !== undefined && { height }), hidden, outline };
}

/** Formulas of a rule, of the file's first edition and of its extensions (`xm:f`). */
export function formulasIn(node: XmlNode): readonly string[] {
  return named(node, "f")
    .concat(named(node, "formula"), named(node, "formula1"), named(node, "formula2"))
    .map(({ text }) => text.trim())
    .filter((text) => text !== "");
}

export function areasOf(node: XmlNode): string {
  return node.attributes["sqref"] ?? named(node, "sqref")[0]?.text.trim() ?? "";
}

/** Values that colour scales, data bars and icon sets compare with may be formulas too. */
export function ruleFormulas(rule: XmlNode): readonly string[] {
  const values = named(rule, "cfvo").flatMap(({ attributes }) =>
    attributes["type"] === "formula" && attributes["val"] !== undefined ? [attributes["val"]] : [],
  );
  return [...formulasIn(rule), ...values];
}

export function validationsIn(node: XmlNode): readonly XmlNode[] {
  return named(node, "dataValidation");
}

export function formatsIn(node: XmlNode): readonly XmlNode[] {
  return named(node, "conditionalFormatting");
}

const RULE_TEXTS = ["operator", "promptTitle", "prompt", "errorTitle", "error", "errorStyle"] as const;
const RULE_FLAGS = ["allowBlank", "showInputMessage", "showErrorMessage"] as const;

function validationOf(node: XmlNode): ValidationFacts {
  const { attributes } = node;
  const texts = RULE_TEXTS.flatMap((name) => {
    const text = attributes[name];
    return text === undefined ? [] : [[name, cellTextOf(text)] as const];
  });
  const flags = RULE_FLAGS.filter((name) => isTrue(attributes[name])).map((name) => [name, true] as const);
  return {
    areas: areasOf(node),
    type: attributes["type"] ?? "none",
    formulas: formulasIn(node),
    ...Object.fromEntries(texts),
    ...Object.fromEntries(flags),
  };
}

function addRules(node: XmlNode, draft: SheetDraft): void {
  for (const one of validationsIn(node)) draft.validations.push(validationOf(one));
  for (const format of formatsIn(node))
    for (const rule of named(format, "cfRule"))
      draft.formatRules.push({
        areas: areasOf(format),
        type: rule.attributes["type"] ?? "",
        formulas: ruleFormulas(rule),
      });
}

/** Adds what an element says. */
export function readElement(node: XmlNode, draft: SheetDraft): void {
  draft.elements.push(node.name);
  if (node.name === "cols") draft.columns.push(...childrenOf(node, "col").map(columnOf));
  else if (node.name === "mergeCells")
    draft.merged.push(
      ...childrenOf(node, "mergeCell").flatMap(({ attributes }) => parseCells(attributes["ref"] ?? "") ?? []),
    );
  else if (node.name === "sheetProtection") draft.protected = isTrue(node.attributes["sheet"]);
  else if (node.name === "autoFilter") draft.filter = node.attributes["ref"] ?? "";
  else if (node.name === "sheetViews") {
    const pane = childOf(childOf(node, "sheetView"), "pane")?.attributes;
    if (!/^frozen/.test(pane?.["state"] ?? "")) return;
    draft.frozenRows = numberOf(pane?.["ySplit"]) ?? 0;
    draft.frozenColumns = numberOf(pane?.["xSplit"]) ?? 0;
  } else if (["dataValidations", "conditionalFormatting", "extLst"].includes(localName(node.name)))
    addRules(node, draft);
}
