/** Cautions of machines that their own board drives. */
import { caution } from "../../kernel/define/caution";
import type { StageInputs } from "./description";

export const boardDrivesMachine = caution({
  code: "AIRCON-COMMUNICATING",
  severity: "Warning",
  source: "commonPractice",
  description: "Communicating and inverter machines: the board may lock out when the outdoor coil is bypassed.",
  needs: { boardDriven: "word" },
  when: () => true,
  message: ({ boardDriven }) =>
    `${boardDriven}: its board drives fan, expansion valve and oil return by sensors on the outdoor coil, and may lock out or starve the compressor of oil when that coil is bypassed. Go on only with the maker's written consent and the maker's own control terminals; never trick a sensor.`,
});

/** The fact for it; none where no board is known to drive the machine. */
export const boardFacts = ({ communicating, machineType }: Pick<StageInputs, "communicating" | "machineType">) =>
  communicating
    ? { boardDriven: "A communicating machine" }
    : machineType === "variable speed"
      ? { boardDriven: "A variable-speed (inverter) machine" }
      : {};
