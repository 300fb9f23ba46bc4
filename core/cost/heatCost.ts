/** Cost and carbon dioxide of heat from one source. */
import { valueError } from "../kernel/values/fault";
import { showNumber } from "../kernel/values/quantity";
import { silent, type Trace } from "../kernel/define/steps";
import { sourceNamed, type HeatSource, type SourceName } from "./data/heatSources";
import { carbonDioxide, costByEnergy, costByVolume, energyBought } from "./equations";

/** Checks the efficiency against the range of the source. */
export const checkEfficiency = (name: SourceName, efficiency: number, argument = "efficiency"): void => {
  const [least, most] = sourceNamed(name).efficiencies;
  if (efficiency < least || efficiency > most)
    throw valueError(
      `${argument}: for ${name} from ${showNumber(least)} to ${showNumber(most)}${most === 1 ? " (80 % is 0.8)" : ""}, got ${showNumber(efficiency)}`,
    );
};

const bought = (source: HeatSource, heat: number, efficiency: number, trace: Trace): number => {
  if (trace.on && efficiency === source.typical)
    trace.lookup({
      table: "heat sources",
      row: `${source.name}, heat per energy bought, typical`,
      result: { value: source.typical, kind: "number" },
      source: source.typicalSource,
    });
  return trace.step(energyBought, { H: heat, eta: efficiency });
};

/** Money for `heat` (J) at a price in base units (money per J or m³). */
export const heatCost = (
  name: SourceName,
  heat: number,
  price: number,
  efficiency: number,
  trace: Trace = silent,
): number => {
  const source = sourceNamed(name);
  const E = bought(source, heat, efficiency, trace);
  if (source.content === 1) return trace.step(costByEnergy, { E, price });
  if (trace.on)
    trace.lookup({
      table: "heat sources",
      row: `${name}, energy content, ${source.contentText}, in J/m³`,
      result: { value: source.content, kind: "number" },
      source: source.contentSource,
    });
  return trace.step(costByVolume, { E, content: source.content, price });
};

/** kg of carbon dioxide for `heat` (J); `grid` in kg/J of electricity replaces the table's. */
export const heatCarbon = (
  name: SourceName,
  heat: number,
  efficiency: number,
  trace: Trace = silent,
  grid?: number,
): number => {
  const source = sourceNamed(name);
  const E = bought(source, heat, efficiency, trace);
  if (grid !== undefined) {
    if (source.carbonSource !== "egrid2018")
      throw valueError(`gridFactor: is for electricity; ${name} has the factor of its fuel: leave it out`);
    return trace.step(carbonDioxide, { E, factor: grid });
  }
  if (trace.on)
    trace.lookup({
      table: "heat sources",
      row: `${name}, carbon dioxide, ${source.carbonText}, in kg/J`,
      result: { value: source.carbon, kind: "number" },
      source: source.carbonSource,
    });
  return trace.step(carbonDioxide, { E, factor: source.carbon });
};
