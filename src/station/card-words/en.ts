import type { CardWords } from "./card-words.ts";

/** The card's own words in this language; not yet read by a native speaker. */
export const en: CardWords = {
  name: "English",
  title: "Pump: follow the pictures, one by one",
  stop: "To stop",
  noWater: "No water within one minute",
  kit: "Kit",
  channel: "Radio channel",
  notRead: "Not yet read by a native speaker",
  first: "The unit's own manual and the person in charge come first.",
  noWords: "Not yet in this language: follow the picture.",
  signals: { DANGER: "DANGER", WARNING: "WARNING", CAUTION: "CAUTION", NOTICE: "NOTICE" },
  cautions: {
    "carbon-monoxide":
      "Exhaust gas has no smell and kills in minutes. Open deck only. Headache: stop it, into the wind.",
    "petrol-vapour": "Petrol vapour burns and explodes. No flame, no smoking, no switches.",
    "never-pump-fuel": "Pumping fuel means fire. Fuel on the water or its smell: do not start; running: stop it.",
    "electric-shock": "The water can be live and kill. Plug out before anyone touches the pump.",
    "refuel-stopped-and-cool": "Fuel on a hot engine burns at once. Refuel only with it stopped and cool.",
    "opened-wrapping": "Vapour in the bag: do not lean in for two minutes.",
    "load-overhead": "Nobody under the load or between load and hull: it crushes.",
    "hydraulic-injection": "Oil from a thin hose goes through skin. Never touch a leak. Hit: doctor at once.",
    "pressurised-hose": "The hose whips. Tie it before starting. Stop before touching a coupling.",
    "hot-exhaust": "The exhaust burns hands and hoses, long after stopping.",
    "recoil-kick": "The cord snatches back. Do not wind it round the hand. Nobody behind you.",
    "heavy-lift": "Heavy: two people or more, legs bent.",
  },
};
