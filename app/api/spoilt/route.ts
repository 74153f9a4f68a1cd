import type { NextRequest } from "next/server";
import { amount } from "#lib/units/amount";
import { instantOfTime, shopDay } from "#lib/units/instant";
import { database } from "#prisma/client";
import { shopOf } from "#prisma/records/shop";
import { recordSpoilage } from "#prisma/records/spoilage";
import { sentJson } from "../../_parts/sent-json";
import { recorderOf } from "../../_parts/shop-now";
import { spoiltForm } from "../../pack/spoilt-form";

const NO_REASON = "spoilt at the bench";

/**
 * Books what was spoilt at the bench out of stock, today: 201 booked, 200 the same was booked since the bench was read,
 * 409 another loss of the supply was; 4xx what to mend.
 */
export async function POST(request: NextRequest): Promise<Response> {
  const sent = await sentJson(request, "What was spoilt");
  if (sent.kind === "unreadable") return problem(sent.status, { field: "", ...sent });
  const read = spoiltForm.safeParse(sent.value);
  if (!read.success) {
    const [issue] = read.error.issues;
    const field = issue?.path.join(".") ?? "";
    const message = field === "" ? (issue?.message ?? "") : `${field}: ${issue?.message ?? ""}`;
    return problem(422, { field, message, wayOut: "Mend this field and send it again." });
  }
  const db = await database();
  const shop = await shopOf(db);
  if (shop === null) {
    const wayOut = "Save its name and units under Setup first.";
    return problem(422, { field: "shop", message: "The shop is not set up yet.", wayOut });
  }
  const now = instantOfTime(Date.now());
  const { supplyId, value, unit, words, shownAfter } = read.data;
  const spoilt = {
    supplyId,
    amount: amount(read.data.amount),
    typedValue: value,
    typedUnit: unit,
    words: words === "" ? NO_REASON : words,
    on: shopDay(now, shop.timeZone),
    shownAfter,
  };
  const outcome = await recordSpoilage(db, spoilt, await recorderOf(now));
  switch (outcome.kind) {
    case "spoilt":
      return Response.json(outcome, { status: 201 });
    case "already-spoilt":
      return Response.json(outcome);
    case "spoilt-since":
      return Response.json(outcome, { status: 409 });
    case "unknown":
      return problem(422, {
        field: outcome.field,
        message: `The shop does not know the supply “${outcome.id}”.`,
        wayOut: "Load the page again: it may be gone.",
      });
    default:
      return outcome satisfies never;
  }
}

function problem(
  status: number,
  { field, message, wayOut }: { readonly field: string; readonly message: string; readonly wayOut: string },
): Response {
  return Response.json({ kind: "problems", problems: [{ field, message, wayOut }] }, { status });
}
