/**
 * Flows and heads of a network by the global gradient method (E. Todini, S. Pilati, 1988): each pass solves the heads that
 * keep every node in balance for links replaced by their tangents, then corrects the flows. Strict SI.
 */
import { choleskySolve } from "./choleskySolve";

/** What a link loses at a flow, and its gradient. */
export interface HeadAndSlope {
  h: number;
  /** dh/dq, above 0 */
  g: number;
}

export interface GridLink {
  readonly from: number;
  readonly to: number;
  readonly shut: boolean;
  /** Lets flow through forwards only. */
  readonly oneWay: boolean;
  /** Head that it adds at no flow. */
  readonly lift: number;
  /** Flow from which the search starts. */
  readonly start: number;
}

export interface Grid<L extends GridLink = GridLink> {
  readonly links: readonly L[];
  readonly loss: (link: L, flow: number, into: HeadAndSlope) => void;
  /** Fixed total head of a node, m; undefined where it is free. */
  readonly fixed: readonly (number | undefined)[];
  /** Flow taken from each node, m³/s. */
  readonly demand: readonly number[];
}

export interface GridFlows {
  /** m³/s */
  readonly flow: Float64Array;
  /** m; NaN where shut valves cut a node off */
  readonly head: Float64Array;
  /** Links that a check valve or a pump without enough head holds shut. */
  readonly held: readonly boolean[];
  readonly passes: number;
}

/** Gradient of a link that is held shut, s/m²: it leaks less than rounding. */
const HELD_GRADIENT = 1e14;
const MOST_PASSES = 100;
const DAMPED_FROM = 40;
const ACCURACY = 1e-12;
/** Sum of flows below which rounding hides the rest, m³/s. */
const ROUNDING = 1e-10;
/** m³/s and m; smaller ones change no state. */
const NO_FLOW = 1e-10;
const NO_HEAD = 1e-9;

interface State {
  readonly flow: Float64Array;
  readonly head: Float64Array;
  readonly held: boolean[];
  /** Place of a free node in the matrix; −1 for others. */
  readonly place: Int32Array;
  readonly first: Int32Array;
  readonly count: number;
}

/** Nodes that open links join to a fixed head. */
function reached<L extends GridLink>({ links, fixed }: Grid<L>): readonly boolean[] {
  const found = fixed.map((head) => head !== undefined);
  for (let grew = true; grew;) {
    grew = false;
    for (const { from, to, shut } of links)
      if (!shut && found[from] !== found[to]) {
        found[from] = found[to] = true;
        grew = true;
      }
  }
  return found;
}

function startOf<L extends GridLink>(grid: Grid<L>, warm: ArrayLike<number> | undefined): State {
  const { links, fixed } = grid;
  const joined = reached(grid);
  let count = 0;
  const place = Int32Array.from(fixed, (head, node) => (head === undefined && joined[node] ? count++ : -1));
  const first = Int32Array.from({ length: count }, (_, i) => i);
  for (const { from, to, shut } of links) {
    const [a, b] = [place[from]!, place[to]!];
    if (!shut && a >= 0 && b >= 0) first[Math.max(a, b)] = Math.min(first[Math.max(a, b)]!, a, b);
  }
  return {
    flow: Float64Array.from(links, (link, i) => (dead(link, joined) ? 0 : warm?.[i] || link.start)),
    head: Float64Array.from(fixed, (head) => head ?? Number.NaN),
    held: links.map(() => false),
    place,
    first,
    count,
  };
}

const dead = ({ shut, from }: GridLink, joined: readonly boolean[]): boolean => shut || joined[from] !== true;

/** One pass; the share of the flows that it changed, or NaN if the matrix is singular. */
function pass<L extends GridLink>(grid: Grid<L>, state: State, damping: number): number {
  const { links, fixed, demand, loss } = grid;
  const { flow, head, held, place, first, count: n } = state;
  const a = new Float64Array(n * n);
  const b = new Float64Array(n);
  const steps = links.map((link, i): HeadAndSlope | undefined => {
    const { from, to } = link;
    if (link.shut || (place[from]! < 0 && fixed[from] === undefined)) return undefined;
    const at: HeadAndSlope = { h: HELD_GRADIENT * flow[i]!, g: HELD_GRADIENT };
    if (!held[i]) loss(link, flow[i]!, at);
    const p = 1 / at.g;
    const y = flow[i]! - at.h * p;
    for (const [own, other, sign] of [
      [from, to, -1],
      [to, from, 1],
    ] as const) {
      const row = place[own]!;
      if (row < 0) continue;
      a[row * n + row]! += p;
      b[row]! += sign * y;
      const column = place[other]!;
      if (column < 0) b[row]! += p * fixed[other]!;
      else if (column < row) a[row * n + column]! -= p;
    }
    return at;
  });
  for (let node = 0; node < place.length; node++) if (place[node]! >= 0) b[place[node]!]! -= demand[node]!;
  if (!choleskySolve(a, b, first)) return Number.NaN;
  for (let node = 0; node < place.length; node++) if (place[node]! >= 0) head[node] = b[place[node]!]!;
  let [changed, all] = [0, 0];
  for (let i = 0; i < links.length; i++) {
    const at = steps[i];
    if (!at) continue;
    const { from, to } = links[i]!;
    const change = (at.h - head[from]! + head[to]!) / at.g;
    flow[i]! -= damping * change;
    changed += Math.abs(change);
    all += Math.abs(flow[i]!);
  }
  return changed / (all + ROUNDING / ACCURACY);
}

/** Links whose state contradicts their flow or heads. */
function wrong<L extends GridLink>({ links }: Grid<L>, { flow, head, held }: State): readonly number[] {
  return links.flatMap((link, i) => {
    if (link.shut || !link.oneWay || Number.isNaN(head[link.from]!)) return [];
    if (!held[i]) return flow[i]! < -NO_FLOW ? [i] : [];
    const drive = head[link.from]! - head[link.to]! + link.lift;
    return drive > NO_HEAD ? [i] : [];
  });
}

/** Passes until the flows settle; false if they don't. */
function settle<L extends GridLink>(grid: Grid<L>, state: State): number | undefined {
  let last = Number.POSITIVE_INFINITY;
  for (let passes = 1; passes <= MOST_PASSES; passes++) {
    const changed = pass(grid, state, passes > DAMPED_FROM ? 0.6 : 1);
    if (Number.isNaN(changed)) return undefined;
    // Where rounding keeps it from falling further it is as sharp as it gets.
    if (changed < ACCURACY || (changed < 1000 * ACCURACY && changed >= last)) return passes;
    last = changed;
  }
  return undefined;
}

/**
 * The network's flows; undefined if they don't settle, or if its check valves find no state that agrees with itself.
 *
 * @param warm flows of a like network, to start from
 */
export function solveGrid<L extends GridLink>(grid: Grid<L>, warm?: ArrayLike<number>): GridFlows | undefined {
  const state = startOf(grid, warm);
  const seen = new Set<string>();
  let passes = 0;
  for (let round = 0; round < 4 * grid.links.length + 4; round++) {
    const took = settle(grid, state);
    if (took === undefined) return undefined;
    passes += took;
    const doubtful = wrong(grid, state);
    if (doubtful.length === 0) return { flow: cleaned(state), head: state.head, held: state.held, passes };
    const key = state.held.map(Number).join("");
    // All at once the first time, one by one in a state that comes again.
    for (const i of seen.has(key) ? doubtful.slice(0, 1) : doubtful) {
      state.held[i] = !state.held[i];
      state.flow[i] = state.held[i] ? 0 : grid.links[i]!.start;
    }
    seen.add(key);
  }
  return undefined;
}

const cleaned = ({ flow, held }: State): Float64Array => flow.map((q, i) => (held[i] || Math.abs(q) < NO_FLOW ? 0 : q));
