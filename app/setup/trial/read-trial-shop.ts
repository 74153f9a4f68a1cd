import { closedCalendar } from "#lib/forecast/open-days";
import type { TrialShop } from "#lib/replenishment/trial/trial-shop";
import type { Day } from "#lib/units/day";
import type { Database } from "#prisma/client";
import type { Shop } from "#prisma/records/shop";
import { suppliersOf } from "#prisma/records/suppliers";
import { checkInputs } from "#prisma/records/weekly-checks";

const PER_MILLE = 1_000;

/**
 * The shop as a trial begins with it.
 *
 * @param db the open database
 * @param shop the shop as set up
 * @param today the day of the first check
 * @throws Error when the shop was removed meanwhile
 */
export async function readTrialShop(db: Database, shop: Shop, today: Day): Promise<TrialShop> {
  const [found, suppliers] = await Promise.all([checkInputs(db, today), suppliersOf(db)]);
  if (found === null) throw new Error("The shop was removed while its trial was read");
  const supplies = found.inputs;
  const selling = new Set(supplies.flatMap((supply) => supply.offers.map(({ supplierId }) => supplierId)));
  return {
    today,
    calendar: closedCalendar(found.terms.closed),
    supplies,
    suppliers: suppliers
      .filter(({ id }) => selling.has(id))
      .map((supplier) => ({
        supplierId: supplier.id,
        delivery: { charge: supplier.deliveryMinor, freeFrom: supplier.freeDeliveryMinor },
        leastValue: supplier.leastOrderMinor,
      })),
    holdingShare: shop.holdingPerMille / PER_MILLE,
    orderCost: shop.orderCostMinor,
  };
}
