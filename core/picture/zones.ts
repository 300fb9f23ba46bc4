/** Temperature against heat passed: refrigerant and water beside each other, with zones and pinch. */
import { ZONE_NAMES } from "../index";
import type { System } from "../kernel/quantity";
import type { Matched } from "../exchanger/models/zones";
import { inUnit, printed, type Picture, type Point, type Stretch } from "./picture";

/** Heat given up from the gas inlet to each point of the refrigerant's curve, W. */
const heats = ({ curve: { enthalpies }, massFlow }: Matched): readonly number[] => {
  const [first = 0] = enthalpies;
  return Array.from(enthalpies, (enthalpy) => massFlow * (first - enthalpy));
};

const nearest = ({ curve: { temperatures }, water }: Matched): number => {
  let least = 0;
  const difference = (at: number): number => (temperatures[at] ?? 0) - (water[at] ?? 0);
  for (let at = 1; at < water.length; at++) if (difference(at) < difference(least)) least = at;
  return least;
};

const stretchesOf = ({ curve }: Matched, x: readonly number[]): readonly Stretch[] => {
  const ends = [0, curve.dewAt, curve.bubbleAt, x.length - 1];
  return ZONE_NAMES.flatMap((label, at) => {
    const [from = 0, to = 0] = [x[ends[at] ?? 0], x[ends[at + 1] ?? 0]];
    return to > from ? [{ from, to, label }] : [];
  });
};

/** Both streams as they pass each other; heat counts from where the gas enters. */
export const zonesPicture = (found: Matched, system: System): Picture => {
  const temperature = inUnit("temperature", system);
  const difference = inUnit("temperature difference", system);
  const heat = inUnit("heat rate", system);
  const x = heats(found).map((watts) => heat.of(watts));
  const line = (kelvins: Float64Array): readonly Point[] =>
    x.map((each, at): Point => [each, temperature.of(kelvins[at] ?? Number.NaN)]);
  const refrigerant = line(found.curve.temperatures);
  const water = line(found.water);
  const pinch = nearest(found);
  const { least, duty } = found.total;
  const told = `${difference.of(least.difference).toFixed(1)} ${difference.unit}`;
  const ends = [0, found.curve.dewAt, found.curve.bubbleAt, x.length - 1];
  const places = ["gas inlet", "dew point", "bubble point", "liquid outlet"];
  const lines = [...ends.map((at, place) => [at, places[place] ?? ""] as const), [pinch, "pinch"] as const];
  return {
    title: "Temperature against heat passed",
    says:
      `Refrigerant and water beside each other over ${String(printed(heat.of(duty)))} ${heat.unit}, from the gas inlet on; ` +
      `they come nearest, ${told}, at the ${least.place}.`,
    x: { label: `heat passed, ${heat.unit}` },
    y: { label: `temperature, ${temperature.unit}` },
    curves: [
      { name: "refrigerant", tone: "first", points: refrigerant },
      { name: "water", tone: "second", dashed: true, points: water },
    ],
    marks: [{ at: water[pinch] ?? [0, 0], label: `pinch ${told}` }],
    stretches: stretchesOf(found, x),
    head: ["place", `heat passed, ${heat.unit}`, `refrigerant, ${temperature.unit}`, `water, ${temperature.unit}`],
    rows: [...lines]
      .sort(([a], [b]) => a - b)
      .map(([at, place]) => [
        place,
        printed(x[at] ?? 0),
        printed(refrigerant[at]?.[1] ?? 0),
        printed(water[at]?.[1] ?? 0),
      ]),
  };
};
