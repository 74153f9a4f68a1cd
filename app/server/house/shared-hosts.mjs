/** Where the command that starts the program says under which names the house reaches it. */
const SHARED_AS = "WADDING_SHARED_AS";

/** @returns {string[]} "192.168.1.5:3000", in the system's order; none where the program is not shared */
export function sharedHosts() {
  return (process.env[SHARED_AS] ?? "").split(" ").filter((host) => host !== "");
}

/** @param {readonly string[]} hosts */
export function nameSharedHosts(hosts) {
  process.env[SHARED_AS] = hosts.join(" ");
}
