import { parseAmount } from "#lib/units/amount-text";
import { parseSizes } from "#lib/units/length";
import { parseMass } from "#lib/units/mass";
import { parseVolume } from "#lib/units/volume";
import { SHOP_FILE_SCHEMA, type ShopFile } from "#prisma/records/shop-file-schema";

/** Something in a shop file that cannot be loaded: where, and what is wrong with it. */
export type ShopFileProblem = { readonly path: string; readonly message: string };

/** A shop file that can be loaded, or everything that is wrong with it. */
export type ShopFileReading =
  | { readonly kind: "read"; readonly file: ShopFile }
  | { readonly kind: "unreadable"; readonly problems: readonly ShopFileProblem[] };

/**
 * Reads a shop file: its shape, then every id and amount that it names.
 *
 * @param json - the parsed JSON
 * @returns the file, or every problem with the path of its field: "itemTypes[3].recipes[0].steps[1].supply"
 * @example readShopFile({}); // { kind: "unreadable", problems: [{ path: "shop", … }, …] }
 */
export function readShopFile(json: unknown): ShopFileReading {
  const shape = SHOP_FILE_SCHEMA.safeParse(json);
  if (!shape.success) {
    const problems = shape.error.issues.map((issue) => ({
      path: pathText(issue.path),
      message: issue.message,
    }));
    return { kind: "unreadable", problems };
  }
  const problems = [...textProblems(shape.data), ...referenceProblems(shape.data)];
  return problems.length === 0 ? { kind: "read", file: shape.data } : { kind: "unreadable", problems };
}

function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, part) => {
    if (typeof part === "number") return `${text}[${part}]`;
    return text === "" ? String(part) : `${text}.${String(part)}`;
  }, "");
}

function textProblems(file: ShopFile): ShopFileProblem[] {
  const { measures } = file.shop;
  const supplies = file.supplies.flatMap((supply, index) => [
    ...problemIf(supply.mass !== undefined && parseMass(supply.mass, measures).kind !== "mass", {
      path: `supplies[${index}].mass`,
      message: `cannot be read as a mass: ${supply.mass}`,
    }),
    ...problemIf(supply.sizes !== undefined && parseSizes(supply.sizes, measures).kind !== "sizes", {
      path: `supplies[${index}].sizes`,
      message: `cannot be read as sizes: ${supply.sizes}`,
    }),
  ]);
  const itemTypes = file.itemTypes.flatMap((type, index) =>
    problemIf(type.mass !== undefined && parseMass(type.mass, measures).kind !== "mass", {
      path: `itemTypes[${index}].mass`,
      message: `cannot be read as a mass: ${type.mass}`,
    }),
  );
  return [...supplies, ...itemTypes, ...roomProblems(file)];
}

function roomProblems(file: ShopFile): ShopFileProblem[] {
  const { measures, room } = file.shop;
  const rooms = [
    { path: "shop.room", room },
    ...file.offers.map((offer, index) => ({ path: `offers[${index}].room`, room: offer.room })),
  ];
  return rooms.flatMap(({ path, room: text }) =>
    problemIf(text != null && parseVolume(text, measures).kind !== "volume", {
      path,
      message: `cannot be read as a volume: ${text}`,
    }),
  );
}

function problemIf(wrong: boolean, problem: ShopFileProblem): ShopFileProblem[] {
  return wrong ? [problem] : [];
}

type Mention = {
  readonly path: string;
  readonly supply: string;
  readonly amounts: readonly (readonly [field: string, text: string])[];
};

function referenceProblems(file: ShopFile): ShopFileProblem[] {
  const units = new Map(file.supplies.map((supply) => [supply.id, supply.unit]));
  const suppliers = new Set<string | null>([null, ...file.suppliers.map((supplier) => supplier.id)]);
  const ofSuppliers = [
    ...file.offers.map((offer, index) => ({ path: `offers[${index}].supplier`, supplier: offer.supplier })),
    ...file.receipts.map((receipt, index) => ({
      path: `receipts[${index}].supplier`,
      supplier: receipt.supplier,
    })),
  ]
    .filter(({ supplier }) => !suppliers.has(supplier))
    .map(({ path, supplier }) => ({ path, message: `names no supplier of this file: ${supplier}` }));
  const ofSupplies = mentions(file).flatMap(({ path, supply, amounts }) => {
    const unit = units.get(supply);
    if (unit === undefined)
      return [{ path: `${path}.supply`, message: `names no supply of this file: ${supply}` }];
    return amounts
      .filter(([, text]) => parseAmount(text, unit, file.shop.measures).kind !== "amount")
      .map(([field, text]) => ({ path: `${path}.${field}`, message: `cannot be read in ${unit}: ${text}` }));
  });
  return [...ofSuppliers, ...ofSupplies, ...eventProblems(file)];
}

function eventProblems(file: ShopFile): ShopFileProblem[] {
  const known = new Set(file.itemTypes.map((type) => type.id));
  return file.events.flatMap((event, index) =>
    event.itemTypes.flatMap((type, t) =>
      problemIf(!known.has(type), {
        path: `events[${index}].itemTypes[${t}]`,
        message: `names no item type of this file: ${type}`,
      }),
    ),
  );
}

function mentions(file: ShopFile): Mention[] {
  const recipes = file.itemTypes.flatMap((type, t) =>
    type.recipes.map((recipe, r) => ({ recipe, path: `itemTypes[${t}].recipes[${r}]` })),
  );
  return [
    ...file.offers.map((offer, index) =>
      mention(`offers[${index}]`, offer.supply, "packAmount", offer.packAmount),
    ),
    ...file.counts.map((count, index) => mention(`counts[${index}]`, count.supply, "amount", count.amount)),
    ...file.receipts.flatMap((receipt, index) =>
      receipt.lines.map((line, l) =>
        mention(`receipts[${index}].lines[${l}]`, line.supply, "packAmount", line.packAmount),
      ),
    ),
    ...recipes.flatMap(({ recipe, path }) => [
      ...recipe.steps.map((step, s) => mention(`${path}.steps[${s}]`, step.supply, "amount", step.amount)),
      ...recipe.cartons.map((carton, c) => ({
        path: `${path}.cartons[${c}]`,
        supply: carton.supply,
        amounts: [],
      })),
    ]),
  ];
}

function mention(path: string, supply: string, field: string, text: string): Mention {
  return { path, supply, amounts: [[field, text]] };
}
