import { it } from "vitest";
import { weeklyCheck } from "#lib/replenishment/weekly-check";
import { amountOfUnits } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
it("scratch", () => {
  const today = day("2026-11-25");
  const terms = { weekStartsOn: 1, reviewDays: 7, serviceLevel: 0.95, coverWeeks: 6, closed: [{fromDay: day("2026-12-24"), toDay: day("2027-01-03")}], currency: "USD", minorDigits: 2 };
  const firstDay = day("2025-06-03");
  let seed = 1;
  const rnd = () => { seed = (seed * 16807) % 2147483647; return seed / 2147483647; };
  const use = (perDay: number, from = firstDay) => { const out = []; for (let d = from; d <= today; d = addDays(d, 1)) if (rnd() < 0.7) out.push({ day: d, amount: amountOfUnits(Math.round(perDay * 2 * rnd() * 4) / 4) }); return out; };
  const offer = { offerId: "o1", supplierId: "s", supplierName: "Marram", leadTimeDays: 9, pack: "roll", packAmount: amountOfUnits(175), priceMinor: 2600, breaks: [] };
  const base = { unit: "square-foot" as const, countedOn: day("2026-10-23"), onOrder: [], countDifferences: [], firstDay, offers: [offer, { ...offer, offerId: "o2", pack: "roll 300", packAmount: amountOfUnits(300), priceMinor: 3800 }] };
  const mk = (id: string, onHand: number | null, perDay: number, more = {}) => ({ ...base, supplyId: id, name: id, onHand: onHand === null ? null : amountOfUnits(onHand), useByDay: use(perDay), ...more });
  const inputs = [mk("a", 61, 4), mk("b", 80, 4), mk("c", 174, 13, { unit: "sheet", onOrder: [{ amount: amountOfUnits(500), expectedOn: day("2026-12-01") }] }), mk("d", 100, 4), mk("e", null, 4), mk("f", 1120, 8), mk("g", -3, 4, {unit:"each"}), mk("h", 5, 1, { useByDay: [] }), mk("i", 20, 1, { useByDay: use(5, day("2026-11-12")) , offers: [] }), mk("j", 30, 13, { unit: "sheet", onOrder: [{ amount: amountOfUnits(500), expectedOn: day("2026-12-08") }] }), mk("k",3,4), mk("l",20,4,{useByDay: use(4,day("2026-11-24"))}), mk("m", 20, 4, {onOrder: [{ amount: amountOfUnits(500), expectedOn: day("2026-11-20") }]})];
  const r = weeklyCheck(inputs, terms, today);
  console.log(r.finding, r.toCount);
  for (const row of r.rows) console.log(row.supply, row.action, "|", row.sentence, "|", row.guess, row.method, row.suggestedPacks, JSON.stringify(row.packsByOffer), row.runOutDate, row.daysOfCover);
  console.log(r.rows[0]?.explanation);
  const many = Array.from({ length: 60 }, (_, i) => mk(`s${i}`, 60, 4));
  for (let i = 0; i < 30; i++) { const t = performance.now(); weeklyCheck(many, terms, today); if (i % 5 === 0) console.log("ms", performance.now() - t); }
});
