/** Overall coefficient of a tube wall with two films and fouling, on the outside area. */
import { valueError } from "../../kernel/values/fault";
import { silent, type Trace } from "../../kernel/define/steps";
import { quantityMark } from "../../kernel/values/quantityMark";
import type { WallMaterial } from "../data/walls";
import { WALLS } from "../data/walls";
import {
  insideDiameter,
  insideFilmResistance,
  insideFoulingResistance,
  outsideFilmResistance,
  overallCoefficient,
  shareOfResistance,
  totalResistance,
  wallResistance,
} from "./equations";

export interface TubeWall {
  /** Film coefficients, W/(m²·K), each on its own side's area. */
  readonly insideFilm: number;
  readonly outsideFilm: number;
  /** m */
  readonly outsideDiameter: number;
  /** Wall thickness, m. */
  readonly wall: number;
  /** W/(m·K) */
  readonly conductivity: number;
  /** Fouling resistances, m²·K/W, each on its own side's area. */
  readonly insideFouling: number;
  readonly outsideFouling: number;
}

/** Conductivity of a wall, W/(m·K): the material's, or the given one. */
export const conductivityOfWall = (material: WallMaterial["material"] | number, trace: Trace = silent): number => {
  if (typeof material === "number") return material;
  const found = WALLS.find((each) => each.material === material);
  if (!found) throw valueError(`material: no conductivity is known for ${material}`);
  trace.lookup({
    table: "Conductivity of tube materials",
    row: found.material,
    result: { value: found.conductivity, kind: "conductivity" },
    source: found.source,
  });
  return found.conductivity;
};

/** Names of the resistances in the order from the inside out. */
const NAMES = {
  Ri: "inside film",
  Rfi: "inside fouling",
  Rw: "wall",
  Rfo: "outside fouling",
  Ro: "outside film",
} as const;

export type Resistances = { readonly [K in keyof typeof NAMES]: number };

/** The greatest of the resistances by name. */
export const governing = (each: Resistances): string => {
  const keys = Object.keys(NAMES) as (keyof Resistances)[];
  return NAMES[keys.reduce((most, key) => (each[key] > each[most] ? key : most))];
};

/** The five resistances on the outside area, m²·K/W. */
export const resistancesOf = (tube: TubeWall, trace: Trace = silent): Resistances => {
  const { outsideDiameter: Do, wall } = tube;
  if (2 * wall >= Do)
    throw valueError(
      `wall: must be below half of outsideDiameter (${quantityMark("diameter", Do / 2)}), got ${quantityMark("diameter", wall)}`,
    );
  const Di = trace.step(insideDiameter, { Do, w: wall });
  return {
    Ri: trace.step(insideFilmResistance, { Do, Di, h: tube.insideFilm }),
    Rfi: trace.step(insideFoulingResistance, { Rf: tube.insideFouling, Do, Di }),
    Rw: trace.step(wallResistance, { Do, Di, k: tube.conductivity }),
    Rfo: tube.outsideFouling,
    Ro: trace.step(outsideFilmResistance, { h: tube.outsideFilm }),
  };
};

/** U on the outside area, W/(m²·K). The working shows each resistance's share and the one that governs. */
export const overallOf = (tube: TubeWall, trace: Trace = silent): number => {
  const each = resistancesOf(tube, trace);
  const Rt = trace.step(totalResistance, each);
  if (trace.on) {
    for (const [key, name] of Object.entries(NAMES) as [keyof Resistances, string][])
      trace.within(`Share of the ${name}`, () => trace.step(shareOfResistance, { R: each[key], Rt }));
    trace.remark(`The ${governing(each)} governs.`);
  }
  return trace.step(overallCoefficient, { Rt });
};
