/**
 * Sources as the functions script holds them: without texts and spans that only help pages, tests and the panel's finder
 * need. The help pages are made from the sources themselves; the panel's script brings the finder's texts (putBack.ts).
 */
import ts from "typescript";
import type { CellFunction } from "../../core/kernel/cellFunction";
import type { FinderTexts } from "./putBack";

/** What the panel gets back. */
export const finderTextsOf = (catalogue: readonly CellFunction[]): FinderTexts =>
  Object.fromEntries(
    catalogue.map(({ id, finds, remarks }) => [id, { ...(finds && { finds }), ...(remarks && { remarks }) }]),
  );

/** Declaring function → properties of its definition that are left out; "checks.remark" is one inside a list of checks. */
const LEFT_OUT: Readonly<Record<string, readonly string[]>> = {
  cellFunction: ["finds", "remarks", "checks.remark", "cautions.fires"],
  equation: ["takes", "valid"],
  relation: ["takes", "valid"],
};

const named = (node: ts.Node): string =>
  ts.isPropertyAssignment(node) && ts.isIdentifier(node.name) ? node.name.text : "";

/** The properties below an object literal that are to go. */
const going = (literal: ts.ObjectLiteralExpression, names: readonly string[]): readonly ts.Node[] =>
  literal.properties.flatMap((property) => {
    const name = named(property);
    if (names.includes(name)) return [property];
    const inner = names.flatMap((each) => (each.startsWith(`${name}.`) ? [each.slice(name.length + 1)] : []));
    if (inner.length === 0 || !ts.isPropertyAssignment(property)) return [];
    const list = ts.isArrayLiteralExpression(property.initializer) ? property.initializer.elements : [];
    return list.flatMap((element) => (ts.isObjectLiteralExpression(element) ? going(element, inner) : []));
  });

const declarationsIn = (file: ts.SourceFile): readonly ts.Node[] => {
  const found: ts.Node[] = [];
  const visit = (node: ts.Node): void => {
    const names =
      ts.isCallExpression(node) && ts.isIdentifier(node.expression) ? LEFT_OUT[node.expression.text] : undefined;
    const literal = names && ts.isCallExpression(node) ? node.arguments[0] : undefined;
    if (names && literal && ts.isObjectLiteralExpression(literal)) found.push(...going(literal, names));
    else ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
};

/** A source without what is left out; symbols that nothing takes any more may be dropped by the bundler. */
export const leanSource = (source: string): string => {
  const file = ts.createSourceFile("source.ts", source, ts.ScriptTarget.Latest, true);
  // From the end on, so that places before stay right; the comma behind goes along.
  return declarationsIn(file)
    .reduceRight(
      (text, node) => text.slice(0, node.getFullStart()) + text.slice(node.getEnd()).replace(/^\s*,/, ""),
      source,
    )
    .replace(/= symbol\(/g, "= /* @__PURE__ */ symbol(");
};
