/** The steps of a working as a tree of lines: 1, 1.1, 1.2, 2 … */
import { KINDS, readableNumber, type Step, type System, type WorkingLine, workingLines } from "../../../core";

export interface WorkingNode {
  readonly line: WorkingLine;
  /** An equation's value in its SI base unit, if that isn't the line's own unit. */
  readonly base?: string;
  /** The numbers of an equation's or relation's symbols, in SI base units. */
  readonly numbers?: Readonly<Record<string, number>>;
  readonly below: readonly WorkingNode[];
}

const flat = (steps: readonly Step[]): readonly Step[] =>
  steps.flatMap((step) => (step.type === "group" ? [step, ...flat(step.steps)] : [step]));

const SUPERSCRIPTS: Readonly<Record<string, string>> = { "^2": "²", "^3": "³" };

const baseText = (step: Step, { unit }: WorkingLine): string | undefined => {
  if (step.type !== "equation") return undefined;
  const base = KINDS[step.equation.kind].base.replace(/\^[23]/g, (power) => SUPERSCRIPTS[power] ?? power);
  const shown = base.replace(/ /g, "·");
  return shown === "" || shown === unit ? undefined : `${readableNumber(step.value)} ${shown}`;
};

const depthOf = ({ number }: WorkingLine): number => number.split(".").length;

interface Entry {
  readonly line: WorkingLine;
  readonly base?: string;
  readonly numbers?: Readonly<Record<string, number>>;
}

const numbersOf = (step: Step | undefined): Entry["numbers"] =>
  step?.type === "equation" || step?.type === "relation" ? step.x : undefined;

/** The lines are in order, each group's heading before its steps. */
const treeOf = (entries: readonly Entry[]): readonly WorkingNode[] => {
  const nodes: WorkingNode[] = [];
  let at = 0;
  for (let head = entries[at]; head !== undefined; head = entries[at]) {
    const depth = depthOf(head.line);
    const after = entries.findIndex(({ line }, place) => place > at && depthOf(line) <= depth);
    const end = after < 0 ? entries.length : after;
    nodes.push({ ...head, below: treeOf(entries.slice(at + 1, end)) });
    at = end;
  }
  return nodes;
};

export interface WorkingTree {
  readonly nodes: readonly WorkingNode[];
  /** How many lines were left out. */
  readonly left: number;
}

/** @param most lines that are kept */
export function workingTree(steps: readonly Step[], system: System, most: number): WorkingTree {
  const lines = workingLines(steps, system);
  const own = flat(steps);
  const entries = lines.slice(0, most).map((line, place): Entry => {
    const step = own[place];
    const base = step && baseText(step, line);
    const numbers = numbersOf(step);
    return { line, ...(base !== undefined && { base }), ...(numbers !== undefined && { numbers }) };
  });
  return { nodes: treeOf(entries), left: Math.max(0, lines.length - most) };
}

/** A step's title without the form, which is shown as an equation below it. */
export const titleOf = ({ text, form }: WorkingLine): string =>
  form !== undefined && text.endsWith(`: ${form}`) ? text.slice(0, -form.length - 2) : text;

/** The symbol that an explicit equation defines; undefined for a relation, whose left side is more than a symbol. */
export const symbolOf = ({ form }: WorkingLine): string | undefined =>
  form === undefined ? undefined : /^\s*([A-Za-z]\w*)\s*=/.exec(form)?.[1];

/** A form as people write it: mathjs calls the natural logarithm log. */
export const withLn = (text: string): string => text.replace(/\blog\(/g, "ln(");

/** What a relation was solved for: the symbols of its left side. */
export function answersOf({ line: { form = "" }, numbers = {} }: WorkingNode): readonly (readonly [string, number])[] {
  const left = form.slice(0, form.indexOf("="));
  const symbols = new Set(left.match(/[A-Za-z_]\w*/g) ?? []);
  return Object.entries(numbers).filter(([name]) => symbols.has(name));
}
