import { cellFunction } from "../../kernel/define/cellFunction";
import { ALTITUDE } from "../../kernel/define/glossary";
import { standardAtmosphere } from "../../kernel/define/pressureBasis";
import { quantityResult } from "../../kernel/define/result";

export const airBarometer = cellFunction({
  id: "AIR.BAROMETER",
  topic: "air",
  summary: "Air pressure of the standard atmosphere at an altitude.",
  keywords: ["atmospheric pressure", "elevation", "barometric"],
  details: ["Absolute pressure on site, not reduced to sea level as in weather reports. Weather changes it by 3 %."],
  args: { altitude: ALTITUDE },
  returns: quantityResult("pressure", "air pressure, absolute"),
  cautions: [],
  checks: [
    { inputs: { altitude: 0 }, expected: 14.696, tolerance: 0.0005, source: "standardAtmosphere1976" },
    {
      inputs: { altitude: 1500, units: "SI" },
      expected: 84.556,
      tolerance: 0.01,
      source: "standardAtmosphere1976",
      remark: "from memory of the printed table (845.56 hPa)",
    },
    {
      inputs: { altitude: 5000, units: "SI" },
      expected: 54.02,
      tolerance: 0.03,
      source: "standardAtmosphere1976",
      remark: "from memory of the printed table (540.2 hPa, geopotential height)",
    },
  ],
  compute: ({ altitude }, { step }) => step(standardAtmosphere, { z: altitude }),
});
