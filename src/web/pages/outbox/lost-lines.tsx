import { useDeviceState, useThisDevice, type LostLine } from "#web/device/index.ts";
import { Button, ErrorBox, Notice, Section, useDoing } from "#web/parts/index.ts";
import { LineTable } from "./line-table.tsx";

/** Lines that the station had, has no more since it was put back to an earlier copy, and this device holds. */
export function LostLines() {
  const state = useDeviceState();
  if (state.kind !== "signed-in" || state.lost.length === 0) return null;
  const by = (why: LostLine["why"]) => state.lost.filter((line) => line.why === why);
  return (
    <>
      <Offered lines={by("offered")} />
      <Unvouched lines={by("unvouched")} isAdministrator={state.sitting.person.role === "administrator"} />
      <Clashing lines={by("clashing")} />
    </>
  );
}

function Offered({ lines }: { readonly lines: readonly LostLine[] }) {
  if (lines.length === 0) return null;
  return (
    <Section title="Lost by the station, going back">
      <p>It once had these, and shows that by its own mark on them. They go back by themselves, whoever wrote them.</p>
      <LineTable lines={lines} caption="Lines going back to the station" />
    </Section>
  );
}

interface UnvouchedProps {
  readonly lines: readonly LostLine[];
  readonly isAdministrator: boolean;
}

/** Nothing shows that the station had them: taking them is somebody's decision, and the log says whose. */
function Unvouched({ lines, isAdministrator }: UnvouchedProps) {
  const device = useThisDevice();
  const doing = useDoing();
  if (lines.length === 0) return null;
  const take = async () => {
    const reply = await device.held.takeByWord();
    if (reply.kind === "refused") throw new Error(`${reply.problem.message} ${reply.problem.remedy}`);
    if (reply.kind === "unreachable") throw new Error(`The station was not reached: ${reply.because}.`);
  };
  return (
    <Section title="Only on this device">
      <Notice
        tone="wrong"
        title={`Nothing shows that the station had ${lines.length === 1 ? "this line" : "these lines"}`}
      >
        <p>
          Its copy is older than its mark on them, or its database is another one. Each goes back when the person who
          wrote it signs in on the device it was written on. Or an administrator says, here, that they are genuine: the
          station then takes them all, and its log says who said so.
        </p>
        {isAdministrator ? (
          <div>
            <Button onPress={() => void doing.run(take)} isBusy={doing.isBusy}>
              They are genuine: take them in
            </Button>
          </div>
        ) : (
          <p>Ask an administrator to sign in on this device. Until then, do not remove anything from it.</p>
        )}
        <ErrorBox error={doing.error} title="Not taken in" />
      </Notice>
      <LineTable lines={lines} caption="Lines only on this device" />
    </Section>
  );
}

function Clashing({ lines }: { readonly lines: readonly LostLine[] }) {
  if (lines.length === 0) return null;
  return (
    <Section title="Differ from the station's">
      <Notice tone="wrong" title="The station has other lines under the same ids">
        <p>That does not happen by itself. Save everything held here to a file, and give it to an administrator.</p>
      </Notice>
      <LineTable lines={lines} caption="Lines that differ from the station's" />
    </Section>
  );
}
