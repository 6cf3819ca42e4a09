/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { HazardsWords } from "#src/words/made/frame/hazards.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: HazardsWords = {
  hazards: () => "Dangers",
  heavyLift: () => "deux pour lever, un seul commande",
  heavyLiftOf: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " personne au levage, " + d.mass,
      other: strictNumber("fr", d.count, 0, "count") + " personnes au levage, " + d.mass + " ; une seule commande",
    }),
  linePulls: () => "tenez le bout, ne l'enroulez jamais",
  smellBeforeStart: () => "sentez au ras du fond, avant tout démarrage ou interrupteur",
  carbonMonoxide: () => "échappement sous le vent, loin de tout panneau ; personne sous le vent",
  pressurisedHose: () => "cames fermées et liées, tenez le bout libre",
  turnsByKey: () => "mains et manches dégagées, prévenez, puis la clé",
  recoilKick: () => "pieds calés, tirez jusqu'à la prise, puis une longue traction",
  electricShock: () => "mains sèches, pont sec, par le disjoncteur ; personne dans l'eau",
  notBelowAlone: () => "à deux, avec une issue, et un sur le pont qui appelle",
  batteriesUnder: () => "sachez où elles sont ; personne en bas une fois qu'elles sont sous l'eau",
  underTow: () => "lentement ; sondez aussitôt, et après chaque changement de vitesse",
};
export default words;
