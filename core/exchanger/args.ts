/** Arguments of the exchanger functions. */
import { choice, either, quantity } from "../kernel/define/argument";
import { us } from "../kernel/values/quantity";

const degF = (value: number): number => us("temperature", value);

const END = { from: degF(-100), to: degF(1000), usual: [degF(32), degF(250)] as const };

export const HOT_IN = quantity("temperature", "hot stream, entering", END);
export const HOT_OUT = quantity("temperature", "hot stream, leaving", END);
export const COLD_IN = quantity("temperature", "cold stream, entering", END);
export const COLD_OUT = quantity("temperature", "cold stream, leaving", END);

export const DIRECTIONS = ["counterflow", "parallel"] as const;
export type Direction = (typeof DIRECTIONS)[number];

const BY_CORRECTION = "take counterflow and its correction factor, EXCHANGER.CORRECTION";

export const DIRECTION = choice(
  "ExchangerDirection",
  DIRECTIONS,
  "counterflow or parallel",
  { counter: "counterflow", cocurrent: "parallel", parallelflow: "parallel" },
  {
    condensing:
      "give the condensing temperature as hotIn and hotOut; with one stream of constant temperature both directions give the same",
    shellandtube: BY_CORRECTION,
  },
).default("counterflow");

export const ARRANGEMENTS = [
  "counterflow",
  "parallel",
  "shell and tube",
  "crossflow unmixed",
  "crossflow mixed hot",
  "crossflow mixed cold",
  "condensing",
] as const;
export type Arrangement = (typeof ARRANGEMENTS)[number];

export const ARRANGEMENT = choice("ExchangerArrangement", ARRANGEMENTS, "how the streams run", {
  counter: "counterflow",
  cocurrent: "parallel",
  parallelflow: "parallel",
}).default("counterflow");

export const CAPACITY_RATIO = quantity("fraction", "smaller over larger capacity rate (flow × heat capacity)", {
  from: 0,
  to: 1,
});

export const CORRECTION_FACTOR = quantity("fraction", "correction factor F of the mean difference", {
  above: 0,
  to: 1,
  usual: [0.75, 1],
}).default(1);

/** Heat that doesn't reach the pool. */
export const HEAT_LOST = {
  lineLoss: quantity("heat rate", "lost by the hot-gas line while it runs on the pool (LINE.HEATLOSS)", {
    from: 0,
  }).default(0),
  pipeLoss: quantity("heat rate", "lost by the water pipes meanwhile (PIPE.HEATLOSS)", { from: 0 }).default(0),
};

export const CONDUCTANCE = quantity("heat conductance", "conductance UA of the exchanger", {
  above: 0,
  usual: [us("heat conductance", 50), us("heat conductance", 500_000)],
});

export const FILM = quantity("film coefficient", "film coefficient", {
  above: 0,
  usual: [us("film coefficient", 2), us("film coefficient", 5000)],
});

export const FOULING = quantity("fouling resistance", "fouling resistance", {
  from: 0,
  usual: [0, us("fouling resistance", 0.01)],
}).default(0);

export const TUBE_MATERIAL = either(
  choice("TubeMaterial", ["titanium", "cupronickel 90-10", "stainless 304", "copper"], "tube material", {
    cupronickel: "cupronickel 90-10",
    CuNi: "cupronickel 90-10",
    stainless: "stainless 304",
    "90-10": "cupronickel 90-10",
  }),
  quantity("conductivity", "conductivity of the tube", {
    above: 0,
    usual: [us("conductivity", 0.1), us("conductivity", 250)],
  }),
  "tube material, or its conductivity",
);
