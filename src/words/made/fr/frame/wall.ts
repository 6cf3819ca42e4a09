/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { WallWords } from "#src/words/made/frame/wall.ts";

const words: WallWords = {
  title: () => "Mur d'un lieu",
  short: () => "Mur",
  asking: () => "Demande à la station.",
  noLink: () => "Ouvrez le lien entier que le responsable des kits a fait pour cet écran.",
  withdrawn: () =>
    "Ce lien n'ouvre rien : il a été retiré, ou n'est pas entier. Demandez-en un autre au responsable des kits.",
  wasSo: (d) => "La station ne répond pas. C'était ainsi à " + d.time + ".",
  notReached: () => "La station ne répond pas. Cet écran continue d'essayer.",
  order: () => "À prendre dans cet ordre",
  not: (d) => "Pas : " + d.kits,
  kitIs: (d) => d.kit + " (" + d.standing + ")",
  week: () => "À faire cette semaine",
  none: () => "Rien à faire.",
  foot: (d) => d.station + ", " + d.day + ". Estimations ; ce qui est vu passe avant.",
  work: (d) => d.what + ". " + d.when,
  takers: (d) => d.names + ".",
  flushBy: (d) => "Rincer avant " + d.time + ".",
  now: () => "Maintenant.",
  by: (d) => "Avant le " + d.day + ".",
  more: (d) => "Et " + d.count + " de plus.",
};
export default words;
