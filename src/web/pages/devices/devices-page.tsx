import type { Device } from "#readiness";
import { mayWrite, shutOutDevice } from "#station";
import { useState } from "react";
import { useCarryOut, useStation } from "../../device/index.ts";
import {
  Button,
  ConfirmDialog,
  ErrorBox,
  Page,
  Section,
  Table,
  TextField,
  useDoing,
  type Column,
} from "../../parts/index.ts";

/** Devices that people have signed in on. A lost one is shut out here. */
export default function DevicesPage() {
  const { devices, device, me } = useStation();
  const [chosen, setChosen] = useState<Device>();
  const inUse = devices.filter(({ shutOut }) => !shutOut);
  const shut = devices.filter(({ shutOut }) => shutOut);
  const choose = mayWrite(me.role, "device-shut-out") ? setChosen : undefined;
  return (
    <Page title="Devices">
      <Table
        caption="Devices of the station"
        isCaptionHidden
        columns={columns(device, choose)}
        rows={inUse}
        rowKey={({ id }) => id}
      />
      {chosen && <ShutOut device={chosen} onClose={() => setChosen(undefined)} />}
      {shut.length > 0 && (
        <Section title="Shut out">
          <ul>
            {shut.map(({ id, name }) => (
              <li key={id}>{name}</li>
            ))}
          </ul>
        </Section>
      )}
    </Page>
  );
}

function columns(here: string, choose: ((device: Device) => void) | undefined): readonly Column<Device>[] {
  const name: Column<Device> = {
    key: "name",
    head: "Device",
    cell: (device) => (device.id === here ? `${device.name} (this one)` : device.name),
  };
  if (!choose) return [name];
  const act: Column<Device> = {
    key: "shut-out",
    isAct: true,
    head: "Lost or stolen",
    cell: (device) => (
      <Button kind="quiet" tone="grave" label={`Shut out ${device.name}`} onPress={() => choose(device)}>
        Shut out
      </Button>
    ),
  };
  return [name, act];
}

function ShutOut({ device, onClose }: { readonly device: Device; readonly onClose: () => void }) {
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [reason, setReason] = useState("");
  const shut = async () => {
    if (await doing.run(() => carryOut((at) => shutOutDevice(at, device.id, reason.trim())))) onClose();
  };
  return (
    <ConfirmDialog
      title={`Shut out ${device.name}?`}
      isOpen
      onClose={onClose}
      onConfirm={() => void shut()}
      confirm="Shut it out"
      tone="grave"
      isBusy={doing.isBusy}
      isDisabled={reason.trim() === ""}
    >
      <p>Everyone on it is signed out, and it cannot sign in again. Lines on it that were not sent stay on it.</p>
      <TextField label="Why" hint="Such as lost overboard." value={reason} onChange={setReason} />
      <ErrorBox error={doing.error} title="Not shut out" />
    </ConfirmDialog>
  );
}
