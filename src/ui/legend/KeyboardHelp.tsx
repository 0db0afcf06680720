import { keyboardHelp } from '../../domain/manual/glossary.ts';

export function KeyboardHelp() {
  return (
    <div className="stack">
      {keyboardHelp.map((group) => (
        <section key={group.where} className="stack stack-tight" aria-label={`Keys: ${group.where}`}>
          <h3>{group.where}</h3>
          <dl className="glossary">
            {group.keys.map((key) => (
              <div key={key.does}>
                <dt>
                  {key.press.map((one) => (
                    <span key={one}>
                      <kbd>{one}</kbd>{' '}
                    </span>
                  ))}
                </dt>
                <dd>{key.does}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </div>
  );
}
