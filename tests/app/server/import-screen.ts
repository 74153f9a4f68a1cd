import { setTimeout as pause } from "node:timers/promises";
import { z } from "zod";

const WAIT_MS = 180_000;
const ASK_EVERY_MS = 15;

const uploaded = z.object({ kind: z.literal("uploaded"), id: z.string() });
const progress = z.object({ state: z.string(), rowsRead: z.number() });

/**
 * Sends a file as the screen does, in pieces.
 *
 * @param port of the server
 * @param text the file
 * @param source where it comes from
 * @param pauseMs between two pieces
 * @returns the run's id
 */
export async function sendFile(port: number, text: string, source: string, pauseMs = 0): Promise<string> {
  const query = new URLSearchParams({ name: "orders.csv", source });
  const pieces = text.match(/[\s\S]{1,8000}/g) ?? [];
  const body = new ReadableStream<Uint8Array>({
    async pull(stream) {
      const piece = pieces.shift();
      if (piece === undefined) stream.close();
      else stream.enqueue(new TextEncoder().encode(piece));
      if (pauseMs > 0) await pause(pauseMs);
    },
  });
  const init = { method: "POST", body, duplex: "half" } as const;
  const answer = await fetch(`http://127.0.0.1:${port}/api/imports?${query}`, init);
  return uploaded.parse(await answer.json()).id;
}

/**
 * Sends a form of a run's page as a browser does in which no script has run yet.
 *
 * @param port of the server
 * @param runId the run
 * @param label name of the form
 * @throws Error where the page has no such form, or its answer is no success
 */
export async function sendForm(port: number, runId: string, label: string): Promise<void> {
  const address = `http://127.0.0.1:${port}/setup/import/${runId}`;
  const page = await (await fetch(address)).text();
  const form = page.split("<form").find((part) => part.includes(`aria-label="${label}"`));
  if (form === undefined) throw new Error(`The page of run ${runId} has no form “${label}”`);
  const values = new FormData();
  const inside = form.slice(0, form.indexOf("</form>"));
  for (const [tag] of inside.matchAll(/<input [^>]*>/g))
    values.append(attributeOf(tag, "name"), attributeOf(tag, "value"));
  for (const [select] of inside.matchAll(/<select [\s\S]*?<\/select>/g)) {
    const chosen = /<option [^>]*selected[^>]*>/.exec(select)?.[0] ?? "";
    values.append(attributeOf(select, "name"), attributeOf(chosen, "value"));
  }
  const answer = await fetch(address, {
    method: "POST",
    headers: { origin: `http://127.0.0.1:${port}` },
    body: values,
  });
  await answer.arrayBuffer();
  if (!answer.ok) throw new Error(`The form “${label}” was answered ${answer.status}`);
}

/**
 * Asks how far a run is until it is where it should be.
 *
 * @param port of the server
 * @param runId the run
 * @param wanted states that will do
 * @returns the state
 * @throws Error where it ends in another state, or takes too long
 */
export async function waitForState(port: number, runId: string, wanted: readonly string[]): Promise<string> {
  const until = Date.now() + WAIT_MS;
  while (Date.now() < until) {
    const answer = await fetch(`http://127.0.0.1:${port}/api/imports/${runId}`);
    const { state } = progress.parse(await answer.json());
    if (wanted.includes(state)) return state;
    if (state !== "reading" && state !== "committing")
      throw new Error(`Run ${runId} is ${state}, not ${wanted.join(" or ")}`);
    await pause(ASK_EVERY_MS);
  }
  throw new Error(`Run ${runId} is not ${wanted.join(" or ")} after ${WAIT_MS} ms`);
}

function attributeOf(tag: string, name: string): string {
  const value = new RegExp(` ${name.replaceAll("$", "\\$")}="([^"]*)"`).exec(tag)?.[1] ?? "";
  return value
    .replaceAll("&quot;", '"')
    .replaceAll("&#x27;", "'")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&amp;", "&");
}
