import { Link, useRoute } from "wouter";
import { useDeviceState, useThisDevice, type Alarm } from "../../device/index.ts";
import { Button } from "../button.tsx";
import { Notice } from "../notice.tsx";
import { sayCount } from "../words/say-count.ts";
import { sayInstant } from "../words/say-time.ts";

/** The station's database was put back to an earlier copy: what that means for this device, and what to do. */
export function PutBackNotice({ found, waiting }: Extract<Alarm, { kind: "put-back" }>) {
  const device = useThisDevice();
  const [isOnOutbox] = useRoute("/outbox");
  if (waiting > 0) return <StillLost waiting={waiting} hasLink={!isOnOutbox} />;
  return (
    <Notice tone="attention" title="The station was put back to an earlier copy of its log" isNews>
      <p>
        This device found out on {sayInstant(found.since)}. {sayWhatCameBack(found.lines)} What only other devices hold
        comes back when each of them next reaches the station: open the app on all of them.
      </p>
      <p>
        <Button onPress={() => void device.held.forgetPutBack()}>I have read this</Button>
      </p>
    </Notice>
  );
}

function sayWhatCameBack(lines: number): string {
  if (lines === 0) return "It lacked no line that is on this device.";
  return `It lacked ${sayCount(lines, "line")} that this device holds; the station has every one of them again.`;
}

function StillLost({ waiting, hasLink }: { readonly waiting: number; readonly hasLink: boolean }) {
  const state = useDeviceState();
  const lost = state.kind === "signed-in" ? state.lost : [];
  const stuck = lost.filter(({ why }) => why !== "offered").length;
  const moving = waiting - stuck;
  return (
    <Notice tone="wrong" title="The station was put back to an earlier copy of its log" isNews>
      <p>
        It lacks {sayCount(waiting, "line")} that {waiting === 1 ? "is" : "are"} on this device. Here they still count;
        other devices may not show what they say.
      </p>
      {moving > 0 && (
        <p>
          {stuck === 0 ? "They go" : `Of these, ${moving} go`} back by themselves. Keep the app open and the network on
          until this says that they are there. Do not sign out and remove everything.
        </p>
      )}
      {stuck > 0 && <p>{stuck === waiting ? "They do" : `${stuck} do`} not go by themselves.</p>}
      {stuck > 0 && hasLink && (
        <p>
          <Link to="/outbox">See which, and what to do</Link>
        </p>
      )}
    </Notice>
  );
}

/** What the station gave does not follow on what this device holds. */
export function FlawNotice({ flaw }: { readonly flaw: string }) {
  return (
    <Notice tone="wrong" title="The station's log does not add up. New lines from it are not taken here." isNews>
      <p>{flaw}</p>
      <p>What you write here is kept and still sent. Others may see what this device does not.</p>
    </Notice>
  );
}
