import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";

/**
 * The fingerprint of a file, read piece by piece.
 *
 * @param path of the file
 * @returns SHA-256 in hex
 */
export async function fileHash(path: string): Promise<string> {
  const hash = createHash("sha256");
  for await (const chunk of createReadStream(path) as AsyncIterable<Buffer>) hash.update(chunk);
  return hash.digest("hex");
}
