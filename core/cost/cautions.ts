/** Caution rules of cost, carbon dioxide and payback. */
import { caution } from "../kernel/define/caution";

const BURNERS = ["natural gas", "propane", "fuel oil"];
export const fieldEfficiency = caution({
  code: "COST-FIELD-EFFICIENCY",
  severity: "Notice",
  source: "fsec8323",
  description: "Pool heaters with burners run at 50 to 75 % in the field, below their laboratory efficiency.",
  needs: { source: "word", used: "number" },
  when: ({ source, used }) => BURNERS.includes(source) && used > 0.75,
  message: ({ used }) =>
    `${Math.round(used * 100)} % is a laboratory figure: in the field pool heaters with burners reach 50 to 75 %, and planning uses 70 %.`,
});

export const unusualHeatPump = caution({
  code: "COST-HEAT-PUMP-COP",
  severity: "Caution",
  source: "doePoolCosts",
  description: "Pool heat pumps run at a COP of 3 to 7 over a season.",
  needs: { source: "word", used: "number" },
  when: ({ source, used }) => source === "heat pump" && (used < 3 || used > 7),
  message: ({ used }) =>
    `A COP of ${used.toFixed(1)} is unusual over a season: pool heat pumps reach 3 to 7, depending on air and water temperature. A rating at 80 °F air is not a season's mean.`,
});

export const typicalEfficiency = caution({
  code: "COST-TYPICAL-EFFICIENCY",
  severity: "Notice",
  source: "commonPractice",
  description: "Without an efficiency the source's typical one applies.",
  needs: { source: "word", used: "number", typical: "yes/no" },
  when: ({ source, typical }) => typical && source !== "electric resistance",
  message: ({ source, used }) =>
    `Uses ${used} of heat per energy bought, typical of ${source}: enter your own machine's figure if known.`,
});

export const userPrices = caution({
  code: "COST-OWN-TARIFF",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "Prices are the user's own and age: note date and tariff; standing and demand charges are excluded.",
  needs: {},
  when: () => true,
  message: () =>
    "As good as the price given: note its date and tariff. Standing and demand charges, delivery and upkeep are excluded; fuel contents are US averages.",
});

export const woodCarbon = caution({
  code: "COST-WOOD-CARBON",
  severity: "Notice",
  source: "epaFactors",
  description: "Carbon dioxide of wood counts at the chimney; inventories report it separately as biogenic.",
  needs: { source: "word" },
  when: ({ source }) => source === "wood",
  message: () =>
    "Counted at the chimney. Inventories report the carbon dioxide of wood separately (biogenic), since the wood absorbed it as it grew.",
});

export const neverPaysBack = caution({
  code: "COST-NO-PAYBACK",
  severity: "Caution",
  source: "nistHandbook135",
  description: "The discounted savings don't reach the cost within the years counted.",
  needs: { netPresentValue: "money", years: "years" },
  when: ({ netPresentValue }) => netPresentValue < 0,
  message: ({ years }) =>
    `Within ${years} years the discounted savings don't reach the cost: by money alone it doesn't pay at these rates.`,
});

export const costEstimate = caution({
  code: "COST-ESTIMATE",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "A payback is an estimate: weather and use change savings by 30 % and more; tax is excluded.",
  needs: {},
  when: () => true,
  message: () =>
    "Weather, use and wind change a pool's saving by 30 % and more: try the saving 30 % lower and higher. Tax, grants and residual value are excluded. Give discount and escalation both with or both without inflation.",
});

export const realOrNominal = caution({
  code: "COST-REAL-OR-NOMINAL",
  severity: "Notice",
  standing: true,
  source: "nistHandbook135",
  description: "Rates of discount and of rise: both with inflation or both without it.",
  needs: {},
  when: () => true,
  message: () => "Give discount and escalation both with inflation (nominal) or both without it (real), never mixed.",
});

export const lifeCyclePrices = caution({
  code: "COST-LIFECYCLE-PRICES",
  severity: "Notice",
  standing: true,
  source: "nistHandbook135",
  description:
    "A life-cycle cost is as good as its prices and rates: try them higher and lower. Tax and grants are excluded.",
  needs: {},
  when: () => true,
  message: () =>
    "As good as its prices: official US forecasts for the same year moved by 15 % for electricity and 16 % for propane in two years. Try energy, saving and discount rate 30 % lower and higher. Give all rates with or all without inflation. Tax and grants are excluded.",
});

export const losingAlternative = caution({
  code: "COST-LOSING",
  severity: "Caution",
  source: "nistHandbook135",
  description: "An alternative costs more over the years than the base.",
  needs: { losing: "word" },
  when: ({ losing }) => losing !== "",
  message: ({ losing }) => `Costs more over the years counted than the base: ${losing}.`,
});

export const noSingleRate = caution({
  code: "COST-NO-SINGLE-RATE",
  severity: "Notice",
  source: "nistHandbook135",
  description: "No rate, or more than one, makes the savings worth nothing: an internal rate means nothing then.",
  needs: { noRate: "word" },
  when: ({ noRate }) => noRate !== "",
  message: ({ noRate }) => `No single internal rate of return: ${noRate}. Go by net savings.`,
});

export const savingUnproven = caution({
  code: "COST-SAVING-UNPROVEN",
  severity: "Caution",
  source: "guideline14",
  description: "An uncertainty of half the saving or more proves little.",
  needs: { proof: "fraction" },
  when: ({ proof }) => proof >= 0.5,
  message: ({ proof }) =>
    `The saving is known to ${Math.round(100 * Math.min(9.99, proof))} % of itself only: longer records, shorter intervals or a meter on the part that was changed prove more.`,
});

export const modelOutside = caution({
  code: "COST-MODEL-OUTSIDE",
  severity: "Caution",
  source: "guideline14",
  description: "The model of before misses the guideline's limits of bias and variation.",
  needs: { outside: "yes/no" },
  when: ({ outside }) => outside,
  message: () => "Bias or variation of the model before lies outside the guideline's limits: mend the model first.",
});

export const adjustedBaseline = caution({
  code: "COST-ADJUSTED-BASELINE",
  severity: "Notice",
  standing: true,
  source: "guideline14",
  description: "What changed besides must be taken off: a leak, a new cover, guests.",
  needs: {},
  when: () => true,
  message: () =>
    "The expected use must be at the weather of after. Take off what else changed (a leak, a new cover, more guests). On monthly bills only savings above 10 % of the whole show.",
});

export const leakEstimate = caution({
  code: "COST-WARMING-ESTIMATE",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "Leak rate and recovery are estimates; venting refrigerant is unlawful.",
  needs: {},
  when: () => true,
  message: () =>
    "Leak rate and recovery are estimates of practice: logged top-ups tell better. Venting refrigerant is unlawful in most countries: licensed technicians recover it. A report's potentials differ from another's by up to 20 %: name the one used.",
});

export const warmingRises = caution({
  code: "COST-WARMING-RISES",
  severity: "Caution",
  source: "totalWarming",
  description: "The change adds more warming than it saves.",
  needs: { rises: "yes/no", change: "carbon dioxide" },
  when: ({ rises }) => rises,
  message: ({ change }, show) =>
    `The change adds ${show(change, "carbon dioxide")} of carbon dioxide equivalent over the years: look for a smaller charge, tighter joints, or enter the heat no longer bought (COST.CARBON).`,
});
