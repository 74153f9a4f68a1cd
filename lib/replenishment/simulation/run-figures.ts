/**
 * What one run came to, of a supply or of the whole shop. Amounts of a supply in use units; those of the shop at
 * value, as units of different supplies do not add up. Money in minor units.
 */
export type RunFigures = {
  /** from one arrival (or the start) to the next */
  readonly cycles: number;
  /** cycles with any use not met from stock */
  readonly shortCycles: number;
  readonly need: number;
  /** use not met from stock on its day */
  readonly unmet: number;
  /** days on which use was not met in full; of the shop: added up over supplies */
  readonly daysOutOfStock: number;
  /** of a supply: order lines; of the shop: orders, one for each delivery */
  readonly orders: number;
  /** of a supply: its share by value of goods */
  readonly deliveryCost: number;
  readonly goodsCost: number;
  /** how much was ordered */
  readonly ordered: number;
  /** value of stock at the end of a day, on average and at most */
  readonly meanValue: number;
  readonly peakValue: number;
  readonly meanLitres: number;
  readonly peakLitres: number;
  /** value of the stock left after the last day */
  readonly endValue: number;
  /** value of the use waiting at the end of a day, on average */
  readonly meanOwedValue: number;
};

/** One run: the shop and each supply. */
export type PlayedRun = {
  readonly shop: RunFigures;
  readonly supplies: ReadonlyMap<string, RunFigures>;
};
