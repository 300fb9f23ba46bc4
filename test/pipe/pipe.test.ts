import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { PVC_PIPE } from "../../core/pipe/data/pvcPipe";
import { FITTINGS } from "../../core/pipe/data/fittings";
import { suctionHead } from "../../core/pipe/equations";
import { threeConstant, twoConstant } from "../../core/pipe/fitting/equations";
import { boreOf, type Schedule } from "../../core/pipe/straight/bore";
import { fittingLoss, nominalDiameter } from "../../core/pipe/fitting/fittingLoss";
import { PVC_ROUGHNESS, frictionFactor } from "../../core/pipe/straight/friction";
import { headLossOf } from "../../core/pipe/straight/headLoss";
import { smallestSize } from "../../core/pipe/straight/size";
import { cellsIn, numberIn } from "../golden/rows";

const near = (found: number, expected: number, share: number, about: string): void =>
  expect(Math.abs(found / expected - 1), `${about}: ${found} against ${expected}`).toBeLessThanOrEqual(share);

describe("dimensions of PVC pipe", () => {
  test.each(cellsIn("pvc-dimensions.csv").map((row) => [`${row["nominal_in"]} in, ${row["schedule"]}`, row] as const))(
    "the dimensions of %s are as printed",
    (_, row) => {
      const schedule = row["schedule"] as Schedule;
      const size = `${row["nominal_in"]} in`;
      near(boreOf(size, schedule, "minimum wall") * 1000, numberIn(row, "ID_min_wall_mm"), 1e-4, "minimum wall, mm");
      near(boreOf(size, schedule, "average") * 1000, numberIn(row, "ID_average_published_mm"), 1e-4, "average, mm");
    },
  );
});

describe("friction factors", () => {
  const rows = cellsIn("friction.csv");

  test("turbulent friction factors solve Colebrook's relation to 1e-10 of a 40-digit solution", () => {
    const turbulent = rows.filter((row) => row["f_colebrook"] !== "" && numberIn(row, "Re") >= 2040);
    expect(turbulent).toHaveLength(265);
    for (const row of turbulent)
      near(
        frictionFactor(numberIn(row, "Re"), numberIn(row, "rel_roughness_eps_over_D"), 1),
        numberIn(row, "f_colebrook"),
        1e-10,
        `Re ${row["Re"]}`,
      );
  });

  test("laminar friction factors are 64/Re up to Re 2,040", () => {
    const laminar = rows.filter((each) => numberIn(each, "Re") < 2040);
    expect(laminar).toHaveLength(5);
    for (const row of laminar)
      near(frictionFactor(numberIn(row, "Re"), 0, 1), numberIn(row, "f_laminar_64_over_Re"), 1e-12, `Re ${row["Re"]}`);
  });
});

describe("head of a straight run", () => {
  const rows = cellsIn("pipehead.csv");
  const lossOf = (row: (typeof rows)[number], method: "Darcy-Weisbach" | "Hazen-Williams") =>
    headLossOf({
      flow: numberIn(row, "flow_L_s") / 1000,
      size: `${row["nominal_in"]} in`,
      length: 100,
      schedule: row["schedule"] as Schedule,
      water: numberIn(row, "water_degC") + 273.15,
      method,
      bore: "minimum wall",
    });

  test("the head by Darcy and Weisbach agrees with another program within 0.5 %", () => {
    expect(rows.length).toBeGreaterThan(300);
    for (const row of rows)
      near(lossOf(row, "Darcy-Weisbach").head, numberIn(row, "DW_head_m_per_100m"), 5e-3, `${row["nominal_in"]} in`);
  });

  test("the head by Hazen and Williams agrees with the same rounding of the formula within 0.1 %", () => {
    for (const row of rows)
      near(
        lossOf(row, "Hazen-Williams").head,
        numberIn(row, "HW_0.2083_head_ft_per_100ft"),
        1e-3,
        `${row["nominal_in"]} in`,
      );
  });
});

describe("fittings", () => {
  const constantsFor = (name: string): (typeof FITTINGS)[number] | undefined => {
    const names: Readonly<Record<string, string>> = {
      "90 elbow standard, screwed": "elbow 90",
      "45 elbow standard": "elbow 45",
      "tee, run, screwed": "tee run",
      "tee, branch (used as elbow), screwed": "tee branch",
      "gate valve, full line size": "gate valve",
      "check valve, swing": "swing check",
      "ball valve, full line size": "ball valve",
      "ball valve, reduced trim (beta 0.9)": "ball valve",
    };
    return FITTINGS.find(({ fitting }) => fitting === names[name]);
  };

  test.each([
    ["Darby 3-K", 106],
    ["Hooper 2-K", 105],
  ])("coefficients of %s agree with another program", (method, count) => {
    const rows = cellsIn("fittings.csv").filter(
      (row) => row["method"] === method && constantsFor(row["fitting"] ?? ""),
    );
    expect(rows).toHaveLength(count);
    let compared = 0;
    for (const row of rows) {
      const constants = constantsFor(row["fitting"] ?? "");
      const Re = numberIn(row, "Re");
      if (method === "Darby 3-K" && constants && "three" in constants) {
        const [K1, Ki, Kd] = constants.three;
        near(
          threeConstant.code({ K1, Re, Ki, Kd, N: nominalDiameter(`${row["nominal_in"]} in`) }),
          numberIn(row, "K"),
          1e-6,
          row["fitting"] ?? "",
        );
        compared++;
      }
      if (method === "Hooper 2-K" && constants && "two" in constants) {
        const [K1, Kinf] = constants.two;
        near(
          twoConstant.code({ K1, Re, Kinf, D: numberIn(row, "ID_mm") / 1000 }),
          numberIn(row, "K"),
          1e-5,
          row["fitting"] ?? "",
        );
        compared++;
      }
    }
    expect(compared).toBe(count);
  });

  test("fittings lose head in proportion to their number", () => {
    const one = {
      fitting: "elbow 90",
      size: "2 in",
      flow: 0.0025,
      count: 1,
      schedule: "40",
      water: 300,
      method: "three-constant",
      bore: "average",
    } as const;
    expect(fittingLoss({ ...one, count: 7 }).head).toBeCloseTo(7 * fittingLoss(one).head, 12);
  });
});

describe("suction head", () => {
  test("agrees with rows of another program within 0.01 m", () => {
    for (const row of cellsIn("npsh.csv")) {
      const found = suctionHead.code({
        pa: numberIn(row, "P_atm_kPa") * 1000,
        pv: numberIn(row, "P_sat_kPa") * 1000,
        rho: numberIn(row, "density_kg_m3"),
        z: -numberIn(row, "z_water_over_pump_m"),
        hs: numberIn(row, "suction_loss_m"),
      });
      expect(Math.abs(found - numberIn(row, "NPSH_available_m"))).toBeLessThan(1e-5);
    }
  });
});

describe("what holds for every pipe", () => {
  const sizes = fc.constantFrom(...PVC_PIPE.filter(({ schedule }) => schedule === "40").map(({ size }) => size));
  const flows = fc.double({ min: 1e-4, max: 0.03, noNaN: true });
  const run = (flow: number, size: string, length: number) =>
    headLossOf({ flow, size, length, schedule: "40", water: 300, method: "Darcy-Weisbach", bore: "average" });

  test("head rises with flow outside the laminar edge and in proportion to length", () => {
    fc.assert(
      fc.property(sizes, flows, fc.double({ min: 1.01, max: 3, noNaN: true }), (size, flow, more) => {
        const [less, greater] = [run(flow, size, 10), run(flow * more, size, 10)];
        if (less.reynolds > 4000) expect(greater.head).toBeGreaterThan(less.head);
        expect(run(flow, size, 20).head).toBeCloseTo(2 * less.head, 9);
      }),
    );
  });

  test("head falls with the bore", () => {
    fc.assert(
      fc.property(flows, (flow) => {
        const heads = ["1 in", "1-1/2 in", "2 in", "3 in", "4 in"]
          .map((size) => run(flow, size, 10))
          .filter(({ reynolds }) => reynolds > 4000);
        heads.slice(1).forEach(({ head }, place) => expect(head).toBeLessThan(heads[place]?.head ?? 0));
      }),
    );
  });

  test("the chosen size stays within the limit and the next smaller doesn't", () => {
    fc.assert(
      fc.property(flows, fc.double({ min: 0.5, max: 3, noNaN: true }), (flow, limit) => {
        const found = smallestSize(flow, limit, "40", "average");
        const order = PVC_PIPE.filter(({ schedule }) => schedule === "40").map(({ size }) => size);
        const largest = order.at(-1) ?? "";
        expect(found === undefined).toBe(run(flow, largest, 1).velocity > limit);
        if (!found) return;
        expect(found.velocity).toBeLessThanOrEqual(limit);
        const smaller = order[order.indexOf(found.size) - 1];
        if (smaller) expect(run(flow, smaller, 1).velocity).toBeGreaterThan(limit);
      }),
    );
  });

  test("smooth pipe has less friction than PVC, and PVC less than rough pipe", () => {
    fc.assert(
      fc.property(fc.double({ min: 5e3, max: 1e6, noNaN: true }), (re) => {
        const [smooth, pvc, rough] = [0, PVC_ROUGHNESS, 1e-4].map((k) => frictionFactor(re, k, 0.05));
        expect(smooth).toBeLessThan(pvc ?? 0);
        expect(pvc).toBeLessThan(rough ?? 0);
      }),
    );
  });
});
