import { boardBetween } from "#lib/cartons/board/inside-sizes";
import {
  type CartonWall,
  readCartonRating,
  type UnreadableRating,
} from "#lib/cartons/strength/carton-rating";
import type { Block } from "#lib/packing/block";
import { NO_STAMP } from "../cartons/carton-board";

/** A field and what is wrong with it. */
export type Disagreement = readonly [field: string, message: string];

type Sizes = { readonly um: readonly number[] } | undefined;

/** What of a carton's form must agree with one another. */
export type CartonParts = {
  readonly kind: string;
  readonly sizes?: Sizes;
  readonly outside?: Sizes;
  readonly wall?: CartonWall | undefined;
  readonly rating?: string | undefined;
  readonly flutes?: string | undefined;
};

const SIZES = "A carton needs its three inside sizes, like 12 x 9 x 8.";
const RATING_WORDS: Readonly<Record<UnreadableRating, string>> = {
  noUnit: "says no unit: write it as printed, like 32 ECT or 200 psi; “none” if it has no stamp",
  impossible: "is more than any board bears: look at the stamp again",
  burstOnTriple: "is a burst test, and triple wall is rated by edge crush: look at the stamp again",
};
const FLUTES_OF_WALL: Readonly<Record<CartonWall, number>> = { single: 1, double: 2, triple: 3 };

/**
 * What of a carton can't be right.
 *
 * @param carton the form as read
 * @returns by field, with the way out
 */
export function cartonDisagreements(carton: CartonParts): Disagreement[] {
  const { rating, flutes, wall = "single" } = carton;
  const inside = blockOf(carton.sizes);
  if (inside === null) return [["sizes", SIZES]];
  const found: Disagreement[] = [];
  if (inside.widthUm > inside.lengthUm) {
    found.push(["sizes", "Write the longer side of its opening first, the height last, like 12 x 9 x 8."]);
  }
  const read = readCartonRating(NO_STAMP.test(rating ?? "") ? "" : (rating ?? ""), wall);
  if (read.kind === "unreadable") found.push(["rating", `“${read.text}” ${RATING_WORDS[read.reason]}.`]);
  if (flutes !== undefined && flutes.length !== FLUTES_OF_WALL[wall]) {
    found.push(["flutes", `A ${wall} wall has ${FLUTES_OF_WALL[wall]} of them: C single, BC double.`]);
  }
  return carton.outside === undefined ? found : [...found, ...outsideFaults(inside, carton.outside)];
}

function outsideFaults(inside: Block, sizes: Sizes): Disagreement[] {
  const outside = blockOf(sizes);
  if (outside === null) return [["outside", "Write its three outside sizes, like 12.5 x 9.5 x 8.75."]];
  const between = boardBetween(inside, outside);
  if (between.kind === "board") return [];
  const side = `The outside ${between.side}`;
  const words = {
    notAboveZero: `${side} is zero: measure it again.`,
    insideNotSmaller: `${side} is no more than the inside one: the two may be swapped, or in another order.`,
    tooThick: `${side} is so much more than the inside one that no board is so thick: check both and their unit.`,
  };
  return [["outside", words[between.kind]]];
}

function blockOf(sizes: Sizes): Block | null {
  const [lengthUm, widthUm, heightUm, ...more] = sizes?.um ?? [];
  if (lengthUm === undefined || widthUm === undefined || heightUm === undefined || more.length > 0)
    return null;
  return { lengthUm, widthUm, heightUm };
}
