import { describe, expect, it } from "vitest";
import { checkedMix } from "#lib/cushioning/purchase/checked-mix";
import { greedyMix } from "#lib/cushioning/purchase/greedy-mix";
import { mixModel } from "#lib/cushioning/purchase/mix-model";
import { choiceOfMixValues, mixStart } from "#lib/cushioning/purchase/mix-start";
import { plainMix, plainMixOffer, plainMixSupply, plainWay, smallMix } from "./small-mix";

describe("a mix as values of the model", () => {
  it("comes back as the same packs and parcels", () => {
    for (let seed = 1; seed <= 40; seed++) {
      const { question } = checkedMix(smallMix(seed, 3));
      const greedy = greedyMix(question);
      const model = mixModel(question, { kind: "parcels" });
      const back = choiceOfMixValues(model, mixStart(model, greedy));
      expect(back.lines).toEqual(greedy.lines);
      const parcels = ({ split }: typeof greedy) =>
        Object.fromEntries(
          split.map((part) => [`${part.typeId} ${part.style}`, Number(part.parcels.toFixed(9))]),
        );
      expect(parcels(back)).toEqual(parcels(greedy));
    }
  });

  it("gives whole packs, and parcels without dust that add up", () => {
    const question = plainMix({
      supplies: [plainMixSupply("paper"), plainMixSupply("bubble")],
      offers: [plainMixOffer("paper", { unitsPerPack: 10 })],
      types: [
        {
          id: "cup",
          parcels: 4,
          ways: [plainWay("paper", "paper", 4, 5), plainWay("bubble", "bubble", 2, 6)],
        },
      ],
    });
    const model = mixModel(question, { kind: "parcels" });
    const values = { n0_0: 1.9999999996, x0_0: 3.9999999, x0_1: 1e-9, u0: 1e-10 };
    expect(choiceOfMixValues(model, values)).toEqual({
      lines: [{ offerId: "paper of north", packs: 2 }],
      split: [{ typeId: "cup", style: "paper", parcels: 4 }],
    });
    const open = choiceOfMixValues(model, { n0_0: 0, x0_0: 1, x0_1: 2, u0: 1 }).split;
    expect(open.map(({ parcels }) => parcels)).toEqual([1, 2]);
    expect(choiceOfMixValues(model, { u0: 4 }).split).toEqual([]);
  });
});
