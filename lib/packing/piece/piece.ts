/** A round part of a piece: how wide and how high it is. */
type RoundPart = { readonly acrossUm: number; readonly heightUm: number };

/** The shape of a piece without what sticks out. A flat piece with no length of its own is round. */
export type PieceBody =
  | { readonly kind: "cylinder"; readonly acrossUm: number; readonly heightUm: number }
  | { readonly kind: "box"; readonly lengthUm: number; readonly widthUm: number; readonly heightUm: number }
  | {
      readonly kind: "flat";
      readonly acrossUm: number;
      readonly longUm: number | null;
      readonly thickUm: number;
    }
  | {
      readonly kind: "stemmed";
      readonly bowl: RoundPart;
      readonly stem: RoundPart;
      readonly foot: RoundPart;
    };

/** What is hollow: as a volume, by its inner sizes, or as a share of the body. */
export type Hollow =
  | { readonly kind: "volume"; readonly ml: number }
  | { readonly kind: "round"; readonly acrossUm: number; readonly deepUm: number }
  | { readonly kind: "square"; readonly lengthUm: number; readonly widthUm: number; readonly deepUm: number }
  | { readonly kind: "share"; readonly share: number };

/** The side of a piece: left and right lie along its length, front and back along its width. */
export type PieceSide = "left" | "right" | "front" | "back" | "top" | "bottom";

/** What sticks out of the body: how far, and how far along the body it runs. */
export type StickingOut = {
  readonly part: "handle" | "spout" | "knob" | "foot" | "other";
  readonly where: PieceSide;
  readonly outUm: number;
  readonly alongUm: number;
};

/** How much a piece stands: a pan, a mug, a thin glass. */
export type Frailty = "sturdy" | "usual" | "thin";

/**
 * A piece as a seller describes it; all lengths in micrometres. A lid is packed apart from its pot, its mass is part
 * of the piece's. `rims` are the edges that get a ring: none, the lip, lip and foot. `typed` keeps what was typed
 * for a measure, by its place ("body.heightUm").
 */
export type Piece = {
  readonly itemTypeId: string;
  readonly body: PieceBody;
  readonly hollows: readonly Hollow[];
  readonly stickingOut: readonly StickingOut[];
  readonly rims: 0 | 1 | 2;
  readonly lid: RoundPart | null;
  readonly thisSideUp: boolean;
  readonly frailty: Frailty;
  readonly massMg: number | null;
  readonly typed: Readonly<Record<string, string>>;
};
