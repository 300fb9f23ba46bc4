/** The input block of the charge balance between two condensers. */
import { block, quantity } from "../../kernel/define/argument";
import { us, type KindName } from "../../kernel/values/quantity";
import {
  CONDENSING_TEMPERATURE,
  ISENTROPIC_EFFICIENCY,
  EVAPORATING_TEMPERATURE,
  SUBCOOLING,
  SUPERHEAT,
} from "../../cycle/args";
import { REFRIGERANT } from "../../refrigerant/args";
import { TUBE_SIZE } from "../args";

const degF = (value: number): number => us("temperature", value);
const volume = (about: string) =>
  quantity("vessel volume", about, { above: 0, usual: [us("vessel volume", 0.02), us("vessel volume", 5)] });
const share = (about: string, preset: number) => quantity("fraction", about, { from: 0, to: 1 }).default(preset);
const idle = (about: string, preset: number) =>
  quantity("temperature", about, { from: degF(-40), to: degF(130) }).default(degF(preset));
const least = (kind: KindName, about: string) => quantity(kind, about, { from: 0 });

export const CHARGE_INPUTS = block(
  {
    refrigerant: REFRIGERANT,
    outdoorCoilVolume: volume("refrigerant volume of the outdoor coil"),
    poolExchangerVolume: volume("refrigerant volume of the pool exchanger"),
    poolExchangerHoldUp: least("mass", "refrigerant in it while it condenses, if known").optional(),
    evaporating: EVAPORATING_TEMPERATURE.default(degF(45)),
    condensingOutdoors: CONDENSING_TEMPERATURE.describedAs("dew temperature in the outdoor coil").default(degF(115)),
    condensingPool: CONDENSING_TEMPERATURE.describedAs("dew temperature in the pool exchanger").default(degF(100)),
    superheat: SUPERHEAT,
    subcooling: SUBCOOLING,
    efficiency: ISENTROPIC_EFFICIENCY,
    gasShare: share("share of a running condenser filled with superheated gas", 0.1),
    liquidShare: share("share of a running condenser filled with subcooled liquid", 0.15),
    liquidLineSize: TUBE_SIZE.describedAs("added liquid line, such as 3/8 in").optional(),
    liquidLineLength: least("length", "length of the added liquid line").default(0),
    gasLineSize: TUBE_SIZE.describedAs("added hot gas line, such as 3/4 in").optional(),
    gasLineLength: least("length", "length of the added hot gas line").default(0),
    nameplateCharge: least("mass", "charge on the nameplate").optional(),
    idleOutdoorTemperature: idle("coldest outdoor coil while the pool condenses", 60),
    idlePoolTemperature: idle("coldest pool exchanger while the outdoor coil condenses", 75),
    warmestReceiver: idle("warmest temperature of the receiver", 120),
    receiverFill: quantity("fraction", "most filling of the receiver", { from: 0.3, to: 0.8 }).default(0.8),
  },
  "input block: volumes, temperatures, added lines",
);
