import { KeptKeys, thisDevice } from "./kept-keys.ts";

/** Alarms of casualties that this device has silenced. */
export const silencedAlarms = new KeptKeys("drykeel.casualty-silenced", thisDevice());
