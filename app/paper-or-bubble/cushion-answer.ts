import { type Comparison, comparisons } from "#lib/cushioning/comparison";
import { expectedKinds, type KindCount } from "#lib/cushioning/expected-kinds";
import { type KindsTotal, type ParcelKind, totalOf } from "#lib/cushioning/parcel-kind";
import { type PastCost, pastCost } from "#lib/cushioning/past-cost";
import { type WayCost, type WayTerms, wayCost } from "#lib/cushioning/way-cost";
import type { PackedPieces } from "#lib/cushioning/way-to-pack";
import { waysToPack } from "#lib/cushioning/ways-to-pack";
import { CUSHION_STYLES, type CushionStyle } from "#lib/packing/recipe-version";
import { holdsOn, mainCardOn } from "#lib/postage/card-on";
import type { CushionTerms } from "#prisma/records/cushion-terms";
import type { ReadRateCard } from "#prisma/records/rate-cards";
import type { SentRow } from "#prisma/records/sent-kinds";
import { zoneShares } from "../pack/listing/zone-shares";
import type { CushionGround } from "./cushion-ground";
import type { WhatIf } from "./what-if";

/** One kind of parcel with its ways held against each other. */
export type KindAnswer = ParcelKind & {
  /** the cheapest way against each other one; empty for fewer than two ways */
  readonly comparisons: readonly Comparison[];
};

/** Paper and bubble compared for all that the shop sends. */
export type CushionAnswer = {
  /** the rate card that is reckoned by; null where none holds */
  readonly card: ReadRateCard | null;
  readonly hasZones: boolean;
  readonly terms: WayTerms;
  /** parcels to come with at least two ways, the most frequent first */
  readonly kinds: readonly KindAnswer[];
  /** kinds whose postage is known on one side alone: their sums say nothing of each other, and are in no total */
  readonly untold: readonly KindAnswer[];
  /** kinds with fewer than two ways: nothing to compare */
  readonly single: readonly ParcelKind[];
  /** parcels to come of kinds that are too many to look at */
  readonly unseen: number;
  /** styles that some kind has a way in */
  readonly styles: readonly CushionStyle[];
  readonly allIn: ReadonlyMap<CushionStyle, KindsTotal>;
  readonly best: KindsTotal;
  readonly past: PastCost;
};

/** More kinds of parcel than a screen can show, and than are worth reckoning. */
const MOST_KINDS = 60;
const PAPER_KINDS = new Set(["tissue", "paper", "carton"]);

/**
 * Compares the ways to pack for all that the shop sends.
 *
 * @param ground as the shop stands
 * @param whatIf other prices and another card, tried out
 */
export function cushionAnswer(ground: CushionGround, whatIf: WhatIf): CushionAnswer {
  const { card, hasZones, terms } = cushionTermsFor(ground, whatIf);
  const costsFor = rememberedCosts(ground, terms);
  const expected = expectedKinds(merged(ground.sent), ground.expectedPieces);
  const seen = expected.slice(0, MOST_KINDS).map((kind) => ({ ...kind, costs: costsFor(kind.pieces) }));
  const paired = seen
    .filter(({ costs }) => costs.length > 1)
    .map((kind): KindAnswer => ({ ...kind, comparisons: comparisons(kind.costs) }));
  const compared = paired.filter(({ costs }) => isTold(costs));
  const styles = CUSHION_STYLES.filter((style) =>
    compared.some(({ costs }) => costs.some(({ way }) => way.style === style)),
  );
  const sent = ground.sent.map(({ pieces, style, zoneId, parcels }) => {
    const costs = costsFor(pieces);
    return { parcels, style, zone: zoneId, costs: isTold(costs) ? costs : [] };
  });
  return {
    card,
    hasZones,
    terms,
    kinds: compared,
    untold: paired.filter(({ costs }) => !isTold(costs)),
    single: seen.filter(({ costs }) => costs.length < 2),
    unseen: expected.slice(MOST_KINDS).reduce((sum, { parcels }) => sum + parcels, 0),
    styles,
    allIn: new Map(styles.map((style) => [style, totalOf(compared, style)])),
    best: totalOf(compared, "best"),
    past: pastCost(sent, styles),
  };
}

/**
 * The rate card, zones and prices that ways to pack are reckoned with.
 *
 * @param ground as the shop stands
 * @param whatIf other prices and another card, tried out
 */
export function cushionTermsFor(
  ground: CushionGround,
  { prices, cardId }: WhatIf,
): Pick<CushionAnswer, "card" | "hasZones" | "terms"> {
  const { cards, today, supplies, replacement, said } = ground;
  const card = cardId === null ? mainCardOn(cards, today) : (cards.find(({ id }) => id === cardId) ?? null);
  const { zones, isKnown } = zoneShares(card?.card.zones ?? [], ground.zoneCounts);
  const paper = new Set(supplies.filter(({ kind }) => PAPER_KINDS.has(kind)).map(({ id }) => id));
  return {
    card,
    hasZones: isKnown,
    terms: {
      book: ground.book,
      replacement: new Map([...replacement, ...prices]),
      card: card?.card ?? null,
      zones,
      // A card tried out that does not hold today is reckoned by on its first day.
      shipDay: card === null || holdsOn(card, today) ? today : card.validFrom,
      hourMinor: ground.hourMinor,
      minutes: saidForAll(said.minutes, ground),
      brokenPerMille: saidForAll(said.brokenPerMille, ground),
      litres: ground.litres,
      isPaper: (supplyId) => paper.has(supplyId),
      supplyMasses: ground.packing.supplyMasses,
    },
  };
}

/** Whether postage is known for all ways of a parcel, or for none. */
function isTold(costs: readonly WayCost[]): boolean {
  return new Set(costs.map(({ postageMinor }) => postageMinor === null)).size < 2;
}

/** What was said for some of the styles in use alone can't be held against the others: then it counts for none. */
function saidForAll(said: CushionTerms["minutes"], { packing }: CushionGround): CushionTerms["minutes"] {
  const isMissing = packing.recipes.some(({ style }) => said[style] === null);
  return isMissing ? { paper: null, bubble: null, mixed: null } : said;
}

/**
 * What the pieces of a parcel sell for.
 *
 * @param pieces of the parcel
 * @param ground item types
 * @returns minor units; null where a price was not said
 */
export function piecesValue(
  pieces: PackedPieces,
  { itemTypes }: Pick<CushionGround, "itemTypes">,
): number | null {
  let sum = 0;
  for (const { itemTypeId, pieces: count } of pieces) {
    const value = itemTypes.find(({ id }) => id === itemTypeId)?.valueMinor ?? null;
    if (value === null) return null;
    sum += count * value;
  }
  return sum;
}

/**
 * One kind of parcel that need not be among those to come.
 *
 * @param pieces of the parcel
 * @param ground as the shop stands
 * @param terms prices, card, zones
 */
export function kindAnswer(pieces: PackedPieces, ground: CushionGround, terms: WayTerms): KindAnswer {
  const costs = costsOf(pieces, ground, terms);
  return { pieces, parcels: 0, costs, comparisons: comparisons(costs) };
}

function costsOf(pieces: PackedPieces, ground: CushionGround, terms: WayTerms): WayCost[] {
  const value = piecesValue(pieces, ground);
  return waysToPack(pieces, ground.packing).map((way) => wayCost(way, terms, value));
}

/** Many parcels hold the same pieces: each set is reckoned once. */
function rememberedCosts(
  ground: CushionGround,
  terms: WayTerms,
): (pieces: PackedPieces) => readonly WayCost[] {
  const known = new Map<string, readonly WayCost[]>();
  return (pieces) => {
    const key = piecesKey(pieces);
    const before = known.get(key);
    if (before !== undefined) return before;
    const costs = costsOf(pieces, ground, terms);
    known.set(key, costs);
    return costs;
  };
}

function merged(sent: readonly SentRow[]): KindCount[] {
  const kinds = new Map<string, KindCount>();
  for (const { pieces, parcels } of sent) {
    const key = piecesKey(pieces);
    kinds.set(key, { pieces, parcels: parcels + (kinds.get(key)?.parcels ?? 0) });
  }
  return [...kinds.values()];
}

/**
 * A text that is the same for the same pieces.
 *
 * @param pieces in the order of the item types
 */
export function piecesKey(pieces: PackedPieces): string {
  return pieces.map(({ itemTypeId, pieces: count }) => `${count} ${itemTypeId}`).join(";");
}
