/** Finds our calls in a formula, at any depth. */
import { NAMESPACE } from "../../../core";
import { plainName } from "./evaluate";
import { bound, hide } from "./scope";
import type { Scope } from "./scope";
import { isRefusal } from "./tokens";
import { parse } from "./tree";
import type { CallTree, TextSpan, Tree } from "./tree";

/** One call of ours in a formula. */
export interface FormulaCall extends TextSpan {
  readonly id: string;
  /** Each argument's tree; its text is the formula from `start` to `end`. */
  readonly args: readonly Tree[];
  /** The call is the whole formula: a leading @, + or brackets don't count. */
  readonly whole: boolean;
  readonly tree: CallTree;
  /** The names in scope around the call. */
  readonly scope: Scope | undefined;
}

/**
 * The id that a function's name calls: `warmback.pipe.headloss`, or `_xldudf_WARMBACK_PIPE_HEADLOSS` as files store it
 * (also after a lost add-in's `[2]!`); undefined if it isn't one of `known`.
 */
export function ourId(name: string, known: ReadonlySet<string>): string | undefined {
  const usual = name.startsWith(`${NAMESPACE}.`) ? name.slice(NAMESPACE.length + 1) : "";
  if (known.has(usual)) return usual;
  const plain = plainName(name.slice(name.lastIndexOf("!") + 1));
  const stored = plain.startsWith("_XLDUDF_");
  const id = (stored ? plain.slice(8).replaceAll("_", ".") : plain).replace(`${NAMESPACE}.`, "");
  return id.length < plain.length && known.has(id) ? id : undefined;
}

/** Whether a formula may hold a call of ours: a cheap look before parsing. */
export const mentionsUs = (formula: string): boolean => formula.startsWith("=") && /warmback[._]/i.test(formula);

/** The call that is the whole formula, ours or not. */
export function wholeCall(tree: Tree): CallTree | undefined {
  if (tree.kind === "call") return tree;
  if (tree.kind === "group" || (tree.kind === "sign" && tree.sign !== "-")) return wholeCall(tree.of);
  return undefined;
}

/** Calls `visit` for every node with its scope. */
export function walkTree(tree: Tree, visit: (tree: Tree, scope: Scope | undefined) => void, scope?: Scope): void {
  visit(tree, scope);
  if (tree.kind === "call") walkCall(tree, visit, scope);
  else if (tree.kind === "binary") {
    walkTree(tree.left, visit, scope);
    walkTree(tree.right, visit, scope);
  } else if ("of" in tree) walkTree(tree.of, visit, scope);
}

function walkCall(
  tree: CallTree,
  visit: (tree: Tree, scope: Scope | undefined) => void,
  scope: Scope | undefined,
): void {
  const name = plainName(tree.name);
  const last = tree.args.length - 1;
  tree.args.forEach((argument, at) => {
    const names = name === "LET" || name === "LAMBDA";
    if (names && at < last && (name === "LAMBDA" || at % 2 === 0)) return;
    const inner =
      name === "LET" ? bound(tree, plainName, scope, at) : name === "LAMBDA" ? hide(tree, plainName, scope) : scope;
    walkTree(argument, visit, inner);
  });
}

/** Our calls in a parsed formula, by their start. */
export function sitesIn(tree: Tree, known: ReadonlySet<string>): readonly FormulaCall[] {
  const whole = wholeCall(tree);
  const sites: FormulaCall[] = [];
  walkTree(tree, (node, scope) => {
    const id = node.kind === "call" ? ourId(node.name, known) : undefined;
    if (node.kind !== "call" || id === undefined) return;
    const { args, start, end } = node;
    sites.push({ id, args, start, end, whole: node === whole, tree: node, scope });
  });
  return sites;
}

/** Our calls in a formula's text; none if it can't be parsed. */
export function readCalls(formula: string, known: ReadonlySet<string>): readonly FormulaCall[] {
  if (!mentionsUs(formula)) return [];
  const tree = parse(formula);
  return isRefusal(tree) ? [] : sitesIn(tree, known);
}
