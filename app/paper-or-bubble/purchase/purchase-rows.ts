import type { MixStudy } from "#lib/cushioning/purchase/mix-study";
import type { MixPlan } from "#lib/cushioning/purchase/solved-mix";
import { type MoneyAndMass, minorText } from "../why-words";

/** A plan as a column of figures. */
export type PlanColumn = { readonly name: string; readonly plan: MixPlan };

/** A row of the plans side by side. */
export type PlanRow = { readonly name: string; readonly cells: readonly string[]; readonly isSum?: boolean };

/**
 * The mixed plan beside those of one style.
 *
 * @param study of the next purchase
 * @returns columns, the mixed one first
 */
export function planColumns({ mixed, byStyle }: Pick<MixStudy, "mixed" | "byStyle">): PlanColumn[] {
  return [
    { name: "Each its best way", plan: mixed },
    ...byStyle.map(({ style, plan }) => ({ name: `All on ${style}`, plan })),
  ];
}

/**
 * What the plans cost, part by part.
 *
 * @param columns of `planColumns`
 * @param shop how it writes money
 */
export function planRows(columns: readonly PlanColumn[], shop: MoneyAndMass): PlanRow[] {
  const row = (name: string, minor: (plan: MixPlan) => number, isSum = false): PlanRow => ({
    name,
    cells: columns.map(({ plan }) => minorText(minor(plan), shop)),
    isSum,
  });
  const isAnyOther = columns.some(({ plan }) => plan.costs.otherMinor > 0);
  return [
    row("Goods", ({ costs }) => costs.goodsMinor),
    row("Delivery", ({ costs }) => costs.deliveryMinor),
    row("Postage expected", ({ costs }) => costs.postageMinor),
    ...(isAnyOther ? [row("Time and breakage", ({ costs }) => costs.otherMinor)] : []),
    row("Worth of what is left over", ({ costs }) => -costs.leftMinor),
    row("All together", ({ costs }) => costs.totalMinor, true),
  ];
}
