import { Component, type ReactNode } from "react";

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
    return (
      <main className="crash">
        <h1>This page failed</h1>
        <p>Every line written so far is kept on this device. Load the page again and go on.</p>
        <p>
          <a href={location.pathname}>Load again</a> or <a href="/">go to the board</a>
        </p>
        <p className="quiet">{this.state.error.message}</p>
      </main>
    );
  }
}
