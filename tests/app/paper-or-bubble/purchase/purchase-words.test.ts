import { describe, expect, it } from "vitest";
import { planColumns, planRows } from "#app/paper-or-bubble/purchase/purchase-rows.ts";
import {
  anotherPackWords,
  buysWords,
  changeWords,
  type PlanNames,
  proofWords,
  splitWords,
} from "#app/paper-or-bubble/purchase/purchase-words.ts";
import type { MixChange } from "#lib/cushioning/purchase/mix-change";
import type { MixPlan } from "#lib/cushioning/purchase/solved-mix";
import { OFFER } from "../../buying/order-fixture";
import { DOLLARS } from "../../cartons/small-shelf";

const NAMES: PlanNames = {
  offerOf: (id) => (id === "roll" ? OFFER : undefined),
  supplyName: () => "Small bubble",
  kindName: (id) => (id === "1 tile" ? "Framed tile" : "Stoneware mug"),
  shop: DOLLARS,
};

const PLAN: MixPlan = {
  orders: [
    {
      supplierId: "north",
      lines: [{ offerId: "roll", packs: 2, goodsMinor: 5_200 }],
      goodsMinor: 5_200,
      deliveryMinor: 900,
    },
  ],
  split: [
    { typeId: "1 mug", style: "paper", parcels: 12 },
    { typeId: "1 tile", style: "paper", parcels: 4.5 },
    { typeId: "1 tile", style: "bubble", parcels: 8.5 },
  ],
  stock: [],
  shortfalls: [],
  unpacked: [],
  lack: { parcels: 0, share: 0 },
  costs: {
    goodsMinor: 5_200,
    deliveryMinor: 900,
    postageMinor: 30_000,
    otherMinor: 0,
    grossMinor: 36_100,
    leftMinor: 2_100,
    totalMinor: 34_000,
  },
  litres: 0,
  proof: { boundMinor: 33_900, gap: 0.00277, leastUndone: true, proven: true, seconds: 1.23 },
  from: "solver",
  why: null,
};

function change(of: Partial<MixChange> = {}): MixChange {
  return {
    plan: PLAN,
    moreMinor: 0,
    moreRange: null,
    moreUndone: { parcels: 0, share: 0 },
    switched: [],
    ...of,
  };
}

const TO_PAPER = [
  {
    typeId: "1 tile",
    styles: [
      { style: "bubble" as const, before: 8.5, after: 0 },
      { style: "paper" as const, before: 4.5, after: 13 },
    ],
  },
];

describe("the words of the next purchase", () => {
  it("say what is bought", () => {
    expect(buysWords(PLAN, NAMES)).toBe("2 × Small bubble (roll of 188 ft)");
    expect(buysWords({ orders: [] }, NAMES)).toBe("nothing");
  });

  it("say which parcels go in which style, and how many of a kind that is in two", () => {
    expect(splitWords(PLAN, NAMES)).toEqual([
      "On paper: Stoneware mug, 4.5 of 13 parcels of Framed tile.",
      "On bubble: 8.5 of 13 parcels of Framed tile.",
    ]);
  });

  it("say how good the plan is known to be", () => {
    expect(proofWords(PLAN, DOLLARS)).toBe(
      "At most $1.00 cheaper (0.3 %) is possible by these figures: proven in 1.2 s.",
    );
    const exact = { ...PLAN, proof: { ...PLAN.proof, gap: 0 } };
    expect(proofWords(exact, DOLLARS)).toMatch(/^No plan is cheaper/);
    const open = { ...PLAN, proof: { ...PLAN.proof, gap: null } };
    expect(proofWords(open, DOLLARS)).toMatch(/^Nothing is proven/);
    expect(proofWords({ ...PLAN, from: "heuristic" }, DOLLARS)).toContain("found without the solver");
  });

  it("say what another pack is worth, and whether it would change how parcels are packed", () => {
    const another = { offerId: "roll", supplyId: "bubble", units: 188, worthMinor: 2_450, change: change() };
    expect(anotherPackWords(another, NAMES)).toBe(
      "Another roll of 188 ft of Small bubble on the shelf would be worth $24.50; it costs $26.00. No parcel would be packed otherwise: it would be stock for later.",
    );
    expect(anotherPackWords({ ...another, change: change({ switched: TO_PAPER }) }, NAMES)).toContain(
      "Then 8.5 parcels of Framed tile to paper.",
    );
  });

  it("say what dearer or missing bubble does", () => {
    expect(changeWords(change(), "With bubble 20 % dearer", NAMES)).toBe(
      "With bubble 20 % dearer the plan costs the same.",
    );
    const dearer = change({ moreMinor: 420, switched: TO_PAPER });
    expect(changeWords(dearer, "With bubble 20 % dearer", NAMES)).toBe(
      "With bubble 20 % dearer the plan costs $4.20 more. Then 8.5 parcels of Framed tile to paper.",
    );
    const short = change({ moreMinor: -100, moreUndone: { parcels: 3, share: 0 } });
    expect(changeWords(short, "Were bubble sold out everywhere,", NAMES)).toBe(
      "Were bubble sold out everywhere, the plan costs $1.00 less, and about 3 parcels could not be packed.",
    );
  });
});

describe("the plans side by side", () => {
  const columns = planColumns({
    mixed: PLAN,
    byStyle: [
      { style: "paper", plan: { ...PLAN, costs: { ...PLAN.costs, totalMinor: 35_000 } }, keptTypeIds: [] },
    ],
  });

  it("stand with their parts, and add up", () => {
    const rows = planRows(columns, DOLLARS);
    expect(columns.map(({ name }) => name)).toEqual(["Each its best way", "All on paper"]);
    expect(rows.map(({ name, cells }) => [name, cells[0]])).toEqual([
      ["Goods", "$52.00"],
      ["Delivery", "$9.00"],
      ["Postage expected", "$300.00"],
      ["Worth of what is left over", "-$21.00"],
      ["All together", "$340.00"],
    ]);
    expect(rows.at(-1)).toMatchObject({ isSum: true, cells: ["$340.00", "$350.00"] });
  });
});
