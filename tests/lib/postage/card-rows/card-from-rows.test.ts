import { describe, expect, it } from "vitest";
import { cardFromRows } from "#lib/postage/card-rows/card-from-rows";
import { groupedRows } from "#lib/postage/card-rows/grouped-rows";
import { notingReader } from "./row-reader-fixture";

const terms = { measures: "imperial", currency: "USD", zones: null } as const;
function read(...lines: readonly string[]) {
  const rows = ["row,what,value,Near,Far", "card,service,Parcels", ...lines].map((line, at) => ({
    line: at + 1,
    cells: line.split(","),
  }));
  const [card] = groupedRows(rows).cards;
  if (card === undefined) throw new RangeError("a card was expected");
  const { reader, noted } = notingReader();
  return { sourced: cardFromRows(card, ["Near", "Far"], terms, reader.refuse), noted };
}

describe("a card from its rows", () => {
  it("has source and day beside it, and the shop's currency where it names none", () => {
    const { sourced, noted } = read(
      "card,from,2026-01-01",
      "card,source,page 4",
      "card,read on,2025-12-20",
      "step,up to,8 oz,1,2",
    );
    expect(noted).toEqual([]);
    expect(sourced).toMatchObject({
      source: "page 4",
      readOn: "2025-12-20",
      card: { currency: "USD", zones: ["Near", "Far"] },
    });
  });

  it("is none where anything is refused, and each fault stands in its own row", () => {
    const { sourced, noted } = read(
      "card,from,2026-01-01",
      "step,up to,1 lb,1,2",
      "step,up to,8 oz,1,2",
      "further,each,0 lb,1,1",
      "size,divisor,139 in³ per lb",
      "size,at most,0 lb",
      "fee,name,Season",
      "fee,from,2026-10-04",
      "fee,to,2026-10-01",
      "fee,any weight,,1,1",
    );
    expect(sourced).toBeNull();
    expect(noted.map((words) => words.split(":")[0])).toEqual(["5", "6", "7", "9"]);
  });
});
