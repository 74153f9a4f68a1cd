import { describe, expect, it } from "vitest";
import { breakEven } from "#lib/cushioning/break-even";
import { comparisons } from "#lib/cushioning/comparison";
import { type WayCost, type WayTerms, wayCost } from "#lib/cushioning/way-cost";
import { type PackingGround, waysToPack } from "#lib/cushioning/ways-to-pack";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { learnedWeights } from "#lib/packing/weight/learned-weights";
import type { RateCard } from "#lib/postage/rate-card";
import { stepWords } from "#lib/postage/step-words";
import { addDays, day } from "#lib/units/day";
import { demoRateCards } from "#prisma/demo/demo-rate-card";
import { DEMO_OFFERS, DEMO_ZONES } from "#prisma/demo/demo-terms";
import { starterCartonId } from "#prisma/starter/starter-cartons";
import { STARTER_ITEMS } from "#prisma/starter/starter-items";
import { starterSteps } from "#prisma/starter/starter-steps";
import { STARTER_SUPPLIES } from "#prisma/starter/starter-supplies";
import { plainBand, plainCard, stepUpTo } from "../lib/postage/rate-card-fixture";
import { WORKED } from "./paper-or-bubble-cases";

// Two item types of the demo shop, held against what a pocket calculator says; sources beside the worked figures.

const TODAY = day("2026-11-25");
const CARD = demoRateCards(day("2026-01-05"), TODAY)[0]?.card ?? null;
const GROUND: PackingGround = {
  today: TODAY,
  recipes: STARTER_ITEMS.flatMap((item) =>
    (["paper", "bubble"] as const).map((style) => ({
      ...{ id: `${item.id} ${style}`, itemTypeId: item.id, style, effectiveFrom: TODAY },
      steps: starterSteps(item, style).map((step, position) => ({ id: `${position}`, position, ...step })),
      cartons: item.cartons.map(({ upTo, sizes }) => ({ upTo, supplyId: starterCartonId(sizes) })),
    })),
  ),
  pieceMasses: new Map(STARTER_ITEMS.map(({ id, grams }) => [id, grams * 1_000])),
  supplyMasses: new Map(STARTER_SUPPLIES.map(({ id, massMg }) => [id, massMg])),
  weights: learnedWeights([], TODAY).known,
  sizeOf: () => null,
};
/** One pack at a time: price by units, in 1/10,000 cent. */
const PRICES = new Map(
  DEMO_OFFERS.map(({ supplyId, units, priceMinor }) => [supplyId, (priceMinor * 10_000) / units]),
);
const NOT_SAID = { paper: null, bubble: null, mixed: null };
const TERMS: WayTerms = {
  book: PRICES,
  replacement: PRICES,
  card: CARD,
  zones: DEMO_ZONES.map(({ id, share }) => ({ zone: id, share })),
  shipDay: TODAY,
  hourMinor: null,
  minutes: NOT_SAID,
  brokenPerMille: NOT_SAID,
  litres: new Map(),
  isPaper: () => false,
  supplyMasses: GROUND.supplyMasses,
};

function costOf(itemTypeId: string, style: CushionStyle, change: Partial<WayTerms> = {}): WayCost {
  const way = waysToPack([{ itemTypeId, pieces: 1 }], GROUND).find((each) => each.style === style);
  if (way === undefined) throw new RangeError(`the starter has no ${itemTypeId} on ${style}`);
  return wayCost(way, { ...TERMS, ...change }, null);
}

const held = (itemTypeId: string, change: Partial<WayTerms> = {}) =>
  comparisons([costOf(itemTypeId, "paper", change), costOf(itemTypeId, "bubble", change)])[0];

/** What a chance to four digits leaves open, three of them in a sum. */
const CHANCE = 0.000_15;
const near = (value: number | null | undefined, known: number, most: number, what: string) =>
  expect(Math.abs((value ?? Number.NaN) - known), `${what}: ${value} and ${known}`).toBeLessThanOrEqual(most);

describe.each(WORKED)("a $itemTypeId on $style, worked line by line", (worked) => {
  const cost = costOf(worked.itemTypeId, worked.style);

  it("takes and costs what the lines say", () => {
    expect([...cost.way.takes.keys()].sort()).toEqual(worked.lines.map(([id]) => id).sort());
    for (const [id, units, cents] of worked.lines) {
      near(cost.way.takes.get(id), units, 1e-9, id);
      near(((PRICES.get(id) ?? Number.NaN) * units) / 10_000, cents, 0.01, id);
    }
    near(cost.materialsMinor, worked.materials, 0.01, "materials");
  });

  it("weighs what the bill says, and that is a guess", () => {
    near((cost.way.weight?.predictedMg ?? Number.NaN) / 1_000, worked.grams, 0.001, "grams");
    expect(cost.postage?.basis).toEqual({ parcels: 0, isGuess: true });
  });

  it("pays each step as often as a normal table says", () => {
    for (const [pounds, chance] of Object.entries(worked.chances)) {
      const step = cost.postage?.steps.find((each) => stepWords(each.step) === `up to ${pounds} lb`);
      near(step?.chance ?? 0, chance, CHANCE, `${pounds} lb`);
    }
  });

  it("costs so much to each zone, over the zones, and all together", () => {
    const to = (zone: string) => cost.postage?.zones.find((each) => each.zone === zone)?.minor;
    near(to("near"), worked.near, 85 * CHANCE, "near");
    near(to("far"), worked.far, 160 * CHANCE, "far");
    near(to("abroad"), worked.abroad, 520 * CHANCE, "abroad");
    near(cost.postageMinor, worked.postage, 158.5 * CHANCE, "postage");
    near(cost.totalMinor, worked.total, 158.5 * CHANCE + 0.01, "total");
  });
});

describe("paper held against bubble", () => {
  it("wins for the framed tile by 11 cents: 81 cents of materials against 70 cents of postage", () => {
    const found = held("framed-tile");
    expect(found?.cheaper.way.style).toBe("paper");
    near(found?.parts.materials, 347.02 - 265.95, 0.01, "materials");
    near(found?.parts.postage, 158.5 * (3.1987 - 3.6405), 158.5 * 2 * CHANCE, "postage");
    near(found?.savesMinor, 11.05, 158.5 * 2 * CHANCE, "saved");
    // Bubble is 123.5 g lighter, and 0.8012 - 0.3596 of the parcels come under 3 lb on bubble alone.
    near(found?.savedMg, -123_542, 1, "weight");
    expect(found?.dropped).toMatchObject({ lighter: "other" });
    near(found?.dropped?.share, 0.4416, 2 * CHANCE, "share under 3 lb");
  });

  it("wins for the lamp chimney by 1.34", () => {
    const found = held("lamp-chimney");
    expect(found?.cheaper.way.style).toBe("paper");
    near(found?.savesMinor, 1_481.33 - 1_346.92, 158.5 * 2 * CHANCE, "saved");
  });

  it("loses the framed tile below 23.00 cents a square foot of large bubble", () => {
    // 25.2 - 11.05 / (7.02 - 2) = 23.00
    const turn = breakEven(
      costOf("framed-tile", "paper"),
      costOf("framed-tile", "bubble"),
      "large-bubble",
      252_000,
    );
    if (turn.kind !== "turns") throw new RangeError(`a turn was expected, got ${turn.kind}`);
    near(turn.price / 10_000, 23, 0.01, "cents a square foot");
    expect(turn).toMatchObject({ below: "bubble", above: "paper" });
    const at = (cents: number) =>
      held("framed-tile", { replacement: new Map([...PRICES, ["large-bubble", cents * 10_000] as const]) });
    expect(at(22.98)?.cheaper.way.style).toBe("bubble");
    expect(at(23.02)?.cheaper.way.style).toBe("paper");
    near(at(22)?.savesMinor, 5.02, 0.05, "saved at 22 cents");
  });

  it("loses it abroad, where a pound costs more than 1.835, and wins there by a card with steps of 5 lb", () => {
    // 81.07 / (3.6405 - 3.1987) = 183.5 cents a pound; abroad it is 520: 520 x 0.4418 - 81.07 = 148.67
    const zones = [{ zone: "abroad", share: 1 }];
    const abroad = held("framed-tile", { zones });
    expect(abroad?.cheaper.way.style).toBe("bubble");
    near(abroad?.savesMinor, 148.67, 520 * 2 * CHANCE, "saved");
    const everyFive = held("framed-tile", { zones, card: fivePounds() });
    expect(everyFive?.cheaper.way.style).toBe("paper");
    near(everyFive?.savesMinor, 81.07, 0.01, "materials alone");
    expect(everyFive?.dropped).toBeNull();
  });
});

/** The demo's prices at every fifth pound alone. */
function fivePounds(): RateCard {
  const steps = [5, 10, 15].map((pounds) =>
    stepUpTo(String(pounds), "lb", [590 + 85 * pounds, 690 + 160 * pounds, 1_490 + 520 * pounds]),
  );
  return plainCard({ currency: "USD", zones: ["near", "far", "abroad"], bands: [plainBand(steps)] });
}

describe("expected postage of a way whose weight was learned", () => {
  // Invented readings of the scale: 3 % over the bill, some a sheet or two more.
  const scaled = [0.01, 0.02, 0.02, 0.03, 0.03, 0.03, 0.04, 0.05, 0.05, 0.07, 0.09, 0.02, 0.03, 0.04];
  const weights = learnedWeights(
    scaled.map((error, at) => ({
      ...{ itemTypeId: "framed-tile", cartonId: "carton-12x12x4", style: "paper" as const, unusual: false },
      packedOn: addDays(TODAY, at - 40),
      predictedMg: 1_400_063,
      scaleMg: Math.round(1_400_063 * (1 + error)),
    })),
    TODAY,
  ).known;
  const way = waysToPack([{ itemTypeId: "framed-tile", pieces: 1 }], { ...GROUND, weights })[0];

  it("agrees to four digits with the midpoint rule over the mixture's density", () => {
    if (way === undefined || way.weight === null) throw new RangeError("the tile on paper is weighed");
    expect(way.weight.basis).toBe("group");
    const cost = wayCost(way, TERMS, null);
    const { parts } = way.weight;
    let [reached, pounds] = [0, 0];
    // From far below nothing, where the bells' tails are, to the card's 30 lb; each pound in 2,000 strips.
    for (let pound = 1 - 4; pound <= 30; pound += 1) {
      const width = 453_592.37 / 2_000;
      for (let strip = 0; strip < 2_000; strip += 1) {
        const mg = (pound - 1) * 453_592.37 + (strip + 0.5) * width;
        const chance = parts.reduce((sum, part) => sum + part.weight * density(mg, part), 0) * width;
        reached += chance;
        pounds += chance * Math.max(1, pound);
      }
    }
    expect(Math.abs(reached - 1)).toBeLessThan(1e-5);
    const known = 720 + (158.5 * pounds) / reached;
    expect(cost.postageMinor).toBeGreaterThan(1_200);
    expect(Math.abs((cost.postageMinor ?? Number.NaN) / known - 1)).toBeLessThan(5e-5);
  });
});

type Bell = { readonly centre: number; readonly scale: number; readonly degrees: number | null };

/** Density of a normal distribution or of a Student's t; any textbook of statistics. */
function density(mg: number, { centre, scale, degrees }: Bell): number {
  const z = (mg - centre) / scale;
  if (degrees === null) return Math.exp(-0.5 * z * z) / (scale * Math.sqrt(2 * Math.PI));
  const height = gammaOfHalves(degrees + 1) / (Math.sqrt(degrees * Math.PI) * gammaOfHalves(degrees));
  return (height * (1 + (z * z) / degrees) ** (-(degrees + 1) / 2)) / scale;
}

/** Gamma of n / 2 by its recursion from gamma(1) = 1 and gamma(1/2) = √π. */
function gammaOfHalves(n: number): number {
  if (!Number.isInteger(n) || n < 1) throw new RangeError(`gammaOfHalves requires a whole number, got ${n}`);
  if (n === 1) return Math.sqrt(Math.PI);
  return n === 2 ? 1 : (n / 2 - 1) * gammaOfHalves(n - 2);
}
