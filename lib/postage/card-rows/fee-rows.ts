import type { RowReader } from "#lib/postage/card-rows/card-row";
import { exactNumber } from "#lib/postage/card-rows/exact-number";
import type { AmountRow, FeeRows, SaidPart } from "#lib/postage/card-rows/grouped-rows";
import { plainMoney } from "#lib/postage/card-rows/plain-money";
import { saidDay, saidLength, saidValue } from "#lib/postage/card-rows/said-values";
import { volumeFromText } from "#lib/postage/card-rows/size-rule-rows";
import { massFromText } from "#lib/postage/measure-from-text";
import type { FeeCondition, FeeGroup, RateFee } from "#lib/postage/rate-fee";
import { type LengthUnit, measureWords, type TypedMass } from "#lib/postage/typed-measure";
import { parseMoney } from "#lib/units/money";

const LENGTH_UNITS: readonly LengthUnit[] = ["in", "cm", "mm"];

/**
 * A fee as rows: its name, when it falls, then its amounts under the zones that pay them.
 *
 * @param fee of a card
 * @param zones over the columns
 * @param onCard zones of the card
 * @param minorDigits of the currency
 */
export function feeRows(
  fee: RateFee,
  zones: readonly string[],
  onCard: readonly string[],
  minorDigits: number,
): string[][] {
  const { name, validFrom, validTo, when, groups } = fee;
  return [
    ["fee", "name", name],
    ...(validFrom === null ? [] : [["fee", "from", validFrom]]),
    ...(validTo === null ? [] : [["fee", "to", validTo]]),
    ...conditionRows(when),
    ...groups.flatMap((group) =>
      group.rows.map(({ upTo, minor }) => [
        "fee",
        ...(upTo === null ? ["any weight", ""] : ["up to", measureWords(upTo)]),
        ...zones.map((zone) =>
          (group.zones ?? onCard).includes(zone) ? plainMoney(minor, minorDigits) : "",
        ),
      ]),
    ),
  ];
}

function conditionRows(when: FeeCondition): string[][] {
  switch (when.kind) {
    case "always":
      return [];
    case "volume":
      return [["fee", "volume over", `${exactNumber(when.over)} ${when.unit}³`]];
    case "side":
      return [
        ["fee", `${when.which} side over`, measureWords(when.over)],
        ...(when.upTo === null ? [] : [["fee", "but not over", measureWords(when.upTo)]]),
      ];
  }
}

/**
 * Reads a fee. Zones with the same amounts are one group.
 *
 * @param rows of the fee
 * @param onCard whether the card has the zone over each column
 * @param reader measures, currency and zones
 */
export function feeFromRows(rows: FeeRows, onCard: readonly boolean[], reader: RowReader): RateFee {
  return {
    name: rows.said.get("name")?.value ?? "",
    validFrom: saidDay(rows, "from", reader),
    validTo: saidDay(rows, "to", reader),
    when: conditionFromRows(rows, reader),
    groups: groupsFromRows(rows.amounts, onCard, reader),
  };
}

function conditionFromRows(part: SaidPart, reader: RowReader): FeeCondition {
  const given = ["longest side over", "second side over", "volume over"].flatMap(
    (what) => part.said.get(what) ?? [],
  );
  if (given.length > 1) {
    reader.refuse(
      given[1]?.line ?? part.line,
      "a fee has one condition of size. Write a second fee for the other.",
    );
  }
  const upTo = saidLength(part, "but not over", reader);
  const volume = saidValue(
    part,
    "volume over",
    (text) => volumeOf(text, reader),
    "a volume like 3456 in³",
    reader,
  );
  if (volume !== null) return { kind: "volume", ...volume };
  for (const which of ["longest", "second"] as const) {
    const over = saidLength(part, `${which} side over`, reader);
    if (over !== null) return { kind: "side", which, over, upTo };
  }
  const lost = part.said.get("but not over");
  if (lost !== undefined) {
    reader.refuse(
      lost.line,
      "it says up to where the fee falls, but not over what. Add longest side over or second side over.",
    );
  }
  return { kind: "always" };
}

function volumeOf(text: string, { measures }: RowReader) {
  for (const unit of LENGTH_UNITS) {
    const over = volumeFromText(text, unit, measures);
    if (over !== null) return { over, unit };
  }
  return null;
}

type GroupRow = FeeGroup["rows"][number];

/** Zones with the same amounts are one group, in the order in which they are named. */
function groupsFromRows(
  amounts: readonly AmountRow[],
  onCard: readonly boolean[],
  reader: RowReader,
): FeeGroup[] {
  const byZone = new Map<string, GroupRow[]>();
  for (const row of amounts) {
    const upTo = amountLimit(row, reader);
    for (const [at, zone] of reader.zones.entries()) {
      const minor = minorUnder(row, at, zone, onCard, reader);
      if (minor !== null) byZone.set(zone, [...(byZone.get(zone) ?? []), { upTo, minor }]);
    }
  }
  const groups = new Map<string, { readonly zones: string[]; readonly rows: readonly GroupRow[] }>();
  for (const [zone, rows] of byZone) {
    const key = rows.map(({ upTo, minor }) => `${upTo === null ? "" : measureWords(upTo)} ${minor}`).join();
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { zones: [zone], rows });
    else group.zones.push(zone);
  }
  const all = onCard.filter((isOn) => isOn).length;
  return [...groups.values()].map(({ zones, rows }) => ({
    zones: zones.length === all ? null : zones,
    rows,
  }));
}

function amountLimit(row: AmountRow, reader: RowReader): TypedMass | null {
  if (row.cells.every((cell) => cell === "")) {
    reader.refuse(row.line, "it has no amount. Write it under each zone that pays the fee.");
  }
  if (row.isAnyWeight) return null;
  return (
    massFromText(row.value, reader.measures) ??
    reader.refuse(
      row.line,
      `“${row.value}” is no weight. Write a number with oz, lb, g or kg, or any weight in the cell before it.`,
    )
  );
}

function minorUnder(row: AmountRow, at: number, zone: string, onCard: readonly boolean[], reader: RowReader) {
  const text = row.cells[at] ?? "";
  if (text === "") return null;
  if (onCard[at] !== true) {
    return reader.refuse(
      row.line,
      `the card has no prices for ${zone}, so no fee either. Empty the cell, or add its prices.`,
    );
  }
  const money = parseMoney(text, reader.minorDigits);
  return money.kind === "money"
    ? money.minor
    : reader.refuse(
        row.line,
        `“${text}” for ${zone} is no amount. Type it like 4.60, or leave it empty where there is no fee.`,
      );
}
