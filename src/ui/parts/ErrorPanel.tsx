import { Component, type ReactNode } from 'react';

interface Props {
  readonly name: string;
  readonly children: ReactNode;
}
interface State {
  readonly says: string | null;
  /** The file of the page could not be fetched; a browser remembers that until the app is loaded again. */
  readonly notFetched: boolean;
}

const fetchFailed = /dynamically imported module|preload CSS|module script failed|error loading/i;

/** One per panel: a broken print preview must not take the survey down. */
export class ErrorPanel extends Component<Props, State> {
  override state: State = { says: null, notFetched: false };

  static getDerivedStateFromError(error: unknown): State {
    const says = error instanceof Error ? error.message : String(error);
    return { says, notFetched: fetchFailed.test(says) };
  }

  override render() {
    const { says, notFetched } = this.state;
    if (says === null) return this.props.children;
    return (
      <div role="alert" className="sheet-body section">
        <h1>
          {notFetched ? `${this.props.name} could not be loaded` : `${this.props.name} stopped working`}
        </h1>
        <p>
          {notFetched
            ? 'This page is not stored on this device yet and the network did not answer. Your work is safe. Once there is a network, load the app again.'
            : 'Your work is safe: it is kept apart from this part of the screen.'}
        </p>
        <p>
          What went wrong: <code>{says}</code>
        </p>
        {notFetched ? (
          <button type="button" className="button" onClick={() => location.reload()}>
            Load the app again
          </button>
        ) : (
          <button
            type="button"
            className="button"
            onClick={() => this.setState({ says: null, notFetched: false })}
          >
            Try again
          </button>
        )}
      </div>
    );
  }
}
