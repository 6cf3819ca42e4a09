import type { WrongPins as Wrong } from "#station";
import { useEffect, useState } from "react";
import { useThisDevice } from "#web/device/index.ts";
import { Notice, sayCount, Timestamp } from "#web/parts/index.ts";

/** From so many on it was hardly oneself. */
const WORTH_TELLING = 5;

/** Says that somebody tries PINs for one's name. Says nothing while the station cannot be asked. */
export function WrongPins() {
  const wrong = useWrongPins();
  if (wrong === undefined || wrong.elsewhere < WORTH_TELLING) return null;
  return (
    <Notice tone="attention" title={`${sayCount(wrong.elsewhere, "wrong PIN")} tried for your name`} isNews>
      <p>
        On devices where you never signed in
        {wrong.last && (
          <>
            , the last <Timestamp at={wrong.last} />
          </>
        )}
        . If that was not you, tell an administrator.
        {wrong.closed && " A new device of yours needs an invite now; devices you use already are not touched."}
      </p>
    </Notice>
  );
}

function useWrongPins(): Wrong | undefined {
  const { desk } = useThisDevice();
  const [wrong, setWrong] = useState<Wrong>();
  useEffect(() => {
    let isGone = false;
    const read = async () => {
      const reply = await desk.whoAmI();
      if (isGone || reply.kind !== "answered" || reply.value.kind !== "signed-in") return;
      setWrong(reply.value.wrongPins);
    };
    void read();
    return () => {
      isGone = true;
    };
  }, [desk]);
  return wrong;
}
