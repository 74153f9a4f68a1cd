import { database } from "#prisma/client";
import { seenVersion } from "../../_parts/seen-version";

/** The version of what is written: an open screen asks for it, and reads itself anew once it differs. */
export async function GET(): Promise<Response> {
  const headers = { "content-type": "text/plain; charset=utf-8", "cache-control": "no-store" };
  return new Response(await seenVersion(await database()), { headers });
}
