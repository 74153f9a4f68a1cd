import { parseArgs } from "node:util";
import { type Day, isDay } from "#lib/units/day";

/** What the check is asked to do, or what is wrong with the arguments. */
export type CheckArguments =
  | {
      readonly kind: "check";
      /** Null: today in the shop's time zone. */
      readonly today: Day | null;
      readonly json: boolean;
      /** Files to check instead of the shop's own database. */
      readonly files: { readonly parcels: string; readonly shop: string } | null;
    }
  | { readonly kind: "help" }
  | { readonly kind: "wrong"; readonly message: string };

/**
 * Reads the arguments of the supply check.
 *
 * @param args - the arguments after the command's name
 * @returns what to do, or a message for a person
 * @example checkArguments(["--today", "2026-11-25"]); // { kind: "check", today: "2026-11-25", … }
 */
export function checkArguments(args: readonly string[]): CheckArguments {
  const read = parsed(args);
  if (read.kind === "wrong") return read;
  const { today = null, json = false, help = false, import: parcels, shop } = read.values;
  if (help) return { kind: "help" };
  if (today !== null && !isDay(today)) {
    return { kind: "wrong", message: `--today needs a day such as 2026-11-25, got ${today}` };
  }
  if (parcels === undefined && shop === undefined) return { kind: "check", today, json, files: null };
  if (parcels === undefined || shop === undefined) {
    return {
      kind: "wrong",
      message: "--import PARCELS.csv and --shop SHOP.json go together: give both or neither",
    };
  }
  return { kind: "check", today, json, files: { parcels, shop } };
}

type Values = {
  readonly today?: string | undefined;
  readonly json?: boolean | undefined;
  readonly help?: boolean | undefined;
  readonly import?: string | undefined;
  readonly shop?: string | undefined;
};

function parsed(
  args: readonly string[],
): { kind: "values"; values: Values } | { kind: "wrong"; message: string } {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: {
        today: { type: "string" },
        json: { type: "boolean" },
        help: { type: "boolean", short: "h" },
        import: { type: "string" },
        shop: { type: "string" },
      },
    });
    return { kind: "values", values };
  } catch (error) {
    // parseArgs throws TypeError on an argument that it does not know; anything else is a bug.
    if (!(error instanceof TypeError)) throw error;
    return { kind: "wrong", message: error.message };
  }
}
