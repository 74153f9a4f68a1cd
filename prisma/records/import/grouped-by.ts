/**
 * Groups values by a key, groups and values in their order.
 *
 * @example groupedBy(["ant", "ape", "bee"], (word) => word.slice(0, 1)) // Map { a => [ant, ape], b => [bee] }
 */
export function groupedBy<T>(values: readonly T[], keyOf: (value: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const value of values) {
    const key = keyOf(value);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [value]);
    else group.push(value);
  }
  return groups;
}
