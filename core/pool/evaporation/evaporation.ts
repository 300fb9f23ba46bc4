/** Evaporation from a pool by the named relations. Plain functions over SI records, cheap enough for every hour of a year. */
import { mend, outside } from "../../kernel/fault";
import { silent, type Trace } from "../../kernel/steps";
import { told } from "../../numeric/told";
import { latentHeatOfWater } from "../../water/models/latentHeat";
import { vapourPressureOfWater } from "../../water/saturation";
import { METHODS } from "../args";
import {
  ashraeIndoor,
  carrier,
  dryAirDensity,
  evaporationRate,
  mcMillan,
  shah,
  smithLofJones,
  vdi2089,
} from "./equations";

export type EvaporationMethod = (typeof METHODS)[number];

export interface EvaporationState {
  /** m² */
  readonly area: number;
  /** K */
  readonly water: number;
  /** K */
  readonly air: number;
  /** Vapour pressure of the air, Pa. */
  readonly vapourPressure: number;
  /** At the water, m/s. */
  readonly wind: number;
  /** Pressure of the air, Pa; read by Shah's densities only. */
  readonly pressure: number;
}

/** Highest wind of Shah's indoor relation, m/s. */
export const SHAH_WIND = 0.15;

/** Relations that the handbook's activity factor belongs to. */
export const takesHandbookFactor = (method: EvaporationMethod): boolean =>
  method === "Carrier" || method === "ASHRAE indoor";

const shahCoefficient = (at: EvaporationState, pw: number, trace: Trace): number => {
  if (at.wind > SHAH_WIND)
    throw outside(
      `wind: method "Shah" holds indoors, to ${told("wind speed", SHAH_WIND)}, got ${told("wind speed", at.wind)}: use an outdoor method`,
    );
  const rhow = trace.step(dryAirDensity, { p: at.pressure, pv: pw, T: at.water });
  const rhor = trace.step(dryAirDensity, { p: at.pressure, pv: at.vapourPressure, T: at.air });
  return trace.step(shah, { rhow, rhor, p: at.pressure, pw, pa: at.vapourPressure });
};

/** Transfer coefficient, kg/(s·m²·Pa): evaporation per difference of vapour pressure, finite where that is 0. `Y` in J/kg. */
export const transferCoefficient = (
  method: EvaporationMethod,
  at: EvaporationState,
  pw: number,
  Y: number,
  trace: Trace = silent,
): number => {
  switch (method) {
    case "Smith-Lof-Jones":
      return trace.step(smithLofJones, { v: at.wind, Y });
    case "Carrier":
      return trace.step(carrier, { v: at.wind, Y });
    case "McMillan":
      return trace.step(mcMillan, { v: at.wind, A: at.area, Y });
    case "ASHRAE indoor":
      return trace.step(ashraeIndoor, {});
    case "VDI 2089":
      return trace.step(vdi2089, { Tw: at.water, Ta: at.air });
    case "Shah":
      return shahCoefficient(at, pw, trace);
  }
};

/** Refuses a handbook factor below 1 beside a relation that was measured on still water. */
export const checkActivity = (method: EvaporationMethod, activity: number): void => {
  if (activity < 1 && !takesHandbookFactor(method))
    throw mend(
      `activity: must be at least 1 with method "${method}", got ${activity}: handbook factors don't apply to a quiet-water relation`,
    );
};

const otherReadings = (method: EvaporationMethod, at: EvaporationState, pw: number, Y: number, trace: Trace): void =>
  trace.within("The other methods at the same inputs, each at its own activity 1", () => {
    for (const other of METHODS.filter((each) => each !== method)) {
      if (other === "Shah" && at.wind > SHAH_WIND) {
        trace.remark(`Shah: not for this wind (indoors only, to ${SHAH_WIND} m/s).`);
        continue;
      }
      trace.within(other, () => {
        const k = transferCoefficient(other, at, pw, Y, trace);
        trace.step(evaporationRate, { A: at.area, a: 1, k, pw, pa: at.vapourPressure });
      });
    }
  });

/** What the factor means beside a method, for the working. */
const activityText = (method: EvaporationMethod, activity: number): string =>
  takesHandbookFactor(method)
    ? `Activity ${activity} is the handbook factor: 0.5 residential, 0.65 condominium, fitness, therapy, 0.8 hotel, 1 busy public or spa, 1.5 and more waves and slides.`
    : `Activity ${activity} is the ratio to the undisturbed surface: 1 at rest, about 1.7 with 15 to 20 swimmers per 1,000 ft².`;

export interface Evaporation {
  /** kg/s */
  readonly rate: number;
  /** J/kg */
  readonly latentHeat: number;
  /** kg/(s·m²·Pa), at activity 1 */
  readonly coefficient: number;
}

/** Evaporation in kg/s, negative where dew settles on the water. */
export const evaporationOf = (
  method: EvaporationMethod,
  activity: number,
  at: EvaporationState,
  trace: Trace = silent,
): Evaporation => {
  const pw = trace.step(vapourPressureOfWater, { T: at.water });
  const latentHeat = latentHeatOfWater(at.water);
  if (trace.on) {
    trace.property({
      substance: "water",
      property: "latent heat",
      at: { water: { value: at.water, kind: "temperature" } },
      gives: { value: latentHeat, kind: "enthalpy" },
      source: "iapwsSr1",
    });
    otherReadings(method, at, pw, latentHeat, trace);
    trace.remark(activityText(method, activity));
    if (method === "McMillan") trace.remark("McMillan's wind is the one at 3 m above the water.");
  }
  const coefficient = transferCoefficient(method, at, pw, latentHeat, trace);
  const rate = trace.step(evaporationRate, { A: at.area, a: activity, k: coefficient, pw, pa: at.vapourPressure });
  return { rate, latentHeat, coefficient };
};
