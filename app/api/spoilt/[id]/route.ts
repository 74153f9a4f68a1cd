import type { NextRequest } from "next/server";
import { z } from "zod";
import { instantOfTime } from "#lib/units/instant";
import { database } from "#prisma/client";
import { takeBackSpoilage } from "#prisma/records/spoilage";
import { recorderOf } from "../../../_parts/shop-now";

type Address = { readonly params: Promise<{ readonly id: string }> };

const lineNumber = z.coerce.number().int().positive().max(Number.MAX_SAFE_INTEGER);

/** Takes a loss back, by a line of the ledger that names it. Taken back twice, it is taken back once. */
export async function DELETE(_request: NextRequest, { params }: Address): Promise<Response> {
  const read = lineNumber.safeParse((await params).id);
  const by = await recorderOf(instantOfTime(Date.now()));
  const outcome = read.success
    ? await takeBackSpoilage(await database(), read.data, by)
    : ({ kind: "not-found" } as const);
  if (outcome.kind !== "not-found") return Response.json({ kind: outcome.kind, movementId: read.data });
  const message = "There is no loss with this number.";
  const wayOut = "Look for it in the ledger of its supply.";
  return Response.json({ kind: "not-found", problems: [{ field: "id", message, wayOut }] }, { status: 404 });
}
