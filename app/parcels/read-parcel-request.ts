import { addDays } from "#lib/units/day";
import { instantOfTime, shopDay } from "#lib/units/instant";
import { database } from "#prisma/client";
import type { ParcelBody } from "#prisma/records/parcel-body";
import { recipesOf } from "#prisma/records/recipes";
import { shopOf } from "#prisma/records/shop";
import { unitsOfSupplies } from "#prisma/records/supplies";
import { sentJson } from "../_parts/sent-json";
import { type ParcelAnswer, problemsAnswer } from "./parcel-answer";
import { parcelBody } from "./parcel-body";
import { parcelForm } from "./parcel-form";

/** The parcel in a request, or the answer that says why there is none. */
export type ParcelRequest =
  | { readonly kind: "body"; readonly body: ParcelBody }
  | { readonly kind: "answer"; readonly answer: ParcelAnswer };

/**
 * Reads a parcel sent as JSON against the shop's measures, supplies and recipes.
 * @param request as it came in
 * @param key the parcel's key where the address names it; it takes the place of the one in the body
 * @returns the parcel, or the answer to give
 */
export async function readParcelRequest(request: Request, key: string | null): Promise<ParcelRequest> {
  const sent = await sentJson(request, "A parcel");
  if (sent.kind === "unreadable") {
    const { status, message, wayOut } = sent;
    const body = { kind: "problems", problems: [{ field: "", message, wayOut }] } as const;
    return { kind: "answer", answer: { status, body } };
  }
  const form = parcelForm.safeParse(key === null ? sent.value : withKey(sent.value, key));
  if (!form.success) {
    return { kind: "answer", answer: problemsAnswer(form.error.issues.map(problemOfIssue)) };
  }
  const db = await database();
  const shop = await shopOf(db);
  if (shop === null) {
    return {
      kind: "answer",
      answer: problemsAnswer([
        {
          field: "shop",
          message: "The shop is not set up yet.",
          wayOut: "Save its name and units under Setup first.",
        },
      ]),
    };
  }
  const { lines, cartons, pieces } = form.data;
  const itemTypeIds = pieces.map((piece) => piece.itemTypeId);
  // Read only what the form leaves open: its packer waits for the answer.
  const supplies = lines === undefined ? [] : await unitsOfSupplies(db);
  const isWhole = lines !== undefined && cartons !== undefined;
  const recipes = isWhole ? [] : await recipesOf(db, { itemTypeIds });
  const read = parcelBody(form.data, {
    // A phone's clock may run ahead of the shop's: a day more never stops a packer at midnight.
    latestDay: addDays(shopDay(instantOfTime(Date.now()), shop.timeZone), 1),
    measures: shop.measures,
    minorDigits: shop.minorDigits,
    supplies,
    recipes,
  });
  return read.kind === "body" ? read : { kind: "answer", answer: problemsAnswer(read.problems) };
}

function withKey(value: unknown, id: string): unknown {
  return value !== null && typeof value === "object" && !Array.isArray(value) ? { ...value, id } : value;
}

function problemOfIssue(issue: { readonly path: readonly PropertyKey[]; readonly message: string }) {
  const field = issue.path.map(String).join(".");
  return {
    field,
    message: field === "" ? issue.message : `${field}: ${issue.message}`,
    wayOut: "Mend this field and send the parcel again.",
  };
}
