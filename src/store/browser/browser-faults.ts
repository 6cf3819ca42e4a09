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

/** The station says that it has what this device holds, and then gives another line under a number held here. */
export function describeFork(place: string, seq: number): StoreError {
  return new StoreError(
    "ST-143",
    `Line ${seq} of place ${place} is not the one this device holds: the station shows another history.`,
    "Keep this device as it is, and have whoever looks after the server run verify.",
  );
}

/** Lines that the station gave do not follow on what this device holds, or were changed since they were chained. */
export function describeBroken(place: string, seq: number, because: string): StoreError {
  return new StoreError(
    "ST-144",
    `The station's log does not add up at line ${seq} of place ${place}: ${because}.`,
    "Keep this device as it is, and have whoever looks after the server run verify.",
  );
}

/** What is kept here cannot be read or added to before somebody opens it. */
export function describeLocked(): StoreError {
  return new StoreError("ST-145", "What this device keeps is locked.", "Open it with a PIN or a passkey.");
}

/** A sealed row does not open with the key that sealed it. */
export function describeDamaged(table: string): StoreError {
  return new StoreError(
    "ST-146",
    `Something sealed on this device (${table}) was changed from outside, and does not open.`,
    "Save everything held here to a file where that works, then remove everything and sign in again.",
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
