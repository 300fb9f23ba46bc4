/** What each way of heating needs in a year, on the same hours of the same pool. */
import { MONTHS } from "../../../core";
import { computed, gap, heading, type ExtraCell, type Line } from "../layout";
import { columnPlace } from "../recoverySizing/year";
import { headsOf, WAYS } from "./ways";

const YEAR = "WARMBACK.POOL.YEAR([[poolArea:highLimit]],[climateHead@A]:[climateDec@G])";
const SPREAD = 'WARMBACK.POOL.SPREAD([[poolArea:highLimit]],[climateHead@A]:[climateDec@G],"cover",{"none";"bubble"})';
const total = (column: string): string => `INDEX(${YEAR},14,${columnPlace("POOL.YEAR", column)})`;

/** Mean days of the months, for the sun's declination (Duffie and Beckman). */
const MEAN_DAYS = [17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344] as const;
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

const cell = (content: string, format: string): ExtraCell => ({ content, style: "Calculation", format });

/** Wh/m² in a BTU/ft². */
const WH = 3.154591;

/** A month's mean day at the collectors: heat by a half sine of sun over a threshold. */
const solarMonth = (month: string, at: number): Line => {
  const [climate, own] = [`climate${month}`, `solar${month}`];
  const v = `([${climate}@E]*0.44704*[collectorWind])`;
  const peak = `(PI()/2*[${climate}@F]*${WH}/[${own}])`;
  const [a, c, x] = [`[${own}@D]`, `[${own}@E]`, `[${own}@F]`];
  return {
    key: own,
    label: month,
    value: `=24/PI()*ACOS(MAX(-1,MIN(1,-TAN(RADIANS([latitude]))*TAN(RADIANS(23.45*SIN(RADIANS(360*(284+${MEAN_DAYS[at] ?? 15})/365)))))))`,
    style: "Calculation",
    format: "0.0",
    extra: {
      C: cell(`=[${climate}]+[${climate}@C]/4`, "0.0"),
      D: cell(`=0.85-0.04*${v}`, "0.00"),
      E: cell(`=(11.56+4.37*${v})*([setPoint]-[${own}@C])/1.8-0.95*[sky]*${a}`, "0"),
      F: cell(`=MAX(0,MIN(1,${c}/(${a}*${peak})))`, "0.00"),
      G: cell(
        `=IF(${c}<=0,${a}*[${climate}@F]*${WH}-${c}*[${own}],2*${a}*${peak}*[${own}]/PI()*(COS(ASIN(${x}))-${x}*(PI()/2-ASIN(${x}))))/${WH}`,
        "0",
      ),
    },
  };
};

/** A month's heat: needed, of the collectors, of the heat pump. */
const heatMonth = (month: string, at: number): Line => {
  const [climate, solar, own] = [`climate${month}`, `solar${month}`, `heat${month}`];
  const days = DAYS[at] ?? 30;
  const warm = `MIN(1.5,([${solar}@C]-50)/30)`;
  const humid = `MAX(0,MIN(1,([${climate}@D]-0.63)/0.17))`;
  const point = (column: string): string => {
    const of = (key: string): string => (column === "" ? `[${key}]` : `[${key}@${column}]`);
    return `(${of("pumpCool")}+${warm}*(${of("pumpWarm")}+${humid}*(${of("pumpHumid")}-${of("pumpWarm")})-${of("pumpCool")}))`;
  };
  return {
    key: own,
    label: month,
    value: `=INDEX(${YEAR},${at + 2},${columnPlace("POOL.YEAR", "backUpWithout")})/1000000`,
    style: "Calculation",
    format: "0.0",
    extra: {
      C: cell(`=MIN([${own}],[collector]*[${solar}@G]*${days}/1000000)`, "0.0"),
      D: cell(`=IF([${own}@C]>0,[${solar}]*(1-2*ASIN([${solar}@F])/PI())*${days},0)`, "0"),
      E: cell(`=IF([${solar}@C]<50,"off",${point("C")})`, "0.0"),
      F: cell(`=IF([${solar}@C]<50,0,MIN([${own}],${point("")}*[pumpDay]*${days}/1000000))`, "0.0"),
      G: cell(`=IF(N([${own}@F])>0,[${own}@F]*1000000/3412.14/[${own}@E],0)`, "#,##0"),
    },
  };
};

const all = (column: string): string => `SUM([heatJan${column}]:[heatDec${column}])`;

/** Heat that gas makes, million BTU, and electricity, kWh, of each way. */
const USES: Readonly<Record<(typeof WAYS)[number][0], readonly [gas: string, power: string]>> = {
  gas: ["[need]", "0"],
  electric: ["0", "[need]*1000000/3412.14"],
  pump: [`[need]-${all("@F")}`, all("@G")],
  solar: [`[need]-${all("@C")}`, `${all("@D")}*[solarPump]`],
  cover: ["[needCovered]", "0"],
  recovered: ["[needRecovered]", "[morePower]"],
};

const useLine = ([key, name]: (typeof WAYS)[number]): Line => {
  const [gas, power] = USES[key];
  const own = `use${key}`;
  return {
    key: own,
    label: name,
    value: `=MAX(0,${gas})*10/[efficiency]`,
    style: "Calculation",
    format: "#,##0",
    extra: {
      C: cell(`=${power}`, "#,##0"),
      D: cell(`=[${own}]*[gasPrice]+[${own}@C]*[powerPrice]`, "#,##0"),
      E: cell(`=[${own}]*[gasCarbon]+[${own}@C]*[powerCarbon]`, "#,##0"),
      F: cell(`=[usegas@E]-[${own}@E]`, "#,##0"),
    },
  };
};

export const ENERGY_LINES: readonly Line[] = [
  heading("part", "Calculation"),
  heading(
    "group",
    "1 Solar collectors: the month's mean day",
    "q = (0.85 - 0.04 v)(G + 0.95 L) - (11.56 + 4.37 v)(Tin - Ta), W/m²: generic unglazed collector, from memory.",
  ),
  headsOf("Month", "Daylight, h", {
    C: "Air by day, °F",
    D: "Share of the sun taken",
    E: "Loss at the pool's temperature, W/m²",
    F: "Threshold",
    G: "BTU/ft²d",
  }),
  ...MONTHS.map(solarMonth),
  heading(
    "group",
    "2 Heat by month, million BTU",
    "Heat pump on a line between its tested points by the day's air; off below 50 °F.",
  ),
  headsOf("Month", "Needed", {
    C: "Solar",
    D: "Hours of its pump",
    E: "COP of the heat pump",
    F: "Its heat",
    G: "Its kWh",
  }),
  ...MONTHS.map(heatMonth),
  heading("group", "3 The year"),
  computed("need", "Heat needed, no cover", `=${total("backUpWithout")}/1000000`, "million BTU", {
    format: "#,##0",
    source: "POOL.YEAR, back-up without",
  }),
  computed(
    "needCovered",
    "Heat needed under a bubble cover, 12 h a day",
    `=INDEX(${SPREAD},3,${columnPlace("POOL.SPREAD", "backUpWithout")})/1000000`,
    "million BTU",
    { format: "#,##0", source: "POOL.SPREAD over the cover" },
  ),
  computed(
    "needRecovered",
    "Left to heat beside the recovered heat",
    `=${total("backUpWith")}/1000000`,
    "million BTU",
    {
      format: "#,##0",
      source: "POOL.YEAR, back-up with",
    },
  ),
  computed(
    "morePower",
    "Electricity more with recovery",
    `=${total("electricityHeld")}-${total("electricityWithout")}+${total("extraPumpHeld")}`,
    "kWh",
    { format: "#,##0", source: "POOL.YEAR", note: "Negative: a cooler condenser saves." },
  ),
  computed("gasCarbon", "Carbon dioxide of a therm", '=WARMBACK.COST.CARBON(100000,"natural gas",1)', "lb", {
    format: "0.00",
    source: "COST.CARBON",
  }),
  heading("group", "4 Energy of each way in a year", "The rest that a way doesn't give is heated by gas."),
  headsOf("Way", "Gas, therm", {
    C: "Electricity, kWh",
    D: '="Energy, "&[currency]',
    E: "Carbon dioxide, lb",
    F: "Less than gas, lb",
  }),
  ...WAYS.map(useLine),
  gap,
];
