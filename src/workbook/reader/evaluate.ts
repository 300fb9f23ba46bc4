/**
 * Evaluates a formula's tree: literals, references, our own calls, operators, and the few built-in functions that sheets
 * use context ours. A reference stays a matrix, so that SUM can distinguish a cell from a typed value.
 */
import { topLeft } from "../values";
import type { Value } from "../values";
import type { CellValue } from "../port";
import { isCellFault } from "../port";
import { BUILT_IN } from "./builtin";
import { isUnsupported, operate, broadcast, UNSUPPORTED } from "./operators";
import type { Operand } from "./operators";
import { bind, boundValue } from "./scope";
import type { Scope } from "./scope";
import type { CallTree, Tree } from "./tree";

/** What one formula's evaluation needs from outside. */
export interface EvaluationContext {
  /** A reference's cells. */
  read(text: string): Operand;
  /** The cell of a reference in the formula's own row or column. */
  resolveReference(text: string): Operand;
  /** The id of our function that a node calls. */
  ours(node: CallTree): string | undefined;
  /** One of our calls with its arguments evaluated. */
  call(node: CallTree, id: string, args: readonly Operand[]): Operand;
  /** Values of the nodes evaluated so far: each node has one scope only, so one value. */
  readonly memo: Map<Tree, Operand>;
}

/** A name in capitals, without the prefixes that files put before newer functions and LET's names. */
export const plainName = (name: string): string =>
  name.startsWith("_") ? name.toUpperCase().replace(/^(?:_XLFN\.|_XLWS\.|_XLPM\.)+/, "") : name.toUpperCase();

export function evaluateTree(tree: Tree, context: EvaluationContext, scope?: Scope): Operand {
  switch (tree.kind) {
    case "number":
    case "text":
    case "boolean":
      return tree.value;
    case "error":
      return { code: tree.error };
    case "omitted":
      return null;
    case "group":
      return evaluateTree(tree.of, context, scope);
    case "array":
      return tree.rows.map((row) => row.map((cell) => topLeft(evaluateTree(cell, context) as Value)));
    case "percent":
      return over(evaluateTree(tree.of, context, scope), (cell) => operate("/", cell, 100));
    case "sign":
      return signed(tree, context, scope);
    case "reference":
      return reference(tree.text, context, scope);
    default:
      return remembered(tree, context, scope);
  }
}

const over = (answer: Operand, work: (cell: CellValue) => ReturnType<typeof operate>): Operand =>
  isUnsupported(answer) ? answer : broadcast(answer, null, (cell) => (isCellFault(cell) ? cell : work(cell)));

function reference(text: string, context: EvaluationContext, scope: Scope | undefined): Operand {
  const bound = scope && boundValue(scope, plainName(text));
  if (bound === undefined) return context.read(text);
  return bound.tree === undefined ? UNSUPPORTED : evaluateTree(bound.tree, context, bound.within);
}

function signed(tree: Tree & { kind: "sign" }, context: EvaluationContext, scope: Scope | undefined): Operand {
  if (tree.sign === "-") return over(evaluateTree(tree.of, context, scope), (cell) => operate("-", 0, cell));
  const of = tree.of;
  if (tree.sign === "@" && of.kind === "reference" && (scope && boundValue(scope, plainName(of.text))) === undefined) {
    return context.resolveReference(of.text);
  }
  const answer = evaluateTree(of, context, scope);
  return tree.sign === "@" && !isUnsupported(answer) ? topLeft(answer) : answer;
}

function remembered(
  tree: Tree & { kind: "binary" | "call" },
  context: EvaluationContext,
  scope: Scope | undefined,
): Operand {
  const known = context.memo.get(tree);
  if (known !== undefined) return known;
  const answer = tree.kind === "binary" ? binary(tree, context, scope) : call(tree, context, scope);
  context.memo.set(tree, answer);
  return answer;
}

function binary(tree: Tree & { kind: "binary" }, context: EvaluationContext, scope: Scope | undefined): Operand {
  const { operator } = tree;
  if (operator === ":" || operator === " " || operator === ",") return UNSUPPORTED;
  const left = evaluateTree(tree.left, context, scope);
  if (isUnsupported(left)) return left;
  const right = evaluateTree(tree.right, context, scope);
  return isUnsupported(right) ? right : broadcast(left, right, (a, b) => operate(operator, a, b));
}

function call(tree: CallTree, context: EvaluationContext, scope: Scope | undefined): Operand {
  const id = context.ours(tree);
  const value = (argument: Tree): Operand => evaluateTree(argument, context, scope);
  if (id !== undefined) return context.call(tree, id, tree.args.map(value));
  const name = plainName(tree.name);
  if (name === "LET") return letIn(tree, context, scope);
  const builtIn = BUILT_IN.get(name);
  return builtIn === undefined ? UNSUPPORTED : builtIn(tree.args, value);
}

function letIn(tree: CallTree, context: EvaluationContext, scope: Scope | undefined): Operand {
  const inner = bind(tree, plainName, scope);
  const body = tree.args.at(-1);
  return inner === undefined || body === undefined ? UNSUPPORTED : evaluateTree(body, context, inner);
}
