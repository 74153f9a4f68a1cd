import { command } from "./set-up/command.mjs";
import { nextBuild } from "./set-up/next-build.mjs";
import { setUp } from "./set-up/set-up.mjs";

await command(async () => {
  await setUp();
  await nextBuild();
});
