/**
 * A job of the trade from survey to money on the starter sheets: a 4-ton two-stage R-454B machine (invented), a 15 × 30 ft
 * pool, half shaded, in hot and humid Houston. Beside each figure a calculation by hand with its source.
 */
import { describe, expect, test } from "vitest";
import { recoverySizing } from "../../src/sheets/recoverySizing";
import { refrigerantSide } from "../../src/sheets/refrigerantSide";
import { survey } from "../../src/sheets/survey";
import { valuesOf, withInputs } from "./calculated";

/** The data sheet of the machine, invented: at 95 °F outdoors, 67 °F indoor wet bulb. */
const FULL = { cooling: 47_500, power: 3.83, fan: 0.25 };
const LOW = { cooling: 33_500, power: 2.41 };
const LOAD = 36_000;

const SURVEY = {
  "Machine type": "split",
  Stages: "two-stage",
  "Communicating board or thermostat": "yes",
  Refrigerant: "R-454B",
  "Charge on the nameplate": 9,
  "Net cooling at rating": FULL.cooling,
  "Line length, one way": 40,
  "Exchanger above (+) or below (-) the machine": 3,
  "Hot gas line": "3/4 in",
  "Liquid line": "3/8 in",
  "Flow through the suction fittings": 40,
  "Drain cover marked, whole, not expired": "yes",
  "Equipotential bonding present and checked": "yes",
} as const;

const SIZING = {
  Length: 30,
  Width: 15,
  "Shallow depth": 3.5,
  "Deep depth": 5.5,
  Refrigerant: "R-454B",
  "Net cooling at rating": FULL.cooling,
  "Power of the whole machine at rating": FULL.power,
  "Of that the outdoor fan": FULL.fan,
  "Water through the exchanger": 40,
  "Pipe size": "2 in",
  "Machine type": "two stage",
  "Low cooling": LOW.cooling,
  "Low power": LOW.power,
  "Design load": LOAD,
  Shading: 0.5,
} as const;

/** BTU/h in a kilowatt (NIST SP 811). */
const KW = 3412.14;

/** Cooling degree-days above 65 °F of Houston Intercontinental's typical year: about 2,900 (TMY3, by its monthly means and Erbs 1983). */
const DEGREE_DAYS = 2900;

const near = (got: unknown, byHand: number, share: number, what: string): void =>
  expect(Math.abs(Number(got) / byHand - 1), `${what}: ${String(got)}, by hand ${byHand.toPrecision(5)}`).toBeLessThan(
    share,
  );

describe("a two-stage R-454B machine on a half-shaded pool in a hot and humid place", () => {
  test("the survey asks for the maker's written consent and goes on only with it", async () => {
    const asked = await valuesOf(withInputs(survey, SURVEY));
    expect(asked.get("Maker's written consent where a board drives it")).toBe("NOT CHECKED");
    expect(asked.get("Decision")).toBe("NO-GO");
    const refused = await valuesOf(withInputs(survey, { ...SURVEY, "Maker consents to the change": "no" }));
    expect(refused.get("Maker's written consent where a board drives it")).toBe("FAILS");
    expect(refused.get("Decision")).toBe("NO-GO");
    const granted = await valuesOf(withInputs(survey, { ...SURVEY, "Maker consents to the change": "yes" }));
    expect(granted.get("Maker's written consent where a board drives it")).toBe("OK");
    expect(granted.get("Decision")).toBe("GO WITH CONDITIONS");
  });

  test("the gas line carries its oil at full capacity and at the least stage", async () => {
    const found = await valuesOf(
      withInputs(refrigerantSide, {
        Refrigerant: "R-454B",
        "Hot gas line": "3/4 in",
        "Exchanger above (+) or below (-) the machine": 3,
        "Net cooling at full capacity": FULL.cooling,
        "Least stage or speed, share of it": LOW.cooling / FULL.cooling,
        "Length of it": 40,
      }),
    );
    const over = (stage: string) => Number(found.get(`Cooling at ${stage} over it`));
    near(
      over("the least stage"),
      (over("full capacity") * LOW.cooling) / FULL.cooling,
      1e-9,
      "share of the least stage",
    );
    // Friction falls about with the square of the flow, less the column of gas that the rise adds.
    const cost = (stage: string) => Number(found.get(`Hot gas line costs at ${stage}`));
    near(
      cost("the least stage"),
      cost("full capacity") * (LOW.cooling / FULL.cooling) ** 1.8,
      0.1,
      "drop at the least stage",
    );
  });

  test("the sizing sheet agrees with a calculation by hand, from the pool to the money", async () => {
    const found = await valuesOf(withInputs(recoverySizing, SIZING));
    const value = (label: string) => Number(found.get(label));
    // Length × width; mean depth 4.5 ft; 7.4805 gal/ft³.
    near(value("Water surface"), 450, 1e-9, "surface");
    near(value("Volume"), 450 * 4.5 * 7.48052, 1e-4, "volume");
    // Energy balance: cooling and all power but the outdoor fan's.
    const rejected = FULL.cooling + KW * (FULL.power - FULL.fan);
    near(value("Heat rejected at rating"), rejected, 1e-5, "heat rejected");
    // Water at 82 °F: 62.2 lb/ft³ × 0.998 BTU/(lb·°F), so 497.9 BTU/(h·gpm·°F).
    const rise = rejected / (497.9 * 40);
    near(value("Rise of the water"), rise, 2e-3, "rise");
    // Condensing at 100 °F against 82 °F entering: logarithmic mean by its definition.
    const mean = rise / Math.log(18 / (18 - rise));
    near(value("Mean temperature difference"), mean, 2e-3, "mean difference");
    near(value("UA needed"), rejected / mean, 3e-3, "UA");
    near(value("Outside area needed"), rejected / mean / 120, 3e-3, "area");

    // Load: 36,000 BTU/h at 95 °F, none at 65 °F: by degree-days.
    const load = (LOAD * 24 * DEGREE_DAYS) / 30;
    // Low stage at 82 °F by the published low-stage curves: 1.0777 / 0.9991 of the cooling, 0.7897 / 1.0042 of the input ratio.
    const cooling = (LOW.cooling * 1.0777) / 0.9991;
    const power = ((LOW.power * 1.0777) / 0.9991) * (0.7897 / 1.0042);
    // At half load on the mean, starting and stopping costs an eighth (degradation 0.25).
    const COP = (cooling / (KW * power)) * (1 - 0.25 * 0.5);
    near(value("Cooling electricity without"), load / KW / COP, 0.06, "electricity on the outdoor coil");
    const electricity = value("Cooling electricity with");
    near(value("Heat rejected") * 1e6, load + KW * electricity, 0.05, "heat rejected in the year");
    // Gas not burnt at 80 % and 1.40 a therm, electricity at 0.15: the held pool takes a little less heat than the free one.
    const gas = ((value("Back-up heat without recovery") - value("Back-up heat with recovery")) * 10 * 1.4) / 0.8;
    const saved = (value("Cooling electricity without") - electricity) * 0.15;
    near(value("Money saved in the year"), gas + saved, 0.06, "money");
    // The same machine as a single speed: longer at full power, so more heat and more electricity.
    const single = await valuesOf(
      withInputs(recoverySizing, { ...SIZING, "Machine type": "single speed", "Low cooling": "", "Low power": "" }),
    );
    expect(Number(single.get("Cooling electricity without"))).toBeGreaterThan(value("Cooling electricity without"));
    expect(Number(single.get("Heat rejected"))).toBeGreaterThan(value("Heat rejected"));
  });
});
