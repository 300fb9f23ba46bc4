/** Limits of a mildly flammable charge in a room, and the least room for a charge. */
import { notAvailable, valueError } from "../../kernel/values/fault";
import { quantityMark } from "../../kernel/values/quantityMark";
import { us } from "../../kernel/values/quantity";
import type { Trace } from "../../kernel/define/steps";
import { flammabilityOf, limitRow } from "../../refrigerant/facts";
import type { RoomMethod } from "./args";
import {
  chargeCeiling,
  chargeOfScope,
  chargeWithoutArea,
  leastAreaByFormula,
  leastAreaByVolume,
  leastAreaWithCirculation,
} from "./equations";

const WHERE: Readonly<Record<string, string>> = {
  A1: "not flammable: see concentration limits in ASHRAE 15 or EN 378",
  A3: "highly flammable: see the class 3 clauses of IEC 60335-2-40 annex GG and the local code",
};

/** The standard counts at most 2.2 m of height, which it also prints as 7.2 ft. */
const COUNTED_HEIGHT = 2.2;
const PRINTED_HEIGHT = us("length", 7.2);
const HIGHEST_PLACE = us("altitude", 2000);

/** Tables of manuals begin at m1 rounded to 1.84 kg (R-32: 1.842). */
const ROUNDED_START = 0.998;

export interface RoomOptions {
  readonly method: RoomMethod;
  readonly ceilingHeight: number;
  readonly flammabilityLimit: number | undefined;
  readonly altitude: number;
}

/** What the bounds of the standard take from the flammability limit; kg/m³, m and kg. */
export interface RoomRules {
  readonly method: RoomMethod;
  readonly LFL: number;
  readonly h0: number;
  /** Height that counts with circulation. */
  readonly H: number;
  readonly m1: number;
  readonly m2: number;
  readonly m3: number;
}

const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * b;

function limitOf(refrigerant: string, given: number | undefined, trace: Trace): number {
  const { safetyClass, lower } = flammabilityOf(refrigerant);
  if (safetyClass !== "A2L" || lower === undefined)
    throw notAvailable(
      `refrigerant: ${refrigerant} is class ${safetyClass}, this limit is for class 2L; ${WHERE[safetyClass] ?? ""}`,
    );
  if (given !== undefined) return given;
  trace.lookup({
    table: "Lower flammability limit, the lower one published",
    row: limitRow(refrigerant),
    result: { value: lower, kind: "concentration" },
    source: "iec60335",
  });
  return lower;
}

/** @throws where the standard's clauses don't cover refrigerant, altitude or heights */
export function roomRules(refrigerant: string, h0: number, options: RoomOptions, trace: Trace): RoomRules {
  const { method, ceilingHeight, flammabilityLimit, altitude } = options;
  const LFL = limitOf(refrigerant, flammabilityLimit, trace);
  if (altitude > HIGHEST_PLACE)
    throw notAvailable(
      `altitude: must be at most ${quantityMark("altitude", HIGHEST_PLACE)}, got ${quantityMark("altitude", altitude)}: the factor of thinner air isn't held here`,
    );
  if (h0 > 1.01 * ceilingHeight)
    throw valueError(
      `releaseHeight: must be at most ceilingHeight, ${quantityMark("length", ceilingHeight)}, got ${quantityMark("length", h0)}`,
    );
  return {
    method,
    LFL,
    h0,
    H: ceilingHeight > PRINTED_HEIGHT || same(ceilingHeight, PRINTED_HEIGHT) ? COUNTED_HEIGHT : ceilingHeight,
    m1: trace.step(chargeWithoutArea, { LFL }),
    m2: trace.step(chargeCeiling, { LFL }),
    m3: trace.step(chargeOfScope, { LFL }),
  };
}

const mass = (value: number): string => quantityMark("mass", value);

/** Above the method's band. */
const beyondBand = ({ method, m2, m3 }: RoomRules, m: number) =>
  method === "circulation 0.5"
    ? notAvailable(`charge: must be at most ${mass(m3)} (260 m³ · LFL), got ${mass(m)}: outside the standard`)
    : notAvailable(
        `charge: must be at most ${mass(m2)} (52 m³ · LFL) in an unventilated room, got ${mass(m)}: no room is large enough`,
      );

/** Least floor area for a charge, m²; 0 up to m1. A charge above the method's band is a fault. */
export function leastRoomArea(rules: RoomRules, m: number, trace: Trace): number {
  const { method, LFL, h0, H, m1, m2, m3 } = rules;
  const printed = method === "unventilated as printed";
  if (printed ? m < ROUNDED_START * m1 : m <= m1) {
    return 0;
  }
  if (m > (method === "circulation 0.5" ? m3 : m2)) throw beyondBand(rules, m);
  if (method === "circulation 0.5") return trace.step(leastAreaWithCirculation, { m, LFL, H });
  const byFormula = trace.step(leastAreaByFormula, { m, LFL, h0 });
  return printed ? byFormula : Math.max(byFormula, trace.step(leastAreaByVolume, { m, LFL, h0 }));
}
