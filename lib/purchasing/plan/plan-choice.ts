/** Packs of one offer ordered in one week. */
export type ChosenLine = { readonly offerId: string; readonly week: number; readonly packs: number };

/** Use units of one supply's need that another does in a week. */
export type ChosenStandIn = {
  readonly fromSupplyId: string;
  readonly toSupplyId: string;
  readonly week: number;
  /** in use units of the supply that is stood in for */
  readonly units: number;
};

/** What a plan decides; all else follows from it. */
export type PlanChoice = {
  readonly lines: readonly ChosenLine[];
  readonly standIns: readonly ChosenStandIn[];
};
