import { z } from "zod";
import { FAILED, programAnswer, type Unreachable } from "./program-answer";
import type { SpoiltForm } from "./spoilt-form";

/** What came of booking a loss; `movementId` is its line, or that of the loss that was booked before. */
export type SpoiltOutcome =
  | { readonly kind: "spoilt" | "already-spoilt" | "spoilt-since"; readonly movementId: number }
  | { readonly kind: "refused"; readonly words: string }
  | Unreachable;

const bookedBody = z.object({
  kind: z.enum(["spoilt", "already-spoilt", "spoilt-since"]),
  movementId: z.number(),
});
const refusedBody = z.object({
  problems: z.array(z.object({ message: z.string(), wayOut: z.string() })).min(1),
});
const takenBackBody = z.object({ kind: z.enum(["reversed", "already-reversed"]) });

/**
 * Books what was spoilt.
 * @param form what was spoilt
 */
export async function sendSpoilt(form: SpoiltForm): Promise<SpoiltOutcome> {
  const answer = await programAnswer("/api/spoilt", {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(form),
  });
  if (answer.kind === "unreachable") return answer;
  const booked = bookedBody.safeParse(answer.body);
  if (booked.success) return booked.data;
  const refused = refusedBody.safeParse(answer.body);
  if (!refused.success) return FAILED;
  const words = refused.data.problems.map(({ message, wayOut }) => `${message} ${wayOut}`).join(" ");
  return { kind: "refused", words };
}

/**
 * Takes a loss back.
 * @param movementId its line
 * @returns whether it is taken back now
 */
export async function takeBackSpoilt(movementId: number): Promise<boolean> {
  const answer = await programAnswer(`/api/spoilt/${movementId}`, { method: "DELETE" });
  return answer.kind === "answer" && answer.isOk && takenBackBody.safeParse(answer.body).success;
}
