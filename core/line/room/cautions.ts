/** Caution rules of mildly flammable charges in rooms. */
import { caution } from "../../kernel/define/caution";
import { limitDoubts } from "../../refrigerant/facts";

export const roomIsACheckOnly = caution({
  code: "LINE-ROOM-CHECK",
  severity: "Danger",
  standing: true,
  source: "iec60335",
  description: "A check only: listing and codes decide.",
  needs: {},
  when: () => true,
  message: () =>
    "Ignition of a leak can injure. This compares a charge with single clauses: listing, label and manual (whose own factors govern), ASHRAE 15 or 15.2 and the local code decide. Enter the whole system's charge, pool exchanger and added lines included. Only equipment listed for such refrigerants may hold them.",
});

export const listedCoilOnly = caution({
  code: "LINE-ROOM-LISTING",
  severity: "Warning",
  standing: true,
  source: "commonPractice",
  description: "The listing covers the machine's own coils only.",
  needs: {},
  when: () => true,
  message: () =>
    "The machine's listing covers its own coils only: an added pool exchanger changes charge, label and leak detection and needs the maker's written consent or a field evaluation. Check before and after (LINE.CHARGEBALANCE). A coil outdoors is no relief.",
});

export const contestedFlammability = caution({
  code: "LINE-FLAMMABILITY-SPREAD",
  severity: "Notice",
  source: "iec60335",
  description: "Published flammability limits differ or are from memory: the lower one counts.",
  needs: { refrigerant: "word", limitUsed: "concentration" },
  when: ({ refrigerant }) => limitDoubts(refrigerant, String) !== undefined,
  message: ({ refrigerant, limitUsed }, show) =>
    `Lower flammability limit ${show(limitUsed, "concentration")} (${limitDoubts(refrigerant, (limit) => show(limit, "concentration")) ?? ""}): codes were revised in 2026; take that of the equipment's listing.`,
});

export const chargeAboveLimit = caution({
  code: "LINE-ROOM-ABOVE",
  severity: "Danger",
  source: "iec60335",
  description: "The charge is above the room's limit.",
  needs: { charge: "mass", chargeLimit: "mass", governs: "word" },
  when: ({ charge, chargeLimit }) => charge > chargeLimit,
  message: ({ charge, chargeLimit, governs }, show) =>
    `A charge of ${show(charge, "mass")} is above ${show(chargeLimit, "mass")} (${governs}). Take a larger room, or detection with circulation by the listing.`,
});

export const circulationDuties = caution({
  code: "LINE-ROOM-CIRCULATION",
  severity: "Warning",
  source: "commonPractice",
  description: "Circulation counts only with leak detection.",
  needs: { method: "word" },
  when: ({ method }) => method === "circulation 0.5",
  message: () =>
    "Circulation counts only with listed leak detection: signal at 25 % of the flammability limit, within 30 s fan on and compressor off for 5 min, no zone shut off. US editions may ask twice the airflow: the maker's figure governs.",
});

export const noAreaAsked = caution({
  code: "LINE-ROOM-NO-AREA",
  severity: "Notice",
  source: "iec60335",
  description: "Up to m1 = 6 m³ · LFL no floor area is asked.",
  needs: { answer: "area", charge: "mass", chargeWithoutLimit: "mass" },
  when: ({ answer }) => answer === 0,
  message: ({ charge, chargeWithoutLimit }, show) =>
    `No floor area is asked: ${show(charge, "mass")} is at or below 6 m³ · LFL, ${show(chargeWithoutLimit, "mass")}.`,
});
