/** Starter sheet "What if": the failures of the sequence beside the time that there is. */
import { computed, gap, heading, sheetOf, type Line } from "../layout";
import { FROZEN_ROWS, WIDTHS, check, must, starterLines } from "../sections";
import { answer, warning } from "../technicianParts";
import type { StarterSheet } from "../sheet";
import { FAILURE_HEADS, FAILURE_LINES, FIRST_FAILURE, LAST_FAILURE } from "./failures";
import { WHAT_IF_INPUTS } from "./inputs";

const flowStop = (row: number): string => `INDEX(WARMBACK.EXCHANGER.FLOWSTOP([[heat:sensor]]),${row},2)`;
const cycling = (block: string, row: number): string => `INDEX(WARMBACK.CONTROL.CYCLING(${block}),${row},2)`;
const hammer = (row: number): string =>
  `INDEX(WARMBACK.PIPE.HAMMER([size],[schedule],[velocity],[run],[closing],[setPoint]),${row},2)`;

const clocks: readonly Line[] = [
  heading("part", "Calculation"),
  heading("group", "Water stops, gas on"),
  computed("toLimit", "Until the water is at the plastic's limit", `=${flowStop(2)}`, "s", {
    format: "0",
    source: "EXCHANGER.FLOWSTOP",
    note: "Short-side: shell and refrigerant left out.",
  }),
  computed("toCutOut", "Until the cut-out trips", `=${flowStop(3)}`, "s", { format: "0" }),
  computed("atCutOut", "Water then", `=${flowStop(4)}`, "°F", { format: "0.0" }),
  computed("allowed", "Left for a sensor after its lag", `=${flowStop(9)}`, "s", { format: "0" }),
  heading("group", "Leaving-water limit by its band alone", "Labels of CONTROL.CYCLING."),
  computed("limitHeat", "Heat", "=[heat]", "BTU/h", { format: "#,##0" }),
  computed("limitVolume", "Volume", "=[shellWater]", "gal"),
  computed("limitDead", "Band", "=[limitBand]", "°F"),
  computed("limitMetal", "Metal", "=[metal]", "lb"),
  computed("limitSensor", "Sensor", "=[sensor]", "s"),
  computed("limitCycles", "Cycles an hour", `=${cycling("[[limitHeat:limitSensor]]", 5)}`, "", {
    format: "0",
    source: "CONTROL.CYCLING",
  }),
  computed("limitGoverns", "What keeps it slower", `=${cycling("[[limitHeat:limitSensor]]", 9)}`, ""),
  heading("group", "Pool by its band"),
  computed("poolHeat", "Heat", "=[heat]", "BTU/h", { format: "#,##0" }),
  computed("poolVolume", "Volume", "=[volume]", "gal", { format: "#,##0" }),
  computed("poolBand", "Band", "=[band]", "°F"),
  computed("poolCycles", "Cycles an hour", `=${cycling("[[poolHeat:poolBand]]", 3)}`, "", {
    format: "0.00",
    source: "CONTROL.CYCLING",
  }),
  computed(
    "valveCycles",
    "Cycles an hour of the diverting valve, at most",
    `=${cycling("[[poolHeat:poolBand]]", 8)}`,
    "",
    {
      format: "0.0",
      source: "CONTROL.CYCLING",
      note: "With the compressor's starts.",
    },
  ),
  heading("group", "Valve that closes"),
  computed("velocity", "Velocity of the water", "=WARMBACK.PIPE.VELOCITY([flow],[size],[schedule])", "ft/s", {
    format: "0.0",
    source: "PIPE.VELOCITY",
  }),
  computed("surge", "Surge", `=${hammer(1)}`, "psi", { format: "0", source: "PIPE.HAMMER" }),
  computed("surgeMargin", "Rating less surge", `=${hammer(6)}`, "psi", { format: "0", source: "PIPE.HAMMER" }),
  heading("group", "Frost in the pipe and in the exchanger's shell", "Labels of PIPE.FREEZE."),
  computed(
    "pipeHours",
    "Until the pipe begins to freeze",
    "=INDEX(WARMBACK.PIPE.FREEZE([[size:insulation]]),1,2)",
    "h",
    {
      format: "0.0",
      source: "PIPE.FREEZE",
    },
  ),
  computed("shell1", "Size", "=[shellSize]", ""),
  computed("shell2", "Start", "=[start]", "°F"),
  computed("shell3", "Air", "=[air]", "°F"),
  computed("shell4", "Wind", "=[wind]", "mph"),
  computed("shell5", "Insulation", "=[insulation]", "in"),
  computed("shell6", "Water share", "=0.85", "", { note: "The coil takes the rest." }),
  computed("shell7", "Metal", "=[metal]*16/[shellLength]", "oz/ft", { format: "0" }),
  computed(
    "shellHours",
    "Until the shell begins to freeze",
    "=INDEX(WARMBACK.PIPE.FREEZE([[shell1:shell7]]),1,2)",
    "h",
    {
      format: "0.0",
      source: "PIPE.FREEZE",
    },
  ),
  gap,
];

const results: readonly Line[] = [
  heading("part", "Results"),
  answer(
    "outSeconds",
    "Time there is when the water stops",
    "=MIN([toLimit],[toCutOut])",
    "s",
    "0",
    "Flow proof must act within.",
  ),
  answer("outFrost", "Time there is in frost without power", "=MIN([pipeHours],[shellHours])", "h", "0.0"),
  gap,
];

const checks: readonly Line[] = [
  must(
    "checkModes",
    "No failure leaves the heat on the pool",
    `COUNTIF([${FIRST_FAILURE}]:[${LAST_FAILURE}],"pool")=0`,
    "By the sequence, on paper: prove it at commissioning.",
  ),
  must(
    "checkFlowProof",
    "Gas stops in half the time there is",
    "2*[gasStops]<=[outSeconds]",
    "A flow switch, not a sensor.",
  ),
  must(
    "checkCutOut",
    "Cut-out trips below the plastic's limit",
    "[atCutOut]<[limit]",
    "Else it guards the machine only.",
  ),
  must(
    "checkSurge",
    "Surge and working pressure within the rating",
    "[surgeMargin]>=[working]",
    "Else a slower valve.",
  ),
  check(
    "checkLatch",
    "Leaving limit latches or is slow",
    'OR([latches]="yes",[limitGoverns]="band")',
    "Else it short-cycles.",
  ),
  check("checkFrost", "Drained, or 14 h until frost", 'OR([drained]="yes",[outFrost]>=14)', "One night without power."),
];

export const whatIf: StarterSheet = sheetOf({
  id: "what-if",
  name: "What if",
  summary:
    "Each failure of the sequence beside its clock: water stopped, limits that cycle, a valve that slams, frost.",
  widths: WIDTHS,
  frozenRows: FROZEN_ROWS,
  lines: starterLines({
    title: "What if: failures and their clocks",
    warnings: [warning("On paper only: prove every trip at commissioning; codes, makers and licensed trades decide.")],
    project: "Fernhill Hall, outdoor lap pool (invented)",
    answer: results,
    body: [heading("part", "Failures"), FAILURE_HEADS, ...FAILURE_LINES, gap, ...WHAT_IF_INPUTS, ...clocks],
    checks,
  }),
  named: { TimeWithoutFlow: "outSeconds" },
});
