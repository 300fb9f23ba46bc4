/** Caution rules of heat lost from pipes. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";

export const earlyGroundLoss = caution({
  code: "PIPE-HEAT-GROUND",
  severity: "Notice",
  source: "conductionTexts",
  description: "A buried pipe loses more than this for its first weeks, and near other pipes less.",
  needs: { buried: "yes/no" },
  when: ({ buried }) => buried,
  message: () => "Steady loss of one pipe alone: for the first weeks it is larger, and wet ground doubles it.",
});

export const hotLine = caution({
  code: "LINE-HEAT-BURN",
  severity: "Danger",
  source: "commonPractice",
  description: "A line's surface above 140 °F burns.",
  needs: { surface: "temperature" },
  when: ({ surface }) => surface > us("temperature", 140),
  message: ({ surface }, show) =>
    `The surface is at ${show(surface, "temperature")}: it burns at a touch. Insulate or guard it, and keep plastic away.`,
});
