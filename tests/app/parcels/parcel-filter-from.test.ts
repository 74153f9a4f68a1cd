import { describe, expect, it } from "vitest";
import { filterProblems } from "#app/parcels/filter-problems.ts";
import { parcelFilterFrom, parcelsAddress } from "#app/parcels/parcel-filter-from.ts";

const QUERY = {
  type: "mug",
  text: " A-1 ",
  from: "2026-03-01",
  to: "2026-03-31",
  style: "bubble",
  carton: "cube-8",
  zone: "near",
  only: "unweighed",
  before: "parcel-9",
};

describe("the filter in the address", () => {
  it("comes back from the address that it makes", () => {
    const filter = parcelFilterFrom(QUERY);
    expect(filter).toEqual({
      itemTypeId: "mug",
      text: "A-1",
      from: "2026-03-01",
      to: "2026-03-31",
      style: "bubble",
      cartonId: "cube-8",
      zoneId: "near",
      state: "unweighed",
      before: "parcel-9",
    });
    const address = new URL(parcelsAddress(filter), "http://127.0.0.1");
    expect(parcelFilterFrom(Object.fromEntries(address.searchParams))).toEqual(filter);
  });

  it("is the bare path where nothing is asked, of the screen or of a route", () => {
    expect(parcelsAddress(parcelFilterFrom({ type: "", text: ["a", "b"] }))).toBe("/parcels");
    expect(parcelsAddress({ zoneId: "near" }, "/api/parcels.csv")).toBe("/api/parcels.csv?zone=near");
  });

  it("leaves out what can't be read, and says so", () => {
    const query = { from: "yesterday", to: "2026-02-30", style: "silk", only: "lost" };
    expect(parcelFilterFrom(query)).toEqual({});
    const problems = filterProblems(query);
    expect(problems.map(({ field }) => field)).toEqual(["from", "to", "style", "only"]);
    expect(problems[0]).toEqual({
      field: "from",
      message: "“yesterday” is no day.",
      wayOut: "Give it as year, month and day, like 2026-11-25.",
    });
    expect(problems[2]?.wayOut).toContain("paper, bubble, mixed");
  });

  it("finds days the wrong way round, and no fault in a sound address", () => {
    expect(filterProblems({ from: "2026-03-02", to: "2026-03-01" })).toMatchObject([{ field: "to" }]);
    expect(filterProblems({ from: "2026-03-01", to: "2026-03-01" })).toEqual([]);
    expect(filterProblems(QUERY)).toEqual([]);
  });
});
