import { useCallback, useState } from "react";

export interface DoingNow {
  readonly isBusy: boolean;
  /** What stood against the last try; undefined after one that went through. */
  readonly error: unknown;
  /** Does it; true where it went through. */
  readonly run: (act: () => Promise<unknown>) => Promise<boolean>;
  readonly clear: () => void;
}

/** Something being done at a button: busy while it lasts, and why it failed if it did. */
export function useDoing(): DoingNow {
  const [isBusy, setBusy] = useState(false);
  const [error, setError] = useState<unknown>();
  const run = useCallback(async (act: () => Promise<unknown>) => {
    setBusy(true);
    setError(undefined);
    try {
      await act();
      return true;
    } catch (cause) {
      setError(cause);
      return false;
    } finally {
      setBusy(false);
    }
  }, []);
  const clear = useCallback(() => setError(undefined), []);
  return { isBusy, error, run, clear };
}
