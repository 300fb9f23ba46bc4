/**
 * Works out a formula's tree: literals, references, our own calls, operators, and the few built-in functions that sheets
 * use around ours. A reference is kept as a matrix, so that SUM can tell a cell from a typed value.
 */
import { topLeft } from "../values";
import type { Value } from "../values";
import type { CellValue } from "../port";
import { isCellFault } from "../port";
import { BUILT_IN } from "./builtin";
import { isUnsupported, operate, broadcast, UNREADABLE } from "./operators";
import type { Operand } from "./operators";
import { bind, boundValue } from "./scope";
import type { Scope } from "./scope";
import type { CallTree, Tree } from "./tree";

/** What the surroundings answer for one formula. */
export interface EvaluationContext {
  /** A reference's cells. */
  read(text: string): Operand;
  /** The one cell of a reference that stands in the formula's own row or column. */
  resolveReference(text: string): Operand;
  /** The id of our function that a node calls. */
  ours(node: CallTree): string | undefined;
  /** One of our calls with its arguments worked out. */
  call(node: CallTree, id: string, args: readonly Operand[]): Operand;
  /** What nodes came to already: each node stands in one scope only, so its value is one. */
  readonly memo: Map<Tree, Operand>;
}

/** A name in capitals, without the marks that files put before newer functions and LET's names. */
export const plainName = (name: string): string =>
  name.startsWith("_") ? name.toUpperCase().replace(/^(?:_XLFN\.|_XLWS\.|_XLPM\.)+/, "") : name.toUpperCase();

export function evaluateTree(tree: Tree, around: EvaluationContext, scope?: Scope): Operand {
  switch (tree.kind) {
    case "number":
    case "text":
    case "boolean":
      return tree.value;
    case "error":
      return { error: tree.error };
    case "omitted":
      return null;
    case "group":
      return evaluateTree(tree.of, around, scope);
    case "array":
      return tree.rows.map((row) => row.map((cell) => topLeft(evaluateTree(cell, around) as Value)));
    case "percent":
      return over(evaluateTree(tree.of, around, scope), (cell) => operate("/", cell, 100));
    case "sign":
      return signed(tree, around, scope);
    case "reference":
      return reference(tree.text, around, scope);
    default:
      return remembered(tree, around, scope);
  }
}

const over = (answer: Operand, work: (cell: CellValue) => ReturnType<typeof operate>): Operand =>
  isUnsupported(answer) ? answer : broadcast(answer, null, (cell) => (isCellFault(cell) ? cell : work(cell)));

function reference(text: string, around: EvaluationContext, scope: Scope | undefined): Operand {
  const bound = scope && boundValue(scope, plainName(text));
  if (bound === undefined) return around.read(text);
  return bound.tree === undefined ? UNREADABLE : evaluateTree(bound.tree, around, bound.within);
}

function signed(tree: Tree & { kind: "sign" }, around: EvaluationContext, scope: Scope | undefined): Operand {
  if (tree.sign === "-") return over(evaluateTree(tree.of, around, scope), (cell) => operate("-", 0, cell));
  const of = tree.of;
  if (tree.sign === "@" && of.kind === "reference" && (scope && boundValue(scope, plainName(of.text))) === undefined) {
    return around.resolveReference(of.text);
  }
  const answer = evaluateTree(of, around, scope);
  return tree.sign === "@" && !isUnsupported(answer) ? topLeft(answer) : answer;
}

function remembered(
  tree: Tree & { kind: "binary" | "call" },
  around: EvaluationContext,
  scope: Scope | undefined,
): Operand {
  const known = around.memo.get(tree);
  if (known !== undefined) return known;
  const answer = tree.kind === "binary" ? binary(tree, around, scope) : call(tree, around, scope);
  around.memo.set(tree, answer);
  return answer;
}

function binary(tree: Tree & { kind: "binary" }, around: EvaluationContext, scope: Scope | undefined): Operand {
  const { operator } = tree;
  if (operator === ":" || operator === " " || operator === ",") return UNREADABLE;
  const left = evaluateTree(tree.left, around, scope);
  if (isUnsupported(left)) return left;
  const right = evaluateTree(tree.right, around, scope);
  return isUnsupported(right) ? right : broadcast(left, right, (a, b) => operate(operator, a, b));
}

function call(tree: CallTree, around: EvaluationContext, scope: Scope | undefined): Operand {
  const id = around.ours(tree);
  const value = (argument: Tree): Operand => evaluateTree(argument, around, scope);
  if (id !== undefined) return around.call(tree, id, tree.args.map(value));
  const name = plainName(tree.name);
  if (name === "LET") return letIn(tree, around, scope);
  const builtIn = BUILT_IN.get(name);
  return builtIn === undefined ? UNREADABLE : builtIn(tree.args, value);
}

function letIn(tree: CallTree, around: EvaluationContext, scope: Scope | undefined): Operand {
  const inner = bind(tree, plainName, scope);
  const body = tree.args.at(-1);
  return inner === undefined || body === undefined ? UNREADABLE : evaluateTree(body, around, inner);
}
