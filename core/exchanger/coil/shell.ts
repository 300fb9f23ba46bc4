/** A helical coil in its shell: its fit, and the water flow past it. */
import { valueError } from "../../kernel/values/fault";
import type { Trace } from "../../kernel/define/steps";
import { quantityMark } from "../../kernel/values/quantityMark";
import { frictionFactor } from "../../pipe/straight/friction";
import {
  coilHeight,
  freeArea,
  hydraulicDiameter,
  portsDrop,
  shellDrop,
  shellVelocity,
  turnsDrop,
  turnsOf,
} from "./geometryEquations";
import { crossReynolds } from "../film/outsideEquations";
import { waterAt } from "./zone";

/** Lengths and diameters in m; fouling in m²·K/W, each on its own area; W/(m·K). */
export interface CoilGeometry {
  readonly outsideDiameter: number;
  readonly wall: number;
  readonly conductivity: number;
  readonly tubes: number;
  /** Of one tube. */
  readonly tubeLength: number;
  readonly coilDiameter: number;
  readonly pitch: number;
  readonly shellDiameter: number;
  /** A closed body in the middle of the shell; 0 where the coil's core is open. */
  readonly coreDiameter: number;
  /** Of the shell's two water ports. */
  readonly portBore?: number | undefined;
  readonly insideFouling: number;
  readonly outsideFouling: number;
}

const D = (value: number): string => quantityMark("diameter", value);

/** Refuses a coil that doesn't fit its shell. */
export const checkGeometry = (coil: CoilGeometry): void => {
  const { outsideDiameter: Do, wall, coilDiameter, shellDiameter, coreDiameter, pitch } = coil;
  if (2 * wall >= Do) throw valueError(`wall: must be below half of outside diameter (${D(Do / 2)}), got ${D(wall)}`);
  if (pitch < Do)
    throw valueError(`pitch: must be at least outside diameter (${D(Do)}), or turns overlap, got ${D(pitch)}`);
  if (shellDiameter <= coilDiameter + Do)
    throw valueError(
      `shell diameter: must be above coil diameter and tube together (${D(coilDiameter + Do)}), got ${D(shellDiameter)}`,
    );
  if (coreDiameter >= coilDiameter - Do)
    throw valueError(
      `core diameter: must be below coil diameter less tube (${D(coilDiameter - Do)}), got ${D(coreDiameter)}`,
    );
};

/** Velocity and friction of the water. */
export const shellSide = (coil: CoilGeometry, waterFlow: number, T: number, trace: Trace) => {
  const { outsideDiameter: Do, tubes: N, tubeLength: L, coilDiameter: Dc, shellDiameter: Ds, coreDiameter: Dk } = coil;
  const A = trace.step(freeArea, { Ds, Dk, Dc, Do });
  const v = trace.step(shellVelocity, { V: waterFlow, A });
  const n = trace.step(turnsOf, { L, Dc, N, p: coil.pitch });
  const H = trace.step(coilHeight, { n, N, p: coil.pitch });
  const Dh = trace.step(hydraulicDiameter, { Ds, Dk, H, Do, L, N });
  const { rho, mu } = waterAt(T);
  const f = frictionFactor(trace.step(crossReynolds, { rho, v, D: Dh, mu }), 0, Dh, trace);
  const drop = trace.step(shellDrop, { f, H, Dh, rho, v });
  const { portBore: D } = coil;
  if (D === undefined) return { velocity: v, height: H, drop, wholeDrop: undefined };
  const wholeDrop = drop + trace.step(turnsDrop, { n, N, rho, v }) + trace.step(portsDrop, { rho, V: waterFlow, D });
  return { velocity: v, height: H, drop, wholeDrop };
};
