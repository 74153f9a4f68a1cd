/** A supplier's terms for one order. Goods are what the packs cost, without delivery. */
export type PlanSupplier = {
  readonly id: string;
  /** minor units for each order whose goods stay below `freeFromMinor` */
  readonly deliveryMinor: number;
  /** goods from which delivery is free, minor units; null where it never is */
  readonly freeFromMinor: number | null;
  /** goods below which no order is taken, minor units; null where any order is */
  readonly leastOrderMinor: number | null;
  /** whether an order may be placed, for each week */
  readonly orderWeeks: readonly boolean[];
  /** the seller's own time for placing and receiving one order, minor units */
  readonly handlingMinor: number;
};
