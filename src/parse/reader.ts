// Reads talk: an utterance and a context in, frames and a context out. Never throws, and keeps what it does not understand.

import { type GrammarError, linkGrammars } from '../jsgf/index.ts';
import { clausesOf } from './clauses/cut.ts';
import { withNone } from './clauses/said-none.ts';
import { withRepeated } from './clauses/said-twice.ts';
import { lookedOnly, noteBareNo, notePointedNo } from './compose/bare-no.ts';
import { readClause } from './compose/clause.ts';
import { forgetLimb } from './compose/csm/no-limb.ts';
import { mergeMechanism } from './compose/history/merge-mechanism.ts';
import { placeIntroduction } from './compose/introduction.ts';
import { noteLeftovers } from './compose/notes.ts';
import { askedNext, looksAnswered, standOn } from './compose/questions/standing.ts';
import { state, type Talk } from './compose/talk.ts';
import { mergeGcs } from './compose/vitals/merge-gcs.ts';
import { type Context, NOTHING_SAID } from './context.ts';
import { withDoubledDigits } from './doubled-digits.ts';
import { withPlainVerbs } from './everyday-verbs.ts';
import { withoutFillers } from './fillers.ts';
import type { Reading } from './frame.ts';
import { withHeaded } from './headed.ts';
import { cover } from './islands/cover.ts';
import { SLOTS } from './islands/fill.ts';
import { wordsOf } from './islands/match.ts';
import { buildNetwork } from './islands/network.ts';
import { rootRules } from './islands/roots.ts';
import { type Branch, plantTree } from './islands/tree.ts';
import { withoutAdverbs } from './pieces/adverb.ts';
import { withAnsweringNo } from './pieces/answering-no.ts';
import { readBehindSubjects } from './pieces/behind-subject.ts';
import { withCareDenied } from './pieces/care-denied.ts';
import { withTimesOfCare } from './pieces/care-time.ts';
import { withChecklists } from './pieces/checklist.ts';
import { withChoices } from './pieces/choices.ts';
import { withCourtesies } from './pieces/courtesy.ts';
import { withCutAndNext } from './pieces/cut-and-next.ts';
import { withDenyingNo } from './pieces/denying-no.ts';
import { withoutMeasuredFeet } from './pieces/measured-feet.ts';
import { withPartedNo } from './pieces/parted-no.ts';
import { withPartedSides } from './pieces/parted-sides.ts';
import { withPercentFigures } from './pieces/percent-figure.ts';
import { piecesOf } from './pieces/roles.ts';
import { withSignsAtTimes } from './pieces/sign-at-time.ts';
import { withSortedColours } from './pieces/sorted-colour.ts';
import { withStoppedAtTime } from './pieces/stopped-at-time.ts';
import { withTimesPutRight } from './pieces/time-put-right.ts';
import { withoutReporters } from './reported.ts';
import { withoutSaidAgain } from './said-again.ts';
import { checkTag } from './tags.ts';
import { type Token, tokenise } from './token.ts';
import type { Utterance } from './utterance.ts';

export interface Reader {
  /** the context before anything was said */
  begin(): Context;
  /** what an utterance gives, and the context for the next one */
  read(utterance: Utterance, context: Context): Reading<Context>;
}

export type ReaderMade =
  | { readonly kind: 'reader'; readonly reader: Reader }
  | { readonly kind: 'errors'; readonly errors: readonly GrammarError[] };

/** A reader for a grammar; a fault in the grammar is said with its file, line and rule. */
export function createReader(
  sources: readonly { readonly file: string; readonly text: string }[],
): ReaderMade {
  const linked = linkGrammars(sources, { checkTag });
  if (linked.kind === 'errors') return linked;
  const root = plantTree(buildNetwork(linked.grammars, rootRules(linked.grammars, SLOTS), SLOTS));
  return {
    kind: 'reader',
    reader: {
      begin: () => NOTHING_SAID,
      read: (utterance, context) => readUtterance(root, utterance, context),
    },
  };
}

/** The words in which it is read: everyday ones in those of the grammar, without what only somebody who thinks says. */
function tokensOf(root: Branch, text: string): readonly Token[] {
  const plain = withoutReporters(withPlainVerbs(withDoubledDigits(tokenise(text))));
  return withHeaded(root, withoutSaidAgain(withoutFillers(root, plain)));
}

function readUtterance(root: Branch, utterance: Utterance, context: Context): Reading<Context> {
  const tokens = tokensOf(root, utterance.text);
  const { asked: before } = context;
  const isExam = before?.about === 'findings' || before?.about === 'csm';
  const said = withDenyingNo(piecesOf(cover(root, tokens, wordsOf(tokens)), tokens.length), tokens, isExam);
  const covered = withCareDenied(
    withChecklists(
      withTimesOfCare(
        withSignsAtTimes(withoutMeasuredFeet(withTimesPutRight(said, tokens), tokens), tokens),
        tokens,
      ),
      tokens,
    ),
    tokens,
  );
  const sorted = withSortedColours(withStoppedAtTime(covered, tokens), tokens);
  const measured = withPercentFigures(sorted, tokens, isOfSaturation(context));
  const pieces = withCourtesies(
    readBehindSubjects(
      withChoices(
        withPartedSides(
          withPartedNo(
            withAnsweringNo(withCutAndNext(withoutAdverbs(measured, tokens), tokens), tokens),
            tokens,
          ),
          tokens,
        ),
        tokens,
      ),
      tokens,
    ),
    tokens,
  );
  const clauses = withRepeated(
    withNone(clausesOf(pieces, tokens, { open: context.asked !== null, asking: context.asking })),
  );
  const talk: Talk = {
    utterance,
    tokens,
    clauses,
    frames: [],
    placed: tokens.map(() => false),
    context,
    group: 0,
    asking: [],
    questions: [],
    meant: null,
    times: [],
  };
  const earlier = context.asked;
  const { question } = context;
  for (const clause of clauses) {
    for (const one of looksAnswered(talk, clause) ?? [clause]) {
      const at = talk.frames.length;
      readClause(talk, one);
      forgetLimb(talk, at);
      standOn(talk, one);
    }
  }
  talk.times = [];
  state(talk, talk.asking);
  placeIntroduction(talk, clauses);
  noteLeftovers(talk);
  noteBareNo(talk, context.looked);
  notePointedNo(talk);
  // A question waits for one utterance; chatter does not use it up.
  // A "good" closes what somebody was asked to do.
  const spoke =
    (earlier?.about === 'findings' && earlier.done === true) ||
    talk.frames.length > 0 ||
    clauses.some(({ mood }) => mood === 'question' || mood === 'answer');
  if (spoke && talk.context.asked === earlier && earlier !== null)
    talk.context = { ...talk.context, asked: null };
  // A patient who was asked to do something can answer as to a question.
  const asking =
    clauses.some(({ mood }) => mood === 'question' || mood === 'answer') ||
    talk.context.question !== question;
  if (talk.frames.length > 0 || asking) talk.context = { ...talk.context, asking };
  const looked = lookedOnly(talk);
  // Past its breath it waits for a place in mind again.
  const answered = clauses.some(({ mood }) => mood === 'answer');
  const open = answered && talk.context.asked === talk.context.askedBefore ? null : talk.context.asked;
  const asked = askedNext({ ...talk.context, asked: open }, looked);
  const recalled = talk.context.recalled === context.recalled ? [] : talk.context.recalled;
  talk.context = { ...talk.context, asked, recalled, looked: looked ? utterance.text : null };
  return {
    frames: mergeMechanism(mergeGcs(talk.frames, utterance.text), utterance.text),
    context: talk.context,
  };
}

// "What are her sats?" "Ninety four percent."
function isOfSaturation({ asked, said }: Context): boolean {
  const last = said.at(-1);
  const meant = asked ?? (last?.kind === 'vital' ? { about: 'vital', vital: last.vital } : null);
  return meant?.about === 'vital' && meant.vital === 'oxygen-saturation';
}
