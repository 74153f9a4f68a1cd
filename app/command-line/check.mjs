import { command } from "./set-up/command.mjs";
import { CommandFailed, runPackage } from "./set-up/run.mjs";
import { setUp } from "./set-up/set-up.mjs";

/** @type {readonly { name: string, work: () => Promise<string> }[]} */
const CHECKS = [
  { name: "style", work: () => kept("@biomejs/biome/bin/biome", ["check", "."]) },
  { name: "types", work: types },
  { name: "dead code", work: () => kept("knip/bin/knip.js", ["--production"]) },
  { name: "unused packages", work: () => kept("knip/bin/knip.js", ["--dependencies"]) },
  { name: "architecture", work: () => kept("vitest/vitest.mjs", ["run", "tests/architecture.test.ts"]) },
];

await command(async () => {
  await setUp();
  const began = Date.now();
  const verdicts = await Promise.all(CHECKS.map(verdict));
  for (const { name, output } of verdicts) console.log(`── ${name}\n${output.trim()}`);
  for (const { name, passed } of verdicts) console.log(`${passed ? "passed" : "FAILED"}  ${name}`);
  console.log(`checked in ${Math.round((Date.now() - began) / 1000)} s`);
  if (verdicts.some(({ passed }) => !passed)) process.exitCode = 1;
});

/** @param {typeof CHECKS[number]} check */
async function verdict({ name, work }) {
  try {
    return { name, passed: true, output: await work() };
  } catch (error) {
    if (!(error instanceof CommandFailed)) throw error;
    return { name, passed: false, output: `${error.output}\n${error.message}` };
  }
}

/** Types of the routes come first: the compiler reads them. */
async function types() {
  const routes = await kept("next/dist/bin/next", ["typegen"]);
  return `${routes}${await kept("typescript/bin/tsc", ["--noEmit"])}`;
}

/**
 * @param {string} script
 * @param {readonly string[]} args
 */
function kept(script, args) {
  return runPackage(script, args, { output: "keep", env: { NEXT_TELEMETRY_DISABLED: "1", NO_COLOR: "1" } });
}
