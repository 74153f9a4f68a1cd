/** Nobody answered, or what answered failed: the same may be sent again. */
export type Unreachable = { readonly kind: "unreachable"; readonly why: "no-answer" | "failed" };

/** What came of a request: the program's JSON, or nothing of the kind. */
export type ProgramAnswer =
  | { readonly kind: "answer"; readonly isOk: boolean; readonly status: number; readonly body: object }
  | Unreachable;

/** In a back room a request can hang for minutes; after so long nobody will answer it. */
const PATIENCE_MS = 20_000;
const NO_ANSWER: Unreachable = { kind: "unreachable", why: "no-answer" };

/** What answered is not the program, or it failed. */
export const FAILED: Unreachable = { kind: "unreachable", why: "failed" };

/**
 * Asks the program.
 * @param address of the program
 * @param request method and body
 * @returns its answer; none where nobody answered in time, or where it is not the program's JSON
 */
export async function programAnswer(address: string, request: RequestInit): Promise<ProgramAnswer> {
  try {
    const answer = await fetch(address, { ...request, signal: AbortSignal.timeout(PATIENCE_MS) });
    const body: unknown = await answer.json();
    if (typeof body !== "object" || body === null) return FAILED;
    return { kind: "answer", isOk: answer.ok, status: answer.status, body };
  } catch (error) {
    if (error instanceof SyntaxError) return FAILED;
    // fetch throws a TypeError where the network fails, a DOMException where time is up; else the fault is ours.
    if (error instanceof TypeError || error instanceof DOMException) return NO_ANSWER;
    throw error;
  }
}
