/** Charts of new sheets: their parts, what leads to them, and another program that reads them. */
import { expect, it } from "vitest";
import { newWorkbook, openPackage, packageBytes, type NewSheet } from "../../../src/workbook/package";
import { partText } from "../../../src/workbook/package/parts/package";
import { relationsOf } from "../../../src/workbook/package/parts/relations";
import { contentTypes, typeOf } from "../../../src/workbook/package/parts/contentTypes";
import { recalculated, skipsLibreOffice, titled } from "./libreOffice";

const TABLE: readonly (readonly (string | number)[])[] = [
  ["flow", "pump", "loop <after>"],
  [0, 66, 0],
  [40, 61.5, 12.2],
  [75, 48.5, 43],
  [90, 39, 61.9],
];

const SHEET: NewSheet = {
  name: "Pool & loop",
  cells: TABLE.flatMap((line, row) => line.map((value, column) => ({ row, column, value }))),
  print: { area: "A1:H30", landscape: true, fitToWidth: true, footer: "&P" },
  charts: [
    {
      kind: "curves",
      smooth: true,
      title: "Pump against loop",
      description: 'Head of the pump and of the loop, "before" & after.',
      x: "flow (gpm)",
      y: "head (ft)",
      place: "A7:E20",
      series: [
        { name: "pump", x: "A2:A5", y: "B2:B5" },
        { name: "loop <after>", x: "A2:A5", y: "C2:C5", stroke: "dashed" },
      ],
    },
    {
      kind: "columns",
      title: "The same as columns",
      description: "Columns.",
      x: "flow",
      y: "head (ft)",
      place: "F7:J20",
      series: [{ name: "pump", x: "A2:A5", y: "B2:B5" }],
    },
    {
      kind: "lines",
      title: "The same as lines",
      description: "Lines.",
      x: "flow",
      y: "head (ft)",
      place: "A22:E30",
      series: [{ name: "pump", x: "A2:A5", y: "B2:B5", stroke: "dotted" }],
    },
  ],
};

const bytes = async (): Promise<Uint8Array> => packageBytes(await newWorkbook([{ name: "Front", cells: [] }, SHEET]));

it("leads from the sheet through its drawing to each chart, every part with its type", async () => {
  const pack = await openPackage(await bytes());
  const sheet = "xl/worksheets/sheet2.xml";
  const [drawing] = await relationsOf(pack, sheet);
  expect(drawing).toMatchObject({ kind: "drawing", target: "xl/drawings/drawing1.xml" });
  expect(await partText(pack, sheet)).toMatch(
    new RegExp(`</headerFooter><drawing [^>]*r:id="${drawing?.id ?? ""}"/></worksheet>$`),
  );
  const charts = await relationsOf(pack, "xl/drawings/drawing1.xml");
  expect(charts.map(({ kind, target }) => [kind, target])).toEqual(
    [1, 2, 3].map((number) => ["chart", `xl/charts/chart${String(number)}.xml`]),
  );
  const types = await contentTypes(pack);
  expect(typeOf(types, "xl/drawings/drawing1.xml")).toBe("application/vnd.openxmlformats-officedocument.drawing+xml");
  for (const { target } of charts)
    expect(typeOf(types, target)).toBe("application/vnd.openxmlformats-officedocument.drawingml.chart+xml");
});

it("places each chart over its cells and gives it a text for those who can't see it", async () => {
  const text = await partText(await openPackage(await bytes()), "xl/drawings/drawing1.xml");
  const corners = [...text.matchAll(/<xdr:col>(\d+)<.*?<xdr:row>(\d+)</g)].map(([, column, row]) => [
    Number(column),
    Number(row),
  ]);
  // From the first cell to behind the last one.
  expect(corners.slice(0, 4)).toEqual([
    [0, 6],
    [5, 20],
    [5, 6],
    [10, 20],
  ]);
  expect(text).toContain('descr="Head of the pump and of the loop, &quot;before&quot; &amp; after."');
});

it("refers to the sheet's cells and keeps their values beside", async () => {
  const text = await partText(await openPackage(await bytes()), "xl/charts/chart1.xml");
  expect([...text.matchAll(/<c:f>(.*?)<\/c:f>/g)].map(([, formula]) => formula)).toEqual([
    "'Pool &amp; loop'!$A$2:$A$5",
    "'Pool &amp; loop'!$B$2:$B$5",
    "'Pool &amp; loop'!$A$2:$A$5",
    "'Pool &amp; loop'!$C$2:$C$5",
  ]);
  expect([...text.matchAll(/<c:v>([\d.]+)<\/c:v>/g)].map(([, value]) => Number(value))).toEqual([
    ...[0, 40, 75, 90, 66, 61.5, 48.5, 39],
    ...[0, 40, 75, 90, 0, 12.2, 43, 61.9],
  ]);
  expect(text).toContain("<c:tx><c:v>loop &lt;after&gt;</c:v></c:tx>");
});

it("refuses a chart whose place is no area", async () => {
  const [chart] = SHEET.charts ?? [];
  if (chart === undefined) throw new Error("no chart");
  await expect(newWorkbook([{ ...SHEET, charts: [{ ...chart, place: "here" }] }])).rejects.toThrow(
    'The chart\'s place "here" is no area of cells.',
  );
});

(skipsLibreOffice ? it.skip : it)(
  titled("LibreOffice opens the charts and writes them again with kinds, titles, series and cells"),
  async () => {
    const again = await openPackage(recalculated(await bytes()));
    const texts = await Promise.all([1, 2, 3].map((number) => partText(again, `xl/charts/chart${String(number)}.xml`)));
    const found = texts.map((text) => ({
      kind: /<c:(scatter|line|bar)Chart>/.exec(text)?.[1],
      titles: [...text.matchAll(/<a:t>(.*?)<\/a:t>/g)].map(([, title]) => title),
      cells: [...text.matchAll(/<c:[xy]?[vV]al>.*?<c:f>(.*?)<\/c:f>/gs)].map(([, formula]) => formula),
    }));
    expect(new Set(found.map(({ kind }) => kind))).toEqual(new Set(["scatter", "bar", "line"]));
    const curves = found.find(({ kind }) => kind === "scatter");
    expect(curves?.titles).toEqual(expect.arrayContaining(["Pump against loop", "flow (gpm)", "head (ft)"]));
    expect(curves?.cells.map((formula) => formula?.replaceAll(/'|&apos;/g, ""))).toEqual([
      "Pool &amp; loop!$A$2:$A$5",
      "Pool &amp; loop!$B$2:$B$5",
      "Pool &amp; loop!$A$2:$A$5",
      "Pool &amp; loop!$C$2:$C$5",
    ]);
    expect(texts.join("")).toContain("loop &lt;after&gt;");
  },
  180_000,
);
