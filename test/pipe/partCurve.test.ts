import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { lookUp } from "../../core/kernel/define/catalogue";
import { isFault } from "../../core/kernel/values/fault";

type Cell = string | number;

function called(id: string, ...args: readonly unknown[]): readonly (readonly Cell[])[] {
  const definition = lookUp(CATALOGUE, id);
  if (!definition) throw new Error(`no ${id}`);
  const out = evaluate(compile(definition), args, CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return out as readonly (readonly Cell[])[];
}

const PART_HEAD = [
  "what",
  "loss",
  "known flow",
  "exponent",
  "linear share",
  "second loss",
  "second flow",
  "dirty rise",
];

/** Head of one part in PIPE.LOOP. */
const inLoop = (part: readonly unknown[], flow: number): number =>
  Number(called("PIPE.LOOP", [PART_HEAD, ["part", ...part]], flow)[1]?.[3]);

/** Head of the same part in PIPE.NETWORK, fed with the flow. */
const inNetwork = (part: readonly unknown[], flow: number): number => {
  const rows = [
    ["from", "to", "element", ...PART_HEAD.slice(1)],
    ["A", "pool", "part", ...part],
  ];
  return Number(called("PIPE.NETWORK", rows, null, [["A", 0, null, -flow]])[1]?.[5]);
};

const EXPONENT = Math.log(14 / 5) / Math.log(2);

describe("a part's loss by flow", () => {
  // Worked by hand: (40 gpm, 5 ft) and (80 gpm, 14 ft) rise by the 1.485th power.
  test.each([
    ["one point by the flow squared", [10, 50], 40, 6.4],
    ["two points by their exponent", [5, 40, null, null, 14, 80], 60, 5 * 1.5 ** EXPONENT],
    ["two points, at the second", [5, 40, null, null, 14, 80], 80, 14],
    ["a linear share of one half", [4, 50, null, 0.5], 25, 4 * (0.25 + 0.125)],
    ["an exponent of its own", [4, 50, 1.5], 25, 4 * 0.5 ** 1.5],
    ["a clean filter whose dirt adds straight with flow", [8, 60, null, null, null, null, 20], 30, 2 + 10],
    ["a filter of two points with dirt", [5, 40, null, null, 14, 80, 6], 80, 14 + 12],
  ] as const)("%s is the same in a loop and in a network, and as by hand", (_, part, flow, wanted) => {
    expect(inLoop(part, flow)).toBeCloseTo(wanted, 9);
    expect(inNetwork(part, flow)).toBeCloseTo(wanted, 9);
  });

  test("has the exponent 1.485 of the printed points", () => expect(EXPONENT).toBeCloseTo(1.485, 3));

  test("refuses half a second point, one at the same flow, an exponent beside it, and dirt without a loss", () => {
    expect(() => inLoop([5, 40, null, null, 14], 40)).toThrow(/second loss/);
    expect(() => inNetwork([5, 40, null, null, 14, 40], 40)).toThrow(/second loss/);
    expect(() => inLoop([5, 40, 1.8, null, 14, 80], 40)).toThrow(/leave exponent/);
    expect(() => inNetwork([5, 40, null, null, 5.1, 80], 40)).toThrow(/exponent of 0.03/);
    expect(() =>
      called(
        "PIPE.LOOP",
        [
          ["what", "size", "dirty rise"],
          ["union", "2 in", 4],
        ],
        40,
      ),
    ).toThrow(/dirty rise/);
  });
});

const COIL = {
  refrigerant: "R-410A",
  "heat rejected": 112000,
  condensing: 105,
  evaporating: 45,
  "entering water": 82,
  "outside diameter": 0.625,
  wall: 0.028,
  tubes: 4,
  "tube length": 60,
  "coil diameter": 10,
  pitch: 1,
  "shell diameter": 12,
  "core diameter": 8,
};

/** Water drop and bundle drop of the coil, ft of water at 60 °F. */
function coilDrops(flow: number, port: number): readonly [number, number] {
  const out = called("EXCHANGER.COIL", Object.entries({ ...COIL, "water flow": flow, "port bore": port }));
  const of = (label: string): number => Number(out.find(([name]) => name === label)?.[1]) * 2.3089;
  return [of("water drop"), of("bundle drop")];
}

describe("an exchanger's head by its geometry", () => {
  const ports = (size: string, flow: number): number => {
    const rows = [["A", "pool", "exchanger", size, null, null, "1 entrance; 1 exit"]];
    return Number(called("PIPE.NETWORK", rows, null, [["A", 0, null, -flow]])[1]?.[5]);
  };

  // Worked by hand: 40 gpm through two ports of 1-1/2 in is 0.97 ft, of 2 in 0.35 ft.
  test("is 0.97 ft in ports of 1-1/2 in and 0.35 ft in ports of 2 in", () => {
    expect(ports("1-1/2 in", 40)).toBeCloseTo(0.97, 2);
    expect(ports("2 in", 40)).toBeCloseTo(0.35, 2);
  });

  test("differs between two ports in EXCHANGER.COIL as in the network", () => {
    const [small, large] = [coilDrops(40, 1.592), coilDrops(40, 2.049)];
    expect(small[1]).toBe(large[1]);
    // Density of the coil's water and of a foot at 60 °F differ by 0.4 %.
    const wanted = ports("1-1/2 in", 40) - ports("2 in", 40);
    expect(Math.abs(small[0] - large[0] - wanted)).toBeLessThan(0.006 * wanted);
  });

  test("by EXCHANGER.COIL's drop at one flow agrees with the coil at another within 2 %", () => {
    const [at40, at60] = [coilDrops(40, 1.592)[0], coilDrops(60, 1.592)[0]];
    expect(Math.abs(inLoop([at40, 40], 60) - at60)).toBeLessThan(0.02 * at60);
  });
});
