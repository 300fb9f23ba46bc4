/** Caution rules of the changed circuit's pressures and their tests. */
import { caution } from "../../kernel/define/caution";

export const orderOfTests = caution({
  code: "PRESSURE-STEPS",
  severity: "Danger",
  standing: true,
  source: "testLimits",
  description: "The order of the pressure tests.",
  needs: { highTest: "pressure" },
  when: () => true,
  message: ({ highTest }, show) =>
    `Dry nitrogen only, through a regulator and a relief below 130 % of every part's design pressure; never oxygen or air. Order (common practice): 1. braze under flowing nitrogen; 2. strength-test added parts alone, 10 min; 3. join, open all valves, raise in steps; 4. leak-test at most at ${show(highTest, "pressure")}, soap each joint; 5. standing test (LINE.TESTPRESSURE); 6. release, drain the water side, evacuate from all ports, hold; 7. charge, set and try the cut-out. Gauge to 120 % of design. Trained technicians; manuals and local code govern.`,
});

export const bothBranches = caution({
  code: "PRESSURE-BRANCHES",
  severity: "Warning",
  standing: true,
  source: "commonPractice",
  description: "How both branches are reached: ports and valve positions.",
  needs: {},
  when: () => true,
  message: () =>
    "The pool coil lies between a pilot valve that won't shift without a pressure difference and a check valve: nitrogen or vacuum at the machine's ports may not reach it. Fit access ports on both sides of each and use all of them, a gauge on each branch. During nitrogen and vacuum: king, ball and solenoid valves open (magnet), diverting valve as its sheet says for service, pressure from the inlet side of the check valve. A branch whose gauge doesn't follow is neither tested nor dry.",
});

export const weakestPart = caution({
  code: "PRESSURE-WEAKEST",
  severity: "Danger",
  source: "commonPractice",
  description: "A part holds less than the design pressure of its side.",
  needs: { weakestPart: "word", weakestMargin: "pressure drop" },
  when: ({ weakestMargin }) => weakestMargin < 0,
  message: ({ weakestPart: part, weakestMargin }, show) =>
    `The ${part} is ${show(-weakestMargin, "pressure drop")} short of its design pressure: don't build it in. Take a heavier wall, a smaller tube or a part marked for this refrigerant; never coils of R-22 or R-407C on R-410A, R-32 or R-454B.`,
});

export const testBelowDesign = caution({
  code: "PRESSURE-TEST-LOW",
  severity: "Warning",
  source: "commonPractice",
  description: "The weakest connected part limits the test.",
  needs: { highTest: "pressure", highDesign: "pressure" },
  when: ({ highTest, highDesign }) => highTest < highDesign,
  message: ({ highTest, highDesign }, show) =>
    `The weakest connected part (low side of the nameplate, compressor shell) limits the test to ${show(highTest, "pressure")}, below the design pressure of ${show(highDesign, "pressure")}: test added parts alone before they are joined.`,
});

export const unratedParts = caution({
  code: "PRESSURE-UNRATED",
  severity: "Warning",
  source: "commonPractice",
  description: "Parts without a known pressure.",
  needs: { unratedParts: "word" },
  when: ({ unratedParts: parts }) => parts !== "",
  message: ({ unratedParts: parts }) =>
    `No pressure known for ${parts}: the tests leave them out. Read their marks first, unless they aren't there.`,
});

export const waterSideRelief = caution({
  code: "PRESSURE-WATER-SIDE",
  severity: "Danger",
  standing: true,
  source: "commonPractice",
  description: "A leaking tube brings refrigerant pressure to the water side.",
  needs: {},
  when: () => true,
  message: () =>
    "A tube that fails puts hundreds of psi into a plastic shell: never valve the water side in without relief to a safe place (usually the open return to the pool). Water standing in an evacuated coil freezes and bursts it.",
});
