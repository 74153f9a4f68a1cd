import { describe, expect, it } from "vitest";
import { closuresAsTyped, monthDayWords } from "#app/setup/supplier-days.ts";
import { supplierForm } from "#app/setup/supplier-form.ts";

const TYPED = { name: "Invented supplier", leadTimeDays: "6", orderDays: "1\r\n2\n3\n4\n5" };
const form = supplierForm(2);

function problems(typed: Record<string, string>): Record<string, string> {
  const read = form.safeParse({ ...TYPED, ...typed });
  return Object.fromEntries((read.error?.issues ?? []).map((issue) => [issue.path.join("."), issue.message]));
}

describe("supplier form", () => {
  it("reads days, cut-off, closed spans and the busy season", () => {
    const read = form.parse({
      ...TYPED,
      workingDays: "yes",
      leastOrder: "25",
      cutOff: "9:30",
      closures: "2027-08-01 to 2027-08-14\n2026-12-24 – 2027-01-02\n2027-05-01",
      peakFrom: "1 Sep",
      peakTo: "12-20",
      peakExtraDays: "4",
    });
    expect(read).toMatchObject({
      workingDays: true,
      leastOrder: 2_500,
      orderDays: "12345",
      cutOff: "09:30",
      closures: [
        { fromDay: "2026-12-24", toDay: "2027-01-02" },
        { fromDay: "2027-05-01", toDay: "2027-05-01" },
        { fromDay: "2027-08-01", toDay: "2027-08-14" },
      ],
      peakFrom: "09-01",
      peakTo: "12-20",
      peakExtraDays: 4,
    });
    expect(closuresAsTyped(read.closures ?? [])).toBe(
      "2026-12-24 to 2027-01-02\n2027-05-01\n2027-08-01 to 2027-08-14",
    );
    expect(monthDayWords("09-01")).toBe("1 Sep");
  });

  it("needs a day on which it takes orders", () => {
    expect(form.safeParse({ name: "x", leadTimeDays: "6" }).error?.issues[0]?.message).toBe(
      "Tick at least one day on which it takes orders.",
    );
    expect(problems({ orderDays: "8" })["orderDays"]).toBe("Tick days of the week only.");
  });

  it("names the line of closed days that can't be read, and days that overlap", () => {
    expect(problems({ closures: "2026-12-24 to 2027-01-02\nover Easter" })["closures"]).toContain(
      "“over Easter”",
    );
    expect(problems({ closures: "2027-01-02 to 2026-12-24" })["closures"]).toContain("the first day first");
    expect(problems({ closures: "2026-12-24 to 2027-01-02\n2027-01-02" })["closures"]).toContain("overlap");
  });

  it("wants all of the busy season or none, and a time that is one", () => {
    expect(problems({ peakFrom: "1 Sep", peakTo: "20 Dec" })).toHaveProperty(["peakExtraDays"]);
    expect(problems({ peakFrom: "31 Feb" })["peakFrom"]).toContain("can’t be read");
    expect(problems({ cutOff: "25:00" })["cutOff"]).toBe("Write a time like 14:00.");
  });
});
