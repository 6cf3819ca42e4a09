/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { NoticesWords } from "#src/words/made/frame/notices.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: NoticesWords = {
  haveRead: () => "J'ai lu ceci",
  emptied: () => "La mémoire de cet appareil a été vidée",
  emptiedMore: (d) =>
    "Il a servi jusqu'au " +
    d.at +
    ". Depuis, le navigateur, ou quelqu'un, a supprimé ce qui était gardé. Les lignes envoyées reviennent de la station. Les lignes non envoyées sont perdues : cherchez ce qui manque et écrivez-le à nouveau.",
  emptiedDo: () => "Mettez cette application sur l'écran d'accueil, et n'effacez pas les données du navigateur.",
  insecure: () => "À cette adresse, l'application ne peut pas être gardée sur l'appareil",
  insecureMore: () =>
    "La liaison n'est pas chiffrée, et le navigateur ne l'ouvre que si la station peut être jointe. Demandez à la personne qui tient le serveur une adresse qui commence par https. Ce que vous écrivez est gardé ici malgré tout.",
  putBack: () => "La station a été remise à une copie antérieure de son journal",
  putBackFound: (d) => "Cet appareil l'a constaté le " + d.at + ".",
  putBackNone: () => "Il ne lui manquait aucune ligne de cet appareil.",
  putBackCame: (d) =>
    plural(d.count, 0, fr, {
      one:
        "Il lui manquait " +
        strictNumber("fr", d.count, 0, "count") +
        " ligne que cet appareil contient ; la station l'a de nouveau.",
      other:
        "Il lui manquait " +
        strictNumber("fr", d.count, 0, "count") +
        " lignes que cet appareil contient ; la station les a toutes de nouveau.",
    }),
  putBackOthers: () =>
    "Ce que seuls d'autres appareils contiennent revient quand chacun d'eux joint la station : ouvrez l'application sur tous.",
  putBackLacks: (d) =>
    plural(d.count, 0, fr, {
      one: "Il lui manque " + strictNumber("fr", d.count, 0, "count") + " ligne de cet appareil.",
      other: "Il lui manque " + strictNumber("fr", d.count, 0, "count") + " lignes de cet appareil.",
    }) + " Ici, elles comptent toujours ; d'autres appareils peuvent ne pas montrer ce qu'elles disent.",
  putBackAllMove: () => "Elles repartent d'elles-mêmes.",
  putBackSomeMove: (d) =>
    plural(d.count, 0, fr, {
      one: "De celles-ci, " + strictNumber("fr", d.count, 0, "count") + " repart d'elle-même.",
      other: "De celles-ci, " + strictNumber("fr", d.count, 0, "count") + " repartent d'elles-mêmes.",
    }),
  putBackKeepOpen: () =>
    "Gardez l'application ouverte et le réseau allumé jusqu'à ce qu'il soit dit ici qu'elles sont arrivées. Ne vous déconnectez pas en supprimant tout.",
  putBackAllStuck: () => "Elles ne partent pas d'elles-mêmes.",
  putBackSomeStuck: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ne part pas d'elle-même.",
      other: strictNumber("fr", d.count, 0, "count") + " ne partent pas d'elles-mêmes.",
    }),
  putBackLink: () => "Voir lesquelles, et que faire",
  flaw: () => "Le journal de la station n'est pas cohérent. Ses nouvelles lignes ne sont pas prises ici.",
  flawMore: () =>
    "Ce que vous écrivez ici est gardé et toujours envoyé. D'autres peuvent voir ce que cet appareil ne voit pas.",
  otherHistory: () => "Le journal de la station n'est pas celui que cet appareil avait vu",
  otherHistoryMore: () =>
    "Ou bien la station a été remise à une copie antérieure, ou bien quelqu'un a changé son journal. Des lignes peuvent manquer ou avoir changé. Prévenez la personne qui s'occupe de la station, et enregistrez ce que cet appareil a gardé : c'est la preuve.",
  otherHistorySave: () => "Enregistrer la preuve dans un fichier",
  otherHistoryKnow: () => "C'est su : continuer à partir d'ici",
  falseSummary: () => "Le tableau que cet appareil a d'abord montré n'était pas ce que dit le journal",
  falseSummaryMore: (d) =>
    "Il venait de la station, en résumé. Une fois toutes les lignes ici, le " +
    d.at +
    ", elles ne l'ont pas confirmé : le résumé était faux, ou la station a perdu des lignes depuis. Il a été jeté, et ce que vous voyez maintenant vient des seules lignes. Revoyez ce que vous avez décidé d'après le premier tableau, et prévenez la personne qui tient le serveur.",
  stationClockMore: () =>
    "Ne réglez pas cet appareil d'après elle. Les lignes gardent l'heure de cet appareil, et la station les prend ; l'heure de leur réception est notée par l'horloge fausse. Dites à la personne qui s'occupe de l'ordinateur de la station de régler la date, l'heure et le fuseau horaire sur automatique.",
  stationAhead: (d) => "L'horloge de la station avance de " + d.span + ".",
  stationBehind: (d) => "L'horloge de la station retarde de " + d.span + ".",
};
export default words;
