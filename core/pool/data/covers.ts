/**
 * Pool covers. `evaporation`: share of the evaporation cut while in place (Cal Poly 2016; liquid: middle of 14.4 to
 * 15.8 %). `sun`: points off the share of the sun absorbed (US DOE / NREL: transparent 5 to 15, opaque 20 to 40, middle).
 */
export interface CoverRow {
  readonly kind: string;
  readonly evaporation: number;
  readonly sun: number;
}

export const COVERS = [
  { kind: "none", evaporation: 0, sun: 0 },
  { kind: "foam", evaporation: 0.959, sun: 0.3 },
  { kind: "bubble", evaporation: 0.949, sun: 0.1 },
  { kind: "solid", evaporation: 0.939, sun: 0.3 },
  { kind: "disks", evaporation: 0.501, sun: 0.1 },
  { kind: "liquid", evaporation: 0.151, sun: 0 },
] as const satisfies readonly CoverRow[];

export type CoverKind = (typeof COVERS)[number]["kind"];

export const COVER_KINDS = ["none", "foam", "bubble", "solid", "disks", "liquid"] as const;

export const coverOf = (kind: CoverKind): CoverRow => COVERS.find((each) => each.kind === kind) ?? COVERS[0];
