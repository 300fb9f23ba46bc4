/** Caution rules of the acceptance test. */
import { caution } from "../../kernel/define/caution";

export const commissionDiffers = caution({
  code: "EXCHANGER-COMMISSION-DIFFERS",
  severity: "Caution",
  source: "commonPractice",
  description: "Readings lie outside what the model and the errors let pass.",
  needs: { differing: "word", meaning: "word" },
  when: ({ differing }) => differing !== "",
  message: ({ differing, meaning }) =>
    `Outside what is let pass: ${differing}. ${meaning === "" ? "No usual pattern: check the readings first." : `It may mean: ${meaning}.`}`,
});

export const commissionTest = caution({
  code: "EXCHANGER-COMMISSION-TEST",
  severity: "Caution",
  standing: true,
  source: "commonPractice",
  description: "Settled readings by a licensed technician; a pattern points, it doesn't prove.",
  needs: {},
  when: () => true,
  message: () =>
    "Readings by a licensed technician after 20 settled minutes in each mode, full load, no defrost. A pattern points, it doesn't prove: check instruments before refrigerant. Charge by the maker's procedure and scale; agreement here replaces no maker's or code test.",
});
