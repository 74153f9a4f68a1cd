/**
 * The first line: who reaches the shop besides this computer.
 *
 * @param devices paired devices
 * @param isShared whether the program serves the house at all
 * @returns one sentence
 */
export function devicesFinding(devices: number, isShared: boolean): string {
  if (!isShared) return "Only this computer reaches the shop now.";
  if (devices === 0) return "No other device is let in yet.";
  return devices === 1
    ? "One other device is let in beside this computer."
    : `${devices} other devices are let in beside this computer.`;
}
