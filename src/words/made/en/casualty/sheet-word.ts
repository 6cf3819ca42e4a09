/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SheetWordWords } from "#src/words/made/casualty/sheet-word.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: SheetWordWords = {
  gaining: () => "GAINING",
  holding: () => "HOLDING",
  losing: () => "LOSING",
  shouldBeGaining: () => "SHOULD BE GAINING",
  shouldBeHolding: () => "SHOULD BE HOLDING",
  shouldBeLosing: () => "SHOULD BE LOSING",
  tooSoon: () => "TOO SOON TO SAY",
  oneSounding: () => "ONE SOUNDING",
  doesNotFit: () => "SOUNDINGS DO NOT FIT",
  notKnown: () => "NOT KNOWN",
  noSounding: () => "NO SOUNDING YET",
  fuelSmelt: () => "FUEL SMELT",
  checkSounding: () => "CHECK THE SOUNDING",
  timeToLeave: () => "TIME TO LEAVE HER",
  notComputedWord: () => "NOT COMPUTED",
  soundAgain: () => "sound again",
  lookAround: () => "sound again, look at strainer and hole",
  soundNow: () => "sound now",
  soundFirst: () => "sound the water at one mark",
  allOff: () => "every pump and engine off; people into open air",
  aboveDeck: () => "higher than her deck edge: look again",
  notSeen: () => "not seen yet: sound again",
  nearlyAtStrainer: () => "down to the strainer or nearly: sound, ease the pump",
  strainerIn: (d) => "down to the strainer in about " + d.duration,
  falling: () => "falling, slowly",
  noChange: () => "no rise or fall a stick can tell",
  offIn: (d) => "off in " + d.duration + " by this estimate",
  offUnlessPatch: (d) => "off in " + d.duration + " unless the hole is halved",
  offUnlessPump: (d) => "off in " + d.duration + " unless one more kit pumps",
  offUnlessThrottle: (d) => "off in " + d.duration + " unless the engine opens up",
  offUnlessLower: (d) => "off in " + d.duration + " unless the pump sits lower",
  offPumpTooLittle: (d) => "off in " + d.duration + ": one pump more too little",
  risingOff: () => "rising: people off first",
  risingSlow: () => "rising: slow the hole, add a pump",
  strainerBetween: (d) => "Down to the strainer in " + d.from + " to " + d.to + ", nine times in ten.",
  strainerBetweenLeft: (d) =>
    "Down to the strainer in " +
    d.from +
    " to " +
    d.to +
    ", nine times in ten, with about " +
    d.left +
    " left under it.",
  lostBetween: (d) => "Lost in " + d.from + " to " + d.to + ", nine times in ten.",
  trendRising: (d) =>
    "Trend only: rising, by the last " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " sounding",
      other: strictNumber("en", d.count, 0, "count") + " soundings",
    }) +
    ".",
  trendFalling: (d) =>
    "Trend only: falling, by the last " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " sounding",
      other: strictNumber("en", d.count, 0, "count") + " soundings",
    }) +
    ".",
  trendUnclear: (d) =>
    "Trend only: neither rising nor falling clearly, by the last " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " sounding",
      other: strictNumber("en", d.count, 0, "count") + " soundings",
    }) +
    ".",
  trendAhead: (d) =>
    "If it goes on so: " +
    d.level +
    " (" +
    d.low +
    " to " +
    d.high +
    ") " +
    d.duration +
    " after the last sounding. No hole, no pump and no deck edge is reckoned with.",
  seenOutranks: () => "what is seen outranks the stick",
  goBySight: () => "go on sounding; go by what you see",
  lastAgo: (d) => "last sounding " + d.duration + " ago. Sound now",
  herDeckEdge: () => "her deck edge",
  loneUpTo: (d) => "One sounding shows neither rise nor fall: in an hour anything up to " + d.high + ".",
  loneBetween: (d) =>
    "One sounding shows neither rise nor fall: in an hour anything from " + d.low + " to " + d.high + ".",
  changeMost: () => "What would change it most",
  startFirst: (d) => "First: start " + d.pumps + ", aboard and not pumping.",
  noFitNoChances: () => "The soundings do not fit: no chances can be given. What helps in most cases, best first:",
  loneNoChances: () => "There is one sounding only: no chances can be given. What helps in most cases, best first:",
  inAnHour: (d) => d.level + " in an hour",
  under: () => "under within the hour",
  asItGoes: (d) => "As it goes now: " + d.chance + " to hold or better, " + d.level + ".",
  asItGoesEnough: (d) =>
    "As it goes now: " +
    d.chance +
    " to hold or better, " +
    d.level +
    ". Likely enough as it is; keep one more kit at hand, and go on sounding.",
  withAction: (d) => d.chance + " to hold or better, " + d.level + ".",
  anEstimateHead: () => "An estimate",
  estimateMore: () =>
    "The person in charge on scene decides. Compare with what you see; the unit's manual and local rules come first.",
  granted: () => "What it takes for granted",
  measuredHull: () => "Hull as measured; GM guessed from her kind: trust her roll.",
  guessedToo: (d) => d.guessed + ", GM too.",
  guessedEnter: (d) => d.guessed + ", GM too. Enter beam, depth and freeboard to better the picture and the times.",
  enterMeasures: () => "Enter her measures",
  leftOut: () => "Left out of what is computed",
  soundingWrong: (d) => "The sounding of " + d.level + " at " + d.time + " cannot be.",
  soundingWrongMore: (d) =>
    "A level is from " + d.allowed + ". Take it back if it is a slip; if it is right, correct her depth.",
  takeBack: (d) => "Take back " + d.level,
  aboveCoaming: () => "Cannot be: above her coaming.",
  beamWrong: (d) => "Her beam of " + d.got + " cannot be.",
  depthWrong: (d) => "Her keel to deck edge of " + d.got + " cannot be.",
  draughtWrong: (d) => "Her draught of " + d.got + " cannot be.",
  otherWrong: (d) => "Her " + d.field + " of " + d.got + " cannot be.",
  guessedInstead: (d) => "It is from " + d.allowed + ". It is guessed instead.",
  takenOut: () => "measures that cannot be, taken out",
  leaveGuessed: () => "Leave it guessed",
  correctMeasures: () => "Correct her measures",
  leaveNowMore: () =>
    "Signs that people should be off her now. The person in charge on scene decides, and does not wait for a figure.",
};
export default words;
