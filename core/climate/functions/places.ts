import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { typicalMonths } from "../cautions";
import { PLACES } from "../stations";

export const climatePlaces = cellFunction({
  id: "CLIMATE.PLACES",
  topic: "climate",
  summary: "Stations whose typical months CLIMATE.MONTHS knows.",
  keywords: ["weather stations", "cities", "TMY3", "list", "locations"],
  details: [
    "Position and altitude as the files' headers say. Boise's pressure fits 835 m, not the 701 m of its header.",
  ],
  args: {},
  returns: tableResult("stations", {
    station: wordResult("name of the station"),
    state: wordResult("state of the United States"),
    latitude: quantityResult("number", "degrees, north positive"),
    longitude: quantityResult("number", "degrees, east positive"),
    altitude: quantityResult("altitude", "altitude above sea level"),
    wmo: wordResult("number of the World Meteorological Organization"),
    source: wordResult("data and period"),
  }),
  cautions: [{ rule: typicalMonths, raisedBy: {} }],
  checks: [
    {
      inputs: { units: "SI" },
      expected: { row: "Miami Intl Ap", column: "latitude", value: 25.82 },
      tolerance: 1e-9,
      source: "tmy3",
    },
  ],
  compute(_args, { trace }) {
    trace.remark("Typical months of the TMY3 files (US public data).");
    return PLACES.map((place) => ({ ...place, source: "NREL TMY3, 1973 to 2005" }));
  },
});
