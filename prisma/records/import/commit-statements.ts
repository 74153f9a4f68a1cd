/** Staged parcels of the part of a run that is booked now: keys after one, up to and with another. */
const PART = `s."runId" = :runId AND s."parcelKey" > :after AND s."parcelKey" <= :until`;

/** Those of them that are written. */
const WRITTEN = `${PART} AND s."fate" IN ('new', 'changed')`;

/** The last key of the next part: `size` parcels that are still to be written. */
export const PART_END = `
  SELECT MAX("parcelKey") AS "until" FROM (SELECT "parcelKey" FROM "StagedParcel"
    WHERE "runId" = :runId AND "parcelKey" > :after AND "fate" IN ('new', 'changed') ORDER BY "parcelKey" LIMIT :size)`;

/** Parcels put right or taken in by someone else since the first part was booked: they stay as they are. */
export const KEEP_CHANGED_SINCE = `
  UPDATE "StagedParcel" AS s SET "fate" = 'kept' WHERE ${WRITTEN} AND EXISTS (SELECT 1 FROM "Parcel" p
    WHERE p."source" = :source AND p."sourceRef" = s."parcelKey"
      AND (s."fate" = 'new' OR p."voidedAt" IS NOT NULL OR p."bodyHash" NOT LIKE 'import:%'))`;

/** What is booked is not booked again when a stopped commit goes on. */
export const BOOKED = `UPDATE "StagedParcel" AS s SET "fate" = 'booked' WHERE ${WRITTEN}`;

/** What must be true again at the moment of the commit, in case parcels changed since the preview. */
export const STALE_FATES = `
  SELECT COUNT(*) AS "stale" FROM "StagedParcel" s LEFT JOIN "Parcel" p ON p."source" = :source AND p."sourceRef" = s."parcelKey"
  WHERE s."runId" = :runId AND s."fate" <> CASE
    WHEN p."id" IS NULL THEN 'new'
    WHEN p."voidedAt" IS NOT NULL OR p."bodyHash" NOT LIKE 'import:%' THEN 'kept'
    WHEN p."bodyHash" = s."bodyHash" THEN 'same'
    ELSE 'changed' END`;

/** New entries that the seller said yes to, named as in the file. */
export const NEW_ENTRIES = [
  `INSERT INTO "ItemType" ("id", "name", "position")
   SELECT DISTINCT r."itemTypeId", COALESCE((SELECT MIN(v."text") FROM "ImportValue" v WHERE v."kind" = 'item-type'
     AND v."target" = r."itemTypeId"), r."itemTypeId"), (SELECT COALESCE(MAX("position"), 0) + 1 FROM "ItemType")
   FROM "StagedRow" r WHERE r."runId" = :runId AND r."itemTypeId" NOT IN (SELECT "id" FROM "ItemType")`,
  `INSERT INTO "Zone" ("id", "name", "position")
   SELECT DISTINCT r."zoneId", COALESCE((SELECT MIN(v."text") FROM "ImportValue" v WHERE v."kind" = 'zone'
     AND v."target" = r."zoneId"), r."zoneId"), (SELECT COALESCE(MAX("position"), 0) + 1 FROM "Zone")
   FROM "StagedRow" r WHERE r."runId" = :runId AND r."zoneId" IS NOT NULL AND r."zoneId" NOT IN (SELECT "id" FROM "Zone")`,
  `INSERT INTO "Supply" ("id", "name", "kind", "useUnit", "position")
   SELECT DISTINCT r."cartonId", COALESCE((SELECT MIN(v."text") FROM "ImportValue" v WHERE v."kind" = 'carton'
     AND v."target" = r."cartonId"), r."cartonId"), 'carton', 'each', (SELECT COALESCE(MAX("position"), 0) + 1 FROM "Supply")
   FROM "StagedRow" r WHERE r."runId" = :runId AND r."cartonId" IS NOT NULL AND r."cartonId" NOT IN (SELECT "id" FROM "Supply")`,
];

const PARCEL_DAY = (sign: 1 | -1, fates: string) => `
  INSERT INTO "ParcelDay" ("day", "itemTypeId", "style", "cartonId", "zoneId", "unusual", "parcels", "pieces")
  SELECT "packedOn", "itemTypeId", "style", "cartonId", "zoneId", "unusual", ${sign} * SUM("place" = 1), ${sign} * SUM("pieces")
  FROM (
    SELECT p."packedOn", e."itemTypeId", p."style", COALESCE(c."supplyId", '') AS "cartonId",
      COALESCE(p."zoneId", '') AS "zoneId", p."unusual", e."pieces",
      ROW_NUMBER() OVER (PARTITION BY p."id" ORDER BY e."pieces" DESC, e."itemTypeId") AS "place"
    FROM "StagedParcel" s JOIN "Parcel" p ON p."id" = s."parcelId" JOIN "ParcelPiece" e ON e."parcelId" = p."id"
    LEFT JOIN "ParcelCarton" c ON c."parcelId" = p."id" AND c."position" = 0
    WHERE ${PART} AND s."fate" IN (${fates}))
  GROUP BY 1, 2, 3, 4, 5, 6
  ON CONFLICT ("day", "itemTypeId", "style", "cartonId", "zoneId", "unusual") DO UPDATE SET
    "parcels" = "ParcelDay"."parcels" + excluded."parcels", "pieces" = "ParcelDay"."pieces" + excluded."pieces"`;

const CHANGED_IDS = `(SELECT s."parcelId" FROM "StagedParcel" s WHERE ${PART} AND s."fate" = 'changed')`;

/**
 * Takes the parcels that changed out of the roll-up, reverses their use and drops their old parts. CROSS JOIN and
 * the plus hold SQLite to the parcels' own lines: it takes the index over what is reversed for a short one, and would
 * walk the ledger once for each parcel.
 */
export const TAKE_BACK = [
  PARCEL_DAY(-1, "'changed'"),
  `INSERT INTO "Movement" ("supplyId", "amount", "value", "cause", "unusual", "effectiveAt", "effectiveDay", "recordedAt",
     "recordedBy", "words", "reversesId", "parcelId")
   SELECT m."supplyId", -m."amount", -m."value", m."cause", m."unusual", m."effectiveAt", m."effectiveDay", :now,
     :device, 'changed by an import', m."id", m."parcelId"
   FROM "StagedParcel" s CROSS JOIN "Movement" m ON m."parcelId" = s."parcelId"
   WHERE ${PART} AND s."fate" = 'changed' AND m."cause" = 'packed' AND +m."reversesId" IS NULL
     AND NOT EXISTS (SELECT 1 FROM "Movement" r WHERE r."reversesId" = m."id")
   ORDER BY m."id"`,
  `DELETE FROM "ParcelPiece" WHERE "parcelId" IN ${CHANGED_IDS}`,
  `DELETE FROM "ParcelCarton" WHERE "parcelId" IN ${CHANGED_IDS}`,
  `DELETE FROM "OrderParcel" WHERE "parcelId" IN ${CHANGED_IDS}`,
];

/** Writes the parcels with their pieces, cartons and orders. */
export const PARCELS = [
  `UPDATE "Parcel" SET "packedOn" = s."packedOn", "effectiveAt" = s."effectiveAt", "style" = s."style", "zoneId" = s."zoneId",
     "scaleMg" = s."scaleMg", "scaleTyped" = s."scaleTyped", "postageMinor" = s."postageMinor", "unusual" = s."unusual",
     "bodyHash" = s."bodyHash", "revision" = "revision" + 1
   FROM "StagedParcel" s WHERE ${PART} AND s."fate" = 'changed' AND s."parcelId" = "Parcel"."id"`,
  `INSERT INTO "Parcel" ("id", "packedOn", "effectiveAt", "recordedAt", "recordedBy", "style", "zoneId", "scaleMg",
     "scaleTyped", "postageMinor", "unusual", "bodyHash", "source", "sourceRef")
   SELECT s."parcelId", s."packedOn", s."effectiveAt", :now, :device, s."style", s."zoneId", s."scaleMg", s."scaleTyped",
     s."postageMinor", s."unusual", s."bodyHash", :source, s."parcelKey"
   FROM "StagedParcel" s WHERE ${PART} AND s."fate" = 'new'`,
  `INSERT INTO "ParcelPiece" ("parcelId", "itemTypeId", "pieces", "recipeId")
   SELECT s."parcelId", r."itemTypeId", SUM(r."pieces"), COALESCE(
     (SELECT c."id" FROM "Recipe" c WHERE c."itemTypeId" = r."itemTypeId" AND c."style" = s."style"
        AND c."effectiveFrom" <= s."packedOn" ORDER BY c."effectiveFrom" DESC LIMIT 1),
     (SELECT c."id" FROM "Recipe" c WHERE c."itemTypeId" = r."itemTypeId" AND c."style" = s."style"
        ORDER BY c."effectiveFrom" LIMIT 1))
   FROM "StagedParcel" s JOIN "StagedRow" r ON r."runId" = s."runId" AND r."parcelKey" = s."parcelKey"
   WHERE ${WRITTEN} GROUP BY s."parcelId", r."itemTypeId"`,
  `INSERT INTO "ParcelCarton" ("parcelId", "position", "supplyId")
   SELECT s."parcelId", 0, s."cartonId" FROM "StagedParcel" s WHERE ${WRITTEN} AND s."cartonId" IS NOT NULL`,
  `INSERT INTO "BuyerOrder" ("id", "reference")
   SELECT DISTINCT 'order-' || s."orderRef", s."orderRef" FROM "StagedParcel" s
   WHERE ${WRITTEN} AND s."orderRef" IS NOT NULL ON CONFLICT ("reference") DO NOTHING`,
  `INSERT INTO "OrderParcel" ("orderId", "parcelId", "share")
   SELECT o."id", s."parcelId", :wholeShare FROM "StagedParcel" s JOIN "BuyerOrder" o ON o."reference" = s."orderRef"
   WHERE ${WRITTEN}`,
  PARCEL_DAY(1, "'new', 'changed'"),
];

/** The use of the parcels: at the supply's cost, or for a changed parcel at the cost that it had before. */
export const USE = `
  INSERT INTO "Movement" ("supplyId", "amount", "value", "cause", "unusual", "effectiveAt", "effectiveDay", "recordedAt",
    "recordedBy", "typedValue", "typedUnit", "words", "parcelId", "recipeStepId")
  SELECT u."supplyId", -u."amount", CASE s."fate" WHEN 'new' THEN stock_value(-u."amount", k."costValue", k."costAmount")
    ELSE COALESCE(
      (SELECT stock_value(-u."amount", -m."value", -m."amount") FROM "Movement" m WHERE m."parcelId" = s."parcelId"
         AND m."supplyId" = u."supplyId" AND m."cause" = 'packed' AND m."amount" < 0 AND m."value" IS NOT NULL
         AND m."id" <= :before ORDER BY m."id" DESC LIMIT 1),
      stock_value(-u."amount", k."costValue", k."costAmount")) END,
    'packed', s."unusual", s."effectiveAt", s."packedOn", :now, :device, u."typedValue", u."typedUnit", t."words",
    s."parcelId", u."recipeStepId"
  FROM "StagedParcel" s CROSS JOIN "StagedUse" u ON u."runId" = s."runId" AND u."parcelKey" = s."parcelKey"
  LEFT JOIN "SupplyStock" k ON k."supplyId" = u."supplyId" LEFT JOIN "RecipeStep" t ON t."id" = u."recipeStepId"
  WHERE ${WRITTEN} ORDER BY u."id"`;

/**
 * One line per supply and first later count: that count already saw the use, so today's stock stays. NOT INDEXED: only
 * the newest lines are read, by their ids.
 */
export const BALANCING = `
  INSERT INTO "Movement" ("supplyId", "amount", "value", "cause", "unusual", "effectiveAt", "effectiveDay", "recordedAt",
    "recordedBy", "words", "countId")
  SELECT m."supplyId", -SUM(m."amount"), -SUM(m."value"),
    CASE WHEN EXISTS (SELECT 1 FROM "Count" e WHERE e."supplyId" = m."supplyId" AND e."countedAt" < c."countedAt")
      THEN 'count-difference' ELSE 'opening' END,
    m."unusual", c."countedAt", c."countedDay", :now, :device, 'already seen by this count', c."id"
  FROM "Movement" m NOT INDEXED JOIN "Count" c ON c."id" = (SELECT f."id" FROM "Count" f WHERE f."supplyId" = m."supplyId"
    AND f."countedAt" > m."effectiveAt" ORDER BY f."countedAt" LIMIT 1)
  WHERE m."id" > :before GROUP BY m."supplyId", c."id", m."unusual" HAVING SUM(m."amount") <> 0 OR SUM(m."value") <> 0`;

/**
 * Brings on hand and the day roll-up in step with the movements appended since; NOT INDEXED as above. A file brings
 * parcels of the past, so no kept forecast holds.
 */
export const ROLL_UPS = [
  `INSERT INTO "SupplyStock" ("supplyId", "amount", "value")
   SELECT "supplyId", SUM("amount"), SUM(COALESCE("value", 0)) FROM "Movement" NOT INDEXED WHERE "id" > :before GROUP BY "supplyId"
   ON CONFLICT ("supplyId") DO UPDATE SET
     "amount" = "SupplyStock"."amount" + excluded."amount", "value" = "SupplyStock"."value" + excluded."value"`,
  `INSERT INTO "SupplyDay" ("supplyId", "day", "cause", "unusual", "amount", "value")
   SELECT "supplyId", "effectiveDay", "cause", "unusual", SUM("amount"), SUM(COALESCE("value", 0))
   FROM "Movement" NOT INDEXED WHERE "id" > :before GROUP BY "supplyId", "effectiveDay", "cause", "unusual"
   ON CONFLICT ("supplyId", "day", "cause", "unusual") DO UPDATE SET
     "amount" = "SupplyDay"."amount" + excluded."amount", "value" = "SupplyDay"."value" + excluded."value"`,
  `UPDATE "Forecast" SET "stale" = 1 WHERE NOT "stale"`,
];
