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
  jcgm100: {
    short: "JCGM 100",
    full: "JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM): law of propagation 5.2, effective degrees of freedom G.4; example H.2, its inputs as the examples of MSLNZ/GTC and its table H.4 as the tests of sandialabs/suncal (public code) quote them.",
    seen: "copied",
  },
  jcgm101: {
    short: "JCGM 101",
    full: "JCGM 101:2008, Evaluation of measurement data: propagation of distributions using a Monte Carlo method; distributions of 6.4, examples of 9.2 to 9.5 as public code quotes them.",
    seen: "copied",
  },
  distributionRows: {
    short: "distributions in Python",
    full: "Exact percentiles of sums, products and ratios of distributions, in closed form or by quadrature in Python (numpy, scipy), beside eight scrambled samples of 4.2 million.",
    seen: "opened",
  },
  suncal: {
    short: "suncal tests",
    full: "sandialabs/suncal, public test suite at d44c2cc1: effective degrees of freedom of 0.57 (9) and 0.25 (infinite), 12.8; of GUM H.1, 16.7.",
    seen: "opened",
  },
  sobolShares: {
    short: "Saltelli et al. 2010",
    full: "A. Saltelli et al.: Variance based sensitivity analysis of model output, Computer Physics Communications 181 (2010) 259-270; estimators as SALib (public code) has them; Ishigami and Homma 1990.",
    seen: "copied",
  },
});
