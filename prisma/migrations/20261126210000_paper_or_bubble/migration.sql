-- Paper or bubble: what minutes and breakage count for, what a piece sells for, and what a supplier can deliver at all.
ALTER TABLE "Shop" ADD COLUMN "cushionTerms" TEXT;

ALTER TABLE "ItemType" ADD COLUMN "valueMinor" INTEGER;

ALTER TABLE "Offer" ADD COLUMN "soldOut" BOOLEAN NOT NULL DEFAULT false;
ALTER TABLE "Offer" ADD COLUMN "mostPacksAMonth" INTEGER;
