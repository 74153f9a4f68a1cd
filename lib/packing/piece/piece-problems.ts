import { bodyVolume, hollowVolume } from "#lib/packing/piece/body-volume";
import type { Hollow, Piece, PieceBody, StickingOut } from "#lib/packing/piece/piece";
import { bodyBlock } from "#lib/packing/piece/piece-block";

/** What is wrong with a description: the place of the measure, and what to do about it in plain words. */
export type PieceProblem = {
  readonly field: string;
  readonly kind:
    | "not-above-zero"
    | "lid-too-wide"
    | "hollow-too-large"
    | "share-out-of-range"
    | "too-long"
    | "stem-too-wide";
  readonly words: string;
};

/**
 * What keeps a description of a piece from being packed by the program. The room of hollows may be the body's at most.
 *
 * @param piece - the piece as described
 * @returns the problems in the order of the fields; none if all is well
 * @example pieceProblems({ ...mug, body: { kind: "cylinder", acrossUm: 0, heightUm: 101600 } })[0]?.field
 *   // "body.acrossUm"
 */
export function pieceProblems(piece: Piece): readonly PieceProblem[] {
  const sizes = sizeProblems(piece);
  return sizes.length > 0
    ? sizes
    : [...lidProblems(piece), ...hollowProblems(piece), ...shapeProblems(piece)];
}

function sizeProblems(piece: Piece): readonly PieceProblem[] {
  const sizes: readonly (readonly [string, number])[] = [
    ...bodySizes(piece.body),
    ...piece.hollows.flatMap((hollow, index) => hollowSizes(hollow, `hollows.${index}`)),
    ...piece.stickingOut.flatMap(({ outUm, alongUm }, index): [string, number][] => [
      [`stickingOut.${index}.outUm`, outUm],
      [`stickingOut.${index}.alongUm`, alongUm],
    ]),
    ...partSizes("lid", piece.lid),
    ...(piece.massMg === null ? [] : [["massMg", piece.massMg] as const]),
  ];
  return sizes
    .filter(([, size]) => !(size > 0 && Number.isFinite(size)))
    .map(([field]) => {
      const typed = piece.typed[field];
      const said = typed === undefined ? "" : ` "${typed}" was typed.`;
      return { field, kind: "not-above-zero", words: `Enter more than zero here.${said}` };
    });
}

function bodySizes(body: PieceBody): readonly (readonly [string, number])[] {
  switch (body.kind) {
    case "cylinder":
      return partSizes("body", body);
    case "box":
      return [
        ["body.lengthUm", body.lengthUm],
        ["body.widthUm", body.widthUm],
        ["body.heightUm", body.heightUm],
      ];
    case "flat":
      return [
        ["body.acrossUm", body.acrossUm],
        ...(body.longUm === null ? [] : [["body.longUm", body.longUm] as const]),
        ["body.thickUm", body.thickUm],
      ];
    case "stemmed":
      return [
        ...partSizes("body.bowl", body.bowl),
        ...partSizes("body.stem", body.stem),
        ...partSizes("body.foot", body.foot),
      ];
    default:
      return body satisfies never;
  }
}

function partSizes(
  field: string,
  part: { readonly acrossUm: number; readonly heightUm: number } | null,
): readonly (readonly [string, number])[] {
  if (part === null) return [];
  return [
    [`${field}.acrossUm`, part.acrossUm],
    [`${field}.heightUm`, part.heightUm],
  ];
}

function hollowSizes(hollow: Hollow, field: string): readonly (readonly [string, number])[] {
  if (hollow.kind === "share") return [[`${field}.share`, hollow.share]];
  return Object.entries(hollow).flatMap(([name, value]): [string, number][] =>
    typeof value === "number" ? [[`${field}.${name}`, value]] : [],
  );
}

function lidProblems(piece: Piece): readonly PieceProblem[] {
  const { lengthUm, widthUm } = bodyBlock(piece.body);
  if (piece.lid === null || piece.lid.acrossUm <= Math.max(lengthUm, widthUm)) return [];
  const words =
    "The lid is wider than its pot: measure both again, or describe the lid as a piece of its own.";
  return [{ field: "lid.acrossUm", kind: "lid-too-wide", words }];
}

function hollowProblems(piece: Piece): readonly PieceProblem[] {
  const shares = piece.hollows.flatMap((hollow, index): PieceProblem[] => {
    if (hollow.kind !== "share" || hollow.share <= 1) return [];
    const words = "A hollow is a share of the piece: enter 100 % or less.";
    return [{ field: `hollows.${index}.share`, kind: "share-out-of-range", words }];
  });
  if (shares.length > 0) return shares;
  const inside = piece.hollows.reduce((sum, hollow) => sum + hollowVolume(hollow, piece.body), 0);
  if (inside <= bodyVolume(piece.body)) return [];
  const words = "The hollows hold more than the whole piece: check their sizes and units.";
  return [{ field: "hollows", kind: "hollow-too-large", words }];
}

function shapeProblems(piece: Piece): readonly PieceProblem[] {
  const { body } = piece;
  const block = bodyBlock(body);
  const longest = Math.max(block.lengthUm, block.widthUm, block.heightUm);
  const long = piece.stickingOut.flatMap((part, index) =>
    tooLong(part, longest).map(([size, said]): PieceProblem => {
      return { field: `stickingOut.${index}.${size}`, kind: "too-long", words: said };
    }),
  );
  if (body.kind !== "stemmed" || body.stem.acrossUm <= body.foot.acrossUm) return long;
  const words = "The stem is wider than the foot: describe the piece as a cylinder.";
  return [...long, { field: "body.stem.acrossUm", kind: "stem-too-wide", words }];
}

/** What sticks out may be long, like a pan's handle; but a handle does not run along further than the piece. */
function tooLong(
  { part, outUm, alongUm }: StickingOut,
  longest: number,
): readonly (readonly ["outUm" | "alongUm", string])[] {
  const name = part === "other" ? "part" : part;
  const out = `The ${name} sticks out more than twice as far as the piece is long: check its unit.`;
  const along = `The ${name} runs along further than the piece is long: check its unit, or count it into the sizes of the piece.`;
  return [
    ...(outUm > 2 * longest ? [["outUm", out] as const] : []),
    ...(part !== "other" && alongUm > longest ? [["alongUm", along] as const] : []),
  ];
}
