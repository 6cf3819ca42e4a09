import { believableOf, sayPage, sheetQuestion, type OnSceneAnswer } from "#questions";
import type { Entry } from "#log";
import { sheetMoments, type SheetMoment } from "#station";
import type { QuestionDesk } from "../questions/question-desk.ts";

/** Moments that are computed for one paper; of a longer sheet, its last ones. */
const MOST = 200;

/**
 * What the page said upon each line of a casualty's sheet.
 *
 * @param lines - every line of it, struck ones and strikes too
 * @param desk - answers the questions beside the server's own work
 * @param asker - nobody else in the desk's line
 * @returns by entry id
 */
export async function saidUpon(
  lines: readonly Entry[],
  desk: QuestionDesk,
  asker: string,
): Promise<ReadonlyMap<string, string>> {
  const said = new Map<string, string>();
  for (const moment of sheetMoments(lines).slice(-MOST)) {
    const words = await saidAt(moment, desk, asker);
    if (words !== undefined) said.set(moment.entry, words);
  }
  return said;
}

async function saidAt({ casualty, at }: SheetMoment, desk: QuestionDesk, asker: string): Promise<string | undefined> {
  const question = sheetQuestion(believableOf(casualty).casualty, Date.parse(at));
  if (!question) return undefined;
  return sayPage(JSON.parse(await desk.ask("on-scene", question, asker)) as OnSceneAnswer);
}
