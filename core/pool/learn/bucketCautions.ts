/** Caution rules of a bucket test. */
import { caution } from "../../kernel/define/caution";

export const bucketConditions = caution({
  code: "POOL-BUCKET-TEST",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "The bucket is set in the pool with equal levels, fill off, water of both equally warm.",
  needs: {},
  when: () => true,
  message: () =>
    "Set the bucket in the pool, its water as warm as the pool's and level with it; automatic fill and backwash off, no bathers. Repeat with the pump on and off: a leak that changes lies on that side of the pump.",
});

export const bucketShort = caution({
  code: "POOL-BUCKET-SHORT",
  severity: "Caution",
  source: "identity",
  description: "A leak that the readings can't tell from none.",
  needs: { finding: "word", dailyLeak: "rain depth", dailyLeakError: "rain depth" },
  when: ({ finding, dailyLeak }) => finding === "none found" && dailyLeak !== 0,
  message: ({ dailyLeakError }, show) =>
    `A leak under ${show(2 * dailyLeakError, "rain depth")} a day can't be told from none by these readings. Measure over a week: the error falls with the days.`,
});

export const waterIsLost = caution({
  code: "POOL-LEAK",
  severity: "Warning",
  source: "commonPractice",
  description: "The pool loses more water than it evaporates.",
  needs: { finding: "word", dailyLeak: "rain depth", dailyLeakError: "rain depth" },
  when: ({ finding }) => finding === "leak",
  message: ({ dailyLeak }, show) =>
    `The pool loses ${show(dailyLeak, "rain depth")} a day beyond evaporation. Have it found and repaired before anything is sized by its losses: leaking water takes heat and chemicals and can wash out the ground under deck and pipes.`,
});
