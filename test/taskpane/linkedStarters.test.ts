import { describe, expect, test } from "vitest";
import { STARTER_SHEETS } from "../../src/sheets";
import { hasNamesOf, projectFor } from "../../src/taskpane/model/linkedStarters";
import { linkNames } from "../../src/workbook/starterCells";

describe("A starter sheet with links", () => {
  test("takes its values from the sheet Project, which takes none itself", () => {
    const linked = STARTER_SHEETS.filter((sheet) => linkNames(sheet).length > 0);
    expect(linked.length).toBeGreaterThan(3);
    for (const sheet of linked) expect(projectFor(STARTER_SHEETS, sheet)?.name, sheet.name).toBe("Project");
    const others = STARTER_SHEETS.filter((sheet) => !linked.includes(sheet));
    for (const sheet of others) expect(projectFor(STARTER_SHEETS, sheet), sheet.name).toBeUndefined();
  });

  test("finds the sheet that it needs by the workbook's names", async () => {
    const [sheet] = STARTER_SHEETS.filter(({ name }) => name === "Project");
    if (sheet === undefined) throw new Error("no sheet Project");
    const sheets = () => Promise.resolve([{ name: "Sheet1", visible: true, protected: false }]);
    const area = { sheet: "Sheet1", row: 0, column: 0, rows: 1, columns: 1 };
    const asked: string[] = [];
    const bookWith = (found: typeof area | undefined) => ({
      sheets,
      resolve: (references: readonly { readonly text: string }[]) => {
        asked.push(...references.map(({ text }) => text));
        return Promise.resolve([found]);
      },
    });
    expect(await hasNamesOf(bookWith(area), sheet)).toBe(true);
    expect(await hasNamesOf(bookWith(undefined), sheet)).toBe(false);
    expect(asked.every((name) => name in sheet.names)).toBe(true);
  });
});
