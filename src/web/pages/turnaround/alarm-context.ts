import { createContext, useContext } from "react";
import { makeAlarm } from "./alarm-sound.ts";

/** The one alarm of this page: armed by a tap, sounded by the clocks. */
export const AlarmContext = createContext(makeAlarm());

export function useAlarm() {
  return useContext(AlarmContext);
}
