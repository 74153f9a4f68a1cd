import { describe, expect, it } from "vitest";
import { saidDay, saidLength, saidMass, saidNumber, saidValue } from "#lib/postage/card-rows/said-values";
import { exact, typed } from "../rate-card-fixture";
import { notingReader, saidPart } from "./row-reader-fixture";

describe("what a part of a card says", () => {
  it("is read by its kind; nothing said is null", () => {
    const { reader, noted } = notingReader();
    const part = saidPart({
      heaviest: "up to 70 lb",
      longest: "22 in",
      from: "2026-07-12",
      most: "70 lb",
      factor: "0.785",
      empty: "",
    });
    expect(saidMass(part, "heaviest", reader)).toEqual(typed("70", "lb"));
    expect(saidLength(part, "longest", reader)).toEqual(typed("22", "in"));
    expect(saidDay(part, "from", reader)).toBe("2026-07-12");
    expect(saidNumber(part, "most", "lb", reader)).toEqual(exact("70"));
    expect(saidNumber(part, "factor", "", reader)).toEqual(exact("0.785"));
    expect([saidDay(part, "empty", reader), saidDay(part, "to", reader)]).toEqual([null, null]);
    expect(noted).toEqual([]);
  });

  it("that can't be read is noted with its row and what may stand there", () => {
    const { reader, noted } = notingReader();
    const part = saidPart({
      heaviest: "70",
      longest: "22",
      from: "2026-02-30",
      most: "70 kg",
      flag: "maybe",
    });
    saidMass(part, "heaviest", reader);
    saidLength(part, "longest", reader);
    saidDay(part, "from", reader);
    saidNumber(part, "most", "lb", reader);
    saidValue(part, "flag", () => null, "yes or no", reader);
    expect(noted).toEqual([
      "1: “70” for heaviest can't be read. Write a number with oz, lb, g or kg, such as 8 oz.",
      "2: “22” for longest can't be read. Write a number with in, cm or mm, such as 22 in.",
      "3: “2026-02-30” for from can't be read. Write a day like 2026-11-25.",
      "4: “70 kg” for most can't be read. Write a number with lb.",
      "5: “maybe” for flag can't be read. Write yes or no.",
    ]);
  });
});
