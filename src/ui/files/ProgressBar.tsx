import type { Progress } from './useSteps.ts';

export function ProgressBar(props: {
  what: string;
  progress: Progress;
  /** In hundredths, where what is counted would say nothing to anybody. */
  inPercent?: boolean;
  onStop: () => void;
}) {
  const { what, progress, inPercent = false, onStop } = props;
  // Nobody knows yet how much there is.
  const isOpen = progress.total === 0;
  const percent = isOpen ? 0 : Math.floor((progress.done / progress.total) * 100);
  return (
    <div className="stack stack-tight">
      <p>
        {what}
        {isOpen ? ' …' : inPercent ? `: ${percent}%` : `: ${progress.done} of ${progress.total}`}
      </p>
      <progress
        className="visually-hidden"
        aria-label={what}
        {...(isOpen ? {} : { max: progress.total, value: progress.done })}
      />
      <div className="progress" aria-hidden="true">
        <div style={{ width: `${percent}%` }} />
      </div>
      <div className="row">
        <button type="button" className="button button-small" onClick={onStop}>
          Stop
        </button>
      </div>
    </div>
  );
}
