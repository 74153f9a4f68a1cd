import type { Metadata } from "next";
import { FollowsRecords } from "../../_parts/follows-records";
import { houseDevice } from "../../_parts/house-device";
import { Page } from "../../_parts/page";
import { RecordForm } from "../../_parts/record-form";
import { shopNow } from "../../_parts/shop-now";
import { readHouse } from "../../server/house/house-file.mjs";
import { sharedHosts } from "../../server/house/shared-hosts.mjs";
import { DeviceList } from "./_parts/device-list";
import { NotShared } from "./_parts/not-shared";
import { PairingCode } from "./_parts/pairing-code";
import { pairDevice } from "./actions";
import { devicesFile } from "./devices-file";
import { devicesFinding } from "./devices-finding";

export const metadata: Metadata = { title: "Other devices" };

/** Which phones and tablets of the house reach this shop, and how another one is let in. */
export default async function DevicesPage() {
  const { shop, now, version } = await shopNow();
  const { devices, pairing } = readHouse(devicesFile());
  const hosts = sharedHosts();
  const pairedAs = await houseDevice();
  const open = pairing !== null && Date.parse(pairing.until) > Date.parse(now) ? pairing : null;
  return (
    <Page
      width="narrow"
      finding={devicesFinding(devices.length, hosts.length > 0)}
      aside="What goes between them and this computer is not encrypted: pair only in a network that you trust, and send away what you lost."
    >
      <FollowsRecords version={version} />
      {hosts.length === 0 ? <NotShared /> : null}
      {pairedAs === null ? null : (
        <p>
          This is “{pairedAs}”. Devices are paired and sent away on the computer itself, on which wadding
          runs.
        </p>
      )}
      {pairedAs === null && hosts.length > 0 ? (
        <>
          {open === null ? null : (
            <PairingCode pairing={open} hosts={hosts} now={Date.parse(now)} timeZone={shop.timeZone} />
          )}
          <RecordForm
            action={pairDevice}
            label="Pair a device"
            fields={[]}
            submit={open === null ? "Pair a device" : "Make another code"}
            tone={open === null ? "primary" : "plain"}
          />
        </>
      ) : null}
      <DeviceList devices={devices} timeZone={shop.timeZone} canChange={pairedAs === null} />
    </Page>
  );
}
