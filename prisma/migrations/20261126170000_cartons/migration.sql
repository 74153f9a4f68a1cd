-- Cartons: their board and outside, which to use up first, how the shop judges them, and ranges worked out.
ALTER TABLE "Supply" ADD COLUMN "flutes" TEXT;
ALTER TABLE "Supply" ADD COLUMN "outsideLengthUm" INTEGER;
ALTER TABLE "Supply" ADD COLUMN "outsideWidthUm" INTEGER;
ALTER TABLE "Supply" ADD COLUMN "outsideHeightUm" INTEGER;
ALTER TABLE "Supply" ADD COLUMN "outsideTyped" TEXT;
ALTER TABLE "Supply" ADD COLUMN "boardUsed" BOOLEAN NOT NULL DEFAULT false;
ALTER TABLE "Supply" ADD COLUMN "useFirst" BOOLEAN NOT NULL DEFAULT false;

ALTER TABLE "Shop" ADD COLUMN "cartonTerms" TEXT;
ALTER TABLE "Shop" ADD COLUMN "rangeSizes" TEXT;

CREATE TABLE "CartonRange" (
    "questionHash" TEXT NOT NULL PRIMARY KEY,
    "madeAt" TEXT NOT NULL,
    "answer" TEXT NOT NULL
);
