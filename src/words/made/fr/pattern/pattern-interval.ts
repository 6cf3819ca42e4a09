/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternIntervalWords } from "#src/words/made/pattern/pattern-interval.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
const words: PatternIntervalWords = {
  title: (d) => "À quel rythme ouvrir : " + d.pattern,
  counting: () => "Décompte de ce que dit le journal.",
  yearPlanned: () => "L'année planifiée",
  reportCard: () => "Bulletin du modèle",
  early: () => "Toutes les lignes ne sont pas encore sur cet appareil",
  earlyMore: () =>
    "Les ouvertures, les constats et les appels se comptent depuis toutes les lignes. À quelle fréquence ouvrir est dit une fois que toutes les lignes sont ici.",
  nothing: () => "Rien encore sur quoi s'appuyer",
  nothingMore: () =>
    "Aucun kit de ce modèle n'est resté fermé entre deux ouvertures. Une ouverture de chacun serait un début.",
  logSays: () => "Ce que dit le journal",
  weight: () => "Un kit qui lâche la nuit où il faut : combien d'heures de travail vaudrait-il d'éviter cela ?",
  weightHint: () =>
    "C'est votre jugement ; la réponse en dépend. Quatre fois le poids réduit l'intervalle environ de moitié : des poids dix fois plus grands l'un que l'autre le font beaucoup changer.",
  weightOther: () => "Un autre poids, en heures de travail",
  rounded: () =>
    "Le meilleur est calculé au jour près pour le poids que vous donnez. Le conseil est celui-ci en jours entiers jusqu'à deux semaines, en semaines jusqu'à six mois, en mois au-delà, toujours arrondi vers le bas : aucun autre pas n'est pesé.",
  weightHours: (d) => d.hours + " heures",
  correctCosts: () => "Corrigez d'abord les coûts : un de leurs chiffres n'est pas pris.",
  notWritten: () => "Pas écrit",
  accept: (d) => "Accepter " + d.every + " pour le plan",
  restsOn: () => "Sur quoi cela repose",
  proposalOnly: () =>
    "Une proposition, sans plus : elle ne connaît aucun défaut qu'aucun contrôle ne voit, ni aucun qui croît avec l'âge. La règle du manuel de l'appareil passe d'abord, et rien ici n'est jamais plus long.",
  accepted: () => "Accepté pour le plan",
  acceptedMore: (d) =>
    "Ouvert " +
    d.every +
    " : accepté par " +
    d.who +
    " le " +
    d.day +
    ". Le plan de l'année ouvre ses kits d'ici là ; il n'en immobilise aucun, et l'intervalle du manuel reste à côté.",
  backToManual: () => "Revenir à l'intervalle du manuel",
  costs: (d) => "Ce que coûte encore une ouverture : " + d.count + " sur " + d.all + " indiqués",
  costsNone: () => "Ce que coûte encore une ouverture : rien d'indiqué",
  costsMore: () => "Votre jugement aussi. Ce qui reste vide n'est pas compté, et la réponse le dit.",
  costParts: () => "Pièces d'une ouverture : valent combien d'heures de travail ?",
  costWear: () => "Usure d'un démarrage : vaut combien d'heures ?",
  costDay: () => "Un jour sans le kit : vaut combien d'heures ?",
  costHarmed: () => "Sur 1000 ouvertures, combien laissent un défaut derrière elles ?",
  standingNone: () => "Ni le manuel de l'appareil ni la station ne disent à quel rythme il est ouvert.",
  standing: (d) => "Il est à ouvrir " + d.every + ".",
  standingManual: (d) => "Il est à ouvrir " + d.every + ", comme le veut le manuel de l'appareil.",
  standingBeside: (d) => "Il est à ouvrir " + d.every + " ; le manuel de l'appareil dit " + d.manual + ".",
  everyDays: (d) => plural(d.count, 0, fr, { "1": "tous les jours", other: "tous les " + d.count + " jours" }),
  everyWeeks: (d) => "toutes les " + d.count + " semaines",
  everyMonths: (d) => plural(d.count, 0, fr, { "1": "tous les mois", other: "tous les " + d.count + " mois" }),
  everyYears: (d) => plural(d.count, 0, fr, { "1": "tous les ans", other: "tous les " + d.count + " ans" }),
  whatIsDone: () => "ce qui se fait maintenant",
  cannotTell: (d) =>
    "Trop peu pour dire si " + d.now + " est trop souvent ou trop rarement : il faudrait " + d.more + ".",
  keepTo: (d) => "Gardez " + d.now + " : rien d'autre ne serait meilleur de plus d'un vingtième.",
  shorter: (d) => "Ouvrez-le " + d.every + " plutôt que " + d.now + ".",
  longer: (d) => "L'ouvrir " + d.every + " suffirait ; la règle est maintenant " + d.now + ".",
  manualStands: (d) =>
    "Gardez " +
    d.now +
    " : d'après le journal, plus long suffirait, mais le manuel passe d'abord. Pour montrer à son fabricant que la moitié de plus suffirait, il faudrait " +
    d.more +
    " sans défaut.",
  notSeen: (d) =>
    "Gardez " +
    d.now +
    " : si les défauts continuaient de venir au même rythme, plus long suffirait, mais aucun kit n'en est resté fermé à peu près aussi longtemps. Ouvrez-en un après l'intervalle de la règle actuelle, et le journal pourra le dire.",
  moreThan: (d) => "plus de " + d.count + " ouvertures de plus",
  moreAbout: (d) =>
    "environ " + plural(d.count, 0, fr, { one: d.count + " ouverture", other: d.count + " ouvertures" }) + " de plus",
  best: (d) =>
    "D'après ces chiffres, le meilleur se trouve entre " + d.shortest + " et " + d.longest + ", neuf fois sur dix.",
  beyondSeen: (d) =>
    "Aucun kit n'est resté fermé plus de " +
    d.seen +
    " : au-delà, on suppose que les défauts continuent de venir au même rythme, et rien de ce qui a été vu ne l'appuie. Rien de plus long que " +
    d.bound +
    " n'est proposé, la moitié de plus que ce qui a été vu.",
  flat: (d) =>
    "Autour du plus probable, environ " +
    d.middle +
    ", tout ce qui va de " +
    d.from +
    " à " +
    d.to +
    " coûte moins d'un vingtième de plus.",
  yearCosts: (d) =>
    "Au meilleur le plus probable, un kit et un an pèsent autant que " + d.costs + ", et " + d.last + ".",
  hours: (d) => d.hours + " heures",
  costOpening: (d) => d.hours + " pour l'ouvrir",
  costInParts: (d) => d.hours + " en pièces",
  costInWear: (d) => d.hours + " en usure",
  costNotReady: (d) => d.hours + " pour les jours sans lui",
  costNights: (d) => d.hours + " pour les nuits où il lâche",
  tenYears: () => "plus de dix ans",
  evidenceLooks: (d) =>
    plural(d.looks, 0, fr, { one: d.looks + " ouverture", other: d.looks + " ouvertures" }) +
    " de " +
    plural(d.kits, 0, fr, { one: d.kits + " kit resté fermé", other: d.kits + " kits restés fermés" }) +
    " " +
    d.years +
    " ans en tout : " +
    plural(d.found, 0, fr, { one: d.found + " défaut qui aurait", other: d.found + " défauts qui auraient" }) +
    " arrêté le kit.",
  evidenceRate: (d) =>
    "Donc en dix ans de fermeture viennent de " +
    d.low +
    " à " +
    d.high +
    " tels défauts, neuf fois sur dix, à rythme constant ; les kits sont tenus pour semblables.",
  startsNotCounted: () =>
    "Combien de fois il lâche quand on lui demande de démarrer n'a jamais été compté : on compte une fois sur deux.",
  startsFail: (d) =>
    "Sollicité au démarrage " +
    d.times +
    ", il lâche de " +
    d.low +
    " à " +
    d.high +
    " fois sur 100, neuf fois sur dix, quel que soit son âge, qu'il vienne d'être ouvert ou non.",
  calls: (d) =>
    "Mis au travail sur des détresses " +
    d.times +
    " : de " +
    d.low +
    " à " +
    d.high +
    " appels par an sur un kit, neuf fois sur dix ; compté avec " +
    d.mean +
    ".",
  started: (d) => "Il est démarré " + d.times + ".",
  times: (d) => plural(d.count, 0, fr, { "1": "une fois", other: d.count + " fois" }),
  allStated: () => "Tout ce que coûte une ouverture a été indiqué.",
  notCounted: (d) => "Pas compté, car personne ne l'a indiqué : " + d.costs + ".",
  ofParts: () => "les pièces",
  ofWear: () => "l'usure des démarrages",
  ofDays: () => "les jours sans le kit",
  ofHarmed: () => "les défauts qu'une ouverture laisse",
  noDrill: () => "Aucun exercice n'a posé un tel défaut : chaque ouverture est tenue pour les trouver tous.",
  drillsFew: (d) =>
    "Sur " +
    plural(d.planted, 0, fr, { one: d.planted + " tel défaut posé", other: d.planted + " tels défauts posés" }) +
    " en exercice, l'ouverture en a trouvé " +
    d.found +
    " : moins de " +
    d.least +
    " disent trop peu, et chaque ouverture est tenue pour les trouver tous.",
  drills: (d) =>
    "Sur " +
    plural(d.planted, 0, fr, { one: d.planted + " tel défaut posé", other: d.planted + " tels défauts posés" }) +
    " en exercice, l'ouverture en a trouvé " +
    d.found +
    ", donc de " +
    d.low +
    " à " +
    d.high +
    " sur 10, neuf fois sur dix. Ce que l'une manque, la suivante peut le trouver ; compté avec " +
    d.mean +
    " sur 10.",
  workOut: (d) =>
    "D'après le modèle, une ouverture demande " +
    d.hours +
    " heures de travail, et le kit est absent " +
    d.out +
    " heures, plus ce qu'il sèche au-delà.",
  workTimed: (d) =>
    "D'après le modèle, une ouverture demande " +
    d.hours +
    " heures de travail ; d'un scellé à l'autre, le kit a été absent " +
    d.out +
    " heures, en moyenne sur " +
    d.count +
    " ouvertures.",
  reallyOpened: (d) =>
    "D'après le journal, il est en fait ouvert environ tous les " +
    d.median +
    " : " +
    plural(d.count, 0, fr, {
      "1": "ce fut le cas la seule fois qu'un kit a été ouvert de nouveau",
      other:
        "la moitié des " +
        d.count +
        " intervalles d'une ouverture d'un kit à la suivante sont entre " +
        d.from +
        " et " +
        d.to,
    }) +
    ".",
  neverTwice: () =>
    "Aucun kit n'en a encore été ouvert deux fois : à quel rythme il est vraiment ouvert ne peut pas être dit.",
};
export default words;
