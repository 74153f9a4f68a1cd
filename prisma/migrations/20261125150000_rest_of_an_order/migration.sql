-- The rest of an order that came in part counts as on order from that day on, not before.
ALTER TABLE "PurchaseLine" ADD COLUMN "restSince" TEXT;
UPDATE "PurchaseLine" SET "restSince" = (
  SELECT MAX(part."closedOn") FROM "PurchaseLine" part WHERE part."id" || '-rest' = "PurchaseLine"."id"
) WHERE "id" LIKE '%-rest';
