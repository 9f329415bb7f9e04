// The last utterances, latest first, each with what it became; nothing said is passed over, and nothing moves under a finger.

import { clock, dayOf } from '../../timeline/index.ts';
import { EntryLine } from '../entries/EntryLine.tsx';
import { EntryRow } from '../entries/EntryRow.tsx';
import { mayGoTogether } from '../entries/one-by-one.ts';
import { sentenceText } from '../entries/sentence.ts';
import { TogetherWay } from '../entries/Together.tsx';
import { useTools } from '../frame/tools.ts';
import { HearAgain } from '../sound/index.ts';
import { useHeld } from '../steady/hold.ts';
import { SteadyList } from '../steady/SteadyList.tsx';
import { type Became, entriesOf, lastSaid, type Outcome } from './became.ts';

/** More of the talk is in the timeline. */
const SHOWN = 12;

export function SaidList() {
  const { desk, derived, hold } = useTools();
  const exam = useHeld(desk.record.value?.exam, hold.value);
  if (exam === undefined) return null;
  const said = lastSaid(exam.events, exam.state, SHOWN);
  const [latest] = said;
  const newer = (desk.record.value?.exam.state.utterances.length ?? 0) - exam.state.utterances.length;
  const day = dayOf(derived.startedAt.value);
  const plain = said.flatMap(entriesOf).filter(mayGoTogether);
  return (
    <section aria-labelledby="said-title">
      <div class="said-head">
        <h3 id="said-title">Last said</h3>
        {newer > 0 && <span class="mark">{newer} newer</span>}
        <TogetherWay title="Last said" entries={plain} />
      </div>
      <p class="only-heard" role="status">
        {latest === undefined ? '' : spokenOutcome(latest)}
      </p>
      {said.length === 0 && <p class="empty">Nothing said yet.</p>}
      <SteadyList>
        <ol class="plain-list said">
          {said.map((one) => (
            <li key={one.id} class="said-one">
              <Outcomes one={one} />
              <p class="said-words">
                <span class="when">{clock(one.heardAt, day)}</span> “{one.text}”
                {/* Where it became an entry the button stands beside that. */}
                {entriesOf(one).length === 0 && <HearAgain utterance={one.id} what={one.text} />}
              </p>
            </li>
          ))}
        </ol>
      </SteadyList>
      {exam.state.utterances.length > said.length && (
        <p class="small-print">Earlier talk is in the timeline.</p>
      )}
    </section>
  );
}

const FALLEN_WORDS = { struck: 'Struck', restored: 'Stands again', confirmed: 'Confirmed' } as const;

/** What a screen reader says of the latest utterance. */
const spokenOutcome = ({ outcomes }: Became): string =>
  outcomes.length === 0 ? 'Nothing to record.' : outcomes.flatMap(spoken).join('. ');

function spoken(outcome: Outcome): readonly string[] {
  switch (outcome.kind) {
    case 'entered':
      return [sentenceText(outcome.entry)];
    case 'corrected':
      return outcome.now.map((entry) => `Now: ${sentenceText(entry)}`);
    case 'struck':
    case 'restored':
    case 'confirmed':
      return outcome.entries.map((entry) => `${FALLEN_WORDS[outcome.kind]}: ${sentenceText(entry)}`);
    case 'command':
      return [];
  }
}

function Outcomes({ one }: { readonly one: Became }) {
  if (one.outcomes.length === 0) return <p class="outcome">Heard; nothing to record in it.</p>;
  return (
    <ul class="plain-list">
      {one.outcomes.map((outcome, index) => (
        <OutcomeRow key={`${one.id}-${index}`} outcome={outcome} />
      ))}
    </ul>
  );
}

function OutcomeRow({ outcome }: { readonly outcome: Outcome }) {
  switch (outcome.kind) {
    case 'entered':
      return <EntryRow entry={outcome.entry} />;
    case 'corrected':
      return (
        <>
          {outcome.now.map((entry) => (
            <EntryRow key={entry.id} entry={entry} />
          ))}
          {outcome.was.map((entry) => (
            <li key={entry.id} class="outcome">
              Replaced: <EntryLine entry={entry} />
            </li>
          ))}
        </>
      );
    case 'struck':
    case 'restored':
    case 'confirmed':
      return (
        <>
          {outcome.entries.map((entry) => (
            <li key={entry.id} class="outcome">
              {FALLEN_WORDS[outcome.kind]}: <EntryLine entry={entry} />
            </li>
          ))}
        </>
      );
    case 'command':
      return <li class="outcome">Asked of the page: {outcome.command.replaceAll('-', ' ')}.</li>;
  }
}
