// A server of its own process, to be killed: prints its port once it answers.
import { serve } from "../../../app/server/serve.mjs";

const { port } = await serve({ folder: process.cwd(), port: 3900, exactly: false });
process.stdout.write(`port ${port}\n`);
