import type { ParcelFormInput } from "../parcels/parcel-form";
import type { ParcelProblem } from "../parcels/parcel-problem";

/** What came of sending a parcel. */
export type SendOutcome =
  | {
      readonly kind: "recorded";
      readonly parcelId: string;
      readonly costValue: number | null;
      readonly warnings: readonly ParcelProblem[];
    }
  | { readonly kind: "refused"; readonly problems: readonly ParcelProblem[] }
  | { readonly kind: "ask-count-order"; readonly supplies: readonly string[] }
  /** Nobody answered, or the program itself failed: the parcel may be sent again under the same key. */
  | { readonly kind: "unreachable" };

/** Record a new parcel, or correct the one with this key. */
export type SendPurpose = "record" | "correct";

const SERVER_FAILED = 500;

/**
 * Sends a parcel. The key in the form makes a second sending the same parcel.
 * @param form the parcel
 * @param purpose record it, or correct the one recorded under its key
 * @returns what came of it
 */
export async function sendParcel(form: ParcelFormInput, purpose: SendPurpose): Promise<SendOutcome> {
  const answer = await answered(
    purpose === "record" ? "/api/parcels" : `/api/parcels/${encodeURIComponent(form.id)}`,
    {
      method: purpose === "record" ? "POST" : "PUT",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(form),
    },
  );
  if (answer === null) return { kind: "unreachable" };
  const body = (await answer.json()) as AnswerBody;
  if (answer.ok) {
    return {
      kind: "recorded",
      parcelId: body.parcelId ?? form.id,
      costValue: body.costValue ?? null,
      warnings: body.warnings ?? [],
    };
  }
  if (body.kind === "ask-count-order") return { kind: "ask-count-order", supplies: body.supplies ?? [] };
  return { kind: "refused", problems: body.problems ?? [] };
}

/**
 * Takes back the record of a parcel. It leaves a trace in the ledger.
 * @param parcelId key of the parcel
 * @returns whether it is taken back now
 */
export async function undoParcel(parcelId: string): Promise<boolean> {
  const answer = await answered(`/api/parcels/${encodeURIComponent(parcelId)}?reason=undone`, {
    method: "DELETE",
  });
  return answer?.ok === true;
}

type AnswerBody = {
  readonly kind: string;
  readonly parcelId?: string;
  readonly costValue?: number | null;
  readonly warnings?: readonly ParcelProblem[];
  readonly problems?: readonly ParcelProblem[];
  readonly supplies?: readonly string[];
};

/** The answer, or null where there was none or the program failed while answering. */
async function answered(address: string, request: RequestInit): Promise<Response | null> {
  try {
    const answer = await fetch(address, request);
    return answer.status >= SERVER_FAILED ? null : answer;
  } catch (error) {
    // fetch throws a TypeError where the network fails; anything else is a fault of ours.
    if (error instanceof TypeError) return null;
    throw error;
  }
}
