import { describe, expect, it } from "vitest";
import { groupedRows } from "#lib/postage/card-rows/grouped-rows";

const grouped = (...lines: readonly string[]) =>
  groupedRows(lines.map((line, at) => ({ line: at + 1, cells: line.split(",") })));
const HEAD = "row,what,value,Near,Far,,";

describe("rows put together", () => {
  it("are cards with bands, a rule for size and fees, whatever the case of their words", () => {
    const { cards, heads, problems } = grouped(
      HEAD,
      "Card,Service,Parcels",
      "card,from,2026-07-12",
      "band,name,small",
      "step,up to,8 oz,1,2",
      "band,name,large",
      "step,up to,2 lb,3,4",
      "further,each,1 lb,1,1",
      "size,divisor,139 in³ per lb",
      "fee,name,Long",
      "fee,any weight,,4,4",
      "card,service,Letters",
      "step,up to,8 oz,1",
    );
    expect([heads, problems]).toEqual([[{ line: 1, zones: ["Near", "Far"] }], []]);
    expect(
      cards.map(({ head, bands, size, fees }) => [head.line, bands.length, size.said.size, fees.length]),
    ).toEqual([
      [2, 2, 1, 1],
      [12, 1, 0, 0],
    ]);
    expect(cards[0]?.bands.map(({ line, steps, said }) => [line, steps.length, said.has("further")])).toEqual(
      [
        [4, 1, false],
        [6, 1, true],
      ],
    );
    expect(cards[1]?.bands[0]?.steps[0]).toEqual({ line: 13, value: "8 oz", cells: ["1", ""] });
  });

  it("go on under another head row, which begins no card by itself", () => {
    const { cards, problems } = grouped(
      HEAD,
      "card,service,A",
      "row,what,value,Far",
      "step,up to,8 oz,1",
      "card,service,B",
    );
    expect(cards.map(({ zones }) => zones)).toEqual([["Near", "Far"], ["Far"]]);
    expect(problems).toEqual([
      { line: 4, words: "it belongs to no card. Begin a card with: card, service, its name." },
    ]);
  });

  it("say what belongs nowhere or stands there twice", () => {
    expect(grouped("card,service,A").problems[0]?.words).toContain("the first row names the columns");
    const { problems } = grouped(
      HEAD,
      "card,service,A",
      "card,service,",
      "fee,from,2026-01-01",
      "further,each,1 lb,1,1",
      "further,each,2 lb,1,1",
    );
    expect(problems.map(({ line, words }) => `${line}: ${words}`)).toEqual([
      "4: it belongs to no fee. Begin a fee with: fee, name, its name.",
      "6: “further” stands in row 5 already. Take one of them out.",
    ]);
  });
});
