/** Words of the trade by which functions are found besides their own texts: common practice. */

const GAS = "REFRIG.PRESSURE REFRIG.TEMPERATURE REFRIG.CHART REFRIG.FACTS REFRIG.SUPERHEAT REFRIG.SUBCOOLING";
const HEAT_REJECTED = "AIRCON.REJECTED AIRCON.REJECTEDBYRATING AIRCON.ATOUTDOOR";
const HOT_GAS = "LINE.VALVE LINE.HEATLOSS LINE.RISER LINE.DROP CYCLE.DISCHARGE EXCHANGER.ZONES";
const PUMP = "PIPE.OPERATING PIPE.LOOP PIPE.PUMPPOWER PIPE.SPEEDS";

/** By word: the functions that it asks for, the most likely first. */
export const TRADE_WORDS: Readonly<Record<string, string>> = {
  "R22 R-22 R410A R-410A R407C R32 R134a R454B R404A Freon refrigerant gas": GAS,
  "PT chart pressure-temperature card": "REFRIG.CHART REFRIG.PRESSURE REFRIG.TEMPERATURE",
  "hotgas hot gas discharge line": HOT_GAS,
  "desuperheater desuperheating": "EXCHANGER.ZONES CYCLE.SPLIT EXCHANGER.COIL",
  "condenser condensing unit heat of rejection THR": `${HEAT_REJECTED} CYCLE.FACTOR EXCHANGER.BALANCE`,
  "chiller compressor tonnage tons ton": `${HEAT_REJECTED} CYCLE.COP CYCLE.MASSFLOW SINK.RACK`,
  "AC air conditioner split unit rooftop": `${HEAT_REJECTED} AIRCON.GAIN EXCHANGER.BALANCE`,
  "SEER EER COP efficiency rating nameplate": "AIRCON.REJECTEDBYRATING CYCLE.COP AIRCON.GAIN",
  "glue primer solvent weld cement joint": "PIPE.CEMENT PIPE.CURE",
  "TDH total dynamic head feet of head": `${PUMP} PIPE.HEADLOSS PIPE.NETWORK`,
  "gpm circulator variable speed VSP RPM pump": PUMP,
  "cavitation suction lift NPSHA": "PIPE.NPSH",
  "Cv valve coefficient throttle balancing": "PIPE.VALVESETTING PIPE.NETWORK PIPE.LOOP",
  "water hammer surge": "PIPE.HAMMER",
  "lagging armaflex foam insulation": "PIPE.HEATLOSS LINE.HEATLOSS",
  "hanger clamp strap support": "PIPE.SUPPORT PIPE.EXPANSION",
  "anti-entrapment VGB drain": "PIPE.DRAINCOVER",
  "gallons gallonage litres": "POOL.VOLUME POOL.TURNOVER",
  "blanket cover wind evaporation rate": "POOL.EVAPORATION POOL.LOSSES POOL.YEAR POOL.SPREAD",
  "heat load BTU": "POOL.LOSSES POOL.HEAT POOL.YEAR POOL.WARMUP",
  "heat up time hours to heat": "POOL.WARMUP POOL.HEAT",
  "payback ROI savings saving return on investment": "COST.PAYBACK COST.COMPARE COST.OFHEAT",
  "pool heater gas bill therm propane utility": "COST.OFHEAT COST.COMPARE COST.PAYBACK",
  "CO2 emissions footprint carbon": "COST.CARBON COST.COMPARE",
  "LSI Langelier scale pH alkalinity chemistry": "WATER.BALANCE",
  "HX heat exchanger coaxial shell and tube titanium": "EXCHANGER.UA EXCHANGER.ZONES EXCHANGER.COIL EXCHANGER.BALANCE",
  "approach pinch TD delta T": "EXCHANGER.LMTD EXCHANGER.ZONES EXCHANGER.WATERRISE",
  "head pressure control fan cycling winter low ambient": "EXCHANGER.HOLDHEAD CONTROL.DIVERT REFRIG.PRESSURE",
  "line set lineset suction liquid": "LINE.DROP LINE.CHARGE LINE.BORE LINE.RISER",
  "weigh in charge topping off receiver": "LINE.CHARGE LINE.CHARGEBALANCE",
  "A2L leak mildly flammable": "LINE.ROOMLIMIT LINE.ROOMAREA REFRIG.FACTS",
  "micron microns vacuum evacuation dehydration": "LINE.BOILING",
  "pressure test nitrogen leak check": "LINE.TESTPRESSURE PRESSURE.TABLE",
  "high pressure switch cut-out HPS relief": "PRESSURE.TABLE PRESSURE.DESIGN PRESSURE.RELIEF",
  "thermistor 10k probe sensor": "CONTROL.SENSORTEMP CONTROL.SENSOROHMS",
  "diverter three-way reversing valve changeover sequence": "CONTROL.DIVERT LINE.VALVE PIPE.VALVESETTING",
  "DHW domestic hot water tank shower": "SINK.TANK",
  "walk-in freezer supermarket": "SINK.RACK",
  "degree days full load hours": "AIRCON.HOURS POOL.YEAR",
  "humidity RH wet bulb dew point psychrometric": "AIR.WETBULB AIR.DEWPOINT AIR.HUMIDITYRATIO",
};

/** The words that ask for a function first, and those that ask for others before it. */
export function tradeWordsOf(id: string): { readonly first: readonly string[]; readonly other: readonly string[] } {
  const first: string[] = [];
  const other: string[] = [];
  for (const [words, ids] of Object.entries(TRADE_WORDS)) {
    const all = ids.split(" ");
    if (all[0] === id) first.push(words);
    else if (all.includes(id)) other.push(words);
  }
  return { first, other };
}
