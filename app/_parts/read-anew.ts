"use server";

import { refresh } from "next/cache";

/** Reads the open screen anew. Asking in vain rejects and leaves the screen as it is. */
export async function readAnew(): Promise<void> {
  refresh();
}
