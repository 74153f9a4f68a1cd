import Database from "better-sqlite3";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { addDays, type Day } from "#lib/units/day";
import { instantOfTime, shopDay } from "#lib/units/instant";
import { closeDatabase, openDatabase } from "#prisma/client";
import { migrateDatabase } from "#prisma/migrate";
import { rebuildRollUps } from "#prisma/records/roll-ups";

/** The day on which the generated shops end. */
export const GENERATED_TODAY: Day = shopDay(instantOfTime(Date.now()), "UTC");

const DAYS = 730;
const TYPES = 10;
const ZONES = 4;
const SUPPLIERS = 4;
const STEPS_PER_RECIPE = 5;
/** One carton and the steps' supplies for each item type: 60 in all. */
const SUPPLIES_PER_TYPE = STEPS_PER_RECIPE + 1;
const SUPPLIES = TYPES * SUPPLIES_PER_TYPE;
const MOST_PIECES = 3;
const OPENING = 1_000_000_000 * AMOUNT_PER_UNIT;
const FIRST_DAY = addDays(GENERATED_TODAY, -DAYS);
const OPENED = `${addDays(FIRST_DAY, -1)}T12:00:00.000Z`;

/**
 * Makes a shop of 60 supplies, 10 item types and two years of parcels that end yesterday. Nothing in it is left to
 * chance. Rows are written past the records, which would take an hour for the largest; the roll-ups are then
 * rebuilt by the records' own rules.
 *
 * @param file where the database goes
 * @param parcels how many
 */
export async function generatedShop(file: string, parcels: number): Promise<void> {
  migrateDatabase(file);
  const db = new Database(file);
  db.transaction(() => {
    insertTerms(db);
    insertParcels(db, parcels);
  })();
  db.close();
  const opened = await openDatabase(file);
  try {
    await rebuildRollUps(opened);
  } finally {
    await closeDatabase(opened);
  }
}

type Row = Readonly<Record<string, string | number | null>>;

/** A statement that inserts rows with these columns. */
function inserter(db: Database.Database, table: string, columns: readonly string[]): (row: Row) => void {
  const names = columns.map((column) => `"${column}"`).join(", ");
  const places = columns.map((column) => `@${column}`).join(", ");
  const statement = db.prepare<[Row]>(`INSERT INTO "${table}" (${names}) VALUES (${places})`);
  return (row) => {
    statement.run(row);
  };
}

function insert(db: Database.Database, table: string, rows: readonly Row[]): void {
  const [first] = rows;
  if (first === undefined) return;
  const add = inserter(db, table, Object.keys(first));
  for (const row of rows) add(row);
}

const counting = (length: number): number[] => Array.from({ length }, (_, index) => index);

function insertTerms(db: Database.Database): void {
  insert(db, "Shop", [{ id: "shop", name: "Generated shop", timeZone: "UTC", currency: "USD" }]);
  insert(
    db,
    "Zone",
    counting(ZONES).map((zone) => ({ id: `zone-${zone}`, name: `Zone ${zone}`, position: zone })),
  );
  insert(
    db,
    "Supplier",
    counting(SUPPLIERS).map((s) => ({ id: `supplier-${s}`, name: `Supplier ${s}`, leadTimeDays: 3 + s })),
  );
  const supplies = counting(SUPPLIES);
  insert(db, "Supply", supplies.map(supplyRow));
  insert(
    db,
    "SupplyStock",
    supplies.map((s) => ({ supplyId: `supply-${s}`, amount: 0, value: 0, countedAt: OPENED })),
  );
  insert(db, "Offer", supplies.map(offerRow));
  insert(db, "Count", supplies.map(countRow));
  insert(db, "Movement", supplies.map(openingRow));
  insert(
    db,
    "ItemType",
    counting(TYPES).map((type) => ({ id: `item-${type}`, name: `Item ${type}`, position: type })),
  );
  insert(db, "Recipe", counting(TYPES).map(recipeRow));
  insert(
    db,
    "RecipeStep",
    counting(TYPES).flatMap((type) => counting(STEPS_PER_RECIPE).map((step) => stepRow(type, step))),
  );
  insert(
    db,
    "RecipeCarton",
    counting(TYPES).map((type) => ({
      recipeId: `recipe-${type}`,
      upTo: MOST_PIECES,
      supplyId: cartonOf(type),
    })),
  );
}

const cartonOf = (type: number): string => `supply-${type * SUPPLIES_PER_TYPE + STEPS_PER_RECIPE}`;
const wrapOf = (type: number, step: number): string => `supply-${type * SUPPLIES_PER_TYPE + step}`;

function supplyRow(supply: number): Row {
  const isCarton = supply % SUPPLIES_PER_TYPE === STEPS_PER_RECIPE;
  return {
    id: `supply-${supply}`,
    name: `Supply ${supply}`,
    kind: isCarton ? "carton" : "paper",
    useUnit: isCarton ? "each" : "sheet",
    position: supply,
  };
}

function offerRow(supply: number): Row {
  return {
    id: `offer-${supply}`,
    supplyId: `supply-${supply}`,
    supplierId: `supplier-${supply % SUPPLIERS}`,
    pack: "bundle of 250",
    packAmount: 250 * AMOUNT_PER_UNIT,
    packTyped: "250",
    priceMinor: 2_500 + supply,
  };
}

function countRow(supply: number): Row {
  return {
    id: `count-${supply}`,
    supplyId: `supply-${supply}`,
    countedAt: OPENED,
    countedDay: OPENED.slice(0, FIRST_DAY.length),
    recordedAt: OPENED,
    recordedBy: "bench",
    amount: OPENING,
    bookAmount: 0,
    method: "number",
    typed: String(OPENING / AMOUNT_PER_UNIT),
  };
}

function openingRow(supply: number): Row {
  return {
    supplyId: `supply-${supply}`,
    amount: OPENING,
    value: 0,
    cause: "opening",
    effectiveAt: OPENED,
    effectiveDay: OPENED.slice(0, FIRST_DAY.length),
    recordedAt: OPENED,
    recordedBy: "bench",
    countId: `count-${supply}`,
  };
}

function recipeRow(type: number): Row {
  return {
    id: `recipe-${type}`,
    itemTypeId: `item-${type}`,
    style: "paper",
    effectiveFrom: FIRST_DAY,
    recordedAt: OPENED,
  };
}

function stepRow(type: number, step: number): Row {
  return {
    id: `step-${type}-${step}`,
    recipeId: `recipe-${type}`,
    position: step,
    words: `Step ${step}`,
    supplyId: wrapOf(type, step),
    amount: (step + 1) * AMOUNT_PER_UNIT,
    typedValue: String(step + 1),
    typedUnit: "sheet",
    per: step === 0 ? "parcel" : "piece",
  };
}

function insertParcels(db: Database.Database, parcels: number): void {
  const addParcel = inserter(db, "Parcel", [
    "id",
    "packedOn",
    "effectiveAt",
    "recordedAt",
    "recordedBy",
    "style",
    "zoneId",
    "bodyHash",
  ]);
  const addPiece = inserter(db, "ParcelPiece", ["parcelId", "itemTypeId", "pieces", "recipeId"]);
  const addCarton = inserter(db, "ParcelCarton", ["parcelId", "position", "supplyId"]);
  const addMovement = inserter(db, "Movement", [
    "supplyId",
    "amount",
    "value",
    "cause",
    "effectiveAt",
    "effectiveDay",
    "recordedAt",
    "recordedBy",
    "parcelId",
    "recipeStepId",
  ]);
  for (const parcel of counting(parcels)) {
    const id = `parcel-${parcel}`;
    const type = parcel % TYPES;
    const pieces = 1 + (parcel % MOST_PIECES);
    const day = addDays(FIRST_DAY, Math.floor((parcel * DAYS) / parcels));
    const at = `${day}T15:00:00.000Z`;
    const recorded = { recordedAt: at, recordedBy: "bench" };
    addParcel({
      id,
      packedOn: day,
      effectiveAt: at,
      ...recorded,
      style: "paper",
      zoneId: `zone-${parcel % ZONES}`,
      bodyHash: id,
    });
    addPiece({ parcelId: id, itemTypeId: `item-${type}`, pieces, recipeId: `recipe-${type}` });
    addCarton({ parcelId: id, position: 0, supplyId: cartonOf(type) });
    const used = {
      value: null,
      cause: "packed",
      effectiveAt: at,
      effectiveDay: day,
      ...recorded,
      parcelId: id,
    };
    for (const step of counting(STEPS_PER_RECIPE)) {
      const amount = -(step + 1) * (step === 0 ? 1 : pieces) * AMOUNT_PER_UNIT;
      addMovement({ ...used, supplyId: wrapOf(type, step), amount, recipeStepId: `step-${type}-${step}` });
    }
    addMovement({ ...used, supplyId: cartonOf(type), amount: -AMOUNT_PER_UNIT, recipeStepId: null });
  }
}
