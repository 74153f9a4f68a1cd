import type { Piece } from "#lib/packing/piece/piece";
import { bodyBlock } from "#lib/packing/piece/piece-block";
import type { WrapNeed } from "#lib/packing/wrap/wrap-need";

/** A guard: what it guards, and the strip that it takes. */
export type GuardWrap = {
  readonly guards: Piece["stickingOut"][number]["part"] | "stem" | "rim";
  readonly need: WrapNeed;
};

/**
 * The guards of a piece. A pad is folded over what sticks out: 2 x out a layer and the overlap, as wide as the part is
 * long. A stem is wound until it is as wide as its foot: ring area / how thick the material lies. A ring goes once
 * round a rim with the overlap, and folds over it.
 *
 * @param piece - the piece
 * @param guard - layers from 1; overlap, ring width and how thick the material lies in micrometres, above zero
 * @returns guards in packing order: stem, what sticks out, rims
 * @throws RangeError if layers or a length are not as said
 * @see common practice, no source
 * @example guardWraps(mugWithHandle, { layers: 1, overlapUm: 50800, rimWidthUm: 76200, bulkUm: 4763 })[0]?.guards
 *   // "handle"
 */
export function guardWraps(
  piece: Pick<Piece, "body" | "stickingOut" | "rims">,
  guard: {
    readonly layers: number;
    readonly overlapUm: number;
    readonly rimWidthUm: number;
    readonly bulkUm: number;
  },
): readonly GuardWrap[] {
  const { layers, overlapUm, rimWidthUm, bulkUm } = guard;
  const wrong = [layers, overlapUm, rimWidthUm, bulkUm].find((each) => !(each > 0 && Number.isFinite(each)));
  if (wrong !== undefined) throw new RangeError(`guardWraps requires numbers above zero, got ${wrong}`);
  const strip = (lengthUm: number, widthUm: number): WrapNeed => {
    const width = Math.ceil(widthUm);
    return { lengthUm: Math.ceil(lengthUm), widthUm: width, wishedWidthUm: width, overlapUm };
  };
  const pads = piece.stickingOut.map(
    ({ part, outUm, alongUm }): GuardWrap => ({
      guards: part,
      need: strip(layers * 2 * outUm + overlapUm, alongUm),
    }),
  );
  const rim: GuardWrap = { guards: "rim", need: strip(layers * roundOf(piece) + overlapUm, rimWidthUm) };
  return [...stemWrap(piece, bulkUm, strip), ...pads, ...Array.from({ length: piece.rims }, () => rim)];
}

function stemWrap(
  { body }: Pick<Piece, "body">,
  bulkUm: number,
  strip: (lengthUm: number, widthUm: number) => WrapNeed,
): readonly GuardWrap[] {
  if (body.kind !== "stemmed") return [];
  const ring = (Math.PI / 4) * (body.foot.acrossUm ** 2 - body.stem.acrossUm ** 2);
  return ring <= 0 ? [] : [{ guards: "stem", need: strip(ring / bulkUm, body.stem.heightUm) }];
}

/** The way round a body, as its block stands. */
function roundOf({ body }: Pick<Piece, "body">): number {
  const { lengthUm, widthUm } = bodyBlock(body);
  const square = body.kind === "box" || (body.kind === "flat" && body.longUm !== null);
  return square ? 2 * (lengthUm + widthUm) : Math.PI * lengthUm;
}
