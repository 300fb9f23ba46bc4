/** Caution rules of evaporation. */
import { caution } from "../../kernel/define/caution";

export const evaporationMethodSpread = caution({
  code: "POOL-METHOD-SPREAD",
  severity: "Notice",
  standing: true,
  source: "smithLofJones1994",
  description: "Published relations of evaporation stand 1.5 to 2.6 times apart at the same inputs.",
  needs: { evaporationBy: "word" },
  when: () => true,
  message: ({ evaporationBy }) =>
    `Evaporation by ${evaporationBy}. Published relations stand 1.5 to 2.6 times apart at the same inputs: name the method beside the figure, and see the others in the working.`,
});

export const dew = caution({
  code: "POOL-DEW",
  severity: "Caution",
  source: "identity",
  description:
    "Negative evaporation: the air holds more vapour than the water gives, so dew settles on the pool and warms it.",
  needs: { evaporation: "mass flow" },
  when: ({ evaporation }) => evaporation < 0,
  message: ({ evaporation }, show) =>
    `Evaporation is negative, ${show(evaporation, "mass flow")}: the air's dew point is above the water, so vapour settles on it and warms it. Check humidity and water temperature; the relations were not measured there.`,
});

export const handbookFactor = caution({
  code: "POOL-HANDBOOK-ACTIVITY",
  severity: "Notice",
  source: "ashraeApplications2011",
  description: "Activity 1 of the handbook relations is a busy public pool; a residential one is 0.5.",
  needs: { handbookActivity: "number" },
  when: ({ handbookActivity }) => handbookActivity === 1,
  message: () =>
    "Activity 1 means a busy public pool with these handbook relations: 0.5 residential, 0.65 condominium, fitness or therapy, 0.8 hotel, 1.5 and more with waves or slides. Measured quiet pools gave 0.72 to 0.84 of Carrier.",
});

export const activityInUse = caution({
  code: "POOL-ACTIVITY-IN-USE",
  severity: "Notice",
  source: "smithLofJones1998",
  description:
    "Beside a quiet-water relation, activity is the ratio to the undisturbed surface: 1.4 to 1.7 were measured.",
  needs: { quietActivity: "number" },
  when: ({ quietActivity }) => quietActivity > 1,
  message: ({ quietActivity }) =>
    `Activity ${quietActivity} multiplies the undisturbed surface: 1.4 to 1.7 were measured in use, 1.7 with 15 to 20 swimmers per 1,000 ft². Count it for hours of use only.`,
});

export const indoorRelation = caution({
  code: "POOL-INDOOR-RELATION",
  severity: "Caution",
  source: "ashraeApplications2011",
  description: "ASHRAE indoor and VDI 2089 know no wind: they hold in still indoor air.",
  needs: { windOnIndoorRelation: "wind speed" },
  when: ({ windOnIndoorRelation }) => windOnIndoorRelation > 0.15,
  message: ({ windOnIndoorRelation }, show) =>
    `The wind of ${show(windOnIndoorRelation, "wind speed")} is not in this indoor relation (air at 10 to 30 ft/min): outdoors it reads far too low. Use Smith-Lof-Jones or Carrier.`,
});

export const lakeWind = caution({
  code: "POOL-MCMILLAN-WIND",
  severity: "Notice",
  standing: true,
  source: "mcMillan1971",
  description: "McMillan's relation is of lakes and counts the wind at 3 m above the water.",
  needs: { windAt3m: "wind speed" },
  when: () => true,
  message: ({ windAt3m }, show) =>
    `McMillan takes ${show(windAt3m, "wind speed")} as the wind at 3 m above the water; that at the surface is lower. Its area term is stretched far below the lakes that it was fitted to.`,
});
