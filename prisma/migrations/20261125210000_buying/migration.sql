-- Goals and limits of buying, suppliers' calendars, drafts of orders, price history, kept plans.
ALTER TABLE "Shop" ADD COLUMN "goal" TEXT NOT NULL DEFAULT 'cycles';
ALTER TABLE "Shop" ADD COLUMN "longestCoverWeeks" INTEGER NOT NULL DEFAULT 26;
ALTER TABLE "Shop" ADD COLUMN "holdingPerMille" INTEGER NOT NULL DEFAULT 200;
ALTER TABLE "Shop" ADD COLUMN "orderCostMinor" INTEGER NOT NULL DEFAULT 0;
ALTER TABLE "Shop" ADD COLUMN "weekLimitMinor" INTEGER;
ALTER TABLE "Shop" ADD COLUMN "roomMl" INTEGER;
ALTER TABLE "Shop" ADD COLUMN "roomTyped" TEXT;

ALTER TABLE "Supply" ADD COLUMN "goal" TEXT;
ALTER TABLE "Supply" ADD COLUMN "goalPerMille" INTEGER;
ALTER TABLE "Supply" ADD COLUMN "shelfLifeDays" INTEGER;
ALTER TABLE "Supply" ADD COLUMN "lastUseOn" TEXT;

ALTER TABLE "Supplier" ADD COLUMN "leastOrderMinor" INTEGER;
ALTER TABLE "Supplier" ADD COLUMN "workingDays" BOOLEAN NOT NULL DEFAULT false;
ALTER TABLE "Supplier" ADD COLUMN "orderDays" TEXT NOT NULL DEFAULT '1234567';
ALTER TABLE "Supplier" ADD COLUMN "cutOff" TEXT;
ALTER TABLE "Supplier" ADD COLUMN "peakFrom" TEXT;
ALTER TABLE "Supplier" ADD COLUMN "peakTo" TEXT;
ALTER TABLE "Supplier" ADD COLUMN "peakExtraDays" INTEGER NOT NULL DEFAULT 0;

ALTER TABLE "Offer" ADD COLUMN "breakKind" TEXT NOT NULL DEFAULT 'all-units';
ALTER TABLE "Offer" ADD COLUMN "volumeMl" INTEGER;
ALTER TABLE "Offer" ADD COLUMN "volumeTyped" TEXT;

ALTER TABLE "Purchase" ADD COLUMN "state" TEXT NOT NULL DEFAULT 'placed';
ALTER TABLE "Purchase" ADD COLUMN "placedAt" TEXT;
ALTER TABLE "Purchase" ADD COLUMN "deliveryMinor" INTEGER;

ALTER TABLE "Receipt" ADD COLUMN "shareRule" TEXT NOT NULL DEFAULT 'price';

CREATE TABLE "SupplierClosure" (
    "supplierId" TEXT NOT NULL,
    "fromDay" TEXT NOT NULL,
    "toDay" TEXT NOT NULL,

    PRIMARY KEY ("supplierId", "fromDay"),
    CONSTRAINT "SupplierClosure_supplierId_fkey" FOREIGN KEY ("supplierId") REFERENCES "Supplier" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

CREATE TABLE "OfferPrice" (
    "offerId" TEXT NOT NULL,
    "fromDay" TEXT NOT NULL,
    "priceMinor" INTEGER NOT NULL,

    PRIMARY KEY ("offerId", "fromDay"),
    CONSTRAINT "OfferPrice_offerId_fkey" FOREIGN KEY ("offerId") REFERENCES "Offer" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

CREATE TABLE "PurchasePlan" (
    "questionHash" TEXT NOT NULL PRIMARY KEY,
    "day" TEXT NOT NULL,
    "madeAt" TEXT NOT NULL,
    "answer" TEXT NOT NULL
);
