/** Arguments of the cycle functions. Temperatures are dew temperatures in the evaporator and the condenser. */
import { quantity } from "../kernel/define/argument";
import { us } from "../kernel/values/quantity";
import { REFRIGERANT } from "../refrigerant/args";

const degF = (value: number): number => us("temperature", value);
const difference = (value: number): number => us("temperature difference", value);

export const EVAPORATING_TEMPERATURE = quantity("temperature", "dew temperature in the evaporator", {
  from: degF(-150),
  to: degF(250),
  usual: [degF(-50), degF(70)],
});

export const CONDENSING_TEMPERATURE = quantity("temperature", "dew temperature in the condenser", {
  from: degF(-100),
  to: degF(300),
  usual: [degF(60), degF(150)],
});

export const SUPERHEAT = quantity("temperature difference", "superheat at the compressor, all of it useful cooling", {
  from: 0,
  to: difference(150),
  usual: [0, difference(40)],
}).default(difference(10));

export const SUBCOOLING = quantity("temperature difference", "subcooling from the bubble point", {
  from: 0,
  to: difference(150),
  usual: [0, difference(30)],
}).default(difference(10));

export const ISENTROPIC_EFFICIENCY = quantity(
  "fraction",
  "isentropic enthalpy rise per electrical input of the compressor",
  {
    above: 0,
    to: 1,
    usual: [0.4, 0.8],
  },
).default(0.65);

/** The arguments that describe a cycle, in their order. */
export const CYCLE_ARGS = {
  refrigerant: REFRIGERANT,
  evaporating: EVAPORATING_TEMPERATURE,
  condensing: CONDENSING_TEMPERATURE,
  superheat: SUPERHEAT,
  subcooling: SUBCOOLING,
  efficiency: ISENTROPIC_EFFICIENCY,
} as const;
