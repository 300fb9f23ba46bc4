/** The schematic of a loop: what the water flows through, in its order, as data. */
import { loopLines } from "../index";
import type { LoopItem, LoopLine, Side } from "../pipe/network/loop";
import type { LoopFlow } from "../pipe/network/loopWater";
import type { System } from "../kernel/values/quantity";
import { symbolNamed, type Scheme, type SchemePart, type SchemeSymbol } from "./schemeParts";
import { inUnit, roundedForTable, type InUnit } from "./picture";

interface Row {
  readonly item: LoopItem;
  readonly line: LoopLine;
}

function symbolOf({ what, loss, flowCoefficient }: LoopItem): SchemeSymbol {
  const named = symbolNamed(what);
  if (named !== undefined) return named;
  return loss === undefined && flowCoefficient === undefined ? "run" : "part";
}

interface Units {
  readonly head: InUnit;
  readonly velocity: InUnit;
  readonly length: InUnit;
  readonly flow: InUnit;
  readonly temperature: InUnit;
}

const shown = ({ of, unit }: InUnit, base: number, digits: number): string => `${of(base).toFixed(digits)} ${unit}`;

function nameOf({ item }: Row, { length }: Units): string {
  const { what, lengthOrCount } = item;
  if (lengthOrCount === undefined) return what;
  if (what.trim().toLowerCase() === "pipe") return `${shown(length, lengthOrCount, 0)} ${what}`;
  return lengthOrCount === 1 ? what : `${String(lengthOrCount)} × ${what}`;
}

/** One symbol for a part, or for neighbours of pipe and fittings together. */
function partOf(rows: readonly Row[], symbol: SchemeSymbol, units: Units): SchemePart {
  const sizes = [...new Set(rows.flatMap(({ line }) => (line.size === "" ? [] : [line.size])))];
  const speeds = rows.flatMap(({ line }) => (line.velocity === "" ? [] : [line.velocity]));
  const head = rows.reduce((sum, { line }) => sum + line.head, 0);
  return {
    symbol,
    name: rows.map((row) => nameOf(row, units)).join(", "),
    details: [
      ...sizes,
      shown(units.head, head, 1),
      ...(speeds.length === 0 ? [] : [shown(units.velocity, Math.max(...speeds), 1)]),
    ],
  };
}

function partsOf(rows: readonly Row[], units: Units): readonly SchemePart[] {
  const groups: { symbol: SchemeSymbol; rows: Row[] }[] = [];
  for (const row of rows) {
    const symbol = symbolOf(row.item);
    const last = groups.at(-1);
    if (symbol === "run" && last?.symbol === "run") last.rows.push(row);
    else groups.push({ symbol, rows: [row] });
  }
  return groups.map(({ symbol, rows: some }) => partOf(some, symbol, units));
}

const sentence = (side: string, parts: readonly SchemePart[]): string =>
  parts.length === 0
    ? ""
    : ` ${side}: ${parts.map(({ name, details }) => `${name} (${details.join(", ")})`).join("; ")}.`;

/** The loop of PIPE.LOOP. The pump is between the two sides, unless a row is one. */
export function loopScheme(items: readonly LoopItem[], at: LoopFlow, system: System): Scheme {
  const units: Units = {
    head: inUnit("head", system),
    velocity: inUnit("velocity", system),
    length: inUnit("length", system),
    flow: inUnit("water flow", system),
    temperature: inUnit("temperature", system),
  };
  const lines = loopLines(items, at);
  const rows = items.flatMap((item, place): Row[] => {
    const line = lines[place];
    return line === undefined ? [] : [{ item, line }];
  });
  const of = (side: Side): readonly SchemePart[] =>
    partsOf(
      rows.filter(({ item }) => item.side === side),
      units,
    );
  const [suction, back] = [of("suction"), of("return")];
  const total = shown(units.head, lines.at(-1)?.head ?? 0, 1);
  const state = [shown(units.flow, at.flow, 1), shown(units.temperature, at.water, 0)];
  const hasPump = [...suction, ...back].some(({ symbol }) => symbol === "pump");
  const pump: SchemePart = { symbol: "pump", name: "pump", details: [`${total} in all`] };
  return {
    title: "Schematic of the loop",
    description: `The loop from the pool and back, ${state.join(" at ")}, ${total} in all.${sentence("Suction", suction)}${sentence("Return", back)}`,
    parts: [{ symbol: "pool", name: "pool", details: state }, ...suction, ...(hasPump ? [] : [pump]), ...back],
    head: ["part", "size", "side", `head, ${units.head.unit}`, `velocity, ${units.velocity.unit}`],
    rows: rows.map(({ line: { what, size, side, head, velocity } }) => [
      what,
      size,
      side,
      roundedForTable(units.head.of(head)),
      velocity === "" ? "" : roundedForTable(units.velocity.of(velocity)),
    ]),
  };
}
