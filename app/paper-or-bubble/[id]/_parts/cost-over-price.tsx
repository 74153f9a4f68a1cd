import { breakEven, totalAtPrice } from "#lib/cushioning/break-even";
import { unitWord } from "#lib/units/use-unit";
import type { Supply } from "#prisma/records/supplies";
import { LinesPicture } from "../../_parts/lines-picture";
import type { KindAnswer } from "../../cushion-answer";

type CostOverPriceProps = {
  readonly kind: KindAnswer;
  readonly supply: Supply;
  readonly priceNow: number;
  readonly price: (value: number) => string;
  readonly money: (minor: number) => string;
};

const BEYOND = 1.3;
const FARTHEST_TIMES = 3;

/** What each way costs while the price of a supply goes up: straight lines that meet where the choice turns. */
export function CostOverPrice({ kind, supply, priceNow, price, money }: CostOverPriceProps) {
  const [nearest] = kind.comparisons;
  if (nearest === undefined) return null;
  const turn = breakEven(nearest.cheaper, nearest.dearer, supply.id, priceNow);
  if (turn.kind === "alike") return null;
  const turnsAt = turn.kind === "turns" && turn.price <= FARTHEST_TIMES * priceNow ? turn.price : null;
  const top = Math.max(priceNow, turnsAt ?? 0) * BEYOND;
  const total = (cost: (typeof kind.costs)[number], x: number) => totalAtPrice(cost, supply.id, priceNow, x);
  return (
    <LinesPicture
      label={`Cost of a parcel in each way while ${supply.name} costs from nothing to ${price(top)}; the sentence above says where they meet`}
      lines={kind.costs.map((cost) => ({
        style: cost.way.style,
        points: [0, top].map((x) => ({ x, y: total(cost, x) })),
      }))}
      xName={`${supply.name}, a ${unitWord(supply.useUnit, 1)}`}
      yName="a parcel, all together"
      xText={price}
      yText={money}
      now={{ x: priceNow, words: `as reckoned, ${price(priceNow)}` }}
      turns={turnsAt === null ? [] : [{ x: turnsAt, y: total(nearest.cheaper, turnsAt) }]}
    />
  );
}
