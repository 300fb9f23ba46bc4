/** Caution rules of the seasonal rating. */
import { caution } from "../../kernel/define/caution";

export const seasonNotField = caution({
  code: "AIRCON-SEASON-RATING",
  severity: "Notice",
  standing: true,
  source: "ahri210",
  description: "A rating compares machines in one climate and at one oversizing; it isn't the electricity of a house.",
  needs: {},
  when: () => true,
  message: () =>
    "A rating compares machines on eight fixed bins at 10 % oversize; the maker's certificate governs. It says nothing about heat rejected at one temperature: for that use the rows of the machine (AIRCON.FROMTABLE, AIRCON.ATOUTDOOR).",
});

export const assumedLoss = caution({
  code: "AIRCON-SEASON-LOSS",
  severity: "Caution",
  source: "ahri210Code",
  description: "Cycling loss is the default of 0.25; tested machines have 0.05 to 0.15.",
  needs: { lossAssumed: "yes/no" },
  when: ({ lossAssumed }) => lossAssumed,
  message: () =>
    "The cycling loss is the standard's default of 0.25 (0.20 in its 2026 edition); tested machines have about 0.05 to 0.15 (from memory). The rating of one two-stage machine moves from 14.8 to 16.1 between 0.25 and 0.",
});
