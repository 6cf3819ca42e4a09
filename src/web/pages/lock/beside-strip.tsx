import { leaveBeside, useDeviceState } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button } from "#web/parts/index.ts";
import "#web/way-in/lock.css";

/** Over every page that is shown beside a lock: what is missing, and the way back. */
export function BesideStrip() {
  const state = useDeviceState();
  return state.kind === "signed-in" && state.isBeside ? <Strip /> : null;
}

function Strip() {
  const words = useWords("lock");
  return (
    <aside className="beside-strip" aria-label={words.title()}>
      <p>
        <strong>{words.locked()}</strong> {words.lockedMore()}
      </p>
      <Button kind="quiet" onPress={leaveBeside}>
        {words.open()}
      </Button>
    </aside>
  );
}
