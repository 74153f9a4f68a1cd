import { describe, expect, it } from "vitest";
import { type OutboxMeans, sendAll, sendEntry, withdrawEntry } from "#app/pack/outbox.ts";
import { newEntry, type OutboxEntry } from "#app/pack/outbox-entry.ts";
import type { SendOutcome } from "#app/pack/send-parcel.ts";
import { memoryOutbox, packedMug } from "./memory-outbox";

/** A book that, as the program's own, takes one parcel for each key. Before it answers, `befalls` may lose something. */
function bookWith(befalls: (id: string, way: "there" | "back") => SendOutcome | "passes") {
  const recorded = new Set<string>();
  const voided = new Set<string>();
  const asked: string[] = [];
  let time = 1_000_000;
  const store = memoryOutbox();
  const tab = (): OutboxMeans => ({
    store,
    send: async ({ id }) => {
      asked.push(id);
      const there = befalls(id, "there");
      if (there !== "passes") return there;
      recorded.add(id);
      const back = befalls(id, "back");
      return back === "passes" ? { kind: "recorded", parcelId: id, costValue: null, warnings: [] } : back;
    },
    takeBack: async (id) => {
      if (befalls(id, "there") !== "passes") return NO_ANSWER;
      if (!recorded.has(id)) return { kind: "not-there" };
      voided.add(id);
      return { kind: "taken-back" };
    },
    now: () => time,
    onTheWay: new Set(),
  });
  const pass = (milliseconds: number): void => {
    time += milliseconds;
  };
  return { store, tab, recorded, voided, asked, pass };
}

const NO_ANSWER = { kind: "unreachable", why: "no-answer" } as const;
const FAILED = { kind: "unreachable", why: "failed" } as const;
const REFUSED: SendOutcome = { kind: "refused", problems: [], isConflict: false };
const CONFLICT: SendOutcome = { kind: "refused", problems: [], isConflict: true };

async function kept(
  book: ReturnType<typeof bookWith>,
  ids: readonly string[],
): Promise<readonly OutboxEntry[]> {
  const entries = ids.map((id, index) => newEntry(packedMug(id), index));
  for (const entry of [...entries].reverse()) await book.store.keep(entry);
  return entries;
}

const idsIn = async (book: ReturnType<typeof bookWith>): Promise<string[]> =>
  (await book.store.all()).map((entry) => entry.id);

describe("sending all", () => {
  it("goes in the order of packing and lets go of what is recorded", async () => {
    const book = bookWith(() => "passes");
    await kept(book, ["key-a", "key-b", "key-c"]);
    const told: string[] = [];
    expect(await sendAll(book.tab(), ({ id }, { kind }) => told.push(`${id} ${kind}`))).toBe(false);
    expect(told).toEqual(["key-a recorded", "key-b recorded", "key-c recorded"]);
    expect(await book.store.all()).toEqual([]);
  });

  it("stops where nobody answers, and keeps all", async () => {
    const book = bookWith(() => NO_ANSWER);
    await kept(book, ["key-a", "key-b"]);
    expect(await sendAll(book.tab(), () => undefined)).toBe(true);
    expect(book.asked).toEqual(["key-a"]);
    expect((await idsIn(book)).sort()).toEqual(["key-a", "key-b"]);
  });

  it("goes past a parcel at which the program fails, and past one that waits for its packer", async () => {
    const book = bookWith((id) => {
      if (id === "key-a") return FAILED;
      return id === "key-b" ? REFUSED : "passes";
    });
    await kept(book, ["key-a", "key-b", "key-c"]);
    expect(await sendAll(book.tab(), () => undefined)).toBe(true);
    expect([...book.recorded]).toEqual(["key-c"]);
    await sendAll(book.tab(), () => undefined);
    expect(book.asked).toEqual(["key-a", "key-b", "key-c", "key-a"]);
  });

  it("records a parcel once where two tabs send it at the same time", async () => {
    const book = bookWith(() => "passes");
    await kept(book, ["key-a", "key-b"]);
    const told: string[] = [];
    const tell = (entry: OutboxEntry, outcome: { kind: string }) => told.push(`${entry.id} ${outcome.kind}`);
    await Promise.all([sendAll(book.tab(), tell), sendAll(book.tab(), tell)]);
    expect([...book.recorded].sort()).toEqual(["key-a", "key-b"]);
    expect(await book.store.all()).toEqual([]);
  });
});

describe("a parcel whose tab was killed", () => {
  it("before it was sent is sent by the next tab", async () => {
    const book = bookWith(() => "passes");
    const killed: OutboxMeans = { ...book.tab(), send: () => new Promise<never>(() => undefined) };
    await kept(book, ["key-a"]);
    void sendEntry(killed, "key-a");
    await sendAll(book.tab(), () => undefined);
    expect([...book.recorded]).toEqual(["key-a"]);
    expect(await book.store.all()).toEqual([]);
  });

  it("is not sent twice by one tab, while it is on its way", async () => {
    const book = bookWith(() => "passes");
    await kept(book, ["key-a"]);
    const tab = book.tab();
    const both = await Promise.all([sendEntry(tab, "key-a"), sendEntry(tab, "key-a")]);
    expect(both.map(({ kind }) => kind)).toEqual(["recorded", "nothing-to-do"]);
  });
});

describe("a refused parcel", () => {
  it("can be mended under its key, and keeps its place in the row", async () => {
    let answer: SendOutcome | "passes" = REFUSED;
    const book = bookWith((id) => (id === "key-a" ? answer : "passes"));
    const [entry] = await kept(book, ["key-a"]);
    await sendEntry(book.tab(), "key-a");
    expect(await book.store.all()).toEqual([
      { ...entry, state: { kind: "refused", problems: [], isConflict: false } },
    ]);
    answer = "passes";
    await book.store.keep(newEntry({ ...packedMug("key-a"), words: "mended" }, 99));
    expect(await book.store.all()).toEqual([{ ...entry, words: "mended" }]);
    expect((await sendEntry(book.tab(), "key-a")).kind).toBe("recorded");
  });

  it("that is asked about waits with its supplies", async () => {
    const book = bookWith(() => ({ kind: "ask-count-order", supplies: ["tissue"] }));
    await kept(book, ["key-a"]);
    await sendEntry(book.tab(), "key-a");
    const [asked] = await book.store.all();
    expect(asked?.state).toEqual({ kind: "ask-count-order", supplies: ["tissue"] });
    expect(asked?.unansweredAt).toBeNull();
  });
});

describe("taking a kept parcel back", () => {
  it("is done at once where it was never sent, or always refused", async () => {
    const book = bookWith(() => REFUSED);
    const [never, refused] = await kept(book, ["key-a", "key-b"]);
    if (never === undefined || refused === undefined) throw new Error("two parcels were kept");
    await sendEntry(book.tab(), "key-b");
    expect(await withdrawEntry(book.store, never, 0)).toBe(false);
    expect(await withdrawEntry(book.store, refused, 0)).toBe(false);
    expect(await book.store.all()).toEqual([]);
  });

  it("tells the program where it may have arrived, and undoes it there", async () => {
    let isBackOpen = false;
    const book = bookWith((_id, way) => (way === "there" || isBackOpen ? "passes" : NO_ANSWER));
    const [entry] = await kept(book, ["key-a"]);
    await sendEntry(book.tab(), "key-a");
    if (entry === undefined) throw new Error("one parcel was kept");
    expect(await withdrawEntry(book.store, entry, 0)).toBe(true);
    isBackOpen = true;
    expect(await sendEntry(book.tab(), "key-a")).toEqual({ kind: "taken-back", wasRecorded: true });
    expect([...book.voided]).toEqual(["key-a"]);
    expect(await book.store.all()).toEqual([]);
  });

  it("asks once more where a sending could still arrive, and is done when none can", async () => {
    let isOpen = false;
    const book = bookWith(() => (isOpen ? "passes" : NO_ANSWER));
    const [entry] = await kept(book, ["key-a"]);
    if (entry === undefined) throw new Error("one parcel was kept");
    await sendEntry(book.tab(), "key-a");
    await withdrawEntry(book.store, entry, 0);
    isOpen = true;
    expect(await sendEntry(book.tab(), "key-a")).toEqual(FAILED);
    expect(await idsIn(book)).toEqual(["key-a"]);
    book.pass(60_000);
    expect(await sendEntry(book.tab(), "key-a")).toEqual({ kind: "taken-back", wasRecorded: false });
    expect(await book.store.all()).toEqual([]);
    expect(book.recorded.size).toBe(0);
  });

  it("reaches one that was recorded in the same moment", async () => {
    const book = bookWith(() => "passes");
    const [entry] = await kept(book, ["key-a"]);
    if (entry === undefined) throw new Error("one parcel was kept");
    await sendEntry(book.tab(), "key-a");
    expect(await withdrawEntry(book.store, entry, 0)).toBe(true);
    await sendAll(book.tab(), () => undefined);
    expect([...book.voided]).toEqual(["key-a"]);
  });

  it("stays true where the answer to a sending comes after it", async () => {
    const book = bookWith(() => "passes");
    const [entry] = await kept(book, ["key-a"]);
    if (entry === undefined) throw new Error("one parcel was kept");
    const slow = book.tab();
    const sending = sendEntry(
      {
        ...slow,
        send: async (form) => {
          const outcome = await slow.send(form);
          await withdrawEntry(book.store, entry, 0);
          return outcome;
        },
      },
      "key-a",
    );
    await sending;
    expect((await book.store.all()).map(({ state }) => state.kind)).toEqual(["withdrawn"]);
    await sendAll(book.tab(), () => undefined);
    expect([...book.voided]).toEqual(["key-a"]);
  });

  it("leaves the other parcel alone that is recorded under its key", async () => {
    const book = bookWith((_id, way) => (way === "there" ? "passes" : CONFLICT));
    const [entry] = await kept(book, ["key-a"]);
    if (entry === undefined) throw new Error("one parcel was kept");
    await sendEntry(book.tab(), "key-a");
    expect(await withdrawEntry(book.store, entry, 0)).toBe(false);
    expect(book.voided.size).toBe(0);
  });
});
