import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { lookUp } from "../../core/kernel/define/catalogue";
import { isFault } from "../../core/kernel/values/fault";
import { GOLDENS, argumentsOf } from "./networks";

const compiledOf = (id: string) => {
  const definition = lookUp(CATALOGUE, id);
  if (!definition) throw new Error(`no ${id}`);
  return compile(definition);
};
const [setting, network] = [compiledOf("PIPE.VALVESETTING"), compiledOf("PIPE.NETWORK")];

const call = (
  compiled: ReturnType<typeof compile>,
  args: readonly unknown[],
): readonly (readonly (string | number)[])[] => {
  const out = evaluate(compiled, args, CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return out as readonly (readonly (string | number)[])[];
};

const padOf = (id: string) => {
  const golden = GOLDENS.find((each) => each.id === id);
  if (!golden) throw new Error(`no network ${id}`);
  const [rows, pumps, nodes, inputs] = argumentsOf(golden) as [(string | number | null)[][], unknown, unknown, unknown];
  return { golden, rows, pumps, nodes, inputs };
};

const settingOf = ({ rows, pumps, nodes, inputs }: ReturnType<typeof padOf>, valve: string, share: number) =>
  new Map(
    call(setting, [rows, pumps, nodes, valve, "exchanger", share, inputs, "SI"]).map(([label, value]) => [
      label,
      Number(value),
    ]),
  );

describe("PIPE.VALVESETTING", () => {
  test("finds N05's opening of its bypass from N05's flows", () => {
    const pad = padOf("N05");
    const flow = (id: string) => pad.golden.solution.links.find((each) => each.id === id)?.Q_m3_h ?? 0;
    expect(settingOf(pad, "bypass", flow("exchanger") / flow("pump")).get("opening")).toBeCloseTo(0.4, 5);
  });

  test("finds N06's opening of a three-way valve of two rows", () => {
    const pad = padOf("N06");
    const flow = (id: string) => pad.golden.solution.links.find((each) => each.id === id)?.Q_m3_h ?? 0;
    const rows = pad.rows.map((row) => row.map((cell) => (String(cell).startsWith("port ") ? "diverter" : cell)));
    const found = settingOf({ ...pad, rows }, "diverter", flow("exchanger") / flow("pump"));
    expect(found.get("opening")).toBeCloseTo(0.35, 5);
  });

  test("sends the wanted share through the exchanger when PIPE.NETWORK gets its opening", () => {
    const pad = padOf("N05");
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 0.92, noNaN: true }), (share) => {
        const opening = settingOf(pad, "bypass", share).get("opening") ?? 0;
        const place = pad.rows[0]?.indexOf("opening") ?? -1;
        const rows = pad.rows.map((row) => row.map((cell, i) => (row[2] === "bypass" && i === place ? opening : cell)));
        const lines = call(network, [rows, pad.pumps, pad.nodes, pad.inputs, "SI"]);
        const flow = (part: string) => Number(lines.find(([name]) => name === part)?.[3]);
        expect(flow("exchanger") / flow("pump")).toBeCloseTo(share, 9);
      }),
      { numRuns: 30 },
    );
  });

  test("names the reachable shares where the wanted one is out of reach", () => {
    const { rows, pumps, nodes, inputs } = padOf("N05");
    const out = evaluate(setting, [rows, pumps, nodes, "bypass", "exchanger", 0.05, inputs, "SI"], CATALOGUE);
    expect(isFault(out) && out.code).toBe("#N/A");
    expect(isFault(out) && out.message).toMatch(
      /5\.0 % is out of the valve's reach: nearly shut it gives 9\d\.\d %, open 2\d\.\d %/,
    );
  });

  test("refuses a valve that no row names, or without coefficient", () => {
    const { rows, pumps, nodes, inputs } = padOf("N05");
    const text = (valve: string) => {
      const out = evaluate(setting, [rows, pumps, nodes, valve, "exchanger", 0.5, inputs, "SI"], CATALOGUE);
      return isFault(out) ? out.message : "";
    };
    expect(text("bypas")).toMatch(/no row has the element "bypas"/);
    expect(text("filter")).toMatch(/"filter" has no flow coefficient/);
  });
});
