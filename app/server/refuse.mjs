/**
 * Turns a request away with words; nothing of the program is reached.
 *
 * @param {import("node:http").ServerResponse} response
 * @param {import("./request-refusal.mjs").Refusal} refusal
 */
export function refuse(response, { status, words }) {
  response.writeHead(status, { "content-type": "text/plain; charset=utf-8", connection: "close" });
  response.end(`${words}\n`);
}
