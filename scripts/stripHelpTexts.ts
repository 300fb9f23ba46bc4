/**
 * Strips from the sources of the functions script the texts and spans that only help pages, tests and the panel's finder
 * need. The help pages read the full sources; the panel's script has the finder's texts as data.
 */
import ts from "typescript";
import { HELP_KEYS } from "../core/help";

const isListed = <K extends string>(names: Readonly<Record<K, unknown>>, name: string): name is K =>
  Object.hasOwn(names, name);

/** The keys to strip from the argument of a function, or from a list's elements. */
const keysOf = (name: string): readonly string[] => (isListed(HELP_KEYS, name) ? HELP_KEYS[name] : []);

const nameOf = (node: ts.Node): string =>
  ts.isPropertyAssignment(node) && ts.isIdentifier(node.name) ? node.name.text : "";

/** The properties to strip from an object literal and from the lists in it. */
const leftOut = (literal: ts.ObjectLiteralExpression, keys: readonly string[]): readonly ts.Node[] =>
  literal.properties.flatMap((property) => {
    const name = nameOf(property);
    if (keys.includes(name)) return [property];
    const inner = keysOf(name);
    if (inner.length === 0 || !ts.isPropertyAssignment(property)) return [];
    const list = ts.isArrayLiteralExpression(property.initializer) ? property.initializer.elements : [];
    return list.flatMap((element) => (ts.isObjectLiteralExpression(element) ? leftOut(element, inner) : []));
  });

const leftOutOf = (file: ts.SourceFile): readonly ts.Node[] => {
  const found: ts.Node[] = [];
  const visit = (node: ts.Node): void => {
    const keys = ts.isCallExpression(node) && ts.isIdentifier(node.expression) ? keysOf(node.expression.text) : [];
    const literal = keys.length > 0 && ts.isCallExpression(node) ? node.arguments[0] : undefined;
    if (literal && ts.isObjectLiteralExpression(literal)) found.push(...leftOut(literal, keys));
    else ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
};

/** `symbol`, and the functions of a source that only call it. */
const symbolMakers = (source: string): readonly string[] => [
  "symbol",
  ...[...source.matchAll(/\bconst (\w+) = \([^()]*\)(?:: \w+)? =>\s+symbol\(/g)].map(([, name = ""]) => name),
];

/** A source without its help texts; the bundler may drop symbols that are now unused. */
export function stripHelpTexts(source: string): string {
  const file = ts.createSourceFile("source.ts", source, ts.ScriptTarget.Latest, true);
  // From the end, so that earlier positions stay valid; the comma after the text is removed too.
  return leftOutOf(file)
    .reduceRight(
      (text, node) => text.slice(0, node.getFullStart()) + text.slice(node.getEnd()).replace(/^\s*,/, ""),
      source,
    )
    .replace(new RegExp(`= (${symbolMakers(source).join("|")})\\(`, "g"), "= /* @__PURE__ */ $1(");
}
