import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { cardFileExample } from "#app/postage/card-file-example.ts";

it("the example of a file of cards is the same on the screen and in README.md", () => {
  const readme = readFileSync("README.md", "utf8");
  expect(readme).toContain(`\`\`\`\n${cardFileExample(["Near", "Far"], "USD")}\n\`\`\``);
});
