/** Caution rules of the carbon dioxide of electricity. */
import { caution } from "../kernel/define/caution";

const ON_THE_GRID = ["electric resistance", "heat pump", "solar"];

export const gridAverage = caution({
  code: "COST-GRID-AVERAGE",
  severity: "Caution",
  standing: true,
  source: "egrid2018",
  description: "The factor for electricity is the US average of 2018; it changes with place and year.",
  needs: { source: "word", ownFactor: "yes/no" },
  when: ({ source, ownFactor }) => ON_THE_GRID.includes(source) && !ownFactor,
  message: () =>
    "Electricity counts 947 lb of carbon dioxide per MWh, the US grid average of 2018. Later years are lower (2022: about 823), regions differ threefold, and a saving displaces marginal plants: give your utility's or region's latest factor as gridFactor.",
});

export const ownGridFactor = caution({
  code: "COST-GRID-FACTOR",
  severity: "Notice",
  source: "commonPractice",
  description: "A grid factor of the user's own: average or marginal, and of which year and place.",
  needs: { ownFactor: "yes/no" },
  when: ({ ownFactor }) => ownFactor,
  message: () =>
    "Write beside the grid factor whether it is an average or a marginal one, and its year and place: in the US the marginal factor is nearly twice the average. A saving takes the marginal one.",
});
