/** Caution rules of a control that cycles. */
import { caution } from "../kernel/define/caution";

export const shortCycling = caution({
  code: "CONTROL-CYCLING-SHORT",
  severity: "Warning",
  source: "commonPractice",
  description: "The band alone switches faster than the least times.",
  needs: { bandOn: "minutes", bandOff: "minutes" },
  when: () => true,
  message: ({ bandOn, bandOff }, show) =>
    `By the band alone it is on for ${show(bandOn, "minutes")} and off for ${show(bandOff, "minutes")}: it must latch and wait. A compressor that short-cycles fails early; its maker's least times govern.`,
});

export const wideSwing = caution({
  code: "CONTROL-CYCLING-SWING",
  severity: "Caution",
  source: "commonPractice",
  description: "The water swings by more than one and a half bands.",
  needs: { swing: "temperature difference", band: "temperature difference" },
  when: ({ swing, band }) => swing > 1.5 * band,
  message: ({ swing, band }, show) =>
    `The water swings by ${show(swing, "temperature difference")} on a band of ${show(band, "temperature difference")}: keep that below every limit, and a flow proof before them.`,
});

export const startsEstimate = caution({
  code: "CONTROL-CYCLING-ESTIMATE",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "Starts an hour are estimates; makers state what they allow.",
  needs: {},
  when: () => true,
  message: () => "An estimate of one well-mixed mass. Makers of compressor and valve state the starts they allow.",
});
