import type { ParcelFormInput } from "../parcels/parcel-form";
import type { ParcelProblem } from "../parcels/parcel-problem";
import { FAILED, type ProgramAnswer, programAnswer, type Unreachable } from "./program-answer";

/** What came of sending a parcel. */
export type SendOutcome =
  | {
      readonly kind: "recorded";
      readonly parcelId: string;
      readonly costValue: number | null;
      readonly warnings: readonly ParcelProblem[];
    }
  | {
      readonly kind: "refused";
      readonly problems: readonly ParcelProblem[];
      /** Another parcel is recorded under this key. */
      readonly isConflict: boolean;
    }
  | { readonly kind: "ask-count-order"; readonly supplies: readonly string[] }
  | Unreachable;

/** What came of taking a parcel back. */
export type TakeBackOutcome = { readonly kind: "taken-back" | "not-there" } | Unreachable;

/** Record a new parcel, or correct the one with this key. */
export type SendPurpose = "record" | "correct";

const NOT_FOUND = 404;

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
  if (answer.kind === "unreachable") return answer;
  const { isOk, body } = answer;
  if (isOk) {
    // A page that a network puts in the program's place also says "fine", but not for this parcel.
    if (body.parcelId !== form.id) return FAILED;
    return {
      kind: "recorded",
      parcelId: body.parcelId,
      costValue: body.costValue ?? null,
      warnings: body.warnings ?? [],
    };
  }
  if (body.kind === "ask-count-order") return { kind: "ask-count-order", supplies: body.supplies ?? [] };
  if (body.problems === undefined) return FAILED;
  return { kind: "refused", problems: body.problems, isConflict: body.kind === "conflict" };
}

/**
 * Takes back the record of a parcel. It leaves a trace in the ledger.
 * @param parcelId key of the parcel
 * @returns whether it is taken back now, or was never recorded
 */
export async function takeBackParcel(parcelId: string): Promise<TakeBackOutcome> {
  const answer = await answered(`/api/parcels/${encodeURIComponent(parcelId)}?reason=undone`, {
    method: "DELETE",
  });
  if (answer.kind === "unreachable") return answer;
  if (answer.isOk && answer.body.parcelId === parcelId) return { kind: "taken-back" };
  return answer.status === NOT_FOUND && answer.body.kind === "not-found" ? { kind: "not-there" } : FAILED;
}

type AnswerBody = {
  readonly kind?: string;
  readonly parcelId?: string;
  readonly costValue?: number | null;
  readonly warnings?: readonly ParcelProblem[];
  readonly problems?: readonly ParcelProblem[];
  readonly supplies?: readonly string[];
};

type Answered =
  | (Omit<Extract<ProgramAnswer, { kind: "answer" }>, "body"> & { readonly body: AnswerBody })
  | Unreachable;

async function answered(address: string, request: RequestInit): Promise<Answered> {
  return programAnswer(address, request);
}
