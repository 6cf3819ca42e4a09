import type { CardWords } from "./card-words.ts";

/** The card's own words in this language; not yet read by a native speaker. */
export const pt: CardWords = {
  name: "Português",
  title: "Bomba: seguir as imagens, uma a uma",
  stop: "Para parar",
  noWater: "Sem água num minuto",
  kit: "Kit",
  channel: "Canal de rádio",
  notRead: "Ainda não lido por um falante nativo",
  first: "Valem primeiro o manual da unidade e quem comanda.",
  noWords: "Ainda não nesta língua: seguir a imagem.",
  signals: { DANGER: "PERIGO", WARNING: "AVISO", CAUTION: "CUIDADO", NOTICE: "NOTA" },
  cautions: {
    "carbon-monoxide":
      "O gás de escape não cheira e mata em minutos. Só ao ar livre. Dor de cabeça: parar, ir para o vento.",
    "petrol-vapour": "O vapor de gasolina arde e explode. Sem chamas, sem fumar, sem interruptores.",
    "never-pump-fuel": "Bombear combustível é incêndio. Combustível ou cheiro: não arrancar; a trabalhar: parar.",
    "electric-shock": "A água pode ter corrente e matar. Tirar a ficha antes de tocar na bomba.",
    "refuel-stopped-and-cool": "Combustível no motor quente pega fogo. Abastecer só com o motor parado e frio.",
    "opened-wrapping": "Vapor no saco: não se debruçar durante dois minutos.",
    "load-overhead": "Ninguém sob a carga nem entre ela e o casco: esmaga.",
    "hydraulic-injection": "O óleo atravessa a pele. Nunca tocar numa fuga. Atingido: médico já.",
    "pressurised-hose": "A mangueira chicoteia. Amarrar antes de arrancar. Parar antes de tocar numa ligação.",
    "hot-exhaust": "O escape queima mãos e mangueiras, muito depois de parar.",
    "recoil-kick": "A corda pode puxar para trás. Não a enrolar na mão. Ninguém atrás.",
    "heavy-lift": "Pesado: duas pessoas ou mais, pernas dobradas.",
  },
};
