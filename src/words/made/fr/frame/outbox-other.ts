/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { OutboxOtherWords } from "#src/words/made/frame/outbox-other.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
import { plural, strictNumber } from "#src/words/cases.ts";
const words: OutboxOtherWords = {
  goingBack: () => "Perdu par la station, en route vers elle",
  goingBackMore: () =>
    "Elle les a eues une fois, et le montre par sa propre marque. Elles y retournent d'elles-mêmes, quel que soit leur auteur.",
  goingBackLines: () => "Lignes qui retournent à la station",
  onlyHere: () => "Seulement sur cet appareil",
  onlyHereNews: (d) =>
    plural(d.count, 0, fr, {
      one: "Rien ne montre que la station a eu cette ligne",
      other: "Rien ne montre que la station a eu ces lignes",
    }),
  onlyHereMore: () =>
    "Sa copie est plus ancienne que sa marque sur ces lignes, ou sa base de données est une autre. Chacune y retourne quand son auteur se connecte sur l'appareil où elle a été écrite. Ou bien un administrateur dit, ici, qu'elles sont authentiques : la station les prend alors toutes, et son journal dit qui l'a affirmé.",
  onlyHereLines: () => "Lignes présentes seulement sur cet appareil",
  genuine: () => "Elles sont authentiques : les prendre",
  askAdministrator: () =>
    "Demandez à un administrateur de se connecter sur cet appareil. D'ici là, n'en supprimez rien.",
  notTakenIn: () => "Pas pris",
  notReached: (d) => "La station n'a pas été jointe : " + d.because + ".",
  differ: () => "Différent de ce qu'a la station",
  differNews: () => "La station a d'autres lignes sous les mêmes identifiants",
  differMore: () =>
    "Cela n'arrive pas tout seul. Enregistrez dans un fichier tout ce qui est gardé ici, et donnez-le à un administrateur.",
  differLines: () => "Lignes qui diffèrent de celles de la station",
  broughtBack: () => "Ramené par des appareils",
  broughtBackMore: () =>
    "La station a été remise à une copie antérieure. Elle avait perdu ces lignes ; des appareils qui les détenaient les ont rendues.",
  takenForOthers: () => "Pris pour d'autres appareils",
  takenForOthersMore: () =>
    "Lignes de fiches jamais venues de l'appareil qui les a écrites. Un autre appareil les avait par code ou par fichier, et un administrateur a affirmé qu'elles sont authentiques.",
  when: () => "Quand",
  lines: () => "Lignes",
  lineCount: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ligne",
      other: strictNumber("fr", d.count, 0, "count") + " lignes",
    }),
  from: () => "De",
  inUseBy: () => "Utilisé par",
  shownBy: () => "Prouvé par",
  byMark: () => "la marque de la station elle-même",
  byWord: () => "leur parole",
  handed: () => "D'autres appareils",
  handedMore: () =>
    "Reçues par code ou par fichier. Elles ne sont pas prouvées : la station prend chacune de l'appareil qui l'a écrite, et elle disparaît alors d'ici d'elle-même. Amenez cet appareil à un réseau.",
  handedLines: () => "Lignes d'autres appareils",
  removeHanded: () => "Les supprimer de cet appareil",
  notRemoved: () => "Pas supprimé",
  removeHandedAsk: () => "Supprimer les lignes d'autres appareils ?",
  removeHandedDo: () => "Les supprimer ici",
  removeHandedMore: () => "Elles ne comptent plus ici. Si leur propre appareil est perdu aussi, elles ont disparu.",
  writerLost: () => "L'appareil qui les a écrites est perdu ou cassé ?",
  writerLostMore: () =>
    "Vous pouvez affirmer qu'elles sont authentiques. La station les prend alors sous le nom de leurs auteurs, et son journal dit pour toujours que vous l'avez affirmé. Si cet appareil vient malgré tout, ce qu'il en a est identique ou refusé.",
};
export default words;
