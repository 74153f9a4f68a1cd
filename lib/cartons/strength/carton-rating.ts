/** How many fluted layers a carton's board has. */
export type CartonWall = "single" | "double" | "triple";

/**
 * What a carton's certificate prints. A carton without one, and a box of thin card, carry no promise: they are inner
 * boxes.
 */
export type CartonRating =
  | { readonly kind: "edgeCrush"; readonly wall: CartonWall; readonly poundsPerInch: number }
  | { readonly kind: "burst"; readonly wall: "single" | "double"; readonly psi: number }
  | { readonly kind: "puncture"; readonly units: number }
  | { readonly kind: "paperboard" }
  | { readonly kind: "unrated" };

type RatingReading =
  | { readonly kind: "rating"; readonly rating: CartonRating }
  | { readonly kind: "unreadable"; readonly text: string; readonly reason: UnreadableRating };

/** Why a rating cannot be read: no number with its unit, a number that no board has, or burst on triple wall. */
export type UnreadableRating = "noUnit" | "impossible" | "burstOnTriple";

/** No board comes near these; a number above is a slip. */
const MOST = { poundsPerInch: 300, psi: 2_000 };
const POUNDS_PER_INCH_IN_KILONEWTONS_PER_METRE = 0.175_126_8;
const PSI_IN_KILOPASCALS = 6.894_757;

const NUMBER = "(\\d+(?:[.,]\\d+)?)";
const POUNDS = "[\\s-]*lbs?\\.?\\s*";
const EDGE_CRUSH = [
  new RegExp(`\\b(?:ect|edge crush(?: test)?)\\s*[:=]?\\s*${NUMBER}`, "i"),
  new RegExp(`${NUMBER}(?:${POUNDS}(?:/|per)\\s*in(?:ch)?\\.?)?\\s*(?:ect\\b|edge crush)`, "i"),
  new RegExp(`${NUMBER}${POUNDS}(?:/|per)\\s*in(?:ch)?\\b`, "i"),
];
const EDGE_CRUSH_METRIC = new RegExp(`${NUMBER}\\s*kn\\s*/\\s*m\\b`, "i");
const BURST = [
  new RegExp(`${NUMBER}\\s*(?:psi\\b|#)`, "i"),
  new RegExp(`${NUMBER}${POUNDS}(?:test|burst|(?:/|per)\\s*sq)`, "i"),
];
const BURST_METRIC = new RegExp(`${NUMBER}\\s*kpa\\b`, "i");

/**
 * Reads a rating as the maker's stamp prints it. Where both are printed, edge crush is taken: it also tells how high a
 * carton stacks. Metric figures go to the nearest whole pound an inch or psi, as stamps are in whole numbers.
 *
 * @param text "32 ECT", "ECT 44", "200 psi", "275 lb test", "edge crush test 32 lbs per in", "5.6 kN/m", "1380 kPa"; empty for no stamp
 * @param wall of the board, as chosen beside the rating
 * @returns the rating, or why it cannot be read
 * @example readCartonRating("32 ECT", "single") // { kind: "rating", rating: { kind: "edgeCrush", wall: "single", poundsPerInch: 32 } }
 */
export function readCartonRating(text: string, wall: CartonWall): RatingReading {
  if (text.trim() === "") return { kind: "rating", rating: { kind: "unrated" } };
  const poundsPerInch = edgeCrushIn(text);
  const psi = poundsPerInch === null ? burstIn(text) : null;
  if (poundsPerInch !== null) {
    if (!isPossible(poundsPerInch, MOST.poundsPerInch)) return unreadable(text, "impossible");
    return { kind: "rating", rating: { kind: "edgeCrush", wall, poundsPerInch } };
  }
  if (psi === null) return unreadable(text, "noUnit");
  if (!isPossible(psi, MOST.psi)) return unreadable(text, "impossible");
  if (wall === "triple") return unreadable(text, "burstOnTriple");
  return { kind: "rating", rating: { kind: "burst", wall, psi } };
}

function edgeCrushIn(text: string): number | null {
  const metric = numberIn(text, [EDGE_CRUSH_METRIC]);
  if (metric === null) return numberIn(text, EDGE_CRUSH);
  return Math.round(metric / POUNDS_PER_INCH_IN_KILONEWTONS_PER_METRE);
}

function burstIn(text: string): number | null {
  const metric = numberIn(text, [BURST_METRIC]);
  return metric === null ? numberIn(text, BURST) : Math.round(metric / PSI_IN_KILOPASCALS);
}

/** A comma before three digits groups thousands: no rating has three digits behind its point. */
function numberIn(text: string, patterns: readonly RegExp[]): number | null {
  const digits = patterns.map((pattern) => pattern.exec(text)?.[1]).find((found) => found !== undefined);
  return digits === undefined ? null : Number(digits.replace(/,(?=\d{3}$)/, "").replace(",", "."));
}

function isPossible(value: number, most: number): boolean {
  return value > 0 && value <= most;
}

function unreadable(text: string, reason: UnreadableRating): RatingReading {
  return { kind: "unreadable", text: text.trim(), reason };
}
