/**
 * Finds which formulas a calculation works out, and in which order, in slices. The engine (0.25.1) does each of these
 * steps in one piece, and looks twice for what depends on a formula.
 */
import type { Injector, IUnitRange } from "@univerjs/core";
import {
  IDependencyManagerService,
  IFormulaCurrentConfigService,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
} from "@univerjs/engine-formula";
import { LONG_SLICE, timeSlices } from "../../workbook/timeSlices";
import type { UnitFormulas } from "./formulaParts";

/** A formula in the engine's list. */
interface ListedFormula {
  readonly treeId: number;
  readonly isVirtual: boolean;
  readonly isDirty: boolean;
  readonly rangeList: IUnitRange[];
  readonly subUnitId: string;
  readonly row: number;
  readonly column: number;
  readonly formula?: string;
  toRTreeItem(): readonly IUnitRange[];
  dependencySheetName(names: unknown): boolean;
  isExcludeRange(excluded: unknown): boolean;
  isAdded(): boolean;
  setAdded(): void;
  isSkip(): boolean;
  setSkip(): void;
}

type Pause = () => Promise<void> | undefined;

interface Search {
  bulkSearch(ranges: readonly IUnitRange[]): Set<number>;
  clear(): void;
}

/** The part of the engine's generator that is replaced, and what the replacement uses. */
interface Generator {
  generate(asModel?: boolean): Promise<readonly ListedFormula[]>;
  _updateRangeFlatten(): void;
  _generateTreeList(formulas: UnitFormulas, others: unknown, units: unknown): Promise<unknown>;
  _checkIsCycleDependency(
    list: readonly ListedFormula[],
    dependents: (formula: ListedFormula) => readonly number[],
    pause: Pause,
  ): Promise<boolean>;
  _getAllDependencyJson(all: readonly ListedFormula[]): never;
  readonly _otherFormulaManagerService: { getOtherFormulaData(): unknown };
  readonly _dependencyTreeCache: Map<number, ListedFormula>;
  readonly _dependencyRTreeCacheForAddressFunction: Search;
}

/** So many changed ranges are looked up at a time. */
const RANGES = 500;

type Clearing = Readonly<Record<"Other" | "Feature" | "", (unit: string, sheet: string) => void>>;

function forgetSheets(sheets: readonly string[], unit: string, clear: Clearing): void {
  for (const sheet of sheets) for (const kind of ["Other", "Feature", ""] as const) clear[kind](unit, sheet);
}

/** The formulas that depend on another one; each is looked for once. */
function dependentsIn(injector: Injector, { _dependencyRTreeCacheForAddressFunction: places }: Generator) {
  const manager = injector.get(IDependencyManagerService);
  const known = new Map<number, readonly number[]>();
  const of = (formula: ListedFormula): readonly number[] => {
    const before = known.get(formula.treeId);
    if (before !== undefined) return before;
    const found = [...manager.searchDependency(formula.toRTreeItem() as IUnitRange[])];
    known.set(formula.treeId, found);
    return found;
  };
  return {
    of,
    /** With what OFFSET and INDIRECT refer to. */
    withPlaces: (formula: ListedFormula): ReadonlySet<number> =>
      new Set([...of(formula), ...places.bulkSearch(formula.toRTreeItem())]),
  };
}

/** The formulas that changed themselves, or whose inputs did. */
async function changedFormulas(injector: Injector, generator: Generator, pause: Pause): Promise<ListedFormula[]> {
  const config = injector.get(IFormulaCurrentConfigService);
  const manager = injector.get(IDependencyManagerService);
  const all = config.isForceCalculate();
  const ranges = config.getDirtyRanges();
  const touched = new Set<number>();
  for (let at = 0; at < ranges.length; at += RANGES) {
    const some = ranges.slice(at, at + RANGES);
    for (const id of manager.searchDependency(some)) touched.add(id);
    for (const id of generator._dependencyRTreeCacheForAddressFunction.bulkSearch(some)) touched.add(id);
    await pause();
  }
  const changed: ListedFormula[] = [];
  const [names, excluded] = [config.getDirtyNameMap(), config.getExcludedRange()];
  for (const formula of generator._dependencyTreeCache.values()) {
    const wait = pause();
    if (wait !== undefined) await wait;
    const isTouched = touched.has(formula.treeId) && !formula.isExcludeRange(excluded);
    if (all || formula.isDirty || formula.dependencySheetName(names) || isTouched) changed.push(formula);
  }
  for (const formula of generator._dependencyTreeCache.values()) {
    const wait = pause();
    if (wait !== undefined) await wait;
    if (!formula.isVirtual) formula.rangeList.length = 0;
  }
  return changed;
}

/** Those and what follows from them, each before its inputs: the engine works the list out from its end. */
async function inOrder(
  changed: readonly ListedFormula[],
  { _dependencyTreeCache: known }: Generator,
  dependents: (formula: ListedFormula) => ReadonlySet<number>,
  pause: Pause,
): Promise<readonly ListedFormula[]> {
  const order: ListedFormula[] = [];
  const done = new Set<number>();
  const stack = [...changed];
  const finish = (formula: ListedFormula): void => {
    order.push(formula);
    formula.setSkip();
    done.add(formula.treeId);
  };
  for (let formula = stack.pop(); formula !== undefined; formula = stack.pop()) {
    const wait = pause();
    if (wait !== undefined) await wait;
    if (formula.isSkip()) continue;
    if (formula.isAdded()) {
      finish(formula);
      continue;
    }
    const next = new Set<ListedFormula>();
    for (const id of dependents(formula)) {
      const dependent = done.has(id) ? undefined : known.get(id);
      if (dependent?.isAdded() === false) next.add(dependent);
    }
    if (next.size === 0) finish(formula);
    else {
      formula.setAdded();
      stack.push(formula, ...next);
    }
  }
  return order;
}

/** @param injector of an engine whose circles are looked for already */
export function sliceCalculationList(injector: Injector): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator;
  const config = injector.get(IFormulaCurrentConfigService);
  const runtime = injector.get(IFormulaRuntimeService);
  const manager = injector.get(IDependencyManagerService);
  const clear: Clearing = {
    Other: (unit, sheet) => manager.clearOtherFormulaDependency(unit, sheet),
    Feature: (unit, sheet) => manager.clearFeatureFormulaDependency(unit, sheet),
    "": (unit, sheet) => manager.clearFormulaDependency(unit, sheet),
  };
  generator.generate = async (asModel = false) => {
    const pause = timeSlices({ slice: LONG_SLICE }, []);
    generator._updateRangeFlatten();
    for (const [unit, sheets] of Object.entries(config.getClearDependencyTreeCache() ?? {}))
      forgetSheets(Object.keys(sheets ?? {}), unit, clear);
    const others = generator._otherFormulaManagerService.getOtherFormulaData();
    await generator._generateTreeList(config.getFormulaData() as UnitFormulas, others, config.getUnitData());
    manager.openKdTree();
    await pause();
    const dependents = dependentsIn(injector, generator);
    const changed = await changedFormulas(injector, generator, pause);
    const order = await inOrder(changed, generator, dependents.withPlaces, pause);
    if (await generator._checkIsCycleDependency(order, dependents.of, pause)) runtime.enableCycleDependency();
    const known = generator._dependencyTreeCache;
    if (asModel) runtime.setDependencyTreeModelData(generator._getAllDependencyJson([...known.values()]));
    known.clear();
    generator._dependencyRTreeCacheForAddressFunction.clear();
    manager.closeKdTree();
    runtime.clearArrayObjectCache();
    return order;
  };
}
