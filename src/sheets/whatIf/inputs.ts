/** Inputs of the sheet "What if". Labels of a block are those of its function. */
import { heading, input, type Line } from "../layout";
import { INVENTED, YES_NO, above, betweenLimits, oneOf } from "../technicianParts";

const degrees = (from: number, to: number) => betweenLimits(from, to, `${from} to ${to} °F`);

const sequence: readonly Line[] = [
  heading("group", "Pool and sequence"),
  input("pool", "Pool now", 80, "°F", { validation: degrees(33, 110), source: "sensor" }),
  input("setPoint", "Pool temperature wanted", 82, "°F", {
    validation: degrees(40, 104),
    source: "owner",
    link: "ProjectWater",
  }),
  input("highLimit", "High limit of the pool", 88, "°F", {
    validation: degrees(40, 104),
    source: "owner",
    link: "ProjectHighLimit",
  }),
  input("band", "Dead band of the pool", 1, "°F", { validation: betweenLimits(0.1, 10, "0.1 to 10 °F") }),
  input("leavingLimit", "Limit of the leaving water", 104, "°F", {
    validation: degrees(60, 140),
    source: "controller",
  }),
  input("limitBand", "Its dead band", 10, "°F", { validation: betweenLimits(0.1, 40, "0.1 to 40 °F") }),
  input("latches", "It latches until reset by hand", "yes", "", { validation: oneOf("yes or no", ...YES_NO) }),
  input("volume", "Volume of the pool", 35766, "gal", {
    format: "#,##0",
    validation: above("above 0 gal"),
    source: "POOL.VOLUME",
    link: "ProjectVolume",
  }),
];

const exchanger: readonly Line[] = [
  heading("group", "Exchanger whose water stops", "Labels of EXCHANGER.FLOWSTOP."),
  input("heat", "Heat", 112000, "BTU/h", {
    format: "#,##0",
    validation: above("above 0 BTU/h"),
    source: "heat rejected at rating",
    note: INVENTED,
    link: "ProjectRejected",
  }),
  input("shellWater", "Water volume", 3, "gal", { validation: above("above 0 gal"), source: "maker" }),
  input("metal", "Metal", 15, "lb", { validation: above("above 0 lb"), source: "titanium of the coil" }),
  input("startWater", "Start water", 84, "°F", { validation: degrees(33, 104) }),
  input("ua", "UA", 8000, "BTU/(h·°F)", { format: "#,##0", validation: above("above 0"), source: "Exchanger inquiry" }),
  input("cutOut", "Cut out", 150, "°F", { validation: degrees(90, 212), source: "its saturation temperature" }),
  input("limit", "Limit", 140, "°F", { validation: degrees(100, 212), source: "the plastic's" }),
  input("sensor", "Sensor", 15, "s", { validation: betweenLimits(0, 600, "0 to 600 s"), source: "its time constant" }),
  input("gasStops", "Gas stops after the flow switch opens", 5, "s", {
    validation: betweenLimits(0, 3600, "0 to 3,600 s"),
    source: "tried out",
    note: "Compressor off, or valve to outdoor with its stroke.",
  }),
];

const surge: readonly Line[] = [
  heading("group", "Valve that closes on the water"),
  input("flow", "Water flow", 75, "gpm", { validation: above("above 0 gpm"), link: "ProjectFlow" }),
  input("run", "Pipe from the valve to the pool", 60, "ft", { validation: above("above 0 ft"), source: "route" }),
  input("closing", "Closing time", 0.05, "s", {
    validation: betweenLimits(0, 300, "0 to 300 s"),
    source: "check valve that slams",
  }),
  input("working", "Working pressure", 25, "psi", { validation: betweenLimits(0, 300, "0 to 300 psi") }),
];

const frost: readonly Line[] = [
  heading("group", "Power off in frost", "Labels of PIPE.FREEZE."),
  input("size", "Size", "2-1/2 in", "", {
    validation: oneOf("nominal size", "1-1/2 in", "2 in", "2-1/2 in", "3 in", "4 in"),
    source: "survey",
    link: "ProjectPipeSize",
  }),
  input("schedule", "Schedule", "40", "", { validation: oneOf("40 or 80", "40", "80"), link: "ProjectSchedule" }),
  input("start", "Start", 45, "°F", { validation: degrees(33, 100), source: "water" }),
  input("air", "Air", 20, "°F", { validation: degrees(-60, 31), source: "coldest night" }),
  input("wind", "Wind", 15, "mph", { validation: betweenLimits(0, 100, "0 to 100 mph") }),
  input("insulation", "Insulation", 0.5, "in", { validation: betweenLimits(0, 4, "0 to 4 in") }),
  input("shellSize", "Shell, nominal size of its pipe", "6 in", "", {
    validation: oneOf("nominal size", "4 in", "5 in", "6 in", "8 in"),
    source: "maker",
  }),
  input("shellLength", "Length of the shell", 2.5, "ft", { validation: above("above 0 ft"), source: "maker" }),
  input("drained", "Drained before frost, in writing", "yes", "", { validation: oneOf("yes or no", ...YES_NO) }),
];

export const WHAT_IF_INPUTS: readonly Line[] = [
  heading("part", "Inputs"),
  ...sequence,
  ...exchanger,
  ...surge,
  ...frost,
  { label: "" },
];
