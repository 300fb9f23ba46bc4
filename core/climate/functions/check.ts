import { cellFunction } from "../../kernel/define/cellFunction";
import { tableResult, wordResult } from "../../kernel/define/result";
import { admitClimate } from "../../pool/year/climate";
import { CLIMATE } from "../../pool/year/inputs";
import { MIAMI_MONTHS } from "../../pool/data/miami";
import { LATITUDE } from "../args";
import { impossibleWeather, plausibleOnly, unlikelyWeather } from "../cautions";
import { findingsOf } from "../../pool/year/plausibility";

const MIAMI = { climate: MIAMI_MONTHS, latitude: 25.82, units: "SI" } as const;

/** Miami with its wind in miles an hour. */
const MPH = {
  ...MIAMI,
  climate: MIAMI_MONTHS.map((row) =>
    row.map((cell, at) => (at === 3 && typeof cell === "number" ? 2.237 * cell : cell)),
  ),
};

export const climateCheck = cellFunction({
  id: "CLIMATE.CHECK",
  topic: "climate",
  memoised: true,
  slow: true,
  summary: "What is impossible, unlikely or fine in rows of weather, with the number that shows it.",
  keywords: ["plausibility", "weather file", "quality", "hemisphere", "clearness", "swapped units", "TMY", "EPW"],
  details: [
    "Rows as POOL.YEAR takes them. What no weather has, such as air of 80 °C or a blank, is refused with its row.",
    "Fine: what 22 US stations between 26° and 65° north show, a little widened. Impossible: beyond any place. Limits of swing, humidity and wind beyond those stations are common practice.",
    "Clearness: sun over sun above the air by month; months with hardly any sun are left out. Season of the sun: correlation of its months with the sun above the air; of the air, with that of a month earlier. Both say nothing below 12° and little below 25°.",
    "Hours only: centre of the sun by the clock (12 where the clock keeps the sun's time, up to an hour off inside a time zone).",
  ],
  args: { climate: CLIMATE, latitude: LATITUDE },
  returns: tableResult("checks", {
    check: wordResult("what is looked at"),
    where: wordResult("months with the worst verdict, or the year"),
    found: wordResult("least to most found"),
    expected: wordResult("what stations show"),
    verdict: wordResult("fine, unlikely or impossible"),
    meaning: wordResult("what it may come from"),
  }),
  facts: { impossible: "word", unlikely: "word" },
  cautions: [
    { rule: impossibleWeather, raisedBy: { ...MIAMI, latitude: -45 } },
    { rule: unlikelyWeather, raisedBy: MPH },
    { rule: plausibleOnly, raisedBy: MIAMI },
  ],
  checks: [
    {
      inputs: MIAMI,
      expected: { row: "clearness of the sun", column: "verdict", value: "fine" },
      source: "tmy3",
    },
    {
      inputs: { ...MIAMI, latitude: -25.82 },
      expected: { row: "season of the sun", column: "verdict", value: "impossible" },
      source: "tmy3",
      remark: "its latitude with the sign turned",
    },
  ],
  compute({ climate, latitude }, { trace, recordFacts, system }) {
    trace.remark("Sun beside the sun above the air at the latitude (Spencer), the rest beside limits of 22 stations.");
    const findings = findingsOf(admitClimate(climate, system), latitude, system);
    const named = (verdict: string): string =>
      findings
        .filter((each) => each.verdict === verdict)
        .map(({ check, where, found }) => `${check} ${found} (${where})`)
        .join("; ");
    recordFacts({ impossible: named("impossible"), unlikely: named("unlikely") });
    return findings;
  },
});
