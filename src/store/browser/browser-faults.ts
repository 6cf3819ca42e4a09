import { StoreError } from "#station";

/** What a browser's storage throws, in words for the person who holds the device. */
export function translateBrowser(thrown: unknown): unknown {
  const names = namesOf(thrown);
  if (names.includes("QuotaExceededError")) {
    const remedy = "Free space on the device, or send what waits; what was saved before is still here.";
    return new StoreError("ST-140", "This device is out of space, so the last line was not saved.", remedy, thrown);
  }
  if (names.includes("DatabaseClosedError") || names.includes("InvalidStateError")) {
    const remedy = "Reload this page; what was saved is still here.";
    return new StoreError("ST-141", "Another window has brought the storage up to date.", remedy, thrown);
  }
  const unusable = ["MissingAPIError", "OpenFailedError", "SecurityError", "UnknownError", "NotFoundError"];
  if (names.some((name) => unusable.includes(name))) {
    const remedy = "Leave private browsing, allow this site to store data, and reload; on paper until then.";
    return new StoreError("ST-142", "This browser does not let Drykeel store anything.", remedy, thrown);
  }
  return thrown;
}

/** The station's numbering does not agree with what this device holds: its database was put back to an earlier day. */
export function describeFork(place: string, seq: number): StoreError {
  return new StoreError(
    "ST-143",
    `Line ${seq} of place ${place} is not the one this device holds: the station was put back to an earlier copy.`,
    "Save what this device holds to a file, give it to the administrator, then sign out and in again.",
  );
}

/** Name of an error and of those inside it, innermost last. */
function namesOf(thrown: unknown): string[] {
  const names: string[] = [];
  let error = thrown as { name?: unknown; inner?: unknown } | null | undefined;
  for (let depth = 0; depth < 5 && typeof error === "object" && error !== null; depth++) {
    names.push(String(error.name));
    error = error.inner as typeof error;
  }
  return names;
}
