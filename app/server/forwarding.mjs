/**
 * Nothing stands in front of this server, so what claims to be forwarded is not believed.
 *
 * @param {import("node:http").IncomingHttpHeaders} headers changed in place
 */
export function dropForwarding(headers) {
  for (const name of Object.keys(headers)) {
    if (name === "forwarded" || name.startsWith("x-forwarded-")) delete headers[name];
  }
}
