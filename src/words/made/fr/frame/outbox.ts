/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { OutboxWords } from "#src/words/made/frame/outbox.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: OutboxWords = {
  title: () => "Pas encore envoyé",
  offline: () => "Pas de liaison avec la station pour le moment",
  offlineMore: () =>
    "Cet appareil continue d'essayer de lui-même. En attendant, tout ce qui est ici est gardé sur son propre disque.",
  byOthers: () => "Écrit ici par d'autres",
  byOthersMore: () => "Envoyé quand ces personnes se connecteront de nouveau sur cet appareil.",
  byOthersLines: () => "Lignes d'autres personnes",
  waiting: () => "En attente d'envoi",
  waitingPhotos: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " photo, envoyée après les lignes.",
      other: strictNumber("fr", d.count, 0, "count") + " photos, envoyées après les lignes.",
    }),
  waitingLines: () => "Lignes en attente d'envoi",
  allSent: () => "Rien de vous n'est en attente",
  allSentMore: () => "Toutes les lignes que vous avez écrites sur cet appareil sont à la station.",
  byHand: () => "À la main",
  sendNow: () => "Essayer d'envoyer maintenant",
  saveHeld: () => "Enregistrer dans un fichier tout ce qui est gardé ici",
  line: () => "Ligne",
  about: () => "Sujet",
  written: () => "Écrite",
  by: () => "Par",
  refused: () => "Refusé par la station",
  refusedMore: () => "Ce que disent ces lignes ne se voit que sur cet appareil.",
  sendAgain: () => "La renvoyer telle quelle",
  removeLine: () => "La supprimer de cet appareil",
  removeAsk: () => "Supprimer cette ligne ?",
  removeDo: () => "Supprimer",
  removeMore: () => "La station ne l'a jamais eue. Une fois supprimée ici, elle n'est plus nulle part.",
  forClock: () => "Refusé à cause de l'horloge",
  forClockLines: () => "Lignes refusées à cause de l'horloge",
  clockUnknown: () => "On ne sait pas de combien l'horloge était fausse quand ces lignes ont été écrites",
  clockUnknownMore: (d) =>
    "Rien n'est perdu : elles restent ici. Dites quand la première a vraiment été écrite, celle datée du " +
    d.at +
    ". Toutes sont décalées de la même différence et renvoyées ; ce qu'elles disent reste tel quel.",
  dayWritten: () => "Jour où elle a été écrite",
  timeWritten: () => "Heure à laquelle elle a été écrite",
  notYetCome: () => "Ce moment n'est pas encore venu.",
  putRight: () => "Corriger les heures et envoyer",
  notPutRight: () => "Pas corrigé",
  clockRefused: (d) => d.difference + " Ces lignes ont été refusées pour cela.",
  clockStillOff: (d) =>
    "Elle l'est encore : réglez d'abord la date, l'heure et le fuseau horaire de cet appareil sur automatique. Ces lignes pourront ensuite être renvoyées, leurs heures corrigées de la même différence : la première, écrite le " +
    d.written +
    ", devient " +
    d.corrected +
    ".",
  clockRightNow: (d) =>
    "Elle a été corrigée depuis. Ces lignes peuvent être renvoyées, leurs heures corrigées de la même différence : la première, écrite le " +
    d.written +
    ", devient " +
    d.corrected +
    ".",
  sendAsTheyAre: () => "C'était l'horloge de la station : les envoyer telles quelles",
  putRightAsk: (d) =>
    plural(d.count, 0, fr, {
      one: "Corriger " + strictNumber("fr", d.count, 0, "count") + " ligne ?",
      other: "Corriger " + strictNumber("fr", d.count, 0, "count") + " lignes ?",
    }),
  putRightDo: () => "Corriger et envoyer",
  putRightMore: (d) =>
    d.difference + " Leurs heures sont décalées d'autant. Ce qu'elles disent reste tel que vous l'avez écrit.",
  kitUnknown: () => "un kit que cet appareil ne connaît pas",
  placeUnknown: () => "un lieu que cet appareil ne connaît pas",
  personUnknown: () => "une personne que cet appareil ne connaît pas",
  partUnknown: () => "une pièce que cet appareil ne connaît pas",
  boatUnknown: () => "une vedette de sauvetage que cet appareil ne connaît pas",
  qualificationUnknown: () => "une qualification que cet appareil ne connaît pas",
  casualtyUnknown: () => "une détresse que cet appareil ne connaît pas",
  visit: () => "une visite",
  device: () => "un appareil",
  station: () => "la station",
  pattern: () => "un modèle",
};
export default words;
