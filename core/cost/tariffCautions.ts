/** Caution rules of a tariff. */
import { caution } from "../kernel/define/caution";

export const hourlyDemand = caution({
  code: "COST-HOURLY-DEMAND",
  severity: "Caution",
  source: "commonPractice",
  description: "Utilities bill the highest 15 or 30 minutes: means of an hour read low.",
  needs: { charged: "yes/no" },
  when: ({ charged }) => charged,
  message: () =>
    "Demand is billed by the highest 15 or 30 minutes of the whole building: means of an hour of one machine read low, and its peak may not fall into the building's. A cooler condenser cuts the peak only if it works in the peak hour: a pool at its limit cuts nothing.",
});

export const shiftedHours = caution({
  code: "COST-SHIFTED-HOURS",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "Pump hours that move to a cheap band are no saving of the exchanger. Check the tariff's own text.",
  needs: {},
  when: () => true,
  message: () =>
    "Pump hours that move to a cheap band are no saving of the exchanger. Taxes, riders, tiers by energy and power factor are excluded: check the tariff's own text.",
});
