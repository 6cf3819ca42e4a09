import type { CardWords } from "./card-words.ts";

/** The card's own words in this language; not yet read by a native speaker. */
export const es: CardWords = {
  name: "Español",
  title: "Bomba: seguir las imágenes, una a una",
  stop: "Para parar",
  noWater: "Sin agua en un minuto",
  kit: "Equipo",
  channel: "Canal de radio",
  notRead: "Aún no leído por un hablante nativo",
  first: "Mandan el manual del equipo y la persona al mando.",
  noWords: "Aún no en este idioma: seguir la imagen.",
  signals: { DANGER: "PELIGRO", WARNING: "ADVERTENCIA", CAUTION: "PRECAUCIÓN", NOTICE: "AVISO" },
  cautions: {
    "carbon-monoxide":
      "El gas de escape no huele y mata en minutos. Solo al aire libre. Dolor de cabeza: parar, ir al viento.",
    "petrol-vapour": "El vapor de gasolina arde y explota. Sin llamas, sin fumar, sin interruptores.",
    "never-pump-fuel": "Bombear combustible es incendio. Combustible u olor: no arrancar; en marcha: parar.",
    "electric-shock": "El agua puede tener corriente y matar. Desenchufar antes de tocar la bomba.",
    "refuel-stopped-and-cool": "El combustible arde sobre el motor caliente. Repostar solo con el motor parado y frío.",
    "opened-wrapping": "Vapor en la bolsa: no asomarse durante dos minutos.",
    "load-overhead": "Nadie bajo la carga ni entre carga y casco: aplasta.",
    "hydraulic-injection": "El aceite atraviesa la piel. No tocar una fuga. Herido: médico enseguida.",
    "pressurised-hose": "La manguera da latigazos. Atarla antes de arrancar. Parar antes de tocar un acople.",
    "hot-exhaust": "El escape quema manos y mangueras, mucho después de parar.",
    "recoil-kick": "La cuerda puede tirar hacia atrás. No enrollarla en la mano. Nadie detrás.",
    "heavy-lift": "Pesa: dos personas o más, piernas dobladas.",
  },
};
