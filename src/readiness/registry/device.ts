/* Made by `npx tsx scripts/kind-registry.ts` from the files of kinds whose subject is "device". */
import type { FoldsOf } from "../kinds/folds-of.ts";
import * as deviceJoined from "../station/device-joined.kind.ts";
import * as deviceShutOut from "../station/device-shut-out.kind.ts";

export interface DeviceBodies {
  "device-joined": deviceJoined.Body;
  "device-shut-out": deviceShutOut.Body;
}

export const deviceFolds: FoldsOf<"device", DeviceBodies> = {
  "device-joined": deviceJoined.fold,
  "device-shut-out": deviceShutOut.fold,
};
