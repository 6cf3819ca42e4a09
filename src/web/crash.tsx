import { Component, type ReactNode } from "react";
import { useWords } from "./language/index.ts";

interface Props {
  readonly children: ReactNode;
}

/** Shown in place of a page that failed. What was written is on the disk already; loading again is harmless. */
export class Crash extends Component<Props, { readonly error: Error | undefined }> {
  override state: { readonly error: Error | undefined } = { error: undefined };

  static getDerivedStateFromError(error: unknown) {
    return { error: error instanceof Error ? error : new Error(String(error)) };
  }

  override render() {
    if (!this.state.error) return this.props.children;
    return <Crashed error={this.state.error} />;
  }
}

function Crashed({ error }: { readonly error: Error }) {
  const words = useWords("app");
  return (
    <main className="crash">
      <h1>{words.crashed()}</h1>
      <p>{words.crashedMore()}</p>
      <p>
        <a href={location.pathname + location.search}>{words.loadAgain()}</a>
      </p>
      <p>
        <a href="/">{words.goToBoard()}</a>
      </p>
      <p className="quiet">{error.message}</p>
    </main>
  );
}
