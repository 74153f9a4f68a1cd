import type { CorrectionOutcome } from "#prisma/records/parcel-corrections";
import type { OrderSeen } from "#prisma/records/parcel-parts";
import type { ParcelOutcome } from "#prisma/records/parcels";
import type { ParcelProblem } from "./parcel-problem";

/** An answer of the parcels address: the status and what is said with it. */
export type ParcelAnswer =
  | {
      readonly status: 200 | 201;
      readonly body: {
        readonly kind: "recorded" | "already-recorded" | "corrected" | "voided" | "already-void";
        readonly parcelId: string;
        /** Cost of the materials, 1/10,000 minor unit; null where a supply's cost is not known. */
        readonly costValue?: number | null;
        readonly warnings: readonly ParcelProblem[];
      };
    }
  | {
      readonly status: 400 | 404 | 409 | 415 | 422;
      readonly body: {
        readonly kind: "problems" | "conflict" | "ask-count-order" | "not-found" | "void";
        readonly problems: readonly ParcelProblem[];
        /** Supplies counted on the day packed. */
        readonly supplies?: readonly string[];
      };
    };

/**
 * What is answered after a parcel was sent to be recorded or corrected.
 * @param outcome of the record
 * @returns status and body, with words for people
 */
export function parcelAnswer(outcome: ParcelOutcome | CorrectionOutcome): ParcelAnswer {
  switch (outcome.kind) {
    case "recorded":
    case "already-recorded":
      return {
        status: outcome.kind === "recorded" ? 201 : 200,
        body: {
          kind: outcome.kind,
          parcelId: outcome.parcelId,
          costValue: outcome.costValue,
          warnings: outcome.warnings.map(orderSeen),
        },
      };
    case "corrected":
      return {
        status: 200,
        body: { kind: "corrected", parcelId: outcome.parcelId, warnings: outcome.warnings.map(orderSeen) },
      };
    case "conflict":
      return refused(409, "conflict", {
        field: "id",
        message: "Another parcel with other content was recorded under this key.",
        wayOut: "Send it under a new key, or correct the recorded parcel instead.",
      });
    case "ask-count-order":
      return {
        status: 409,
        body: {
          kind: "ask-count-order",
          supplies: outcome.supplies,
          problems: [
            {
              field: "countedSameDay",
              message: "Some of its supplies were counted on the day this parcel was packed.",
              wayOut: "Say whether it was packed before or after the count.",
            },
          ],
        },
      };
    case "unknown":
      return problemsAnswer([
        {
          field: outcome.field,
          message: `The shop does not know “${outcome.id}”.`,
          wayOut: "Use an id from the shop's own lists.",
        },
      ]);
    case "not-found":
      return notFoundAnswer();
    case "void":
      return refused(409, "void", {
        field: "id",
        message: "This parcel is void, so it can't be corrected.",
        wayOut: "Record it again as a new parcel.",
      });
  }
  return outcome satisfies never;
}

/** The answer to a form that can't be read: 422 with each problem and its way out. */
export function problemsAnswer(problems: readonly ParcelProblem[]): ParcelAnswer {
  return { status: 422, body: { kind: "problems", problems } };
}

/** The answer where no parcel has the key. */
export function notFoundAnswer(): ParcelAnswer {
  return refused(404, "not-found", {
    field: "id",
    message: "There is no parcel with this key.",
    wayOut: "Look for it in the list of parcels.",
  });
}

function refused(
  status: 404 | 409,
  kind: "conflict" | "not-found" | "void",
  problem: ParcelProblem,
): ParcelAnswer {
  return { status, body: { kind, problems: [problem] } };
}

function orderSeen(warning: OrderSeen): ParcelProblem {
  return {
    field: "orders",
    message: `Order ${warning.reference} is already on another parcel.`,
    wayOut: "Both are kept. If it is the same parcel, undo one of them.",
  };
}
