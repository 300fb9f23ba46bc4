/** Entries of the year's block from the equipment pad: pump by speed, heat lost on the way. */
import { several } from "../../kernel/define/argument";
import { us } from "../../kernel/values/quantity";
import { HEAT_LOST } from "../../exchanger/args";

const SPEEDS = [1, 2, 3, 4, 5, 6];

export const PAD = {
  pumpSpeedEnergy: several(
    "electric energy",
    "pump's energy a day at each speed, parted by ; (PIPE.SPEEDS); replaces pump hours",
    SPEEDS,
    { from: 0 },
  ).optional(),
  pumpSpeedHours: several("time", "time a day at each of these speeds, one after the other from pump start", SPEEDS, {
    above: 0,
    to: us("time", 24),
  }).optional(),
  ...HEAT_LOST,
} as const;
