/** Prices and heats that seem to be in another unit. Usual ranges in dollars or euros of the 2020s: common practice. */
import { caution, type ShowQuantity } from "../kernel/define/caution";
import { us, type KindName } from "../kernel/values/quantity";

/** Usual least and most per US selling unit; a slip is a factor and the unit that it suggests. */
interface Usual {
  readonly least: number;
  readonly most: number;
  readonly slips: readonly (readonly [times: number, says: string])[];
}

const CENTS = [100, "in cents"] as const;

const USUAL: Readonly<Partial<Record<KindName, Usual>>> = {
  "price of gas": { least: 0.3, most: 5, slips: [[10, "for an MMBTU or Mcf (about 10 therms)"], CENTS] },
  "price of electricity": { least: 0.03, most: 1, slips: [CENTS, [1000, "for an MWh"], [0.01, "in hundreds"]] },
  "price of liquid fuel": { least: 0.5, most: 12, slips: [CENTS] },
  "price of wood": { least: 40, most: 1200, slips: [] },
};

/** Whether a price, in base units, is outside the usual range; 0 never is, since some tariffs are free. */
export function isUnusualPrice(kind: KindName, price: number): boolean {
  const usual = USUAL[kind];
  return usual !== undefined && price !== 0 && (price < us(kind, usual.least) || price > us(kind, usual.most));
}

/** The usual range, and the unit slip that would explain a price. */
function unusualPriceText(label: string, kind: KindName, price: number, show: ShowQuantity): string {
  const { least = 0, most = 0, slips = [] } = USUAL[kind] ?? {};
  const [times, says] = slips.find(([by]) => !isUnusualPrice(kind, price / by)) ?? [];
  const slip = times === undefined ? "check value and unit" : `${says ?? ""}? Then it is ${show(price / times, kind)}`;
  return `${label}: ${show(price, kind)} is outside the usual ${show(us(kind, least), kind)} to ${show(us(kind, most), kind)}; ${slip}.`;
}

/** Less than the heat in a kettle of hot water. */
const LITTLE_HEAT = us("heat", 1000);

const isLittle = (heat: number): boolean => heat > 0 && heat < LITTLE_HEAT;

const littleText = (heat: number, show: ShowQuantity): string =>
  `heat: ${show(heat, "heat")} is very little; as MMBTU it is ${show(heat * 1e6, "heat")}, as therms ${show(heat * 1e5, "heat")}.`;

/** The facts of a price for `unusualInput`; without a price nothing is odd. */
export function priceFacts(priceKind: KindName = "number", oddPrice = 0, priceLabel = "price") {
  return { priceKind, oddPrice, priceLabel };
}

export const PRICE_FACTS = { priceKind: "word", oddPrice: "number", priceLabel: "word" } as const;

export const unusualInput = caution({
  code: "UNUSUAL-INPUT",
  severity: "Notice",
  source: "commonPractice",
  description: "A price or heat that seems to be in another unit.",
  needs: { ...PRICE_FACTS, heat: "heat" },
  when: ({ priceKind, oddPrice, heat }) => isUnusualPrice(priceKind as KindName, oddPrice) || isLittle(heat),
  message: ({ priceKind, oddPrice, priceLabel, heat }, show) => {
    const kind = priceKind as KindName;
    return [
      ...(isUnusualPrice(kind, oddPrice) ? [unusualPriceText(priceLabel, kind, oddPrice, show)] : []),
      ...(isLittle(heat) ? [littleText(heat, show)] : []),
    ].join(" ");
  },
});
