/** Golden rows of correlated inputs and of other coverage probabilities, from a cell. */
import { describe, expect, test } from "vitest";
import { normalQuantile } from "../../core/numeric/normal";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";
import { cellsOf, IMPEDANCE, logNormal, normal, type Raw } from "./noteCalls";

const GOLDEN = cellsIn("uncertainty.csv");

interface FromCell {
  readonly call: Raw;
  readonly pair: Raw;
  /** The row's value by that of the cell. */
  readonly of: (cell: number) => number;
}

/** Golden models as calls: a product, a sum and a difference of two numbers. */
const CALLS: Readonly<Record<string, FromCell>> = {
  "product-lognormal-correlated": {
    call: ["POOL.AREA", [logNormal("length", 0.5, 1.6), logNormal("width", 20, 1.2)], "rectangle", "", "", "SI"],
    pair: ["length", "width", 0.6],
    of: (cell) => cell,
  },
  // 15 above the row's inputs, so that no run is below 0.
  "sum-correlated-minus": {
    call: ["AIRCON.REJECTED", [normal("cooling", 20, 3), normal("power", 10, 2)], "", "", 0, "SI"],
    pair: ["cooling", "power", -0.5],
    of: (cell) => cell - 15,
  },
  // A tenth of the row's inputs; W as kW.
  "difference-correlated": {
    call: ["POOL.SURFACELOSS", [normal("water", 30, 1), normal("air", 28.7, 1)], 1, "", "", 1, "SI"],
    pair: ["water", "air", 0.8],
    of: (cell) => 10_000 * cell,
  },
};

const LABELS: Readonly<Record<string, string>> = {
  mean: "mean",
  sd: "standard deviation",
  p10: "P10",
  median: "P50",
  p90: "P90",
  sym_low: "95 % from",
  sym_high: "95 % to",
  short_low: "shortest 95 % from",
  short_high: "shortest 95 % to",
};

describe("Correlated distributions from a cell", () => {
  const rows = GOLDEN.filter((row) => wordIn(row, "id") in CALLS);

  test("are compared on all rows", () => expect(rows.length).toBe(19));

  test.each(rows.map((row) => [`${wordIn(row, "id")} ${wordIn(row, "quantity")}`, row] as const))(
    "%s lies where closed form or quadrature puts it",
    (_, row) => {
      const { call, pair, of } = CALLS[wordIn(row, "id")] as FromCell;
      const cell = cellsOf(...call, "correlations", [pair]).get(LABELS[wordIn(row, "quantity")]);
      const allowed = 4 * numberIn(row, "se_1e5") * Math.sqrt(1e5 / 2048) + numberIn(row, "tolerance");
      expect(Math.abs(of(Number(cell)) - numberIn(row, "value")), String(cell)).toBeLessThanOrEqual(allowed);
    },
  );

  const share = (row: GoldenCells): number => Number(/P=([\d.]+)/.exec(wordIn(row, "inputs"))?.[1]);

  test.each(GOLDEN.filter((row) => wordIn(row, "kind") === "trials").map((row) => [share(row), row] as const))(
    "have the least number of trials and the normal factor of a coverage of %s",
    (P, row) => {
      const percent = `${Math.round(100 * P)} %`;
      const cells = cellsOf(...IMPEDANCE, "coverage", P);
      expect(cells.get(`random trials for ${percent}`)).toBe(numberIn(row, "value"));
      expect(cells.get("coverage factor")).toBeCloseTo(normalQuantile((1 + P) / 2), 9);
      const [from, to] = [cells.get(`${percent} from`), cells.get(`${percent} to`)].map(Number) as [number, number];
      const [low, high] = [cells.get(`GUM ${percent} from`), cells.get(`GUM ${percent} to`)].map(Number) as [
        number,
        number,
      ];
      expect((to - from) / (high - low)).toBeCloseTo(1, 1);
    },
  );
});
