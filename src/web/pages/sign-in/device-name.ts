import { useState } from "react";

const KEY = "drykeel.device-name";

/** What people call this device; remembered in this browser, so that it is asked once. */
export function useDeviceName(): readonly [string, (name: string) => void] {
  const [name, setName] = useState(() => localStorage.getItem(KEY) ?? "");
  const change = (next: string) => {
    setName(next);
    localStorage.setItem(KEY, next);
  };
  return [name, change];
}
