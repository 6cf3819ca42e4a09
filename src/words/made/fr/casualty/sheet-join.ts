/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SheetJoinWords } from "#src/words/made/casualty/sheet-join.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: SheetJoinWords = {
  noCamera: () => "Pas d'appareil photo pour lire",
  noCameraMore: (d) => d.because + " Prenez des photos des codes, ou servez-vous d'un fichier, ci-dessous.",
  cameraSees: () => "Ce que voit l'appareil photo",
  holdCamera: () =>
    "Sur l'autre appareil : la fiche, Remettre par code. Tenez cet appareil photo au-dessus de son code.",
  readOf: (d) => d.count + " sur " + d.of + " lus.",
  missing: (d) => "Manquent : " + d.pieces + ".",
  missingMore: (d) => "Manquent : " + d.pieces + " et d'autres.",
  noCode: () => "Aucun code ne peut être dessiné",
  codeLabel: (d) => "Code " + d.at + " sur " + d.count,
  codeOf: (d) => d.at + " sur " + d.count,
  codeMore: () =>
    "Tenez l'appareil photo de l'autre à une largeur de main. Dans n'importe quel ordre ; il dit lesquels manquent.",
  codeBefore: () => "Le code d'avant",
  before: () => "Avant",
  goOn: () => "Continuer",
  hold: () => "Arrêter",
  codeNext: () => "Le code suivant",
  next: () => "Suivant",
  showOurs: () => "Montrer la nôtre",
  readTheirs: () => "Lire la leur",
  handOver: () => "Remettre",
  readSheet: () => "Lire une fiche",
  between: () => "Entre deux appareils",
  fromOther: () => "(d'un autre appareil, non prouvée)",
  joinAsk: (d) => d.other + " et " + d.casualty + " sont une seule détresse ?",
  joinMore: () =>
    "Les deux historiques se suivent alors dans un seul ordre, et les sondes et pompes des deux sont calculées ensemble. Un kit sur les deux compte une fois. Rien n'est perdu, et rayer la ligne les sépare à nouveau.",
  goBack: () => "Revenir",
  joinDo: () => "Une seule détresse : réunir les fiches",
  wroteJoined: () => "réunie avec une autre fiche",
  sameIs: (d) => d.name + ", de l'autre fiche, est",
  our: (d) => "chez nous " + d.name,
  another: () => "autre chose",
  two: () => "Deux appareils, deux fiches",
  byCode: () => "Remettre par code",
  handedLines: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ligne d'un autre appareil, non prouvée",
      other: strictNumber("fr", d.count, 0, "count") + " lignes d'un autre appareil, non prouvées",
    }),
  lastTaken: (d) => "Prises en dernier à " + d.at + ", de " + d.person + ".",
  oneCasualty: (d) =>
    plural(d.count, 0, fr, {
      one: "Une détresse, " + strictNumber("fr", d.count, 0, "count") + " fiche :",
      other: "Une détresse, " + strictNumber("fr", d.count, 0, "count") + " fiches :",
    }),
  sheetLine: (d) => d.name + ", ouverte " + d.at + " par " + d.person,
  sheetLineClosed: (d) => d.name + ", ouverte " + d.at + " par " + d.person + ", close à part",
  part: () => "Elles sont deux : les séparer à nouveau",
  joinedWith: () => "Réunie avec une autre fiche",
  sameAs: (d) => "Même détresse que " + d.name + ", ouverte " + d.at + " ?",
  sameAsClosed: (d) => "Même détresse que " + d.name + ", ouverte " + d.at + ", close ?",
  notProved: () =>
    "Le cachet montre que le code vient d'un appareil de cette station. Il ne montre pas qui a écrit chaque ligne. Elles comptent ici dès maintenant ; la station ne prend chacune que de l'appareil qui l'a écrite, amenez donc aussi cet appareil à un réseau.",
  without: () => "Sans l'appareil photo",
  paste: () => "Coller le texte du fichier",
  text: () => "Texte du fichier",
  take: () => "Prendre ces lignes",
  reading: () => "Lecture",
  fileOrPhotos: () => "Le fichier, ou des photos des codes",
  noCodeIn: (d) => "une photo sans code : " + d.file,
  notTaken: () => "Pas prises",
  asFile: () => "Ou dans un fichier",
  saveFile: () => "Enregistrer le fichier",
  shareFile: () => "Partager le fichier",
  notShared: () => "Pas partagé",
  whoReads: () =>
    "Quiconque a le code ou le fichier peut lire ces lignes. Elles portent un cachet, elles ne sont pas cachées : ne les donnez à personne d'autre.",
  notMade: () => "Aucun code ne peut être fait",
  haveAll: () => "Ils ont toutes nos lignes",
  nothingLeft: () => "Il ne reste rien à montrer.",
  lines: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ligne.",
      other: strictNumber("fr", d.count, 0, "count") + " lignes.",
    }),
  linesLeft: (d) =>
    plural(d.count, 0, fr, {
      one:
        strictNumber("fr", d.count, 0, "count") + " ligne ; " + d.left + " laissées de côté, qu'ils nous ont montrées.",
      other:
        strictNumber("fr", d.count, 0, "count") +
        " lignes ; " +
        d.left +
        " laissées de côté, qu'ils nous ont montrées.",
    }),
  showAll: () => "Montrer toutes les lignes",
  unknownDevice: () => "un appareil inconnu ici",
  nothingNew: () => "Rien de nouveau",
  taken: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ligne prise",
      other: strictNumber("fr", d.count, 0, "count") + " lignes prises",
    }),
  takenFrom: (d) =>
    "De " +
    d.person +
    " sur " +
    d.device +
    ", telle qu'elle était à " +
    d.at +
    ". " +
    d.known +
    " de ses lignes étaient déjà ici.",
  showThem: () => "Leur montrer maintenant la nôtre",
  openSheet: () => "Ouvrir la fiche",
  readMore: () => "Lire encore une fois",
  notTakenLines: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " ligne non prise",
      other: strictNumber("fr", d.count, 0, "count") + " lignes non prises",
    }),
  notALine: (d) => "Ligne " + d.place + ", illisible",
  notTakenMore: (d) =>
    plural(d.count, 0, fr, {
      one: "Et " + strictNumber("fr", d.count, 0, "count") + " de plus.",
      other: "Et " + strictNumber("fr", d.count, 0, "count") + " de plus.",
    }),
};
export default words;
