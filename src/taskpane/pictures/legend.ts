/** What the lines and bars of a picture mean. */
import type { Picture, Tone } from "../../../core/pictures";

export interface LegendEntry {
  readonly name: string;
  readonly tone: Tone;
  readonly look: "line" | "dashed" | "bar";
}

/** A sample beside each name; none if there is only one entry. */
export function legendOf({ curves, stacks = [], groups = [] }: Picture): readonly LegendEntry[] {
  const lines = curves.filter(({ tone }) => tone !== "outline");
  const entries = [
    ...lines.map(({ name, tone, dashed }) => ({ name, tone, look: dashed === true ? "dashed" : "line" }) as const),
    ...[...stacks, ...groups].map(({ name, tone }) => ({ name, tone, look: "bar" }) as const),
  ];
  return entries.length < 2 ? [] : entries;
}
