import { toldWater, type ToldBoat } from "./kits-needed-call.ts";

/**
 * What to ask the skipper, in the order in which an answer narrows the inflow; people first, always.
 *
 * @param call - what is told already is not asked again
 * @returns questions as they are read out
 * @source this program's judgement
 */
export function questionsFor(call: ToldBoat): string[] {
  const questions: (string | false)[] = [
    "How many people aboard, is everyone in a lifejacket, is anyone hurt or in the water?",
    "Do you smell fuel, or see it on the water inside?",
    toldWater(call).rise === undefined &&
      "How deep is the water inside at one mark, and how deep again in two minutes?",
    call.holeDiameter === undefined && "Where does it come in? How big: coin, fist, plate, larger?",
    call.holeDepth === undefined && "How far below the waterline is it?",
    "Can you shut a seacock, or stuff it with cloth, a cushion, a plug, and hold it?",
    call.spaceLength === undefined && "Which spaces have water, and which are dry? Are the doors between them shut?",
    "Is the list growing? Does she come back slowly when she rolls?",
    "Do your own pumps run, and where do they draw from?",
    "How high is your deck above the water for our hose, and can you take a line?",
  ];
  return questions.filter((one): one is string => one !== false);
}
