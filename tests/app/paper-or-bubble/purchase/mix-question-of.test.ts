import { describe, expect, it } from "vitest";
import {
  mixQuestionOf,
  type PurchaseGround,
  timesItsPrice,
} from "#app/paper-or-bubble/purchase/mix-question-of.ts";
import { amountOfUnits } from "#lib/units/amount";
import type { Offer } from "#prisma/records/suppliers";
import { plainCost } from "../../../lib/cushioning/small-ways";

const BUNDLE: Offer = {
  id: "bundle",
  supplyId: "sheets",
  supplierId: "north",
  pack: "bundle of 400",
  packAmount: amountOfUnits(400),
  packTyped: "400",
  priceMinor: 3_000,
  breakKind: "all-units",
  volumeMl: 18_000,
  volumeTyped: "18 l",
  soldOut: false,
  mostPacksAMonth: null,
  retired: false,
  breaks: [{ fromPacks: 3, priceMinor: 2_700 }],
};
const ROLL: Offer = {
  ...BUNDLE,
  id: "roll",
  supplyId: "bubble",
  packAmount: amountOfUnits(125),
  priceMinor: 3_150,
  breaks: [],
};

/** Ten mugs, on paper 11 sheets, on bubble 5 sq ft; 52 weeks cost a fifth of a stock's value. */
function groundOf(change: Partial<PurchaseGround> = {}): PurchaseGround {
  const known = { postageMinor: 900, totalMinor: 1_200 };
  return {
    weeks: 6,
    longestCoverWeeks: 26,
    kinds: [
      {
        pieces: [{ itemTypeId: "mug", pieces: 1 }],
        parcels: 10,
        costs: [
          plainCost("paper", 300, { sheets: 11 }, { ...known, minutesMinor: 50, breakageMinor: 7 }),
          plainCost("bubble", 300, { bubble: 5 }, { ...known, postageMinor: 700 }),
        ],
      },
    ],
    onHand: new Map([
      ["sheets", 120],
      ["bubble", -4],
    ]),
    keep: new Map([["sheets", 30]]),
    prices: new Map([
      ["sheets", 75_000],
      ["bubble", 252_000],
    ]),
    tried: new Map(),
    priceNow: new Map([
      ["sheets", 75_000],
      ["bubble", 252_000],
    ]),
    litres: new Map([["sheets", 0.045]]),
    offers: [BUNDLE, ROLL],
    suppliers: [],
    holdingPerMille: 200,
    cashMinor: null,
    litresAtHome: null,
    ...change,
  };
}

describe("the question of the next purchase", () => {
  it("has the parcels with what each way takes and costs to send", () => {
    const [mug] = mixQuestionOf(groundOf()).types;
    expect(mug).toMatchObject({ id: "1 mug", parcels: 10 });
    expect(mug?.ways).toMatchObject([
      { style: "paper", takes: [{ supplyId: "sheets", units: 11 }], sendMinor: 900, otherMinor: 57 },
      { style: "bubble", takes: [{ supplyId: "bubble", units: 5 }], sendMinor: 700, otherMinor: 0 },
    ]);
  });

  it("leaves out what was never counted, and takes stock below nothing as nothing", () => {
    const { supplies } = mixQuestionOf(groundOf());
    expect(supplies.map(({ id, onHand, keep }) => [id, onHand, keep])).toEqual([
      ["sheets", 120, 30],
      ["bubble", 0, 0],
    ]);
  });

  it("counts what is left at its price less the cost of keeping it, and no more than the longest cover uses", () => {
    const [sheets] = mixQuestionOf(groundOf()).supplies;
    // 7.5 cents; kept 6 weeks and half of the 20 after them: 16 of 52 weeks at a fifth a year.
    expect(sheets?.leftMinor).toBeCloseTo(7.5 * (1 - 0.2 * (16 / 52)), 9);
    // 110 sheets in 6 weeks: 366.7 in the 20 weeks after them.
    expect(sheets?.worthUpTo).toBeCloseTo((110 * 20) / 6, 9);
  });

  it("moves all prices of an offer with the one that is tried out", () => {
    const tried = new Map([["sheets", 100_000]]);
    const { offers } = mixQuestionOf(groundOf({ tried }));
    expect(offers.find(({ id }) => id === "bundle")?.steps).toEqual([
      { fromPacks: 1, priceMinor: 4_000 },
      { fromPacks: 3, priceMinor: 3_600 },
    ]);
    expect(offers.find(({ id }) => id === "roll")?.steps).toEqual([{ fromPacks: 1, priceMinor: 3_150 }]);
  });

  it("leaves prices as they are where none is tried, or none is known now", () => {
    const priceNow = new Map([
      ["sheets", 75_000],
      ["saved", 0],
    ]);
    const times = (supplyId: string) =>
      timesItsPrice(supplyId, {
        tried: new Map([
          ["sheets", 150_000],
          ["saved", 1],
        ]),
        priceNow,
      });
    expect([times("sheets"), times("bubble"), times("saved")]).toEqual([2, 1, 1]);
  });

  it("knows what a supplier does not have, and what it sells in the months begun", () => {
    const most = (change: Partial<Offer>) =>
      mixQuestionOf(groundOf({ offers: [{ ...BUNDLE, ...change }] })).offers[0]?.mostPacks;
    expect(most({})).toBeNull();
    expect(most({ soldOut: true })).toBe(0);
    // Six weeks are 42 days: two months begun.
    expect(most({ mostPacksAMonth: 2 })).toBe(4);
  });

  it("holds no way against another by a postage that is known on one side alone", () => {
    const [kind] = groundOf().kinds;
    if (kind === undefined) throw new RangeError("the ground has a kind");
    const [paper, bubble] = kind.costs;
    if (paper === undefined || bubble === undefined) throw new RangeError("the kind has two ways");
    const kinds = [{ ...kind, costs: [paper, { ...bubble, postageMinor: null }] }];
    const [mug] = mixQuestionOf(groundOf({ kinds })).types;
    expect(mug?.ways.map(({ sendMinor }) => sendMinor)).toEqual([0, 0]);
  });
});
