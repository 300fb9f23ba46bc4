/** Pressure against enthalpy: the saturation dome and refrigeration cycles in it. */
import { afterExpansion, cycleOf, saturatedState } from "../index";
import type { System } from "../kernel/values/quantity";
import type { Cycle } from "../cycle/cycle";
import type { NamedCycle } from "../cycle/working";
import type { Fluid } from "../refrigerant/refrigerant";
import {
  inUnit,
  roundedForTable,
  type PictureCurve,
  type InUnit,
  type Picture,
  type PicturePoint,
  type Tone,
} from "./picture";

interface Units {
  readonly pressure: InUnit;
  readonly enthalpy: InUnit;
  readonly temperature: InUnit;
}

const unitsIn = (system: System): Units => ({
  pressure: inUnit("pressure", system),
  enthalpy: inUnit("enthalpy", system),
  temperature: inUnit("temperature", system),
});

type AnyState = { readonly pressure: number; readonly enthalpy: number; readonly temperature: number };

/** Points of each saturation line. */
const DOME_POINTS = 48;
/** How far below the evaporating temperature the dome begins, K. */
const BELOW = 20;

/** Bubble line up, dew line down; the steps shrink near the critical point, where the lines bend. */
const domeOf = (fluid: Fluid, coldest: number, toPoint: (state: AnyState) => PicturePoint): PictureCurve => {
  const from = Math.max(fluid.coldest, coldest - BELOW);
  const span = fluid.warmestSaturated - from;
  const temperatures = Array.from({ length: DOME_POINTS }, (_, at) => {
    const left = 1 - at / (DOME_POINTS - 1);
    return fluid.warmestSaturated - span * left * left;
  });
  const bubble = temperatures.map((T) => toPoint(saturatedState(fluid, T, "bubble")));
  const dew = temperatures.map((T) => toPoint(saturatedState(fluid, T, "dew")));
  return { name: "saturation", tone: "outline", points: [...bubble, ...dew.reverse()] };
};

interface Drawn {
  readonly name: string;
  readonly tone: Tone;
  readonly dashed?: true;
  readonly cycle: Cycle;
}

const statesOf = (cycle: Cycle): readonly (readonly [string, AnyState])[] => [
  ["suction", cycle.suction],
  ["discharge", cycle.discharge],
  ["dew point", cycle.dew],
  ["bubble point", cycle.bubble],
  ["liquid", cycle.liquid],
  ["after expansion", afterExpansion(cycle)],
];

const loopOf = ({ name, tone, dashed, cycle }: Drawn, toPoint: (state: AnyState) => PicturePoint): PictureCurve => {
  const states = statesOf(cycle).map(([, state]) => toPoint(state));
  const [first] = states;
  const points = first === undefined ? states : [...states, first];
  return { name, tone, points, ...(dashed === true && { dashed }) };
};

/** The four corners in the trade's numbering: suction, discharge, liquid, after expansion. */
const cornersOf = (cycle: Cycle, toPoint: (state: AnyState) => PicturePoint) =>
  [cycle.suction, cycle.discharge, cycle.liquid, afterExpansion(cycle)].map((state, at) => ({
    at: toPoint(state),
    label: String(at + 1),
  }));

const sentence = (drawn: readonly Drawn[], fluid: Fluid, { temperature }: Units): string => {
  const descriptions = drawn.map(({ name, cycle: { input } }) => {
    const [low, high] = [input.evaporating, input.condensing].map((T) => temperature.of(T).toFixed(1));
    return `${name} evaporating at ${low ?? ""} and condensing at ${high ?? ""} ${temperature.unit}`;
  });
  return `Pressure against enthalpy of ${fluid.name} with its saturation lines: ${descriptions.join("; ")}.`;
};

const pictureOfCycles = (drawn: readonly [Drawn, ...Drawn[]], system: System): Picture => {
  const units = unitsIn(system);
  const toPoint = ({ enthalpy, pressure }: AnyState): PicturePoint => [
    units.enthalpy.of(enthalpy),
    units.pressure.of(pressure),
  ];
  const [{ cycle }] = drawn;
  const fluid = cycle.input.refrigerant;
  const coldest = Math.min(...drawn.map((one) => one.cycle.input.evaporating));
  const several = drawn.length > 1;
  return {
    title: "Pressure against enthalpy",
    description: sentence(drawn, fluid, units),
    x: { label: `enthalpy, ${units.enthalpy.unit}` },
    y: { label: `absolute pressure, ${units.pressure.unit}`, log: true },
    curves: [domeOf(fluid, coldest, toPoint), ...drawn.map((one) => loopOf(one, toPoint))],
    marks: cornersOf(cycle, toPoint),
    head: [
      ...(several ? ["cycle"] : []),
      "point",
      `pressure, absolute, ${units.pressure.unit}`,
      `temperature, ${units.temperature.unit}`,
      `enthalpy, ${units.enthalpy.unit}`,
    ],
    rows: drawn.flatMap(({ name, cycle: one }) =>
      statesOf(one).map(([point, { pressure, temperature, enthalpy }]) => [
        ...(several ? [name] : []),
        point,
        roundedForTable(units.pressure.of(pressure)),
        roundedForTable(units.temperature.of(temperature)),
        roundedForTable(units.enthalpy.of(enthalpy)),
      ]),
    ),
  };
};

/** The cycle of CYCLE.STATES. */
export const cyclePicture = (input: NamedCycle, system: System): Picture =>
  pictureOfCycles([{ name: "cycle", tone: "first", cycle: cycleOf(input) }], system);

/** The same machine on the pool and on its outdoor coil. */
export const twoCyclesPicture = (pool: NamedCycle, outdoors: NamedCycle, system: System): Picture =>
  pictureOfCycles(
    [
      { name: "on the pool", tone: "first", cycle: cycleOf(pool) },
      { name: "on the outdoor coil", tone: "second", dashed: true, cycle: cycleOf(outdoors) },
    ],
    system,
  );
