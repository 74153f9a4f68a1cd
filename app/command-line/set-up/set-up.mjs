import { generate } from "./generate.mjs";
import { install } from "./install.mjs";
import { refusedNodeVersion } from "./node-version.mjs";
import { root } from "./root.mjs";

/** What every command needs first: a Node.js that will do, the packages and the database client. */
export async function setUp() {
  const refusal = refusedNodeVersion(process.versions.node);
  if (refusal !== null) throw new Error(refusal);
  process.chdir(root);
  await install();
  await generate();
}
