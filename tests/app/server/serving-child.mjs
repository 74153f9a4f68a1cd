// A server of its own process, to be killed: prints its port once it answers.
import { serve } from "../../../app/server/serve.mjs";

// A test that is stopped takes its server with it.
process.once("disconnect", () => process.exit(1));
process.channel?.unref();

const { port } = await serve({ folder: process.cwd(), port: 3900, exactly: false });
process.stdout.write(`port ${port}\n`);
