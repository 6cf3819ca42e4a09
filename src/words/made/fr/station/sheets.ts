/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SheetsWords } from "#src/words/made/station/sheets.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
import { number, plural } from "#src/words/cases.ts";
const words: SheetsWords = {
  in: () => "Entrée",
  inMore: () =>
    "Personnes, kits, pièces et remises en état passées depuis un fichier CSV ou un classeur : toutes ses lignes, ou aucune.",
  takeIn: () => "Reprendre d'une feuille",
  enrolMany: () => "Inscrire plusieurs kits sur une page",
  out: () => "Sortie",
  outMore: () =>
    "Chacune en CSV, faite de ce que contient cet appareil, même sans réseau. Les jours s'écrivent 2027-03-14. Une cellule qu'un tableur prendrait pour une formule est précédée d'une apostrophe.",
  early: () => "Toutes les lignes ne sont pas encore sur cet appareil",
  earlyOut: () => "Une liste enregistrée maintenant contient ce qui est ici.",
  earlyIn: () => "Une feuille se juge d'après ce que la station a déjà. Attendez que tout soit ici.",
  notSaved: () => "Pas enregistré",
  saveAs: (d) => "Enregistrer " + d.table + " en CSV",
  whoTakesIn: () => "Un responsable des kits ou un administrateur reprend les feuilles",
  whatIsOn: () => "Ce qu'il y a sur la feuille",
  people: () => "Personnes",
  peopleMore: () => "Nom et rôle. Un accès se fait ensuite pour chacune, sur la page des personnes.",
  kits: () => "Kits",
  kitsMore: () =>
    "Nom, numéro de série, modèle, lieu, scellé, et les dates de ce qu'ils contiennent. Chacun vaut comme neuf jusqu'à sa première remise en état.",
  parts: () => "Pièces et ce qui est sur les étagères",
  partsMore: () => "Numéro et nom, et par lieu combien il y en a, avec lot et date imprimée.",
  turnarounds: () => "Remises en état passées",
  turnaroundsMore: () =>
    "Kit et jour, par qui, comment cela s'est passé. Elles sont dans l'historique et ne rendent aucun kit prêt. Reprenez d'abord les kits.",
  sortsBetween: () => " et ",
  administratorOnly: (d) => d.sorts + " : seul un administrateur les reprend.",
  file: () => "Le fichier",
  taken: (d) =>
    plural(d.count, 0, fr, { one: d.count + " ligne reprise", other: d.count + " lignes reprises" }) + ", toutes",
  takenMore: () =>
    "Elles sont sur cet appareil, marquées comme dites par la feuille et reprises par vous. La station les reçoit ensuite.",
  see: () => "Les voir",
  nothingTaken: () => "Rien n'a été repris",
  nothingNew: () => "Rien n'y est nouveau : tout est déjà ici, comme elle le dit.",
  takeRows: (d) =>
    plural(d.count, 0, fr, { one: "Reprendre la seule ligne", other: "Reprendre les " + d.count + " lignes" }),
  reading: () => "Lecture du fichier",
  chooseAnother: () => "Choisir un autre fichier, ou celui qui est corrigé",
  choose: () => "Choisir le fichier",
  limits: (d) =>
    "CSV ou XLSX, au plus " +
    number("fr", d.rows, 0) +
    " lignes et " +
    d.megabytes +
    " Mo. Il est lu sur cet appareil ; rien n'est envoyé ni écrit tant que vous ne le dites pas.",
  notRead: () => "Pas lu",
  fileRows: (d) =>
    d.file + " : " + plural(d.count, 0, fr, { one: d.count + " ligne", other: d.count + " lignes" }) + ".",
  whichSheet: () => "Quelle feuille du classeur",
  whichColumn: () => "Quelle colonne est laquelle",
  whichColumnMore: () =>
    "Deviné d'après les en-têtes. Corrigez ce qui est faux ; ce qui est laissé de côté n'est pas repris.",
  empty: () => "vide",
  example: (d) => "par exemple " + d.example,
  columnLeftOut: () => "laissée de côté",
  sameForAll: (d) => d.field + ", le même pour toutes les lignes",
  noColumn: () => "Aucune colonne ne le dit.",
  chooseOne: () => "Choisir",
  none: () => "aucun",
  sayColumns: () => "Dites d'abord quelle colonne est laquelle",
  wanted: (d) => "Demandé : " + d.allowed + ".",
  whatIsDate: (d) => "Que veut dire " + d.text + ", dans cette feuille ?",
  dateHint: () =>
    "Jour et mois peuvent être dans un ordre ou dans l'autre. Cela vaut pour toutes les dates de la feuille.",
  dayFirst: (d) => d.day + " : le jour vient d'abord",
  monthFirst: (d) => d.day + " : le mois vient d'abord",
  cannotTake: (d) =>
    plural(d.count, 0, fr, {
      one: d.count + " ligne ne peut pas être reprise",
      other: d.count + " lignes ne peuvent pas être reprises",
    }) + ", donc aucune ne l'est",
  mendMore: () =>
    "Corrigez-les ici, ou dans la feuille : enregistrez-la, et choisissez-la à nouveau. Ce que vous avez dit des colonnes reste ; ce qui est corrigé ici laisse le fichier tel quel.",
  badRows: () => "Lignes fautives",
  moreRows: (d) =>
    "Et " +
    plural(d.count, 0, fr, { one: d.count + " autre ligne", other: d.count + " autres lignes" }) +
    ". Elles seront ici une fois celles-ci corrigées.",
  row: (d) => "Ligne " + d.row,
  rowColumn: (d) => "Ligne " + d.row + ", " + d.column,
  fault: (d) => d.at + " : reçu " + d.got + " ; admis : " + d.allowed + ".",
  leftOutByYou: (d) =>
    "Laissé de côté par vous : " + plural(d.count, 0, fr, { one: "ligne", other: "lignes" }) + " " + d.rows,
  putBack: (d) => plural(d.count, 0, fr, { one: "La remettre", other: "Les remettre" }),
  rowHead: () => "Ligne",
  toKnow: () => "À savoir",
  notesBetween: () => " ; ",
  asRead: () => "Tel que lu",
  rowsAsRead: () => "Les lignes telles qu'elles ont été lues",
  showAll: (d) => plural(d.count, 0, fr, { other: "Montrer les " + d.count + " lignes" }),
  changeRow: (d) => "Modifier la ligne " + d.row,
  change: () => "Modifier",
  checkAgain: (d) => "Vérifier à nouveau la ligne " + d.row,
  leaveOut: (d) => "Laisser la ligne " + d.row + " de côté",
};
export default words;
