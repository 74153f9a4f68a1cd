import type { CheckRow } from "#lib/replenishment/weekly-check";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";

/** A row of an invented supply that must be ordered today, changed as the test wants. */
export function checkRow(changes: Partial<CheckRow> = {}): CheckRow {
  return {
    supplyId: "bubble",
    supply: "Small bubble",
    unit: "square-foot",
    onHand: amountOfUnits(61),
    onOrder: amountOfUnits(0),
    countedOn: day("2026-11-20"),
    position: amountOfUnits(61),
    bookError: amountOfUnits(2),
    usePerWeek: amountOfUnits(23),
    method: "Average of the last 4 weeks",
    weeks: [],
    protectionDays: 16,
    leadTimeDays: 9,
    expectedUse: amountOfUnits(53),
    errorDeviation: amountOfUnits(6),
    safetyStock: amountOfUnits(10),
    reorderPoint: amountOfUnits(63),
    daysOfCover: 18,
    oddsToday: 0.02,
    oddsNextCheck: 0.08,
    carefulRunOutDate: day("2026-12-09"),
    runOutDate: day("2026-12-16"),
    shortFrom: null,
    arrivalDate: day("2026-12-04"),
    arrivals: [],
    orderByDate: day("2026-11-25"),
    offerId: "roll",
    suggestedPacks: 1,
    packsByOffer: [],
    action: "order-today",
    guess: null,
    sentence: "Order today: lasts until 9 Dec, an order placed today comes 4 Dec.",
    explanation: [],
    ...changes,
  };
}
