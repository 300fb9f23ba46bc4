/** What must hold of a sheet's inputs before its checks mean anything: conditions as formula texts, from the lines alone. */
import type { Line } from "./layout";
import type { Validation } from "./sheet";

/** A condition, and the label to show where it doesn't hold. */
export interface InputRule {
  readonly label: string;
  readonly condition: string;
}

const words = (list: readonly string[]): string => `{${list.map((word) => JSON.stringify(word)).join(",")}}`;

type Limits = Exclude<Validation, { readonly list: readonly string[] } | { readonly filled: true }>;

const limits = (cell: string, rule: Limits): readonly string[] => [
  `ISNUMBER(${cell})`,
  ...(rule.above === undefined ? [] : [`${cell}>${rule.above}`]),
  ...(rule.from === undefined ? [] : [`${cell}>=${rule.from}`]),
  ...(rule.to === undefined ? [] : [`${cell}<=${rule.to}`]),
];

const both = (conditions: readonly string[]): string =>
  conditions.length === 1 ? (conditions[0] ?? "TRUE") : `AND(${conditions.join(",")})`;

/** What one cell must hold: its own rule, else a number where it began with one, else anything. */
function conditionOf(
  cell: string,
  content: string | number | boolean,
  rule: Validation | undefined,
): string | undefined {
  const optional = content === "";
  if (rule === undefined) {
    if (optional) return undefined;
    return typeof content === "number" ? `ISNUMBER(${cell})` : `LEN(${cell})>0`;
  }
  if ("filled" in rule) return `LEN(${cell})>0`;
  const held = "list" in rule ? `ISNUMBER(MATCH(${cell}&"",${words(rule.list)},0))` : both(limits(cell, rule));
  return optional ? `IF(LEN(${cell})=0,TRUE,${held})` : held;
}

/** The cells of a line that a user fills in, by column. */
const typedCells = (
  line: Line,
): readonly (readonly [column: string, Pick<Line, "validation"> & { content: string | number | boolean }])[] => [
  ...(line.style === "Input" && line.value !== undefined
    ? [["B", { content: line.value, ...(line.validation && { validation: line.validation }) }] as const]
    : []),
  ...Object.entries(line.extra ?? {}).flatMap(([column, { style, content, validation }]) =>
    style === "Input" ? [[column, { content, ...(validation && { validation }) }] as const] : [],
  ),
];

/** A line of a list: blank as a whole, or filled in as it began. */
function listRule(key: string, conditions: readonly string[], columns: readonly string[]): string {
  const [first = "B", last = first] = [columns.find((column) => column !== "A"), columns.at(-1)];
  return `IF(LEN([${key}@A])=0,SUMPRODUCT(--(LEN([${key}@${first}]:[${key}@${last}])>0))=0,${both(conditions)})`;
}

function ruleOf(line: Line): InputRule | undefined {
  const { key } = line;
  const cells = typedCells(line);
  if (key === undefined || cells.length === 0) return undefined;
  const numbers = cells.filter(([, { content, validation }]) => typeof content === "number" && !validation);
  const others = cells.filter((cell) => !numbers.includes(cell));
  const conditions = [
    ...(numbers.length === 0
      ? []
      : [`COUNT(${numbers.map(([column]) => `[${key}@${column}]`).join(",")})=${numbers.length}`]),
    ...others.flatMap(
      ([column, { content, validation }]) => conditionOf(`[${key}@${column}]`, content, validation) ?? [],
    ),
  ];
  if (conditions.length === 0) return undefined;
  const columns = cells.map(([column]) => column);
  const inList = columns.includes("A");
  return {
    label: line.label === "" ? String(line.extra?.["A"]?.content ?? key) : line.label,
    condition: inList ? listRule(key, conditions, columns) : both(conditions),
  };
}

/** The rules of all lines that ask for something. */
export const inputRules = (lines: readonly Line[]): readonly InputRule[] => lines.flatMap((line) => ruleOf(line) ?? []);
