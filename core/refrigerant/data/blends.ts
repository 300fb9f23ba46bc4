import type { BlendData } from "./fluidData";

/** Standard compositions by mass. Source: ANSI/ASHRAE Standard 34 designations (R-404A, R-407A, R-407C, R-410A, R-449A, R-452B, R-454B, R-507A, R-513A). */
export const BLENDS: readonly BlendData[] = [
  {
    name: "R-404A",
    parts: [
      ["R-125", 0.44],
      ["R-143a", 0.52],
      ["R-134a", 0.04],
    ],
  },
  {
    name: "R-407A",
    parts: [
      ["R-32", 0.2],
      ["R-125", 0.4],
      ["R-134a", 0.4],
    ],
  },
  {
    name: "R-407C",
    parts: [
      ["R-32", 0.23],
      ["R-125", 0.25],
      ["R-134a", 0.52],
    ],
  },
  {
    name: "R-410A",
    parts: [
      ["R-32", 0.5],
      ["R-125", 0.5],
    ],
  },
  {
    name: "R-449A",
    parts: [
      ["R-32", 0.243],
      ["R-125", 0.247],
      ["R-1234yf", 0.253],
      ["R-134a", 0.257],
    ],
  },
  {
    name: "R-452B",
    parts: [
      ["R-32", 0.67],
      ["R-125", 0.07],
      ["R-1234yf", 0.26],
    ],
  },
  {
    name: "R-454B",
    parts: [
      ["R-32", 0.689],
      ["R-1234yf", 0.311],
    ],
  },
  {
    name: "R-507A",
    parts: [
      ["R-125", 0.5],
      ["R-143a", 0.5],
    ],
  },
  {
    name: "R-513A",
    parts: [
      ["R-1234yf", 0.56],
      ["R-134a", 0.44],
    ],
  },
];
