import { InputError, printGiven } from "#base";

const ALLOWED = "a code or file of a sheet of this station";

function fault(code: string, got: unknown, remedy: string, allowed = ALLOWED): InputError {
  return new InputError([{ code, field: "code", got: printGiven(got), allowed, remedy }]);
}

/** Something else that is printed as a code, or another file. */
export function notASheet(got: string): InputError {
  return fault(
    "WE-120",
    got,
    "That is another code or file. Show the sheet's code on the other device: its sheet, Hand over.",
  );
}

/** Made by a version of the app that packs it in another way. */
export function otherVersion(got: string): InputError {
  const remedy =
    "The two devices have different versions of this app. Bring the older one up to date; until then tell the levels by voice.";
  return fault("WE-121", `version ${got}`, remedy, "version 1");
}

/** A piece that was changed or cut short on its way. */
export function damagedPiece(got: string): InputError {
  return fault(
    "WE-122",
    got,
    "This piece was cut short or changed on its way. Read it once more, or save the file anew.",
  );
}

/** All pieces are here, and what they make is not what was taken apart. */
export function damagedWhole(got: string): InputError {
  return fault(
    "WE-123",
    got,
    "What the pieces make is damaged. Show the code anew on the other device and read all of it.",
  );
}

/** More than any sheet has: it may be made to fill this device. */
export function tooLarge(got: string, allowed: string): InputError {
  return fault("WE-124", got, "No sheet is so large. Nothing of it was taken.", allowed);
}

/** Stamped with what only devices of another station know, or by nobody who knows what those of this one do. */
export function otherStation(got: string): InputError {
  return fault("WE-125", got, "It comes from a device of another station, or was made up. Nothing of it was taken.");
}

/** This device has no log of its own yet to know its station by. */
export function noStationYet(): InputError {
  return fault(
    "WE-126",
    "a device that has not had the station's log",
    "Bring this device to a network once first.",
    "a device with the station's log",
  );
}

/** An id that a code cannot carry. */
export function unfitSheet(got: string): InputError {
  return fault(
    "WE-127",
    got,
    "Save everything held here to a file instead.",
    "a sheet with an id of lower-case letters and digits",
  );
}
