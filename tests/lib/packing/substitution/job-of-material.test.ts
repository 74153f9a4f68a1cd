import { describe, expect, it } from "vitest";
import { MATERIALS } from "#lib/packing/material";
import { COMMON_SUBSTITUTIONS } from "#lib/packing/substitution/common-substitutions";
import { jobOfMaterial } from "#lib/packing/substitution/job-of-material";

// Common practice, no source.
describe("jobOfMaterial", () => {
  it.each([
    ["tissue", "piece", "surface"],
    ["small-bubble", "piece", "shock"],
    ["large-bubble", "parcel", "fill"],
    ["packing-paper", "parcel", "fill"],
    ["kraft", "piece", "brace"],
    ["household-tape", "piece", "bind"],
    ["carton-tape", "parcel", "seal"],
  ] as const)("of %s taken by the %s is to %s", (material, per, job) => {
    expect(jobOfMaterial(material, per)).toBe(job);
  });

  it("has a stand-in for what a bench uses most, wherever it is used", () => {
    const bench = MATERIALS.filter((material) =>
      ["tissue", "packing-paper", "small-bubble", "large-bubble", "household-tape", "carton-tape"].includes(
        material,
      ),
    );
    const open = bench.flatMap((material) =>
      (["piece", "parcel"] as const).filter((per) => {
        const job = jobOfMaterial(material, per);
        return !COMMON_SUBSTITUTIONS.some((rule) => rule.job === job && rule.from === material);
      }),
    );
    expect(open).toEqual([]);
  });
});
