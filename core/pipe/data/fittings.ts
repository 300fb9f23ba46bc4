/**
 * Loss constants of fittings. Three constants: R. Darby, as in Silverberg & Darby, Chem. Eng. 106 (July 1999) 101;
 * K = K1/Re + Ki (1 + Kd/NPS^0.3). Two constants: W. B. Hooper, Chem. Eng. (24 August 1981) 97; K = K1/Re + Kinf (1 + 1/ID).
 * NPS and ID in inches. Screwed rows serve for PVC socket fittings, whose turns are as sharp; they reproduce PVC tables of
 * equivalent length where the flanged rows read a third low. The three-way valve is a plug valve's branch, from memory.
 */
export interface FittingConstants {
  readonly fitting: string;
  readonly three?: readonly [k1: number, ki: number, kd: number];
  readonly two?: readonly [k1: number, kInf: number];
  /** A constant loss coefficient, where the methods have none of their own. */
  readonly constant?: number;
}

export const FITTINGS = [
  { fitting: "elbow 90", three: [800, 0.14, 4], two: [800, 0.4] },
  { fitting: "elbow 45", three: [500, 0.071, 4.2], two: [500, 0.2] },
  { fitting: "tee run", three: [200, 0.091, 4], two: [200, 0.1] },
  { fitting: "tee branch", three: [500, 0.274, 4], two: [500, 0.7] },
  { fitting: "coupling", constant: 0.04 },
  { fitting: "union", constant: 0.04 },
  { fitting: "reducer" },
  { fitting: "ball valve", three: [300, 0.017, 3.5], two: [500, 0.15] },
  { fitting: "gate valve", three: [300, 0.037, 3.9], two: [300, 0.1] },
  { fitting: "swing check", three: [1500, 0.46, 4], two: [1500, 1.5] },
  { fitting: "three-way valve", three: [500, 0.41, 4] },
  { fitting: "entrance", constant: 0.5 },
  { fitting: "exit", constant: 1 },
] as const satisfies readonly FittingConstants[];

export type Fitting = (typeof FITTINGS)[number]["fitting"];

/** Nominal sizes of the table of equivalent lengths. */
export const EQUIVALENT_SIZES: readonly string[] = ["1-1/2 in", "2 in", "2-1/2 in", "3 in", "4 in"];

/** Equivalent length of PVC fittings, ft; first of three tables as printed in plastics manuals. Tables differ up to 3 times. */
export const EQUIVALENT_LENGTHS: Readonly<Partial<Record<Fitting, readonly number[]>>> = {
  "elbow 90": [4, 5.7, 6.9, 7.9, 12],
  "elbow 45": [2.1, 2.6, 3.1, 4, 5.1],
  "tee run": [2.7, 4.3, 5.1, 6.2, 8.3],
  "tee branch": [8, 12, 15, 16, 22],
  "gate valve": [1, 1.5, 2, 3, 3],
};
