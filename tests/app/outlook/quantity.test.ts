import { describe, expect, it } from "vitest";
import {
  bookedQuantity,
  figure,
  quantity,
  quantityRange,
  roundedEstimate,
  unitTitle,
} from "#app/outlook/quantity.ts";

describe("figures of estimates", () => {
  it("are in tens from 1,000, whole from 20 and to one decimal below", () => {
    expect([1912, 999.6, 685.2, 20.4, 19.96, 7.25, 0, 0.043].map(figure)).toEqual([
      "1,910",
      "1,000",
      "685",
      "20",
      "20",
      "7.3",
      "0",
      "0.04",
    ]);
    expect(roundedEstimate(1215)).toBe(1220);
  });

  it("carry the unit in the number that is shown", () => {
    expect(quantity(685.2, "sheet")).toBe("685 sheets");
    expect(quantity(0.97, "sheet")).toBe("1 sheet");
    expect(quantity(1.04, "parcel")).toBe("1 parcel");
    expect(quantity(1.06, "parcel")).toBe("1.1 parcels");
    expect(quantity(9, "each")).toBe("9");
  });

  it("name the unit of a range once, and one figure where the ends are shown alike", () => {
    expect(quantityRange(1912, 2297, "sheet")).toBe("1,910 to 2,300 sheets");
    expect(quantityRange(4, 4.04, "piece")).toBe("4 pieces");
  });

  it("leave what was booked as it was", () => {
    expect(bookedQuantity(1912, "sheet")).toBe("1,912 sheets");
    expect(bookedQuantity(7.333, "foot")).toBe("7.33 ft");
  });

  it("name an axis even where the unit has no word", () => {
    expect([unitTitle("each"), unitTitle("parcel"), unitTitle("square-foot")]).toEqual([
      "number",
      "parcels",
      "sq ft",
    ]);
  });
});
