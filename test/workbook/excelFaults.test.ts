/** Every command of the Excel adapter broken off once at each member that it uses, and at its first and last action. */
import { describe, expect, it } from "vitest";
import { WEB, WINDOWS_17 } from "../excelHost";
import { actionsOf, distinct } from "../excelHost/faults";
import { COMMANDS, wrongAt } from "./excelCommands";

describe.each([WEB, WINDOWS_17])("Broken off on $name,", (profile) => {
  for (const command of COMMANDS) {
    it(
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
