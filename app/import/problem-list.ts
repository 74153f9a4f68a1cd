import {
  type ImportProblem,
  type ImportProblems,
  PROBLEM_LIMIT,
} from "#prisma/records/import/import-problem";

/** Collects problems: keeps the first hundred and counts the rest. */
export class ProblemList {
  readonly #problems: ImportProblem[] = [];
  #total = 0;

  /** Adds problems in the order of the file. */
  add(problems: readonly ImportProblem[]): void {
    this.#total += problems.length;
    this.#problems.push(...problems.slice(0, PROBLEM_LIMIT - this.#problems.length));
  }

  get isEmpty(): boolean {
    return this.#total === 0;
  }

  /** What was found, to keep with the run. */
  found(): ImportProblems {
    return { problems: [...this.#problems], total: this.#total };
  }
}
