-- Planned events, the seller's own guess of parcels a week, and forecasts that are kept until their data change.
ALTER TABLE "Shop" ADD COLUMN "guessedParcels" INTEGER;

CREATE TABLE "PlannedEvent" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "fromDay" TEXT NOT NULL,
    "toDay" TEXT NOT NULL,
    "upliftPercent" INTEGER NOT NULL
);

CREATE TABLE "PlannedEventItemType" (
    "eventId" TEXT NOT NULL,
    "itemTypeId" TEXT NOT NULL,

    PRIMARY KEY ("eventId", "itemTypeId"),
    CONSTRAINT "PlannedEventItemType_eventId_fkey" FOREIGN KEY ("eventId") REFERENCES "PlannedEvent" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "PlannedEventItemType_itemTypeId_fkey" FOREIGN KEY ("itemTypeId") REFERENCES "ItemType" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

CREATE TABLE "Forecast" (
    "asOf" TEXT NOT NULL PRIMARY KEY,
    "until" TEXT NOT NULL,
    "edition" INTEGER NOT NULL,
    "madeAt" TEXT NOT NULL,
    "stale" BOOLEAN NOT NULL DEFAULT false,
    "ground" TEXT NOT NULL
);

CREATE TABLE "ForecastSubject" (
    "asOf" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "subjectId" TEXT NOT NULL,
    "coming" TEXT NOT NULL,
    "past" TEXT NOT NULL,

    PRIMARY KEY ("asOf", "kind", "subjectId"),
    CONSTRAINT "ForecastSubject_asOf_fkey" FOREIGN KEY ("asOf") REFERENCES "Forecast" ("asOf") ON DELETE CASCADE ON UPDATE CASCADE
);
