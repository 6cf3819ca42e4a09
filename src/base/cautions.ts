import { assert } from "./errors.ts";

export type SignalWord = "DANGER" | "WARNING" | "CAUTION" | "NOTICE";

/**
 * What each signal word says of a hazard, gravest first. DANGER is kept for the most extreme situations; NOTICE never
 * stands for a hazard to a person.
 *
 * @source ANSI Z535.4-2007, 4.14.1 to 4.14.4, as quoted by a sign maker's standards page
 *   (safetylabel.com, "ANSI Z535.4 signal words"); ISO 3864-2 uses the first three in the same sense.
 *   The standards themselves were not in hand.
 */
export const SIGNAL_WORDS: Readonly<Record<SignalWord, string>> = {
  DANGER: "A hazardous situation which, if not avoided, will result in death or serious injury.",
  WARNING: "A hazardous situation which, if not avoided, could result in death or serious injury.",
  CAUTION: "A hazardous situation which, if not avoided, could result in minor or moderate injury.",
  NOTICE: "Practices not related to personal injury.",
};

export type CautionId =
  | "carbon-monoxide"
  | "petrol-vapour"
  | "smell-before-start"
  | "never-pump-fuel"
  | "refuel-stopped-and-cool"
  | "opened-wrapping"
  | "electric-shock"
  | "unguarded-flywheel"
  | "rotating-parts"
  | "spark-at-open-cylinder"
  | "free-surface"
  | "no-stable-lie"
  | "no-one-below-alone"
  | "load-overhead"
  | "hot-exhaust"
  | "noise"
  | "heavy-lift"
  | "pressurised-hose"
  | "strainer-suction"
  | "recoil-kick"
  | "slippery-deck"
  | "line-pulls"
  | "batteries-under-water"
  | "under-tow"
  | "pinch-points"
  | "cleaning-agents"
  | "never-run-dry"
  | "foul-water-exposure"
  | "estimate"
  | "unit-manual-first";

/** A hazard in three sentences: what it is, what it does, how to avoid it. */
export interface Caution {
  readonly id: CautionId;
  readonly signal: SignalWord;
  /** A few words naming the hazard, for a heading. */
  readonly hazard: string;
  /** What the hazard is. */
  readonly what: string;
  /** What happens if it is not avoided. */
  readonly consequence: string;
  /** What to do, as instructions. */
  readonly avoid: string;
}

/**
 * Every caution the program can give, gravest first.
 *
 * @source "carbon-monoxide": NIOSH 96-118a, Preventing Carbon Monoxide Poisoning from Small Gasoline-Powered
 *   Engines and Tools, 1996; "noise": NIOSH recommended limit, 85 dBA over 8 h with 3 dB exchange;
 *   "opened-wrapping" (two minutes, the phone upwind), "never-run-dry" (the strainer moved), "heavy-lift", "smell-before-start", "batteries-under-water",
 *   "under-tow" and the rest: common practice, FROM MEMORY
 */
const CAUTIONS: readonly Caution[] = [
  caution("carbon-monoxide", "DANGER", "Carbon monoxide", {
    what: "The engine makes carbon monoxide, which has no colour and no smell.",
    consequence: "It disables and kills within minutes, also with doors open or a fan running.",
    avoid:
      "Run the engine only on open deck, exhaust downwind and away from every hatch and vent. Headache or nausea in anyone: stop the engine, get them into open air, call for medical help.",
  }),
  caution("petrol-vapour", "DANGER", "Petrol vapour", {
    what: "Petrol gives off vapour that lies low, spreads and lights from any spark or hot part.",
    consequence: "It burns or explodes, and breathing it in a closed space kills.",
    avoid: "Work in open air. No flame, no smoking, no switches. Wipe up spills and let them dry before starting.",
  }),
  caution("smell-before-start", "DANGER", "Petrol not yet smelt", {
    what: "Petrol vapour lies in the bilge and over the water before anyone at the hatch smells it.",
    consequence: "The first spark, of a starter, a switch or a bilge pump, blows her up.",
    avoid:
      "Ask what fuel she carries. Smell low down, at the hatch and over the water, before anything is started or switched. Any smell: start nothing.",
  }),
  caution("never-pump-fuel", "DANGER", "Fuel in the water", {
    what: "A pump set's engine, motor or plug can light fuel, or water that carries a layer of fuel.",
    consequence: "Fire or explosion on a vessel with people aboard.",
    avoid: "Smell and look before priming. Fuel on the water: do not pump, stop the engine, tell the person in charge.",
  }),
  caution("electric-shock", "DANGER", "Electric shock", {
    what: "Water, a damaged cable or a wet plug can bring mains voltage to the pump, the hose and the water.",
    consequence: "A person in or touching that water is killed.",
    avoid:
      "Feed the pump only through the residual current device, tested today. Plug and switch with dry hands on a dry deck. Nobody stands in the water while the plug is in. Unplug before touching the pump.",
  }),
  caution("free-surface", "DANGER", "Loose water", {
    what: "Water free to run from side to side takes away the vessel's ability to stay upright.",
    consequence: "A vessel that floats high enough can still roll over, with little notice.",
    avoid:
      "Clear loose and high water first. Do not pump one side alone while she lists without knowing why. Watch the roll: longer and slower means less stability. The person in charge decides who stays aboard.",
  }),
  caution("no-stable-lie", "DANGER", "No stable lie", {
    what: "With this hull, weight and water there is no angle at which she comes to rest afloat.",
    consequence: "A boat so can roll over or go down at any moment, and nothing of this answer can be relied on.",
    avoid:
      "Nobody below. Look at her, not at figures: list, slow roll, not coming back. Check what was given, her centre of gravity first. The person in charge decides when people leave.",
  }),
  caution("refuel-stopped-and-cool", "WARNING", "Refuelling", {
    what: "Petrol spilt on a running or hot engine lights at once.",
    consequence: "Burns to the person filling and fire on deck.",
    avoid:
      "Stop the engine and let it cool. Keep the spout on the tank neck, metal to metal. No flame. Wipe spills, close the cap, then start.",
  }),
  caution("opened-wrapping", "WARNING", "Vapour in the wrapping", {
    what: "Petrol vapour gathers in a wrapping that has been closed for months.",
    consequence: "One deep breath can make a person collapse, and a spark lights it.",
    avoid:
      "Open it, stand upwind, wait two minutes, then lean in. No flame, no smoking. A phone is a spark: lay it upwind, two paces off.",
  }),
  caution("unguarded-flywheel", "WARNING", "Unguarded flywheel", {
    what: "With the recoil starter off, the flywheel turns in the open and the cord can wrap round it.",
    consequence: "It takes in fingers, sleeves, hair and lanyards, and throws the cord's end.",
    avoid:
      "Sleeves tight, hair and lanyards tucked in, no loose gloves. Knot at the notch, never round the hand. Everyone else two paces back. Hands clear the moment it fires; refit the starter before the next job.",
  }),
  caution("rotating-parts", "WARNING", "Turning parts", {
    what: "Fan, flywheel and impeller turn while the engine turns, also on the starter cord alone.",
    consequence: "Fingers are cut or broken.",
    avoid: "Pull the plug lead before hands go near a turning part. Guards on before starting.",
  }),
  caution("spark-at-open-cylinder", "WARNING", "Spark at an open cylinder", {
    what: "A plug sparking beside an open plug hole lights the mixture blown out of it.",
    consequence: "Burns to hands and face.",
    avoid: "Test the spark away from the hole and the tank, with the fuel cock shut and the hole covered.",
  }),
  caution("no-one-below-alone", "WARNING", "Alone below", {
    what: "Water, vapour and sudden rolling make a flooding space no place for one person.",
    consequence: "A person trapped or overcome there is not found in time.",
    avoid: "Two together with a way out kept clear, a line, and one on deck who calls every minute.",
  }),
  caution("line-pulls", "WARNING", "Being pulled by a line", {
    what: "A line on a kit in the water takes the vessel's drift and the sea's surge.",
    consequence: "It drags a hand, a foot or a person over the side.",
    avoid: "Stand clear of the bight. Hold the line, never wrap it. Do not tie it to the vessel under a helicopter.",
  }),
  caution("batteries-under-water", "WARNING", "Batteries under water", {
    what: "Sea water over lead batteries gives off chlorine, and current runs where it should not.",
    consequence:
      "Chlorine in a closed space burns the lungs; sparks light vapour; lithium batteries can burn under water.",
    avoid:
      "Know where they stand and how high the water is. Nobody below once they are under. Isolate them before that, if the isolator is dry and nothing is smelt.",
  }),
  caution("under-tow", "WARNING", "Way through the water", {
    what: "Under tow her bow wave and trim change: more comes in, at the hole and over the deck.",
    consequence: "A boat that held while she lay still is swamped or rolls over on the line.",
    avoid:
      "Slow. Nobody aboard who need not be. Sound at once after taking her in tow and after every change of speed; someone ready to slip the line.",
  }),
  caution("load-overhead", "WARNING", "Load overhead", {
    what: "A kit being hoisted or lowered swings, and a full hose or container weighs more than it looks.",
    consequence: "It crushes anyone under or against it.",
    avoid: "Nobody under the load. Let it touch down before handling it. Drain hoses before lifting.",
  }),
  caution("pressurised-hose", "WARNING", "Hose under pressure", {
    what: "A hose under pressure whips when a coupling lets go.",
    consequence: "It strikes eyes, head and hands.",
    avoid: "Cams closed and tied before starting. Stop the pump before touching a coupling. Secure the free end.",
  }),
  caution("hot-exhaust", "CAUTION", "Hot exhaust", {
    what: "The exhaust and the parts about it stay hot long after the engine stops.",
    consequence: "Burns to skin, melted gloves, hoses and wrappings.",
    avoid: "Keep hands, hoses and lines off. Let it cool before stowing: palm held near it feels no warmth.",
  }),
  caution("noise", "CAUTION", "Noise", {
    what: "Beside the engine the noise is above what ears stand for long.",
    consequence: "Hearing is lost for good, and calls for help go unheard.",
    avoid: "Wear ear protection within a few paces. Agree hand signals first. Look at each other.",
  }),
  caution("heavy-lift", "CAUTION", "Heavy lift", {
    what: "The closed kit is heavier than any one person lifts well, and a wet deck makes it worse.",
    consequence: "Hurt backs, crushed toes, a kit over the side.",
    avoid:
      "Use as many people as the lid says, one calls the lift, handles only, knees bent. Use the davit if there is one.",
  }),
  caution("strainer-suction", "CAUTION", "Suction at the strainer", {
    what: "The running strainer holds fast whatever it draws on.",
    consequence: "Hands, sleeves and gear are held under water, and the pump loses its prime.",
    avoid: "Stop the pump before clearing the strainer by hand.",
  }),
  caution("recoil-kick", "CAUTION", "Starter kick", {
    what: "The cord can snatch back as the engine fires or misfires.",
    consequence: "Wrenched wrist, elbow or fingers.",
    avoid: "Feet set, pull until it bites, then one long steady pull. Let it run back in the hand, do not let go.",
  }),
  caution("slippery-deck", "CAUTION", "Slippery deck", {
    what: "Water, oil and hose underfoot on a moving deck.",
    consequence: "Falls, and a pull on the cord that ends in one.",
    avoid: "Brace the feet before pulling. Lead hoses clear of where people step. Discharge outboard.",
  }),
  caution("pinch-points", "CAUTION", "Pinched fingers", {
    what: "Clamp rings, cams and lids close hard.",
    consequence: "Pinched or broken fingers.",
    avoid: "Hold by the levers and handles. One person closes, the other keeps hands away.",
  }),
  caution("cleaning-agents", "CAUTION", "Degreaser and spray", {
    what: "Degreaser and spray lubricant harm eyes and skin, and some burn.",
    consequence: "Sore eyes and skin; fire on a hot part.",
    avoid: "Gloves and eye protection, open air, engine cool. Follow the label.",
  }),
  caution("foul-water-exposure", "CAUTION", "Foul water", {
    what: "Bilge water carries oil, sewage and sharp things.",
    consequence: "Cuts, infection and sore skin.",
    avoid: "Gloves and boots. Wash hands before eating. Rinse the kit with fresh water.",
  }),
  caution("never-run-dry", "NOTICE", "Running dry", {
    what: "The pump's seal is cooled by the water it moves.",
    consequence: "Run dry, the seal burns and the pump will not prime again.",
    avoid:
      "No water within a minute: stop, and look for an air leak. Stop before the strainer is moved, or keep it in a bucket of water on the way.",
  }),
  caution("estimate", "NOTICE", "An estimate", {
    what: "This figure is computed from what was entered and from a model that leaves things out.",
    consequence: "The real vessel and pump will differ from it.",
    avoid:
      "Compare it with what you see and sound. The person in charge, the unit's manual and local rules come first.",
  }),
  caution("unit-manual-first", "NOTICE", "The unit's own manual", {
    what: "This pattern is general; your unit and its manual know your equipment.",
    consequence: "A step that suits one kit can harm another.",
    avoid: "Where they differ, follow the manual and report the step.",
  }),
];

const BY_ID: ReadonlyMap<string, Caution> = new Map(CAUTIONS.map((one) => [one.id, one]));

/** Every caution, gravest first. */
export function allCautions(): readonly Caution[] {
  return CAUTIONS;
}

/** True where the text is the id of a caution. */
export function isCautionId(text: string): text is CautionId {
  return BY_ID.has(text);
}

/** The caution of this id. */
export function cautionNamed(id: CautionId): Caution {
  const found = BY_ID.get(id);
  assert(found, `no caution ${id}`);
  return found;
}

/** Finds a caution by a text that may not be one, such as a pattern's. */
export function findCaution(id: string): Caution | undefined {
  return BY_ID.get(id);
}

function caution(
  id: CautionId,
  signal: SignalWord,
  hazard: string,
  text: { readonly what: string; readonly consequence: string; readonly avoid: string },
): Caution {
  return { id, signal, hazard, ...text };
}
