/** The lines of a working as a tree again: 1, 1.1, 1.2, 2 … */
import type { WorkingLine } from "../../../core/kernel/working";

export interface WorkingNode {
  readonly line: WorkingLine;
  readonly below: readonly WorkingNode[];
}

const depthOf = ({ number }: WorkingLine): number => number.split(".").length;

/** The lines must come in order, each group's head before what it holds. */
export function treeOf(lines: readonly WorkingLine[]): readonly WorkingNode[] {
  const nodes: WorkingNode[] = [];
  let at = 0;
  while (at < lines.length) {
    const line = lines[at] as WorkingLine;
    let end = at + 1;
    while (end < lines.length && depthOf(lines[end] as WorkingLine) > depthOf(line)) end++;
    nodes.push({ line, below: treeOf(lines.slice(at + 1, end)) });
    at = end;
  }
  return nodes;
}

/** A step's title without the form that stands behind it as an equation. */
export const titleOf = ({ says, form }: WorkingLine): string =>
  form !== undefined && says.endsWith(`: ${form}`) ? says.slice(0, -form.length - 2) : says;
