/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SheetSeenWords } from "#src/words/made/casualty/sheet-seen.ts";

const words: SheetSeenWords = {
  signs: () => "Signs to leave her by",
  goBack: () => "Go back",
  fuel: () => "Fuel smelt: stop all pumping",
  wroteFuel: () => "fuel smelt, all pumps stopped",
  offNow: () => "People off, now",
  beReady: () => "Be ready",
  signLeave: () => "Her skipper says leave",
  signList: () => "List does not come back",
  signUnder: () => "Deck edge under",
  signAwash: () => "Deck edge awash",
  signSill: () => "Water over a sill",
  signGreatList: () => "List of 20° or more",
  signSlowly: () => "Comes back slowly",
  signGains: () => "Water gains on pump and plug",
  readyToo: () =>
    "Ready too: little freeboard, smoke, fire, any smell of fuel. Lifejackets on, way out clear, nobody below alone, someone counts heads.",
  inCharge: () => "The person in charge on scene decides, and does not wait for a figure.",
  notWritten: () => "Not written down",
  wroteList: () => "list does not come back",
  whatSeen: () => "What you see of her",
  lowestEdge: () => "Lowest deck edge",
  edgeClear: () => "Clear",
  edgeAwash: () => "Awash",
  edgeUnder: () => "Under",
  overSill: () => "Water in over a sill or hatch",
  no: () => "No",
  yes: () => "Yes",
  rollsThen: () => "She rolls, and then?",
  comesBack: () => "Comes back",
  slowly: () => "Slowly",
  staysOver: () => "Stays over",
  skipperSays: () => "Her own skipper says",
  stay: () => "Stay",
  leave: () => "Leave",
  list: () => "List",
  listTyped: () => "Another list, in degrees",
  toPort: () => "To port",
  toStarboard: () => "To starboard",
  listFault: (d) => "A list is a whole number of degrees from 1 to " + d.most + ".",
  none: () => "None",
  port: (d) => d.degrees + "° port",
  starboard: (d) => d.degrees + "° stbd",
  trim: () => "Trim over her length",
  wroteSill: () => "water over a sill",
  wroteRighting: () => "how she comes back",
  wroteRoll: (d) => "roll of " + d.seconds + " s",
  wroteLeave: () => "her skipper says leave",
  wroteStay: () => "her skipper says stay",
  wroteHerList: () => "her list",
  wroteTrim: () => "her trim",
  roll: (d) =>
    "Her roll. Start with her far over to one side; stop when she is there for the " +
    d.count +
    "th time again. Longer means less stability.",
  rollLast: (d) =>
    "Her roll: " +
    d.seconds +
    " s last. Start with her far over to one side; stop when she is there for the " +
    d.count +
    "th time again. Longer means less stability.",
  rollStart: () => "Start: far over",
  rollStop: (d) => "Stop: " + d.count + " rolls",
};
export default words;
