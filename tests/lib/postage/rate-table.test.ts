import { describe, expect, it } from "vitest";
import { readRateTable } from "#lib/postage/rate-table";
import { measureWords } from "#lib/postage/typed-measure";

const terms = { measures: "imperial", minorDigits: 2, blanks: "noPrice" } as const;

function read(text: string, given: Parameters<typeof readRateTable>[1] = terms) {
  const table = readRateTable(text, given);
  return table.kind === "unreadable"
    ? table.problems
    : { zones: table.zones, steps: table.steps.map(({ upTo, prices }) => [measureWords(upTo), ...prices]) };
}

describe("a rate table", () => {
  it("is read as copied from a spreadsheet, each weight as it was typed", () => {
    expect(read("up to\tNear\tFar\n8 oz\t4.60\t$5.20\n\n15.999 oz\t6\t\n1 lb\t6.10\t7.40")).toEqual({
      zones: ["Near", "Far"],
      steps: [
        ["8 oz", 460, 520],
        ["15.999 oz", 600, null],
        ["1 lb", 610, 740],
      ],
    });
  });

  it("is read with other marks between its cells, and with a decimal comma", () => {
    const table = { zones: ["alle"], steps: [["0,5 kg", 549]] };
    const metric = { ...terms, measures: "metric" } as const;
    expect(read("bis | alle\n0,5 kg | 5,49", metric)).toEqual(table);
    expect(read("bis;alle\n0,5 kg;5,49", metric)).toEqual(table);
    expect(read("bis  alle\nup to 0,5 kilos   5,49 €", metric)).toEqual({
      zones: ["alle"],
      steps: [["0,5 kg", 549]],
    });
  });

  it("is read without a word over the weights", () => {
    expect(read("Near\tFar\n8 oz\t4.60\t5.20")).toEqual({
      zones: ["Near", "Far"],
      steps: [["8 oz", 460, 520]],
    });
  });

  it("names each row that can't be read, with the way out", () => {
    expect(read("up to\tNear\na lot\t4.60\n8 oz\tdear\n1 lb\t1\t2")).toEqual([
      "Row 2: “a lot” is no weight. Type a number and oz, lb, g or kg, such as 8 oz.",
      "Row 3: “dear” for Near is no price. Type it like 4.60, or a dash where there is none.",
      "Row 4: it has 2 prices for 1 zones. Give each price a zone in the first row.",
    ]);
  });

  it("wants zones over the prices and a row of prices", () => {
    const whole =
      "A table has a first row with the zones and at least one row such as “8 oz  4.60  5.20”. Paste it whole.";
    expect(read("")).toEqual([whole]);
    expect(read("up to\tNear")).toEqual([whole]);
    expect(read("up to\n8 oz")).toEqual([
      "Row 1: the first row names a zone over each column of prices, such as “up to  Near  Far”.",
    ]);
    expect(read("up to\tNear\t\n8 oz\t1\t2")).toHaveLength(1);
  });
});
