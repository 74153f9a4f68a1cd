/** The two shares into which a point splits a distribution; they add up to 1. */
export type Tails = {
  /** share at or below the point */
  readonly lower: number;
  /** share above the point; kept beside the lower one because 1 - lower has no digits left when it is small */
  readonly upper: number;
};
