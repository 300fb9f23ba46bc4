/** Rank correlation, and shares in the variance, on functions whose shares are known. */
import { describe, expect, test } from "vitest";
import { sharesOf, type Shares } from "../../core/picture/shares";
import { normalQuantile } from "../../core/numeric/normal";
import { rankCorrelation } from "../../core/numeric/sample";
import { SOBOL_DIMENSIONS, sobolAt } from "../../core/numeric/sobol";
import { valuesOfRun, type UncertainModel } from "../../core/uncertainty/study";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";
import { goldenModel } from "./goldenModels";

const GOLDEN = cellsIn("uncertainty.csv");
const ofKind = (kind: string): readonly GoldenCells[] => GOLDEN.filter((row) => wordIn(row, "kind") === kind);

const listIn = (text: string): readonly number[] => text.split(",").map(Number);

/** The functions whose inputs a row writes in short. */
function shortModel(id: string, text: string): UncertainModel | undefined {
  const after = (pattern: RegExp): string => pattern.exec(text)?.[1] ?? "";
  if (id.startsWith("ishigami")) {
    const [a, b] = [Number(after(/; a=([\d.]+)/)), Number(after(/; b=([\d.]+)/))];
    const formula = `sin(x1) + ${a}*sin(x2)^2 + ${b}*x3^4*sin(x1)`;
    const ends = `(${-Math.PI}, ${Math.PI})`;
    return goldenModel(formula, ["x1", "x2", "x3"].map((x) => `${x}=rectangular${ends}`).join("; "));
  }
  if (id === "sobol-g") {
    const a = listIn(after(/a=(.*)$/));
    const formula = a.map((each, i) => `(abs(4*x${i}-2)+${each})/(1+${each})`).join("*");
    return goldenModel(formula, a.map((_, i) => `x${i}=rectangular(0, 1)`).join("; "));
  }
  if (!id.startsWith("linear")) return undefined;
  const [c, sd] = [listIn(after(/c=\(([^)]*)\)/)), listIn(after(/sd \(([^)]*)\)/))];
  const formula = c.map((each, i) => `${each}*x${i}`).join("+");
  return goldenModel(formula, sd.map((each, i) => `x${i}=normal(mean 0, sd ${each})`).join("; "));
}

/** Shares by N pairs of points. */
function sharesIn(model: UncertainModel, N: number): readonly Shares[] {
  const at = (values: readonly number[]): number => model.compute(values)[0] ?? NaN;
  const pairs = Array.from({ length: N }, (_, run) => {
    const [a, b] = [valuesOfRun(model, run), valuesOfRun(model, run, true)];
    const mixed = a.map((_value, input) => at(a.map((value, place) => (place === input ? (b[place] ?? 0) : value))));
    return { first: at(a), second: at(b), mixed };
  });
  return sharesOf(pairs);
}

const known = new Map<string, readonly Shares[]>();

const sharesOfRow = (row: GoldenCells): readonly Shares[] => {
  const [id, text] = [wordIn(row, "id"), wordIn(row, "inputs")];
  const found = known.get(id) ?? sharesIn(shortModel(id, text) ?? goldenModel(wordIn(row, "model"), text), 4096);
  known.set(id, found);
  return found;
};

const SHARE = /^(S1|ST)_(\w+)$/;
const SHARE_ROWS = ofKind("sensitivity").filter((row) => SHARE.test(wordIn(row, "quantity")));

/** The place of the named input. */
const placeOf = (row: GoldenCells, name: string): number => {
  const numbered = /^x(\d)$/.exec(name);
  if (numbered !== null) return Number(numbered[1]) - 1;
  return wordIn(row, "inputs")
    .split(";")
    .findIndex((part) => part.trim().startsWith(`${name}=`));
};

describe("Shares in the variance", () => {
  test("are compared on all rows", () => expect(SHARE_ROWS.length).toBeGreaterThan(25));

  test.each(SHARE_ROWS.map((row) => [`${wordIn(row, "id")} ${wordIn(row, "quantity")}`, row] as const))(
    "%s agrees with the analytic value",
    (_, row) => {
      const [, which = "", name = ""] = SHARE.exec(wordIn(row, "quantity")) ?? [];
      const share = sharesOfRow(row)[placeOf(row, name)];
      const got = which === "S1" ? share?.firstOrder : share?.total;
      expect(Math.abs((got ?? NaN) - numberIn(row, "value")), `got ${got}`).toBeLessThan(0.01);
    },
  );

  test("are none where nothing varies", () => expect(sharesOf([{ first: 1, second: 1, mixed: [1] }])).toEqual([]));
});

describe("Rank correlation", () => {
  test.each(ofKind("rank_correlation").map((row) => [wordIn(row, "inputs"), row] as const))(
    "of normal pairs with %s is 6/π·asin(r/2)",
    (_, row) => {
      const r = Number(/r=(-?[\d.]+)/.exec(wordIn(row, "inputs"))?.[1]);
      const pairs = Array.from({ length: 4096 }, (_each, run) =>
        [0, 1].map((dimension) => normalQuantile(sobolAt(run, dimension))),
      ) as [number, number][];
      const [x, y] = [pairs.map(([a]) => a), pairs.map(([a, b]) => r * a + Math.sqrt(1 - r * r) * b)];
      expect(Math.abs(rankCorrelation(x, y) - numberIn(row, "value"))).toBeLessThan(0.003);
    },
  );

  test("gives equal values the mean of their places, and is 0 where nothing varies", () => {
    // By hand: places 1, 2.5, 2.5, 4 beside 1, 2, 3, 4: 4.5 / √(4.5 · 5).
    expect(rankCorrelation([1, 2, 2, 3], [1, 2, 3, 4])).toBeCloseTo(4.5 / Math.sqrt(22.5), 12);
    expect(rankCorrelation([1, 2, 3], [7, 7, 7])).toBe(0);
    expect(rankCorrelation([1, 2, 3], [1, Infinity, Infinity])).toBeGreaterThan(0.8);
  });
});

describe("Even points", () => {
  test.each(ofKind("sobol_point").map((row) => [wordIn(row, "inputs"), row] as const))(
    "at %s are those of Joe and Kuo's numbers",
    (text, row) => {
      const [, point = "", dimension = ""] = /point=(\d+); dimension=(\d+)/.exec(text) ?? [];
      expect(sobolAt(Number(point), Number(dimension) - 1, 0)).toBeCloseTo(numberIn(row, "value"), 8);
    },
  );

  test("of a power of two, plain or scrambled, have one in each equal part of every dimension", () => {
    for (const seed of [0, 1])
      for (let dimension = 0; dimension < SOBOL_DIMENSIONS; dimension++) {
        const parts = new Set(Array.from({ length: 256 }, (_, run) => Math.floor(256 * sobolAt(run, dimension, seed))));
        expect(parts.size, `dimension ${dimension}`).toBe(256);
      }
  });

  test("are scrambled alike for one seed, otherwise for another, and never at an end", () => {
    expect(sobolAt(0, 0)).toBe(sobolAt(0, 0));
    expect(sobolAt(0, 0, 2)).not.toBe(sobolAt(0, 0));
    expect(sobolAt(0, 3)).toBeGreaterThan(0);
    expect(sobolAt(0, 3)).toBeLessThan(1);
  });
});
