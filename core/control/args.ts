/** Arguments of the control functions. */
import { choice, either, quantity } from "../kernel/define/argument";

const EITHER_CURVE = "it names either curve: at 32 °F type II shows 32,650 ohm, type III 29,490 ohm";

/** A published curve, or a beta value in K. */
export const SENSOR = either(
  choice(
    "Sensor",
    ["type II", "type III"],
    "sensor",
    {
      "type 2": "type II",
      "10k type II": "type II",
      "10k type 2": "type II",
      "type 3": "type III",
      "10k type III": "type III",
      "10k type 3": "type III",
    },
    { "10k": EITHER_CURVE, "10k2": EITHER_CURVE, "10k3": EITHER_CURVE, "10k4": EITHER_CURVE },
  ),
  quantity("number", "beta value of a 10 kΩ part, K", { from: 1000, to: 10_000, usual: [3000, 4600] }),
  '"type II", "type III", or the beta value (K) of a 10 kΩ part',
).default("type II");
