/** Temperature against heat transferred: refrigerant and water together, with zones and pinch. */
import { ZONE_NAMES } from "../index";
import type { System } from "../kernel/values/quantity";
import type { StreamMatch } from "../exchanger/zones/zones";
import { inUnit, roundedForTable, type Picture, type PicturePoint, type Stretch } from "./picture";

/** Heat given up from the gas inlet to each point of the refrigerant's curve, W. */
const heats = ({ curve: { enthalpies }, massFlow }: StreamMatch): readonly number[] => {
  const [first = 0] = enthalpies;
  return Array.from(enthalpies, (enthalpy) => massFlow * (first - enthalpy));
};

const nearest = ({ curve: { temperatures }, water }: StreamMatch): number => {
  let least = 0;
  const difference = (at: number): number => (temperatures[at] ?? 0) - (water[at] ?? 0);
  for (let at = 1; at < water.length; at++) if (difference(at) < difference(least)) least = at;
  return least;
};

const stretchesOf = ({ curve }: StreamMatch, x: readonly number[]): readonly Stretch[] => {
  const ends = [0, curve.dewAt, curve.bubbleAt, x.length - 1];
  return ZONE_NAMES.flatMap((label, at) => {
    const [from = 0, to = 0] = [x[ends[at] ?? 0], x[ends[at + 1] ?? 0]];
    return to > from ? [{ from, to, label }] : [];
  });
};

/** Both streams along the exchanger; heat counts from the gas inlet. */
export const zonesPicture = (found: StreamMatch, system: System): Picture => {
  const temperature = inUnit("temperature", system);
  const difference = inUnit("temperature difference", system);
  const heat = inUnit("heat rate", system);
  const x = heats(found).map((watts) => heat.of(watts));
  const line = (kelvins: Float64Array): readonly PicturePoint[] =>
    x.map((each, at): PicturePoint => [each, temperature.of(kelvins[at] ?? Number.NaN)]);
  const refrigerant = line(found.curve.temperatures);
  const water = line(found.water);
  const pinch = nearest(found);
  const { least, duty } = found.total;
  const pinchText = `${difference.of(least.difference).toFixed(1)} ${difference.unit}`;
  const ends = [0, found.curve.dewAt, found.curve.bubbleAt, x.length - 1];
  const places = ["gas inlet", "dew point", "bubble point", "liquid outlet"];
  const lines = [...ends.map((at, place) => [at, places[place] ?? ""] as const), [pinch, "pinch"] as const];
  return {
    title: "Temperature against heat passed",
    description:
      `Temperatures of refrigerant and water over ${String(roundedForTable(heat.of(duty)))} ${heat.unit}, from the gas inlet on; ` +
      `they are closest, ${pinchText}, at the ${least.place}.`,
    x: { label: `heat passed, ${heat.unit}` },
    y: { label: `temperature, ${temperature.unit}` },
    curves: [
      { name: "refrigerant", tone: "first", points: refrigerant },
      { name: "water", tone: "second", dashed: true, points: water },
    ],
    marks: [{ at: water[pinch] ?? [0, 0], label: `pinch ${pinchText}` }],
    stretches: stretchesOf(found, x),
    head: ["place", `heat passed, ${heat.unit}`, `refrigerant, ${temperature.unit}`, `water, ${temperature.unit}`],
    rows: [...lines]
      .sort(([a], [b]) => a - b)
      .map(([at, place]) => [
        place,
        roundedForTable(x[at] ?? 0),
        roundedForTable(refrigerant[at]?.[1] ?? 0),
        roundedForTable(water[at]?.[1] ?? 0),
      ]),
  };
};
