import { cellFunction } from "../../kernel/define/cellFunction";
import { valueError } from "../../kernel/values/fault";
import { listResult, quantityResult } from "../../kernel/define/result";
import { certifiedWork } from "../../refrigerant/cautions";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { bothModes, checkValves, holdUpEstimated, idleHoldsWholeCharge, trappedLiquid } from "../charge/cautions";
import { CHARGE_INPUTS } from "../charge/inputs";
import { solveChargeBalance as balance, type ChargeInputs } from "../charge/chargeBalance";

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

/** Everything liquid, nothing estimated: the masses follow from printed densities alone. */
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
    throw valueError(`inputs: gas share and liquid share together must be at most 1, got ${gasShare + liquidShare}`);
  if (inputs.liquidLineLength > 0 && inputs.liquidLineSize === undefined)
    throw valueError("inputs: a liquid line length needs liquid line size");
  if (inputs.gasLineLength > 0 && inputs.gasLineSize === undefined)
    throw valueError("inputs: a gas line length needs gas line size");
};

export const lineChargeBalance = cellFunction({
  id: "LINE.CHARGEBALANCE",
  topic: "line",
  summary: "Two condensers on one charge: need in each mode, difference, worst case, receiver.",
  keywords: ["charge", "receiver", "migration", "two condensers", "hold-up", "idle condenser"],
  details: [
    "A running condenser holds gas, a condensing part by Zivi's void fraction and subcooled liquid, in the shares given; an idle one, bled to suction, holds vapour at suction pressure.",
    "Needs cover the parts that differ: both condensers and the added lines. The added charge is on top of the charge that the machine holds on its outdoor coil alone.",
    "Added lines count in pool mode only: the check valve is where they join the machine's own liquid line. With the valve at the exchanger they stay full in both modes.",
    "Worst case: the idle condenser full of liquid at its own temperature, or holding the whole charge if the nameplate's is given and that is less. The receiver holds the difference between the modes, filled to at most 80 % at its warmest.",
  ],
  args: { inputs: CHARGE_INPUTS },
  returns: listResult("charge balance", {
    outdoorCoil: quantityResult("mass", "in the outdoor coil while it condenses"),
    poolExchanger: quantityResult("mass", "in the pool exchanger while it condenses"),
    addedLines: quantityResult("mass", "in the added lines in pool mode"),
    needOutdoors: quantityResult("mass", "need of these parts in outdoor mode"),
    needPool: quantityResult("mass", "need of these parts in pool mode"),
    difference: quantityResult("mass", "pool mode less outdoor mode"),
    fullOutdoorCoil: quantityResult("mass", "outdoor coil idle and full of liquid"),
    fullPoolExchanger: quantityResult("mass", "pool exchanger idle and full of liquid"),
    worstShortage: quantityResult("mass", "most that an idle condenser takes from the circuit"),
    receiverVolume: quantityResult("vessel volume", "receiver that holds the difference"),
    chargeAdded: quantityResult("mass", "charge to add to the machine's"),
    newCharge: quantityResult("mass", "new total, where the nameplate charge is given"),
  }),
  facts: { gasShare: "fraction", liquidShare: "fraction" },
  memoised: true,
  cautions: [
    { rule: trappedLiquid, raisedBy: { inputs: fernhill } },
    { rule: checkValves, raisedBy: { inputs: fernhill } },
    { rule: bothModes, raisedBy: { inputs: fernhill } },
    { rule: holdUpEstimated, raisedBy: { inputs: fernhill } },
    { rule: idleHoldsWholeCharge, raisedBy: { inputs: { ...fernhill, nameplateCharge: 4 } } },
    { rule: certifiedWork, raisedBy: { inputs: fernhill } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: { inputs: plain, units: "SI" },
      expected: {
        outdoorCoil: 11.28533,
        poolExchanger: 2.341472,
        fullOutdoorCoil: 12.81516,
        fullPoolExchanger: 2.341472,
      },
      tolerance: "0.03 %",
      source: "coolprop8",
      remark: "liquid densities 1128.533, 1170.736 and 1281.516 kg/m³ at 40, 30 and 0 °C",
    },
    {
      inputs: { inputs: { ...plain, liquidShare: 0.6, gasShare: 0.5 }, units: "SI" },
      expected: "#VALUE!",
      source: "identity",
    },
  ],
  compute({ inputs }, { trace, recordFacts }) {
    refuse(inputs);
    recordFacts({ gasShare: inputs.gasShare, liquidShare: inputs.liquidShare });
    return balance(inputs, trace);
  },
});
