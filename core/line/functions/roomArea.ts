import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { REFRIGERANT } from "../../refrigerant/args";
import { RELEASE_HEIGHT, ROOM_OPTIONS, SYSTEM_CHARGE } from "../room/args";
import {
  circulationDuties,
  contestedFlammability,
  listedCoilOnly,
  noAreaAsked,
  roomIsACheckOnly,
} from "../room/cautions";
import { leastRoomArea, roomRules } from "../room/room";

const fernhill = { refrigerant: "R-454B", charge: 9.4, releaseHeight: 7.2, method: "circulation 0.5" } as const;
const printed = { refrigerant: "R-32", releaseHeight: 0.6, method: "unventilated as printed", units: "SI" } as const;

export const lineRoomArea = cellFunction({
  id: "LINE.ROOMAREA",
  topic: "line",
  summary: "Least floor area for a charge of a mildly flammable refrigerant.",
  keywords: ["A2L", "2L", "flammable", "room size", "minimum room area", "TAmin"],
  details: [
    "IEC 60335-2-40:2018, annex GG. Unventilated: the formula, but never less than the charge over 0.75 LFL h0; manuals' tables often print the formula alone, from m1 rounded (R-32: 1.84 kg).",
    "With circulation: the area of all rooms that the duct serves, 2.2 m (7.2 ft) of their height counted, half the flammability limit.",
    "0 up to m1 = 6 m³ · LFL. #N/A above m2 = 52 m³ · LFL without ventilation and above m3 = 260 m³ · LFL, and above 2,000 ft (610 m) of altitude, for which no factor is held.",
    "Call it for the charge before and after the pool exchanger and its lines (LINE.CHARGEBALANCE): the area grows with the charge, unventilated with its square.",
  ],
  args: { refrigerant: REFRIGERANT, charge: SYSTEM_CHARGE, releaseHeight: RELEASE_HEIGHT, ...ROOM_OPTIONS },
  returns: quantityResult("area", "least floor area"),
  facts: { limitUsed: "concentration", chargeWithoutLimit: "mass" },
  cautions: [
    { rule: roomIsACheckOnly, raisedBy: fernhill },
    { rule: listedCoilOnly, raisedBy: fernhill },
    { rule: circulationDuties, raisedBy: fernhill },
    { rule: contestedFlammability, raisedBy: fernhill },
    { rule: noAreaAsked, raisedBy: { ...fernhill, charge: 3 } },
  ],
  sources: ["iec60335"],
  example: fernhill,
  checks: [
    {
      inputs: { ...printed, charge: 2.5, flammabilityLimit: 0.307 },
      expected: 53.19,
      tolerance: 0.01,
      source: "manualR32",
    },
    {
      inputs: { ...printed, charge: 3.5, flammabilityLimit: 0.307 },
      expected: 104.26,
      tolerance: 0.01,
      source: "manualR32",
    },
    {
      inputs: { ...printed, releaseHeight: 1.8, charge: 1.84, flammabilityLimit: 0.307 },
      expected: 3.2,
      tolerance: 0.01,
      source: "manualR32",
      remark: "0.75 LFL h0 would ask 4.44 m²",
    },
    {
      inputs: { ...fernhill, refrigerant: "R-32", charge: 10, flammabilityLimit: "0.307 kg/m^3" },
      expected: 144.58,
      tolerance: 0.01,
      source: "manualR454B",
      remark: "14.458 ft² a pound, which follows from 0.307 kg/m³",
    },
  ],
  compute({ refrigerant, charge, releaseHeight, ...options }, { trace, recordFacts }) {
    const rules = roomRules(refrigerant, releaseHeight, options, trace);
    recordFacts({ limitUsed: rules.LFL, chargeWithoutLimit: rules.m1 });
    return leastRoomArea(rules, charge, trace);
  },
});
