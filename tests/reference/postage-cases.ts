import { checkPublishedCases, type GivenCase, readCases } from "./published-cases";

export type { GivenCase } from "./published-cases";

type Group = "dimensionalWeightRules" | "dimensionalWeight" | "sizeLimits" | "rateStructure";

const CASES = readCases<Group>("postage-cases.json");

/** Tests every case of a group of data/postage-cases.json. */
export function checkPostageCases(
  group: Group,
  checks: readonly (readonly [pattern: RegExp, check: (given: GivenCase) => void])[],
): void {
  checkPublishedCases(group, CASES[group], checks);
}
