/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { LaunchKitsWords } from "#src/words/made/casualty/launch-kits.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: LaunchKitsWords = {
  kits: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " kit",
      other: strictNumber("fr", d.count, 0, "count") + " kits",
    }),
  toFollow: (d) => d.count + " à suivre",
  moreToFollow: () => "d'autres à suivre",
  takeNone: (d) => "Aucun kit à prendre : un colmatage, " + d.more,
  noPump: () =>
    "Aucune pompe de cette station ne peut venir : demandez à une autre station maintenant, et prenez un colmatage",
  takeMoreThan: (d) =>
    plural(d.count, 0, fr, {
      one: "Plus de " + strictNumber("fr", d.count, 0, "count") + " kit, et un colmatage",
      other: "Plus de " + strictNumber("fr", d.count, 0, "count") + " kits, et un colmatage",
    }),
  take: (d) =>
    plural(d.count, 0, fr, {
      one: "Prendre " + strictNumber("fr", d.count, 0, "count") + " kit",
      other: "Prendre " + strictNumber("fr", d.count, 0, "count") + " kits",
    }),
  takeAndPatch: (d) =>
    plural(d.count, 0, fr, {
      one: "Prendre " + strictNumber("fr", d.count, 0, "count") + " kit et un colmatage",
      other: "Prendre " + strictNumber("fr", d.count, 0, "count") + " kits et un colmatage",
    }),
  takeNow: (d) => "Prendre " + d.count + " maintenant, " + d.more,
  takeNowAndPatch: (d) => "Prendre " + d.count + " maintenant, " + d.more + ", et un colmatage",
  takeNowPatch: (d) => "Prendre " + d.count + " maintenant, un colmatage, " + d.more,
  late: (d) => "Chance que son livet soit encore sec quand votre première pompe tourne : " + d.chance + ".",
  lateWarning: (d) =>
    "Chance que son livet soit encore sec quand votre première pompe tourne : " +
    d.chance +
    ". Demandez des bateaux plus proches. Que les gens à bord soient prêts à le quitter.",
  lateHazard: () => "Il peut avoir coulé avant que vous ne pompiez",
  lateShort: () => "ATTENTION : il peut avoir coulé avant que vous ne pompiez.",
  tellMore: () => "En dire plus : brèche, eau à l'intérieur, vitesse de montée",
  firstNone: () => "Aucun kit ne peut partir avec le premier bateau",
  firstKits: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " kit avec le premier bateau",
      other: strictNumber("fr", d.count, 0, "count") + " kits avec le premier bateau",
    }),
  thenKits: (d) => "puis " + d.kits,
  askAll: () => "demandez à une autre station tout ce qu'elle a",
  askFor: (d) => "demandez-en " + d.count + " à une autre station",
  next: (d) => d.before + " ; " + d.next,
  sentence: (d) => d.clauses + ".",
  whyNone: (d) =>
    plural(d.count, 0, fr, {
      one:
        "Même " +
        strictNumber("fr", d.count, 0, "count") +
        " kit ne tient qu'avec une chance d'environ " +
        d.chance +
        ". Réduisez d'abord la brèche ; prenez tout ce qu'il y a.",
      other:
        "Même " +
        strictNumber("fr", d.count, 0, "count") +
        " kits ne tiennent qu'avec une chance d'environ " +
        d.chance +
        ". Réduisez d'abord la brèche ; prenez tout ce qu'il y a.",
    }),
  gain: (d) =>
    plural(d.count, 0, fr, {
      one:
        strictNumber("fr", d.count, 0, "count") +
        " kit pour gagner sur l'eau, neuf fois sur dix, en comptant les kits qui ne démarrent pas.",
      other:
        strictNumber("fr", d.count, 0, "count") +
        " kits pour gagner sur l'eau, neuf fois sur dix, en comptant les kits qui ne démarrent pas.",
    }),
  gainIfAfloat: (d) =>
    plural(d.count, 0, fr, {
      one:
        strictNumber("fr", d.count, 0, "count") +
        " kit pour gagner sur l'eau, neuf fois sur dix s'il flotte encore alors, en comptant les kits qui ne démarrent pas.",
      other:
        strictNumber("fr", d.count, 0, "count") +
        " kits pour gagner sur l'eau, neuf fois sur dix s'il flotte encore alors, en comptant les kits qui ne démarrent pas.",
    }),
  hold: (d) =>
    plural(d.count, 0, fr, {
      one:
        strictNumber("fr", d.count, 0, "count") +
        " kit pour tenir l'eau, mais non la gagner, neuf fois sur dix, en comptant les kits qui ne démarrent pas.",
      other:
        strictNumber("fr", d.count, 0, "count") +
        " kits pour tenir l'eau, mais non la gagner, neuf fois sur dix, en comptant les kits qui ne démarrent pas.",
    }),
  holdIfAfloat: (d) =>
    plural(d.count, 0, fr, {
      one:
        strictNumber("fr", d.count, 0, "count") +
        " kit pour tenir l'eau, mais non la gagner, neuf fois sur dix s'il flotte encore alors, en comptant les kits qui ne démarrent pas.",
      other:
        strictNumber("fr", d.count, 0, "count") +
        " kits pour tenir l'eau, mais non la gagner, neuf fois sur dix s'il flotte encore alors, en comptant les kits qui ne démarrent pas.",
    }),
  alone: (d) => d.why + " Deux quand même : un seul qui tombe en panne n'en laisse aucun.",
  patchNone: (d) =>
    plural(d.count, 0, fr, {
      one:
        "Brèche réduite de moitié, même " +
        strictNumber("fr", d.count, 0, "count") +
        " kit peut ne pas tenir : évacuez tôt.",
      other:
        "Brèche réduite de moitié, même " +
        strictNumber("fr", d.count, 0, "count") +
        " kits peuvent ne pas tenir : évacuez tôt.",
    }),
  patchHolds: (d) =>
    plural(d.count, 0, fr, {
      one:
        "Brèche réduite de moitié par un bouchon ou un colmatage, " +
        strictNumber("fr", d.count, 0, "count") +
        " kit tient avec une chance d'environ " +
        d.chance +
        ".",
      other:
        "Brèche réduite de moitié par un bouchon ou un colmatage, " +
        strictNumber("fr", d.count, 0, "count") +
        " kits tiennent avec une chance d'environ " +
        d.chance +
        ".",
    }),
  noCans: (d) =>
    "Carburant : des réservoirs pleins suffisent pour les " +
    d.duration +
    " prévues. On ne sait pas ici s'ils sont pleins : regardez avant le départ.",
  cansGuessed: (d) =>
    plural(d.count, 0, fr, {
      one:
        "Carburant : réservoir et consommation inconnus. Par supposition " +
        strictNumber("fr", d.count, 0, "count") +
        " bidon de 5 L avec chaque kit, " +
        d.total +
        " en tout.",
      other:
        "Carburant : réservoir et consommation inconnus. Par supposition " +
        strictNumber("fr", d.count, 0, "count") +
        " bidons de 5 L avec chaque kit, " +
        d.total +
        " en tout.",
    }),
  cans: (d) =>
    plural(d.count, 0, fr, {
      one:
        "Carburant : " +
        strictNumber("fr", d.count, 0, "count") +
        " bidon de 5 L avec chaque kit, " +
        d.total +
        " en tout.",
      other:
        "Carburant : " +
        strictNumber("fr", d.count, 0, "count") +
        " bidons de 5 L avec chaque kit, " +
        d.total +
        " en tout.",
    }),
  arrival: (d) =>
    "Votre première pompe peut pomper dans environ " +
    d.duration +
    ". Chance que son livet soit encore sec à ce moment : " +
    d.chance +
    ".",
  arrivalNone: () =>
    "Aucune pompe de cette station ne peut venir : il n'y a pas d'heure de première pompe à dire. Que les gens à bord soient prêts à le quitter.",
  arrivalFollows: () =>
    "Le premier bateau n'apporte aucune pompe. On ne sait pas ici quand une pompe qui suit pourra pomper.",
  duration: (d) => d.from + " à " + d.to,
  anyChance: () => "entre aucune et toutes",
  inHundred: (d) =>
    plural(d.count, 0, fr, {
      "0": "moins de 1 sur 100",
      "100": "plus de 99 sur 100",
      other: strictNumber("fr", d.count, 0, "count") + " sur 100",
    }),
  between: (d) => d.low + " à " + d.high + " sur 100",
  moreThan: (d) => "plus de " + d.low + " sur 100",
  lessThan: (d) => "moins de " + d.high + " sur 100",
};
export default words;
