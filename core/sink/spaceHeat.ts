/** Recovered heat into an air coil or a warm floor. */
import { valueError } from "../kernel/values/fault";
import { silent, type Trace } from "../kernel/define/steps";
import { bracketedRoot } from "../numeric/root";
import { quantityMark } from "../kernel/values/quantityMark";
import { densityOfWater, heatCapacityOfWater } from "../water/equations";
import { capacityRate, coilCapacity, floorBalance, floorHeat, streamAfter } from "./equations";

export const EMITTERS = ["air coil", "floor loop"] as const;

export interface SpaceInputs {
  readonly emitter: (typeof EMITTERS)[number];
  /** W */
  readonly recoveredHeat: number;
  readonly heatNeeded: number;
  /** K */
  readonly supplyWater: number;
  /** m³/s */
  readonly waterFlow: number;
  /** K */
  readonly room: number;
  /** m³/s */
  readonly airFlow: number | undefined;
  readonly effectiveness: number;
  /** m² */
  readonly floorArea: number | undefined;
  /** m²·K/W */
  readonly floorResistance: number;
}

export interface SpaceHeat {
  readonly emitterCapacity: number;
  readonly heatToSpace: number;
  readonly limitedBy: string;
  readonly leavingWater: number;
  readonly supplyAir: number | undefined;
  readonly floorSurface: number | undefined;
}

/** Air as fans are rated: 1.204 kg/m³ (0.0752 lb/ft³), 1006 J/(kg·K). */
const AIR = { rho: 1.204, cp: 1006 } as const;
const FLOOR_EXPONENT = 1.1;
const FLOOR_COEFFICIENT = 8.92;

interface Emitter {
  readonly capacity: number;
  /** Air leaving the coil, or floor surface, K, at a heat in W. */
  readonly at: (heat: number) => number;
}

const coil = (x: SpaceInputs, water: number, trace: Trace): Emitter => {
  if (x.airFlow === undefined) throw valueError("inputs: air flow: is missing: an air coil needs it");
  const air = trace.step(capacityRate, { ...AIR, V: x.airFlow });
  const C = Math.min(air, water);
  return {
    capacity: trace.step(coilCapacity, { e: x.effectiveness, C, Ts: x.supplyWater, Tr: x.room }),
    at: (Q) => trace.step(streamAfter, { T1: x.room, s: 1, Q, C: air }),
  };
};

const floor = (x: SpaceInputs, C: number, trace: Trace): Emitter => {
  const A = x.floorArea;
  if (A === undefined) throw valueError("inputs: floor area: is missing: a floor loop needs it");
  const symbols = { Tr: x.room, R: x.floorResistance, Ts: x.supplyWater, A, C };
  const root = bracketedRoot(
    (Tf) => floorBalance.right({ ...symbols, Tf }) - floorBalance.left({ ...symbols, Tf }),
    x.room,
    x.supplyWater,
  );
  trace.solution({
    unknown: "floor surface",
    kind: "temperature",
    solves: "heat through the floor = heat from its surface",
    bracket: root.bracket,
    iterations: root.iterations,
    residual: root.residual,
    answer: root.x,
  });
  trace.relation(floorBalance, { ...symbols, Tf: root.x });
  return {
    capacity: trace.step(floorHeat, { A, Tf: root.x, Tr: x.room }),
    at: (Q) => x.room + (Q / (FLOOR_COEFFICIENT * A)) ** (1 / FLOOR_EXPONENT),
  };
};

/** The least of heat available, heat needed, and capacity of the emitter. */
export const spaceHeat = (x: SpaceInputs, trace: Trace = silent): SpaceHeat => {
  if (!(x.supplyWater > x.room))
    throw valueError(
      `inputs: supply water: must be above the room's ${quantityMark("temperature", x.room)}, got ${quantityMark("temperature", x.supplyWater)}`,
    );
  const rho = trace.step(densityOfWater, { T: x.supplyWater });
  const cp = trace.step(heatCapacityOfWater, { T: x.supplyWater });
  const water = trace.step(capacityRate, { rho, cp, V: x.waterFlow });
  const emitter = x.emitter === "air coil" ? coil(x, water, trace) : floor(x, water, trace);
  const heatToSpace = Math.min(emitter.capacity, x.recoveredHeat, x.heatNeeded);
  const limitedBy =
    heatToSpace === emitter.capacity
      ? `the ${x.emitter}`
      : heatToSpace === x.recoveredHeat
        ? "the recovered heat"
        : "the need";
  const behind = emitter.at(heatToSpace);
  return {
    emitterCapacity: emitter.capacity,
    heatToSpace,
    limitedBy,
    leavingWater: trace.step(streamAfter, { T1: x.supplyWater, s: -1, Q: heatToSpace, C: water }),
    supplyAir: x.emitter === "air coil" ? behind : undefined,
    floorSurface: x.emitter === "air coil" ? undefined : behind,
  };
};
