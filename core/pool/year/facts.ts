/** The facts that the cautions of the year read. */
import { HOUR } from "../../numeric/calendar";
import type { System } from "../../kernel/values/quantity";
import type { Climate } from "./climate";
import { hotFacts, overLimitFacts } from "./extremes";
import { boardFacts } from "../../cycle/machine/cautions";
import { ODD_INPUT_FACTS, oddInputFacts } from "./oddInputs";
import type { Year } from "./results";
import { totalOf } from "./sums";
import { oddSunFacts } from "./sunCheck";
import { oddWeatherFacts } from "./weatherCheck";

const beyondCurve = ({ machine, weather }: Year): number => {
  const [from, to] = machine?.covers ?? [0, 0];
  let time = 0;
  for (let hour = 0; hour < weather.hours; hour++) {
    const T = weather.air[hour] ?? 0;
    if ((machine?.load[hour] ?? 0) > 0 && (T < from || T > to)) time += HOUR;
  }
  return time;
};

export const YEAR_FACTS = {
  poolTemperature: "temperature",
  evaporationBy: "word",
  lossEstimated: "yes/no",
  coverKind: "word",
  sentOutdoors: "fraction",
  timeAtLimit: "time",
  limit: "temperature",
  usefulOfNeed: "fraction",
  usefulOfTaken: "fraction",
  stillNeeded: "heat",
  frozenTime: "time",
  recovers: "yes/no",
  warms: "word",
  monthlyRows: "yes/no",
  beyondCurveTime: "time",
  notMetShare: "fraction",
  coversFrom: "temperature",
  coversTo: "temperature",
  singleSpeed: "yes/no",
  boardDriven: "word",
  pumpBeyond: "electric energy",
  electricitySaved: "electric energy",
  preheat: "temperature",
  hot: "temperature",
  hotWaterUnpriced: "yes/no",
  hotTime: "time",
  hottest: "temperature",
  hottestHour: "word",
  hotWaterTime: "time",
  leavingWater: "temperature",
  leavingWaterHour: "word",
  overLimitTime: "time",
  firstOver: "word",
  warmestHour: "word",
  oddSunMonths: "word",
  oddSun: "fraction",
  oddSunReason: "word",
  oddWeather: "word",
  ...ODD_INPUT_FACTS,
} as const;

/** Facts about recovery by pool or tank. */
const recoveryFacts = ({ machine, free }: Year) => {
  const { sums } = free.with;
  const warms = machine?.poolCurve ? (machine.tankCurve ? "pool and tank" : "the pool") : "the tank";
  return {
    warms,
    pumpBeyond: totalOf(sums.extraPump),
    electricitySaved: totalOf(free.without.sums.electricity) - totalOf(sums.electricity),
  };
};

/** Facts about recovery by the pool; none where it has no exchanger. */
const poolFacts = ({ inputs, free, held }: Year) => {
  const need = totalOf(held.without.sums.backUp);
  const saved = need - totalOf(held.with.sums.backUp);
  const { sums } = free.with;
  const used = inputs.poolArea * totalOf(sums.taken) + totalOf(sums.toTank);
  return {
    sentOutdoors: 1 - used / Math.max(1, totalOf(sums.rejected)),
    timeAtLimit: totalOf(sums.outdoorTime),
    limit: inputs.highLimit,
    usefulOfTaken: saved / Math.max(1, totalOf(held.with.sums.taken)),
    ...(need > 0 ? { usefulOfNeed: saved / need } : {}),
  };
};

/** Facts of the preheat tank; none where there is none. */
const tankFacts = ({ inputs, machine, free }: Year) =>
  machine?.tankCurve
    ? {
        // The room or warm mains may bring the tank above its limit.
        preheat: free.with.tank.reduce((most, T) => Math.max(most, T), inputs.tankLimit),
        hot: inputs.hotWater,
        hotWaterUnpriced: inputs.hotWaterSource === "none",
      }
    : {};

export const yearFacts = (year: Year, climate: Climate, system: System) => {
  const { inputs, machine, free, held } = year;
  const recovers = machine !== undefined && (machine.poolCurve ?? machine.tankCurve) !== undefined;
  const load = machine ? HOUR * totalOf(machine.load) : 0;
  return {
    poolTemperature: Math.max(...free.with.highest),
    lossEstimated: true,
    ...(inputs.lossMethod === "parts" ? { evaporationBy: inputs.evaporationMethod, coverKind: inputs.cover } : {}),
    stillNeeded: inputs.poolArea * totalOf(held.with.sums.backUp),
    frozenTime: totalOf(free.with.sums.frozen),
    recovers,
    monthlyRows: climate.monthly,
    beyondCurveTime: beyondCurve(year),
    notMetShare: load > 0 ? totalOf(free.with.sums.unmet) / load : 0,
    ...(machine && {
      coversFrom: machine.covers[0],
      coversTo: machine.covers[1],
      singleSpeed: machine.low === undefined,
      ...boardFacts(inputs),
    }),
    ...oddInputFacts(year),
    ...oddSunFacts(climate, inputs.latitude),
    ...oddWeatherFacts(climate, inputs.latitude, system),
    ...(recovers ? { ...recoveryFacts(year), ...hotFacts(year) } : {}),
    ...(machine?.poolCurve ? { ...poolFacts(year), ...overLimitFacts(year) } : {}),
    ...tankFacts(year),
  };
};
