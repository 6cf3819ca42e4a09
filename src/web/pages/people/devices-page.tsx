import type { Entry } from "#log";
import type { Device } from "#readiness";
import { mayWrite, shutOutDevice } from "#station";
import { useState } from "react";
import { Link } from "wouter";
import type { StationView } from "#web/device/sync/contract.ts";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Button, ConfirmDialog, ErrorBox, Page, Section, TextField, Timestamp, useDoing } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { deviceTracesOf, joiningOf } from "../people/log-traces.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";

/** Devices that people have signed in on. A lost one is shut out here. */
export default function DevicesPage() {
  const view = useStation();
  const { devices, me } = view;
  const [chosen, setChosen] = useState<Device>();
  const inUse = devices.filter(({ shutOut }) => !shutOut);
  const shut = devices.filter(({ shutOut }) => shutOut);
  const choose = mayWrite(me.role, "device-shut-out") ? setChosen : undefined;
  return (
    <Page title="Devices">
      <Table
        caption="Devices of the station"
        isCaptionHidden
        columns={columns(view, choose)}
        rows={inUse}
        rowKey={({ id }) => id}
      />
      {chosen && <ShutOut view={view} device={chosen} onClose={() => setChosen(undefined)} />}
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

function columns(view: StationView, choose: ((device: Device) => void) | undefined): readonly Column<Device>[] {
  const traces = deviceTracesOf(view);
  const isHere = ({ id }: Device) => id === view.device;
  const always: readonly Column<Device>[] = [
    {
      key: "name",
      head: "Device",
      cell: (device) => (isHere(device) ? `${device.name} (this device)` : device.name),
    },
    { key: "joined", head: "Joined", cell: ({ id }) => <Line view={view} line={traces.get(id)?.joined} /> },
    { key: "last", head: "Last line", cell: ({ id }) => <Line view={view} line={traces.get(id)?.last} /> },
  ];
  if (!choose) return always;
  const act: Column<Device> = {
    key: "shut-out",
    isAct: true,
    head: "Lost or stolen",
    cell: (device) => (isHere(device) ? <SignOutInstead /> : <ShutOutButton device={device} onPress={choose} />),
  };
  return [...always, act];
}

function Line({ view, line }: { readonly view: StationView; readonly line: Entry | undefined }) {
  if (!line) return "not known here";
  return (
    <>
      <Timestamp at={line.at} /> by {nameOf(view, line.by)}
    </>
  );
}

/** Nobody who holds a device has lost it. */
function SignOutInstead() {
  return <Link to="/settings">To leave this device, sign out in Settings</Link>;
}

interface ShutOutButtonProps {
  readonly device: Device;
  readonly onPress: (device: Device) => void;
}

function ShutOutButton({ device, onPress }: ShutOutButtonProps) {
  return (
    <Button kind="quiet" tone="grave" label={`Shut out ${device.name}`} onPress={() => onPress(device)}>
      Shut out
    </Button>
  );
}

interface ShutOutProps {
  readonly view: StationView;
  readonly device: Device;
  readonly onClose: () => void;
}

function ShutOut({ view, device, onClose }: ShutOutProps) {
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
      <p>
        Joined <Line view={view} line={joiningOf(view, device.id)} />.
      </p>
      <p>Everyone on it is signed out, and it cannot sign in again. Lines on it that were not sent stay on it.</p>
      <TextField label="Why" hint="Such as lost overboard." value={reason} onChange={setReason} />
      <ErrorBox error={doing.error} title="Not shut out" />
    </ConfirmDialog>
  );
}
