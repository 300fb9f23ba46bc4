/**
 * The pool's losses on the sheet "Recovery sizing": weather and use as the input block of POOL.LOSSES, whose labels,
 * values and units are the sheet's own first three columns; then the losses.
 */
import { computed, heading, input, type Line } from "../layout";

export const LOSS_LINES: readonly Line[] = [
  heading("group", "Weather and use"),
  computed("blockArea", "Pool area", "=[area]", "ft²", { format: "#,##0", source: "calculated below" }),
  input("water", "Pool temperature", 82, "°F", {
    validation: { from: 40, to: 104, prompt: "40 to 104 °F" },
    source: "owner, within the health code",
    note: "Each °F more costs 10 to 30 % more heat.",
    link: "ProjectWater",
  }),
  input("air", "Air temperature", 74, "°F", {
    validation: { from: -40, to: 130, prompt: "-40 to 130 °F" },
    source: "monthly mean of the month sized for",
  }),
  input("humidity", "Humidity", 0.6, "", {
    format: "0%",
    validation: { from: 0, to: 1, prompt: "0 to 100 %" },
    source: "monthly mean",
  }),
  input("windAt10m", "Wind at 10 m", 7, "mph", {
    validation: { from: 0, to: 100, prompt: "0 to 100 mph" },
    source: "monthly mean of the weather station",
  }),
  input("shelter", "Shelter", "suburban", "", {
    validation: { list: ["open", "suburban", "sheltered"], prompt: "open, suburban or sheltered" },
    source: "survey",
  }),
  input("cloud", "Cloud", 4, "", {
    validation: { from: 0, to: 10, prompt: "0 to 10 tenths" },
    source: "monthly mean, opaque tenths of the sky",
  }),
  input("sun", "Sun on water", 1500, "BTU/(ft²·day)", {
    format: "#,##0",
    validation: { from: 0, to: 4000, prompt: "0 to 4,000 BTU/(ft²·day)" },
    source: "monthly mean on a level surface",
  }),
  computed("meanDepth", "Water depth", "=([shallow]+[deep])/2", "ft", { format: "0.00", source: "mean of the depths" }),
  input("mains", "Mains temperature", 65, "°F", {
    validation: { from: 32, to: 100, prompt: "32 to 100 °F" },
    source: "measured",
  }),
  input("cover", "Cover", "none", "", {
    validation: {
      list: ["none", "foam", "bubble", "solid", "disks", "liquid"],
      prompt: "none, foam, bubble, solid, disks or liquid",
    },
    source: "owner",
    note: "A cover saves more than most machines bring.",
  }),
  input("coverHours", "Cover hours", 12, "h", {
    validation: { from: 0, to: 24, prompt: "0 to 24 h a day" },
    source: "owner",
  }),
];

const BLOCK = "[[blockArea:coverHours]]";

/** One row of POOL.LOSSES; row 1 of the result is its header. */
const part = (key: string, label: string, row: number, note = ""): Line =>
  computed(key, label, `=INDEX(WARMBACK.POOL.LOSSES(${BLOCK}),${row},2)`, "BTU/h", {
    format: "#,##0",
    source: `POOL.LOSSES, row ${row}`,
    ...(note === "" ? {} : { note }),
  });

export const LOSS_RESULTS: readonly Line[] = [
  heading("group", "2 What the pool loses"),
  computed("windAtWater", "Wind at the water", "=WARMBACK.POOL.WINDATWATER([windAt10m],[shelter])", "mph", {
    format: "0.0",
    source: "POOL.WINDATWATER",
  }),
  computed(
    "evaporation",
    "Water evaporated, open pool",
    "=WARMBACK.POOL.EVAPORATION([area],[water],[air],[humidity],[windAtWater])",
    "lb/h",
    {
      format: "0.0",
      source: "POOL.EVAPORATION, Smith, Löf and Jones",
      note: "Published relations differ by a factor of 1.5 to 2.6.",
    },
  ),
  part("lossEvaporation", "Evaporation", 2),
  part("lossConvection", "Convection", 3),
  part("lossSky", "Sky radiation", 4),
  part("lossMakeUp", "Make-up water", 6),
  part("lossSun", "Sun gained", 7, "Negative: a gain."),
  part("lossCover", "Cover effect", 8),
  part("loss", "Net loss", 10, "Mean of day and night in steady weather."),
  computed("surfaceLoss", "The same by the surface rule", "=WARMBACK.POOL.SURFACELOSS([area],[water],[air])", "BTU/h", {
    format: "#,##0",
    source: "POOL.SURFACELOSS, 10.5 BTU/(h·ft²·°F)",
    note: "A second opinion without sun and cover: it holds evaporation, convection and radiation; never add them to it.",
  }),
];
