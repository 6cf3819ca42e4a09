/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { LaunchWords } from "#src/words/made/casualty/launch.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: LaunchWords = {
  title: () => "Before launch: how many kits?",
  readsOnly: () => "Your role reads sheets and does not open them.",
  again: () => "Another boat: begin again",
  againAsk: () => "Begin again for another boat?",
  againDo: () => "Begin again",
  againKeep: () => "Keep what was told",
  againMore: () => "What was told of this one is gone then, unless a sheet was opened for her.",
  boat: () => "The boat",
  whatIsShe: () => "What is she?",
  howLong: () => "How long?",
  howFar: () => "How far away?",
  whatIsKnown: () => "What is known",
  leaveOut: () => "leave out what nobody knows",
  holeAcross: () => "Hole, across",
  holeBelow: () => "Hole, below the waterline",
  waterInside: () => "Water inside",
  rising: () => "Rising or falling, at one mark",
  answer: () => "Answer",
  computing: () => "Computing…",
  distanceFirst: () => "The distance gives the first answer.",
  noAnswer: () => "No answer",
  inflow: (d) => "Inflow about " + d.flow + ". " + d.arrival,
  riseBeyond: () => "The rise told is more than the hole told can give: there is a larger one, or another. Ask again.",
  kitsHead: () => "Kits",
  hold: () => "Hold",
  gain: () => "Gain",
  holdHalved: () => "Hold, hole halved",
  orders: () => "Read to her skipper, in this order",
  ask: () => "Ask the skipper, in this order",
  chances: () => "Chances by number of kits",
  cautions: () => "Cautions to pass on",
  inOrder: () => "Take, in this order",
  thenTake: (d) => "Then: " + d.kits,
  noneUsable: () => "No kit of this station can be used on her tonight.",
  stay: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " kit stays, and why",
      other: strictNumber("en", d.count, 0, "count") + " kits stay, and why",
    }),
  stays: (d) => d.kit + ": " + d.why,
  kitAt: (d) => d.kit + ", " + d.place + ": about " + d.flow + " (" + d.low + " to " + d.high + "); " + d.starts,
  kitAlone: (d) => d.kit + ": about " + d.flow + " (" + d.low + " to " + d.high + "); " + d.starts,
  starts: (d) => "starts and gives water " + d.chance + " (" + d.low + " to " + d.high + "), by " + d.rests,
  inHundred: (d) =>
    plural(d.count, 0, en, {
      "0": "less than 1 in 100",
      "100": "more than 99 in 100",
      other: strictNumber("en", d.count, 0, "count") + " in 100",
    }),
  startsBy: (d) =>
    d.good +
    " of its " +
    plural(d.of, 0, en, {
      one: strictNumber("en", d.of, 0, "of") + " start",
      other: strictNumber("en", d.of, 0, "of") + " starts",
    }) +
    " on record beside ten usual ones",
  startsUsual: () => "no start of its own: as kits usually do",
  chancesAre: () =>
    "What was told of her, and all that was not, make many boats that may be hers: a chance says in how many of 100 of them it comes so. None of it was seen, and each thing more that is told moves it. Each is told by what it lies between nine times in ten, as kits start more or less surely and the way takes longer or shorter.",
  primedIn: (d) => "; primed in " + d.duration,
  proved: (d) => "; proved " + d.share + " of stated " + d.at,
  notProved: () => "; not proved",
  whoGoes: () => "Who goes",
  whichFirst: () => "Which boat goes first?",
  sooner: (d) =>
    "With " + d.boat + " the first pump can be pumping sooner: in about " + d.duration + ", not " + d.chosen + ".",
  soonerOnly: (d) =>
    "The boat chosen has no kit to take. With " +
    d.boat +
    " the first pump can be pumping in about " +
    d.duration +
    ".",
  chooseBoat: (d) => "Choose " + d.boat,
  anotherBoat: () => "Another boat",
  keepFigures: () => "Keep these figures",
  otherFigures: () => "Other figures for this call",
  light: () => "Light until she is pumped",
  lightNotKnown: () => "Not known: as dark",
  byDay: () => "By day",
  dark: () => "Dark",
  torch: () => "Dark, a torch with each kit",
  mains: () => "Mains aboard her, for an electric kit?",
  mainsYes: () => "Yes, above the water",
  mainsNo: () => "No, or not known",
  speed: () => "Speed, loaded",
  untilWay: () => "From now until under way",
  untilWater: () => "From alongside until water goes over the side",
  carries: () => "Kits she takes and hands over",
  speedFault: () => "More than 0 and at most 116 kn.",
  timeFault: (d) => "At most " + d.minutes + " min.",
  way: (d) =>
    plural(d.count, 0, en, {
      one:
        d.speed +
        ", " +
        d.launch +
        " to launch, " +
        d.setUp +
        " from alongside to water, takes " +
        strictNumber("en", d.count, 0, "count") +
        " kit",
      other:
        d.speed +
        ", " +
        d.launch +
        " to launch, " +
        d.setUp +
        " from alongside to water, takes " +
        strictNumber("en", d.count, 0, "count") +
        " kits",
    }),
  wayOf: (d) => d.boat + ": " + d.way + ". " + d.change,
  wayOfGuessed: (d) => d.boat + ": " + d.way + " (guessed: nobody has set it). " + d.change,
  wayIs: (d) => d.way + ".",
  wayIsGuessed: (d) => d.way + " (guessed: nobody has set it).",
  change: () => "Change",
  noPattern: () => "its pattern is not here",
  keptBack: (d) => d.standing + ": " + d.reason,
  grounded: () => "grounded",
  open: () => "open",
  away: () => "away",
  notJudged: () => "not judged here",
  lightUnknown: (d) => "light not known, taken for dark; " + d.limit,
  needsMains: () => "needs mains that the water cannot reach",
  typedRefused: (d) =>
    "Typed, and not counted with, as it cannot be so: " + d.what + ". See what is allowed at its field.",
};
export default words;
