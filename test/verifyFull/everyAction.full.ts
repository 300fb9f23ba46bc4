/** Every command of the Excel adapter broken off at every action that it sends, on Excel on the web. */
import { describe, expect, it } from "vitest";
import { COMMANDS, wrongAt } from "../workbook/excelCommands";
import { WEB } from "../excelHost";
import { actionsOf, distinct } from "../excelHost/faults";

describe(`Broken off on ${WEB.name}`, () => {
  for (const command of COMMANDS) {
    it(`"${command.name}" says the first error at every action, leaves no sheet, name or changed cell`, async () => {
      const labels = await actionsOf(WEB, command);
      const few = String(distinct(labels).length);
      console.log(`${command.name}: ${String(labels.length)} faults, one an action; ${few} of them once a member`);
      const wrong: string[] = [];
      for (let at = 0; at < labels.length; at++) wrong.push(...(await wrongAt(WEB, command, labels, at)));
      expect(wrong).toEqual([]);
    });
  }
});
