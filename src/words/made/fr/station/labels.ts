/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { LabelsWords } from "#src/words/made/station/labels.ts";

const words: LabelsWords = {
  noPlace: () => "Lieu inconnu",
  noPlaceNews: () => "Cet appareil ne connaît pas ce lieu",
  title: (d) => "Étiquettes et étagères, " + d.place,
  labels: () => "Étiquettes",
  labelsMore: () =>
    "Chacune porte le nom, le numéro de série et un code que lit l'appareil photo. Imprimez à 100 %, sans ajuster à la page. Le code nomme le kit ou l'étagère, et rien d'autre.",
  sheet: () => "La planche dans l'imprimante",
  used: () => "Étiquettes déjà prises sur la première planche",
  kitsPdf: () => "Étiquettes des kits en PDF",
  shelvesPdf: () => "Étiquettes des étagères en PDF",
  read: () => "Lire une étiquette",
  readHint: () => "Tenez l'appareil photo au-dessus du code du kit ou de l'étagère.",
  readNoPlace: () => "Cet appareil ne connaît pas ce lieu.",
  shelves: () => "Étagères, dans l'ordre du tour d'inventaire",
  anotherShelf: () => "Nom d'une autre étagère",
  addShelf: () => "Ajouter l'étagère",
  saveShelves: () => "Enregistrer les étagères",
  notSaved: () => "Pas enregistré",
  onNoShelf: (d) => "Sur aucune étagère, donc en dernier à l'inventaire : " + d.kits,
  before: () => "Avant",
  kitBefore: (d) => d.kit + " plus tôt",
  offShelf: () => "Hors de l'étagère",
  kitOffShelf: (d) => d.kit + " hors de l'étagère",
  putOn: (d) => "Mettre sur " + d.shelf,
  chooseKit: () => "Choisir un kit",
  takeAway: () => "Retirer l'étagère",
  takeNamedAway: (d) => "Retirer " + d.shelf,
};
export default words;
