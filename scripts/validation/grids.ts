/**
 * Grids of reference values from outside that call a function row by row. Tolerances are shares of the value and state what
 * the source and the differences of method claim; the tests of each subject hold the same bounds.
 */
import type { CellInput } from "../../core";
import { numberInColumn, type ReferenceRow } from "./goldenRows";
import {
  numbersIn,
  valueIn,
  scaledValueIn,
  positiveIn,
  END_COLUMNS,
  ARRANGEMENT_NAMES,
  tubeInputs,
  roomAreaInputs,
  valveInputs,
  hammerInputs,
  stoppedInputs,
  cycleInputs,
  stateInputs,
  pipeInputs,
} from "./gridInputs";

export interface ReferenceGrid {
  readonly id: string;
  /** What is compared. */
  readonly quantity: string;
  readonly file: string;
  /** As a share of the reference value. */
  readonly tolerance: number;
  /** What the tolerance comes from. */
  readonly basis: string;
  /** The call's arguments; undefined for a row that isn't of this grid. */
  readonly inputs: (row: ReferenceRow) => readonly CellInput[] | undefined;
  /** The reference value; undefined where the row has none. */
  readonly expected: (row: ReferenceRow) => number | undefined;
  /** The row of a list that is compared. */
  readonly label?: string;
}

const SAME = "the same equation, worked apart and printed to nine or more digits";
const BLEND = "R-410A: the grid takes the pseudo-pure equation of state, this core the mixture's";
const ROWS_410A = "two equations of state of one fluid differ by so much; pure fluids by less";

export const GRIDS: readonly ReferenceGrid[] = [
  {
    id: "EXCHANGER.LMTD",
    quantity: "log mean difference in counterflow",
    file: "exchanger-lmtd.csv",
    tolerance: 3e-6,
    basis: "50 digits; ends nearly equal lose digits to the 273.15 between °C and K",
    inputs: (row) => {
      const ends = positiveIn("cf_LMTD_exact_K")(row) === undefined ? undefined : numbersIn(row, ...END_COLUMNS);
      return ends && [...ends, "counterflow", "SI"];
    },
    expected: valueIn("cf_LMTD_exact_K"),
  },
  {
    id: "EXCHANGER.EFFECTIVENESS",
    quantity: "effectiveness, six arrangements",
    file: "exchanger-entu.csv",
    tolerance: 1e-10,
    basis: SAME,
    inputs: (row) => {
      const way = ARRANGEMENT_NAMES[row["configuration"] ?? ""];
      const found = numbersIn(row, "NTU", "Cr");
      return way === undefined || found === undefined ? undefined : [...found, way];
    },
    expected: valueIn("effectiveness_own"),
  },
  {
    id: "EXCHANGER.CORRECTION",
    quantity: "correction factor F",
    file: "exchanger-F.csv",
    tolerance: 1e-7,
    basis: SAME,
    inputs: (row) => (row["F_exists"] === "yes" ? numbersIn(row, ...END_COLUMNS, "shells")?.concat() : undefined),
    expected: valueIn("F_own"),
  },
  {
    id: "EXCHANGER.FLOWSTOP",
    quantity: "seconds to the water's limit",
    file: "stopped-flow.csv",
    tolerance: 2e-5,
    basis: "the grid's unit factors are rounded in their fifth digit",
    inputs: stoppedInputs,
    expected: valueIn("seconds_to_140F_water"),
    label: "seconds to limit",
  },
  {
    id: "PRESSURE.TUBE",
    quantity: "rated pressure, mill tolerances",
    file: "tube-wall.csv",
    tolerance: 1e-8,
    basis: SAME,
    inputs: tubeInputs("mill", "wall_in"),
    expected: valueIn("P_rated_psi"),
  },
  {
    id: "PRESSURE.WALL",
    quantity: "least wall for 550 psi",
    file: "tube-wall.csv",
    tolerance: 1e-8,
    basis: SAME,
    inputs: tubeInputs("mill", 550),
    expected: valueIn("t_for_550_in"),
  },
  {
    id: "LINE.ROOMAREA",
    quantity: "least area as the manuals print it",
    file: "room-charge.csv",
    tolerance: 1e-8,
    basis: SAME,
    inputs: (row) =>
      positiveIn("A_unventilated_m2")(row) ? roomAreaInputs("unventilated as printed")(row) : undefined,
    expected: valueIn("A_unventilated_m2"),
  },
  {
    id: "LINE.VALVE",
    quantity: "drop, psi",
    file: "valve-drop.csv",
    tolerance: 2e-3,
    basis: BLEND,
    inputs: valveInputs,
    expected: valueIn("dP_psi"),
    label: "drop",
  },
  {
    id: "PIPE.HAMMER",
    quantity: "surge of a rapid closing",
    file: "water-hammer.csv",
    tolerance: 3e-3,
    basis: "densities at 80 °F there, at 73 and 110 °F here",
    inputs: hammerInputs,
    expected: valueIn("joukowsky_kPa"),
    label: "rapid surge",
  },
  {
    id: "PIPE.HEADLOSS",
    quantity: "head by Darcy and Weisbach",
    file: "pipehead.csv",
    tolerance: 5e-3,
    basis: "another program's friction factors between laminar and turbulent flow",
    inputs: pipeInputs("Darcy-Weisbach"),
    expected: valueIn("DW_head_m_per_100m"),
  },
  {
    id: "PIPE.HEADLOSS",
    quantity: "head by Hazen and Williams",
    file: "pipehead.csv",
    tolerance: 1e-3,
    basis: "the same rounding of the formula",
    inputs: pipeInputs("Hazen-Williams"),
    expected: valueIn("HW_0.2083_head_ft_per_100ft"),
  },
  {
    id: "REFRIG.STATE",
    quantity: "density of one phase",
    file: "refrigerant-singlephase.csv",
    tolerance: 1e-3,
    basis: ROWS_410A,
    inputs: stateInputs,
    expected: valueIn("rho_kg/m3"),
    label: "density",
  },
  {
    id: "REFRIG.STATE",
    quantity: "heat capacity of one phase",
    file: "refrigerant-singlephase.csv",
    tolerance: 1e-2,
    basis: ROWS_410A,
    inputs: stateInputs,
    expected: scaledValueIn("cp_J/kg/K", 1e-3),
    label: "heat capacity",
  },
  {
    id: "REFRIG.STATE",
    quantity: "speed of sound in one phase",
    file: "refrigerant-singlephase.csv",
    tolerance: 1e-2,
    basis: ROWS_410A,
    inputs: stateInputs,
    expected: valueIn("w_m/s"),
    label: "speed of sound",
  },
  {
    id: "CYCLE.COP",
    quantity: "cooling COP",
    file: "refrigerant-cycle.csv",
    tolerance: 1e-3,
    basis: ROWS_410A,
    inputs: cycleInputs,
    expected: valueIn("COP_c"),
  },
  {
    id: "CYCLE.FACTOR",
    quantity: "heat rejected per cooling",
    file: "refrigerant-cycle.csv",
    tolerance: 1e-3,
    basis: ROWS_410A,
    inputs: cycleInputs,
    expected: valueIn("HR_rejected_per_cooling"),
  },
  {
    id: "CLIMATE.EXTRATERRESTRIAL",
    quantity: "daily sun above the air",
    file: "extraterrestrial.csv",
    tolerance: 1e-3,
    basis: "the series of Spencer; small values near the polar night are printed to 0.001 MJ/m²",
    inputs: (row) => {
      const sun = numberInColumn(row, "H0_spencer_1361_MJ") ?? 0;
      const found = row["kind"] === "day" && sun > 1 ? numbersIn(row, "latitude_deg", "day_or_month") : undefined;
      return found && [...found, "SI"];
    },
    expected: scaledValueIn("H0_spencer_1361_MJ", 1 / 3.6),
  },
  {
    id: "CONTROL.SENSOROHMS",
    quantity: "ohms of a type II sensor",
    file: "thermistor.csv",
    tolerance: 3e-4,
    basis: "0.02 % for printed rows, 1 ohm for computed ones",
    inputs: (row) => {
      const found = numbersIn(row, "temperature_C");
      return found && [...found, "type II", "SI"];
    },
    expected: valueIn("ohms"),
  },
];
