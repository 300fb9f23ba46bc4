/**
 * Strips from the sources of a script the texts and records that it doesn't need. The functions script goes without those
 * that only help pages, tests and the panel's finder read (descriptions of the values of lists and tables among them), and
 * without those that only notes read; the notes script has nothing but the latter. The help pages read the full sources; the panel's script has the finder's texts as data.
 */
import ts from "typescript";
import { CITATION_KEYS, HELP_KEYS, NOTE_KEYS } from "../core/help";

/** Decides by the declaring function, or the list of cautions or checks, whether a key is left out. */
type LeavesOut = (declaredBy: string, key: string) => boolean;

const isListed = <K extends string>(names: Readonly<Record<K, unknown>>, name: string): name is K =>
  Object.hasOwn(names, name);

const isOneOf = (names: readonly string[], name: string): boolean => names.includes(name);

const isHelp: LeavesOut = (declaredBy, key) => isListed(HELP_KEYS, declaredBy) && isOneOf(HELP_KEYS[declaredBy], key);

const DECLARING = new Set([...Object.keys(HELP_KEYS), "sourceEntries"]);

/** An entry of the bibliography is a value of the object that `sourceEntries` takes. */
const ENTRY = "entry";

const isForHelpOrNotes: LeavesOut = (declaredBy, key) =>
  isHelp(declaredBy, key) ||
  (declaredBy === "cellFunction" && isOneOf(NOTE_KEYS, key)) ||
  (declaredBy === ENTRY && isOneOf(CITATION_KEYS, key));

const isNotForNotes: LeavesOut = (declaredBy, key) =>
  isHelp(declaredBy, key) || (declaredBy === "cellFunction" && key !== "id" && !isOneOf(NOTE_KEYS, key));

const nameOf = (node: ts.ObjectLiteralElementLike): string =>
  node.name !== undefined && ts.isIdentifier(node.name) ? node.name.text : "";

/** The object literals inside a property that are stripped too: a list's elements, and the bibliography's entries. */
function innerLiterals(property: ts.ObjectLiteralElementLike, declaredBy: string): readonly [string, ts.Node][] {
  if (!ts.isPropertyAssignment(property)) return [];
  if (declaredBy === "sourceEntries") return [[ENTRY, property.initializer]];
  const { initializer } = property;
  return ts.isArrayLiteralExpression(initializer) ? initializer.elements.map((each) => [nameOf(property), each]) : [];
}

/** The properties to strip from an object literal and from the literals in it. */
const leftOut = (literal: ts.ObjectLiteralExpression, declaredBy: string, leaves: LeavesOut): readonly ts.Node[] =>
  literal.properties.flatMap((property) =>
    leaves(declaredBy, nameOf(property))
      ? [property]
      : innerLiterals(property, declaredBy).flatMap(([name, inner]) =>
          ts.isObjectLiteralExpression(inner) ? leftOut(inner, name, leaves) : [],
        ),
  );

const leftOutOf = (file: ts.SourceFile, leaves: LeavesOut): readonly ts.Node[] => {
  const found: ts.Node[] = [];
  const visit = (node: ts.Node): void => {
    const name = ts.isCallExpression(node) && ts.isIdentifier(node.expression) ? node.expression.text : "";
    const literal = DECLARING.has(name) && ts.isCallExpression(node) ? node.arguments[0] : undefined;
    if (literal && ts.isObjectLiteralExpression(literal)) found.push(...leftOut(literal, name, leaves));
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

/** A replacement in a source. */
interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** The property and the comma behind it. */
const removalOf = (node: ts.Node, source: string): Edit => ({
  start: node.getFullStart(),
  end: node.getEnd() + (/^\s*,/.exec(source.slice(node.getEnd()))?.[0].length ?? 0),
  text: "",
});

/** Calls whose second argument's values spill with their labels: no cell shows their descriptions. */
const SPILLED = new Set(["listResult", "tableResult"]);

/** By the maker of a single result: the place of its description. */
const describedPlaces = (source: string): ReadonlyMap<string, number> =>
  new Map([
    ["quantityResult", 1],
    ["wordResult", 0],
    ...[...source.matchAll(/\bconst (\w+) = \((\w+): string\) =>\s+quantityResult\("[^"]+", (\w+)\b/g)].flatMap(
      ([, name = "", parameter, passed]): [string, number][] => (parameter === passed ? [[name, 0]] : []),
    ),
  ]);

const calleeOf = (node: ts.Node): string =>
  ts.isCallExpression(node) && ts.isIdentifier(node.expression) ? node.expression.text : "";

/** Empties the descriptions of the values of lists and tables. */
function emptiedDescriptions(file: ts.SourceFile, source: string): readonly Edit[] {
  const places = describedPlaces(source);
  const edits: Edit[] = [];
  const visit = (node: ts.Node, spilled: boolean): void => {
    const place = places.get(calleeOf(node));
    const text = spilled && place !== undefined && ts.isCallExpression(node) ? node.arguments[place] : undefined;
    if (text && ts.isStringLiteral(text)) edits.push({ start: text.getStart(), end: text.getEnd(), text: '""' });
    else ts.forEachChild(node, (child) => visit(child, spilled || SPILLED.has(calleeOf(node))));
  };
  visit(file, false);
  return edits;
}

/** A source without some of its properties; the bundler may drop what `makers` declare where it is now unused. */
function without(
  source: string,
  leaves: LeavesOut,
  makers: readonly string[],
  others: (file: ts.SourceFile, source: string) => readonly Edit[] = () => [],
): string {
  const file = ts.createSourceFile("source.ts", source, ts.ScriptTarget.Latest, true);
  // From the end, so that earlier positions stay valid.
  return [...leftOutOf(file, leaves).map((node) => removalOf(node, source)), ...others(file, source)]
    .sort((one, other) => other.start - one.start)
    .reduce((text, { start, end, text: instead }) => text.slice(0, start) + instead + text.slice(end), source)
    .replace(new RegExp(`= (${makers.join("|")})\\(`, "g"), "= /* @__PURE__ */ $1(");
}

/** A source as the functions script needs it. */
export const stripHelpTexts = (source: string): string =>
  without(source, isForHelpOrNotes, symbolMakers(source), emptiedDescriptions);

/** Functions that declare what only calculations need: a note's rule may use one, the others go. */
const DECLARATIONS = ["equation", "relation", "caution", "quantity", "optional", "choice", "text", "block", "rows"];

/** A source as the notes script needs it. */
export const keepNoteParts = (source: string): string =>
  without(source, isNotForNotes, [...symbolMakers(source), ...DECLARATIONS]);
