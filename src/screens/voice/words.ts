// What can be said to the page, in groups, with what it does; a test reads each of them through the grammar.

import type { Command } from '../../parse/index.ts';

export interface Saying {
  readonly say: string;
  readonly does: string;
  /** null where it is no command: it corrects, strikes or marks */
  readonly command: Command | null;
}

export interface SayingGroup {
  readonly title: string;
  readonly sayings: readonly Saying[];
}

const to = (command: Command | null, say: string, does: string): Saying => ({ command, say, does });

export const SAYINGS: readonly SayingGroup[] = [
  {
    title: 'What was just said',
    sayings: [
      to(null, 'correction, right forearm', 'changes the last thing said'),
      to(null, 'make that the left', 'changes its side'),
      to(
        'show-together',
        'check the plain ones',
        'shows those that may be confirmed together; the press is by hand',
      ),
      to(null, 'strike the left forearm swelling', 'strikes what it names'),
      to(null, 'disregard that', 'strikes it; it stays in the record as struck'),
      to('restore', 'restore that', 'takes the last strike back'),
      to(
        'confirm',
        'confirm',
        'said by itself, confirms the last thing said, where no question is open; sides, negatives, numbers, allergies and drugs one by one, each named before',
      ),
      to('read-back', 'read back', 'says what was entered last, in full'),
      to('say-again', 'say again', 'says once more what the page said last'),
      to('hear-again', 'hear that again', 'plays the sound of the last words, where it is kept'),
      to(null, 'mark that', 'keeps the moment with its time'),
    ],
  },
  {
    title: 'The examination',
    sayings: [
      to('whats-left', "what's left", 'says and shows what was not examined'),
      to('stand-by', 'stand by', 'the page keeps silent; what is said is still recorded'),
      to('go-ahead', 'go ahead', 'the page speaks again'),
      to('stop-listening', 'stop listening', 'ends the listening; a press begins it again'),
      to('hush', 'stop reading', 'stops the page speaking at once'),
    ],
  },
  {
    title: 'Questions: what is at odds',
    sayings: [
      to('show-questions', 'show questions', 'shows them'),
      to('question-next', 'next question', 'reads one aloud with its entries; the words below answer it'),
      to(
        'question-holds',
        'settle the question',
        'or “it holds”, “both hold”, “leave it as it is”, said by itself: all of it holds; confirms nothing',
      ),
      to('misheard', 'it was misheard', 'strikes the one entry that it is about'),
      to('misheard-first', 'the first was misheard', 'strikes that entry'),
      to('misheard-second', 'the second was misheard', 'strikes that one'),
      to('misheard-third', 'the third was misheard', 'strikes that one'),
      to('question-again', 'ask that again', 'asks once more what was settled last'),
    ],
  },
  {
    title: 'Patients and problems',
    sayings: [
      to('patient', 'next patient', 'goes on to the next one’s record, or begins one'),
      to('patient', 'new patient', 'begins a record in the same incident'),
      to('patient', 'back to patient one', 'opens that one’s record'),
      to(
        'open-record',
        'open record two',
        'shows it in the list by its number; said while the list is open, opens it',
      ),
      to(
        'open-record',
        'open the record of patient two',
        'or of a name, a tag, a place; where two fit, none is opened',
      ),
      to('new-incident', 'new incident', 'leads to it; said while the list is open, begins it'),
      to(null, 'top problem is left forearm', 'puts it first in what is handed over'),
      to(null, 'add hypothermia to the problem list', 'adds what no finding says'),
    ],
  },
  {
    title: 'The page',
    sayings: [
      to('help', 'what can I say', 'shows and says this list'),
      to('show-exam', 'show the exam', 'the exam'),
      to('show-entries', 'show entries', 'all entries'),
      to('show-body', 'show the body', 'the body'),
      to('show-front', 'show the front of the body', 'its front'),
      to('show-back', 'show the back of the body', 'its back'),
      to('show-signs', 'show signs', 'vital signs, scores and criteria'),
      to('show-report', 'show the report', 'the report'),
      to('show-timeline', 'show the timeline', 'all that was said, by time'),
      to('order-radio', 'show the radio script', 'the report as it is read, and the timeline'),
      to('order-atmist', 'show ATMIST', 'the report in that order, and the radio’s'),
      to('order-imist-ambo', 'show IMIST AMBO', 'the same'),
      to('order-sbar', 'show SBAR', 'the same'),
      to('order-soap', 'show the SOAP report', 'the report in that order'),
      to('read-report', 'read the report', 'the report in pieces, for the radio'),
      to('show-records', 'show records', 'the records: open, close, export, wipe'),
      to('show-close', 'close the record', 'the way to close it'),
      to('show-export', 'export the record', 'the way to take it out as a file'),
      to('show-wipe', 'wipe the record', 'the way to wipe it'),
      to('show-print', 'print the report', 'the way to paper'),
      to('show-symbols', 'show the symbols', 'the record as symbols or a file'),
      to('show-receive', 'receive a record', 'takes one from another device'),
      to('reminder-on', 'remind me of vital signs', 'says when they are due'),
      to('reminder-off', 'stop reminding me', 'does not'),
      to('show-settings', 'show settings', 'looks, hand, echo and sounds'),
      to('show-ready', 'check readiness', 'what this device still lacks'),
      to('show-hearing', 'set up hearing', 'what hears, and how to get it'),
      to('measure-sound', 'measure the noise', 'five seconds that tell how well it can hear here'),
      to('show-cautions', 'show cautions', 'what to know before relying on this'),
      to('look-sun', 'sun look', 'for full sun'),
      to('look-night', 'night look', 'for the dark'),
      to('look-plain', 'plain look', 'the plain look'),
      to('echo-off', 'echo off', 'entries are not said back'),
      to('echo-short', 'short echo', 'entries are said back in short'),
      to('echo-full', 'full echo', 'entries are said back with what was not spoken'),
      to('sounds-on', 'short sounds on', 'for heard, not understood and question'),
      to('sounds-off', 'short sounds off', 'none of them'),
      to('show-link', 'show the team link', 'one incident with others'),
      to('close-sheet', 'close the sheet', 'what lies over the page'),
      to('lock', 'lock the page', 'locks it'),
    ],
  },
  {
    title: 'While a report is read over the radio',
    sayings: [
      to('next-piece', 'next piece', 'begins, and goes on'),
      to('last-piece', 'previous piece', 'goes back'),
    ],
  },
];

/** What a voice says to "what can I say": the shortest list that gets a person on. */
export const SAYINGS_ALOUD =
  "You can say: confirm. Correction. Disregard that. Restore that. Read back. Say again. Hear that again. What's left. Mark that. Next patient. Back to patient one. Stand by. Go ahead. Echo off, short or full. Night look, sun look, or plain look. Next question. Settle the question. The first was misheard. Open record two. Show entries, body, signs, questions, timeline, report, A T MIST, S BAR, SOAP, records or settings. Close the sheet. Read the report. Check readiness. Stop listening.";

/** What no word does, because it cannot be taken back or opens what is closed to others. */
export const BY_HAND_ALONE =
  'The words lead to it and the last press is by hand: several entries confirmed at once, closing, wiping, exporting and printing a record, unlocking the page, and dictation that may send sound away.';
