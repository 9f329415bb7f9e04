// The sheet before printing: what will be on paper and a warning of what is not confirmed; then the browser's print.

import { render } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { printedRecord, vitalCharts } from '../../handoff/index.ts';
import { Sheet } from '../frame/Sheet.tsx';
import { useTools, useWorked } from '../frame/tools.ts';
import { footerRules } from './footer.ts';
import { hashOf } from './hash.ts';
import { Paper } from './Paper.tsx';

export function Print({ close }: { readonly close: () => void }) {
  const { desk } = useTools();
  const { report } = useWorked();
  const record = desk.record.peek();
  // Paper holds still: it is the record as it was when the sheet was opened.
  const printed = useMemo(() => printedRecord(report.peek()), [report]);
  const charts = useMemo(() => vitalCharts(report.peek()), [report]);
  const [hash, setHash] = useState<string | null | 'wait'>('wait');
  useEffect(() => {
    hashOf(record?.facts.id ?? '', record?.exam.events ?? []).then(setHash, () => setHash(null));
  }, [record]);
  useEffect(() => {
    if (hash === 'wait' || record === null) return;
    const { facts, exam } = record;
    const host = document.createElement('div');
    host.className = 'paper';
    document.body.append(host);
    render(
      <Paper
        printed={printed}
        charts={charts}
        id={facts.id}
        kind={facts.kind}
        hash={hash}
        steps={exam.state.handover}
        events={exam.events.length}
      />,
      host,
    );
    const rules = new CSSStyleSheet();
    rules.replaceSync(footerRules(facts.id, hash));
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, rules];
    const title = document.title;
    // The name that a browser offers for the file: it names no patient.
    document.title = `Examination record ${facts.startedAt.slice(0, 10)} ${facts.id.slice(0, 8)}`;
    document.documentElement.dataset.paper = 'there';
    return () => {
      delete document.documentElement.dataset.paper;
      document.title = title;
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== rules);
      render(null, host);
      host.remove();
    };
  }, [hash, record, printed, charts]);
  return (
    <Sheet title="Print or save as PDF" close={close}>
      <p>
        The whole record on paper, black on white, A4 or Letter: choose the paper, or “Save as PDF”, in the
        browser’s own print window.
      </p>
      {printed.unconfirmed > 0 && (
        <p class="notice">
          {printed.unconfirmed} of {printed.standing} entries are not confirmed. They are printed and marked
          so.
        </p>
      )}
      <p>It holds a patient’s words: give it only to those who may read them.</p>
      <button
        type="button"
        class="button primary wide"
        disabled={hash === 'wait'}
        onClick={() => window.print()}
      >
        Print
      </button>
    </Sheet>
  );
}
