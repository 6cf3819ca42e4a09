/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { LaunchToldWords } from "#src/words/made/casualty/launch-told.ts";

const words: LaunchToldWords = {
  notKnown: () => "Inconnu",
  openBoat: () => "Embarcation ouverte",
  motorBoat: () => "Bateau à moteur",
  sailingYacht: () => "Voilier",
  fishingBoat: () => "Bateau de pêche",
  here: () => "Ici",
  finger: () => "Doigt",
  hose: () => "Tuyau",
  fist: () => "Poing",
  plate: () => "Assiette",
  larger: () => "Plus grande",
  aHand: () => "Une main",
  anArm: () => "Un bras",
  deeper: () => "Plus bas",
  ankle: () => "Cheville",
  shin: () => "Tibia",
  knee: () => "Genou",
  waist: () => "Taille",
  slowly: () => "Lentement",
  steadily: () => "Régulièrement",
  fast: () => "Vite",
  veryFast: () => "Très vite",
  falling: () => "Baisse",
  size: (d) => d.word + ", " + d.figure,
  rise: (d) => d.word + ", " + d.figure + " en 2 min",
  inTwoMinutes: (d) => d.figure + " en 2 min",
  other: () => "Autre",
  otherSize: (d) => "Autre : " + d.size,
  length: () => "Longueur",
  distance: () => "Distance",
  hole: () => "Largeur de la brèche",
  holeDepth: () => "Brèche sous la flottaison",
  water: () => "Niveau à l'intérieur",
  lengthLimits: (d) =>
    "De " +
    d.least +
    " à " +
    d.most +
    " m (" +
    d.leastFeet +
    " à " +
    d.mostFeet +
    " ft) : l'estimation ne vaut que pour des bateaux de cette taille.",
  distanceLimits: () => "De 0 à 200 nmi.",
  holeLimits: () => "De 5 mm à 1 m (0.2 à 39 in) de large ; d'une plus grande, dites 1 m.",
  holeDepthLimits: () => "De 1 cm à 6 m (0.4 in à 20 ft).",
  waterLimits: () => "De 0 à 600 cm (20 ft).",
  toldHole: (d) => "brèche de " + d.across + " de large, " + d.below + " sous la flottaison",
  toldHoleAcross: (d) => "brèche de " + d.across + " de large",
  toldHoleBelow: (d) => "brèche " + d.below + " sous la flottaison",
  toldAt: (d) => d.water + " à " + d.at,
  told: (d) => "Dit : " + d.levels + ". " + d.more,
  toldOnce: () => "Redit dans deux minutes, touchez-le à nouveau : deux niveaux disent à quelle vitesse elle monte.",
  toldTwice: () => "La montée en est tirée.",
  byRadio: (d) => "Dit par radio : " + d.parts + ".",
  radioWater: (d) => d.water + " à " + d.at,
  radioRise: (d) => "monte de " + d.rise + " à " + d.at,
  radioWaterRise: (d) => d.water + ", monte de " + d.rise + " à " + d.at,
  radioAt: (d) => "à " + d.at,
  radioHole: (d) => d.told + " ; " + d.hole,
  dryNow: (d) =>
    "À sec maintenant, et " +
    d.before +
    " avant. A-t-elle été pompée, ou est-ce un autre compartiment ? Les deux restent.",
  dryRise: () =>
    "À sec est dit, et une montée aussi. Demandez le niveau à un seul repère, et encore dans deux minutes. Les deux restent.",
  dryFall: () =>
    "À sec est dit, et un niveau qui baisse aussi. Demandez le niveau à un seul repère, et encore dans deux minutes. Les deux restent.",
  unpumped: () =>
    "Un niveau ne baisse que si l'on pompe ou écope. Demandez avec quoi, et pour combien de temps encore.",
  fallAgainst: (d) =>
    "Les niveaux dits baissent, de " +
    d.first +
    " à " +
    d.last +
    " ; une montée de " +
    d.rise +
    " est dite aussi. Les niveaux sont comptés, les deux restent. Redemandez : même repère ?",
  riseAgainst: (d) =>
    "Les niveaux dits montent, de " +
    d.first +
    " à " +
    d.last +
    " ; une baisse est dite aussi. Les niveaux sont comptés, les deux restent. Redemandez : même repère ?",
  kindUnknown: (d) => "Type inconnu à l'ouverture : " + d.kind + " en tient lieu.",
  lengthUnknown: (d) => "Longueur inconnue à l'ouverture : " + d.length + " en tient lieu.",
  toldBefore: (d) => "Dit avant : " + d.water + " à " + d.time + " UTC.",
  toldFalls: (d) => "Dit : le niveau baisse, " + d.metric + " (" + d.us + "), à " + d.time + " UTC.",
  inBoth: (d) => d.metric + " (" + d.us + ")",
  where: () => "Où il est",
  goesOn: () => "passe sur sa fiche",
  whereAndKits: () => "Où il est, et kits d'autres stations",
  writeWhere: () => "Écrire où il est",
  wroteWhere: () => "où il est",
  positionHint: () => "Comme dite : latitude et longitude, ou relèvement et distance d'un amer.",
  driftHint: () => "Dans quelle direction et à quelle vitesse, ou au mouillage.",
  tideHint: () => "Montante ou descendante, et où le courant le porte.",
  otherKitsHint: () => "Qui, combien, et quand ils peuvent être là.",
  riseTyped: () => "À quelle vitesse elle monte",
  riseTypedHint: () => "Comme on vous l’a dit : 5 cm in 3 min. Sous 0 si elle baisse : -2 cm/min.",
  riseLimits: () => "De -50 à 50 cm (20 in) par minute.",
  notCounted: () => "Ce chiffre n'est pas compté tant qu'il n'est pas corrigé.",
};
export default words;
