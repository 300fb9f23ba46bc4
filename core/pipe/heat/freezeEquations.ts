/** Equations of water that freezes in a pipe. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";

const temperature = (description: string, from: number, to: number) => symbol("temperature", description, from, to);
const Ta = temperature("air", 230, 271);
const ri = symbol("diameter", "inside radius", 0.01, 0.1);
const R = (description: string) => symbol("number", description, 0.1, 2);

/** J/(m K). */
export const frostCapacity = equation({
  name: "Heat that a metre gives up for each kelvin",
  form: "C = pi * (4209158 * s * Di^2 / 4 + c * (Do^2 - Di^2) / 4) + m",
  kind: "number",
  symbols: {
    s: symbol("fraction", "share of the bore that is water", 0.5, 1),
    Di: symbol("diameter", "bore", 0.02, 0.1),
    Do: symbol("diameter", "outside diameter", 0.11, 0.2),
    c: symbol("number", "wall, J/(m³ K)", 1e6, 4e6),
    m: symbol("number", "metal inside, J/(m K)", 0, 7000),
  },
  validity: "water at 999.8 kg/m³ and 4210 J/(kg K)",
  source: "identity",
  code: (x) => Math.PI * ((4209158 * x.s * x.Di ** 2) / 4 + (x.c * (x.Do ** 2 - x.Di ** 2)) / 4) + x.m,
});

export const handbookFreezing = equation({
  name: "Time to the freezing point by insulation alone",
  form: "t = 4209158 * pi * ri^2 * R * log((Ti - Ta) / (Tf - Ta))",
  kind: "time",
  symbols: {
    ri,
    R: R("resistance of the insulation, K m/W"),
    Ti: temperature("water at the start", 274, 300),
    Ta,
    Tf: temperature("freezing point", 273.14, 273.16),
  },
  validity: "wall and films left out: on the short side",
  source: "ashraeFreezing",
  code: (x) => 4209158 * Math.PI * x.ri ** 2 * x.R * Math.log((x.Ti - x.Ta) / (x.Tf - x.Ta)),
});

/** Latent heat 333.55 kJ/kg, ice 2.2 W/(m K). */
export const iceTime = equation({
  name: "Time until a share of the water is ice",
  form: "t = 999.8 * 333550 * s * ri^2 * (pi * f * R + j / (4 * 2.2)) / (Tf - Ta)",
  kind: "time",
  symbols: {
    s: symbol("fraction", "share of the bore that is water", 0.5, 1),
    ri,
    f: symbol("fraction", "share that is ice", 0.05, 1),
    R: R("resistance from the water to the air, K m/W"),
    j: symbol("number", "of the ring of ice: f + (1 - f) ln(1 - f)", 0.005, 1),
    Tf: temperature("freezing point", 273.14, 273.16),
    Ta,
  },
  validity: "slow freezing inwards (Plank); supercooling left out",
  source: "freezeRows",
  code: (x) => (999.8 * 333550 * x.s * x.ri ** 2 * (Math.PI * x.f * x.R + x.j / (4 * 2.2))) / (x.Tf - x.Ta),
});

export const trickleFlow = equation({
  name: "Flow that arrives above freezing",
  form: "Q = L * G / (4209158 * log((Ti - Ta) / (To - Ta)))",
  kind: "water flow",
  symbols: {
    L: symbol("length", "length", 1, 100),
    G: symbol("number", "loss a metre and K, W/(m K)", 0.1, 5),
    Ti: temperature("water at the start", 278, 300),
    To: temperature("water at the end", 274, 276),
    Ta,
  },
  source: "conductionTexts",
  code: (x) => (x.L * x.G) / (4209158 * Math.log((x.Ti - x.Ta) / (x.To - x.Ta))),
});
