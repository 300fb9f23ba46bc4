/** Arguments of the air conditioner functions. */
import { quantity } from "../kernel/define/argument";
import { valueError } from "../kernel/values/fault";
import { show, us, type System } from "../kernel/values/quantity";

export const COOLING = quantity("heat rate", "net cooling of the machine", {
  above: 0,
  to: us("heat rate", 1e9),
  usual: [us("heat rate", 6000), us("heat rate", 2_400_000)],
});

export const MACHINE_POWER = quantity("electric power", "power of the whole machine: compressor and all fans", {
  above: 0,
  to: us("electric power", 1e6),
  usual: [us("electric power", 0.3), us("electric power", 250)],
});

export const OUTDOOR_FAN = quantity("electric power", "power of the outdoor fan, whose heat stays outdoors", {
  from: 0,
  to: us("electric power", 1e5),
}).default(0);

export function checkFan(outdoorFan: number, power: number, called: string, system: System): void {
  const shown = (value: number): string => show(value, "electric power", system);
  if (outdoorFan >= power)
    throw valueError(`outdoorFan: must be below ${called} (${shown(power)}), got ${shown(outdoorFan)}`);
}
