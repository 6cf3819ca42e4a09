import { Link, useRoute } from "wouter";
import type { Words } from "#words";
import { useDeviceState, useThisDevice, type Alarm } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button } from "../button.tsx";
import { Notice } from "../notice.tsx";
import { sayInstant } from "../words/say-time.ts";

/** The station's database was put back to an earlier copy: what that means for this device, and what to do. */
export function PutBackNotice({ found, waiting }: Extract<Alarm, { kind: "put-back" }>) {
  const device = useThisDevice();
  const words = useWords("notices");
  const [isOnOutbox] = useRoute("/outbox");
  if (waiting > 0) return <StillLost waiting={waiting} hasLink={!isOnOutbox} />;
  return (
    <Notice tone="attention" title={words.putBack()} isNews>
      <p>
        {words.putBackFound({ at: sayInstant(found.since) })} {sayWhatCameBack(found.lines, words)}{" "}
        {words.putBackOthers()}
      </p>
      <p>
        <Button onPress={() => void device.held.forgetPutBack()}>{words.haveRead()}</Button>
      </p>
    </Notice>
  );
}

function sayWhatCameBack(lines: number, words: Words["notices"]): string {
  return lines === 0 ? words.putBackNone() : words.putBackCame({ count: lines });
}

function StillLost({ waiting, hasLink }: { readonly waiting: number; readonly hasLink: boolean }) {
  const state = useDeviceState();
  const words = useWords("notices");
  const lost = state.kind === "signed-in" ? state.lost : [];
  const stuck = lost.filter(({ why }) => why !== "offered").length;
  const moving = waiting - stuck;
  return (
    <Notice tone="wrong" title={words.putBack()} isNews>
      <p>{words.putBackLacks({ count: waiting })}</p>
      {moving > 0 && (
        <p>
          {stuck === 0 ? words.putBackAllMove() : words.putBackSomeMove({ count: moving })} {words.putBackKeepOpen()}
        </p>
      )}
      {stuck > 0 && <p>{stuck === waiting ? words.putBackAllStuck() : words.putBackSomeStuck({ count: stuck })}</p>}
      {stuck > 0 && hasLink && (
        <p>
          <Link to="/outbox">{words.putBackLink()}</Link>
        </p>
      )}
    </Notice>
  );
}

/** What the station gave does not follow on what this device holds. */
export function FlawNotice({ flaw }: { readonly flaw: string }) {
  const words = useWords("notices");
  return (
    <Notice tone="wrong" title={words.flaw()} isNews>
      <p>{flaw}</p>
      <p>{words.flawMore()}</p>
    </Notice>
  );
}
