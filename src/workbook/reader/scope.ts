/** The names that LET and LAMBDA bind inside a formula. */
import type { CallTree, Tree } from "./tree";

export interface Scope {
  /** In capitals. */
  readonly name: string;
  /** Its value; undefined for a LAMBDA's parameter, which has no single value. */
  readonly tree: Tree | undefined;
  /** The scope in which `tree` is read. */
  readonly within: Scope | undefined;
  readonly up: Scope | undefined;
}

export function boundValue(scope: Scope | undefined, name: string): Scope | undefined {
  for (let here = scope; here !== undefined; here = here.up) if (here.name === name) return here;
  return undefined;
}

const nameOf = (tree: Tree | undefined, plain: (name: string) => string): string | undefined =>
  tree?.kind === "reference" ? plain(tree.text) : undefined;

/** The scope of a LET's last argument; undefined if the call isn't a valid LET. */
export function bind(call: CallTree, plain: (name: string) => string, outer: Scope | undefined): Scope | undefined {
  if (call.args.length < 3 || call.args.length % 2 === 0) return undefined;
  return bound(call, plain, outer, call.args.length - 1);
}

/** The scope after the names before argument `upTo` of a LET. */
export function bound(
  call: CallTree,
  plain: (name: string) => string,
  outer: Scope | undefined,
  upTo: number,
): Scope | undefined {
  let scope = outer;
  for (let at = 0; at + 1 < upTo; at += 2) {
    const name = nameOf(call.args[at], plain);
    if (name !== undefined) scope = { name, tree: call.args[at + 1], within: scope, up: scope };
  }
  return scope;
}

/** A LAMBDA's parameters hide names of the workbook: their values aren't known. */
export function hide(call: CallTree, plain: (name: string) => string, outer: Scope | undefined): Scope | undefined {
  let scope = outer;
  for (const parameter of call.args.slice(0, -1)) {
    const name = nameOf(parameter, plain);
    if (name !== undefined) scope = { name, tree: undefined, within: undefined, up: scope };
  }
  return scope;
}
