import { useEffect, useState } from "react";
import { useRecorder } from "../device/index.ts";

/** Address of a photo within this window: held here, or fetched where there is a network; undefined until then. */
export function usePhotoUrl(hash: string): string | undefined {
  const recorder = useRecorder();
  const [url, setUrl] = useState<string>();
  useEffect(() => {
    let isGone = false;
    void recorder.photoUrl(hash).then((found) => (isGone ? undefined : setUrl(found)));
    return () => {
      isGone = true;
    };
  }, [recorder, hash]);
  return url;
}
