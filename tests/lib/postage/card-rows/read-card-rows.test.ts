import { describe, expect, it } from "vitest";
import { readCardRows } from "#lib/postage/card-rows/read-card-rows";

const terms = { measures: "imperial", currency: "USD", zones: ["Near", "Far"] } as const;
const SOUND = [
  "row,what,value,near,Far",
  "card,service,Parcels",
  "card,from,2026-07-12",
  "step,up to,8 oz,4.60,5.20",
  "step,up to,1 lb,6.10,–",
];

function read(lines: readonly string[], given: Parameters<typeof readCardRows>[1] = terms) {
  const rows = lines.map((line, at) => ({ line: at + 1, cells: line.split(",") }));
  return readCardRows(rows, given);
}
/** The problems of sound rows in which one is put in place of another, or behind the last. */
function problems(change: Readonly<Record<number, string>>, more: readonly string[] = []) {
  const lines = [...SOUND.map((line, at) => change[at + 1] ?? line), ...more];
  const answer = read(lines);
  return answer.kind === "cards" ? [] : answer.problems.map(({ line, words }) => `${line}: ${words}`);
}

describe("rows of cards", () => {
  it("are read with the zones as the shop names them", () => {
    const answer = read(SOUND);
    expect(answer).toMatchObject({ kind: "cards", cards: [{ line: 2, source: null, readOn: null }] });
    const [card] = answer.kind === "cards" ? answer.cards : [];
    expect(card?.card).toMatchObject({ service: "Parcels", currency: "USD", zones: ["Near", "Far"] });
    expect(card?.card.bands[0]?.steps.map(({ prices }) => prices)).toEqual([
      [460, 520],
      [610, null],
    ]);
  });

  it("leave a zone off the card whose cells are all empty", () => {
    const answer = read(["row,what,value,Near,Far", ...SOUND.slice(1, 3), "step,up to,8 oz,4.60,"]);
    expect(answer.kind === "cards" ? answer.cards[0]?.card.zones : []).toEqual(["Near"]);
  });

  it("refuse a half-filled table, with the row and the zone", () => {
    expect(problems({ 4: "step,up to,8 oz,4.60," })).toEqual([
      "4: 8 oz: the price for Far is missing. Type it, or a dash where the carrier gives none.",
    ]);
    expect(problems({}, ["further,each,1 lb,,1.20"])).toEqual([
      "6: 1 lb: the price for Near is missing. Type it, or a dash where the carrier gives none.",
    ]);
  });

  it("refuse steps out of order, in the row of the step", () => {
    expect(problems({ 4: "step,up to,16 oz,4.60,5.20" })).toEqual([
      "5: up to 1 lb: it is not heavier than the step before, 16 oz. Mend it or sort the steps.",
    ]);
  });

  it("refuse zones that the shop does not have, and columns twice", () => {
    expect(problems({ 1: "row,what,value,Near,Moon" })).toEqual([
      "1: “Moon” is no zone of yours. The zones are Near, Far: rename the column, or add the zone.",
    ]);
    expect(problems({ 1: "row,what,value,Near,near" })).toEqual([
      "1: zone Near stands over two columns. Take one of them out.",
    ]);
    expect(problems({ 1: "row,what,value,,Far" })[0]).toContain("1: column 4 has no zone over it.");
  });

  it("refuse words that are not known, and name those that are", () => {
    expect(problems({}, ["bonus,name,x"])[0]).toContain(
      "6: “bonus” is no kind of row. Write card, band, step",
    );
    expect(problems({ 3: "card,since,2026-07-12" })[0]).toContain(
      "3: “since” is nothing that a row card says.",
    );
    expect(problems({}, ["size,divisor,139 in³ per lb", "size,each side,somehow"])).toEqual([
      "7: “somehow” for each side can't be read. Write up to 1 in, nearest 1 in, down to 1 in or as it is.",
    ]);
  });

  it("refuse numbers without their unit, and prices that are none", () => {
    expect(problems({ 4: "step,up to,8,4.60,5.20" })[0]).toContain("4: “8” is no weight.");
    expect(problems({ 4: "step,up to,8 oz,dear,5.20" })).toEqual([
      "4: 8 oz: “dear” for Near is no price. Type it like 4.60, or a dash where there is none.",
    ]);
    expect(problems({ 4: "step,up to,8 oz,4.60 EUR,5.20" })).toEqual([
      "4: “EUR” is not the shop's currency, USD. Change the prices to USD.",
    ]);
    expect(problems({}, ["fee,name,Long", "fee,any weight,,€2,2"])[0]).toMatch(/^7: “€” is not the shop's/);
    expect(problems({ 4: "step,up to,8 oz,$4.60,5.20 USD" })).toEqual([]);
    expect(problems({}, ["band,longest side,22"])[0]).toContain("6: “22” for longest side can't be read.");
    expect(problems({}, ["size,more than,1728 in³"])[0]).toContain("6: a rule for size needs its divisor");
    expect(problems({}, ["size,divisor,139"])[0]).toContain("6: “139” for divisor can't be read.");
    expect(problems({}, ["size,divisor,139 in³ per lb", "size,more than,1728 cm³"])[0]).toContain(
      "a volume like 1728 in³",
    );
  });

  it("refuse a currency that is not the shop's", () => {
    expect(problems({}, ["card,currency,EUR"])).toEqual([
      "6: “EUR” is not the shop's currency, USD. Change the prices to USD, or leave the card out.",
    ]);
    expect(problems({}, ["card,currency,usd"])).toEqual([]);
  });

  it("refuse what is said twice, in the wrong place or under no zone", () => {
    expect(problems({}, ["card,from,2026-07-13"])).toEqual([
      "6: “from” stands in row 3 already. Take one of them out.",
    ]);
    expect(problems({ 4: "step,up to,8 oz,4.60,5.20,6.00" })[0]).toContain(
      "4: it has more cells than the head row.",
    );
    expect(problems({ 3: "card,from,2026-07-12,4.60" })[0]).toContain("3: cells under the zones say nothing");
    expect(problems({ 2: "step,up to,4 oz,1,2" })[0]).toContain("2: it belongs to no card.");
    expect(problems({}, ["fee,any weight,,1,1"])).toEqual([
      "6: it belongs to no fee. Begin a fee with: fee, name, its name.",
    ]);
  });

  it("refuse days that are none, or that contradict, and a card without its first day", () => {
    expect(problems({ 3: "card,from,July" })[0]).toContain(
      "3: “July” for from can't be read. Write a day like",
    );
    expect(problems({ 3: "card,to,2026-12-31" })[0]).toContain(
      "2: the card does not say from which day it holds.",
    );
    expect(problems({}, ["card,to,2026-01-01"])[0]).toContain(
      "2: The last day 2026-01-01 is before the first",
    );
  });

  it("refuse fees without an amount, to zones off the card, and with two conditions", () => {
    expect(problems({}, ["fee,name,Long"])).toEqual([
      "6: Fee Long: it has no amount. Add one or take the fee away.",
    ]);
    expect(problems({}, ["fee,name,Long", "fee,any weight,,,"])[0]).toContain(
      "it has no amount. Write it under each",
    );
    const off = read([
      "row,what,value,Near,Far",
      ...SOUND.slice(1, 3),
      "step,up to,8 oz,4.60,",
      "fee,name,Long",
      "fee,any weight,,1,1",
    ]);
    expect(off).toMatchObject({
      problems: [
        { line: 6, words: expect.stringContaining("the card has no prices for Far, so no fee either") },
      ],
    });
    const both = [
      "fee,name,Long",
      "fee,longest side over,22 in",
      "fee,volume over,3456 in³",
      "fee,any weight,,1,1",
    ];
    expect(problems({}, both)[0]).toContain("8: a fee has one condition of size.");
    const upTo = ["fee,name,Long", "fee,but not over,30 in", "fee,any weight,,1,1"];
    expect(problems({}, upTo)[0]).toContain("7: it says up to where the fee falls, but not over what.");
  });

  it("refuse a file without a head row or without a card", () => {
    expect(problems({ 1: "card,service,Parcels" })).toEqual([
      "1: the first row names the columns: row, what, value, then your zones. Put it on top.",
    ]);
    expect(read(["row,what,value,Near"])).toMatchObject({
      problems: [{ line: 1, words: expect.stringContaining("there is no card") }],
    });
    expect(read(["row,what,value", ...SOUND.slice(1)])).toMatchObject({
      problems: [
        { line: 1, words: expect.stringContaining("no zone stands over") },
        ...Array.from({ length: 2 }, () => expect.anything()),
      ],
    });
  });

  it("tell every row that is wrong at once", () => {
    expect(problems({ 3: "card,from,July", 4: "step,up to,8 oz,4.60," })).toHaveLength(2);
  });

  it("group zones with the same fee, and leave out those that do not pay it", () => {
    const answer = read([...SOUND, "fee,name,Far away", "fee,up to,3 lb,,0.40", "fee,any weight,,,0.90"]);
    const [card] = answer.kind === "cards" ? answer.cards : [];
    expect(
      card?.card.fees[0]?.groups.map(({ zones, rows }) => [zones, rows.map(({ minor }) => minor)]),
    ).toEqual([[["Far"], [40, 90]]]);
  });
});
