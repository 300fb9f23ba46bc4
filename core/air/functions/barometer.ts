import { cellFunction } from "../../kernel/define/cellFunction";
import { ALTITUDE } from "../../kernel/define/glossary";
import { standardAtmosphere } from "../../kernel/define/pressureBasis";
import { of } from "../../kernel/define/result";

export const barometer = cellFunction({
  id: "AIR.BAROMETER",
  topic: "air",
  summary: "Air pressure of the standard atmosphere at an altitude.",
  finds: ["atmospheric pressure", "elevation", "barometric"],
  remarks: [
    "Absolute pressure at the place, not reduced to sea level as weather reports give it. Weather moves it by 3 %.",
  ],
  args: { altitude: ALTITUDE },
  gives: of("pressure", "air pressure, absolute"),
  cautions: [],
  checks: [
    { at: { altitude: 0 }, gives: 14.696, within: 0.0005, from: "standardAtmosphere1976" },
    {
      at: { altitude: 1500, units: "SI" },
      gives: 84.556,
      within: 0.01,
      from: "standardAtmosphere1976",
      remark: "from memory of the printed table (845.56 hPa)",
    },
    {
      at: { altitude: 5000, units: "SI" },
      gives: 54.02,
      within: 0.03,
      from: "standardAtmosphere1976",
      remark: "from memory of the printed table (540.2 hPa, geopotential height)",
    },
  ],
  work: ({ altitude }, { step }) => step(standardAtmosphere, { z: altitude }),
});
