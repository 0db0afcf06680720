import { useState } from 'react';
import type { Meeting } from '../../app/meeting.ts';
import { MeetingChoice } from './MeetingChoice.tsx';
import { OpenFile } from './OpenFile.tsx';
import { SaveCopy } from './SaveCopy.tsx';

/** The project as one file: the copy that leaves this browser, and the way back in. */
export function CopyAndOpen() {
  const [done, setDone] = useState('');
  const [meets, setMeets] = useState<Meeting>();
  if (meets) {
    return (
      <MeetingChoice
        meeting={meets}
        onDone={(says) => {
          setMeets(undefined);
          setDone(says);
        }}
      />
    );
  }
  return (
    <div className="columns columns-even">
      <SaveCopy />
      <OpenFile done={done} onDone={setDone} onMeets={setMeets} />
    </div>
  );
}
