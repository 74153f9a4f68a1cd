import type {
  MixOffer,
  MixQuestion,
  MixSupplier,
  MixSupply,
  MixType,
  MixWay,
} from "#lib/cushioning/purchase/mix-question";
import { CUSHION_STYLES, type CushionStyle } from "#lib/packing/recipe-version";
import type { PlanPriceStep } from "#lib/purchasing/plan/plan-offer";
import { type Dice, dice } from "../purchasing/dice";

/** How large an invented question is; half of its supplies are cartons, the rest wraps. */
export type MixSize = { readonly types: number; readonly supplies: number; readonly suppliers: number };

/** Whether stock, packs on sale, cash and room suffice for every way of packing, or not. */
export type MixKind = "loose" | "tight";

const PARCELS = 200;

type Wrap = { readonly job: "paper" | "bubble" | "both"; readonly from: number; readonly to: number };
/** What a parcel takes of a wrap, use units: sheets of paper, square feet of bubble, feet of tape. */
const WRAPS: readonly Wrap[] = [
  { job: "paper", from: 5, to: 20 },
  { job: "bubble", from: 3, to: 8 },
  { job: "both", from: 3, to: 8 },
  { job: "paper", from: 2, to: 6 },
  { job: "bubble", from: 1, to: 4 },
  { job: "both", from: 2, to: 10 },
];
/** Minor units that a use unit of each wrap costs, about. */
const UNIT_MINOR = [6, 22, 2, 9, 35, 3];
const LITRES = [0.05, 1.2, 0.02, 0.1, 2, 0.01];

/**
 * An invented question of paper, bubble or both: 200 parcels, postage that paper's weight raises, price steps of both
 * kinds, free delivery and least orders. The tight ones have little stock, a wrap that is sold out or limited, and
 * mostly too little cash or room for all bubble.
 *
 * @param seed the same seed gives the same question
 * @param size how many of each
 * @param kind loose or tight
 * @returns the question
 */
export function mixInstance(seed: number, size: MixSize, kind: MixKind): MixQuestion {
  const chance = dice(seed);
  const wraps = Math.ceil(size.supplies / 2);
  const drawn = Array.from({ length: size.supplies }, (_, index) => {
    const isWrap = index < wraps;
    const at = index % WRAPS.length;
    const unitMinor = (isWrap ? (UNIT_MINOR[at] ?? 1) : 90) * chance.between(0.8, 1.25);
    return { id: isWrap ? `wrap-${index}` : `carton-${index - wraps}`, isWrap, at, unitMinor };
  });
  const weights = Array.from({ length: size.types }, () => chance.between(0.2, 2));
  const sum = weights.reduce((total, each) => total + each, 0);
  const types = weights.map((weight, index) =>
    drawnType(chance, index, (PARCELS * weight) / sum, wraps, size.supplies - wraps),
  );
  const uses = drawn.map(({ id }) => meanUse(types, id));
  const supplies = drawn.map(({ id, isWrap, at, unitMinor }, index): MixSupply => {
    const use = uses[index] ?? 0;
    const stock = kind === "tight" ? chance.between(0, 0.4) : chance.between(0, 0.9);
    return {
      id,
      onHand: Math.round(use * stock),
      keep: Math.round(use * chance.between(0, 0.3)),
      leftMinor: Math.round(unitMinor * chance.between(0.5, 0.8) * 100) / 100,
      worthUpTo: Math.round(use * 3),
      litresPerUnit: isWrap ? (LITRES[at] ?? 0) : 0.9,
    };
  });
  const suppliers = Array.from({ length: size.suppliers }, (_, index) => drawnSupplier(chance, index));
  const offers = drawn.flatMap(({ id, isWrap, at, unitMinor }, index) => {
    const isOfOneStyle = isWrap && WRAPS[at]?.job !== "both";
    const terms = { supplyId: id, unitMinor, use: uses[index] ?? 0, isOfOneStyle };
    return drawnOffers(chance, terms, suppliers, kind);
  });
  const value = drawn.reduce((total, { unitMinor }, index) => total + unitMinor * (uses[index] ?? 0), 0);
  const litres = supplies.reduce(
    (total, { litresPerUnit, keep }, index) => total + litresPerUnit * (keep + (uses[index] ?? 0)),
    0,
  );
  const limits = {
    cashMinor: kind === "tight" && chance.chance(0.7) ? Math.round(value * chance.between(0.8, 1.3)) : null,
    litres: kind === "tight" && chance.chance(0.7) ? Math.round(litres * chance.between(0.7, 1.2)) : null,
  };
  return { supplies, suppliers, offers, types, limits };
}

function drawnType(chance: Dice, index: number, parcels: number, wraps: number, cartons: number): MixType {
  const sendMinor = chance.between(600, 1200);
  // Most types take one carton in every style; with paper some need a larger one.
  const carton = chance.whole(0, cartons - 1);
  const bulk = chance.between(0.7, 1.4);
  const ways = CUSHION_STYLES.map((style): MixWay => {
    const isLarger = style === "paper" && chance.chance(0.3);
    const size = isLarger ? Math.min(cartons - 1, carton + 1) : carton;
    const heavier = { paper: chance.between(0, 300), bubble: 0, mixed: chance.between(0, 150) }[style];
    return {
      style,
      takes: [{ supplyId: `carton-${size}`, units: 1 }, ...wrapsOf(chance, style, bulk, wraps)],
      sendMinor: sendMinor + heavier,
      otherMinor: chance.between(80, 260),
    };
  });
  return { id: `type-${index}`, parcels: Math.round(parcels * 10) / 10, ways };
}

function wrapsOf(chance: Dice, style: CushionStyle, bulk: number, wraps: number): MixWay["takes"] {
  const share = style === "mixed" ? 0.5 : 1;
  return Array.from({ length: wraps }, (_, index) => index).flatMap((index) => {
    const wrap = WRAPS[index % WRAPS.length];
    if (wrap === undefined) return [];
    const isTaken = wrap.job === "both" || wrap.job === style || style === "mixed";
    if (!isTaken || !chance.chance(0.75)) return [];
    const units = chance.between(wrap.from, wrap.to) * bulk * (wrap.job === "both" ? 1 : share);
    return [{ supplyId: `wrap-${index}`, units: Math.round(units * 10) / 10 }];
  });
}

function meanUse(types: readonly MixType[], supplyId: string): number {
  return types.reduce((total, { parcels, ways }) => {
    const units = ways.map(({ takes }) => takes.find((of) => of.supplyId === supplyId)?.units ?? 0);
    return total + (parcels * units.reduce((sum, each) => sum + each, 0)) / ways.length;
  }, 0);
}

function drawnSupplier(chance: Dice, index: number): MixSupplier {
  return {
    id: `supplier-${index}`,
    deliveryMinor: chance.whole(4, 15) * 100,
    freeFromMinor: chance.chance(0.7) ? chance.whole(50, 150) * 100 : null,
    leastOrderMinor: chance.chance(0.5) ? chance.whole(15, 40) * 100 : null,
  };
}

type OfferTerms = {
  readonly supplyId: string;
  readonly unitMinor: number;
  readonly use: number;
  /** whether only paper, or only bubble, takes it */
  readonly isOfOneStyle: boolean;
};

function drawnOffers(
  chance: Dice,
  { supplyId, unitMinor, use, isOfOneStyle }: OfferTerms,
  suppliers: readonly MixSupplier[],
  kind: MixKind,
): MixOffer[] {
  const first = chance.whole(0, suppliers.length - 1);
  const count = Math.min(suppliers.length, chance.whole(2, 3));
  const isScarce = kind === "tight" && isOfOneStyle && chance.chance(0.4);
  return Array.from({ length: count }, (_, index): MixOffer => {
    const supplierId = `supplier-${(first + index) % suppliers.length}`;
    const unitsPerPack = Math.max(5, Math.round((use * chance.between(0.15, 0.7)) / 5) * 5);
    const price = Math.max(100, Math.round(unitMinor * unitsPerPack * chance.between(0.9, 1.2)));
    return {
      id: `offer-${supplyId}-${index}`,
      supplyId,
      supplierId,
      unitsPerPack,
      steps: drawnSteps(chance, price),
      kind: chance.chance(0.6) ? "all-units" : "incremental",
      mostPacks: mostPacks(chance, isScarce),
    };
  });
}

/** Sold out or a single pack where it is scarce; now and then a limit for the month. */
function mostPacks(chance: Dice, isScarce: boolean): number | null {
  if (isScarce) return chance.whole(0, 1);
  return chance.chance(0.15) ? chance.whole(3, 8) : null;
}

function drawnSteps(chance: Dice, price: number): PlanPriceStep[] {
  const first = { fromPacks: 1, priceMinor: price };
  const second = {
    fromPacks: chance.whole(2, 4),
    priceMinor: Math.round(price * chance.between(0.85, 0.96)),
  };
  if (chance.chance(0.5)) return [first, second];
  const fromPacks = second.fromPacks + chance.whole(2, 4);
  const third = { fromPacks, priceMinor: Math.round(second.priceMinor * chance.between(0.88, 0.97)) };
  return [first, second, third];
}
