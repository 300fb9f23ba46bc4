/** Wind at the water from the wind of a weather station. */
import { silent, type Trace } from "../../kernel/steps";
import { SHELTERS, type ShelterWord } from "../data/shelter";
import { windAtWaterOf } from "../equations";

/** m/s, from the wind at 10 m (m/s) and the pool's shelter, a word or a share. */
export const windAtWaterBy = (wind10m: number, shelter: ShelterWord | number, trace: Trace = silent): number => {
  const s = typeof shelter === "number" ? shelter : SHELTERS[shelter];
  if (typeof shelter === "string")
    trace.lookup({
      table: "Wind at the water",
      row: shelter,
      gives: { value: s, kind: "fraction" },
      source: "isoTr12596",
    });
  return trace.step(windAtWaterOf, { s, v10: wind10m });
};
