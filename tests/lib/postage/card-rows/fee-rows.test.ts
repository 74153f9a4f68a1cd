import { describe, expect, it } from "vitest";
import { feeFromRows, feeRows } from "#lib/postage/card-rows/fee-rows";
import type { AmountRow } from "#lib/postage/card-rows/grouped-rows";
import type { RateFee } from "#lib/postage/rate-fee";
import { day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";
import { exact, typed } from "../rate-card-fixture";
import { notingReader, saidPart } from "./row-reader-fixture";

const amount = (value: string, ...cells: readonly string[]): AmountRow => ({
  line: 9,
  value,
  cells,
  isAnyWeight: value === "",
});
function read(
  values: Readonly<Record<string, string>>,
  amounts: readonly AmountRow[],
  onCard = [true, true],
) {
  const { reader, noted } = notingReader();
  const fee = feeFromRows({ ...saidPart(values), amounts: [...amounts] }, onCard, reader);
  return { fee, noted };
}

describe("a fee as rows", () => {
  it("says name, days, condition and the amounts under the zones that pay them", () => {
    const fee: RateFee = {
      name: "Long",
      validFrom: day("2026-10-04"),
      validTo: day("2027-01-17"),
      when: { kind: "side", which: "longest", over: typed("22", "in"), upTo: typed("30", "in") },
      groups: [
        { zones: ["Far"], rows: [{ upTo: typed("3", "lb"), minor: minorUnits(40) }] },
        { zones: ["Near"], rows: [{ upTo: null, minor: minorUnits(90) }] },
      ],
    };
    expect(feeRows(fee, ["Near", "Far"], ["Near", "Far"], 2)).toEqual([
      ["fee", "name", "Long"],
      ["fee", "from", "2026-10-04"],
      ["fee", "to", "2027-01-17"],
      ["fee", "longest side over", "22 in"],
      ["fee", "but not over", "30 in"],
      ["fee", "up to", "3 lb", "", "0.40"],
      ["fee", "any weight", "", "0.90", ""],
    ]);
  });

  it("is paid by all zones of the card where all have the same amounts", () => {
    const same = read({ name: "Long" }, [amount("", "4.00", "4.00")]);
    expect([same.fee.groups.map(({ zones }) => zones), same.noted]).toEqual([[null], []]);
    const one = read({ name: "Long" }, [amount("", "4.00", "")], [true, false]);
    expect([one.fee.groups.map(({ zones }) => zones), one.noted]).toEqual([[null], []]);
  });

  it("is in groups where zones pay differently, each with its own rows", () => {
    const { fee } = read({ name: "Season" }, [amount("3 lb", "0.40", "0.50"), amount("", "0.95", "")]);
    expect(fee.groups.map(({ zones, rows }) => [zones, rows.map(({ minor }) => minor)])).toEqual([
      [["Near"], [40, 95]],
      [["Far"], [50]],
    ]);
  });

  it("falls over a volume in any cube of length", () => {
    const { fee } = read({ name: "Large", "volume over": "56,000 cm³" }, [amount("", "1", "1")]);
    expect(fee.when).toEqual({ kind: "volume", over: exact("56000"), unit: "cm" });
  });

  it("notes weights, amounts and conditions that can't be read", () => {
    expect(read({ name: "Long" }, [amount("heavy", "1", "1")]).noted[0]).toContain(
      "9: “heavy” is no weight.",
    );
    expect(read({ name: "Long" }, [amount("", "much", "1")]).noted[0]).toContain(
      "9: “much” for Near is no amount.",
    );
    expect(read({ name: "Long" }, [amount("", "", "1")], [true, false]).noted[0]).toContain(
      "the card has no prices for Far",
    );
    expect(read({ name: "Long", "second side over": "2" }, [amount("", "1", "1")]).noted).toHaveLength(1);
  });
});
