/** What the parts of a formula make of the long lines in it: the engine's tree, read before it is worked out. */
import type { BaseAstNode, BaseReferenceObject } from "@univerjs/engine-formula";
import { plainName } from "../../workbook/reader/evaluate";
import { kindOfCall, LONG_COLUMNS, LONG_ROWS, type LineKind } from "../file/readable/longLines";
import { usedCount, type LineWay } from "./lineCells";
import { extentOf, type EngineValue } from "./lineValues";

/** The engine's kinds of nodes. */
const REFERENCE = 1;
const VALUE = 2;
const OPERATOR = 3;
const FUNCTION = 4;
const LAMBDA = [5, 6];
const ROOT = 9;
const UNION = 10;
const SIGNS = [11, 12];

export type LineKinds = ReadonlyMap<BaseAstNode, LineKind | undefined>;

export interface LinePlan {
  readonly kinds: LineKinds;
  /** What the whole formula gives; undefined where something in it needs each cell of a line. */
  readonly kind: LineKind | undefined;
  readonly way: LineWay;
  /** So many cells from the beginning of the lines are enough. */
  readonly used: number;
  /** The length of the lines. */
  readonly size: number;
  /** The cells of the largest one. */
  readonly cells: number;
  /** Something is worked out for each cell of a line, or needs each of them. */
  readonly isCalculated: boolean;
  /** The engine's own way costs no more, or only it can do it. */
  readonly isAsItIs: boolean;
}

type ReferenceNode = BaseAstNode & { setRefOffset(x: number, y: number): void };

export const isReferenceNode = (node: BaseAstNode): node is ReferenceNode => node.nodeType === REFERENCE;

export const nodeValue = (node: BaseAstNode): EngineValue | undefined =>
  (node.getValue() as EngineValue | null | undefined) ?? undefined;

/** Whether a node makes something short of a line. */
export const isCut = (node: BaseAstNode, kinds: LineKinds): boolean =>
  node.nodeType !== ROOT &&
  kinds.get(node) === "short" &&
  node.getChildren().some((child) => kinds.get(child) !== "short");

interface Lines {
  readonly sizes: Set<number>;
  readonly ways: Set<LineWay>;
  used: number;
  cells: number;
  /** The most rows and columns of what is no line. */
  rows: number;
  columns: number;
  needsEngine: boolean;
}

function noteExtent({ rows, columns }: ReturnType<typeof extentOf>, lines: Lines): void {
  lines.rows = Math.max(lines.rows, rows);
  lines.columns = Math.max(lines.columns, columns);
}

/** Takes a range down; whether it is a long line. */
function noteRange(reference: BaseReferenceObject, lines: Lines): LineKind {
  const range = reference.getRangePosition();
  const { rows, columns } = extentOf(reference);
  const [isTall, isWide] = [rows > LONG_ROWS, columns > LONG_COLUMNS];
  if (isTall === isWide || reference.isTable()) {
    noteExtent({ rows, columns }, lines);
    return "short";
  }
  const way = isTall ? "rows" : "columns";
  lines.ways.add(way);
  lines.sizes.add(isTall ? rows : columns);
  lines.cells = Math.max(lines.cells, rows * columns);
  lines.used = Math.max(lines.used, usedCount(reference, range, way));
  return "line";
}

function kindOfReference(node: BaseAstNode, lines: Lines): LineKind {
  node.execute();
  const value = nodeValue(node);
  if (value?.isReferenceObject()) return noteRange(value as BaseReferenceObject, lines);
  if (value !== undefined) noteExtent(extentOf(value), lines);
  return "short";
}

const isShort = (kinds: readonly (LineKind | undefined)[]): boolean => kinds.every((kind) => kind === "short");

function kindOfNode(node: BaseAstNode, parts: readonly (LineKind | undefined)[], lines: Lines): LineKind | undefined {
  const token = node.getToken().trim();
  const type = Number(node.nodeType);
  if (type === REFERENCE || type === VALUE) return kindOfReference(node, lines);
  if (type === UNION) {
    // A corner that is calculated isn't known yet.
    const isKnown = node.getChildren().every((child) => child.nodeType === REFERENCE);
    return isKnown ? kindOfReference(node, lines) : "short";
  }
  const isLambda = LAMBDA.includes(type) || (type === FUNCTION && /^(?:LET|LAMBDA)$/i.test(token));
  if (isLambda) lines.needsEngine = true;
  if (SIGNS.includes(type) && (token === "@" || token === "#")) return "short";
  if (isShort(parts)) return "short";
  if (parts.includes(undefined) || isLambda) return undefined;
  if (type === ROOT) return parts[0];
  if (type === OPERATOR || SIGNS.includes(type)) return "calculated";
  if (type !== FUNCTION) return undefined;
  const name = plainName(token);
  // The sum's range begins at the cell that is given, and goes on beside all of the line.
  if (/^(?:SUM|AVERAGE)IF$/.test(name) && parts[2] === "short") lines.needsEngine = true;
  return kindOfCall(name, parts as readonly LineKind[]);
}

/** A formula's tree, and how far its references are moved. */
export interface FormulaTree {
  readonly root: BaseAstNode;
  readonly refOffsetX: number;
  readonly refOffsetY: number;
}

/** Undefined where a formula has no long lines, and for a part of one, which the engine asks where its cells are. */
export function linePlan({ root, refOffsetX, refOffsetY }: FormulaTree): LinePlan | undefined {
  if (Number(root.nodeType) !== ROOT) return undefined;
  const kinds = new Map<BaseAstNode, LineKind | undefined>();
  const lines: Lines = {
    ...{ sizes: new Set<number>(), ways: new Set<LineWay>(), used: 0, cells: 0 },
    ...{ rows: 0, columns: 0, needsEngine: false },
  };
  const visit = (node: BaseAstNode): LineKind | undefined => {
    const parts = node.getChildren().map(visit);
    if (isReferenceNode(node)) node.setRefOffset(refOffsetX, refOffsetY);
    const kind = kindOfNode(node, parts, lines);
    kinds.set(node, kind);
    return kind;
  };
  const top = visit(root);
  const [size = 0] = lines.sizes;
  const [way = "rows"] = lines.ways;
  if (size === 0) return undefined;
  const isMixed = lines.sizes.size > 1 || lines.ways.size > 1;
  const isCalculated = [...kinds.values()].some((one) => one === "calculated" || one === undefined);
  const kind = isMixed && isCalculated ? undefined : top;
  const used = Math.max(lines.used, way === "rows" ? lines.rows : lines.columns);
  const isAsItIs = isMixed || lines.needsEngine || used > size / 3;
  return { kinds, kind, way, used, size, cells: lines.cells, isCalculated, isAsItIs };
}
