/** Pictures on a sheet through the Excel adapter. */
import { describe, expect, it } from "vitest";
import type { PlacedPicture } from "../../src/workbook/port";
import { PROFILES, WINDOWS_10 } from "../excelHost";
import { area, onExcel } from "./onExcel";

const PICTURE: PlacedPicture = {
  name: "POOL.YEAR: Heat by month",
  altText: "Heat of each month.",
  png: "iVBORw0KGgoAAAA=",
  width: 390,
  height: 243,
};

describe.each(PROFILES)("A picture in Excel, $name", (profile) => {
  const on = onExcel(profile, "Sheet1", "Data");
  const shapes = () => on.sheet("Data").shapes;

  it("is beside its area with name, alternative text and size, in one undo step", async () => {
    expect(await on.book.placePicture?.(PICTURE, area("Data", 9, 1, 14, 3))).toBe("beside Data!B10");
    expect(shapes().map((shape) => Object.fromEntries(shape))).toEqual([
      {
        id: "{shape 1}",
        data: PICTURE.png,
        name: "POOL.YEAR: Heat by month",
        altTextDescription: "Heat of each month.",
        left: 4 * 48 + 6,
        top: 9 * 15,
        width: 390,
        height: 243,
        lockAspectRatio: true,
      },
    ]);
    expect(on.host.undo.steps).toHaveLength(1);
  });

  it("gets a number where its name is taken, and keeps inside the sheet's last column", async () => {
    await on.book.placePicture?.(PICTURE, area("Data", 0, 0));
    await on.book.placePicture?.(PICTURE, area("Data", 0, 16_380, 1, 4));
    await on.book.placePicture?.(PICTURE, area("Data", 0, 0));
    expect(shapes().map((shape) => shape.get("name"))).toEqual([
      PICTURE.name,
      `${PICTURE.name} 2`,
      `${PICTURE.name} 3`,
    ]);
    expect(shapes()[1]?.get("left")).toBe(16_380 * 48 + 6);
  });

  it("is refused on a protected or missing sheet with a sentence", async () => {
    on.sheet("Data").protection = {};
    await expect(on.book.placePicture?.(PICTURE, area("Data", 0, 0))).rejects.toThrow("the sheet is protected");
    await expect(on.book.placePicture?.(PICTURE, area("Gone", 0, 0))).rejects.toThrow('there is no sheet named "Gone"');
    expect(shapes()).toEqual([]);
  });
});

describe("A picture in an Excel without shapes", () => {
  const on = onExcel({ ...WINDOWS_10, name: "Windows 1.8", api: "1.8" }, "Data");

  it("isn't offered", () => {
    expect(on.book.placePicture).toBeUndefined();
    expect(on.book.savePicture).toBeUndefined();
  });
});

describe("A picture in an Excel that knows shapes but no range's place", () => {
  const on = onExcel({ ...WINDOWS_10, name: "Windows 1.9", api: "1.9" }, "Data");

  it("isn't offered", () => {
    expect(on.book.placePicture).toBeUndefined();
  });
});
