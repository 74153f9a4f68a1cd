import type { Instant } from "#lib/units/instant";
import type { Database } from "#prisma/client";
import type { NewParcel } from "#prisma/records/parcels";

/** Something that the demo shop's people recorded, and when: a parcel as usual, or anything else. */
export type DemoEvent =
  | { readonly at: Instant; readonly packed: NewParcel }
  | {
      readonly at: Instant;
      readonly packed?: undefined;
      readonly record: (
        db: Database,
        by: { readonly device: string; readonly now: Instant },
      ) => Promise<void>;
    };

/**
 * Insists on what a record function should have said.
 *
 * @param outcome - what it said
 * @param wanted - the outcomes that will do
 * @throws RangeError if it said anything else
 * @example wantOutcome(await recordCount(db, count, by), ["counted"]);
 */
export function wantOutcome(outcome: { readonly kind: string }, wanted: readonly string[]): void {
  if (!wanted.includes(outcome.kind)) {
    throw new RangeError(`the demo shop requires ${wanted.join(" or ")}, got ${JSON.stringify(outcome)}`);
  }
}
