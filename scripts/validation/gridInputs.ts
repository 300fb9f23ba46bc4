/** How a row of reference values becomes the arguments of a call. */
import { numberInColumn, type ReferenceRow } from "./goldenRows";

/** Numbers of some columns; undefined where one is missing. */
export const numbersIn = (row: ReferenceRow, ...columns: readonly string[]): readonly number[] | undefined => {
  const found = columns.map((column) => numberInColumn(row, column));
  return found.includes(undefined) ? undefined : (found as readonly number[]);
};

export const valueIn = (column: string) => (row: ReferenceRow) => numberInColumn(row, column);
export const scaledValueIn = (column: string, factor: number) => (row: ReferenceRow) => {
  const value = numberInColumn(row, column);
  return value === undefined ? undefined : value * factor;
};
export const positiveIn = (column: string) => (row: ReferenceRow) => {
  const value = numberInColumn(row, column);
  return value !== undefined && value > 0 ? value : undefined;
};

export const END_COLUMNS = ["Thi_degC", "Tho_degC", "Tci_degC", "Tco_degC"];
export const ARRANGEMENT_NAMES: Readonly<Record<string, string>> = {
  counterflow: "counterflow",
  parallel: "parallel",
  "shell-and-tube 1-2 (1 shell, 2n tube passes)": "shell and tube",
  "crossflow, both unmixed (exact)": "crossflow unmixed",
  "crossflow, Cmin mixed": "crossflow mixed hot",
  "crossflow, Cmax mixed": "crossflow mixed cold",
};

export const tubeInputs = (sizes: string, load: string | number) => (row: ReferenceRow) => {
  const found = numbersIn(row, "OD_in", "temp_F", "E");
  const name = row["tube"] ?? "";
  const material = name.startsWith("copper")
    ? "copper"
    : name.startsWith("titanium")
      ? `titanium grade ${name.charAt("titanium Gr ".length)}`
      : `cupronickel ${name.includes("90/10") ? "90-10" : "70-30"}`;
  const second = typeof load === "number" ? load : numberInColumn(row, load);
  if (found === undefined || second === undefined) return undefined;
  const [D = 0, T = 0, E = 1] = found;
  return [D, second, material, T, row["temper"] === "-" ? "" : (row["temper"] ?? ""), E, sizes];
};

export const roomAreaInputs = (method: string) => (row: ReferenceRow) => {
  const found = numbersIn(row, "charge_kg", "h0_m", "LFL_kg_m3");
  if (found === undefined) return undefined;
  const [charge = 0, height = 0, limit = 0] = found;
  return [row["refrigerant"] ?? "", charge, height, method, 2.2, limit, 0, "SI"];
};

export const valveInputs = (row: ReferenceRow) => {
  const found = numbersIn(row, "Cv_US", "W_kg_h", "condensing_dew_F", "superheat_F", "xT");
  if (found === undefined || row["state"] !== "ok") return undefined;
  const [Cv = 0, W = 0, T = 0, superheat = 0, xT = 0] = found;
  return [row["refrigerant"] ?? "", Cv, `${String(W)} kg/h`, T, superheat, xT];
};

export const hammerInputs = (row: ReferenceRow) => {
  const found = numbersIn(row, "velocity_m_s", "length_ft", "closing_s", "E_pipe_GPa");
  if (found === undefined) return undefined;
  const [v = 0, length = 0, closing = 0, E = 0] = found;
  const [size, schedule] = [`${row["nominal_in"] ?? ""} in`, row["schedule"] ?? ""];
  return [size, schedule, v, `${String(length)} ft`, `${String(closing)} s`, E < 2.5 ? "110 °F" : "73 °F", 1, "SI"];
};

export const stoppedInputs = (row: ReferenceRow) => {
  const labels = ["heat", "water volume", "metal", "start water", "UA", "cut out"];
  const columns = ["heat_Btu_h", "water_US_gal", "metal_lb_titanium", "start_degF", "UA_Btu_hF"];
  const found = numbersIn(row, ...columns, "cut_out_saturation_degF");
  return found === undefined ? undefined : [labels.map((label, place) => [label, found[place] ?? 0])];
};

export const cycleInputs = (row: ReferenceRow) => {
  const found = numbersIn(row, "Te_dew_K", "Tc_dew_K", "SH_K", "SC_K", "eta_is");
  if (found === undefined || PARTS_ONLY.has(row["fluid"] ?? "")) return undefined;
  const [evaporating = 0, condensing = 0, superheat = 0, subcooling = 0, efficiency = 1] = found;
  return [row["fluid"] ?? "", evaporating - 273.15, condensing - 273.15, superheat, subcooling, efficiency, "SI"];
};

/** Parts of blends, which no function offers by themselves. */
const PARTS_ONLY = new Set(["R-125", "R-143a"]);

/** States on the saturation line have no pressure and temperature of their own. */
export const stateInputs = (row: ReferenceRow) => {
  const found = numbersIn(row, "p_Pa", "T_K");
  if (found === undefined || PARTS_ONLY.has(row["fluid"] ?? "")) return undefined;
  if (row["region"] !== "SC" && numberInColumn(row, "dT_K") === 0) return undefined;
  const [p = 0, T = 0] = found;
  return [row["fluid"] ?? "", p / 1000, T - 273.15, "absolute", "SI"];
};

export const pipeInputs = (method: string) => (row: ReferenceRow) => {
  const found = numbersIn(row, "flow_m3_h", "water_degC");
  if (found === undefined) return undefined;
  const [flow = 0, water = 0] = found;
  return [flow, `${row["nominal_in"] ?? ""} in`, 100, row["schedule"] ?? "", water, method, "minimum wall", "SI"];
};
