import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/**
 * Folder of the data that the tests check against. Parcels: Online Retail, UCI Machine Learning Repository, D. Chen,
 * 2015, CC BY 4.0; the shop that packs them is invented.
 */
export const DATA = fileURLToPath(new URL("../../../../tests/reference/data/", import.meta.url));

type Step = { readonly supply: string; readonly amount: string; readonly per: "piece" | "parcel" };
type Recipe = {
  readonly steps: readonly Step[];
  readonly cartons: readonly { upTo: number; supply: string }[];
};
type Line = { readonly supply: string; readonly packs: number; readonly packAmount: string };

/** What the test reads of the invented shop. */
export type GiftwareShop = {
  readonly supplies: readonly { id: string; name: string }[];
  readonly itemTypes: readonly { id: string; recipes: readonly Recipe[] }[];
  readonly counts: readonly { supply: string; on: string; amount: string }[];
  readonly receipts: readonly { on: string; lines: readonly Line[] }[];
};

/** A row of the parcels file. */
export type GiftwareRow = {
  readonly on: string;
  readonly order: string;
  readonly type: string;
  readonly pieces: number;
};

/** Reads the shop file as it stands. */
export function giftwareShop(): GiftwareShop {
  return JSON.parse(readFileSync(`${DATA}giftware-shop.json`, "utf8"));
}

/** Reads the parcels file with nothing but splits: it has no quotes. */
export function giftwareRows(): GiftwareRow[] {
  const lines = readFileSync(`${DATA}giftware-parcels.csv`, "utf8").trim().split(/\r?\n/).slice(1);
  return lines.map((line) => {
    const [on = "", order = "", , type = "", pieces = ""] = line.split(",");
    return { on, order, type, pieces: Number(pieces) };
  });
}

/** Twelfths of a use unit in a text of the shop file: "1 1/2" is 18, and an inch is a twelfth of a foot. */
export function twelfths(text: string): number {
  const inches = /^(\d+) in$/.exec(text);
  if (inches !== null) return Number(inches[1]);
  return text.split(" ").reduce((sum, part) => {
    const [above = "", below = "1"] = part.split("/");
    return sum + (Number(above) * 12) / Number(below);
  }, 0);
}

/**
 * Use by supply in twelfths, up to a day, from the two files alone: wraps go by the piece; fill and tape once an
 * order, by the type that asks for most; the carton by all pieces, from the list of the type with most of them.
 */
export function giftwareUse(
  shop: GiftwareShop,
  rows: readonly GiftwareRow[],
  until: string,
): Map<string, number> {
  const use = new Map<string, number>();
  const orders = new Map<string, GiftwareRow[]>();
  for (const row of rows.filter((each) => each.on <= until)) {
    orders.set(row.order, [...(orders.get(row.order) ?? []), row]);
  }
  for (const order of orders.values()) {
    const carton = cartonOf(shop, order);
    for (const [supply, taken] of [
      ...byPiece(shop, order),
      ...onceAnOrder(shop, order),
      [carton, 12] as const,
    ]) {
      use.set(supply, (use.get(supply) ?? 0) + taken);
    }
  }
  return use;
}

type Use = readonly [supply: string, twelfths: number];

function byPiece(shop: GiftwareShop, order: readonly GiftwareRow[]): Use[] {
  return order.flatMap((row) =>
    stepsOf(shop, row.type, "piece").map((step): Use => [step.supply, row.pieces * twelfths(step.amount)]),
  );
}

function onceAnOrder(shop: GiftwareShop, order: readonly GiftwareRow[]): Iterable<Use> {
  const most = new Map<string, number>();
  for (const step of order.flatMap((row) => stepsOf(shop, row.type, "parcel"))) {
    most.set(step.supply, Math.max(most.get(step.supply) ?? 0, twelfths(step.amount)));
  }
  return most;
}

function cartonOf(shop: GiftwareShop, order: readonly GiftwareRow[]): string {
  const pieces = order.reduce((sum, row) => sum + row.pieces, 0);
  const most = Math.max(...order.map((row) => row.pieces));
  const leading = order.find((row) => row.pieces === most)?.type ?? "";
  const carton = recipeOf(shop, leading).cartons.find((each) => each.upTo >= pieces);
  if (carton === undefined) throw new RangeError(`no carton of ${leading} for ${pieces} pieces`);
  return carton.supply;
}

function stepsOf(shop: GiftwareShop, type: string, per: "piece" | "parcel"): Recipe["steps"] {
  return recipeOf(shop, type).steps.filter((step) => step.per === per);
}

function recipeOf(shop: GiftwareShop, type: string): Recipe {
  const recipe = shop.itemTypes.find((each) => each.id === type)?.recipes[0];
  if (recipe === undefined) throw new RangeError(`no recipe of ${type}`);
  return recipe;
}
