/** Caution rules of refrigerant lines and commissioning. */
import { caution } from "../kernel/caution";
import { us } from "../kernel/quantity";

export const chargeByMaker = caution({
  code: "LINE-CHARGE-ADDER",
  severity: "Caution",
  source: "commonPractice",
  about: "The liquid alone; makers' adders are larger and govern.",
  needs: { answer: "mass" },
  when: () => true,
  say: () =>
    "This is the liquid that the bore holds, and no more: makers' adders per foot also cover vapour lines, oil and margin and are often 10 to 50 % larger. The equipment maker's charge table governs; a certified technician weighs the charge in, and the nameplate is changed to the new total.",
});

export const nitrogenTest = caution({
  code: "LINE-NITROGEN",
  severity: "Danger",
  source: "commonPractice",
  about: "Pressure tests: dry nitrogen with regulator and relief only.",
  needs: { answer: "pressure" },
  when: () => true,
  say: () =>
    "Dry nitrogen through a regulator and relief valve only: never oxygen (explosion) and never shop air; never above the design pressure on the nameplate of the weakest part. Trained technician; stand clear of the joints.",
});

export const deepVacuum = caution({
  code: "LINE-VACUUM-WATER",
  severity: "Warning",
  source: "commonPractice",
  about: "An exchanger full of water freezes when its refrigerant side is evacuated or pumped down.",
  needs: { vacuum: "vacuum" },
  when: () => true,
  say: () =>
    "Never recover, evacuate or pump down a water-filled exchanger without water flow: it freezes and bursts. Blank off or drain it first. The maker's vacuum limit governs (500 micron and a standing test are usual).",
});

export const fixedOrificeOnly = caution({
  code: "LINE-TARGET-ORIFICE",
  severity: "Notice",
  source: "commonPractice",
  about: "Target superheat is for fixed orifices on the outdoor coil.",
  needs: { answer: "temperature difference" },
  when: () => true,
  say: () =>
    "For a fixed orifice on its own outdoor coil, with the maker's airflow. No published target exists for pool mode, and machines with an expansion valve are charged by subcooling. The maker's chart governs; printed charts differ by about 1 °F.",
});

export const highTarget = caution({
  code: "LINE-TARGET-HIGH",
  severity: "Caution",
  source: "commonPractice",
  about: "A target above 25 °F: the load is far from where the rule was made.",
  needs: { answer: "temperature difference" },
  when: ({ answer }) => answer > us("temperature difference", 25),
  say: ({ answer }, show) =>
    `A target of ${show(answer, "temperature difference")} lies above 25 °F: humid indoor air or a cool day; let the rooms settle and measure again before adjusting the charge.`,
});

export const roomIsACheckOnly = caution({
  code: "LINE-ROOM-CHECK",
  severity: "Danger",
  source: "iec60335",
  about: "Room limits of mildly flammable refrigerants: a check only; listing and codes decide.",
  needs: {},
  when: () => true,
  say: () =>
    "Ignition of a leak can injure. This is a check by one clause only: the equipment's listing and manual, ASHRAE 15 or 15.2 and the local code decide. The charge meant is the whole system's, pool exchanger and added lines included. Mildly flammable refrigerants belong only in equipment listed for them.",
});
