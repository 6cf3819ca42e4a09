import type { Caution, CautionId, SignalWord } from "./caution.ts";

/**
 * Every caution the program can give, gravest first.
 *
 * @source "carbon-monoxide": NIOSH 96-118a, Preventing Carbon Monoxide Poisoning from Small Gasoline-Powered
 *   Engines and Tools, 1996; "noise": NIOSH recommended limit, 85 dBA over 8 h with 3 dB exchange;
 *   "opened-wrapping" (two minutes, the phone upwind), "never-run-dry" (the strainer moved), "heavy-lift", "smell-before-start", "batteries-under-water",
 *   "under-tow" and the rest: common practice, FROM MEMORY
 */
export const CAUTIONS: readonly Caution[] = [
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
    avoid:
      "Smell and look before starting. Fuel on the water: do not pump, stop the engine, tell the person in charge.",
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
    what: "Fuel spilt on a running or hot engine lights at once.",
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
  caution("crushing-load", "WARNING", "Between load and hull", {
    what: "A load on a wire swings with the boat, and closes on the hull, the rail or the frame beside it.",
    consequence: "It crushes hands, feet and whoever stands between.",
    avoid:
      "Nobody between the load and anything fixed. Hold it off with tag lines, from outside its swing, never wrapped round a hand. One person signals; anyone may call stop.",
  }),
  caution("hydraulic-injection", "WARNING", "Hydraulic oil under pressure", {
    what: "Oil under pressure leaves a pinhole as a jet that nobody sees, and goes through gloves and skin.",
    consequence: "Oil under the skin costs fingers or a hand, although the wound looks small.",
    avoid:
      "Never feel for a leak with a hand: pass a piece of card along. Engine stopped and the gauge at nothing before a coupling is parted. Oil under the skin: to a surgeon at once, say that it is hydraulic oil.",
  }),
  caution("diesel-fuel", "WARNING", "Diesel", {
    what: "Diesel gives off little vapour when cool. As a mist, on a rag or on a hot part it burns, and it is slippery.",
    consequence:
      "Fire on a hot engine, falls on deck, sore skin and eyes; swallowed, it goes into the lungs and kills.",
    avoid:
      "Engine stopped and cool before the cap is off. Gloves. Wipe up every drop before anyone walks there. No flame, no smoking. Swallowed: do not make them vomit, call for medical help.",
  }),
  caution("turns-by-key", "WARNING", "Engine turned by its key", {
    what: "The starter motor turns belt, fan and coupling without any warning, at one touch of the key.",
    consequence: "Fingers, sleeves and lanyards are drawn in; bones are broken.",
    avoid: "Key out, battery switch off, before hands go near. Guards on. Call out before the key is turned.",
  }),
  caution("starter-battery", "WARNING", "Starter battery", {
    what: "A starter battery holds acid or lithium cells, gives off hydrogen on charge, and melts a spanner laid across it.",
    consequence: "It bursts or burns, and throws acid in the eyes.",
    avoid:
      "Eye protection. No spark, no flame; rings and watches off. Minus off first, on last. Charge in open air, by the battery's own charger. Acid in the eye: rinse with water 20 minutes, call for medical help.",
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
  caution("hot-surfaces", "CAUTION", "Hot oil and coolant", {
    what: "Hydraulic oil, its hoses and couplings, and the coolant stay hot after stopping; the coolant is under pressure.",
    consequence: "Burns and scalds to hands and face.",
    avoid: "Gloves. Let it cool before a coupling is parted. Never open the coolant cap of a warm engine.",
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
    consequence: "Hands, sleeves and gear are held under water, and no more water comes.",
    avoid: "Stop the pump before clearing the strainer by hand.",
  }),
  caution("recoil-kick", "CAUTION", "Starter kick", {
    what: "The cord can snatch back as the engine fires or misfires.",
    consequence: "Wrenched wrist, elbow or fingers.",
    avoid:
      "Feet set, pull until it bites, then one long steady pull. Let a recoil cord run back in the hand; a spare cord comes free.",
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

function caution(
  id: CautionId,
  signal: SignalWord,
  hazard: string,
  text: { readonly what: string; readonly consequence: string; readonly avoid: string },
): Caution {
  return { id, signal, hazard, ...text };
}
