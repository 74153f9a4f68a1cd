import { parseArgs } from "node:util";
import type { Measurement } from "./measurement";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { json: { type: "boolean", default: false } },
});
const measurements: Measurement[] = [];
for (const area of positionals) {
  const { measure }: { measure: () => Promise<Measurement[]> } = await import(`./bench/${area}.ts`);
  measurements.push(...(await measure()));
}

if (values.json) {
  console.log(JSON.stringify(measurements));
} else {
  console.table(
    measurements.map(({ area, name, value, unit, target, met }) => ({
      area,
      name,
      value: `${value} ${unit}`,
      target: target === null ? "" : `at most ${target} ${unit}`,
      met: met ? "yes" : "NO",
    })),
  );
}
if (measurements.some(({ met }) => !met)) process.exitCode = 1;
