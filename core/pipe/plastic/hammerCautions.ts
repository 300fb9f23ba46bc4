/** Caution rules of water hammer. */
import { caution } from "../../kernel/define/caution";

export const surgeAboveRating = caution({
  code: "PIPE-HAMMER-RATING",
  severity: "Danger",
  source: "plasticsManual",
  description: "The surge takes more than half of the pipe's rating at the water's temperature.",
  needs: { surge: "pressure drop", rating: "pressure drop" },
  when: ({ surge, rating }) => surge > rating / 2,
  message: ({ surge, rating }, show) =>
    `A surge of ${show(surge, "pressure drop")} on top of the working pressure, against a rating of ${show(rating, "pressure drop")} for plain ends: fittings and unions may burst. Close slower, or slow the water.`,
});

export const closingShare = caution({
  code: "PIPE-HAMMER-STROKE",
  severity: "Notice",
  source: "commonPractice",
  description: "A valve may shut most of its flow in the last part of its stroke.",
  needs: { share: "fraction" },
  when: ({ share }) => share > 0.3,
  message: () =>
    "This is the low figure, for a uniform closing: many valves shut most of the flow in the last 0.1 to 0.3 of their stroke. Try that share.",
});
