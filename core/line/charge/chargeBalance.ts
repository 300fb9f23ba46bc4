/** Two condensers on one charge: the need of each mode, and the most that an idle condenser can hold. */
import type { Cycle } from "../../cycle/cycle";
import { cycleOf } from "../../cycle/working";
import type { ValueOf } from "../../kernel/define/argument";
import { NO_VALUE } from "../../kernel/define/result";
import { silent, type Trace } from "../../kernel/define/steps";
import { loadRefrigerant, type Fluid } from "../../refrigerant/refrigerant";
import { saturatedState, refrigerantSaturationPressure } from "../../refrigerant/saturation/saturation";
import { stateAt } from "../../refrigerant/state/state";
import { equationSource } from "../../refrigerant/sources";
import { condenserHoldUp, massInVolume, meanVoid, needDifference, receiverVolume } from "./equations";
import type { CHARGE_INPUTS } from "./inputs";
import { lineChargeEquation } from "../equations";
import { lineState } from "../lineState";
import { boreOfTube } from "../tube";

export type ChargeInputs = ValueOf<typeof CHARGE_INPUTS>;

const traceDensity = (fluid: Fluid, property: string, temperature: number, value: number, trace: Trace): number => {
  if (trace.on)
    trace.property({
      substance: fluid.name,
      property,
      inputs: { temperature: { value: temperature, kind: "temperature" } },
      result: { value, kind: "density" },
      source: equationSource(fluid),
    });
  return value;
};

/** Refrigerant in a running condenser, kg: gas, condensing part by the void fraction, liquid. */
const running = (inputs: ChargeInputs, cycle: Cycle, V: number, trace: Trace): number => {
  const rhoV = cycle.dew.density;
  const rhoL = cycle.bubble.density;
  const A = trace.step(meanVoid, { rhoV, rhoL });
  const rhoG = (lineState(cycle, "discharge").density + rhoV) / 2;
  const rhoS = cycle.liquid.density;
  return trace.step(condenserHoldUp, { V, g: inputs.gasShare, rhoG, l: inputs.liquidShare, rhoS, A, rhoV, rhoL });
};

/** Vapour in an idle condenser that is bled to the suction line, kg: at the evaporating pressure, or its own if lower. */
const idle = (fluid: Fluid, cycle: Cycle, temperature: number, V: number, trace: Trace): number => {
  const own = refrigerantSaturationPressure(fluid, temperature, "dew");
  const pressure = Math.min(cycle.evaporatingPressure, own * (1 - 1e-6));
  const rho = traceDensity(
    fluid,
    "vapour in the idle condenser, bled to suction",
    temperature,
    stateAt(fluid, pressure, temperature).density,
    trace,
  );
  return trace.step(massInVolume, { rho, V });
};

/** The same condenser full of liquid at its temperature, kg. */
const flooded = (fluid: Fluid, temperature: number, V: number, trace: Trace): number => {
  const { density } = saturatedState(fluid, temperature, "bubble");
  return trace.step(massInVolume, { rho: traceDensity(fluid, "saturated liquid", temperature, density, trace), V });
};

const inLine = (size: string | undefined, length: number, rho: number, trace: Trace): number =>
  size === undefined || length === 0
    ? 0
    : trace.step(lineChargeEquation, { rho, D: boreOfTube(size, trace), L: length });

const runningParts = (inputs: ChargeInputs, outdoors: Cycle, pool: Cycle, trace: Trace) => {
  const outdoorCoil = trace.within("Outdoor coil running", () =>
    running(inputs, outdoors, inputs.outdoorCoilVolume, trace),
  );
  const poolExchanger =
    inputs.poolExchangerHoldUp ??
    trace.within("Pool exchanger running", () => running(inputs, pool, inputs.poolExchangerVolume, trace));
  const addedLines = trace.within("Added lines in pool mode", () => {
    const liquid = inLine(inputs.liquidLineSize, inputs.liquidLineLength, pool.liquid.density, trace);
    return liquid + inLine(inputs.gasLineSize, inputs.gasLineLength, lineState(pool, "discharge").density, trace);
  });
  return { outdoorCoil, poolExchanger, addedLines };
};

const idleParts = (inputs: ChargeInputs, outdoors: Cycle, pool: Cycle, trace: Trace) => {
  const fluid = loadRefrigerant(inputs.refrigerant);
  const {
    idleOutdoorTemperature: To,
    idlePoolTemperature: Tp,
    outdoorCoilVolume: Vo,
    poolExchangerVolume: Vp,
  } = inputs;
  return trace.within("Idle condensers", () => ({
    idleOutdoorCoil: idle(fluid, pool, To, Vo, trace),
    idlePoolExchanger: idle(fluid, outdoors, Tp, Vp, trace),
    fullOutdoorCoil: flooded(fluid, To, Vo, trace),
    fullPoolExchanger: flooded(fluid, Tp, Vp, trace),
  }));
};

/** Masses kg, volume m3. Needs cover the parts that differ between the modes. */
export const solveChargeBalance = (inputs: ChargeInputs, trace: Trace = silent) => {
  const { refrigerant: name, evaporating, superheat, subcooling, efficiency, nameplateCharge } = inputs;
  const solve = (condensing: number): Cycle =>
    cycleOf({ refrigerant: name, evaporating, condensing, superheat, subcooling, efficiency });
  const [outdoors, pool] = [solve(inputs.condensingOutdoors), solve(inputs.condensingPool)];
  const parts = runningParts(inputs, outdoors, pool, trace);
  const idles = idleParts(inputs, outdoors, pool, trace);
  const needOutdoors = parts.outdoorCoil + idles.idlePoolExchanger;
  const needPool = parts.poolExchanger + parts.addedLines + idles.idleOutdoorCoil;
  const difference = trace.step(needDifference, { mp: needPool, mo: needOutdoors });
  const fluid = loadRefrigerant(name);
  const warm = saturatedState(fluid, inputs.warmestReceiver, "bubble").density;
  const rho = traceDensity(fluid, "liquid in the receiver at its warmest", inputs.warmestReceiver, warm, trace);
  const chargeAdded = Math.max(needOutdoors, needPool) - parts.outdoorCoil;
  const newCharge = nameplateCharge === undefined ? undefined : nameplateCharge + chargeAdded;
  // An idle condenser can't fill with more liquid than there is.
  const shortage = (full: number, vapour: number): number => Math.max(0, Math.min(full, newCharge ?? full) - vapour);
  return {
    ...parts,
    needOutdoors,
    needPool,
    difference,
    fullOutdoorCoil: idles.fullOutdoorCoil,
    fullPoolExchanger: idles.fullPoolExchanger,
    worstShortage: Math.max(
      shortage(idles.fullOutdoorCoil, idles.idleOutdoorCoil),
      shortage(idles.fullPoolExchanger, idles.idlePoolExchanger),
    ),
    receiverVolume: trace.step(receiverVolume, { d: difference, fill: inputs.receiverFill, rho }),
    chargeAdded,
    newCharge: newCharge ?? NO_VALUE,
  };
};
