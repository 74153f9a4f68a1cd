import type { Measurement } from "./measurement";

const [area = "", format = "table"] = process.argv.slice(2);
const { measure }: { measure: () => Promise<Measurement[]> } = await import(`./bench/${area}.ts`);
const measurements = await measure();

if (format === "--json") {
  console.log(JSON.stringify(measurements));
} else {
  console.table(
    measurements.map(({ name, value, unit, target, met }) => ({
      name,
      value: `${value} ${unit}`,
      target: target === null ? "" : `at most ${target} ${unit}`,
      met: met ? "yes" : "NO",
    })),
  );
}
if (measurements.some(({ met }) => !met)) process.exitCode = 1;
