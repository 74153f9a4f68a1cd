import type { Piece, PieceBody } from "#lib/packing/piece/piece";
import { USUAL_HOLLOW } from "../../recipes/piece-form";
import type { PieceForm } from "../../recipes/piece-forms";

/** Shares of a glass on a stem, of its width and height. A guess from memory, no source. */
const STEMMED = {
  bowl: { across: 1, high: 0.5 },
  stem: { across: 0.12, high: 0.45 },
  foot: { across: 0.85, high: 0.05 },
} as const;
const HOLLOW_FORMS: readonly PieceForm[] = ["round", "stemmed"];

/** Stands in for the item type that the piece does not have yet. */
export const UNSOLD = "";

/**
 * A piece of which only the outer sizes are known. What sticks out is within them: a round piece is taken as wide all
 * round as it is at its widest, and the last size is its height. The least size of a flat piece is its thickness; with
 * two sizes it is a disc. Round pieces and those on a stem are taken as hollow, the others as solid.
 *
 * @param form the form
 * @param um two or three outer sizes in micrometres, above 0; three for a block
 * @returns the piece, of usual frailty and without its weight
 * @throws RangeError if there are fewer than two sizes, or than three for a block
 * @example pieceOfSizes("round", [101_600, 101_600, 127_000]).body // 4 in across and 5 in high
 */
export function pieceOfSizes(form: PieceForm, um: readonly number[]): Piece {
  return {
    itemTypeId: UNSOLD,
    body: bodyOfSizes(form, um),
    hollows: HOLLOW_FORMS.includes(form) ? [{ kind: "share", share: USUAL_HOLLOW }] : [],
    stickingOut: [],
    rims: 0,
    lid: null,
    thisSideUp: false,
    frailty: "usual",
    massMg: null,
    typed: {},
  };
}

function bodyOfSizes(form: PieceForm, um: readonly number[]): PieceBody {
  const [first, second, third] = um;
  if (first === undefined || second === undefined || (form === "box" && third === undefined)) {
    throw new RangeError(`pieceOfSizes requires two sizes, or three for a block, got ${um.length}`);
  }
  const acrossUm = third === undefined ? first : Math.max(first, second);
  const heightUm = third ?? second;
  switch (form) {
    case "round":
      return { kind: "cylinder", acrossUm, heightUm };
    case "box":
      return { kind: "box", lengthUm: first, widthUm: second, heightUm };
    case "flat": {
      const [thickUm = 0, wideUm = 0, longUm = null] = um.toSorted((a, b) => a - b);
      return { kind: "flat", acrossUm: wideUm, longUm, thickUm };
    }
    case "stemmed": {
      const part = ({ across, high }: (typeof STEMMED)[keyof typeof STEMMED]) => ({
        acrossUm: Math.round(acrossUm * across),
        heightUm: Math.round(heightUm * high),
      });
      return {
        kind: "stemmed",
        bowl: part(STEMMED.bowl),
        stem: part(STEMMED.stem),
        foot: part(STEMMED.foot),
      };
    }
    default:
      return form satisfies never;
  }
}
