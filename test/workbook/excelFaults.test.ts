/** Every command of the Excel adapter broken off once at each member that it uses, and at its first and last action. */
import { describe, expect, it } from "vitest";
import { WEB, WINDOWS_17 } from "../excelHost";
import { actionsOf, distinct } from "../excelHost/faults";
import { COMMANDS, wrongAt } from "./excelCommands";

/**
 * The first two make sheets that they can't take away again: workbook names of a starter sheet stay, meaning nothing; the
 * error of the clean-up hides that of a refused `add`; with undo groups the clean-up itself is refused. The last
 * leaves the rejection unhandled where Excel refuses to take handlers away.
 */
const FAILING: readonly string[] = ["insert", "hand over", "listen to changes"];

describe.each([WEB, WINDOWS_17])("Broken off on $name,", (profile) => {
  for (const command of COMMANDS) {
    const test = FAILING.includes(command.name) ? it.fails : it;
    test(
      `"${command.name}" says the first error, leaves no sheet, name or changed cell`,
      { timeout: 120_000 },
      async () => {
        const labels = await actionsOf(profile, command);
        const wrong: string[] = [];
        for (const at of distinct(labels)) wrong.push(...(await wrongAt(profile, command, labels, at)));
        expect(labels).not.toEqual([]);
        expect(wrong).toEqual([]);
      },
    );
  }
});
