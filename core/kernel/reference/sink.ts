import { sourceEntries } from "./entry";

/** Hot water, space heat, refrigeration racks. */
export const sinkSources = sourceEntries({
  lblHotWater: {
    short: "LBNL Home Energy Saver",
    full: "Lawrence Berkeley National Laboratory, Home Energy Saver engineering documentation: water heating; hot water 8.2938 lb/gal and 1.000743 BTU/(lb·°F), 64 gal a day.",
    seen: "opened",
  },
  storageTanks: {
    short: "ASHRAE 90.1; US Energy Policy Act of 1992",
    full: "ANSI/ASHRAE/IES 90.1 and US Energy Policy Act of 1992, section 342(a)(5)(G): hot-water storage tanks over 140 gal are insulated to R-12.5 h·ft²·°F/BTU, as quoted by an insulation maker.",
    seen: "copied",
  },
  cdcLegionella: {
    short: "US CDC, Legionella control toolkit",
    full: "US Centers for Disease Control and Prevention: Toolkit for Controlling Legionella, potable water systems: grows best between 77 and 113 °F; circulating hot water above 120 °F, mixing valves near the fixtures.",
    seen: "opened",
  },
  ashrae12: {
    short: "ASHRAE Guideline 12-2000",
    full: "ASHRAE Guideline 12-2000: Minimizing the Risk of Legionellosis Associated with Building Water Systems: store hot water at 140 °F or more, distribute at 124 °F or more; as quoted in published Legionella texts.",
    seen: "copied",
  },
  scaldTimes: {
    short: "scald times",
    full: "Times to a serious burn: about 5 s at 140 °F, 5 to 10 min at 120 °F; as quoted in published Legionella texts, times from memory.",
    seen: "copied",
  },
  doubleWallCodes: {
    short: "FBC 608.16.3, SRCC 6.1.3.6, USEC appendix D",
    full: "Plumbing code clauses on heat exchangers for potable water: Florida Building Code 608.16.3, SRCC 6.1.3.6, Uniform Solar Energy Code appendix D: double wall vented to the air where the other fluid is toxic or unknown or at higher pressure.",
    seen: "opened",
  },
  en1264: {
    short: "EN 1264",
    full: "EN 1264: Water based surface embedded heating and cooling systems: basic curve q = 8.92 (floor surface − room)^1.1 W/m²; floor surface at most 29 °C (84 °F) where people stay.",
    seen: "memory",
  },
  heatRejectionFactors: {
    short: "heat rejection factors",
    full: "Published table of heat rejection factors of open and suction-cooled hermetic compressors by evaporating and condensing temperature (R-12/R-22 era), and an I-P table of the same kind (20 °F/110 °F hermetic: 1.33; −20 °F/105 °F: 1.55).",
    seen: "opened",
  },
  ornlReclaim2011: {
    short: "ORNL 2011; trade articles",
    full: "Oak Ridge National Laboratory: study of supermarket heat reclaim, 2011: holding the head pressure up usually costs more compressor energy than it yields; a supplier's article argues that +35 psi pays.",
    seen: "opened",
  },
  desuperheaterNotes: {
    short: "trade articles on desuperheaters",
    full: "Trade articles on heat reclaim: desuperheating is about 20 % of the heat rejected (10 to 25 % by refrigerant), to 140 °F and more.",
    seen: "opened",
  },
});
