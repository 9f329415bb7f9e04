// The last utterances, latest first, each with what it became; nothing said is passed over, and nothing moves under a finger.

import { clock, dayOf } from '../../timeline/index.ts';
import { EntryLine } from '../entries/EntryLine.tsx';
import { EntryRow } from '../entries/EntryRow.tsx';
import { mayGoTogether } from '../entries/one-by-one.ts';
import { TogetherWay } from '../entries/Together.tsx';
import { useTools } from '../frame/tools.ts';
import { HearAgain } from '../sound/index.ts';
import { SteadyList } from '../steady/SteadyList.tsx';
import { type Became, entriesOf, type Outcome } from './became.ts';
import { FALLEN_WORDS } from './LastSaid.tsx';
import { SiteInMind } from './SiteInMind.tsx';
import type { Said } from './use-said.ts';

interface Props {
  readonly of: Said;
}

/** The site in mind, and the way to confirm what is plainly right together. */
export function SaidHead({ of: { said, newer } }: Props) {
  return (
    <div class="said-head">
      <SiteInMind />
      {newer > 0 && <span class="mark">{newer} newer</span>}
      <TogetherWay title="Last said" entries={said.flatMap(entriesOf).filter(mayGoTogether)} />
    </div>
  );
}

export function SaidList({ of: { said, hasEarlier } }: Props) {
  const { derived } = useTools();
  const day = dayOf(derived.startedAt.value);
  return (
    <section aria-labelledby="said-title">
      <h3 id="said-title" class="only-heard">
        Last said
      </h3>
      {said.length === 0 && <p class="empty">Nothing said yet.</p>}
      <SteadyList>
        <ol class="plain-list said">
          {said.map((one) => (
            <li key={one.id} class="said-one">
              <Outcomes one={one} />
              {!isItsOwnNote(one) && (
                <p class="said-words">
                  <span class="when">{clock(one.heardAt, day)}</span> “{one.text}”
                  {/* Where it became an entry the button stands beside that. */}
                  {entriesOf(one).length === 0 && <HearAgain utterance={one.id} what={one.text} />}
                </p>
              )}
            </li>
          ))}
        </ol>
      </SteadyList>
      {hasEarlier && <p class="small-print">Earlier talk is in the timeline.</p>}
    </section>
  );
}

/** What was kept as said shows its words already. */
const isItsOwnNote = ({ text, outcomes: [only, ...others] }: Became): boolean =>
  only?.kind === 'entered' &&
  others.length === 0 &&
  only.entry.kind === 'note' &&
  bare(only.entry.text) === bare(text);

const bare = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

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
