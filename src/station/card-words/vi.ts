import type { CardWords } from "./card-words.ts";

/** The card's own words in this language; not yet read by a native speaker. */
export const vi: CardWords = {
  name: "Tiếng Việt",
  title: "Máy bơm: làm theo hình, từng hình một",
  stop: "Để dừng",
  noWater: "Không có nước trong một phút",
  kit: "Bộ",
  channel: "Kênh vô tuyến",
  notRead: "Chưa được người bản ngữ đọc",
  first: "Sách hướng dẫn của máy và người chỉ huy là trước hết.",
  noWords: "Chưa có tiếng này: làm theo hình.",
  signals: { DANGER: "NGUY HIỂM", WARNING: "CẢNH BÁO", CAUTION: "THẬN TRỌNG", NOTICE: "LƯU Ý" },
  cautions: {
    "carbon-monoxide": "Khí thải không mùi, giết người trong vài phút. Chỉ ngoài trời. Nhức đầu: tắt máy, ra chỗ gió.",
    "petrol-vapour": "Hơi xăng cháy và nổ. Không lửa, không hút thuốc, không bật công tắc.",
    "never-pump-fuel": "Bơm nhiên liệu sẽ cháy. Có nhiên liệu hoặc mùi: không khởi động; đang chạy: tắt.",
    "electric-shock": "Nước có thể có điện và giết người. Rút phích cắm trước khi chạm bơm.",
    "refuel-stopped-and-cool": "Xăng đổ lên máy nóng sẽ bốc cháy. Chỉ đổ khi máy đã tắt và nguội.",
    "opened-wrapping": "Hơi trong túi: hai phút không cúi vào.",
    "load-overhead": "Không ai dưới hàng hay giữa hàng và mạn tàu: sẽ bị đè nát.",
    "hydraulic-injection": "Dầu từ ống nhỏ xuyên qua da. Không chạm chỗ rò. Bị trúng: gặp bác sĩ ngay.",
    "pressurised-hose": "Ống quật mạnh. Buộc trước khi chạy. Tắt trước khi chạm khớp nối.",
    "hot-exhaust": "Ống xả làm bỏng tay và ống, rất lâu sau khi tắt.",
    "recoil-kick": "Dây có thể giật lại. Không quấn vào tay. Không ai đứng sau.",
    "heavy-lift": "Nặng: hai người trở lên, gập gối.",
  },
};
