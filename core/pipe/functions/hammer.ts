import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { listResult, quantityResult, wordResult } from "../../kernel/define/result";
import { densityOfWater } from "../../water/equations";
import { LOOP_WATER, NOMINAL_SIZE, SCHEDULE_NEEDED } from "../args";
import { rapidSurge, roundTrip, slowSurge, waveSpeed } from "../plastic/hammerEquations";
import { closingShare, surgeAboveRating } from "../plastic/hammerCautions";
import { deratingAt, ratingAt73 } from "../plastic/plastic";
import { pvcPipe, boreOf } from "../straight/bore";

/** Modulus of PVC at 73 °F and at 110 °F, Pa: 400,000 and 300,000 psi. */
const MODULUS = [us("temperature", 73), 2.76e9, us("temperature", 110), 2.07e9] as const;

/** Straight between the two and beyond, never above the cold one. */
function modulusAt(T: number): number {
  const [cold, stiff, warm, soft] = MODULUS;
  return stiff + (soft - stiff) * Math.max(0, (T - cold) / (warm - cold));
}

const EXAMPLE = { size: "2 in", schedule: "40", velocity: 6, length: 60, closing: 0.05, water: 73 };

export const pipeHammer = cellFunction({
  id: "PIPE.HAMMER",
  topic: "pipe",
  summary: "Surge pressure of a valve that closes on PVC pipe, against the pipe's rating.",
  keywords: ["water hammer", "surge", "Joukowsky", "solenoid valve", "check valve slam"],
  details: [
    "Closed within the round trip 2 L/a of the wave: Joukowsky's surge ρ a v; slower: 2 ρ L v/t of a uniform closing. Minimum wall, thin pipe free to move, water's bulk modulus 2.19 GPa; modulus of PVC 400,000 psi at 73 °F falling straight to 300,000 psi at 110 °F.",
    "Share is the part of the stroke that does the closing: 1 is the low figure. Many valves shut most of the flow in their last part (0.1 to 0.3); a rule in print, 0.070 v L/t in psi, ft/s and ft, is 2.6 times the uniform figure.",
    "Margin: the rating at the water's temperature less the surge; working pressure comes off it.",
  ],
  args: {
    size: NOMINAL_SIZE,
    schedule: SCHEDULE_NEEDED,
    velocity: quantity("velocity", "velocity that is stopped", { above: 0, usual: [0, us("velocity", 20)] }),
    length: quantity("length", "length of pipe to the next free surface or large branch", { above: 0 }),
    closing: quantity("seconds", "closing time", { from: 0, usual: [0, 300] }),
    water: LOOP_WATER,
    share: quantity("fraction", "part of the stroke that does the closing", { above: 0, to: 1 }).default(1),
  },
  returns: listResult("surge", {
    surge: quantityResult("pressure drop", "surge above the pressure before"),
    waveSpeed: quantityResult("velocity", "speed of the pressure wave"),
    roundTrip: quantityResult("seconds", "round trip of the wave"),
    rapidSurge: quantityResult("pressure drop", "surge if closed at once"),
    rating: quantityResult("pressure drop", "rating of the pipe at the water's temperature, plain ends"),
    margin: quantityResult("pressure drop", "rating less surge"),
    closing: wordResult("rapid or slow"),
  }),
  facts: { rating: "pressure drop", share: "fraction", surge: "pressure drop" },
  cautions: [
    { rule: surgeAboveRating, raisedBy: { ...EXAMPLE, velocity: 12, water: 110 } },
    { rule: closingShare, raisedBy: { ...EXAMPLE, closing: 2 } },
  ],
  checks: [
    {
      inputs: EXAMPLE,
      expected: { surge: 115, waveSpeed: 1425 },
      tolerance: "0.5 %",
      source: "hammerRows",
      remark: "1.83 m/s: 114.9 psi",
    },
    {
      inputs: { ...EXAMPLE, velocity: "1 m/s", closing: 15 },
      expected: { closing: "slow" },
      source: "hammerRows",
    },
  ],
  example: EXAMPLE,
  compute({ size, schedule, velocity: v, length: L, closing, water, share }, { trace, step, recordFacts }) {
    const rho = step(densityOfWater, { T: water });
    const w = us("diameter", pvcPipe(size, schedule).wall);
    const D = boreOf(size, schedule, "minimum wall", trace);
    const a = step(waveSpeed, { rho, E: modulusAt(water), D, w });
    const trip = step(roundTrip, { L, a });
    const rapid = step(rapidSurge, { rho, a, v });
    const t = closing * share;
    const surge = t <= trip ? rapid : step(slowSurge, { rho, L, v, t });
    const rating = ratingAt73(size, schedule, trace) * deratingAt(water, trace);
    recordFacts({ rating, share, surge });
    return {
      surge,
      waveSpeed: a,
      roundTrip: trip,
      rapidSurge: rapid,
      rating,
      margin: rating - surge,
      closing: t <= trip ? "rapid" : "slow",
    };
  },
});
