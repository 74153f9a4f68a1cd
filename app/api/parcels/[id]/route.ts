import type { NextRequest } from "next/server";
import { instantOfTime } from "#lib/units/instant";
import { database } from "#prisma/client";
import { correctParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { parcelOf } from "#prisma/records/parcel-lists";
import { recorderOf } from "../../../_parts/shop-now";
import { notFoundAnswer, parcelAnswer } from "../../../parcels/parcel-answer";
import { readParcelRequest } from "../../../parcels/read-parcel-request";

type Address = { readonly params: Promise<{ readonly id: string }> };

const LONGEST_REASON = 200;

/** One parcel with its bill, orders and movements. */
export async function GET(_request: NextRequest, { params }: Address): Promise<Response> {
  const parcel = await parcelOf(await database(), (await params).id);
  if (parcel === null) return Response.json(notFoundAnswer().body, { status: 404 });
  return Response.json(parcel);
}

/** Corrects a parcel: the body is the parcel as it should have been. */
export async function PUT(request: NextRequest, { params }: Address): Promise<Response> {
  const read = await readParcelRequest(request, (await params).id);
  if (read.kind === "answer") return Response.json(read.answer.body, { status: read.answer.status });
  const answer = parcelAnswer(await correctParcel(await database(), read.body, await recorder()));
  return Response.json(answer.body, { status: answer.status });
}

/** Voids a parcel: `?reason=undone`. Its use is taken back; the parcel stays to be seen. */
export async function DELETE(request: NextRequest, { params }: Address): Promise<Response> {
  const { id } = await params;
  const reason = (request.nextUrl.searchParams.get("reason") ?? "").trim().slice(0, LONGEST_REASON);
  const outcome = await voidParcel(
    await database(),
    id,
    reason === "" ? "no reason given" : reason,
    await recorder(),
  );
  if (outcome.kind === "not-found") return Response.json(notFoundAnswer().body, { status: 404 });
  return Response.json({ kind: outcome.kind, parcelId: id, warnings: [] });
}

function recorder() {
  return recorderOf(instantOfTime(Date.now()));
}
