/** The input block of a refrigerant condensing against water. */
import { block, quantity } from "../../kernel/define/argument";
import { valueError } from "../../kernel/values/fault";
import { HEAT_RATE, WATER_FLOW, WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import {
  CONDENSING_TEMPERATURE,
  ISENTROPIC_EFFICIENCY,
  EVAPORATING_TEMPERATURE,
  SUBCOOLING,
  SUPERHEAT,
} from "../../cycle/args";
import { REFRIGERANT } from "../../refrigerant/args";
import { DIRECTION } from "../args";

export const DISCHARGE = quantity("temperature", "hot gas entering, if known", {
  from: us("temperature", 0),
  to: us("temperature", 500),
  usual: [us("temperature", 100), us("temperature", 250)],
});

export const REFRIGERANT_FLOW = quantity("mass flow", "refrigerant mass flow, in place of the heat", {
  above: 0,
  usual: [us("mass flow", 20), us("mass flow", 50_000)],
});

/** The duty side: entering streams and condensing conditions. */
export const DUTY_ENTRIES = {
  refrigerant: REFRIGERANT,
  heatRejected: HEAT_RATE.describedAs("heat to be rejected, in place of the mass flow").optional(),
  massFlow: REFRIGERANT_FLOW.optional(),
  condensing: CONDENSING_TEMPERATURE.describedAs("dew temperature in the exchanger"),
  subcooling: SUBCOOLING,
  dischargeTemperature: DISCHARGE.optional(),
  evaporating: EVAPORATING_TEMPERATURE.describedAs(
    "evaporating dew temperature, if a cycle gives the hot gas",
  ).optional(),
  superheat: SUPERHEAT,
  efficiency: ISENTROPIC_EFFICIENCY,
  waterFlow: WATER_FLOW,
  enteringWater: WATER_TEMPERATURE.describedAs("entering water"),
  direction: DIRECTION,
} as const;

export const ZONE_INPUTS = block(DUTY_ENTRIES, "input block: refrigerant, heat, temperatures, water");

/** Entries given in one of two ways. */
export interface DutyChoice {
  readonly heatRejected: number | undefined;
  readonly massFlow: number | undefined;
  readonly dischargeTemperature: number | undefined;
  readonly evaporating: number | undefined;
}

/** Refuses blocks that give none or both of two ways. */
export const checkDuty = (inputs: DutyChoice): void => {
  const one = (a: unknown, b: unknown, names: string): void => {
    if ((a === undefined) === (b === undefined))
      throw valueError(`inputs: give one of ${names}, got ${a === undefined ? "none" : "both"}`);
  };
  one(inputs.heatRejected, inputs.massFlow, "heat rejected and mass flow");
  one(inputs.dischargeTemperature, inputs.evaporating, "discharge temperature and evaporating");
};
