/** Parses a formula into a small tree. */
import { isRefusal, tokens } from "./tokens";
import type { FormulaRefusal, Token } from "./tokens";

/** The place of a node in the formula, with "=" counted; `end` is the place after it. */
export interface TextSpan {
  readonly start: number;
  readonly end: number;
}

export type Sign = "+" | "-" | "@";
export type Operator = "+" | "-" | "*" | "/" | "^" | "&" | "=" | "<>" | "<" | ">" | "<=" | ">=" | ":" | " " | ",";

export type CallTree = TextSpan & { readonly kind: "call"; readonly name: string; readonly args: readonly Tree[] };
export type ReferenceTree = TextSpan & { readonly kind: "reference"; readonly text: string };

export type Tree =
  | (TextSpan & { readonly kind: "number"; readonly value: number })
  | (TextSpan & { readonly kind: "text"; readonly value: string })
  | (TextSpan & { readonly kind: "boolean"; readonly value: boolean })
  | (TextSpan & { readonly kind: "error"; readonly error: string })
  | (TextSpan & { readonly kind: "omitted" })
  | ReferenceTree
  | (TextSpan & { readonly kind: "array"; readonly rows: readonly (readonly Tree[])[] })
  | (TextSpan & { readonly kind: "sign"; readonly sign: Sign; readonly of: Tree })
  | (TextSpan & { readonly kind: "percent"; readonly of: Tree })
  | (TextSpan & { readonly kind: "group"; readonly of: Tree })
  | (TextSpan & { readonly kind: "binary"; readonly operator: Operator; readonly left: Tree; readonly right: Tree })
  | CallTree;

/** Deeper nesting than Excel's own limit of 64 levels with some brackets each. */
const DEEPEST = 300;
/** Every operator may make the tree one level deeper; far more than a sheet's formula has. */
const MOST_OPERATORS = 1_500;

/** How tight left-associative operators bind; signs, percent and the reference operators bind tighter. */
const BINDING: ReadonlyMap<string, number> = new Map([
  ...["=", "<>", "<=", ">=", "<", ">"].map((operator): [string, number] => [operator, 1]),
  ["&", 2],
  ["+", 3],
  ["-", 3],
  ["*", 4],
  ["/", 4],
  ["^", 5],
]);

interface State {
  readonly tokens: readonly Token[];
  readonly length: number;
  at: number;
  depth: number;
  operators: number;
}

type Parsed = Tree | FormulaRefusal;

const peek = (state: State): Token | undefined => state.tokens[state.at];

const isNext = (state: State, kind: Token["kind"], text?: string): boolean => {
  const token = peek(state);
  return token?.kind === kind && (text === undefined || token.text === text);
};

const refuse = (state: State, why: string): FormulaRefusal => ({ at: peek(state)?.start ?? state.length, why });

/** Operators that bind at least as tight as `least`. */
function operation(state: State, least: number): Parsed {
  let left = signed(state);
  while (!isRefusal(left)) {
    const token = peek(state);
    const binding = token?.kind === "operator" ? BINDING.get(token.text) : undefined;
    if (token === undefined || binding === undefined || binding < least) break;
    if (++state.operators > MOST_OPERATORS) return refuse(state, "more operators than can be read");
    state.at++;
    left = joined(left, token.text as Operator, operation(state, binding + 1));
  }
  return left;
}

function joined(left: Tree, operator: Operator, right: Parsed): Parsed {
  if (isRefusal(right)) return right;
  return { kind: "binary", operator, left, right, start: left.start, end: right.end };
}

function expression(state: State): Parsed {
  if (++state.depth > DEEPEST) return refuse(state, "nested too deep");
  const answer = operation(state, 1);
  state.depth--;
  return answer;
}

function signed(state: State): Parsed {
  const token = peek(state);
  if (token?.kind !== "operator" || !"-+@".includes(token.text)) return percents(state);
  state.at++;
  if (++state.depth > DEEPEST) return refuse(state, "nested too deep");
  const of = signed(state);
  state.depth--;
  return isRefusal(of) ? of : { kind: "sign", sign: token.text as Sign, of, start: token.start, end: of.end };
}

function percents(state: State): Parsed {
  let of = ranges(state);
  while (!isRefusal(of) && isNext(state, "operator", "%")) {
    if (++state.operators > MOST_OPERATORS) return refuse(state, "more operators than can be read");
    const end = peek(state)?.end ?? of.end;
    state.at++;
    of = { kind: "percent", of, start: of.start, end };
  }
  return of;
}

const givesReference = (tree: Tree): boolean =>
  tree.kind === "reference" || tree.kind === "call" || tree.kind === "group" || tree.kind === "binary";

/** `A1:INDEX(…)` and the intersection of two references by a space between them. */
function ranges(state: State): Parsed {
  let left = primary(state);
  while (!isRefusal(left) && givesReference(left)) {
    const token = peek(state);
    const colon = isNext(state, "operator", ":");
    const meets = token?.spaced === true && ["reference", "function", "("].includes(token.kind);
    if (!colon && !meets) break;
    if (++state.operators > MOST_OPERATORS) return refuse(state, "more operators than can be read");
    if (colon) state.at++;
    left = joined(left, colon ? ":" : " ", primary(state));
  }
  return left;
}

function primary(state: State): Parsed {
  const token = peek(state);
  if (token === undefined) return refuse(state, "ends where a value is expected");
  state.at++;
  const span = { start: token.start, end: token.end };
  if (token.kind === "number") return numberLeaf(token.text, span);
  if (token.kind === "text") return { kind: "text", value: token.text.slice(1, -1).replaceAll('""', '"'), ...span };
  if (token.kind === "boolean") return { kind: "boolean", value: token.text.toUpperCase() === "TRUE", ...span };
  if (token.kind === "error") return { kind: "error", error: token.text.toUpperCase(), ...span };
  if (token.kind === "reference") return { kind: "reference", text: token.text, ...span };
  if (token.kind === "function") return call(state, token);
  if (token.kind === "(") return group(state, token);
  if (token.kind === "{") return array(state, token);
  state.at--;
  return refuse(state, `a value is expected in place of ${token.text}`);
}

function numberLeaf(text: string, span: TextSpan): Parsed {
  const value = Number(text);
  return Number.isFinite(value) ? { kind: "number", value, ...span } : { at: span.start, why: "a number out of range" };
}

/** Brackets; commas inside unite references. */
function group(state: State, open: Token): Parsed {
  let of = expression(state);
  while (!isRefusal(of) && isNext(state, ",")) {
    state.at++;
    of = joined(of, ",", expression(state));
  }
  if (isRefusal(of)) return of;
  const end = closing(state, ")");
  return typeof end === "number" ? { kind: "group", of, start: open.start, end } : end;
}

function closing(state: State, kind: ")" | "}"): number | FormulaRefusal {
  const token = peek(state);
  if (token?.kind !== kind) return refuse(state, `${kind} is missing`);
  state.at++;
  return token.end;
}

function call(state: State, name: Token): Parsed {
  state.at++;
  const args: Tree[] = [];
  while (!(args.length === 0 && isNext(state, ")"))) {
    const argument = isNext(state, ",") || isNext(state, ")") ? omitted(state) : expression(state);
    if (isRefusal(argument)) return argument;
    args.push(argument);
    if (!isNext(state, ",")) break;
    state.at++;
  }
  const end = closing(state, ")");
  return typeof end === "number" ? { kind: "call", name: name.text, args, start: name.start, end } : end;
}

function omitted(state: State): Tree {
  const at = peek(state)?.start ?? state.length;
  return { kind: "omitted", start: at, end: at };
}

function array(state: State, open: Token): Parsed {
  const rows: Tree[][] = [[]];
  for (;;) {
    const cell = constant(state);
    if (isRefusal(cell)) return cell;
    rows[rows.length - 1]?.push(cell);
    if (isNext(state, ";")) rows.push([]);
    else if (!isNext(state, ",")) break;
    state.at++;
  }
  if (rows.some((row) => row.length !== rows[0]?.length))
    return { at: open.start, why: "an array's rows differ in length" };
  const end = closing(state, "}");
  return typeof end === "number" ? { kind: "array", rows, start: open.start, end } : end;
}

/** A constant inside an array: a number may have a sign, nothing else may. */
function constant(state: State): Parsed {
  const sign = isNext(state, "operator", "-") || isNext(state, "operator", "+") ? peek(state) : undefined;
  if (sign !== undefined) state.at++;
  const allowed = sign === undefined ? ["number", "text", "boolean", "error"] : ["number"];
  if (!allowed.includes(peek(state)?.kind ?? "")) return refuse(state, "an array holds constants only");
  const leaf = primary(state);
  if (sign === undefined || isRefusal(leaf)) return leaf;
  return { kind: "sign", sign: sign.text as Sign, of: leaf, start: sign.start, end: leaf.end };
}

/** The tree of a formula (with or without "="), or why there is none. Never throws. */
export function parse(formula: string): Tree | FormulaRefusal {
  const found = tokens(formula);
  if (!Array.isArray(found)) return found as FormulaRefusal;
  const state: State = { tokens: found as readonly Token[], length: formula.length, at: 0, depth: 0, operators: 0 };
  const tree = expression(state);
  if (isRefusal(tree) || state.at === state.tokens.length) return tree;
  return refuse(state, `${peek(state)?.text ?? ""} is not expected there`);
}
