import { createReadStream } from "node:fs";

/** Encodings that a file is read in. */
export type FileEncoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

/** What the bytes of a file are. */
export type FileKind =
  | { readonly kind: "text"; readonly encoding: FileEncoding }
  | { readonly kind: "not-text"; readonly reason: "empty" | "spreadsheet" | "binary" | "broken-utf-16" };

const MARKS: readonly { bytes: readonly number[]; encoding: FileEncoding }[] = [
  { bytes: [0xef, 0xbb, 0xbf], encoding: "utf-8" },
  { bytes: [0xff, 0xfe], encoding: "utf-16le" },
  { bytes: [0xfe, 0xff], encoding: "utf-16be" },
];
/** Zip files, which newer spreadsheets are, and the older ones' own mark. */
const SPREADSHEETS = [
  [0x50, 0x4b, 0x03, 0x04],
  [0xd0, 0xcf, 0x11, 0xe0],
];

/**
 * Finds a file's encoding by reading it through once: by its byte order mark; else UTF-8 where every byte
 * fits, else Windows-1252. A file with zero bytes and no mark is no text.
 *
 * @param path of the file
 */
export async function fileEncoding(path: string): Promise<FileKind> {
  let first: Buffer | null = null;
  let hasZero = false;
  let isUtf8 = true;
  const utf8 = new TextDecoder("utf-8", { fatal: true });
  let marked: FileEncoding | undefined;
  for await (const chunk of createReadStream(path) as AsyncIterable<Buffer>) {
    if (first === null) {
      first = chunk;
      if (SPREADSHEETS.some((bytes) => beginsWith(chunk, bytes)))
        return { kind: "not-text", reason: "spreadsheet" };
      marked = MARKS.find((mark) => beginsWith(chunk, mark.bytes))?.encoding;
      if (marked === "utf-16le" || marked === "utf-16be") return checkedUtf16(path, marked);
    }
    hasZero ||= chunk.includes(0);
    isUtf8 &&= decodes(utf8, chunk);
  }
  if (first === null) return { kind: "not-text", reason: "empty" };
  if (hasZero) return { kind: "not-text", reason: "binary" };
  return { kind: "text", encoding: isUtf8 && decodes(utf8) ? "utf-8" : "windows-1252" };
}

async function checkedUtf16(path: string, encoding: "utf-16le" | "utf-16be"): Promise<FileKind> {
  const decoder = new TextDecoder(encoding, { fatal: true });
  for await (const chunk of createReadStream(path) as AsyncIterable<Buffer>) {
    if (!decodes(decoder, chunk)) return { kind: "not-text", reason: "broken-utf-16" };
  }
  return decodes(decoder) ? { kind: "text", encoding } : { kind: "not-text", reason: "broken-utf-16" };
}

function beginsWith(chunk: Buffer, bytes: readonly number[]): boolean {
  return bytes.every((byte, index) => chunk[index] === byte);
}

/** Whether the bytes fit; without bytes, whether the text may end here. */
function decodes(decoder: TextDecoder, chunk?: Buffer): boolean {
  try {
    if (chunk === undefined) decoder.decode();
    else decoder.decode(chunk, { stream: true });
    return true;
  } catch (error) {
    if (error instanceof TypeError) return false;
    throw error;
  }
}
