import { describe, expect, it } from "vitest";
import { cardFileExample } from "#app/postage/card-file-example.ts";
import { csvRowsOf } from "#app/postage/csv-rows-of.ts";
import { importedCards } from "#app/postage/imported-cards.ts";
import { day } from "#lib/units/day";
import type { ReadRateCard } from "#prisma/records/rate-cards";
import { plainCard } from "../../lib/postage/rate-card-fixture";
import { SHOP } from "../buying/order-fixture";

const zones = [
  { id: "near", name: "Near", retired: false, position: 0 },
  { id: "far", name: "Far", retired: false, position: 1 },
];
const EXAMPLE = cardFileExample(["Near", "Far"], SHOP.currency);
const LETTERS = "row,what,value,Near\ncard,service,Letters\ncard,from,2026-01-01\nstep,up to,8 oz,3.10";

function sent(text: string, more: Readonly<Record<string, string>> = {}): FormData {
  const form = new FormData();
  form.set("file", new File([text], "cards.csv"));
  for (const [name, value] of Object.entries(more)) form.set(name, value);
  return form;
}
const imported = (form: FormData, kept: readonly ReadRateCard[] = []) =>
  importedCards(form, { shop: SHOP, zones, kept });
const readCard = (from: string, to: string | null, service: string): ReadRateCard => {
  const card = plainCard({
    service,
    currency: SHOP.currency,
    validFrom: day(from),
    validTo: to === null ? null : day(to),
  });
  return {
    id: "kept",
    card,
    source: null,
    readOn: null,
    service,
    validFrom: card.validFrom,
    validTo: card.validTo,
  };
};

describe("cards of a file", () => {
  it("are read as the example on the screen has them, their zones as ids", async () => {
    const read = await imported(sent(EXAMPLE));
    if (read.kind === "unreadable") throw new RangeError(read.words);
    expect(read.words).toBe("1 card is kept.");
    const [only] = read.cards;
    expect(only).toMatchObject({ source: "the carrier's list of 1 July, page 4", readOn: "2026-07-03" });
    expect(only?.card).toMatchObject({ service: "Parcels", zones: ["near", "far"], validTo: "2026-12-31" });
    expect(only?.card.fees.map(({ name, groups }) => [name, groups.length])).toEqual([
      ["Long parcel", 1],
      ["Peak season", 2],
    ]);
    expect(only?.card.bands[0]?.beyond).toMatchObject({ kind: "perFurther", prices: [85, null] });
  });

  it("are refused with the row where their days overlap, in the file or with what is kept", async () => {
    const twice = `${LETTERS}\n${LETTERS.split("\n").slice(1).join("\n")}`;
    expect(await imported(sent(twice))).toMatchObject({
      kind: "unreadable",
      field: "file",
      words: expect.stringMatching(
        /^Row 5: Another card of Letters holds from 1 Jan 2026 on\..*Nothing was kept\.$/,
      ),
    });
    expect(await imported(sent(LETTERS), [readCard("2025-01-01", null, "Letters")])).toMatchObject({
      words: expect.stringContaining("Row 2: Another card of Letters holds from 1 Jan 2025 on."),
    });
    expect(await imported(sent(LETTERS), [readCard("2025-01-01", "2025-12-31", "Letters")])).toMatchObject({
      kind: "cards",
    });
  });

  it("that are kept already, word for word, are left as they are", async () => {
    const first = await imported(sent(LETTERS));
    const [only] = first.kind === "cards" ? first.cards : [];
    if (only === undefined) throw new RangeError("a card was expected");
    const { service, validFrom, validTo } = only.card;
    const again = await imported(sent(LETTERS), [{ ...only, service, validFrom, validTo }]);
    expect(again).toMatchObject({
      kind: "cards",
      cards: [],
      words: "0 cards are kept. 1 card was there already.",
    });
  });

  it("that can't be read are told row by row, and none is kept", async () => {
    const wrong = await imported(sent(EXAMPLE.replace("15.999 oz", "15.999").replace("5.20", "")));
    expect(wrong).toMatchObject({ kind: "unreadable", field: "file" });
    const words = wrong.kind === "unreadable" ? wrong.words : "";
    expect(words).toContain("Row 11: 8 oz: the price for Far is missing.");
    expect(words).toContain("Row 12: “15.999” is no weight.");
    expect(words).toContain("Nothing was kept.");
  });

  it("may be pasted, and take the place of one card where that is changed", async () => {
    const form = new FormData();
    form.set("rows", LETTERS);
    form.set("cardId", "kept");
    const own = [readCard("2026-01-01", null, "Letters")];
    expect(await imported(form, own)).toMatchObject({ kind: "cards", cards: [{ id: "kept" }] });
    form.set("rows", `${LETTERS}\ncard,service,Parcels\ncard,from,2026-01-01\nstep,up to,8 oz,3.10`);
    expect(await imported(form, own)).toMatchObject({
      field: "rows",
      words: expect.stringContaining("There are 2 cards in these rows"),
    });
  });

  it("are not looked for in a file that is far larger than cards are", async () => {
    expect(await imported(sent("x".repeat(1_000_000)))).toMatchObject({
      field: "file",
      words: "That is far more than cards take. Choose the file of cards.",
    });
  });

  it("are asked for where nothing was chosen", async () => {
    expect(await imported(new FormData())).toMatchObject({
      field: "file",
      words: "Choose a CSV file of cards, or paste its rows.",
    });
    const empty = new FormData();
    empty.set("rows", " ");
    expect(await imported(empty)).toMatchObject({ field: "rows" });
  });
});

describe("rows of a small CSV file", () => {
  const cells = (bytes: Uint8Array) => {
    const read = csvRowsOf(bytes);
    return read.kind === "rows" ? read.rows.map(({ line, cells: own }) => [line, ...own]) : read.words;
  };

  it("are read with their lines, their delimiter and their encoding", () => {
    const text = new TextEncoder().encode("\uFEFFrow;what\r\n\r\ncard;'=für\r\n");
    expect(cells(text)).toEqual([
      [1, "row", "what"],
      [3, "card", "=für"],
    ]);
    expect(cells(Uint8Array.from([0x66, 0xfc, 0x72, 0x2c, 0x61]))).toEqual([[1, "für", "a"]]);
  });

  it("say what can't be read", () => {
    expect(cells(Uint8Array.from([0x50, 0x4b, 0, 1]))).toContain("not a text file");
    expect(cells(Uint8Array.from([0x72, 0x6f, 0x77, 0x01]))).toContain("not a text file");
    for (const text of ['row,what\na,b\nrow,"what\ncard\nmore', 'row,what\na,b\nrow,wh"at\ncard']) {
      expect(cells(new TextEncoder().encode(text))).toMatch(
        /^Row 3: a quotation mark stands inside a cell or is never closed\. .*Nothing was kept\.$/,
      );
    }
  });
});
