import { sourceEntries } from "./entry";

/** Identities, practice, units and the atmosphere. */
export const generalSources = sourceEntries({
  identity: { short: "identity", full: "Follows from definitions and units alone.", seen: "rule" },
  commonPractice: {
    short: "common practice",
    full: "A rule of the trade without a single published source.",
    seen: "rule",
  },
  nistSp811: {
    short: "NIST SP 811",
    full: "A. Thompson, B. N. Taylor: Guide for the Use of the International System of Units, NIST Special Publication 811, 2008, appendix B.",
    seen: "memory",
  },
  standardAtmosphere1976: {
    short: "US Standard Atmosphere 1976",
    full: "NOAA, NASA, USAF: U.S. Standard Atmosphere, 1976, NOAA-S/T 76-1562, Washington 1976.",
    seen: "memory",
  },
  ansiZ535: {
    short: "ANSI Z535.4",
    full: "ANSI Z535.4: Product Safety Signs and Labels (signal words Danger, Warning, Caution, Notice).",
    seen: "memory",
  },
});
