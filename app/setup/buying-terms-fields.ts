import type { Shop } from "#prisma/records/shop";
import type { FormField } from "../_parts/form-field";

/**
 * The fields of what the shop has decided about its buying.
 *
 * @param shop the shop
 * @returns the fields in order
 */
export function buyingTermsFields(shop: Shop): FormField[] {
  const money = (minor: number) => (minor / 10 ** shop.minorDigits).toFixed(shop.minorDigits);
  const { currency, orderCostMinor, weekLimitMinor } = shop;
  return [
    {
      name: "longestCoverWeeks",
      label: "Nothing is bought that would last longer than, weeks",
      kind: "number",
      value: String(shop.longestCoverWeeks),
      hint: "26 where it is left empty",
    },
    {
      name: "holding",
      label: "A year of keeping stock costs, % of what it is worth",
      kind: "number",
      value: String(shop.holdingPerMille / 10),
      hint: "money tied up, room, damage: 20 is common, and a guess",
    },
    {
      name: "orderCost",
      label: `One order costs you, ${currency}`,
      kind: "number",
      value: orderCostMinor === 0 ? "" : money(orderCostMinor),
      hint: "your time to place it and to put it away, besides delivery; empty: nothing",
    },
    {
      name: "weekLimit",
      label: `Most to spend in a week, ${currency}`,
      kind: "number",
      value: weekLimitMinor === null ? "" : money(weekLimitMinor),
      hint: "empty: no limit",
    },
    {
      name: "room",
      label: "Room for supplies",
      kind: "text",
      value: shop.roomTyped ?? "",
      hint: "40 cu ft, 900 l or 2 x 1 x 0.5 m; empty: no limit",
    },
  ];
}
