import { spawn } from "node:child_process";

/**
 * Starts the program on a free port over a database, and stops it after the work.
 *
 * @param file the database
 * @param work gets the program's address
 */
export async function withServer<T>(file: string, work: (url: string) => Promise<T>): Promise<T> {
  const child = spawn(process.execPath, ["app/command-line/start.mjs", "--port", "0"], {
    stdio: ["ignore", "pipe", "inherit"],
    env: { ...process.env, WADDING_DATABASE: file },
  });
  const ended = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  try {
    return await work(await printedAddress(child.stdout, ended));
  } finally {
    child.kill("SIGTERM");
    await ended;
  }
}

async function printedAddress(output: NodeJS.ReadableStream, ended: Promise<void>): Promise<string> {
  const address = new Promise<string>((resolve) => {
    let said = "";
    output.on("data", (chunk: Buffer) => {
      said += chunk.toString();
      const url = /http:\/\/127\.0\.0\.1:\d+/.exec(said)?.[0];
      if (url !== undefined) resolve(url);
    });
  });
  const stopped = ended.then(() => {
    throw new Error("The program stopped before it served");
  });
  return Promise.race([address, stopped]);
}
