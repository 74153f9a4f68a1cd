import type { ModelTerm } from "#lib/optimisation/linear-model";
import { cashLimits } from "#lib/purchasing/plan/cash-limits";
import {
  freeColumn,
  goalColumn,
  goodsColumn,
  hasTierColumn,
  type ModelParts,
  type ModelSlot,
  orderColumn,
  packsColumn,
  relaxationColumn,
  slotsByOrder,
  tierColumn,
} from "#lib/purchasing/plan/model-columns";

const ONE = { kind: "whole", lower: 0, upper: 1 } as const;

/**
 * Columns and rows of the orders: packs by price tier, whether an order is placed, its goods, its least value
 * and its free delivery. Each tier of each slot has its own limits, as tight as the slot's most packs.
 *
 * @param parts the draft is added to
 */
export function orderRows(parts: ModelParts): void {
  if (parts.goal.kind === "relaxation") {
    parts.question.suppliers.forEach(({ leastOrderMinor }, index) => {
      if (leastOrderMinor !== null) parts.draft.column(relaxationColumn("least", index, leastOrderMinor));
    });
  }
  for (const slots of slotsByOrder(parts.slots)) {
    const [first] = slots;
    if (first !== undefined) writeOrder(parts, slots, first);
  }
}

function writeOrder(parts: ModelParts, slots: readonly ModelSlot[], first: ModelSlot): void {
  const { draft, question, goal } = parts;
  const { supplier, supplierIndex, week } = first;
  const order = orderColumn(supplierIndex, week);
  const { freeFromMinor, leastOrderMinor, deliveryMinor, handlingMinor } = supplier;
  draft.column({ ...ONE, name: order, cost: deliveryMinor + handlingMinor });
  const goods = slots.flatMap((slot) => writeSlot({ draft }, slot, order));
  draft.row(
    "some",
    0,
    [
      ...slots.flatMap((slot) => slot.tiers.map((_, tier): ModelTerm => [1, packsColumn(slot, tier)])),
      [-1, order],
    ],
    Number.POSITIVE_INFINITY,
  );
  const isFreeSometimes = freeFromMinor !== null && deliveryMinor > 0;
  if (!isFreeSometimes && leastOrderMinor === null && cashLimits(question).length === 0) return;
  const sum = goodsColumn(supplierIndex, week);
  draft.column({ name: sum, kind: "real", lower: 0, upper: Number.POSITIVE_INFINITY, cost: 0 });
  draft.row("goods", 0, [...goods, [-1, sum]], 0);
  if (leastOrderMinor !== null) {
    const relaxed: ModelTerm[] = goal.kind === "relaxation" ? [[1, goalColumn("least", supplierIndex)]] : [];
    const terms: ModelTerm[] = [[1, sum], [-leastOrderMinor, order], ...relaxed];
    draft.row("least", 0, terms, Number.POSITIVE_INFINITY);
  }
  if (isFreeSometimes) {
    const free = freeColumn(supplierIndex, week);
    draft.column({ ...ONE, name: free, cost: -deliveryMinor });
    draft.row(
      "gift",
      0,
      [
        [1, sum],
        [-freeFromMinor, free],
      ],
      Number.POSITIVE_INFINITY,
    );
    draft.row(
      "giftonly",
      0,
      [
        [1, order],
        [-1, free],
      ],
      Number.POSITIVE_INFINITY,
    );
  }
}

/** Writes the tiers of one slot, and gives its goods in minor units as terms. */
function writeSlot({ draft }: Pick<ModelParts, "draft">, slot: ModelSlot, order: string): ModelTerm[] {
  const choices: ModelTerm[] = [];
  const goods: ModelTerm[] = [];
  slot.tiers.forEach((tier, index) => {
    const packs = packsColumn(slot, index);
    draft.column({ name: packs, kind: "whole", lower: 0, upper: tier.toPacks, cost: tier.slopeMinor });
    goods.push([tier.slopeMinor, packs]);
    if (!hasTierColumn(slot, index)) return;
    const choice = tierColumn(slot, index);
    draft.column({ ...ONE, name: choice, cost: tier.fixedMinor });
    choices.push([1, choice]);
    if (tier.fixedMinor !== 0) goods.push([tier.fixedMinor, choice]);
    draft.row(
      "from",
      0,
      [
        [1, packs],
        [-tier.fromPacks, choice],
      ],
      Number.POSITIVE_INFINITY,
    );
    draft.row(
      "to",
      Number.NEGATIVE_INFINITY,
      [
        [1, packs],
        [-tier.toPacks, choice],
      ],
      0,
    );
  });
  const first = slot.tiers[0];
  if (first !== undefined && !hasTierColumn(slot, 0)) {
    // What no later tier takes is left to the first: packs <= most * (order - later tiers).
    const later = choices.map(([, name]): ModelTerm => [first.toPacks, name]);
    draft.row(
      "first",
      Number.NEGATIVE_INFINITY,
      [[1, packsColumn(slot, 0)], [-first.toPacks, order], ...later],
      0,
    );
  } else {
    draft.row("one", Number.NEGATIVE_INFINITY, [...choices, [-1, order]], 0);
  }
  return goods;
}
