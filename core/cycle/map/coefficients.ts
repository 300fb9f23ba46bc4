/** Reads the coefficients of a map from a range as data sheets print them. */
import { normalizeKey } from "../../kernel/define/argument";
import { valueError } from "../../kernel/values/fault";
import { describeInput, type CellMatrix, type CellScalar } from "../../kernel/values/cellInput";

const COUNT = 10;

/** A number, also as a text with an exponent; undefined for a heading. */
function numberOf(cell: CellScalar): number | undefined {
  if (typeof cell === "number") return cell;
  if (typeof cell !== "string" || cell.trim() === "") return undefined;
  const value = Number(cell.trim().replace("−", "-"));
  return Number.isFinite(value) ? value : undefined;
}

const transposed = (matrix: CellMatrix): CellScalar[][] =>
  Array.from({ length: Math.max(0, ...matrix.map((line) => line.length)) }, (_, place) =>
    matrix.map((line) => line[place] ?? null),
  );

interface Column {
  readonly head: string;
  readonly values: readonly number[];
}

/** Columns of ten numbers below an optional head; numbering 1 to 10 and texts are passed over. */
function columnsOf(matrix: CellMatrix): readonly Column[] | undefined {
  const columns = transposed(matrix).filter((cells) => cells.some((cell) => numberOf(cell) !== undefined));
  const found = columns.map((cells): Column | undefined => {
    const first = cells.findIndex((cell) => numberOf(cell) !== undefined);
    const values = cells.slice(first).filter((cell) => cell !== null && cell !== "");
    const numbers = values.map(numberOf);
    if (numbers.length !== COUNT || numbers.some((value) => value === undefined)) return undefined;
    const head = cells.slice(0, first).map(String).join(" ");
    return { head: normalizeKey(head), values: numbers as number[] };
  });
  if (found.some((column) => column === undefined)) return undefined;
  const real = (found as Column[]).filter(({ values }) => !values.every((value, place) => value === place + 1));
  return real.length === 2 ? real : undefined;
}

const isFlow = ({ head }: Column): boolean => /flow|lb\/h|kg\/h/.test(head);
const isPower = ({ head }: Column): boolean => /power|watt|input/.test(head);

/** Ten coefficients each of mass flow and power; heads may say which is which, else flow comes first. */
export function coefficientsOf(range: CellMatrix): Readonly<Record<"flow" | "power", readonly number[]>> {
  const [first, second] = columnsOf(range) ?? columnsOf(transposed(range)) ?? [];
  if (first === undefined || second === undefined)
    throw valueError(
      `coefficients: expected two columns or rows of ten numbers, mass flow and power, got ${describeInput(range)}`,
    );
  const [flow, power] = isPower(first) || isFlow(second) ? [second, first] : [first, second];
  return { flow: flow.values, power: power.values };
}
