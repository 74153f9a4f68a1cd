import fc from "fast-check";
import type { FitQuestion, WrappedPiece } from "#lib/cartons/fit/fit-question";
import { type Sides, sidesBlock } from "#lib/cartons/fit/sides";

export const NO_CLEARANCE = { wallsUm: 0, baseUm: 0, topUm: 0 };

export const piece = (...sides: Sides): WrappedPiece => ({ block: sidesBlock(sides), upright: false });
export const uprightPiece = (...sides: Sides): WrappedPiece => ({ block: sidesBlock(sides), upright: true });

/** A question with no clearance, sides as small whole numbers. */
export const question = (inside: Sides, ...pieces: WrappedPiece[]): FitQuestion => ({
  pieces,
  inside: sidesBlock(inside),
  clearance: NO_CLEARANCE,
});

const threeSides = (from: number, to: number) =>
  fc.tuple(
    fc.integer({ min: from, max: to }),
    fc.integer({ min: from, max: to }),
    fc.integer({ min: from, max: to }),
  );

/** Questions whose answer is not plain: up to `most` pieces in a carton of about their size. */
export const askedQuestions = (most: number): fc.Arbitrary<FitQuestion> =>
  fc.record({
    pieces: fc.array(
      fc.record({
        block: threeSides(2, 9).map(sidesBlock),
        upright: fc.integer({ min: 0, max: 3 }).map((draw) => draw === 0),
      }),
      { minLength: 1, maxLength: most },
    ),
    inside: threeSides(8, 18).map(sidesBlock),
    clearance: fc.record({
      wallsUm: fc.integer({ min: 0, max: 1 }),
      baseUm: fc.integer({ min: 0, max: 2 }),
      topUm: fc.integer({ min: 0, max: 2 }),
    }),
  });
