/** The calcite saturation index of pool water at its own temperature and at a warm film. */
import { notAvailable } from "../kernel/values/fault";
import { us } from "../kernel/values/quantity";
import { silent, type Trace } from "../kernel/define/steps";
import { bracketedRoot } from "../numeric/root";
import {
  activityExponent,
  bicarbonate,
  borateAlkalinity,
  cyanurateAlkalinity,
  ionicStrength,
  pK1,
  pK2,
  pKs,
  pKw,
  saturationPh,
  siteIndex,
} from "./scaleEquations";

/** Concentrations in mg/L; hardness and alkalinity as CaCO3. */
export interface PoolWater {
  readonly water: number;
  readonly pH: number;
  readonly calciumHardness: number;
  readonly totalAlkalinity: number;
  readonly cyanuricAcid: number;
  readonly borate: number;
  readonly dissolvedSolids: number;
  readonly salt: number;
}

/** mg of CaCO3 in a mol. */
const CALCITE = 100_087;

interface AtTemperature {
  readonly f: number;
  readonly pK1: number;
  readonly pK2: number;
  readonly pKs: number;
  readonly pKw: number;
  readonly T: number;
}

function constantsAt(T: number, I: number, trace: Trace): AtTemperature {
  return {
    T,
    f: trace.step(activityExponent, { T, I }),
    pK1: trace.step(pK1, { T }),
    pK2: trace.step(pK2, { T }),
    pKs: trace.step(pKs, { T }),
    pKw: trace.step(pKw, { T }),
  };
}

/** Carbonate alkalinity at a pH: the total less that of cyanurate and borate. */
function carbonateOf(water: PoolWater, total: number, { f, T }: AtTemperature, pH: number, trace: Trace): number {
  const cyanurate = trace.step(cyanurateAlkalinity, { CYA: water.cyanuricAcid, f, pH });
  return total - cyanurate - trace.step(borateAlkalinity, { B: water.borate, T, f, pH });
}

interface Carbonate {
  readonly HCO3: number;
  /** All dissolved carbonate, mol/L. */
  readonly all: number;
  readonly index: number;
}

function carbonateAt(
  water: PoolWater,
  total: number,
  Ca: number,
  at: AtTemperature,
  pH: number,
  trace: Trace = silent,
): Carbonate {
  const { f } = at;
  const A = carbonateOf(water, total, at, pH, trace);
  const HCO3 = trace.step(bicarbonate, { A, pH, f, pKw: at.pKw, pK2: at.pK2 });
  const all = HCO3 * (1 + 10 ** (at.pK1 - pH - f) + 10 ** (pH - at.pK2 + 3 * f));
  const index =
    HCO3 > 0 ? pH - trace.step(saturationPh, { pK2: at.pK2, pKs: at.pKs, Ca, HCO3, f }) : Number.NEGATIVE_INFINITY;
  return { HCO3, all, index };
}

/** The pH at which the water holds the given carbonate: closed to the air. */
function closedPh(water: PoolWater, total: number, Ca: number, at: AtTemperature, all: number): number {
  const root = bracketedRoot((pH) => carbonateAt(water, total, Ca, at, pH).all - all, 3, 11.5, { tolerance: 1e-11 });
  if (!root.found)
    throw notAvailable("inputs: no pH holds this alkalinity and carbonate: check pH and total alkalinity");
  return root.x;
}

/** CaCO3 that brings the index to 0 at a temperature, closed; mg/L, + where it precipitates. */
function precipitation(water: PoolWater, at: AtTemperature, all: number): number {
  const { totalAlkalinity: TA, calciumHardness: CH } = water;
  const indexAfter = (x: number): number => {
    const [total, Ca, rest] = [TA - 2 * x * 50_043.5, CH / CALCITE - x, all - x];
    return carbonateAt(water, total, Ca, at, closedPh(water, total, Ca, at, rest)).index;
  };
  const most = 0.999 * Math.min(CH / CALCITE, all, TA / 100_087);
  const above = indexAfter(0) > 0;
  const root = bracketedRoot(indexAfter, above ? 0 : -5e-3, above ? most : 0, { tolerance: 1e-13 });
  if (!root.found) throw notAvailable("inputs: the water is too far from saturation for its precipitation potential");
  return root.x * CALCITE;
}

/** °F and factor of the table used on site. */
const SITE_FACTORS = [
  [32, 0],
  [37, 0.1],
  [46, 0.2],
  [53, 0.3],
  [60, 0.4],
  [66, 0.5],
  [76, 0.6],
  [84, 0.7],
  [94, 0.8],
  [105, 0.9],
  [128, 1],
] as const;

export function siteFactor(T: number): number {
  const next = SITE_FACTORS.findIndex(([at]) => T <= us("temperature", at));
  if (next <= 0) return next === 0 ? 0 : 1;
  const [[a, low] = [0, 0], [b, high] = [0, 0]] = SITE_FACTORS.slice(next - 1, next + 1);
  return low + ((high - low) * (T - us("temperature", a))) / (us("temperature", b) - us("temperature", a));
}

export interface WaterBalance {
  readonly index: number;
  readonly filmIndex: number;
  readonly filmPh: number;
  readonly filmIndexPhHeld: number;
  readonly precipitation: number;
  readonly filmPrecipitation: number;
  readonly siteTable: number;
  readonly carbonateAlkalinity: number;
  readonly balancedPh: number;
}

export function balanceWater(water: PoolWater, film: number, trace: Trace = silent): WaterBalance {
  const { pH, calciumHardness: CH, totalAlkalinity: TA, dissolvedSolids: TDS, salt } = water;
  const I = trace.step(ionicStrength, { TDS, NaCl: salt });
  const Ca = CH / CALCITE;
  const bulk = trace.within("At the water's temperature", () => {
    const at = constantsAt(water.water, I, trace);
    return { at, ...carbonateAt(water, TA, Ca, at, pH, trace) };
  });
  const carbonateAlkalinity = carbonateOf(water, TA, bulk.at, pH, silent);
  if (!(carbonateAlkalinity > 0 && bulk.HCO3 > 0))
    throw notAvailable("inputs: cyanurate and borate take all of the total alkalinity: nothing is left as carbonate");
  const warm = trace.within("At the film, heated closed to the air", () => {
    const at = constantsAt(film, I, trace);
    const filmPh = closedPh(water, TA, Ca, at, bulk.all);
    return { at, filmPh, ...carbonateAt(water, TA, Ca, at, filmPh, trace) };
  });
  const held = saturationPh.code({ pK2: warm.at.pK2, pKs: warm.at.pKs, Ca, HCO3: bulk.HCO3, f: warm.at.f });
  const k = TDS < 1000 ? 12.1 : TDS <= 2000 ? 12.2 : 12.3;
  const counted = TA - water.cyanuricAcid / 3;
  const balanced = bracketedRoot((at) => carbonateAt(water, TA, Ca, bulk.at, at).index, 5.5, 9.5, { tolerance: 1e-9 });
  return {
    index: bulk.index,
    filmIndex: warm.index,
    filmPh: warm.filmPh,
    filmIndexPhHeld: pH - held,
    precipitation: precipitation(water, bulk.at, bulk.all),
    filmPrecipitation: precipitation(water, warm.at, bulk.all),
    siteTable:
      counted > 0
        ? trace.step(siteIndex, { pH, TF: siteFactor(water.water), CH, TA, CYA: water.cyanuricAcid, k })
        : Number.NaN,
    carbonateAlkalinity,
    balancedPh: balanced.x,
  };
}
