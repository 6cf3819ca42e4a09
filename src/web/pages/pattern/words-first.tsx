import { useEffect, useState, type ReactNode } from "react";

interface WordsFirstProps {
  /** That it is being counted. */
  readonly words: ReactNode;
  /** What takes long to work out: nothing of it is drawn before the words are. */
  readonly children?: ReactNode;
}

/** Says that something is being counted, and counts it once that stands on the screen: counting holds up all else. */
export function WordsFirst({ words, children }: WordsFirstProps) {
  const [isSaid, setSaid] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setSaid(true));
    return () => clearTimeout(timer);
  }, []);
  return isSaid ? children : words;
}
