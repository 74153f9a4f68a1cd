import type { NextRequest } from "next/server";
import { isDay } from "#lib/units/day";
import { instantOfTime } from "#lib/units/instant";
import { database } from "#prisma/client";
import { parcelsOf } from "#prisma/records/parcel-lists";
import { recordParcel } from "#prisma/records/parcels";
import { recorderOf } from "../../_parts/shop-now";
import { parcelAnswer, problemsAnswer } from "../../parcels/parcel-answer";
import { readParcelRequest } from "../../parcels/read-parcel-request";

const MOST_PARCELS = 500;

/** Records a parcel: 201 recorded, 200 already recorded, 409 conflict or a count to place, 422 problems. */
export async function POST(request: NextRequest): Promise<Response> {
  const read = await readParcelRequest(request, null);
  if (read.kind === "answer") return Response.json(read.answer.body, { status: read.answer.status });
  const by = await recorderOf(instantOfTime(Date.now()));
  const answer = parcelAnswer(await recordParcel(await database(), read.body, by));
  return Response.json(answer.body, { status: answer.status });
}

/** Parcels packed between two days, newest first: `?from=2026-11-01&to=2026-11-30`, at most 500. */
export async function GET(request: NextRequest): Promise<Response> {
  const days = ["from", "to"].flatMap((name) => {
    const text = request.nextUrl.searchParams.get(name);
    return text === null ? [] : [{ name, text }];
  });
  const unread = days.filter(({ text }) => !isDay(text));
  if (unread.length > 0) {
    const answer = problemsAnswer(
      unread.map(({ name, text }) => ({
        field: name,
        message: `“${text}” is no day.`,
        wayOut: "Give it as year, month and day, like 2026-11-25.",
      })),
    );
    return Response.json(answer.body, { status: answer.status });
  }
  const span = Object.fromEntries(days.map(({ name, text }) => [name, text]));
  const parcels = await parcelsOf(await database(), { ...span, limit: MOST_PARCELS });
  return Response.json({ parcels, mayBeMore: parcels.length === MOST_PARCELS });
}
