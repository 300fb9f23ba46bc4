import { cellFunction } from "../../kernel/cellFunction";
import { mend } from "../../kernel/fault";
import { list, of } from "../../kernel/result";
import { certifiedWork } from "../../refrigerant/cautions";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { bothModes, checkValves, holdUpEstimated, idleTakesAll, trappedLiquid } from "../chargeCautions";
import { CHARGE_INPUTS } from "../chargeInputs";
import { chargeBalance as balance, type ChargeInputs } from "../models/chargeBalance";

const fernhill = {
  refrigerant: "R-410A",
  outdoorCoilVolume: 0.3,
  poolExchangerVolume: 0.15,
  liquidLineSize: "1/2 in",
  liquidLineLength: 60,
  gasLineSize: "7/8 in",
  gasLineLength: 60,
  nameplateCharge: 14,
} as const;

/** Everything liquid, nothing estimated: masses that a hand finds from printed densities alone. */
const plain = {
  refrigerant: "R-22",
  outdoorCoilVolume: 10,
  poolExchangerVolume: 2,
  condensingOutdoors: 40,
  condensingPool: 30,
  subcooling: 0,
  gasShare: 0,
  liquidShare: 1,
  idleOutdoorTemperature: 0,
  idlePoolTemperature: 30,
} as const;

const refuse = ({ gasShare, liquidShare, ...inputs }: ChargeInputs): void => {
  if (gasShare + liquidShare > 1)
    throw mend(`inputs: gas share and liquid share together must be at most 1, got ${gasShare + liquidShare}`);
  if (inputs.liquidLineLength > 0 && inputs.liquidLineSize === undefined)
    throw mend("inputs: liquid line size is needed beside a liquid line length");
  if (inputs.gasLineLength > 0 && inputs.gasLineSize === undefined)
    throw mend("inputs: gas line size is needed beside a gas line length");
};

export const chargeBalance = cellFunction({
  id: "LINE.CHARGEBALANCE",
  topic: "line",
  summary: "Two condensers on one charge: need in each mode, difference, worst case, receiver.",
  finds: ["charge", "receiver", "migration", "two condensers", "hold-up", "idle condenser"],
  remarks: [
    "A running condenser holds gas, a condensing part by Zivi's void fraction and subcooled liquid, by the shares given; an idle one holds vapour at suction pressure, as bled.",
    "Needs are those of the parts that differ: both condensers and the added lines. The charge added counts above what the machine holds on its outdoor coil alone.",
    "Added lines count in pool mode only: the check valve stands where they join the machine's own liquid line. With the valve at the exchanger they stay full in both modes.",
    "Worst case: the idle condenser full of liquid at its own temperature, or holding the whole charge where the nameplate's is given and that is less. The receiver holds the difference between the modes, filled to at most 80 % at its warmest.",
  ],
  args: { inputs: CHARGE_INPUTS },
  gives: list("charge balance", {
    outdoorCoil: of("mass", "in the outdoor coil while it condenses"),
    poolExchanger: of("mass", "in the pool exchanger while it condenses"),
    addedLines: of("mass", "in the added lines in pool mode"),
    needOutdoors: of("mass", "need of these parts in outdoor mode"),
    needPool: of("mass", "need of these parts in pool mode"),
    difference: of("mass", "pool mode less outdoor mode"),
    fullOutdoorCoil: of("mass", "outdoor coil idle and full of liquid"),
    fullPoolExchanger: of("mass", "pool exchanger idle and full of liquid"),
    worstShortage: of("mass", "most that an idle condenser takes from the circuit"),
    receiverVolume: of("vessel volume", "receiver that holds the difference"),
    chargeAdded: of("mass", "charge to add to the machine's"),
    newCharge: of("mass", "new total, where the nameplate charge is given"),
  }),
  facts: { gasShare: "fraction", liquidShare: "fraction" },
  heavy: true,
  cautions: [
    { rule: trappedLiquid, fires: { inputs: fernhill } },
    { rule: checkValves, fires: { inputs: fernhill } },
    { rule: bothModes, fires: { inputs: fernhill } },
    { rule: holdUpEstimated, fires: { inputs: fernhill } },
    { rule: idleTakesAll, fires: { inputs: { ...fernhill, nameplateCharge: 4 } } },
    { rule: certifiedWork, fires: { inputs: fernhill } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      at: { inputs: plain, units: "SI" },
      gives: { outdoorCoil: 11.28533, poolExchanger: 2.341472, fullOutdoorCoil: 12.81516, fullPoolExchanger: 2.341472 },
      within: "0.03 %",
      from: "coolprop8",
      remark: "liquid densities 1128.533, 1170.736 and 1281.516 kg/m³ at 40, 30 and 0 °C",
    },
    {
      at: { inputs: { ...plain, liquidShare: 0.6, gasShare: 0.5 }, units: "SI" },
      gives: "#VALUE!",
      from: "identity",
    },
  ],
  work({ inputs }, { trace, note }) {
    refuse(inputs);
    note({ gasShare: inputs.gasShare, liquidShare: inputs.liquidShare });
    return balance(inputs, trace);
  },
});
