/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SheetSeenWords } from "#src/words/made/casualty/sheet-seen.ts";

const words: SheetSeenWords = {
  signs: () => "Signes qu'il faut le quitter",
  goBack: () => "Revenir",
  fuel: () => "Odeur de carburant : arrêter tout pompage",
  wroteFuel: () => "odeur de carburant, toutes les pompes arrêtées",
  offNow: () => "Évacuer, maintenant",
  beReady: () => "Être prêt",
  signLeave: () => "Son patron dit de quitter",
  signList: () => "La gîte ne revient pas",
  signUnder: () => "Livet sous l'eau",
  signAwash: () => "Livet à fleur d'eau",
  signSill: () => "Eau par-dessus un surbau",
  signGreatList: () => "Gîte de 20° ou plus",
  signSlowly: () => "Revient lentement",
  signGains: () => "L'eau gagne malgré pompe et bouchon",
  readyToo: () =>
    "Être prêt aussi : peu de franc-bord, fumée, feu, toute odeur de carburant. Gilets de sauvetage mis, issue dégagée, personne seul en bas, quelqu'un compte les gens.",
  inCharge: () => "La personne qui dirige sur place décide, et n'attend pas un chiffre.",
  notWritten: () => "Pas noté",
  wroteList: () => "la gîte ne revient pas",
  whatSeen: () => "Ce que vous voyez du bateau",
  lowestEdge: () => "Livet le plus bas",
  edgeClear: () => "Dégagé",
  edgeAwash: () => "À fleur d'eau",
  edgeUnder: () => "Sous l'eau",
  overSill: () => "Eau par-dessus un surbau ou un panneau",
  no: () => "Non",
  yes: () => "Oui",
  rollsThen: () => "Il roule, et ensuite ?",
  comesBack: () => "Revient",
  slowly: () => "Lentement",
  staysOver: () => "Reste couché",
  skipperSays: () => "Son propre patron dit",
  stay: () => "Rester",
  leave: () => "Quitter",
  list: () => "Gîte",
  listTyped: () => "Autre gîte, en degrés",
  toPort: () => "À bâbord",
  toStarboard: () => "À tribord",
  listFault: (d) => "Une gîte est un nombre entier de degrés de 1 à " + d.most + ".",
  none: () => "Aucune",
  port: (d) => d.degrees + "° bâbord",
  starboard: (d) => d.degrees + "° tribord",
  trim: () => "Assiette sur sa longueur",
  wroteSill: () => "eau par-dessus un surbau",
  wroteRighting: () => "comment il revient",
  wroteRoll: (d) => "roulis de " + d.seconds + " s",
  wroteLeave: () => "son patron dit de quitter",
  wroteStay: () => "son patron dit de rester",
  wroteHerList: () => "sa gîte",
  wroteTrim: () => "son assiette",
  roll: (d) =>
    "Son roulis. Démarrez quand il est au plus couché d'un côté ; arrêtez quand il y revient pour la " +
    d.count +
    "e fois. Plus long veut dire moins de stabilité.",
  rollLast: (d) =>
    "Son roulis : " +
    d.seconds +
    " s la dernière fois. Démarrez quand il est au plus couché d'un côté ; arrêtez quand il y revient pour la " +
    d.count +
    "e fois. Plus long veut dire moins de stabilité.",
  rollStart: () => "Démarrer : au plus couché",
  rollStop: (d) => "Arrêter : " + d.count + " roulis",
};
export default words;
