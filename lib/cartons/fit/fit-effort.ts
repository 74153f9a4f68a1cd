/** How hard to look where there are more pieces than are always searched through. Counted in work, not in time. */
export type FitEffort = {
  /** greedy passes with orders drawn by chance */
  readonly shuffles: number;
  /** groups kept of the same blocks in the plan of straight cuts; 0 to leave it out */
  readonly groups: number;
  /** looks at a pair of blocks in the search of all arrangements */
  readonly looks: number;
};

/** Up to so many pieces every arrangement is gone through: the answer is yes or no. */
export const PIECES_SEARCHED_THROUGH = 6;

/** For one carton: some tenths of a second at most for ten pieces. */
export const USUAL_EFFORT: FitEffort = { shuffles: 150, groups: 8, looks: 3_000_000 };

/** For a first look at many cartons: some milliseconds. */
export const QUICK_EFFORT: FitEffort = { shuffles: 0, groups: 0, looks: 100_000 };

/** Safety for pieces that are always searched through: in the bench none came near it. */
export const MOST_LOOKS = 30_000_000;
