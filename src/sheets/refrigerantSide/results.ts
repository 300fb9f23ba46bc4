/** Pressure chart and calculations of the sheet "Refrigerant side". */
import { cellsBetween } from "../charts";
import { computed, gap, heading, input, type ExtraCell, type Line } from "../layout";
import type { SheetChart } from "../sheet";
import { GAUGE_BASIS, SIGNED_TENTHS, betweenLimits, change } from "../technicianParts";

const CHART_ROWS = 13;

/** A pressure for the chart: #N/A leaves a gap where a text would be drawn as 0. */
const drawn = (column: string): ExtraCell => ({
  content: `=IF(ISNUMBER($${column}[@]),$${column}[@],NA())`,
  style: "Calculation",
  format: "0.0",
});

const headCell = (content: string): ExtraCell => ({ content, style: "Heading 3" });
export const PRESSURE_CHART: readonly Line[] = [
  heading("part", "Pressure chart"),
  input("chartFrom", "First temperature", 20, "°F", { validation: betweenLimits(-40, 100, "-40 to 100 °F") }),
  input("chartStep", "Step", 10, "°F", { validation: betweenLimits(1, 20, "1 to 20 °F") }),
  {
    label: "Saturation temperature (°F)",
    labelStyle: "Heading 3",
    value: "Dew (psig)",
    style: "Heading 3",
    extra: { C: headCell("Bubble (psig)"), F: headCell("Dew"), G: headCell("Bubble") },
    source: "REFRIG.PRESSURE: dew for superheat, bubble for subcooling",
  },
  ...Array.from({ length: CHART_ROWS }, (_, place): Line => {
    const at = `[chartFrom]+${place}*[chartStep]`;
    const pressure = (curve: string): string =>
      `=IFNA(WARMBACK.REFRIG.PRESSURE([refrigerant],${at},"${curve}",${GAUGE_BASIS}),"none")`;
    return {
      key: `chart${place + 1}`,
      label: "",
      value: pressure("dew"),
      style: "Calculation",
      format: "0.0",
      extra: {
        A: { content: `=${at}`, style: "Calculation", format: "0" },
        C: { content: pressure("bubble"), style: "Calculation", format: "0.0" },
        F: drawn("B"),
        G: drawn("C"),
      },
    };
  }),
  gap,
];

const column = (letter: string): string => cellsBetween("chart1", `chart${CHART_ROWS}`, letter);

export const PRESSURE_PICTURE: SheetChart = {
  kind: "curves",
  smooth: true,
  title: "Pressure against saturation temperature",
  description:
    "Gauge pressure, over the air at the altitude above, of the chosen refrigerant over its saturation temperature, at the dew and at the bubble point.",
  x: "saturation temperature (°F)",
  y: "pressure (psig)",
  place: `[chart1@D]:[chart${CHART_ROWS}@E]`,
  series: [
    { name: "dew", x: column("A"), y: column("F") },
    { name: "bubble", x: column("A"), y: column("G"), stroke: "dashed" },
  ],
};

export const READING_RESULTS: readonly Line[] = [
  heading("part", "Calculation"),
  heading("group", "1 Readings"),
  computed(
    "dew",
    "Dew temperature at suction",
    `=WARMBACK.REFRIG.TEMPERATURE([refrigerant],[suctionPressure],"dew",${GAUGE_BASIS})`,
    "°F",
    {
      format: "0.0",
      source: "REFRIG.TEMPERATURE",
    },
  ),
  computed(
    "superheat",
    "Superheat",
    `=WARMBACK.REFRIG.SUPERHEAT([refrigerant],[suctionPressure],[suctionLine],${GAUGE_BASIS})`,
    "°F",
    {
      format: "0.0",
      source: "REFRIG.SUPERHEAT",
    },
  ),
  computed(
    "superheatTarget",
    "Target superheat",
    '=IF(OR([device]<>"fixed orifice",[mode]="pool"),"none",IFNA(WARMBACK.LINE.TARGETSUPERHEAT([wetBulb],[outdoor]),"can\'t be charged by superheat now"))',
    "°F",
    {
      format: "0.0",
      source: "LINE.TARGETSUPERHEAT",
      note: "Fixed orifice on its outdoor coil only; pool mode has no published target. Expansion valves: by subcooling.",
    },
  ),
  computed(
    "bubble",
    "Bubble temperature at the liquid line",
    `=WARMBACK.REFRIG.TEMPERATURE([refrigerant],[liquidPressure],"bubble",${GAUGE_BASIS})`,
    "°F",
    { format: "0.0", source: "REFRIG.TEMPERATURE" },
  ),
  computed(
    "subcooling",
    "Subcooling",
    `=WARMBACK.REFRIG.SUBCOOLING([refrigerant],[liquidPressure],[liquidLine],${GAUGE_BASIS})`,
    "°F",
    {
      format: "0.0",
      source: "REFRIG.SUBCOOLING",
    },
  ),
  change(
    "offTarget",
    "Subcooling over the one wanted",
    "[subcooling]-[subcoolingTarget]",
    "°F",
    SIGNED_TENTHS,
    "difference",
  ),
];

/** A result of the gas line at a share of the full cooling. */
const drop = (row: number, share: string): string =>
  `=INDEX(WARMBACK.LINE.DROP([refrigerant],"discharge",[gasSize],[lineLength],[gasCooling]${share},[gasEvaporating],[gasCondensing],"","","",[gasRise]),${row},2)`;

const STAGES = [
  ["Full", "full capacity", ""],
  ["Least", "the least stage", "*[leastShare]"],
] as const;

const STAGE_LINES: readonly Line[] = [
  ...STAGES.map(([key, words, share]) =>
    computed(`gas${key}`, `Hot gas line costs at ${words}`, drop(6, share), "°F", {
      format: "0.0",
      source: "LINE.DROP",
      note: "As saturation temperature; up to 2 °F is usual.",
    }),
  ),
  computed(
    "oil",
    "Least cooling that carries oil up the gas line",
    '=INDEX(WARMBACK.LINE.RISER([refrigerant],"discharge",[gasSize],[gasEvaporating],[gasCondensing]),4,2)',
    "BTU/h",
    { format: "#,##0", source: "LINE.RISER", note: "Matters where the gas line rises." },
  ),
  ...STAGES.map(([key, words, share]) =>
    computed(`oil${key}`, `Cooling at ${words} over it`, `=[gasCooling]${share}/[oil]`, "", {
      format: "0.00",
      source: "ratio",
      note: "At least 1 in a riser.",
    }),
  ),
];

export const WORK_RESULTS: readonly Line[] = [
  heading("group", "2 Pressure test and vacuum"),
  computed(
    "testExpected",
    "Nitrogen gauge should read now",
    "=WARMBACK.LINE.TESTPRESSURE([testStart],[testThen],[testNow])",
    "psig",
    {
      format: "0.0",
      source: "LINE.TESTPRESSURE",
    },
  ),
  computed("lost", "Pressure lost, temperature allowed for", "=[testExpected]-[testReading]", "psi", {
    format: "0.0",
    source: "difference",
  }),
  computed("boils", "Water boils off above", "=WARMBACK.LINE.BOILING([vacuum])", "°F", {
    format: "0",
    source: "LINE.BOILING",
    note: "Ice below 4,588 micron: warm the parts.",
  }),
  heading("group", "3 Added charge"),
  computed(
    "lineCharge",
    "Liquid in the added line",
    "=WARMBACK.LINE.CHARGE([refrigerant],[lineSize],[lineLength],[liquidTemperature])",
    "lb",
    {
      format: "0.00",
      source: "LINE.CHARGE",
      note: "The liquid alone: makers' adders are larger and govern. Both condensers: LINE.CHARGEBALANCE.",
    },
  ),
  heading("group", "4 Added gas line at full and least stage"),
  ...STAGE_LINES,
  computed("safetyClass", "Safety class", "=INDEX(WARMBACK.REFRIG.FACTS([refrigerant]),2,2)", "", {
    source: "REFRIG.FACTS",
  }),
  gap,
];
