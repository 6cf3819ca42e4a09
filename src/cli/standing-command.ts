import { formatDate } from "#base";
import { sayLapse, standingInWords } from "#readiness";
import { boardOf, createStationFold, newestReceipt, type Board, type BoardKit, type BoardPlace } from "#station";
import { ENGLISH, inWords } from "#words";
import type { Call, Command } from "./command.ts";
import { requireDatabase, stationPatterns, withLog } from "./open-data.ts";
import { warnOfClock } from "./station-clock.ts";
import { columns } from "./terminal.ts";
import { readWholeLog } from "./whole-log.ts";

/** `drykeel standing`: the board in the terminal. */
export const standingCommand: Command = {
  name: "standing",
  usage: "standing [--json]",
  summary: "the board: which kits are good for what, until when, and why",
  options: { json: false },
  run: async (call) => {
    requireDatabase(call.surroundings);
    const fold = createStationFold(stationPatterns(call));
    await withLog(call.surroundings, async (log) => {
      warnOfClock(call, await newestReceipt(log));
      await readWholeLog(log, fold);
    });
    const board = boardOf(fold.read(), call.surroundings.now);
    if (call.options["json"]) call.terminal.out(JSON.stringify(bareBoard(board), null, 2));
    else printBoard(call, fold.read().stationName, board);
    return 0;
  },
};

function printBoard({ terminal }: Call, station: string, board: Board): void {
  terminal.out(station === "" ? "This station has no name yet." : station);
  for (const place of board.places) for (const line of placeLines(place)) terminal.out(line);
  const first = board.firstToEnd;
  if (first)
    terminal.out(
      `\nEnds first: ${first.kit.name}, ${formatDate(first.lapse.day)}: ${inWords(first.lapse.what, ENGLISH.standing)}`,
    );
}

function placeLines({ place, day, kits, strength }: BoardPlace): string[] {
  const wanting = strength.short > 0 ? `, ${strength.short} SHORT` : "";
  const heading = `${place.name}: ${strength.holds} ready of ${strength.must} wanted${wanting} (${formatDate(day)})`;
  return ["", heading, ...columns(kits.map(kitRow)).map((line) => `  ${line}`)];
}

function kitRow({ kit, standing }: BoardKit): string[] {
  const [first] = standing.because;
  const until = standing.lapse ? `until ${formatDate(standing.lapse.day)}` : "";
  return [
    kit.name,
    kit.serial,
    standing.standing.replaceAll("-", " "),
    until,
    first === undefined ? "" : inWords(first.said, ENGLISH.standing),
  ];
}

function bareBoard({ places, firstToEnd }: Board): object {
  return {
    places: places.map((one) => ({
      id: one.place.id,
      name: one.place.name,
      day: one.day,
      strength: one.strength,
      kits: one.kits.map(bareKit),
    })),
    endsFirst: firstToEnd ? { kit: firstToEnd.kit.id, ...sayLapse(firstToEnd.lapse, ENGLISH.standing) } : null,
  };
}

function bareKit({ kit, standing }: BoardKit): object {
  return {
    id: kit.id,
    name: kit.name,
    serial: kit.serial,
    pattern: kit.pattern,
    ...standingInWords(standing, ENGLISH.standing),
  };
}
