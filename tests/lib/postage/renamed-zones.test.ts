import { describe, expect, it } from "vitest";
import { renamedZones } from "#lib/postage/renamed-zones";
import { minorUnits } from "#lib/units/money";
import { plainCard } from "./rate-card-fixture";

describe("zones under other labels", () => {
  it("are renamed wherever a card names them, and back again", () => {
    const rows = [{ upTo: null, minor: minorUnits(90) }];
    const fee = { name: "far", validFrom: null, validTo: null, when: { kind: "always" } as const };
    const card = plainCard({
      zones: ["a", "b"],
      fees: [
        { ...fee, groups: [{ zones: ["b"], rows }] },
        { ...fee, groups: [{ zones: null, rows }] },
      ],
    });
    const renamed = renamedZones(card, (zone) => `zone ${zone}`);
    expect(renamed.zones).toEqual(["zone a", "zone b"]);
    expect(renamed.fees.map(({ groups }) => groups[0]?.zones)).toEqual([["zone b"], null]);
    expect(renamedZones(renamed, (zone) => zone.slice(5))).toEqual(card);
  });
});
