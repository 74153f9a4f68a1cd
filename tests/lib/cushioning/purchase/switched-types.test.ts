import { describe, expect, it } from "vitest";
import { switchedTypes } from "#lib/cushioning/purchase/switched-types";
import { plainWay } from "./small-mix";

describe("types that switch styles", () => {
  const ways = [plainWay("paper", "paper", 1, 1), plainWay("bubble", "bubble", 1, 1)];
  const types = ["cup", "jug"].map((id) => ({ id, parcels: 4, ways }));

  it("are told with their parcels before and after, and those that stay are not", () => {
    const before = {
      split: [
        { typeId: "cup", style: "bubble", parcels: 4 },
        { typeId: "jug", style: "paper", parcels: 4 },
      ],
    } as const;
    const after = {
      split: [
        { typeId: "cup", style: "bubble", parcels: 1.5 },
        { typeId: "cup", style: "paper", parcels: 2.5 },
        { typeId: "jug", style: "paper", parcels: 3.9999 },
      ],
    } as const;
    expect(switchedTypes({ types }, before, after)).toEqual([
      {
        typeId: "cup",
        styles: [
          { style: "paper", before: 0, after: 2.5 },
          { style: "bubble", before: 4, after: 1.5 },
        ],
      },
    ]);
  });
});
