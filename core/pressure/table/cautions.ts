/** Caution rules of the changed circuit's pressures and their tests. */
import { caution } from "../../kernel/define/caution";

export const orderOfTests = caution({
  code: "PRESSURE-STEPS",
  severity: "Danger",
  source: "testLimits",
  description: "The order of the pressure test, from parts alone to the standing test.",
  needs: { highTest: "pressure" },
  when: () => true,
  message: ({ highTest }, show) =>
    `Gas under pressure kills: dry nitrogen only, through a regulator and a relief set above the test pressure and below 130 % of the design pressure of every part; never oxygen or air. Order (common practice): 1. braze under flowing nitrogen; 2. strength-test added parts alone, before they join the machine, 10 min; 3. join, open every valve of the section, raise in steps and listen; 4. leak-test at most at ${show(highTest, "pressure")} and soap each joint; 5. standing test, corrected by LINE.TESTPRESSURE; 6. release, drain the water side, evacuate from all ports, hold the vacuum; 7. charge, then set and try the cut-out. Gauge to 120 % of the design pressure at least. Trained technicians; manuals and local code govern.`,
});

export const bothBranches = caution({
  code: "PRESSURE-BRANCHES",
  severity: "Warning",
  source: "commonPractice",
  description: "The pool branch is shut in by pilot valve and check valve: ports on both sides, valve positions.",
  needs: {},
  when: () => true,
  message: () =>
    "The pool coil lies between a pilot valve that doesn't shift without a pressure difference and a check valve that lets nothing back: nitrogen or vacuum at the machine's ports may not reach it. Fit an access port on the coil's side of both, and on the machine's side; fill and evacuate through all of them, with a gauge on each branch. During nitrogen and during vacuum: king, ball and solenoid valves open (solenoids held by magnet), diverting valve as its sheet says for service, pressure from the check valve's inlet side. A branch whose gauge doesn't follow is neither tested nor dry.",
});

export const weakestPart = caution({
  code: "PRESSURE-WEAKEST",
  severity: "Danger",
  source: "commonPractice",
  description: "A part holds less than the design pressure of its side.",
  needs: { weakestPart: "word", weakestMargin: "pressure drop" },
  when: ({ weakestMargin }) => weakestMargin < 0,
  message: ({ weakestPart: part, weakestMargin }, show) =>
    `The ${part} is ${show(-weakestMargin, "pressure drop")} short of the design pressure of its side: don't build it in. Take a heavier wall, a smaller tube or a part marked for this refrigerant; coils of R-22 or R-407C machines must not be used again on R-410A, R-32 or R-454B.`,
});

export const testBelowDesign = caution({
  code: "PRESSURE-TEST-LOW",
  severity: "Warning",
  source: "commonPractice",
  description: "The weakest connected part keeps the test below the high side's design pressure.",
  needs: { highTest: "pressure", highDesign: "pressure" },
  when: ({ highTest, highDesign }) => highTest < highDesign,
  message: ({ highTest, highDesign }, show) =>
    `Connected to the whole machine the added parts can be tested at ${show(highTest, "pressure")} only, below their design pressure of ${show(highDesign, "pressure")}: the weakest connected part governs (the nameplate's low side, the compressor shell). Test them alone before they are joined, or shut the high side off by service valves that are rated for it.`,
});

export const unratedParts = caution({
  code: "PRESSURE-UNRATED",
  severity: "Warning",
  source: "commonPractice",
  description: "Parts without a known pressure.",
  needs: { unratedParts: "word" },
  when: ({ unratedParts: parts }) => parts !== "",
  message: ({ unratedParts: parts }) =>
    `No pressure is known for: ${parts}. The test pressures leave them out: read their marks or sheets first. A part that isn't there may stay empty.`,
});

export const waterSideRelief = caution({
  code: "PRESSURE-WATER-SIDE",
  severity: "Danger",
  source: "commonPractice",
  description: "A leaking tube brings refrigerant pressure to the water side.",
  needs: {},
  when: () => true,
  message: () =>
    "A tube that fails puts refrigerant at several hundred psi into a shell and pipe of plastic: never valve the water side in on both sides without relief to a safe place; an open return to the pool is the usual relief. Water that stands in an evacuated or pumped-down coil freezes and bursts it: drain it or keep it flowing.",
});
