/** Look-ups in the tables of PVC pipework. */
import { notAvailable } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { silent, type Trace } from "../../kernel/define/steps";
import { quantityMark } from "../../kernel/values/quantityMark";
import { PVC_PIPE } from "../data/pvcPipe";
import {
  CEMENT_BANDS,
  DERATING,
  JOINTS_PER_QUART,
  SUPPORT,
  SUPPORT_TEMPERATURES,
  type CementBand,
} from "../data/plastic";
import { pvcPipe, type Schedule } from "../straight/bore";

const degF = (value: number): number => us("temperature", value);

/** Above this water temperature PVC is not allowed at all, K: 140 °F. */
export const PVC_LIMIT = degF(140);

/** Linear between the table's points; the first value below them. */
const between = (points: readonly (readonly [number, number])[], x: number): number => {
  const next = points.findIndex(([at]) => x <= at);
  const [bx = 0, by = 0] = points[next] ?? points.at(-1) ?? [];
  if (next <= 0) return by;
  const [ax = 0, ay = 0] = points[next - 1] ?? [];
  return ay + ((by - ay) * (x - ax)) / (bx - ax);
};

/** Share of the rating left at a water temperature, K. Refused above 140 °F. */
export const deratingAt = (water: number, trace: Trace = silent): number => {
  if (water > PVC_LIMIT)
    throw notAvailable(
      `water: PVC is not rated above ${quantityMark("temperature", PVC_LIMIT)}, got ${quantityMark("temperature", water)}; use CPVC or metal there`,
    );
  const factor = between(
    DERATING.map(([at, share]) => [degF(at), share]),
    water,
  );
  if (trace.on)
    trace.lookup({
      table: "Temperature derating of PVC",
      row: quantityMark("temperature", water),
      interpolation: "linear between printed temperatures",
      result: { value: factor, kind: "fraction" },
      source: "machinerysHandbook",
    });
  return factor;
};

/** Rating at 73 °F, plain ends, Pa. */
export const ratingAt73 = (size: string, schedule: Schedule, trace: Trace = silent): number => {
  const rating = us("pressure", pvcPipe(size, schedule).rating);
  if (trace.on)
    trace.lookup({
      table: "PVC pipe, rating at 73 °F, plain ends",
      row: `${size}, Schedule ${schedule}`,
      result: { value: rating, kind: "pressure drop" },
      source: "astmD1785",
    });
  return rating;
};

/** Hanger spacing, m. Refused for sizes missing from the table and above 140 °F. */
export const supportSpacing = (size: string, schedule: Schedule, water: number, trace: Trace = silent): number => {
  if (water > PVC_LIMIT) deratingAt(water);
  const row = SUPPORT.find((each) => each.size === size && each.schedule === schedule);
  if (!row) throw notAvailable(`size: the hanger table has no ${size}; use the next smaller size in it`);
  const points = SUPPORT_TEMPERATURES.map((at, place) => [degF(at), us("length", row.spacing[place] ?? 0)] as const);
  const spacing = between(points, water);
  if (trace.on)
    trace.lookup({
      table: "Hanger spacing of PVC pipe",
      row: `${size}, Schedule ${schedule}, ${quantityMark("temperature", water)}`,
      interpolation: "linear between printed temperatures",
      result: { value: spacing, kind: "length" },
      source: "hangerTable",
    });
  return spacing;
};

const inches = (size: string): number => PVC_PIPE.find((each) => each.size === size)?.outside ?? 0;

/** The cement table's band of a nominal size. */
export const cementBand = (size: string): CementBand => {
  const band = CEMENT_BANDS.find(({ to }) => inches(size) <= outsideOf(to));
  if (!band) throw notAvailable(`size: the cement table ends at 8 in, got ${size}`);
  return band;
};

/** Outside diameter of a band's largest size, in. */
const outsideOf = (nominal: number): number => ({ 1.25: 1.66, 3: 3.5, 8: 8.625 })[nominal] ?? 0;

/** Joints per quart of a size, or of the next larger one if missing from the table. */
export const jointsPerQuart = (size: string): { readonly joints: number; readonly row: string } => {
  const found = JOINTS_PER_QUART.find(([name]) => inches(name) >= inches(size));
  if (!found) throw notAvailable(`size: the cement table ends at 8 in, got ${size}`);
  return { joints: found[1], row: found[0] };
};
