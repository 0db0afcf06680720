import { Component, type ReactNode } from 'react';

interface Props {
  readonly name: string;
  readonly children: ReactNode;
}

/** One per panel: a broken print preview must not take the survey down. */
export class ErrorPanel extends Component<Props, { readonly says: string | null }> {
  override state = { says: null };

  static getDerivedStateFromError(error: unknown) {
    return { says: error instanceof Error ? error.message : String(error) };
  }

  override render() {
    if (this.state.says === null) return this.props.children;
    return (
      <div role="alert" className="section">
        <h2>{this.props.name} stopped working</h2>
        <p>
          Your work is safe: it is kept apart from this part of the screen. What went wrong:{' '}
          <code>{this.state.says}</code>
        </p>
        <button type="button" className="button" onClick={() => this.setState({ says: null })}>
          Try again
        </button>
      </div>
    );
  }
}
