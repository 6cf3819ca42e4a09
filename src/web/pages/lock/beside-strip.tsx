import { leaveBeside, useDeviceState } from "../../device/index.ts";
import { Button } from "../../parts/index.ts";
import "../../way-in/lock.css";

/** Over every page that is shown beside a lock: what is missing, and the way back. */
export function BesideStrip() {
  const state = useDeviceState();
  if (state.kind !== "signed-in" || !state.isBeside) return null;
  return (
    <aside className="beside-strip" aria-label="This device is locked">
      <p>
        <strong>Locked:</strong> without the station's kits, boats and sheets. Kept here in the clear, not sent.
      </p>
      <Button kind="quiet" onPress={leaveBeside}>
        Open this device
      </Button>
    </aside>
  );
}
