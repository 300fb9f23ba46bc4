/** Lists of the sheet "Take-off and price": joints by size, material, hours by task. */
import type { ExtraCell, Line } from "../layout";
import { betweenLimits, oneOf } from "../technicianParts";

/** Columns of the sheet: A item, B quantity, C unit, D price each, E amount, F source, G note. */
export const TAKE_OFF_COLUMNS = { unit: "C", source: "F", note: "G", last: "G" } as const;
export const TAKE_OFF_WIDTHS: readonly number[] = [37, 14, 13, 13, 15, 26, 40];

const headCell = (content: string): ExtraCell => ({ content, style: "Heading 3" });

const typed = (content: string | number, format?: string): ExtraCell => ({
  content,
  style: "Input",
  ...(format === undefined ? {} : { format }),
});

const AMOUNT: ExtraCell = { content: "=$B$[@]*$D$[@]", style: "Calculation", format: "#,##0.00" };

const EXAMPLE = "example, not a market price";

/** A priced line: a typed or calculated quantity, a price of the user's own. */
const priced = (key: string, label: string, quantity: string | number, unit: string, price: number): Line => ({
  key,
  label,
  value: quantity,
  style: typeof quantity === "number" ? "Input" : "Calculation",
  format: typeof quantity === "number" ? "General" : "#,##0.0",
  unit,
  source: EXAMPLE,
  extra: { D: typed(price, "#,##0.00"), E: AMOUNT },
});

export const PRICE_HEADS: Line = {
  label: "Item",
  labelStyle: "Heading 3",
  value: "Quantity",
  style: "Heading 3",
  unit: "Unit",
  unitStyle: "Heading 3",
  source: "Price from",
  sourceStyle: "Heading 3",
  extra: { D: headCell('="Price ("&[currency]&")"'), E: headCell('="Amount ("&[currency]&")"') },
};

export const HOUR_HEADS: Line = {
  ...PRICE_HEADS,
  label: "Task",
  value: "Hours",
  source: "Rate from",
  extra: { D: headCell('="Rate ("&[currency]&"/h)"'), E: headCell('="Amount ("&[currency]&")"') },
};

export const JOINT_HEADS: Line = {
  label: "Joints by pipe size",
  labelStyle: "Heading 3",
  value: "Joints",
  style: "Heading 3",
  note: "Two at a coupling, three at a tee.",
};

const jointLine = (key: string, size: string, joints: number): Line => ({
  key,
  label: "",
  extra: {
    A: {
      content: size,
      style: "Input",
      validation: oneOf("nominal size", "1 in", "1-1/2 in", "2 in", "2-1/2 in", "3 in", "4 in"),
    },
    B: { ...typed(joints), validation: betweenLimits(0, 10_000, "0 to 10,000") },
  },
});

/** Count of the fittings below: elbows 6 × 2, ball valves 3 × 2, balancing valve 2, unions 2 × 2, check valve 2, tees 2 × 3, pipe couplings 6 × 2. */
export const JOINT_LINES: readonly Line[] = [
  jointLine("joints1", "2-1/2 in", 44),
  jointLine("joints2", "1 in", 6),
  jointLine("joints3", "2 in", 4),
];
export const JOINTS = "[joints1@A]:[joints3@B]";

export const MATERIAL_LINES: readonly Line[] = [
  priced("pipeLine", "PVC pipe, main size", "=[run]*(1+[waste])", "ft", 4.2),
  priced("elbows", "Elbow 90", 6, "piece", 9.5),
  priced("tees", "Tee", 2, "piece", 14),
  priced("couplings", "Coupling", 6, "piece", 5.5),
  priced("unions", "Union", 2, "piece", 32),
  priced("ballValves", "Ball valve", 3, "piece", 58),
  priced("balancingValve", "Balancing valve", 1, "piece", 76),
  priced("checkValve", "Swing check", 1, "piece", 64),
  priced("cementLine", "Solvent cement", "=[cementQuarts]", "quart", 22),
  priced("primerLine", "Primer", "=[primerQuarts]", "quart", 18),
  priced("supportLine", "Supports", "=[supports]", "piece", 7.5),
  priced("exchangerLine", "Pool exchanger, titanium", 1, "piece", 2400),
  priced("divertLine", "Refrigerant diverting valve with pilot", 1, "piece", 420),
  priced("checkLine", "Refrigerant check valve", 2, "piece", 38),
  priced("receiverLine", "Receiver", 1, "piece", 260),
  priced("tubeLine", "Refrigeration tube, both lines", "=2*[lineRun]*(1+[waste])", "ft", 6.8),
  priced("insulationLine", "Insulation of the lines", "=2*[lineRun]*(1+[waste])", "ft", 2.1),
  priced("refrigerantLine", "Refrigerant added", "=[refrigerantAdded]", "lb", 16),
  priced("flowLine", "Flow switch", 1, "piece", 95),
  priced("controlLine", "Controls, sensors and wire", 1, "lot", 380),
];
export const MATERIAL = "[pipeLine@E]:[controlLine@E]";

const task = (key: string, label: string, hours: number, rate: number, note: string): Line => ({
  ...priced(key, label, hours, "h", rate),
  source: "your own rate; example",
  note,
});

export const TASK_LINES: readonly Line[] = [
  task("taskSurvey", "Survey and drawings", 6, 95, ""),
  task("taskPads", "Pads, exchanger set and anchored", 5, 80, ""),
  task("taskPipe", "Pool pipe cut, cemented, hung", 12, 80, "Cure time before the pressure test is waiting, not work."),
  task(
    "taskLines",
    "Refrigerant lines run and brazed",
    12,
    105,
    "Certified person, nitrogen flowing, hot-work practice.",
  ),
  task("taskTest", "Nitrogen test, evacuation, charge in both modes", 8, 105, "Certified person."),
  task("taskWire", "Wiring, bonding, controls", 8, 110, "Licensed electrician."),
  task("taskStart", "Commissioning and record", 6, 105, ""),
  task("taskTrain", "Handing over, training", 2, 95, ""),
];
export const TASKS = "[taskSurvey@E]:[taskTrain@E]";
export const TASK_HOURS = "[taskSurvey]:[taskTrain]";
