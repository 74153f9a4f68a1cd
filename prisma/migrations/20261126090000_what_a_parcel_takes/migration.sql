-- Pieces described, weight bands promised, rate cards, stand-ins, answers to what the counts say of a card.
ALTER TABLE "Shop" ADD COLUMN "promisePerMille" INTEGER NOT NULL DEFAULT 900;
ALTER TABLE "Shop" ADD COLUMN "habits" TEXT;

ALTER TABLE "Supply" ADD COLUMN "material" TEXT;
ALTER TABLE "Supply" ADD COLUMN "layerUm" INTEGER;
ALTER TABLE "Supply" ADD COLUMN "layerTyped" TEXT;

ALTER TABLE "ItemType" ADD COLUMN "piece" TEXT;

ALTER TABLE "Parcel" ADD COLUMN "promisedMg" INTEGER;
ALTER TABLE "Parcel" ADD COLUMN "promisedTyped" TEXT;
ALTER TABLE "Parcel" ADD COLUMN "brokenCause" TEXT;

CREATE TABLE "RecipeAnswer" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "supplyId" TEXT NOT NULL,
    "stepIds" TEXT NOT NULL,
    "answeredOn" TEXT NOT NULL,
    "recordedAt" TEXT NOT NULL,
    "recordedBy" TEXT NOT NULL,
    "answer" TEXT NOT NULL,
    "saysAmount" BIGINT NOT NULL,
    "aboutAmount" BIGINT NOT NULL,
    "counts" INTEGER NOT NULL
);
CREATE INDEX "RecipeAnswer_supplyId_idx" ON "RecipeAnswer"("supplyId");

CREATE TABLE "Substitute" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "supplyId" TEXT NOT NULL,
    "standInId" TEXT NOT NULL,
    "job" TEXT NOT NULL,
    "amount" BIGINT NOT NULL,
    "insteadOf" BIGINT NOT NULL,
    "note" TEXT,
    "retired" BOOLEAN NOT NULL DEFAULT false,
    "position" INTEGER NOT NULL DEFAULT 0,
    CONSTRAINT "Substitute_supplyId_fkey" FOREIGN KEY ("supplyId") REFERENCES "Supply" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Substitute_standInId_fkey" FOREIGN KEY ("standInId") REFERENCES "Supply" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE UNIQUE INDEX "Substitute_supplyId_standInId_job_key" ON "Substitute"("supplyId", "standInId", "job");

CREATE TABLE "RateCard" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "service" TEXT NOT NULL,
    "validFrom" TEXT NOT NULL,
    "validTo" TEXT,
    "card" TEXT NOT NULL,
    "retired" BOOLEAN NOT NULL DEFAULT false,
    "position" INTEGER NOT NULL DEFAULT 0
);
CREATE INDEX "RateCard_validFrom_idx" ON "RateCard"("validFrom");
