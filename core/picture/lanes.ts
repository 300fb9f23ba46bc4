/** Places the links of a network in rows and lanes, as a diagram of branches is drawn: in the order of the water. */

export interface LaneLink {
  readonly from: number;
  readonly to: number;
}

/** A row of the diagram: a node that is drawn, or a link. */
export type LaneRow = { readonly node: number } | { readonly link: number };

/** A line down a lane, from the row of a node or link to another. */
export interface LaneLine {
  readonly lane: number;
  readonly from: number;
  readonly to: number;
}

export interface Lanes {
  readonly rows: readonly LaneRow[];
  /** The lane of each row. */
  readonly at: readonly number[];
  readonly lines: readonly LaneLine[];
  readonly count: number;
}

/** Chains of links, one after the other through nodes that only join two; a surface or a branch ends them. */
function chainsOf(links: readonly LaneLink[], isDrawn: (node: number) => boolean): readonly (readonly number[])[] {
  const used = new Set<number>();
  const chains: number[][] = [];
  const begin = (first: number): void => {
    const chain: number[] = [];
    for (let next: number | undefined = first; next !== undefined && !used.has(next);) {
      used.add(next);
      chain.push(next);
      const end: number = links[next]?.to ?? -1;
      next = isDrawn(end) ? undefined : links.findIndex(({ from }, i) => from === end && !used.has(i));
      if (next === -1) next = undefined;
    }
    chains.push(chain);
  };
  links.forEach(({ from }, i) => {
    if (isDrawn(from)) begin(i);
  });
  // A ring without a drawn node.
  links.forEach((_, i) => {
    if (!used.has(i)) begin(i);
  });
  return chains;
}

/** Chains with those before them first; a ring begins anywhere. */
function inOrder<T extends LaneLink>(chains: readonly T[], isStart: (node: number) => boolean): readonly T[] {
  const waiting = [...chains];
  const ordered: T[] = [];
  while (waiting.length > 0) {
    const free = waiting.findIndex(({ from }) => isStart(from) || waiting.every(({ to }) => to !== from));
    ordered.push(...waiting.splice(Math.max(free, 0), 1));
  }
  return ordered;
}

/** The first lane that no line uses between two rows. */
function freeLane(lines: readonly LaneLine[], from: number, to: number): number {
  const [top, foot] = [Math.min(from, to), Math.max(from, to)];
  for (let lane = 0; ; lane++)
    if (
      lines.every((one) => one.lane !== lane || Math.max(one.from, one.to) <= top || Math.min(one.from, one.to) >= foot)
    )
      return lane;
}

/** @param isSurface whether a node is a free surface: drawn where water leaves it, and again where it arrives */
export function lanesOf(links: readonly LaneLink[], isSurface: (node: number) => boolean): Lanes {
  const degree = (node: number): number => links.filter(({ from, to }) => from === node || to === node).length;
  const begins = (node: number): boolean => links.filter(({ to }) => to === node).length === 1;
  const isDrawn = (node: number): boolean => isSurface(node) || degree(node) !== 2 || !begins(node);
  const chains = chainsOf(links, isDrawn).map((chain) => ({
    chain,
    from: links[chain[0] ?? -1]?.from ?? -1,
    to: links[chain.at(-1) ?? -1]?.to ?? -1,
  }));
  const rows: LaneRow[] = [];
  const [leaving, arriving] = [new Map<number, number>(), new Map<number, number>()];
  const place = (node: number, where: Map<number, number>): void => {
    if (!where.has(node)) where.set(node, rows.push({ node }) - 1);
  };
  const ordered = inOrder(chains, isSurface);
  const runs = ordered.map(({ chain, from }) => {
    place(from, leaving);
    const first = rows.length;
    for (const link of chain) rows.push({ link });
    return { first, last: rows.length - 1 };
  });
  // Ends that are no beginnings of their own.
  for (const { to } of ordered) if (isSurface(to) || !leaving.has(to)) place(to, arriving);
  const lines: LaneLine[] = [];
  const at = rows.map(() => 0);
  ordered.forEach(({ from, to }, i) => {
    const { first = 0, last = 0 } = runs[i] ?? {};
    const start = leaving.get(from) ?? 0;
    const end = (isSurface(to) ? undefined : leaving.get(to)) ?? arriving.get(to) ?? 0;
    const lane = freeLane(lines, start, Math.max(end, last));
    for (let row = first; row <= last; row++) at[row] = lane;
    lines.push({ lane, from: start, to: end });
  });
  for (const [, row] of [...leaving, ...arriving]) at[row] = 0;
  return { rows, at, lines, count: 1 + Math.max(0, ...lines.map(({ lane }) => lane)) };
}
