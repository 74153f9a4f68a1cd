import { orderParcels } from "#prisma/records/order-parcels";
import type { ParcelDetail } from "#prisma/records/parcel-lists";
import { parcelMaterials } from "#prisma/records/parcel-materials";
import { replacementPrices } from "#prisma/records/replacement-prices";
import { Section } from "../../_parts/section";
import type { ShopNow } from "../../_parts/shop-now";
import { orderCosts } from "../order-costs";
import { CostSplit } from "./cost-split";
import { OrderSplit } from "./order-split";

type ParcelCostProps = Pick<ShopNow, "db" | "shop"> & { readonly parcel: ParcelDetail };

/** What packing a parcel cost, by kind of material and for each order in it; nothing where nothing of it stands. */
export async function ParcelCost({ db, shop, parcel }: ParcelCostProps) {
  const [orders, prices] = await Promise.all([orderParcels(db, parcel.id), replacementPrices(db)]);
  const ids = new Set([parcel.id, ...orders.flatMap((order) => order.parcels.map((each) => each.parcelId))]);
  const materials = await parcelMaterials(db, [...ids]);
  const taken = materials.get(parcel.id) ?? [];
  if (taken.length === 0) return null;
  const lines = orderCosts(orders, parcel.id, materials, prices);
  const names = new Map(parcel.movements.map(({ supplyId, supplyName }) => [supplyId, supplyName]));
  return (
    <>
      <Section
        title="What packing it cost"
        aside="Cash is what the material was booked at on the day packed, with its share of delivery. Today’s prices are those of the cheapest offer in use, without delivery and price breaks: what packing it again would cost."
      >
        <CostSplit taken={taken} prices={prices} nameOf={(id) => names.get(id) ?? id} shop={shop} />
      </Section>
      {lines.length > 1 || lines.some(({ parcels }) => parcels > 1) ? (
        <Section
          title="What packing each order cost"
          aside="A parcel’s cost is split by the shares of its orders, so that they add up to it."
        >
          <OrderSplit lines={lines} shop={shop} />
        </Section>
      ) : null}
    </>
  );
}
