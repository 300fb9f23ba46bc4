/** The tips that Excel shows beside the words of an argument. They are no part of the functions script. */
import { CATALOGUE, type ChoiceShape, COMPILED, evaluate } from "../core";

type Tips = Readonly<Record<string, string>>;

const TIPS: Readonly<Record<string, Tips>> = {
  CapacityIs: {
    net: "With the indoor fan's heat taken off the cooling",
    gross: "Cooling of the coil, the indoor fan's heat still in it",
  },
  GasCoolerRelation: {
    "Liao 2000": "Evaporating -10 to 20 °C, outlet 30 to 60 °C",
    "Sawalha 2008": "By the outlet alone; evaporating -10 to 0 °C",
    "Chen and Gu 2005": "By the outlet alone; outdoor air 30 to 50 °C",
    "Sarkar 2004": "Of heat pumps; evaporating -10 to 10 °C, outlet 30 to 50 °C",
    cycle: "Greatest cooling for power by the equation of state",
  },
  Weekday: {
    Monday: "The year begins on a Monday",
    Tuesday: "The year begins on a Tuesday",
    Wednesday: "The year begins on a Wednesday",
    Thursday: "The year begins on a Thursday",
    Friday: "The year begins on a Friday",
    Saturday: "The year begins on a Saturday",
    Sunday: "The year begins on a Sunday",
  },
  DesignPressureRule: {
    "ASHRAE 15": "Temperatures of the US safety standard for refrigeration",
    "EN 378": "Temperatures of the European standard for refrigeration",
  },
  PresentValueFactor: {
    SPV: "Present value of one payment in the last year",
    UPV: "Present value of a yearly payment, at the year's end; rises by the escalation",
    "UPV mid-year": "Present value of a yearly payment, at the middle of each year",
    "capital recovery": "Yearly payment that repays one of today",
  },
  PressureSide: {
    low: "Evaporator and suction line",
    "high air": "Condenser cooled by outdoor air, and its lines",
    "high water": "Condenser cooled by water, the pool coil among them",
  },
  PressureTubeMaterial: {
    copper: "Copper C12200, of refrigeration tube",
    "titanium grade 1": "Unalloyed titanium, the softest grade; estimate",
    "titanium grade 2": "Unalloyed titanium, the usual grade of tube; estimate",
    "cupronickel 90-10": "Copper with 10 % nickel; estimate",
    "cupronickel 70-30": "Copper with 30 % nickel; estimate",
  },
  RecordInterval: {
    month: "Each record is a month",
    day: "Each record is a day",
    hour: "Each record is an hour",
  },
  RoomMethod: {
    unventilated: "Without fan or detection; never less than the clause's cap",
    "unventilated as printed": "The formula alone, as tables of manuals print it",
    "circulation 0.5": "With leak detection and air circulation, half of the flammability limit",
  },
  TubeSizes: {
    mill: "Least wall and greatest diameter of the tube's standard",
    "as given": "Diameter and wall as they are given",
  },
  TubeTemper: {
    annealed: "Soft, or brazed: heat takes the hardness out",
    drawn: "Hard, with fittings that need no heat",
  },
  DivertMode: {
    pool: "Heat goes to the pool",
    outdoor: "Heat goes to the outdoor coil, as without power",
    idle: "No heat is sent; the valve is in the outdoor position",
  },
  EvaporationMethod: {
    "Smith-Lof-Jones": "Takes wind; measured on quiet outdoor pools",
    Carrier: "Takes wind and the handbook's activity factor",
    McMillan: "Takes wind at 3 m height",
    Shah: "Indoor pools: from the densities of the air; knows no wind",
    "ASHRAE indoor": "Indoor pools, short form with activity factor; knows no wind",
    "VDI 2089": "Indoor pools, water at rest; knows no wind",
  },
  ExchangerArrangement: {
    counterflow: "The streams run against each other",
    parallel: "The streams run the same way",
    "shell and tube": "One shell pass, two or any even number of tube passes",
    "crossflow unmixed": "The streams cross, and each is divided into channels",
    "crossflow mixed hot": "The streams cross; the stream of the smaller capacity rate is mixed",
    "crossflow mixed cold": "The streams cross; the stream of the larger capacity rate is mixed",
    condensing: "The hot stream stays at one temperature: capacity ratio 0",
  },
  ExchangerDirection: {
    counterflow: "The streams run against each other",
    parallel: "The streams run the same way",
  },
  FittingMethod: {
    "three-constant": "By Darby: Reynolds number and nominal size",
    "two-constant": "By Hooper: Reynolds number and bore",
    "equivalent length": "By a table for PVC: as much pipe as loses the same head",
  },
  FrictionMethod: {
    "Darcy-Weisbach": "Friction factor from Reynolds number and roughness, any temperature",
    "Hazen-Williams": "By the coefficient of the pipe, for cool water in turbulent flow",
  },
  GasLineService: {
    suction: "Gas from the evaporator to the compressor",
    discharge: "Hot gas from the compressor to the condenser",
  },
  LineService: {
    suction: "Gas from the evaporator to the compressor",
    discharge: "Hot gas from the compressor to the condenser",
    liquid: "Liquid from the condenser to the expansion device",
  },
  HeatSource: {
    "natural gas": "Price per therm (SI: per kWh)",
    propane: "Price per gallon (SI: per litre)",
    "fuel oil": "Price per gallon (SI: per litre)",
    "electric resistance": "Price per kWh; all of it becomes heat",
    "heat pump": "Price per kWh; the efficiency is the COP",
    wood: "Price per cord (SI: per m³), stacked",
    solar: "Price per kWh; the efficiency is heat per energy of the pump",
  },
  PipeBore: {
    average: "The published average bore",
    "minimum wall": "Outside diameter less two minimum walls: a wider bore",
  },
  PipeFitting: {
    "elbow 90": "Elbow of 90 degrees",
    "elbow 45": "Elbow of 45 degrees",
    "tee run": "Flow straight through a tee",
    "tee branch": "Flow that turns into or out of a tee's branch",
    coupling: "Joins two pipes",
    union: "Joins two pipes and can be taken apart",
    reducer: "From the next larger size down to this one",
    "ball valve": "Full bore, open",
    "gate valve": "Open",
    "swing check": "Non-return valve with a hinged flap",
    "three-way valve": "Diverts to one of two ports",
    entrance: "From a pool or tank into the pipe, sharp edge",
    exit: "From the pipe into a pool or tank",
  },
  PipeSchedule: {
    "40": "The usual wall of PVC pressure pipe",
    "80": "The thicker wall: higher rating, narrower bore",
  },
  PoolShape: {
    rectangle: "Length by width",
    oval: "Length by width, at their largest",
    round: "Length and width are both the diameter",
    kidney: "Two widths, one at each end, such as 12; 16 ft",
  },
  PumpSet: {
    one: "One pump",
    "two in series": "Two equal pumps: their heads add up",
    "two in parallel": "Two equal pumps side by side: their flows add up",
  },
  SaturationCurve: {
    dew: "The first drop condenses: for superheat",
    bubble: "The first bubble boils: for subcooling",
  },
  TubeForm: {
    coil: "Annealed, soft, sold in coils",
    straight: "Drawn, hard, sold in lengths",
  },
  Units: {
    US: "Customary units: °F, ft, gpm, BTU/h",
    SI: "Metric units: °C, m, m³/h, kW",
  },
};

/** "1-1/8 in" in inches. */
function inchesOf(size: string): number {
  const parts = size.replace(" in", "").split("-");
  return parts.map((part) => part.split("/").map(Number)).reduce((sum, [a = 0, b = 1]) => sum + a / b, 0);
}

/** Composition and safety class, as REFRIG.FACTS gives them. */
function refrigerantTip(name: string): string {
  const compiled = COMPILED.get("REFRIG.FACTS");
  const rows = compiled === undefined ? [] : (evaluate(compiled, [name], CATALOGUE) as readonly (readonly unknown[])[]);
  const fact = (label: string): string => String(rows.find(([head]) => head === label)?.[1] ?? "");
  const composition = fact("composition") === `${name} 100 %` ? "Pure" : fact("composition");
  return `${composition}; safety class ${fact("safety class")}`;
}

/** A pipe size's metric name, which the argument takes too. */
function metricName({ aliases = {} }: ChoiceShape, size: string): string {
  const [name = ""] = Object.entries(aliases).find(([text, word]) => word === size && /^dn/i.test(text)) ?? [];
  return name === "" ? "" : `Nominal size, metric ${name.toUpperCase()}`;
}

/** What a word of a list means; "" if nobody wrote it down. */
export function wordTip(shape: ChoiceShape, word: string): string {
  switch (shape.name) {
    case "Month":
      return `Month ${String(shape.words.indexOf(word) + 1)} of the year`;
    case "PipeSize":
      return metricName(shape, word);
    case "TubeSize":
      return `Outside diameter ${(25.4 * inchesOf(word)).toFixed(2)} mm`;
    case "Refrigerant":
      return refrigerantTip(word);
    default:
      return TIPS[shape.name]?.[word] ?? "";
  }
}
