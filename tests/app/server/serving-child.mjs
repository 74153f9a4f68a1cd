// A server of its own process, to be killed: prints its port once it answers.
import { setFlagsFromString } from "node:v8";
import { serve } from "../../../app/server/serve.mjs";

// A test that is stopped takes its server with it.
process.once("disconnect", () => process.exit(1));
process.channel?.unref();

// It lives a second: making the database client's WebAssembly fast would take longer than it is used.
setFlagsFromString("--liftoff-only");

const { port } = await serve({ folder: process.cwd(), port: 3900, exactly: false });
process.stdout.write(`port ${port}\n`);
