/** What the model expects at these readings: two input blocks and each reading beside its expected value. */
import { computed, gap, heading, type Line } from "../layout";
import { GAUGE_BASIS } from "../technicianParts";

const dew = (pressure: string): string =>
  `=WARMBACK.REFRIG.TEMPERATURE([refrigerant],[${pressure}],"dew",${GAUGE_BASIS})`;
const TEMPERATURE = { format: "0.0" } as const;
const SATURATION = { format: "0.0", source: "REFRIG.TEMPERATURE" } as const;
const KILOWATTS = { format: "0.0" } as const;

/** Labels are those of the function's blocks. */
const BLOCKS: readonly Line[] = [
  heading("group", "3 The machine as planned (first block of EXCHANGER.COMMISSION)"),
  computed("planRefrigerant", "Refrigerant", "=[refrigerant]", ""),
  computed("planCooling", "Rated cooling", "=[ratedCooling]", "BTU/h", { format: "#,##0" }),
  computed("planPower", "Rated power", "=[ratedPower]", "kW", KILOWATTS),
  computed("planOutdoorFan", "Outdoor fan", "=[fanOutdoor]", "kW", KILOWATTS),
  computed("planIndoorFan", "Indoor fan", "=[fanIndoor]", "kW", KILOWATTS),
  computed("planSubcooling", "Subcooling", "=[subcoolingTarget]", "°F", TEMPERATURE),
  computed("planUa", "UA", "=[plannedUa]", "BTU/(h·°F)", { format: "#,##0" }),
  computed("planFlow", "Planned flow", "=[plannedFlow]", "gpm", { format: "0" }),
  computed("planHotGas", "Hot gas drop", "=[hotGasDrop]", "psi", { format: "0.0" }),
  heading("group", "4 The readings (second block)"),
  computed("readFlow", "Water flow", "=[flow]", "gpm", { format: "0" }),
  computed("readIn", "Entering water", "=[waterIn]", "°F", TEMPERATURE),
  computed("readOut", "Leaving water", "=[waterOut]", "°F", TEMPERATURE),
  computed("readCondensing", "Pool condensing", "=[poolCondensing]", "°F", TEMPERATURE),
  computed("readEvaporating", "Pool evaporating", dew("poolSuction"), "°F", SATURATION),
  computed("readPower", "Pool power", "=[poolPower]+[fanIndoor]", "kW", KILOWATTS),
  computed("readSuperheat", "Pool superheat", "=[poolSuperheat]", "°F", TEMPERATURE),
  computed("readSubcooling", "Pool subcooling", "=[poolSubcooling]", "°F", TEMPERATURE),
  computed("readOutdoor", "Outdoor", "=[outdoorAir]", "°F", TEMPERATURE),
  computed("readWetBulb", "Indoor wet bulb", "=[wetBulb]", "°F", TEMPERATURE),
  computed("readCondensingOut", "Outdoor condensing", "=[outdoorCondensing]", "°F", TEMPERATURE),
  computed("readEvaporatingOut", "Outdoor evaporating", dew("outdoorSuction"), "°F", SATURATION),
  computed("readPowerOut", "Outdoor power", "=[outdoorPower]+[fanOutdoor]+[fanIndoor]", "kW", KILOWATTS),
  computed("readSuperheatOut", "Outdoor superheat", "=[outdoorSuperheat]", "°F", TEMPERATURE),
  computed("readSubcoolingOut", "Outdoor subcooling", "=[outdoorSubcooling]", "°F", TEMPERATURE),
  computed("readRest", "Rest saturation", dew("restPressure"), "°F", SATURATION),
  computed("readRestAt", "Rest temperature", "=[restTemperature]", "°F", TEMPERATURE),
];

const TABLE = "WARMBACK.EXCHANGER.COMMISSION([[planRefrigerant:planHotGas]],[[readFlow:readRestAt]])";
const cell = (row: number, column: number): string => `INDEX(${TABLE},${row},${column})`;

/** A row of the function's table: what is expected, and in the note what was read. */
const beside = (row: number, key: string, label: string, unit: string, format: string): Line =>
  computed(key, label, `=${cell(row, 3)}`, unit, {
    format,
    source: row === 16 ? "saturation at the condenser" : "model at these conditions",
    note: `="Read "&TEXT(${cell(row, 2)},"${format}")&", let pass ±"&TEXT(${cell(row, 5)},"${format}")&": "&${cell(row, 7)}`,
  });

export const MODEL_LINES: readonly Line[] = [
  ...BLOCKS,
  heading("group", "5 What the model expects at these readings"),
  beside(3, "modelCondensing", "Pool: condensing", "°F", "0.0"),
  beside(4, "modelEvaporating", "Pool: evaporating", "°F", "0.0"),
  beside(5, "modelRise", "Pool: rise of the water", "°F", "0.0"),
  beside(6, "modelHeat", "Pool: heat into the water", "BTU/h", "#,##0"),
  beside(7, "modelPower", "Pool: power with the indoor fan", "kW", "0.0"),
  beside(8, "modelUa", "Pool: UA", "BTU/(h·°F)", "#,##0"),
  beside(11, "modelCondensingOut", "Outdoor: condensing", "°F", "0.0"),
  beside(12, "modelEvaporatingOut", "Outdoor: evaporating", "°F", "0.0"),
  beside(13, "modelPowerOut", "Outdoor: power with both fans", "kW", "0.0"),
  beside(16, "modelRest", "At rest: saturation", "°F", "0.0"),
  computed("pattern", "Readings and model", `=${cell(17, 7)}`, "", {
    source: "EXCHANGER.COMMISSION",
    style: "Check Cell",
    note: `=${cell(17, 8)}`,
  }),
  gap,
];
