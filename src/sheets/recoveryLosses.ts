/** The pool's losses on the sheet "Recovery sizing": the weather and cover that they depend on, and what they come to. */
import { computed, heading, input, type Line } from "./build";

export const LOSS_LINES: readonly Line[] = [
  heading("group", "Weather and use"),
  input("water", "Wanted water temperature", 82, "°F", {
    validation: { from: 40, to: 104, prompt: "40 to 104 °F" },
    source: "owner, within the health code",
    note: "Each °F more costs 10 to 30 % more heat.",
  }),
  input("air", "Air temperature", 72, "°F", {
    validation: { from: -40, to: 130, prompt: "-40 to 130 °F" },
    source: "monthly mean of the month sized for",
  }),
  input("humidity", "Relative humidity", 0.6, "", {
    format: "0%",
    validation: { from: 0, to: 1, prompt: "0 to 100 %" },
    source: "monthly mean",
  }),
  input("windAt10m", "Wind at the weather station", 7, "mph", {
    validation: { from: 0, to: 100, prompt: "0 to 100 mph" },
    source: "monthly mean at 10 m",
  }),
  input("shelter", "Shelter", "suburban", "", {
    validation: { list: ["open", "suburban", "sheltered"], prompt: "open, suburban or sheltered" },
    source: "survey",
  }),
];

export const LOSS_RESULTS: readonly Line[] = [
  heading("group", "2 What the pool loses"),
  computed("windAtWater", "Wind at the water", "=WARMBACK.POOL.WINDATWATER([windAt10m],[shelter])", "mph", {
    format: "0.0",
    source: "POOL.WINDATWATER",
  }),
  computed(
    "evaporation",
    "Evaporation",
    "=WARMBACK.POOL.EVAPORATION([area],[water],[air],[humidity],[windAtWater])",
    "lb/h",
    {
      format: "0.0",
      source: "POOL.EVAPORATION, Smith, Löf and Jones",
      note: "Other published relations stand 1.5 to 2.6 apart.",
    },
  ),
  computed(
    "evaporationHeat",
    "Heat lost with it",
    "=[evaporation]*INDEX(WARMBACK.WATER.PROPERTIES([water]),6,2)",
    "BTU/h",
    { format: "#,##0", source: "latent heat, WATER.PROPERTIES" },
  ),
  computed("loss", "Heat lost by the surface rule", "=WARMBACK.POOL.SURFACELOSS([area],[water],[air])", "BTU/h", {
    format: "#,##0",
    source: "POOL.SURFACELOSS, 10.5 BTU/(h·ft²·°F)",
    note: "Holds evaporation, convection and radiation: never add them to it.",
  }),
];
