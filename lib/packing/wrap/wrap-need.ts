/**
 * A strip that wraps something, in theory: how long, how wide it must be to meet over the ends, and how wide it would
 * be with the margin. The margin is given up before a second width of the roll is taken.
 */
export type WrapNeed = {
  readonly lengthUm: number;
  readonly widthUm: number;
  readonly wishedWidthUm: number;
  readonly overlapUm: number;
};
