import type { CardWords } from "./card-words.ts";

/** The card's own words in this language; not yet read by a native speaker. */
export const nb: CardWords = {
  name: "Norsk",
  title: "Pumpe: følg bildene, ett etter ett",
  stop: "Stoppe",
  noWater: "Ikke vann innen ett minutt",
  kit: "Sett",
  channel: "Radiokanal",
  notRead: "Ennå ikke lest av noen med språket som morsmål",
  first: "Utstyrets egen håndbok og den som leder, går først.",
  noWords: "Ennå ikke på dette språket: følg bildet.",
  signals: { DANGER: "FARE", WARNING: "ADVARSEL", CAUTION: "FORSIKTIG", NOTICE: "MERK" },
  cautions: {
    "carbon-monoxide": "Eksos lukter ikke og dreper på minutter. Bare i friluft. Hodepine: stopp, opp i vinden.",
    "petrol-vapour": "Bensindamp brenner og eksploderer. Ingen ild, ikke røyk, ingen brytere.",
    "never-pump-fuel": "Å pumpe drivstoff gir brann. Drivstoff eller lukt: ikke start; går den: stopp.",
    "electric-shock": "Vannet kan være strømførende og drepe. Støpselet ut før noen rører pumpen.",
    "refuel-stopped-and-cool": "Drivstoff på varm motor tar fyr. Fyll bare med stanset og kald motor.",
    "opened-wrapping": "Damp i sekken: ikke bøy deg inn på to minutter.",
    "load-overhead": "Ingen under lasten eller mellom last og skrog: den knuser.",
    "hydraulic-injection": "Olje fra tynn slange går gjennom huden. Rør aldri en lekkasje. Truffet: lege straks.",
    "pressurised-hose": "Slangen slår. Bind den før start. Stopp før du rører en kobling.",
    "hot-exhaust": "Eksosen brenner hender og slanger, lenge etter stopp.",
    "recoil-kick": "Snora kan slå tilbake. Ikke surr den om hånden. Ingen bak deg.",
    "heavy-lift": "Tungt: to eller flere, bøyde knær.",
  },
};
