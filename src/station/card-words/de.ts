import type { CardWords } from "./card-words.ts";

/** The card's own words in this language; not yet read by a native speaker. */
export const de: CardWords = {
  name: "Deutsch",
  title: "Pumpe: den Bildern folgen, eins nach dem anderen",
  stop: "Anhalten",
  noWater: "Kein Wasser nach einer Minute",
  kit: "Satz",
  channel: "Funkkanal",
  notRead: "Noch von keinem Muttersprachler gelesen",
  first: "Handbuch des Geräts und Einsatzleitung gehen vor.",
  noWords: "Noch nicht in dieser Sprache: dem Bild folgen.",
  signals: { DANGER: "GEFAHR", WARNING: "WARNUNG", CAUTION: "VORSICHT", NOTICE: "HINWEIS" },
  cautions: {
    "carbon-monoxide": "Abgas riecht nicht und tötet in Minuten. Nur im Freien. Kopfschmerz: abstellen, in den Wind.",
    "petrol-vapour": "Benzindampf brennt und explodiert. Keine Flamme, nicht rauchen, nichts schalten.",
    "never-pump-fuel": "Kraftstoff pumpen heißt Feuer. Kraftstoff oder Geruch: nicht starten; läuft er: abstellen.",
    "electric-shock": "Das Wasser kann unter Strom stehen und töten. Stecker ziehen, bevor jemand die Pumpe berührt.",
    "refuel-stopped-and-cool": "Kraftstoff auf heißem Motor brennt sofort. Nur bei stehendem, kaltem Motor tanken.",
    "opened-wrapping": "Dampf im Sack: zwei Minuten nicht hineinbeugen.",
    "load-overhead": "Niemand unter der Last oder zwischen Last und Rumpf: sie erdrückt.",
    "hydraulic-injection": "Öl aus dünnem Schlauch dringt in die Haut. Leck nie berühren. Getroffen: sofort zum Arzt.",
    "pressurised-hose": "Der Schlauch schlägt. Vor dem Start festbinden. Abstellen, bevor man eine Kupplung anfasst.",
    "hot-exhaust": "Der Auspuff verbrennt Hände und Schläuche, noch lange danach.",
    "recoil-kick": "Das Seil kann zurückschlagen. Nicht um die Hand wickeln. Niemand dahinter.",
    "heavy-lift": "Schwer: zu zweit oder mehr, Knie gebeugt.",
  },
};
