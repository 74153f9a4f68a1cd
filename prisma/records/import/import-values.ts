import { createHash } from "node:crypto";
import type { ImportConnection } from "./import-connection";
import { textSlug } from "./text-slug";

/** What a text of the file can stand for. */
export type ValueKind = "item-type" | "zone" | "carton" | "style";

/** A text of the file that nobody has said the meaning of yet. */
export type AskedValue = { readonly kind: ValueKind; readonly text: string };

/** What a text stands for: an id, nothing at all, or not known. */
export type ValueMatch =
  | { readonly kind: "known"; readonly id: string }
  | { readonly kind: "left-out" }
  | { readonly kind: "unknown" };

/** Target of a text that is waiting for its meaning. */
const ASKED = "?";
/** Target of a text that is to be left out. */
const LEFT_OUT = "";

const KNOWN_SQL: Record<Exclude<ValueKind, "style">, string> = {
  "item-type": `SELECT "id", "name" FROM "ItemType"`,
  zone: `SELECT "id", "name" FROM "Zone"`,
  carton: `SELECT "id", "name" FROM "Supply" WHERE "kind" = 'carton'`,
};

/** Digits of the fingerprint that makes the id of a name in another script. */
const HASH_LENGTH = 12;

const STYLES = ["paper", "bubble", "mixed"].map((id) => ({ id, name: id }));

/** What a text of this kind can be said to stand for. */
export function valueChoices(db: ImportConnection, kind: ValueKind): { id: string; name: string }[] {
  if (kind === "style") return STYLES;
  return db.prepare<[], { id: string; name: string }>(`${KNOWN_SQL[kind]} ORDER BY "name"`).all();
}

/** The texts that wait for their meaning. */
export function askedValues(db: ImportConnection): AskedValue[] {
  return db
    .prepare<[string], AskedValue>(
      `SELECT "kind", "text" FROM "ImportValue" WHERE "target" = ? ORDER BY "kind", "text"`,
    )
    .all(ASKED);
}

/** Puts texts down to be asked about, in place of those asked before. */
export function askValues(db: ImportConnection, values: readonly AskedValue[]): void {
  db.transaction(() => {
    db.prepare(`DELETE FROM "ImportValue" WHERE "target" = ?`).run(ASKED);
    for (const value of values) setTarget(db, value, ASKED);
  }).immediate();
}

/**
 * Remembers what a text stands for.
 *
 * @param answer an id; "left-out" for nothing; "new" for a new entry that the commit will make
 */
export function rememberValue(
  db: ImportConnection,
  value: AskedValue,
  answer:
    | { readonly kind: "known"; readonly id: string }
    | { readonly kind: "left-out" }
    | { readonly kind: "new" },
): void {
  if (answer.kind === "known") setTarget(db, value, answer.id);
  else if (answer.kind === "left-out") setTarget(db, value, LEFT_OUT);
  else setTarget(db, value, newId(db, value));
}

/** Forgets the new entries that no commit made, for instance after an import was cancelled. */
export function forgetUnmadeValues(db: ImportConnection): void {
  db.prepare(
    `DELETE FROM "ImportValue" WHERE "target" <> '' AND "target" <> ? AND (
       ("kind" = 'item-type' AND "target" NOT IN (SELECT "id" FROM "ItemType"))
       OR ("kind" = 'zone' AND "target" NOT IN (SELECT "id" FROM "Zone"))
       OR ("kind" = 'carton' AND "target" NOT IN (SELECT "id" FROM "Supply")))`,
  ).run(ASKED);
}

/**
 * Finds what texts stand for: first as remembered, then by id or name, whatever the case, the accents and
 * the signs between words.
 *
 * @param db the import's connection
 * @returns the meaning of a text
 */
export function valueMatcher(db: ImportConnection): (kind: ValueKind, text: string) => ValueMatch {
  const remembered = new Map<string, string>();
  for (const row of db
    .prepare<[], AskedValue & { target: string }>(`SELECT * FROM "ImportValue"`)
    .iterate()) {
    if (row.target !== ASKED) remembered.set(`${row.kind}\n${row.text}`, row.target);
  }
  const known = new Map<string, string>();
  for (const kind of ["item-type", "zone", "carton", "style"] as const) {
    for (const { id, name } of valueChoices(db, kind)) {
      if (!known.has(`${kind}\n${textSlug(name)}`)) known.set(`${kind}\n${textSlug(name)}`, id);
    }
    for (const { id } of valueChoices(db, kind)) known.set(`${kind}\n${textSlug(id)}`, id);
  }
  return (kind, text) => {
    const target = remembered.get(`${kind}\n${text}`) ?? known.get(`${kind}\n${textSlug(text)}`);
    if (target === undefined) return { kind: "unknown" };
    return target === LEFT_OUT ? { kind: "left-out" } : { kind: "known", id: target };
  };
}

function setTarget(db: ImportConnection, value: AskedValue, target: string): void {
  db.prepare(
    `INSERT INTO "ImportValue" ("kind", "text", "target") VALUES (?, ?, ?)
     ON CONFLICT ("kind", "text") DO UPDATE SET "target" = excluded."target"`,
  ).run(value.kind, value.text, target);
}

/** An id for a new entry: the same for two spellings of one word, never one that something else has. */
function newId(db: ImportConnection, value: AskedValue): string {
  const slug = textSlug(value.text);
  const id = /^[a-z0-9-]+$/.test(slug)
    ? slug
    : `${value.kind}-${createHash("sha256").update(slug).digest("hex").slice(0, HASH_LENGTH)}`;
  if (value.kind !== "carton") return id;
  const taken = db.prepare<[string], { id: string }>(`SELECT "id" FROM "Supply" WHERE "id" = ?`).get(id);
  return taken === undefined ? id : `${id}-carton`;
}
