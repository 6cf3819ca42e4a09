/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { LaunchToldWords } from "#src/words/made/casualty/launch-told.ts";

const words: LaunchToldWords = {
  notKnown: () => "Not known",
  openBoat: () => "Open boat",
  motorBoat: () => "Motor boat",
  sailingYacht: () => "Sailing yacht",
  fishingBoat: () => "Fishing boat",
  here: () => "Here",
  finger: () => "Finger",
  hose: () => "Hose",
  fist: () => "Fist",
  plate: () => "Plate",
  larger: () => "Larger",
  aHand: () => "A hand",
  anArm: () => "An arm",
  deeper: () => "Deeper",
  ankle: () => "Ankle",
  shin: () => "Shin",
  knee: () => "Knee",
  waist: () => "Waist",
  slowly: () => "Slowly",
  steadily: () => "Steadily",
  fast: () => "Fast",
  veryFast: () => "Very fast",
  falling: () => "Falling",
  size: (d) => d.word + ", " + d.figure,
  rise: (d) => d.word + ", " + d.figure + " in 2 min",
  inTwoMinutes: (d) => d.figure + " in 2 min",
  other: () => "Other",
  otherSize: (d) => "Other: " + d.size,
  length: () => "Length",
  distance: () => "Distance",
  hole: () => "Hole across",
  holeDepth: () => "Hole below the waterline",
  water: () => "Level inside",
  lengthLimits: (d) =>
    "From " +
    d.least +
    " to " +
    d.most +
    " m (" +
    d.leastFeet +
    " to " +
    d.mostFeet +
    " ft): the estimate is for boats of this size only.",
  distanceLimits: () => "From 0 to 200 nmi.",
  holeLimits: () => "From 5 mm to 1 m (0.2 to 39 in) across; of a larger one tell 1 m.",
  holeDepthLimits: () => "From 1 cm to 6 m (0.4 in to 20 ft).",
  waterLimits: () => "From 0 to 600 cm (20 ft).",
  toldHole: (d) => "hole " + d.across + " across, " + d.below + " below the waterline",
  toldHoleAcross: (d) => "hole " + d.across + " across",
  toldHoleBelow: (d) => "hole " + d.below + " below the waterline",
  toldAt: (d) => d.water + " at " + d.at,
  told: (d) => "Told: " + d.levels + ". " + d.more,
  toldOnce: () => "Told again in two minutes, tap it again: two levels say how fast it rises.",
  toldTwice: () => "The rise is taken from these.",
  byRadio: (d) => "Told by radio: " + d.parts + ".",
  radioWater: (d) => d.water + " at " + d.at,
  radioRise: (d) => "rising " + d.rise + " at " + d.at,
  radioWaterRise: (d) => d.water + " rising " + d.rise + " at " + d.at,
  radioAt: (d) => "at " + d.at,
  radioHole: (d) => d.told + "; " + d.hole,
  dryNow: (d) => "Dry now, and " + d.before + " before. Was it pumped out, or is it another space? Both stand.",
  dryRise: () => "Dry is told, and a rise too. Ask for the level at one mark, and again in two minutes. Both stand.",
  dryFall: () =>
    "Dry is told, and a level that falls too. Ask for the level at one mark, and again in two minutes. Both stand.",
  unpumped: () => "A level falls only while she is pumped or bailed. Ask with what, and for how long that lasts.",
  fallAgainst: (d) =>
    "The levels told fall, " +
    d.first +
    " to " +
    d.last +
    "; a rise of " +
    d.rise +
    " is told too. The levels are counted with, both stand. Ask again: same mark?",
  riseAgainst: (d) =>
    "The levels told rise, " +
    d.first +
    " to " +
    d.last +
    "; a fall is told too. The levels are counted with, both stand. Ask again: same mark?",
  kindUnknown: (d) => "Kind not known when opened: a " + d.kind + " stands in for her.",
  lengthUnknown: (d) => "Length not known when opened: " + d.length + " stands in for it.",
  toldBefore: (d) => "Told before: " + d.water + " at " + d.time + " UTC.",
  toldFalls: (d) => "Told: the level falls, " + d.metric + " (" + d.us + "), at " + d.time + " UTC.",
  inBoth: (d) => d.metric + " (" + d.us + ")",
  where: () => "Where she is",
  goesOn: () => "goes on to her sheet",
  whereAndKits: () => "Where she is, and kits of other stations",
  writeWhere: () => "Write where she is",
  wroteWhere: () => "where she is",
  positionHint: () => "As told: latitude and longitude, or bearing and distance of a mark.",
  driftHint: () => "Which way and how fast, or at anchor.",
  tideHint: () => "Rising or falling, and where the stream sets her.",
  otherKitsHint: () => "Who, how many, and when they can be there.",
  riseTyped: () => "How fast it rises",
  riseTypedHint: () => "As it was told: 5 cm in 3 min. Below 0 where it falls: -2 cm/min.",
  riseLimits: () => "From -50 to 50 cm (20 in) in a minute.",
  notCounted: () => "It is not counted with until it is put right.",
};
export default words;
