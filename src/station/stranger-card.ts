/** One stroke or shape of a picture: path data in a field of 120 by 96. */
export interface Stroke {
  readonly d: string;
  /** `line` where absent. `water` is water, `no` is the bar across what must not be done. */
  readonly as?: "line" | "water" | "no";
}

/** One line of the card: what to do, why or how, and a picture of it. */
export interface CardLine {
  readonly id: string;
  readonly do: string;
  readonly why: string;
  readonly picture: readonly Stroke[];
}

const SEA = "M0 74q10-6 20 0t20 0 20 0 20 0 20 0 20 0V96H0z";

/**
 * The card for people who have never seen the kit: read a line, do it, read the next. Eight lines, one picture each.
 * The unit's own manual and the pattern's card come first where they differ.
 *
 * @source common practice; carbon monoxide: NIOSH 96-118a, 1996
 */
export const STRANGER_CARD: readonly CardLine[] = [
  {
    id: "deck",
    do: "Put the engine on open deck, downwind.",
    why: "Never below, never in a cabin or under a cover: its exhaust kills within minutes. Headache: stop it, get into the wind.",
    picture: [
      { d: "M60 74V54h36v20zM66 54V44h22v10M54 74h48" },
      { d: "M100 44q5-6 10 0M100 34q5-6 10 0M100 24q5-6 10 0" },
      { d: "M10 90V58h28v32zM3 62l21-20 21 20" },
      { d: "M6 48 42 92M42 48 6 92", as: "no" },
    ],
  },
  {
    id: "smell",
    do: "Smell and look for fuel on the water inside.",
    why: "Fuel smell or a shine on the water: do not start. Stop if it comes later. Tell the person in charge.",
    picture: [
      { d: SEA, as: "water" },
      { d: "M60 8q16 22 16 34a16 16 0 0 1-32 0q0-12 16-34z" },
      { d: "M14 66q12-8 24 0M84 66q12-8 24 0" },
      { d: "M24 84 98 12", as: "no" },
    ],
  },
  {
    id: "strainer",
    do: "Sink the strainer in the deepest water and tie it there.",
    why: "Wholly under, clear of rubbish, a basket or bucket round it. It must stay under as she rolls.",
    picture: [
      { d: SEA, as: "water" },
      { d: "M52 0V62" },
      { d: "M44 62h16v24H44zM44 70h16M44 78h16" },
      { d: "M60 66q26 2 40-20M96 40l8 8" },
    ],
  },
  {
    id: "couple",
    do: "Couple both hoses: push home, close both levers.",
    why: "Stiff hose on the inlet, flat hose on the outlet. No kinks, no hump. Outlet over the side, tied.",
    picture: [
      { d: "M4 40h40v20H4zM76 40h40v20H76z" },
      { d: "M44 44h14v12H44M76 44H62v12h14" },
      { d: "M48 44V26h14M72 44V26" },
      { d: "M60 80v-14M54 72l6-7 6 7" },
    ],
  },
  {
    id: "fill",
    do: "Fill the pump with water to the brim, close the cap.",
    why: "Or work the hand primer until water comes. A dry pump draws nothing and burns its seal.",
    picture: [
      { d: "M30 88V52h60v36zM50 52V40h20v12" },
      { d: "M70 8h30v22H76z" },
      { d: "M70 26q-10 2-10 14" },
      { d: "M30 64h60v24H30z", as: "water" },
    ],
  },
  {
    id: "start",
    do: "Fuel tap on, switch on, choke shut. Brace. Pull.",
    why: "Pull slowly until it bites, then long and hard. Runs: open the choke, half throttle.",
    picture: [
      { d: "M18 84V52h38v32z" },
      { d: "M46 60a10 10 0 1 0-.1.1" },
      { d: "M46 58 92 26" },
      { d: "M86 18l14 14" },
      { d: "M78 44l12-8M88 46l2-10-10 2" },
    ],
  },
  {
    id: "water",
    do: "Water within a minute? If not, stop.",
    why: "Look for: strainer out of the water, cap or lever open, kink, lift too high. Mend, fill, start again. Two tries, then say so by radio.",
    picture: [
      { d: "M14 30h28q16 0 16 16" },
      { d: "M50 46h16v26q0 10-8 18-8-8-8-18z", as: "water" },
      { d: "M94 14a22 22 0 1 0 .1 0zM94 20v16h12" },
    ],
  },
  {
    id: "watch",
    do: "Mark the level. Radio level and time every five minutes.",
    why: "Clear the strainer with the pump stopped. Refuel stopped and cool. Level rises with the pump at full: say so at once, get ready to leave.",
    picture: [
      { d: "M24 6V92M24 20h10M24 36h16M24 52h10M24 68h16" },
      { d: "M0 60q10-6 20 0t20 0 20 0V96H0z", as: "water" },
      { d: "M76 34h22v48H76zM80 34V8M80 44h14M80 52h14M82 66h4M90 66h4" },
      { d: "M104 20q8 8 0 18M112 14q12 14 0 30" },
    ],
  },
];
