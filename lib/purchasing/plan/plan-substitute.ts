/** One supply that stands in for another: `ratio` use units of `from` do the work of one of `to`. */
export type PlanSubstitute = {
  readonly fromSupplyId: string;
  readonly toSupplyId: string;
  readonly ratio: number;
};
