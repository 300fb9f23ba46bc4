/** Caution rules of sensors and of the sequence of operation. */
import { caution } from "../kernel/define/caution";
import { us } from "../kernel/values/quantity";

/** Readings by other curves that differ by more than this raise a caution: 1 °F. */
const WORTH_A_WORD = us("temperature difference", 1);
const TABLE_FROM = us("temperature", -40);
const TABLE_TO = us("temperature", 140);
const USER_LIMIT = us("temperature", 90);
const PEOPLE_LIMIT = us("temperature", 104);
const PVC_LIMIT = us("temperature", 140);

export const wrongCurve = caution({
  code: "CONTROL-SENSOR-CURVE",
  severity: "Caution",
  source: "betaEquation",
  description: "Thermistors sold as 10k follow different curves; the wrong one reads some degrees off.",
  needs: { otherLowest: "temperature", otherHighest: "temperature" },
  when: ({ otherLowest, otherHighest }) => otherHighest - otherLowest > WORTH_A_WORD,
  message: ({ otherLowest, otherHighest }, show) =>
    `By other curves sold as 10k the same resistance reads ${show(otherLowest, "temperature")} to ${show(otherHighest, "temperature")}: find out which part it is, and check it at two temperatures with a thermometer.`,
});

export const beyondTable = caution({
  code: "CONTROL-SENSOR-SPAN",
  severity: "Notice",
  source: "ntcTable",
  description: "The curves were checked from −40 to 140 °F only.",
  needs: { sensorTemperature: "temperature" },
  when: ({ sensorTemperature }) => sensorTemperature < TABLE_FROM - 1e-6 || sensorTemperature > TABLE_TO + 1e-6,
  message: ({ sensorTemperature }, show) =>
    `${show(sensorTemperature, "temperature")} is outside ${show(TABLE_FROM, "temperature")} to ${show(TABLE_TO, "temperature")}, where a table confirms the curve.`,
});

export const paperCheckOnly = caution({
  code: "CONTROL-NOT-EQUIPMENT",
  severity: "Warning",
  standing: true,
  source: "commonPractice",
  description: "For checking a sequence of operation on paper, not for running equipment.",
  needs: {},
  when: () => true,
  message: () =>
    "For checking a sequence of operation, not for running equipment: a spreadsheet is no safety control. Flow switch, high-pressure cut-out and high limit belong in series in the machine's own wiring, with the maker's consent and by a licensed electrician.",
});

export const flowNeedsPump = caution({
  code: "CONTROL-FLOW-NEEDS-PUMP",
  severity: "Caution",
  source: "flowSwitchNotes",
  description: "Proving flow may need the pump first.",
  needs: { flowProven: "yes/no", pumpWanted: "word" },
  when: ({ flowProven, pumpWanted }) => !flowProven && pumpWanted === "yes",
  message: () =>
    "Pool mode waits for proven flow only: the pump may have to run first. Start it, wait for flow (paddles close near 20 gpm; elevation fools a pressure switch), then shift the valve; if flow stays unproven, alarm.",
});

export const pilotValve = caution({
  code: "CONTROL-PILOT-VALVE",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "A pilot-operated diverting valve shifts only with a pressure difference.",
  needs: {},
  when: () => true,
  message: () =>
    "A pilot-operated valve shifts only while the compressor holds a pressure difference, and may stop half way at low load: verify its position by the temperatures downstream, and let it return to the outdoor coil when unpowered.",
});

export const spaLimitSetting = caution({
  code: "CONTROL-SPA-LIMIT",
  severity: "Danger",
  source: "cpscSpa1979",
  description: "A limit above 90 °F is a spa's: it needs its own limit, and never above 104 °F.",
  needs: { setPoint: "temperature", highLimit: "temperature" },
  when: ({ setPoint, highLimit }) => Math.max(setPoint, highLimit) > USER_LIMIT,
  message: ({ setPoint, highLimit }, show) => {
    const highest = show(Math.max(setPoint, highLimit), "temperature");
    return `${highest} is above the ${show(USER_LIMIT, "temperature")} usual for pools. Spa mode needs a limit of its own, on its own sensor; water above ${show(PEOPLE_LIMIT, "temperature")} endangers life (heat stroke, drowning), and children and pregnant users need less.`;
  },
});

export const limitBelowSetPoint = caution({
  code: "CONTROL-LIMIT-BELOW-SET-POINT",
  severity: "Caution",
  source: "commonPractice",
  description: "The high limit is at or below the set point and will act in its place.",
  needs: { setPoint: "temperature", highLimit: "temperature" },
  when: ({ setPoint, highLimit }) => highLimit <= setPoint,
  message: ({ setPoint, highLimit }, show) =>
    `The high limit of ${show(highLimit, "temperature")} is not above the set point of ${show(setPoint, "temperature")}: it will trip in place of the band.`,
});

export const poolAsEvaporator = caution({
  code: "CONTROL-NO-POOL-EVAPORATOR",
  severity: "Danger",
  source: "commonPractice",
  description: "A heat pump must never run the pool exchanger as its evaporator.",
  needs: { heatingOrDefrost: "yes/no" },
  when: ({ heatingOrDefrost }) => heatingOrDefrost,
  message: () =>
    "In heating or defrost the refrigerant flow reverses: the pool exchanger must never be the evaporator. It freezes, bursts, and lets pool water into the refrigerant. The reversing valve's own signal must force the outdoor position.",
});

export const hotLeavingWater = caution({
  code: "CONTROL-HOT-LEAVING-WATER",
  severity: "Warning",
  source: "machinerysHandbook",
  description: "A leaving limit above 104 °F at an inlet that people can reach, or above the limit of PVC.",
  needs: { leavingLimit: "temperature" },
  when: ({ leavingLimit }) => leavingLimit > PEOPLE_LIMIT + 1e-9,
  message: ({ leavingLimit }, show) =>
    `Leaving water may reach ${show(leavingLimit, "temperature")}: above ${show(PEOPLE_LIMIT, "temperature")} keep people from the inlet, and PVC keeps half of its strength or less above ${show(us("temperature", 110), "temperature")} and has no rating above ${show(PVC_LIMIT, "temperature")}.`,
});
