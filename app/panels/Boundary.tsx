import { Component, type ReactNode } from "react";

interface Props {
  readonly children: ReactNode;
  /** Keeps the drawing; called once when something broke. */
  readonly onBroken: () => void;
  readonly onSave: () => void;
}

/** If a panel breaks, the drawing is kept first and the person told what to do. */
export class Boundary extends Component<Props, { readonly broken: Error | null }> {
  override state = { broken: null as Error | null };

  static getDerivedStateFromError(broken: Error) {
    return { broken };
  }

  override componentDidCatch() {
    this.props.onBroken();
  }

  override render() {
    const { broken } = this.state;
    if (broken === null) return this.props.children;
    return (
      <main className="broken">
        <h1>Something broke on this page</h1>
        <p>Your drawing was kept. Open the page again to go on; save it to a file first if you want to be sure.</p>
        <p className="row-buttons">
          <button type="button" className="primary" onClick={() => location.reload()}>
            Open the page again
          </button>
          <button type="button" onClick={this.props.onSave}>
            Save to a file
          </button>
        </p>
        <p className="quiet">{broken.message}</p>
      </main>
    );
  }
}
