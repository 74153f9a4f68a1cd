import type { NetworkInterfaceInfo } from "node:os";
import { describe, expect, it } from "vitest";
import { houseAddresses } from "../../../../app/server/house/house-addresses.mjs";

function address(text: string, { internal = false } = {}): NetworkInterfaceInfo {
  return { address: text, family: "IPv4", internal, netmask: "255.255.255.0", mac: "", cidr: null };
}

// RFC 6890 (special-purpose IP address registries): which blocks are not globally reachable.
describe("houseAddresses", () => {
  it.each(["10.1.2.3", "172.16.0.9", "172.31.255.1", "192.168.178.20", "169.254.9.9", "100.64.0.1"])(
    "shares on %s, which stays in the house",
    (text) => {
      expect(houseAddresses({ lan: [address(text)] })).toEqual([text]);
    },
  );

  it.each(["8.8.4.4", "172.32.0.1", "192.169.0.1", "100.128.0.1", "11.0.0.1"])(
    "never shares on %s, which the internet can reach",
    (text) => {
      expect(houseAddresses({ wan: [address(text)] })).toEqual([]);
    },
  );

  it("leaves out the machine's own loopback and addresses of the newer kind", () => {
    expect(
      houseAddresses({
        lo: [address("127.0.0.1", { internal: true })],
        lan: [
          { ...address("fd00::2"), family: "IPv6", scopeid: 0 } as NetworkInterfaceInfo,
          address("192.168.1.5"),
        ],
        unplugged: undefined,
      }),
    ).toEqual(["192.168.1.5"]);
  });
});
