import { describe, expect, it } from "vitest";
import { type CostedMix, costedMix } from "#lib/cushioning/purchase/costed-mix";
import { greedyMix } from "#lib/cushioning/purchase/greedy-mix";
import { mixFaults } from "#lib/cushioning/purchase/mix-faults";
import { plainMix, plainMixOffer, plainMixSupplier, plainMixSupply, plainWay, smallMix } from "./small-mix";

const question = plainMix({
  supplies: [plainMixSupply("paper", { onHand: 5, keep: 2, leftMinor: 3, litresPerUnit: 1 })],
  suppliers: [plainMixSupplier("north", { deliveryMinor: 200, leastOrderMinor: 150 })],
  offers: [plainMixOffer("paper", { unitsPerPack: 10, mostPacks: 2 })],
  types: [{ id: "cup", parcels: 4, ways: [plainWay("paper", "paper", 4, 500)] }],
  limits: { cashMinor: 500, litres: 30 },
});
const sound = costedMix(question, {
  lines: [{ offerId: "paper of north", packs: 2 }],
  split: [{ typeId: "cup", style: "paper", parcels: 4 }],
});
const kinds = (mix: CostedMix, of = question) =>
  mixFaults(of, mix).map((fault) => (fault.kind === "order" ? fault.what : fault.kind));

describe("faults of a mix", () => {
  it("are none in a sound one", () => {
    expect(mixFaults(question, sound)).toEqual([]);
  });

  it("are none in greedy mixes, which keep every limit", () => {
    for (let seed = 1; seed <= 60; seed++) {
      const small = smallMix(seed, 2);
      expect(mixFaults(small, costedMix(small, greedyMix(small)))).toEqual([]);
    }
  });

  it("are limits that are broken: packs, least order, cash, room", () => {
    const lines = (packs: number) => ({
      lines: [{ offerId: "paper of north", packs }],
      split: [{ typeId: "cup", style: "paper", parcels: 1 } as const],
    });
    expect(kinds(costedMix(question, lines(3)))).toEqual(expect.arrayContaining(["packs", "room"]));
    expect(kinds(costedMix(question, lines(1)))).toContain("least-order");
    const poor = { ...question, limits: { cashMinor: 399, litres: 24 } };
    expect(kinds(sound, poor)).toEqual(["cash", "room"]);
    expect(kinds(sound, { ...question, limits: { cashMinor: 400, litres: 25 } })).toEqual([]);
  });

  it("are parcels that do not add up, and more taken than there is", () => {
    const none = costedMix(question, { lines: [], split: sound.split });
    expect(kinds(none)).toContain("stock");
    const more = { ...sound, split: [{ typeId: "cup", style: "paper", parcels: 5 } as const] };
    expect(kinds(more)).toContain("parcels");
    const strange = {
      ...sound,
      split: [...sound.split, { typeId: "jug", style: "paper", parcels: 0 } as const],
    };
    expect(kinds(strange)).toContain("parcels");
    const twice = { typeId: "cup", style: "paper", parcels: 2 } as const;
    expect(kinds({ ...sound, split: [twice, twice] })).toContain("parcels");
  });

  it("are figures told that are not so", () => {
    expect(kinds({ ...sound, litres: 24 })).toEqual(["room"]);
    expect(kinds({ ...sound, lack: { parcels: 0, share: 0.1 } })).toEqual(["undone"]);
    expect(kinds({ ...sound, shortfalls: [{ supplyId: "paper", units: 1 }] })).toContain("undone");
    expect(kinds({ ...sound, costs: { ...sound.costs, totalMinor: sound.costs.totalMinor - 1 } })).toEqual([
      "costs",
    ]);
    const [order] = sound.orders;
    if (order === undefined) throw new RangeError("the mix has an order");
    expect(kinds({ ...sound, orders: [{ ...order, deliveryMinor: 0 }] })).toContain("delivery");
    expect(kinds({ ...sound, stock: [] })).toEqual(["stock"]);
  });
});
