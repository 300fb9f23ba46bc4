/** Arguments of the pool functions. */
import { choice, either, quantity, several } from "../kernel/define/argument";
import { POOL_WATER } from "../kernel/define/glossary";
import { us } from "../kernel/values/quantity";

export const SHAPE = choice("PoolShape", ["rectangle", "oval", "round", "kidney"], "outline of the pool");

export const POOL_LENGTH = quantity("length", "longest inside length; round: the diameter", {
  above: 0,
  to: us("length", 3000),
  usual: [us("length", 4), us("length", 200)],
});

export const POOL_WIDTH = several("length", "width; kidney: both widths as 12; 16 ft; round: the diameter", [1, 2], {
  above: 0,
  to: us("length", 3000),
});

export const WATER_DEPTH = quantity("depth", "depth of the water", {
  above: 0,
  to: us("depth", 100),
  usual: [us("depth", 1), us("depth", 16)],
});

export const SURFACE = quantity("area", "area of the water surface", {
  from: us("area", 1),
  to: us("area", 10_000_000),
  usual: [us("area", 30), us("area", 30_000)],
});

export const WATER_VOLUME = quantity("pool volume", "volume of the pool's water", {
  from: us("pool volume", 1),
  to: us("pool volume", 1e9),
  usual: [us("pool volume", 200), us("pool volume", 1_500_000)],
});

export const NET_HEAT = quantity("heat rate", "heat into the water, net", {
  from: us("heat rate", 1),
  to: us("heat rate", 1e10),
  usual: [us("heat rate", 1000), us("heat rate", 5_000_000)],
});

export const WATER = POOL_WATER;

export const WIND_AT_WATER = quantity("wind speed", "wind at the water surface, not at a weather station", {
  from: 0,
  to: us("wind speed", 100),
  usual: [0, us("wind speed", 20)],
});

export const METHODS = ["Smith-Lof-Jones", "Carrier", "McMillan", "Shah", "ASHRAE indoor", "VDI 2089"] as const;

export const METHOD = choice("EvaporationMethod", METHODS, "relation of evaporation", {
  SLJ: "Smith-Lof-Jones",
  "Smith Löf Jones": "Smith-Lof-Jones",
  ASHRAE: "ASHRAE indoor",
  VDI: "VDI 2089",
}).default("Smith-Lof-Jones");

export const ACTIVITY = quantity("number", "Carrier, ASHRAE: handbook factor; others: ratio to still water", {
  above: 0,
  to: 10,
  usual: [0.5, 4],
}).default(1);

export const COEFFICIENT = quantity("film coefficient", "surface coefficient of the handbook rule", {
  from: us("film coefficient", 0.1),
  to: us("film coefficient", 100),
  usual: [us("film coefficient", 5), us("film coefficient", 25)],
}).default(us("film coefficient", 10.5));

export const SHELTER = either(
  choice("PoolShelter", ["open", "suburban", "sheltered"], "shelter of the pool"),
  quantity("fraction", "share of the wind at 10 m", { from: 0, to: 1 }),
  "shelter of the pool, or its share of the 10 m wind",
);
