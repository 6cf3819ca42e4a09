/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { DeliveryWords } from "#src/words/made/kit/delivery.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: DeliveryWords = {
  title: (d) => "Delivery of " + d.kit,
  notSaid: () => "The pattern does not say what this pump does",
  notSaidMore: () => "Add the pump's points and hoses to the pattern, and this page has an answer.",
  noAnswer: () => "No answer for this rig.",
  notComputed: () => "This rig cannot be computed",
  beforeRun: () => "Before it runs",
  moreFolded: () => "More: the curve, what binds, each lift",
  granted: () => "What was taken for granted",
  curveLabel: (d) => d.answer + ". " + d.binding + " The figures are in the table below.",
  curveTable: () => "The curve as a table",
  curveCaption: () => "Head against flow",
  flow: () => "Flow",
  pumpGives: () => "The pump gives",
  rigNeeds: () => "Height and hoses need",
  inletHas: () => "At the inlet there is",
  inletWants: () => "The pump wants there",
  binds: () => "What binds",
  hoseShort: () => "The hose ends above the water",
  hoseShortMore: () => "Lay in a longer suction hose, or put the pump lower and let the discharge hose do the lifting.",
  twoPoints: () => "Two operating points",
  whatToDo: () => "What to do about it",
  height: () => "Height",
  suctionLift: () => "Suction lift",
  deliversAbout: () => "Delivers about",
  nothing: () => "nothing",
  likelyBetween: () => "Likely between",
  band: (d) => d.low + " and " + d.high,
  noBand: () => "none",
  atEachHeight: () => "At each height",
  atEachLift: () => "At each lift",
  heightCaption: () => "Delivery at each height of the hose's end above the water, all else as set above",
  liftCaption: () => "Delivery at each suction lift, all else as set above",
  onCard: () => "The pattern's card, as PDF on the kit's page, carries this table for its hoses as packed.",
  hoseEnd: () => "Hose's end above the water",
  hoseEndHint: () => "From the water inside up to where the hose goes over the rail.",
  suctionLiftHint: () => "From the water inside up to the pump.",
  rise: () => "Rise over the rail",
  riseHint: () => "From the pump up to the end of the hose.",
  seaWater: () => "Sea water",
  freshWater: () => "Fresh water",
  rest: (d) => "Hoses, throttle, water: " + d.setting,
  sideBySide: () => "Pumps side by side on one discharge hose",
  pumps: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " pump",
      other: strictNumber("en", d.count, 0, "count") + " pumps",
    }),
  asPacked: (d) => "As packed: " + d.length + ".",
  suctionHose: () => "Suction hose",
  dischargeHose: () => "Discharge hose",
  throttle: () => "Throttle, part of full speed",
  water: () => "Water",
  waterTemperature: () => "Water temperature",
  altitude: () => "Altitude",
  altitudeHint: () => "Thin air lets a pump lift less and an engine give less.",
  less: (d) => d.label + ": less",
  more: (d) => d.label + ": more",
  fromTo: (d) => "From " + d.least + " to " + d.most + ".",
  primeNotComputed: () => "The prime cannot be computed",
  priming: () => "Priming",
  primeFolded: () => "How high it primes, and what a slow prime says",
  reallyTook: () => "How long it really took",
  reallyTookHint: () => "From the first stroke to water. It says whether air leaks in, and how much.",
  fuel: () => "Fuel",
  fuelNotComputed: () => "The fuel cannot be computed",
  refuelAfter: (d) =>
    "Refuel after " +
    d.after +
    ", with " +
    d.left +
    " left; a full tank of " +
    d.tank +
    " lasts about " +
    d.runtime +
    " at " +
    d.burn +
    ".",
  emptyAfter: (d) =>
    "Empty after " + d.runtime + ": a full tank of " + d.tank + " lasts about " + d.runtime + " at " + d.burn + ".",
  tankEnough: (d) => "It burns " + d.fuel + ": the full tank is enough, with the reserve left.",
  takeCans: (d) =>
    plural(d.count, 0, en, {
      one:
        "It burns " +
        d.fuel +
        ": take " +
        strictNumber("en", d.count, 0, "count") +
        " can of " +
        d.can +
        " beside the full tank.",
      other:
        "It burns " +
        d.fuel +
        ": take " +
        strictNumber("en", d.count, 0, "count") +
        " cans of " +
        d.can +
        " beside the full tank.",
    }),
  cansFolded: () => "Cans for a passage, reserve",
  reserve: () => "Reserve, part of the tank",
  passage: () => "Passage and time on scene",
  passageHint: () => "How long it is to run in all, such as 6 h.",
  canHolds: () => "One can holds",
  canHoldsHint: (d) => d.can + " is taken where this is empty.",
  burnTaken: () => "The burn is the pattern's figure for this throttle.",
  burnEffect: () =>
    "A cold engine, a choke left on or a heavier load burns more; look into the tank before counting on it.",
  startedNow: (d) => "Started now on a full tank: refuel by " + d.by + ".",
  remind: () => "Engine started now: remind me",
  startedEarlier: () => "It was started earlier",
  runningSince: () => "Running since",
  runningSinceHint: () => "How long it has run on this tank.",
  remindFrom: () => "Remind me from then",
  refuelBy: (d) => "Refuel by " + d.by,
  left: (d) => d.duration + " left",
  over: (d) => d.duration + " over",
  clockMore: (d) => d.clock + ", started " + d.started + ". A locked phone sounds no alarm: keep this screen in sight.",
  refuelled: () => "Refuelled and started again now",
  stopped: () => "Engine stopped: no reminder",
};
export default words;
