import { sourceEntries } from "./entry";

/** Sensors and the sequence of operation. */
export const controlSources = sourceEntries({
  ntcTable: {
    short: "10 kΩ NTC table",
    full: "Resistance table of the 10 kΩ NTC thermistor type II (sold as 10K3, among other names) and its Steinhart–Hart constants A 1.12924e-3, B 2.34108e-4, C 0.87755e-7, as published in instrument manuals.",
    seen: "opened",
  },
  ntcTypeThree: {
    short: "10 kΩ NTC type III",
    full: "Steinhart–Hart constants A 1.028444e-3, B 2.392435e-4, C 1.562216e-7 of the 10 kΩ NTC type III, as open firmware prints them (as 10K4); its table (29,490 ohm at 0 °C) from memory.",
    seen: "opened",
  },
  steinhartHart1968: {
    short: "Steinhart, Hart 1968",
    full: "J. S. Steinhart, S. R. Hart: Calibration curves for thermistors, Deep-Sea Research 15 (1968) 497–503.",
    seen: "memory",
  },
  betaEquation: {
    short: "beta equation of thermistors",
    full: "R = R25 exp(B (1/T − 1/298.15 K)), as thermistor data sheets define the beta value.",
    seen: "copied",
  },
  poolHeaterManual: {
    short: "heat-pump pool heater manual",
    full: "A maker's installation and operating instructions of a heat-pump pool heater (2017), page 30: once started the compressor runs for 3 minutes even where the set point is reached, unless high pressure, the water pressure switch, the high limit or the user stops it.",
    seen: "opened",
  },
  flowSwitchNotes: {
    short: "pool flow-switch notes",
    full: "Notes on flow proof at pool heaters: a paddle switch typically closes near 20 gpm, a pressure switch at 1.5 psi and can be fooled by elevation.",
    seen: "opened",
  },
});
