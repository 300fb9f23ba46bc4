/** Caution rules of the air conditioner. */
import { caution } from "../kernel/define/caution";
import { us } from "../kernel/values/quantity";

/** No machine is sold with a lower SEER (US standards of 2006 and 2023). */
const LEAST_SEER = us("cooling rating", 13);
/** EER over SEER of published pairs, at 21 and 13 SEER. */
const [LEAST_SHARE, MOST_SHARE] = [0.79, 0.86];

export const likelySeer = caution({
  code: "AIRCON-MAY-BE-SEER",
  severity: "Caution",
  source: "ahri210",
  description: "A rating of 13 BTU/(W·h) or more may be a SEER or SEER2, not the EER at the rating condition.",
  needs: { rating: "cooling rating" },
  when: ({ rating }) => rating > LEAST_SEER * (1 - 1e-9),
  message: ({ rating }, show) =>
    `${show(rating, "cooling rating")} may be a SEER or SEER2: its EER is then ${show(rating * LEAST_SHARE, "cooling rating")} to ${show(rating * MOST_SHARE, "cooling rating")}, and the heat rejected is too low. Take EER or EER2 from the data sheet.`,
});

export const unlikelyEfficiency = caution({
  code: "AIRCON-UNLIKELY-COP",
  severity: "Caution",
  source: "commonPractice",
  description: "Cooling and power don't fit: their ratio is outside 1.8 to 7.",
  needs: { COP: "COP" },
  when: ({ COP }) => COP < 1.8 || COP > 7,
  message: ({ COP }) =>
    `Cooling over power is ${COP.toFixed(2)} W/W; air conditioners run between about 2 and 6. Check that both are for the same condition and that the power is that of the whole machine.`,
});

export const missingFanPower = caution({
  code: "AIRCON-OUTDOOR-FAN",
  severity: "Notice",
  source: "commonPractice",
  description: "With the outdoor fan at 0 its power counts as heat in the refrigerant, which it is not.",
  needs: { outdoorFan: "electric power" },
  when: ({ outdoorFan }) => outdoorFan === 0,
  message: () =>
    "The outdoor fan's power counts as heat at the condenser. It is often 3 to 8 % of the machine's power: enter it from the data sheet to get the heat available to the pool.",
});

export const singleSpeedOnly = caution({
  code: "AIRCON-SINGLE-SPEED",
  severity: "Caution",
  standing: true,
  source: "cutler2013",
  description: "The curves are means of single-speed machines; two-stage and inverter machines differ.",
  needs: { singleSpeed: "yes/no" },
  when: ({ singleSpeed }) => singleSpeed,
  message: () =>
    "Mean curves of single-speed machines at full load. Two-stage and inverter machines at part load keep their efficiency much better in mild weather, and one machine differs from the mean by several per cent: the maker's table overrides these curves.",
});

export const hoursOverstate = caution({
  code: "AIRCON-HOURS-SCHEDULE",
  severity: "Notice",
  standing: true,
  source: "fullLoadHours",
  description:
    "The hours are for a building that is cooled all day and all week; published hours overstate oversized machines.",
  needs: {},
  when: () => true,
  message: () =>
    "These hours are for cooling around the clock. Offices in the south of the US run about half to three quarters of them, schools a third to a half; an oversized machine runs still fewer hours (metered homes run less than published hours).",
});

export const narrowSpan = caution({
  code: "AIRCON-HOURS-NARROW",
  severity: "Caution",
  source: "commonPractice",
  description: "With design and balance temperature less than 15 °F apart, one degree changes the hours strongly.",
  needs: { balance: "temperature", design: "temperature" },
  when: ({ balance, design }) => design - balance < us("temperature difference", 15),
  message: ({ balance, design }, show) =>
    `Design is only ${show(design - balance, "temperature difference")} above balance: an error of one degree changes the hours by a tenth or more.`,
});

/** Warmest month below which hardly anybody cools, and above which no month is; widest span of months on land. */
const [COOLEST, HOTTEST, WIDEST] = [us("temperature", 50), us("temperature", 102), us("temperature difference", 115)];

export const oddMeans = caution({
  code: "AIRCON-HOURS-WEATHER",
  severity: "Caution",
  source: "commonPractice",
  description: "Monthly means that hardly any cooled place has: another unit, or months out of order?",
  needs: { coolestMonth: "temperature", warmestMonth: "temperature", jump: "temperature difference" },
  when: ({ coolestMonth, warmestMonth, jump }) =>
    warmestMonth < COOLEST ||
    warmestMonth > HOTTEST ||
    warmestMonth - coolestMonth > WIDEST ||
    jump > us("temperature difference", 30),
  message: ({ coolestMonth, warmestMonth, jump }, show) =>
    warmestMonth < COOLEST
      ? `The warmest month has a mean of ${show(warmestMonth, "temperature")} only: are these °C in a column of °F?`
      : `Monthly means from ${show(coolestMonth, "temperature")} to ${show(warmestMonth, "temperature")}, from one month to the next by up to ${show(jump, "temperature difference")}: check units and the order of the months.`,
});

export const grossRows = caution({
  code: "AIRCON-TABLE-GROSS",
  severity: "Caution",
  source: "commonPractice",
  description: "Gross capacity: the table's power must be without the indoor fan, whose heat is in the room.",
  needs: { capacityIs: "word" },
  when: ({ capacityIs }) => capacityIs === "gross",
  message: () =>
    "Gross capacity counts the indoor fan's heat as load: the power column must not hold that fan, else its heat counts twice. COP and EER are then those without it.",
});
