/* Letters that the app's own subset lacks: Polish, then Russian and Vietnamese in a typeface that has them. */
import "@fontsource/atkinson-hyperlegible-next/latin-ext-400.css";
import "@fontsource/atkinson-hyperlegible-next/latin-ext-700.css";
import "@fontsource/noto-sans/latin-400.css";
import "@fontsource/noto-sans/latin-700.css";
import "@fontsource/noto-sans/latin-ext-400.css";
import "@fontsource/noto-sans/latin-ext-700.css";
import "@fontsource/noto-sans/cyrillic-400.css";
import "@fontsource/noto-sans/cyrillic-700.css";
import "@fontsource/noto-sans/vietnamese-400.css";
import "@fontsource/noto-sans/vietnamese-700.css";
