/** Every loop of a starter sheet, worked out as a string by PIPE.LOOP and as branches by PIPE.NETWORK. */
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { lookUp } from "../../core/kernel/define/catalogue";
import { isFault } from "../../core/kernel/values/fault";
import { us } from "../../core/kernel/values/quantity";
import { propertiesAt } from "../../core/pipe/network/gridRead";
import { reynoldsFactor } from "../../core/pipe/network/gridLink";
import { boreOf } from "../../core/pipe/straight/bore";
import { STARTER_SHEETS } from "../../src/sheets";
import { parseCells } from "../../src/workbook/reader/reference";

type Cell = string | number;

function called(id: string, ...args: readonly unknown[]): readonly (readonly Cell[])[] {
  const definition = lookUp(CATALOGUE, id);
  if (!definition) throw new Error(`no ${id}`);
  const out = evaluate(compile(definition), args, CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return out as readonly (readonly Cell[])[];
}

type Item = readonly Cell[];

/** The lists of parts that formulas with PIPE.LOOP name, with their sheet. */
const LOOPS = STARTER_SHEETS.flatMap(({ name, cells }) => {
  const ranges = Object.values(cells).flatMap(({ content }) =>
    [...String(content).matchAll(/PIPE\.LOOP\(([$A-Z\d]+:[$A-Z\d]+)/g)].map(([, range = ""]) => range),
  );
  return [...new Set(ranges)].flatMap((range) => {
    const area = parseCells(range.replaceAll("$", ""));
    if (area === undefined || area.rows < 2) return [];
    const items = Array.from({ length: area.rows }, (_, row) =>
      Array.from({ length: area.columns }, (__, column): Cell => {
        const { content = "" } = cells[`${String.fromCharCode(65 + column)}${area.row + row + 1}`] ?? {};
        return typeof content === "number" ? content : String(content);
      }),
    ).filter(([what]) => what !== "");
    return [[`${name}, ${range}`, items] as const];
  });
});

/** A part as a row of a network: its own name, size, length, fittings, loss. */
function branch([what = "", size = "", count, loss, known, , Cv]: Item, at: number, last: boolean): readonly unknown[] {
  const [from, to] = [`n${at}`, last ? "pool" : `n${at + 1}`];
  const pieces = count === "" || count === undefined ? 1 : Number(count);
  const isPipe = what === "pipe";
  const isKnown = loss !== "" && loss !== undefined;
  const isValve = Cv !== "" && Cv !== undefined;
  const fitting = !isPipe && !isKnown && !isValve ? `${pieces} ${what}` : null;
  return [
    from,
    to,
    what,
    size === "" ? null : size,
    isPipe ? pieces : null,
    fitting,
    isValve ? Cv : null,
    isKnown ? pieces * Number(loss) : null,
    isKnown ? known : null,
  ];
}

const HEAD = ["from", "to", "element", "size", "length", "K", "flow coefficient", "loss", "known flow"];

function reynoldsOf(items: readonly Item[], flow: number): readonly number[] {
  const { viscosity } = propertiesAt(us("temperature", 82));
  return items.flatMap(([, size = ""]) =>
    size === "" ? [] : [us("water flow", flow) * reynoldsFactor(boreOf(String(size), "40", "average"), viscosity)],
  );
}

test("two starter loops were found: the pool's as it is, and what the exchanger adds", () => {
  expect(LOOPS).toHaveLength(2);
});

const FLOWS = [0.5, 1.2, 20, 45, 75, 110, 160];

describe.each(LOOPS)("the loop of %s", (_, items) => {
  test.each(FLOWS)("loses the same as a network at %d gpm, to 1e-9, part by part", (flow) => {
    for (const re of reynoldsOf(items, flow)) expect(re < 2000 || re > 4000, `Re ${re}`).toBe(true);
    const loop = called("PIPE.LOOP", items, flow, 82, "40");
    const rows = items.map((item, at) => branch(item, at, at === items.length - 1));
    const network = called("PIPE.NETWORK", [HEAD, ...rows], null, [["n0", 0, null, -flow]], [["water", 82]]);
    items.forEach((item, at) => {
      const wanted = Number(loop[at + 1]?.[3]);
      expect(Math.abs(Number(network[at + 1]?.[5]) - wanted), String(item[0])).toBeLessThan(1e-9 * wanted);
    });
    const total = Number(loop.at(-1)?.[3]);
    const fed = network.find(([part]) => part === "n0");
    expect(Math.abs(Number(fed?.[6]) - total)).toBeLessThan(1e-9 * total);
  });
});
