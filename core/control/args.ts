/** Arguments of the control functions. */
import { choice, either, quantity } from "../kernel/define/argument";

/** The published curve, or a beta value in K. */
export const SENSOR = either(
  choice("Sensor", ["10K3"], "sensor"),
  quantity("number", "beta value of a 10 kΩ part, K", { from: 1000, to: 10_000, usual: [3000, 4600] }),
  '"10K3", or the beta value (K) of a 10 kΩ part',
).default("10K3");
