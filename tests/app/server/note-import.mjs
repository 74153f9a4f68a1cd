// Loaded before an import's own process begins: notes its run, phase and number, so that a test can kill it,
// and that it ended by itself.
import { appendFileSync } from "node:fs";

const [, script = "", , run, , phase] = process.argv;
const notes = process.env.WADDING_TEST_IMPORTS;
if (script.endsWith("run-import.ts") && notes !== undefined) {
  appendFileSync(notes, `${run} ${phase} ${process.pid}\n`);
  process.once("exit", (code) => appendFileSync(notes, `${run} ${phase} ended ${code}\n`));
}
