import { fileURLToPath } from "node:url";

/** The project's folder, whichever folder a command was called from. */
export const root = fileURLToPath(new URL("../../..", import.meta.url));
