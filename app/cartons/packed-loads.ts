import type { PackedLoad } from "#lib/cartons/cost/packed-load";
import { cushionLeft } from "#lib/cartons/fit/cushion-left";
import { QUICK_EFFORT } from "#lib/cartons/fit/fit-effort";
import type { Clearance } from "#lib/cartons/fit/fit-question";
import type { Block } from "#lib/packing/block";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { PackedKind } from "#prisma/records/packed-kinds";
import type { WrappedType } from "./wrapped-type";

/** More blocks than this are not looked at: the answer would seldom be proven. */
const MOST_BLOCKS = 10;

/** Parcels packed alike, with what they must have held. */
export type KindLoad = {
  readonly kind: PackedKind;
  readonly load: PackedLoad;
  readonly clearance: Clearance;
};

/** What was packed, as far as its sizes and weights are known. */
export type PackedLoads = {
  readonly loads: readonly KindLoad[];
  /** parcels left out, by item type whose sizes or weight are not known */
  readonly unknown: ReadonlyMap<string, number>;
  /** parcels left out as they held too many pieces */
  readonly crowded: number;
};

/** What parcels are looked at with. */
export type LoadGround = {
  /** one piece of an item type in a style, wrapped; null where its sizes are not known */
  readonly wrappedOf: (itemTypeId: string, style: CushionStyle) => WrappedType | null;
  /** inside of a carton; null where it is not known */
  readonly insideOf: (cartonId: string | null) => Block | null;
  /** letter and slip in each parcel, milligrams */
  readonly papersMg: number;
};

/**
 * What parcels packed alike must have held, wrapped as the shop wraps today. Where the carton that they went in leaves less
 * cushion than is asked for, the seller accepted that much: no more is asked of another carton.
 *
 * @param kinds parcels packed alike
 * @param ground wraps, cartons and papers
 * @returns loads, and what could not be looked at
 */
export function packedLoads(
  kinds: readonly PackedKind[],
  { wrappedOf, insideOf, papersMg }: LoadGround,
): PackedLoads {
  const loads: KindLoad[] = [];
  const unknown = new Map<string, number>();
  let crowded = 0;
  for (const kind of kinds) {
    const parts = kind.pieces.map((part) => ({ ...part, wrapped: wrappedOf(part.itemTypeId, kind.style) }));
    const unsized = parts.find(({ wrapped }) => wrapped === null || wrapped.massMg === null);
    const blocks = parts.flatMap(({ pieces, wrapped }) =>
      Array.from({ length: pieces }, () => wrapped?.blocks ?? []).flat(),
    );
    if (unsized !== undefined) {
      unknown.set(unsized.itemTypeId, (unknown.get(unsized.itemTypeId) ?? 0) + kind.parcels);
    } else if (blocks.length > MOST_BLOCKS) crowded += kind.parcels;
    else {
      const sum = (of: (wrapped: WrappedType) => number) =>
        parts.reduce((all, { pieces, wrapped }) => all + pieces * (wrapped === null ? 0 : of(wrapped)), 0);
      const askedUm = Math.max(...parts.map(({ wrapped }) => wrapped?.cushionUm ?? 0));
      const inside = insideOf(kind.cartonId);
      const leftUm = inside === null ? null : cushionLeft(blocks, inside, askedUm, QUICK_EFFORT);
      const cushionUm = leftUm ?? askedUm;
      loads.push({
        kind,
        load: {
          pieces: blocks,
          ml: sum(({ ml }) => ml),
          massMg: papersMg + sum(({ massMg }) => massMg ?? 0),
        },
        clearance: { wallsUm: cushionUm, baseUm: cushionUm, topUm: cushionUm },
      });
    }
  }
  return { loads, unknown, crowded };
}
