import { createHash, randomUUID } from "node:crypto";
import { createWriteStream } from "node:fs";
import { mkdir, rename, rm } from "node:fs/promises";
import { join } from "node:path";
import { Transform } from "node:stream";
import { pipeline } from "node:stream/promises";
import { z } from "zod";
import { createImportRun } from "#prisma/records/import/import-runs";
import { uploadedFile, uploadFolder } from "../../import/uploaded-file";
import { withImportConnection } from "../../import/with-import-connection";

const NAME_LENGTH = 200;
const asked = z.object({
  name: z.string().trim().min(1).max(NAME_LENGTH),
  source: z.string().trim().min(1).max(NAME_LENGTH),
});

/** Largest file taken, bytes: some millions of rows. */
const MOST_BYTES = 500_000_000;

/** Takes a CSV file as the body, piece by piece, and answers with the id of its import. */
export async function POST(request: Request): Promise<Response> {
  const query = asked.safeParse(Object.fromEntries(new URL(request.url).searchParams));
  if (!query.success || request.body === null) {
    return Response.json(
      { kind: "unreadable", words: "Choose a file and say where it comes from." },
      { status: 400 },
    );
  }
  await mkdir(uploadFolder(), { recursive: true });
  const part = join(uploadFolder(), `${randomUUID()}.part`);
  const taken = await keepBody(request.body, part);
  if (taken.kind === "too-large") {
    return Response.json(
      { kind: "too-large", words: "The file is larger than 500 MB. Split it." },
      { status: 413 },
    );
  }
  const file = { source: query.data.source, fileName: query.data.name, fileHash: taken.hash };
  const id = randomUUID();
  // The file first: a run whose file is not there could only fail.
  await rename(part, uploadedFile(id));
  withImportConnection((db) => createImportRun(db, { id, ...file }, new Date().toISOString()));
  return Response.json({ kind: "uploaded", id }, { status: 201 });
}

async function keepBody(
  body: ReadableStream<Uint8Array>,
  path: string,
): Promise<{ kind: "kept"; hash: string } | { kind: "too-large" }> {
  const hash = createHash("sha256");
  let bytes = 0;
  const measured = new Transform({
    transform(chunk: Buffer, _encoding, next) {
      bytes += chunk.length;
      hash.update(chunk);
      next(bytes > MOST_BYTES ? new RangeError("too large") : null, chunk);
    },
  });
  try {
    await pipeline(chunksOf(body), measured, createWriteStream(path));
  } catch (error) {
    await rm(path, { force: true });
    if (error instanceof RangeError) return { kind: "too-large" };
    throw error;
  }
  return { kind: "kept", hash: hash.digest("hex") };
}

async function* chunksOf(body: ReadableStream<Uint8Array>): AsyncGenerator<Buffer> {
  const reader = body.getReader();
  for (let next = await reader.read(); !next.done; next = await reader.read()) yield Buffer.from(next.value);
}
