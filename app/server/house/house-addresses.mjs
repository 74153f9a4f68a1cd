import { BlockList } from "node:net";
import { networkInterfaces } from "node:os";

/**
 * Blocks that no router passes on to the internet, as the IANA IPv4 Special-Purpose Address Registry lists them
 * (RFC 6890: not globally reachable), without loopback.
 */
const KEPT_INSIDE = /** @type {const} */ ([
  ["10.0.0.0", 8],
  ["100.64.0.0", 10],
  ["169.254.0.0", 16],
  ["172.16.0.0", 12],
  ["192.0.2.0", 24],
  ["192.168.0.0", 16],
  ["198.18.0.0", 15],
  ["198.51.100.0", 24],
  ["203.0.113.0", 24],
]);

const inside = new BlockList();
for (const [network, bits] of KEPT_INSIDE) inside.addSubnet(network, bits, "ipv4");

/**
 * The addresses under which other devices of the house can reach this machine. One that the internet can reach is never
 * among them: what is sent there is not encrypted.
 *
 * @param {ReturnType<typeof networkInterfaces>} [interfaces] as the system tells them
 * @returns {string[]} IPv4 addresses, in the system's order
 */
export function houseAddresses(interfaces = networkInterfaces()) {
  return Object.values(interfaces)
    .flatMap((addresses) => addresses ?? [])
    .filter(
      ({ family, internal, address }) => family === "IPv4" && !internal && inside.check(address, "ipv4"),
    )
    .map(({ address }) => address);
}
