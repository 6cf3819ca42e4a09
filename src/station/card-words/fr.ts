import type { CardWords } from "./card-words.ts";

/** The card's own words in this language; not yet read by a native speaker. */
export const fr: CardWords = {
  name: "Français",
  title: "Pompe : suivre les images, une à une",
  stop: "Pour arrêter",
  noWater: "Pas d'eau en une minute",
  kit: "Kit",
  channel: "Canal radio",
  notRead: "Pas encore relu par un locuteur natif",
  first: "Le manuel de l'appareil et le responsable priment.",
  noWords: "Pas encore dans cette langue : suivre l'image.",
  signals: { DANGER: "DANGER", WARNING: "AVERTISSEMENT", CAUTION: "ATTENTION", NOTICE: "AVIS" },
  cautions: {
    "carbon-monoxide":
      "Le gaz d'échappement est sans odeur et tue en quelques minutes. À l'air libre seulement. Mal de tête : arrêter, aller au vent.",
    "petrol-vapour": "Les vapeurs d'essence brûlent et explosent. Ni flamme, ni cigarette, ni interrupteur.",
    "never-pump-fuel":
      "Pomper du carburant, c'est l'incendie. Carburant ou odeur : ne pas démarrer ; en marche : arrêter.",
    "electric-shock": "L'eau peut être sous tension et tuer. Débrancher avant de toucher la pompe.",
    "refuel-stopped-and-cool":
      "Le carburant s'enflamme sur un moteur chaud. Faire le plein moteur arrêté et froid seulement.",
    "opened-wrapping": "Vapeurs dans le sac : ne pas se pencher pendant deux minutes.",
    "load-overhead": "Personne sous la charge ni entre elle et la coque : elle écrase.",
    "hydraulic-injection": "L'huile d'un tuyau fin traverse la peau. Ne jamais toucher une fuite. Atteint : médecin.",
    "pressurised-hose": "Le tuyau fouette. L'attacher avant de démarrer. Arrêter avant de toucher un raccord.",
    "hot-exhaust": "L'échappement brûle mains et tuyaux, longtemps après l'arrêt.",
    "recoil-kick": "Le cordon peut revenir d'un coup. Ne pas l'enrouler sur la main. Personne derrière.",
    "heavy-lift": "Lourd : à deux ou plus, jambes pliées.",
  },
};
