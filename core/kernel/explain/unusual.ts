/** Notices about arguments outside what is usual: by their own range, else by what is usual of their kind. */
import { kindOf } from "../call/admit";
import type { AdmittedCall } from "../call/evaluate";
import { labelOf, type ArgData, type Limits } from "../define/argument";
import type { RaisedCaution } from "../define/caution";
import { gaugeZero } from "../define/pressureBasis";
import { showBriefly, type KindName } from "../values/quantity";
import { usualSize } from "../values/usual";

type Values = Readonly<Record<string, unknown>>;
type Entries = readonly (readonly [string, ArgData])[];

/** Share of a bound by which rounding of units may miss it. */
const ROUNDING = 1e-9;

const usualRange = ({ usual, from, above }: Limits, kind: KindName): readonly [number, number] => {
  if (usual !== undefined) return usual;
  const size = usualSize(kind);
  return [Math.max(from ?? above ?? -size, -size), size];
};

/** A reading is absolute by now; what is usual is what the gauge shows. */
const asRead = (value: number, isReading: boolean, call: AdmittedCall): number =>
  isReading ? value - gaugeZero(call.values["basis"]) : value;

const noticesOf = (label: string, { shape }: ArgData, value: unknown, before: Values, call: AdmittedCall) => {
  const limits = shape.type === "either" ? shape.quantity : shape;
  if (limits.type !== "quantity" && limits.type !== "several") return [];
  const kind = kindOf(limits.kind, before);
  const [least, most] = usualRange(limits, kind);
  const isReading = limits.type === "quantity" && limits.reading === true;
  return [value].flat().flatMap((each): RaisedCaution[] => {
    if (typeof each !== "number") return [];
    const read = asRead(each, isReading, call);
    const rounding = ROUNDING * Math.abs(each);
    if (read >= least - rounding && read <= most + rounding) return [];
    const text = `${label}: ${showBriefly(read, kind, call.system)} is outside the usual ${showBriefly(least, kind, call.system)} to ${showBriefly(most, kind, call.system)}; check value and unit.`;
    return [{ code: "UNUSUAL-INPUT", severity: "Notice", text }];
  });
};

/** One notice a column: its first. */
const inRows = (name: string, columns: Entries, rows: readonly Values[], call: AdmittedCall): RaisedCaution[] =>
  columns.flatMap(([key, arg]) =>
    rows.flatMap((row) => noticesOf(`${labelOf(name)}, ${labelOf(key)}`, arg, row[key], row, call)).slice(0, 1),
  );

const headOf = ({ text }: RaisedCaution): string => text.split(":")[0] ?? "";

/** Notices that no rule of the function's own has raised about the same argument. */
export function besides(rules: readonly RaisedCaution[], notices: readonly RaisedCaution[]): readonly RaisedCaution[] {
  const own = rules.filter(({ code }) => code === "UNUSUAL-INPUT").map(headOf);
  return notices.filter((each) => !own.some((head) => headOf(each).endsWith(head)));
}

/** Arguments outside what is usual raise a notice each. */
export function unusual(call: AdmittedCall, entries: Entries, values: Values): readonly RaisedCaution[] {
  return entries.flatMap(([name, arg]) => {
    const { shape } = arg;
    const value = values[name];
    if ((shape.type === "block" || shape.type === "rows") && value === undefined) return [];
    if (shape.type === "block") return unusual(call, Object.entries(shape.entries), value as Values);
    if (shape.type === "rows") return inRows(name, Object.entries(shape.columns), value as readonly Values[], call);
    return noticesOf(labelOf(name), arg, value, values, call);
  });
}
