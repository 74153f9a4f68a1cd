import { readFile } from "node:fs/promises";
import { join } from "node:path";

/**
 * The mark of the build that is served. The screens' files are named after their content, so a copy of them is good
 * for one build only.
 * @returns the mark; null where the development server builds as it goes
 */
export async function buildId(): Promise<string | null> {
  if (process.env.NODE_ENV !== "production") return null;
  return (await readFile(join(process.cwd(), ".next", "BUILD_ID"), "utf8")).trim();
}
