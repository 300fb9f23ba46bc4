/** Caution rules of refrigerant lines and commissioning. */
import { caution } from "../kernel/define/caution";
import { us } from "../kernel/values/quantity";

export const chargeByMaker = caution({
  code: "LINE-CHARGE-ADDER",
  severity: "Caution",
  standing: true,
  source: "commonPractice",
  description: "Liquid in the bore only; makers' adders are larger and govern.",
  needs: { answer: "mass" },
  when: () => true,
  message: () =>
    "This is only the liquid that the bore holds: makers' adders per foot also cover vapour lines, oil and margin and are often 10 to 50 % larger. The equipment maker's charge table governs; a certified technician weighs the charge in, and the nameplate is changed to the new total.",
});

export const nitrogenTest = caution({
  code: "LINE-NITROGEN",
  severity: "Danger",
  standing: true,
  source: "commonPractice",
  description: "Pressure tests: dry nitrogen with regulator and relief only.",
  needs: { answer: "pressure" },
  when: () => true,
  message: () =>
    "Dry nitrogen through a regulator and relief valve only: never oxygen (explosion) and never shop air; never above the design pressure on the nameplate of the weakest part. Trained technician; stand clear of the joints.",
});

export const deepVacuum = caution({
  code: "LINE-VACUUM-WATER",
  severity: "Warning",
  standing: true,
  source: "commonPractice",
  description: "An exchanger full of water freezes when its refrigerant side is evacuated or pumped down.",
  needs: { vacuum: "vacuum" },
  when: () => true,
  message: () =>
    "Never recover, evacuate or pump down a water-filled exchanger without water flow: it freezes and bursts. Blank off or drain it first. The maker's vacuum limit governs (500 micron and a standing test are usual).",
});

export const compoundGauge = caution({
  code: "LINE-COMPOUND-GAUGE",
  severity: "Caution",
  source: "identity",
  description:
    "The vacuum is an absolute pressure; inches of vacuum on a compound gauge count down from the atmosphere.",
  needs: { vacuum: "vacuum" },
  when: ({ vacuum }) => vacuum > us("vacuum", 100_000),
  message: ({ vacuum }, show) =>
    `${show(vacuum, "vacuum")} absolute is hardly a vacuum. Inches on a compound gauge count down from the atmosphere: 29 inHg of vacuum at sea level leave 0.92 inHg, about ${show(us("vacuum", 23_400), "vacuum")}. Give the micron gauge's reading.`,
});

export const fixedOrificeOnly = caution({
  code: "LINE-TARGET-ORIFICE",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "Target superheat is for fixed orifices on the outdoor coil.",
  needs: { answer: "temperature difference" },
  when: () => true,
  message: (_, show) =>
    `For a fixed orifice on its own outdoor coil, with the maker's airflow. No published target exists for pool mode, and machines with an expansion valve are charged by subcooling. The maker's chart governs; printed charts differ by about ${show(us("temperature difference", 1), "temperature difference")}.`,
});

export const highTarget = caution({
  code: "LINE-TARGET-HIGH",
  severity: "Caution",
  source: "commonPractice",
  description: "A target above 25 °F: the load is far from the data behind the rule.",
  needs: { answer: "temperature difference" },
  when: ({ answer }) => answer > us("temperature difference", 25),
  message: ({ answer }, show) =>
    `A target of ${show(answer, "temperature difference")} is above ${show(us("temperature difference", 25), "temperature difference")}: humid indoor air or a cool day; let the rooms settle and measure again before adjusting the charge.`,
});

export const iceInVacuum = caution({
  code: "LINE-VACUUM-ICE",
  severity: "Notice",
  source: "commonPractice",
  description: "Below the triple point of water a deep vacuum freezes the remaining water and dries slowly.",
  needs: { answer: "temperature", overIce: "yes/no" },
  when: ({ overIce }) => overIce,
  message: ({ answer }, show) =>
    `At this vacuum water left in the system is ice, which sublimes only where it is warmer than ${show(answer, "temperature")}: warm the parts, break the vacuum with dry nitrogen and evacuate again rather than pull deeper. Isolate the system for at least 10 minutes: a rise that levels off means moisture, a steady rise means a leak.`,
});

/** 2 °F of saturation temperature: the usual allowance of suction and discharge lines. */
const USUAL_LOSS = us("temperature difference", 2);
const FAST_LIQUID = us("velocity", 5);
const FAST_GAS = us("velocity", 65);

export const lineLoss = caution({
  code: "LINE-GAS-LOSS",
  severity: "Caution",
  source: "lineVelocities",
  description: "A suction or discharge line that costs more than 2 °F of saturation temperature.",
  needs: { saturationDrop: "temperature difference", service: "word", pressureDrop: "pressure drop" },
  when: ({ saturationDrop, service }) => service !== "liquid" && saturationDrop > USUAL_LOSS,
  message: ({ saturationDrop, service, pressureDrop }, show) =>
    `This ${service} line costs ${show(pressureDrop, "pressure drop")}, worth ${show(saturationDrop, "temperature difference")} of saturation temperature: more than the usual ${show(USUAL_LOSS, "temperature difference")}. Each degree takes about 1 to 2 % of capacity and power; use the next larger size if oil still returns.`,
});

export const flashGas = caution({
  code: "LINE-FLASH-GAS",
  severity: "Warning",
  source: "commonPractice",
  description: "Liquid flashes before the metering device.",
  needs: { outletQuality: "fraction", pressureDrop: "pressure drop" },
  when: ({ outletQuality }) => outletQuality > 0,
  message: ({ outletQuality, pressureDrop }, show) =>
    `The pressure falls by ${show(pressureDrop, "pressure drop")} and ${(100 * outletQuality).toFixed(1)} % of the liquid flashes before the metering device, which then starves; the true drop is larger, since flash gas moves faster. Increase subcooling or line size, or reduce the rise.`,
});

export const oilInRiser = caution({
  code: "LINE-OIL-RISER",
  severity: "Warning",
  source: "jacobs1976",
  description: "A gas riser whose flow is too small to carry oil up.",
  needs: { massFlow: "mass flow", leastFlow: "mass flow", rise: "length", service: "word" },
  when: ({ massFlow, leastFlow, rise, service }) => service !== "liquid" && rise > 0 && massFlow < leastFlow,
  message: ({ massFlow, leastFlow }, show) =>
    `Oil may not rise: the flow is ${show(massFlow, "mass flow")}, and this size needs about ${show(leastFlow, "mass flow")}. Use a smaller riser (or two in parallel) and check part load too; a compressor without oil fails.`,
});

export const fastLiquid = caution({
  code: "LINE-FAST-LIQUID",
  severity: "Caution",
  source: "lineVelocities",
  description: "Liquid faster than 5 ft/s: hammer when a solenoid valve closes.",
  needs: { velocity: "velocity", service: "word" },
  when: ({ velocity, service }) => service === "liquid" && velocity > FAST_LIQUID,
  message: ({ velocity }, show) =>
    `Liquid at ${show(velocity, "velocity")}: above about ${show(FAST_LIQUID, "velocity")} a closing valve causes hammer.`,
});

export const noisyGas = caution({
  code: "LINE-NOISY-GAS",
  severity: "Caution",
  source: "lineVelocities",
  description: "Gas faster than about 65 ft/s: noise and loss.",
  needs: { velocity: "velocity", service: "word" },
  when: ({ velocity, service }) => service !== "liquid" && velocity > FAST_GAS,
  message: ({ velocity }, show) =>
    `Gas at ${show(velocity, "velocity")}: above about ${show(FAST_GAS, "velocity")} lines are noisy and lossy.`,
});

export const riserAtPartLoad = caution({
  code: "LINE-RISER-PART-LOAD",
  severity: "Caution",
  standing: true,
  source: "jacobs1976",
  description: "The riser must carry oil at the machine's smallest step.",
  needs: { leastCoolingPartLoad: "heat rate" },
  when: () => true,
  message: ({ leastCoolingPartLoad }, show) =>
    `The smallest step of the machine (a first stage of 60 to 70 %, an inverter at 20 to 30 %) must still give ${show(leastCoolingPartLoad, "heat rate")}; below that oil stays in the riser. A smaller riser, or two in parallel with a trap at the foot, cures it. Good to about 10 %; the maker's line table governs.`,
});
