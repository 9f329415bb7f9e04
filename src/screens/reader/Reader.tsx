// The sheet for the one who holds the radio: what to send, the piece to read now, what they read back, what they asked.

import { useEffect, useMemo, useState } from 'preact/hooks';
import { type CriticalValue, criticalValues, type ReadBackRow, sayAgain } from '../../handoff/index.ts';
import { formatIso } from '../../parse/times/index.ts';
import { Sheet } from '../frame/Sheet.tsx';
import { settingsStorage } from '../frame/storage.ts';
import { useTools, useWorked } from '../frame/tools.ts';
import { takeAside } from './aside.ts';
import { Choose } from './Choose.tsx';
import { Pieces } from './Pieces.tsx';
import { createPace } from './pace.ts';
import { Questions } from './Questions.tsx';
import { ReadBack } from './ReadBack.tsx';
import type { MadeReport } from './reports.ts';

type Step =
  | { readonly show: 'choose' }
  | { readonly show: 'pieces'; readonly report: MadeReport }
  | { readonly show: 'read-back' }
  | { readonly show: 'questions' };

export function Reader({ close }: { readonly close: () => void }) {
  const { desk } = useTools();
  const { report } = useWorked();
  const pace = useMemo(() => createPace(settingsStorage()), []);
  const [step, setStep] = useState<Step>({ show: 'choose' });
  // What was asked back is what was told: a record that moves on meanwhile changes nothing about it.
  const [asked, setAsked] = useState<readonly CriticalValue[]>(() => criticalValues(report.peek()));
  const [aside, setAside] = useState<readonly string[]>([]);
  useEffect(() => takeAside(desk, (text) => setAside((before) => [...before, text])), [desk]);
  const read = (made: MadeReport) => {
    if (made.part !== 'again') setAsked(criticalValues(report.peek()));
    setStep({ show: 'pieces', report: made });
  };
  const again = (rows: readonly ReadBackRow[]) => {
    const { now } = report.peek();
    const zone = desk.record.peek()?.exam.zone ?? desk.zone;
    read({ part: 'again', pieces: sayAgain(rows).chunks, made: formatIso(now, zone) });
  };
  const choose = () => setStep({ show: 'choose' });
  return (
    <Sheet title="Over the radio" close={close}>
      {step.show === 'choose' && (
        <Choose
          pace={pace}
          read={read}
          check={() => setStep({ show: 'read-back' })}
          questions={() => setStep({ show: 'questions' })}
        />
      )}
      {step.show === 'pieces' && (
        <Pieces
          key={step.report.made + step.report.part}
          report={step.report}
          pace={pace}
          done={() => setStep(step.report.part === 'details' ? { show: 'choose' } : { show: 'read-back' })}
          leave={choose}
        />
      )}
      {step.show === 'read-back' && <ReadBack asked={asked} aside={aside} again={again} leave={choose} />}
      {step.show === 'questions' && <Questions leave={choose} />}
      {aside.length > 0 && (
        <p class="small-print" role="status">
          Heard meanwhile, kept as said and not taken for findings: “{aside.at(-1)}”
        </p>
      )}
    </Sheet>
  );
}
