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
import type { Words } from "#words";
import { useWords, withParts } from "#web/language/index.ts";

/** Devices that people have signed in on. A lost one is shut out here. */
export default function DevicesPage() {
  const frame = useWords("frame");
  const words = useWords("devices");
  const view = useStation();
  const { devices, me } = view;
  const [chosen, setChosen] = useState<Device>();
  const inUse = devices.filter(({ shutOut }) => !shutOut);
  const shut = devices.filter(({ shutOut }) => shutOut);
  const choose = mayWrite(me.role, "device-shut-out") ? setChosen : undefined;
  return (
    <Page title={frame.devices()}>
      <Table
        caption={words.listTitle()}
        isCaptionHidden
        columns={columns(view, words, choose)}
        rows={inUse}
        rowKey={({ id }) => id}
      />
      {chosen && <ShutOut view={view} device={chosen} onClose={() => setChosen(undefined)} />}
      {shut.length > 0 && (
        <Section title={words.areShutOut()}>
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

function columns(
  view: StationView,
  words: Words["devices"],
  choose: ((device: Device) => void) | undefined,
): readonly Column<Device>[] {
  const traces = deviceTracesOf(view);
  const isHere = ({ id }: Device) => id === view.device;
  const always: readonly Column<Device>[] = [
    {
      key: "name",
      head: words.device(),
      cell: (device) => (isHere(device) ? words.thisDevice({ device: device.name }) : device.name),
    },
    { key: "joined", head: words.joined(), cell: ({ id }) => <Line view={view} line={traces.get(id)?.joined} /> },
    { key: "last", head: words.lastLine(), cell: ({ id }) => <Line view={view} line={traces.get(id)?.last} /> },
  ];
  if (!choose) return always;
  const act: Column<Device> = {
    key: "shut-out",
    isAct: true,
    head: words.lost(),
    cell: (device) => (isHere(device) ? <SignOutInstead /> : <ShutOutButton device={device} onPress={choose} />),
  };
  return [...always, act];
}

function Line({ view, line }: { readonly view: StationView; readonly line: Entry | undefined }) {
  const words = useWords("devices");
  if (!line) return words.notKnown();
  const who = nameOf(view, line.by);
  return withParts(({ at }) => words.writtenBy({ at, who }), { at: <Timestamp at={line.at} /> });
}

/** Nobody who holds a device has lost it. */
function SignOutInstead() {
  const words = useWords("devices");
  return <Link to="/settings">{words.signOutInstead()}</Link>;
}

interface ShutOutButtonProps {
  readonly device: Device;
  readonly onPress: (device: Device) => void;
}

function ShutOutButton({ device, onPress }: ShutOutButtonProps) {
  const words = useWords("devices");
  return (
    <Button
      kind="quiet"
      tone="grave"
      label={words.shutOutNamed({ device: device.name })}
      onPress={() => onPress(device)}
    >
      {words.shutOut()}
    </Button>
  );
}

interface ShutOutProps {
  readonly view: StationView;
  readonly device: Device;
  readonly onClose: () => void;
}

function ShutOut({ view, device, onClose }: ShutOutProps) {
  const words = useWords("devices");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [reason, setReason] = useState("");
  const joined = joiningOf(view, device.id);
  const shut = async () => {
    if (await doing.run(() => carryOut((at) => shutOutDevice(at, device.id, reason.trim())))) onClose();
  };
  return (
    <ConfirmDialog
      title={words.shutOutAsk({ device: device.name })}
      isOpen
      onClose={onClose}
      onConfirm={() => void shut()}
      confirm={words.shutOutDo()}
      tone="grave"
      isBusy={doing.isBusy}
      isDisabled={reason.trim() === ""}
    >
      <p>
        {joined ? withParts(words.joinedLine, { line: <Line view={view} line={joined} /> }) : words.joinedNotKnown()}
      </p>
      <p>{words.shutOutMore()}</p>
      <TextField label={words.why()} hint={words.whyHint()} value={reason} onChange={setReason} />
      <ErrorBox error={doing.error} title={words.notShutOut()} />
    </ConfirmDialog>
  );
}
