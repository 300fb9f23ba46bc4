/** Arguments of the room functions. */
import { choice, quantity } from "../../kernel/define/argument";
import { ALTITUDE } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";

export const ROOM_METHODS = ["unventilated", "unventilated as printed", "circulation 0.5"] as const;
export type RoomMethod = (typeof ROOM_METHODS)[number];

export const RELEASE_HEIGHT = quantity("length", "height at which a leak is released", {
  from: 0.6,
  to: 3,
  usual: [0.6, 2.2],
});

export const SYSTEM_CHARGE = quantity("mass", "charge of the whole system, pool exchanger and lines included", {
  above: 0,
  usual: [us("mass", 1), us("mass", 60)],
});

const ROOM_METHOD = choice("RoomMethod", ROOM_METHODS, "how the room is counted", {
  circulation: "circulation 0.5",
  "as printed": "unventilated as printed",
});

/** The arguments behind the charge, in their order. */
export const ROOM_OPTIONS = {
  method: ROOM_METHOD.default("unventilated"),
  ceilingHeight: quantity("length", "height of the ceiling", {
    from: 1.5,
    to: 12,
    usual: [us("length", 7), us("length", 14)],
  }).default(us("length", 7.2)),
  flammabilityLimit: quantity("concentration", "lower flammability limit, else the lowest published", {
    from: 0.1,
    to: 0.5,
    usual: [0.25, 0.4],
  }).optional(),
  altitude: ALTITUDE.default(0),
} as const;
