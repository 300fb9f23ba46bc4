/** One stage of a machine: what it does outdoors, by curves, the maker's rows, or a map. */
import { rowAt, type Capacity, type ListedRows, type StageInputs } from "../../cycle/machine/description";
import { outdoorBalanceOf } from "../../exchanger/balance/balance";
import type { CoolingMachine } from "../../exchanger/balance/compressor";
import { valueError } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { quantityMark } from "../../kernel/values/quantityMark";
import { cubicAt, monotoneCubic } from "../../numeric/monotoneCubic";
import { performanceAtOutdoor, RATED_OUTDOOR } from "../../cycle/machine/outdoorRating";
import { stageAtOutdoor, type StageCurve } from "../stagePerformance";

/** The machine at its rating: net cooling and power of all of it with its fans, W; dew temperatures, K. */
export interface Rating {
  readonly cooling: number;
  readonly power: number;
  readonly outdoorFan: number;
  readonly indoorFan: number;
  readonly refrigerant: string;
  readonly evaporating: number;
  readonly condensing: number;
  readonly wetBulb: number;
  readonly superheat: number;
  readonly subcooling: number;
}

/** What describes a machine, in base units. */
export interface MachineInputs extends StageInputs {
  readonly ratedCooling: number | undefined;
  readonly ratedPower: number | undefined;
  readonly outdoorFan: number;
  readonly indoorFan: number;
  readonly refrigerant: string;
  readonly ratedEvaporating: number;
  readonly ratedCondensing: number;
  readonly indoorWetBulb: number;
  readonly leastCondensing: number;
}

/** One stage, or one end of the speeds. */
export interface Stage {
  readonly rating: Rating;
  /** Outdoor temperatures that its data cover, K. */
  readonly from: number;
  readonly to: number;
  /** Net cooling and power of the whole machine at an outdoor temperature within them, W. */
  readonly outdoors: (outdoor: number) => Capacity;
  /** The maker's rows, or the compressor of a map, where it is given by them. */
  readonly rows?: ListedRows;
  readonly compressor?: CoolingMachine;
}

/** Outdoor temperatures of the published curves, K. */
const [CURVE_FROM, CURVE_TO] = [291.483, 319.261];

/** Superheat and subcooling at the rating where they aren't given, K. */
export const USUAL_DIFFERENCE = us("temperature difference", 10);

function checkBothFans(fans: number, power: number): void {
  if (!(fans < power))
    throw valueError(
      `inputs: both fans must take less than rated power, ${quantityMark("electric power", power)}, got ${quantityMark("electric power", fans)}`,
    );
}

export type Fans = Readonly<Record<"outdoorFan" | "indoorFan", number>>;
export type Dews = Readonly<Record<"evaporating" | "condensing", number>>;

export function ratingWith(inputs: MachineInputs, { cooling, power }: Capacity, fans: Fans, dews: Dews): Rating {
  checkBothFans(fans.outdoorFan + fans.indoorFan, power);
  return {
    cooling,
    power,
    ...fans,
    refrigerant: inputs.refrigerant,
    ...dews,
    wetBulb: inputs.indoorWetBulb,
    superheat: USUAL_DIFFERENCE,
    subcooling: USUAL_DIFFERENCE,
  };
}

/** A stage by published curves. */
export const curveStage = (rating: Rating, curve: StageCurve | undefined): Stage => ({
  rating,
  from: CURVE_FROM,
  to: CURVE_TO,
  outdoors: (outdoor) =>
    curve === undefined
      ? performanceAtOutdoor(rating, outdoor, rating.wetBulb)
      : stageAtOutdoor(curve, rating, outdoor, rating.wetBulb),
});

export const tableStage = (rating: Rating, rows: ListedRows): Stage => ({
  rating,
  from: rows.outdoor[0] ?? 0,
  to: rows.outdoor.at(-1) ?? 0,
  outdoors: (outdoor) => rowAt(rows, outdoor),
  rows,
});

/** Balances outdoors that the curve of a mapped machine joins. */
const OUTDOOR_BALANCES = 13;

export function mapStage(rating: Rating, compressor: CoolingMachine, leastCondensing: number): Stage {
  const outdoors = Array.from(
    { length: OUTDOOR_BALANCES },
    (_, i) => CURVE_FROM + (i * (CURVE_TO - CURVE_FROM)) / (OUTDOOR_BALANCES - 1),
  );
  const found = outdoors.map((T) =>
    outdoorBalanceOf(compressor, { ratedOutdoor: RATED_OUTDOOR }, T, rating.wetBulb, leastCondensing),
  );
  const curve = (of: (state: (typeof found)[number]) => number) => monotoneCubic(outdoors, found.map(of));
  const cooling = curve((state) => state.cooling - rating.indoorFan);
  const power = curve((state) => state.power + rating.outdoorFan + rating.indoorFan);
  return {
    rating,
    from: CURVE_FROM,
    to: CURVE_TO,
    outdoors: (outdoor) => ({ cooling: cubicAt(cooling, outdoor), power: cubicAt(power, outdoor) }),
    compressor,
  };
}
