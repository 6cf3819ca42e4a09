import { useDeviceState, useThisDevice, type LostLine } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
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
  const words = useWords("outboxOther");
  if (lines.length === 0) return null;
  return (
    <Section title={words.goingBack()}>
      <p>{words.goingBackMore()}</p>
      <LineTable lines={lines} caption={words.goingBackLines()} />
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
  const words = useWords("outboxOther");
  const doing = useDoing();
  if (lines.length === 0) return null;
  const take = async () => {
    const reply = await device.held.takeByWord();
    if (reply.kind === "refused") throw new Error(`${reply.problem.message} ${reply.problem.remedy}`);
    if (reply.kind === "unreachable") throw new Error(words.notReached({ because: reply.because }));
  };
  return (
    <Section title={words.onlyHere()}>
      <Notice tone="wrong" title={words.onlyHereNews({ count: lines.length })}>
        <p>{words.onlyHereMore()}</p>
        {isAdministrator ? (
          <div>
            <Button onPress={() => void doing.run(take)} isBusy={doing.isBusy}>
              {words.genuine()}
            </Button>
          </div>
        ) : (
          <p>{words.askAdministrator()}</p>
        )}
        <ErrorBox error={doing.error} title={words.notTakenIn()} />
      </Notice>
      <LineTable lines={lines} caption={words.onlyHereLines()} />
    </Section>
  );
}

function Clashing({ lines }: { readonly lines: readonly LostLine[] }) {
  const words = useWords("outboxOther");
  if (lines.length === 0) return null;
  return (
    <Section title={words.differ()}>
      <Notice tone="wrong" title={words.differNews()}>
        <p>{words.differMore()}</p>
      </Notice>
      <LineTable lines={lines} caption={words.differLines()} />
    </Section>
  );
}
