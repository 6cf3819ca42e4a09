import type { WrongPins as Wrong } from "#station";
import { useEffect, useState } from "react";
import { useThisDevice } from "#web/device/index.ts";
import { useWords, withParts } from "#web/language/index.ts";
import { Notice, Timestamp } from "#web/parts/index.ts";

/** From so many on it was hardly oneself. */
const WORTH_TELLING = 5;

/** Says that somebody tries PINs for one's name. Says nothing while the station cannot be asked. */
export function WrongPins() {
  const wrong = useWrongPins();
  const words = useWords("settings");
  if (wrong === undefined || wrong.elsewhere < WORTH_TELLING) return null;
  return (
    <Notice tone="attention" title={words.wrongPins({ count: wrong.elsewhere })} isNews>
      <p>
        {wrong.last === undefined
          ? words.wrongPinsMore()
          : withParts(words.wrongPinsLast, { at: <Timestamp at={wrong.last} /> })}
        {wrong.closed && ` ${words.wrongPinsClosed()}`}
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
