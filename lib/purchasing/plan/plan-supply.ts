/** A supply as the purchase plan sees it: weeks are numbered from 0, stock is in use units. */
export type PlanSupply = {
  readonly id: string;
  /** use units at the start; below 0 where more was used than booked */
  readonly stock: number;
  /** use units already on order that arrive before the use of each week */
  readonly arrivals: readonly number[];
  /** expected use of each week, use units */
  readonly use: readonly number[];
  /** least stock wanted at the end of each week (safety stock), use units */
  readonly wanted: readonly number[];
  /** most stock allowed right after the arrivals of each week, use units; may be Infinity */
  readonly most: readonly number[];
  /** what one use unit left at the end is worth, and what one still owed then costs; minor units */
  readonly endValueMinor: number;
  /** cost of being one use unit below the wanted stock at the end of one week, minor units */
  readonly shortMinor: number;
  /** cost of holding one use unit for one week, minor units, fractional */
  readonly holdingMinor: number;
  /** room one use unit takes at home */
  readonly litres: number;
};
