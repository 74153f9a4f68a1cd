import { amountOfUnits, scaleAmount } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import type { Instant } from "#lib/units/instant";
import type { DemoCalendar, demoClock } from "#prisma/demo/demo-calendar";
import { type DemoEvent, wantOutcome } from "#prisma/demo/demo-event";
import type { DemoParcel } from "#prisma/demo/demo-parcels";
import { DEMO_RETURNED } from "#prisma/demo/demo-use";
import type { ParcelBody } from "#prisma/records/parcel-body";
import { correctParcel, markBroken, returnParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";

const LATE_DAYS = 3;
const BROKEN_DAYS = 6;
const MINUTES_TO_MISTAKE = 12;
const MORNING = 9 * 60;

/** Parcels whose fate would be told after the last day are usual ones so far. */
export function settledParcels(parcels: readonly DemoParcel[], calendar: DemoCalendar): DemoParcel[] {
  return parcels.map((parcel) =>
    addDays(day(parcel.body.packedOn), DEMO_RETURNED.afterDays) <= calendar.lastDay
      ? parcel
      : { ...parcel, fate: "usual" },
  );
}

/**
 * Tells a demo parcel's story: recorded, and where something went wrong, what was recorded then.
 *
 * @param parcel - the parcel and its fate
 * @param clock - from `demoClock`
 * @returns the events, in order
 * @example parcelEvents(parcel, demoClock("UTC")).length; // 1 for a usual one
 */
export function parcelEvents(parcel: DemoParcel, clock: ReturnType<typeof demoClock>): DemoEvent[] {
  const { body, fate, minute } = parcel;
  const packedOn = day(body.packedOn);
  const packed = clock(packedOn, minute);
  const afterwards = clock(packedOn, minute + MINUTES_TO_MISTAKE);
  switch (fate) {
    case "usual":
      return [packedEvent(parcel, packed)];
    case "late": {
      const at = clock(addDays(packedOn, LATE_DAYS), MORNING);
      const late: ParcelBody = { ...body, countedSameDay: "before" };
      const record: LoneEvent["record"] = async (db, by) =>
        wantOutcome(await recordParcel(db, late, by), ["recorded"]);
      return [{ at, record }];
    }
    case "void":
      return [
        packedEvent(parcel, packed),
        {
          at: afterwards,
          record: async (db, by) =>
            wantOutcome(await voidParcel(db, body.id, "recorded twice", by), ["voided"]),
        },
      ];
    case "corrected":
      return [
        packedEvent({ ...parcel, body: firstLineTwice(body) }, packed),
        {
          at: afterwards,
          record: async (db, by) => wantOutcome(await correctParcel(db, body, by), ["corrected"]),
        },
      ];
    case "broken":
      return [packedEvent(parcel, packed), brokenEvent(parcel, clock)];
    case "returned":
      return [packedEvent(parcel, packed), returnedEvent(parcel, clock)];
  }
}

type LoneEvent = Extract<DemoEvent, { packed?: undefined }>;

function packedEvent({ body }: DemoParcel, at: Instant): DemoEvent {
  return { at, packed: { body, at, origin: null } };
}

function firstLineTwice(body: ParcelBody): ParcelBody {
  const [first, ...rest] = body.lines;
  if (first === undefined) return body;
  return { ...body, lines: [{ ...first, amount: scaleAmount(first.amount, 2) }, ...rest] };
}

function brokenEvent({ body }: DemoParcel, clock: ReturnType<typeof demoClock>): DemoEvent {
  const on = addDays(day(body.packedOn), BROKEN_DAYS);
  return {
    at: clock(on, MORNING),
    record: async (db) =>
      wantOutcome(
        await markBroken(db, body.id, {
          on,
          cause: "crushed",
          note: "Rim chipped; the corner of the carton was crushed",
        }),
        ["marked"],
      ),
  };
}

function returnedEvent({ body }: DemoParcel, clock: ReturnType<typeof demoClock>): DemoEvent {
  const on = addDays(day(body.packedOn), DEMO_RETURNED.afterDays);
  const lines = [{ supplyId: DEMO_RETURNED.supplyId, amount: amountOfUnits(DEMO_RETURNED.units) }];
  return {
    at: clock(on, MORNING),
    record: async (db, by) => wantOutcome(await returnParcel(db, body.id, { on, lines }, by), ["returned"]),
  };
}
