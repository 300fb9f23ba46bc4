/** Warnings on the technician's sheets. Common practice; codes and the maker's manual govern. */
import { gap, heading, type Line } from "../layout";
import { warning } from "../technicianParts";

export const REFRIGERANT_WARNINGS: readonly Line[] = [
  heading("part", "Read first"),
  warning(
    "Refrigerant work is for a certified technician (US: section 608). Recover before opening; venting is prohibited.",
  ),
  warning("Pressure test and brazing purge with dry NITROGEN only, regulator and relief fitted. Oxygen explodes."),
  warning("No refrigerant near a flame: it decomposes into toxic gas. Ventilate; leave the room when in doubt."),
  warning(
    "Mildly flammable blends (A2L, R-32 and R-454B among them) only in equipment listed for them, never as a drop-in.",
  ),
  warning("NEVER recover, evacuate or pump down a water-filled exchanger without water flow: it freezes and bursts."),
  gap,
];
