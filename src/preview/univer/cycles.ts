import type { Injector } from "@univerjs/core";
import { IFormulaDependencyGenerator } from "@univerjs/engine-formula";

/** The cells whose formulas depend on their own results. The engine works out a number for them (0.25.1). */

/** A formula in the engine's list of what to calculate. */
interface FormulaNode {
  readonly treeId: number;
  readonly subUnitId: string;
  readonly row: number;
  readonly column: number;
  readonly formula?: string;
}

type Pause = () => Promise<void> | undefined;

/** The numbers of the formulas that depend on one. */
type Dependents<T> = (formula: T) => readonly number[];

/** The part of the engine's dependencies that the search replaces, and what it uses. */
interface Dependencies<T extends FormulaNode> {
  _checkIsCycleDependency(list: readonly T[], dependents: Dependents<T>, pause: Pause): Promise<boolean>;
  readonly _dependencyTreeCache: ReadonlyMap<number, T>;
}

/** Functions that look at a reference's place and not at its value: their own cell is no circle. */
const PLACE_ONLY = /\b(?:ROWS?|COLUMNS?|OFFSET|INDIRECT|CELL|ISFORMULA|FORMULATEXT|SHEETS?|AREAS)\s*\(/i;

interface Visit {
  readonly id: number;
  readonly following: readonly number[];
  next: number;
}

/** Tarjan's search for strongly connected components, with a stack of its own: chains of formulas get long. */
export async function circular(
  start: readonly number[],
  following: (id: number) => readonly number[],
  pause: Pause,
): Promise<ReadonlySet<number>> {
  const order = new Map<number, number>();
  const lowest = new Map<number, number>();
  const component: number[] = [];
  const open = new Set<number>();
  const found = new Set<number>();
  const enter = (id: number): Visit => {
    order.set(id, order.size);
    lowest.set(id, order.get(id) ?? 0);
    component.push(id);
    open.add(id);
    return { id, following: following(id), next: 0 };
  };
  const lower = (id: number, to: number | undefined): void =>
    void lowest.set(id, Math.min(lowest.get(id) ?? 0, to ?? Infinity));
  const leave = ({ id, following: next }: Visit): void => {
    if (lowest.get(id) !== order.get(id)) return;
    const members = component.splice(component.lastIndexOf(id));
    for (const member of members) open.delete(member);
    if (members.length > 1 || next.includes(id)) for (const member of members) found.add(member);
  };
  for (const first of start) {
    const path: Visit[] = order.has(first) ? [] : [enter(first)];
    for (let visit = path.at(-1); visit !== undefined; visit = path.at(-1)) {
      const wait = pause();
      if (wait !== undefined) await wait;
      const id = visit.following[visit.next++];
      if (id === undefined) {
        leave(visit);
        path.pop();
        const parent = path.at(-1);
        if (parent !== undefined) lower(parent.id, lowest.get(visit.id));
      } else if (!order.has(id)) path.push(enter(id));
      else if (open.has(id)) lower(visit.id, order.get(id));
    }
  }
  return found;
}

const keyOf = (sheetId: string, row: number, column: number): string => `${sheetId}!${row}:${column}`;

/** Whether a formula of the list depends on itself, as the engine finds out before anyone asks which. */
async function hasCircle<T extends FormulaNode>(
  list: readonly T[],
  nodeOf: (id: number) => T | undefined,
  dependents: Dependents<T>,
  pause: Pause,
): Promise<boolean> {
  const state = new Map<number, "open" | "done">();
  const stack: number[] = [];
  for (const { treeId } of list) {
    if (!state.has(treeId)) stack.push(treeId);
    for (let id = stack.at(-1); id !== undefined; id = stack.at(-1)) {
      const wait = pause();
      if (wait !== undefined) await wait;
      if (state.has(id)) {
        state.set(id, "done");
        stack.pop();
        continue;
      }
      state.set(id, "open");
      const node = nodeOf(id);
      for (const next of node === undefined ? [] : dependents(node)) {
        const known = state.get(next);
        if (known === "open") return true;
        if (known === undefined) stack.push(next);
      }
    }
  }
  return false;
}

/** Looks for circles in every calculation of an engine; the answer knows the cells in one. */
export function findCycles(injector: Injector): (sheetId: string, row: number, column: number) => boolean {
  const engine = injector.get(IFormulaDependencyGenerator) as unknown as Dependencies<FormulaNode>;
  let cyclic: ReadonlySet<string> = new Set();
  engine._checkIsCycleDependency = async (list, dependents, pause) => {
    cyclic = new Set();
    const nodeOf = (id: number): FormulaNode | undefined => engine._dependencyTreeCache.get(id);
    if (!(await hasCircle(list, nodeOf, dependents, pause))) return false;
    const following = (id: number): readonly number[] => {
      const node = nodeOf(id);
      return node === undefined || PLACE_ONLY.test(node.formula ?? "") ? [] : dependents(node);
    };
    const ids = await circular(
      list.map(({ treeId }) => treeId),
      following,
      pause,
    );
    const cells = [...ids].flatMap((id) => nodeOf(id) ?? []);
    cyclic = new Set(cells.map(({ subUnitId, row, column }) => keyOf(subUnitId, row, column)));
    return true;
  };
  return (sheetId, row, column) => cyclic.size > 0 && cyclic.has(keyOf(sheetId, row, column));
}
