import { shopOf } from "#prisma/records/shop";
import { planAim } from "../../purchase-plan/plan-aim";
import { readWeekPlan } from "../../purchase-plan/read-week-plan";
import { planProgress } from "../../purchase-plan/wanted-plan";
import { askedShopDay, NO_SHOP } from "../asked-shop-day";

/**
 * The purchase plan as JSON: `GET /api/purchase-plan?today=2026-11-25&aim=least-room`. `kind` is "ready" with the
 * answer, "working" while it is worked out (ask again), "failed" or "nothing". With `question`, the key that a plan
 * being worked out gives, only whether it still is: "working" or "settled".
 */
export async function GET(request: Request): Promise<Response> {
  const asked = await askedShopDay(request);
  if (asked instanceof Response) return asked;
  const shop = await shopOf(asked.db);
  if (shop === null) return Response.json(NO_SHOP, { status: 404 });
  const address = Object.fromEntries(new URL(request.url).searchParams);
  if (address["question"] !== undefined) {
    return Response.json({ kind: await planProgress(asked.db, address["question"]) });
  }
  const { aim, unreadable } = planAim(address, shop.minorDigits);
  if (unreadable !== null) {
    return Response.json({ kind: "unreadable-sum", field: "sum", typed: unreadable }, { status: 400 });
  }
  const { plan, notPlanned } = await readWeekPlan(asked.db, { today: asked.today, aim });
  return Response.json({ ...plan, notPlanned });
}
