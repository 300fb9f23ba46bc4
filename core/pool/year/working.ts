/** The working of a year: its hours as series; no hour is written out. */
import type { KindName } from "../../kernel/quantity";
import type { Trace } from "../../kernel/steps";
import type { Year } from "./results";

export function traceYear({ inputs, weather, surface, machine, free, held }: Year, trace: Trace): void {
  const series = (title: string, kind: KindName, values: Float64Array): void =>
    trace.series({ title, of: "hours", kind, total: "mean", values });
  trace.within("Weather", () => {
    series("Air", "temperature", weather.air);
    series("Sun on a level surface", "irradiance", weather.sun);
    series("Sun absorbed", "irradiance", surface.sun);
  });
  trace.within("Pool", () => {
    series("Left to itself, without recovery", "temperature", free.without.temperature);
    series("Left to itself, with recovery", "temperature", free.with.temperature);
    series("Back-up heat without recovery", "heat rate", held.without.backUp);
    series("Back-up heat with recovery", "heat rate", held.with.backUp);
  });
  if (machine)
    trace.within("Air conditioner", () => {
      series("Cooling load", "heat rate", machine.load);
      series("Heat to the pool", "heat rate", free.with.taken);
      series("Heat outdoors", "heat rate", free.with.outdoors);
    });
  if (machine?.tankCurve)
    trace.within("Preheat tank", () => {
      series("Heat to the tank", "heat rate", free.with.toTank);
      series("Water in the tank", "temperature", free.with.tank);
    });
  trace.remark(
    `Each hour is one step, solved exactly for losses that are a straight line about the hour's first temperature; ${free.with.subSteps + held.with.subSteps} further steps where that or the valve asked for them. ${inputs.evaporationMethod} for evaporation.`,
  );
}
