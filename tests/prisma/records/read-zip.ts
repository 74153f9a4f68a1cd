import { crc32, inflateRawSync } from "node:zlib";

const END_OF_DIRECTORY = 0x06054b50;
const DIRECTORY_ENTRY = 0x02014b50;
const LOCAL_HEADER = 0x04034b50;
const DEFLATED = 8;

/**
 * Opens a ZIP archive with nothing of the library that wrote it: PKWARE APPNOTE.TXT sections 4.3.7, 4.3.12 and
 * 4.3.16 for the records, Node's own zlib for inflating and for the checksums.
 *
 * @param bytes the whole archive, without a comment at its end
 * @returns text by file name, in the order of the central directory
 * @throws Error where a record, a size or a checksum is not as the specification says
 */
export function readZip(bytes: Buffer): Map<string, string> {
  const end = bytes.length - 22;
  demand(bytes.readUInt32LE(end) === END_OF_DIRECTORY, "the archive does not end with its directory");
  const files = new Map<string, string>();
  let at = bytes.readUInt32LE(end + 16);
  for (let left = bytes.readUInt16LE(end + 10); left > 0; left -= 1) {
    demand(bytes.readUInt32LE(at) === DIRECTORY_ENTRY, `no directory entry at ${at}`);
    const nameLength = bytes.readUInt16LE(at + 28);
    const name = bytes.toString("utf8", at + 46, at + 46 + nameLength);
    demand(!files.has(name), `${name} is there twice`);
    files.set(name, entryText(bytes, at, name));
    at += 46 + nameLength + bytes.readUInt16LE(at + 30) + bytes.readUInt16LE(at + 32);
  }
  demand(at === end, "the directory is longer or shorter than its entries");
  return files;
}

function entryText(bytes: Buffer, directory: number, name: string): string {
  const local = bytes.readUInt32LE(directory + 42);
  demand(bytes.readUInt32LE(local) === LOCAL_HEADER, `${name} has no header`);
  demand(bytes.readUInt16LE(directory + 10) === DEFLATED, `${name} is not deflated`);
  const start = local + 30 + bytes.readUInt16LE(local + 26) + bytes.readUInt16LE(local + 28);
  const text = inflateRawSync(bytes.subarray(start, start + bytes.readUInt32LE(directory + 20)));
  demand(text.length === bytes.readUInt32LE(directory + 24), `${name} is not as long as it says`);
  demand(crc32(text) === bytes.readUInt32LE(directory + 16), `${name} does not match its checksum`);
  return text.toString("utf8");
}

function demand(holds: boolean, problem: string): void {
  if (!holds) throw new Error(problem);
}
