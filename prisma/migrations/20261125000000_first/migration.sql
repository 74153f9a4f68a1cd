-- CreateTable
CREATE TABLE "Shop" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "timeZone" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "minorDigits" INTEGER NOT NULL DEFAULT 2,
    "weekStartsOn" INTEGER NOT NULL DEFAULT 1,
    "measures" TEXT NOT NULL DEFAULT 'imperial',
    "reviewDays" INTEGER NOT NULL DEFAULT 7,
    "servicePerMille" INTEGER NOT NULL DEFAULT 950,
    "coverWeeks" INTEGER NOT NULL DEFAULT 8,
    "defaultStyle" TEXT NOT NULL DEFAULT 'paper'
);

-- CreateTable
CREATE TABLE "Supply" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "useUnit" TEXT NOT NULL,
    "countUnit" TEXT,
    "countAmount" BIGINT,
    "massMg" INTEGER,
    "massTyped" TEXT,
    "lengthUm" INTEGER,
    "widthUm" INTEGER,
    "heightUm" INTEGER,
    "sizesTyped" TEXT,
    "coreUm" INTEGER,
    "fullUm" INTEGER,
    "fullAmount" BIGINT,
    "coreMassMg" INTEGER,
    "sheetNm" INTEGER,
    "wall" TEXT,
    "rating" TEXT,
    "ratedMassMg" INTEGER,
    "guessed" BOOLEAN NOT NULL DEFAULT false,
    "note" TEXT,
    "retired" BOOLEAN NOT NULL DEFAULT false,
    "position" INTEGER NOT NULL DEFAULT 0
);

-- CreateTable
CREATE TABLE "SupplyStock" (
    "supplyId" TEXT NOT NULL PRIMARY KEY,
    "amount" BIGINT NOT NULL,
    "value" BIGINT NOT NULL,
    "costValue" BIGINT NOT NULL DEFAULT 0,
    "costAmount" BIGINT NOT NULL DEFAULT 0,
    "countedAt" TEXT,
    CONSTRAINT "SupplyStock_supplyId_fkey" FOREIGN KEY ("supplyId") REFERENCES "Supply" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Supplier" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "leadTimeDays" INTEGER NOT NULL,
    "deliveryMinor" INTEGER NOT NULL DEFAULT 0,
    "freeDeliveryMinor" INTEGER,
    "note" TEXT,
    "retired" BOOLEAN NOT NULL DEFAULT false
);

-- CreateTable
CREATE TABLE "Offer" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "supplyId" TEXT NOT NULL,
    "supplierId" TEXT NOT NULL,
    "pack" TEXT NOT NULL,
    "packAmount" BIGINT NOT NULL,
    "packTyped" TEXT NOT NULL,
    "priceMinor" INTEGER,
    "retired" BOOLEAN NOT NULL DEFAULT false,
    CONSTRAINT "Offer_supplyId_fkey" FOREIGN KEY ("supplyId") REFERENCES "Supply" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Offer_supplierId_fkey" FOREIGN KEY ("supplierId") REFERENCES "Supplier" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "OfferBreak" (
    "offerId" TEXT NOT NULL,
    "fromPacks" INTEGER NOT NULL,
    "priceMinor" INTEGER NOT NULL,

    PRIMARY KEY ("offerId", "fromPacks"),
    CONSTRAINT "OfferBreak_offerId_fkey" FOREIGN KEY ("offerId") REFERENCES "Offer" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Movement" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "supplyId" TEXT NOT NULL,
    "amount" BIGINT NOT NULL,
    "value" BIGINT,
    "cause" TEXT NOT NULL,
    "unusual" BOOLEAN NOT NULL DEFAULT false,
    "effectiveAt" TEXT NOT NULL,
    "effectiveDay" TEXT NOT NULL,
    "recordedAt" TEXT NOT NULL,
    "recordedBy" TEXT NOT NULL,
    "typedValue" TEXT,
    "typedUnit" TEXT,
    "words" TEXT,
    "reversesId" INTEGER,
    "parcelId" TEXT,
    "recipeStepId" TEXT,
    "receiptLineId" TEXT,
    "countId" TEXT,
    CONSTRAINT "Movement_supplyId_fkey" FOREIGN KEY ("supplyId") REFERENCES "Supply" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Movement_reversesId_fkey" FOREIGN KEY ("reversesId") REFERENCES "Movement" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
    CONSTRAINT "Movement_parcelId_fkey" FOREIGN KEY ("parcelId") REFERENCES "Parcel" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
    CONSTRAINT "Movement_recipeStepId_fkey" FOREIGN KEY ("recipeStepId") REFERENCES "RecipeStep" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
    CONSTRAINT "Movement_receiptLineId_fkey" FOREIGN KEY ("receiptLineId") REFERENCES "ReceiptLine" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
    CONSTRAINT "Movement_countId_fkey" FOREIGN KEY ("countId") REFERENCES "Count" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "SupplyDay" (
    "supplyId" TEXT NOT NULL,
    "day" TEXT NOT NULL,
    "cause" TEXT NOT NULL,
    "unusual" BOOLEAN NOT NULL,
    "amount" BIGINT NOT NULL,
    "value" BIGINT NOT NULL,

    PRIMARY KEY ("supplyId", "day", "cause", "unusual"),
    CONSTRAINT "SupplyDay_supplyId_fkey" FOREIGN KEY ("supplyId") REFERENCES "Supply" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ParcelDay" (
    "day" TEXT NOT NULL,
    "itemTypeId" TEXT NOT NULL,
    "style" TEXT NOT NULL,
    "cartonId" TEXT NOT NULL,
    "zoneId" TEXT NOT NULL,
    "unusual" BOOLEAN NOT NULL,
    "parcels" INTEGER NOT NULL,
    "pieces" INTEGER NOT NULL,

    PRIMARY KEY ("day", "itemTypeId", "style", "cartonId", "zoneId", "unusual")
);

-- CreateTable
CREATE TABLE "Count" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "supplyId" TEXT NOT NULL,
    "countedAt" TEXT NOT NULL,
    "countedDay" TEXT NOT NULL,
    "recordedAt" TEXT NOT NULL,
    "recordedBy" TEXT NOT NULL,
    "amount" BIGINT NOT NULL,
    "bookAmount" BIGINT NOT NULL,
    "method" TEXT NOT NULL,
    "typed" TEXT NOT NULL,
    "note" TEXT,
    CONSTRAINT "Count_supplyId_fkey" FOREIGN KEY ("supplyId") REFERENCES "Supply" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ItemType" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "massMg" INTEGER,
    "massTyped" TEXT,
    "lengthUm" INTEGER,
    "widthUm" INTEGER,
    "heightUm" INTEGER,
    "sizesTyped" TEXT,
    "note" TEXT,
    "retired" BOOLEAN NOT NULL DEFAULT false,
    "position" INTEGER NOT NULL DEFAULT 0
);

-- CreateTable
CREATE TABLE "Recipe" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "itemTypeId" TEXT NOT NULL,
    "style" TEXT NOT NULL,
    "effectiveFrom" TEXT NOT NULL,
    "commonPractice" BOOLEAN NOT NULL DEFAULT false,
    "note" TEXT,
    "recordedAt" TEXT NOT NULL,
    CONSTRAINT "Recipe_itemTypeId_fkey" FOREIGN KEY ("itemTypeId") REFERENCES "ItemType" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "RecipeStep" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "recipeId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "words" TEXT NOT NULL,
    "supplyId" TEXT NOT NULL,
    "amount" BIGINT NOT NULL,
    "typedValue" TEXT NOT NULL,
    "typedUnit" TEXT NOT NULL,
    "per" TEXT NOT NULL,
    CONSTRAINT "RecipeStep_recipeId_fkey" FOREIGN KEY ("recipeId") REFERENCES "Recipe" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "RecipeStep_supplyId_fkey" FOREIGN KEY ("supplyId") REFERENCES "Supply" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "RecipeCarton" (
    "recipeId" TEXT NOT NULL,
    "upTo" INTEGER NOT NULL,
    "supplyId" TEXT NOT NULL,

    PRIMARY KEY ("recipeId", "upTo"),
    CONSTRAINT "RecipeCarton_recipeId_fkey" FOREIGN KEY ("recipeId") REFERENCES "Recipe" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "RecipeCarton_supplyId_fkey" FOREIGN KEY ("supplyId") REFERENCES "Supply" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Zone" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "retired" BOOLEAN NOT NULL DEFAULT false,
    "position" INTEGER NOT NULL DEFAULT 0
);

-- CreateTable
CREATE TABLE "Parcel" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "packedOn" TEXT NOT NULL,
    "effectiveAt" TEXT NOT NULL,
    "recordedAt" TEXT NOT NULL,
    "recordedBy" TEXT NOT NULL,
    "style" TEXT NOT NULL,
    "zoneId" TEXT,
    "scaleMg" INTEGER,
    "scaleTyped" TEXT,
    "postageMinor" INTEGER,
    "postedOn" TEXT,
    "unusual" BOOLEAN NOT NULL DEFAULT false,
    "voidedAt" TEXT,
    "voidReason" TEXT,
    "brokenOn" TEXT,
    "brokenNote" TEXT,
    "returnedOn" TEXT,
    "note" TEXT,
    "bodyHash" TEXT NOT NULL,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "source" TEXT,
    "sourceRef" TEXT,
    CONSTRAINT "Parcel_zoneId_fkey" FOREIGN KEY ("zoneId") REFERENCES "Zone" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ParcelPiece" (
    "parcelId" TEXT NOT NULL,
    "itemTypeId" TEXT NOT NULL,
    "pieces" INTEGER NOT NULL,
    "recipeId" TEXT,

    PRIMARY KEY ("parcelId", "itemTypeId"),
    CONSTRAINT "ParcelPiece_parcelId_fkey" FOREIGN KEY ("parcelId") REFERENCES "Parcel" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ParcelPiece_itemTypeId_fkey" FOREIGN KEY ("itemTypeId") REFERENCES "ItemType" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ParcelPiece_recipeId_fkey" FOREIGN KEY ("recipeId") REFERENCES "Recipe" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ParcelCarton" (
    "parcelId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "supplyId" TEXT,
    "lengthUm" INTEGER,
    "widthUm" INTEGER,
    "heightUm" INTEGER,
    "sizesTyped" TEXT,
    "cutHeightUm" INTEGER,
    "cutTyped" TEXT,

    PRIMARY KEY ("parcelId", "position"),
    CONSTRAINT "ParcelCarton_parcelId_fkey" FOREIGN KEY ("parcelId") REFERENCES "Parcel" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ParcelCarton_supplyId_fkey" FOREIGN KEY ("supplyId") REFERENCES "Supply" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "BuyerOrder" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "reference" TEXT NOT NULL
);

-- CreateTable
CREATE TABLE "OrderParcel" (
    "orderId" TEXT NOT NULL,
    "parcelId" TEXT NOT NULL,
    "share" INTEGER NOT NULL,

    PRIMARY KEY ("orderId", "parcelId"),
    CONSTRAINT "OrderParcel_orderId_fkey" FOREIGN KEY ("orderId") REFERENCES "BuyerOrder" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "OrderParcel_parcelId_fkey" FOREIGN KEY ("parcelId") REFERENCES "Parcel" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Purchase" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "supplierId" TEXT NOT NULL,
    "placedOn" TEXT NOT NULL,
    "recordedAt" TEXT NOT NULL,
    "note" TEXT,
    CONSTRAINT "Purchase_supplierId_fkey" FOREIGN KEY ("supplierId") REFERENCES "Supplier" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "PurchaseLine" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "purchaseId" TEXT NOT NULL,
    "supplyId" TEXT NOT NULL,
    "offerId" TEXT,
    "packs" INTEGER NOT NULL,
    "packAmount" BIGINT NOT NULL,
    "priceMinor" INTEGER,
    "expectedOn" TEXT NOT NULL,
    "closedOn" TEXT,
    "closedAs" TEXT,
    CONSTRAINT "PurchaseLine_purchaseId_fkey" FOREIGN KEY ("purchaseId") REFERENCES "Purchase" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PurchaseLine_supplyId_fkey" FOREIGN KEY ("supplyId") REFERENCES "Supply" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PurchaseLine_offerId_fkey" FOREIGN KEY ("offerId") REFERENCES "Offer" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Receipt" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "supplierId" TEXT,
    "receivedOn" TEXT NOT NULL,
    "effectiveAt" TEXT NOT NULL,
    "recordedAt" TEXT NOT NULL,
    "recordedBy" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "rateMillionths" INTEGER NOT NULL DEFAULT 1000000,
    "taxIncluded" BOOLEAN NOT NULL DEFAULT true,
    "deliveryMinor" INTEGER NOT NULL DEFAULT 0,
    "taxMinor" INTEGER NOT NULL DEFAULT 0,
    "note" TEXT,
    CONSTRAINT "Receipt_supplierId_fkey" FOREIGN KEY ("supplierId") REFERENCES "Supplier" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ReceiptLine" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "receiptId" TEXT NOT NULL,
    "supplyId" TEXT NOT NULL,
    "purchaseLineId" TEXT,
    "packs" INTEGER NOT NULL,
    "packAmount" BIGINT NOT NULL,
    "packTyped" TEXT NOT NULL,
    "priceMinor" INTEGER,
    "landedValue" BIGINT,
    CONSTRAINT "ReceiptLine_receiptId_fkey" FOREIGN KEY ("receiptId") REFERENCES "Receipt" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ReceiptLine_supplyId_fkey" FOREIGN KEY ("supplyId") REFERENCES "Supply" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ReceiptLine_purchaseLineId_fkey" FOREIGN KEY ("purchaseLineId") REFERENCES "PurchaseLine" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ClosedSpan" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "fromDay" TEXT NOT NULL,
    "toDay" TEXT NOT NULL,
    "words" TEXT NOT NULL
);

-- CreateTable
CREATE TABLE "WeeklyCheck" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "day" TEXT NOT NULL,
    "saidAt" TEXT NOT NULL,
    "finding" TEXT NOT NULL
);

-- CreateTable
CREATE TABLE "WeeklyCheckRow" (
    "checkId" TEXT NOT NULL,
    "supplyId" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "onHand" BIGINT,
    "onOrder" BIGINT NOT NULL,
    "usePerWeek" BIGINT,
    "method" TEXT NOT NULL,
    "reorderPoint" BIGINT,
    "runOutDate" TEXT,
    "orderByDate" TEXT,
    "offerId" TEXT,
    "suggestedPacks" INTEGER,
    "action" TEXT NOT NULL,
    "sentence" TEXT NOT NULL,

    PRIMARY KEY ("checkId", "supplyId"),
    CONSTRAINT "WeeklyCheckRow_checkId_fkey" FOREIGN KEY ("checkId") REFERENCES "WeeklyCheck" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "WeeklyCheckRow_supplyId_fkey" FOREIGN KEY ("supplyId") REFERENCES "Supply" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ImportMapping" (
    "headerHash" TEXT NOT NULL,
    "column" TEXT NOT NULL,
    "field" TEXT NOT NULL,

    PRIMARY KEY ("headerHash", "column")
);

-- CreateTable
CREATE TABLE "ImportValue" (
    "kind" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "target" TEXT NOT NULL,

    PRIMARY KEY ("kind", "text")
);

-- CreateTable
CREATE TABLE "ImportRun" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "source" TEXT NOT NULL,
    "fileName" TEXT NOT NULL,
    "fileHash" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "startedAt" TEXT NOT NULL,
    "finishedAt" TEXT,
    "rowsRead" INTEGER NOT NULL DEFAULT 0,
    "newParcels" INTEGER NOT NULL DEFAULT 0,
    "sameParcels" INTEGER NOT NULL DEFAULT 0,
    "changedParcels" INTEGER NOT NULL DEFAULT 0,
    "problem" TEXT
);

-- CreateTable
CREATE TABLE "StagedRow" (
    "runId" TEXT NOT NULL,
    "line" INTEGER NOT NULL,
    "parcelKey" TEXT NOT NULL,
    "packedOn" TEXT NOT NULL,
    "orderRef" TEXT,
    "itemTypeId" TEXT NOT NULL,
    "pieces" INTEGER NOT NULL,
    "zoneId" TEXT,
    "style" TEXT,
    "cartonId" TEXT,
    "scaleMg" INTEGER,
    "scaleTyped" TEXT,
    "postageMinor" INTEGER,
    "unusual" BOOLEAN NOT NULL DEFAULT false,

    PRIMARY KEY ("runId", "line"),
    CONSTRAINT "StagedRow_runId_fkey" FOREIGN KEY ("runId") REFERENCES "ImportRun" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "StagedParcel" (
    "runId" TEXT NOT NULL,
    "parcelKey" TEXT NOT NULL,
    "fate" TEXT NOT NULL,
    "parcelId" TEXT NOT NULL,
    "bodyHash" TEXT NOT NULL,
    "packedOn" TEXT NOT NULL,
    "effectiveAt" TEXT NOT NULL,
    "style" TEXT NOT NULL,
    "zoneId" TEXT,
    "cartonId" TEXT,
    "scaleMg" INTEGER,
    "scaleTyped" TEXT,
    "postageMinor" INTEGER,
    "unusual" BOOLEAN NOT NULL,
    "orderRef" TEXT,
    "leadingItemTypeId" TEXT NOT NULL,
    "pieces" INTEGER NOT NULL,

    PRIMARY KEY ("runId", "parcelKey"),
    CONSTRAINT "StagedParcel_runId_fkey" FOREIGN KEY ("runId") REFERENCES "ImportRun" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "StagedUse" (
    "runId" TEXT NOT NULL,
    "id" INTEGER NOT NULL,
    "parcelKey" TEXT NOT NULL,
    "supplyId" TEXT NOT NULL,
    "amount" BIGINT NOT NULL,
    "recipeStepId" TEXT,
    "typedValue" TEXT,
    "typedUnit" TEXT,

    PRIMARY KEY ("runId", "id"),
    CONSTRAINT "StagedUse_runId_fkey" FOREIGN KEY ("runId") REFERENCES "ImportRun" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateIndex
CREATE INDEX "Offer_supplyId_idx" ON "Offer"("supplyId");

-- CreateIndex
CREATE INDEX "Offer_supplierId_idx" ON "Offer"("supplierId");

-- CreateIndex
CREATE UNIQUE INDEX "Movement_reversesId_key" ON "Movement"("reversesId");

-- CreateIndex
CREATE INDEX "Movement_supplyId_effectiveAt_idx" ON "Movement"("supplyId", "effectiveAt");

-- CreateIndex
CREATE INDEX "Movement_parcelId_idx" ON "Movement"("parcelId");

-- CreateIndex
CREATE INDEX "SupplyDay_day_idx" ON "SupplyDay"("day");

-- CreateIndex
CREATE INDEX "Count_supplyId_countedAt_idx" ON "Count"("supplyId", "countedAt");

-- CreateIndex
CREATE UNIQUE INDEX "Recipe_itemTypeId_style_effectiveFrom_key" ON "Recipe"("itemTypeId", "style", "effectiveFrom");

-- CreateIndex
CREATE INDEX "RecipeStep_recipeId_idx" ON "RecipeStep"("recipeId");

-- CreateIndex
CREATE INDEX "Parcel_packedOn_idx" ON "Parcel"("packedOn");

-- CreateIndex
CREATE UNIQUE INDEX "Parcel_source_sourceRef_key" ON "Parcel"("source", "sourceRef");

-- CreateIndex
CREATE INDEX "ParcelPiece_itemTypeId_idx" ON "ParcelPiece"("itemTypeId");

-- CreateIndex
CREATE UNIQUE INDEX "BuyerOrder_reference_key" ON "BuyerOrder"("reference");

-- CreateIndex
CREATE INDEX "OrderParcel_parcelId_idx" ON "OrderParcel"("parcelId");

-- CreateIndex
CREATE INDEX "PurchaseLine_supplyId_closedOn_idx" ON "PurchaseLine"("supplyId", "closedOn");

-- CreateIndex
CREATE INDEX "ReceiptLine_supplyId_idx" ON "ReceiptLine"("supplyId");

-- CreateIndex
CREATE UNIQUE INDEX "WeeklyCheck_day_key" ON "WeeklyCheck"("day");

-- CreateIndex
CREATE INDEX "ImportRun_fileHash_idx" ON "ImportRun"("fileHash");

-- CreateIndex
CREATE INDEX "StagedRow_runId_parcelKey_line_idx" ON "StagedRow"("runId", "parcelKey", "line");

-- CreateIndex
CREATE INDEX "StagedUse_runId_parcelKey_idx" ON "StagedUse"("runId", "parcelKey");

