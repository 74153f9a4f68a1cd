import type { TestSpecification } from "vitest/node";
import { BaseSequencer } from "vitest/node";

/** Files that take a minute or more: begun last, one of them would keep one worker busy while the other is idle. */
const LONG = /\/kill[^/]*\.test\.ts$/;

/** Vitest's usual order, which knows nothing on a fresh machine, after the few files that take longest. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const usual = await super.sort(files);
    const isLong = (file: TestSpecification) => LONG.test(file.moduleId);
    return [...usual.filter(isLong), ...usual.filter((file) => !isLong(file))];
  }
}
