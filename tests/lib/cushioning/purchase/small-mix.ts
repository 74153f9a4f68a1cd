import type {
  MixOffer,
  MixQuestion,
  MixSupplier,
  MixSupply,
  MixType,
  MixWay,
} from "#lib/cushioning/purchase/mix-question";
import type { PlanMeans } from "#lib/purchasing/plan/plan-means";
import { solveInWorker } from "../../../../app/solver/solve-in-worker";
import { seeded } from "../../purchasing/plan/small-question";

/** A supply with nothing special: none on hand, none to keep, worth nothing when left. */
export function plainMixSupply(id: string, changes: Partial<MixSupply> = {}): MixSupply {
  return {
    ...{ id, onHand: 0, keep: 0, leftMinor: 0, worthUpTo: Number.POSITIVE_INFINITY, litresPerUnit: 0 },
    ...changes,
  };
}

/** A supplier that delivers any order for nothing. */
export function plainMixSupplier(id: string, changes: Partial<MixSupplier> = {}): MixSupplier {
  return { id, deliveryMinor: 0, freeFromMinor: null, leastOrderMinor: null, ...changes };
}

/** An offer of "north" with packs of one unit and one price. */
export function plainMixOffer(supplyId: string, changes: Partial<MixOffer> = {}): MixOffer {
  return {
    id: `${supplyId} of ${changes.supplierId ?? "north"}`,
    supplyId,
    supplierId: "north",
    unitsPerPack: 1,
    steps: [{ fromPacks: 1, priceMinor: 100 }],
    kind: "all-units",
    mostPacks: null,
    ...changes,
  };
}

/** A way to pack that takes one supply. */
export function plainWay(style: MixWay["style"], supplyId: string, units: number, sendMinor: number): MixWay {
  return { style, takes: [{ supplyId, units }], sendMinor, otherMinor: 0 };
}

/** A question without limits. */
export function plainMix(
  parts: Pick<MixQuestion, "supplies" | "offers" | "types"> & Partial<MixQuestion>,
): MixQuestion {
  return { suppliers: [plainMixSupplier("north")], limits: { cashMinor: null, litres: null }, ...parts };
}

/** The real solver, with time enough for small questions. */
export const exactMeans: PlanMeans = {
  solve: solveInWorker,
  seconds: 60,
  gap: 0,
  now: () => performance.now() / 1000,
};

/** A small question with everything in it: packs, steps, least orders, free delivery, cash, room, what is kept. */
export function smallMix(seed: number, typeCount: number): MixQuestion {
  const draw = seeded(seed);
  const wraps = ["paper", "bubble"];
  const ids = draw(0, 1) === 0 ? wraps : [...wraps, "carton"];
  const supplies = ids.map((id) =>
    plainMixSupply(id, {
      onHand: draw(0, 2) === 0 ? 0 : draw(0, 12),
      keep: draw(0, 1) === 0 ? 0 : draw(1, 6),
      leftMinor: draw(0, 25),
      worthUpTo: draw(0, 1) === 0 ? Number.POSITIVE_INFINITY : draw(0, 8),
      litresPerUnit: draw(0, 3),
    }),
  );
  const suppliers = (draw(0, 1) === 0 ? ["north"] : ["north", "south"]).map((id) =>
    plainMixSupplier(id, {
      deliveryMinor: draw(0, 400),
      freeFromMinor: draw(0, 1) === 0 ? null : draw(300, 1500),
      leastOrderMinor: draw(0, 2) === 0 ? draw(100, 700) : null,
    }),
  );
  const offers = ids.map((id) =>
    smallOffer(draw, id, suppliers[draw(0, suppliers.length - 1)]?.id ?? "north"),
  );
  return {
    supplies,
    suppliers,
    offers,
    types: Array.from({ length: typeCount }, (_, index) => smallType(draw, `type ${index}`, ids)),
    limits: {
      cashMinor: draw(0, 1) === 0 ? null : draw(200, 2500),
      litres: draw(0, 2) === 0 ? draw(10, 60) : null,
    },
  };
}

type Draw = ReturnType<typeof seeded>;

function smallOffer(draw: Draw, supplyId: string, supplierId: string): MixOffer {
  const first = draw(80, 400);
  const later = { fromPacks: draw(2, 3), priceMinor: Math.round((first * draw(70, 105)) / 100) };
  return plainMixOffer(supplyId, {
    supplierId,
    unitsPerPack: draw(3, 12),
    steps: [{ fromPacks: 1, priceMinor: first }, ...(draw(0, 2) > 0 ? [later] : [])],
    kind: draw(0, 1) === 0 ? "all-units" : "incremental",
    mostPacks: draw(0, 6) === 0 ? 0 : draw(1, 3),
  });
}

function smallType(draw: Draw, id: string, supplyIds: readonly string[]): MixType {
  const carton = supplyIds.includes("carton") ? [{ supplyId: "carton", units: 1 }] : [];
  const way = (style: "paper" | "bubble"): MixWay => ({
    style,
    takes: [{ supplyId: style, units: draw(2, 9) / 2 }, ...carton],
    sendMinor: draw(300, 900),
    otherMinor: draw(0, 200),
  });
  const ways = draw(0, 5) === 0 ? [way("paper")] : [way("paper"), way("bubble")];
  return { id, parcels: draw(1, 12) / 2, ways };
}
