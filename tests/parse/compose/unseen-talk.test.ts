// What responders say in ways that no earlier row held: lists without commas, exceptions, "nothing sore". All talk is invented.

import { describe, expect, it } from 'vitest';
import { corrections } from '../read.ts';
import { checkStatements } from '../rows.ts';

describe('a list of sites without commas', () => {
  checkStatements([
    ['no blood from nose mouth or ears', ['no bleeding nose', 'no bleeding mouth', 'no bleeding both ear']],
    [
      'no tenderness over the hips pelvis or sacrum',
      ['no tenderness both hip', 'no tenderness pelvis', 'no tenderness sacrum'],
    ],
    [
      'bruising on the chest belly and left hip',
      ['contusion chest', 'contusion abdomen', 'contusion left hip'],
    ],
    // Must not: what has something of its own said of it is no part of the list.
    [
      'swelling of the left knee ankle and foot are fine',
      ['swelling left knee', 'no abnormality left ankle', 'no abnormality left foot'],
    ],
  ]);
});

describe('a side that closes a list', () => {
  checkStatements([
    [
      'left shoulder fine | elbow and wrist on the right all good',
      ['no abnormality left shoulder', 'no abnormality right elbow', 'no abnormality right wrist'],
    ],
    // Must not: the side that opens a place is its own.
    [
      'left elbow sore | wrist and right knee tender',
      ['pain left elbow', 'tenderness left wrist', 'tenderness right knee'],
    ],
  ]);
});

describe('a nothing with an adjective', () => {
  checkStatements([
    ['legs nothing swollen', ['no swelling both leg']],
    ['abdomen | nothing hurting him', ['visit abdomen', 'no pain abdomen']],
    ['arm nothing sore apart from the wrist', ['no pain arm', 'pain wrist']],
    // Must not: a place without anything, and then another.
    ['elbow nothing tender wrist', ['no abnormality elbow', 'tenderness wrist']],
    ['left knee nothing, swollen ankle', ['no abnormality left knee', 'swelling left ankle']],
  ]);
});

describe('an exception before what is said', () => {
  checkStatements([
    [
      'both legs except the left ankle are fine',
      ['visit both leg', 'note: both legs except the left ankle are fine'],
    ],
    ['everything except the left ankle is fine', ['note: everything except the left ankle is fine']],
    [
      'all fingers except the little finger move',
      ['visit fingers', 'note: all fingers except the little finger move'],
    ],
    // Must not: where something was said before it, or a new clause tells of the exception.
    ['legs okay apart from the right knee swollen', ['no abnormality both leg', 'swelling right knee']],
    ['everything but the left ankle which is swollen', ['swelling left ankle']],
  ]);
});

describe('an answer that turns', () => {
  checkStatements([
    [
      'any pain in your hip | no no ow yes there',
      ['visit hip', 'note: any pain in your hip: no no ow yes there'],
    ],
    ['neck any pain in your neck nope', ['visit neck', 'no pain neck']],
    ['any pain in your hip | no no', ['visit hip', 'no pain hip']],
  ]);
});

describe('what is said of no place in mind', () => {
  checkStatements([
    ["neck sore | he's tender all over", ['pain neck', "note: he's tender all over"]],
    [
      'right hand fine | just sore on the right when I breathe in',
      ['no abnormality right hand', 'pain right chest'],
    ],
    ['left hand weak | grip equal', ['weakness left hand', 'motion both hand strength=equal']],
    ['neck sore | tender all over the left hip', ['pain neck', 'tenderness left hip']],
  ]);
});

describe('pain free', () => {
  checkStatements([
    ['left ankle is pain free', ['no pain left ankle']],
    ['neck and back pain free', ['no pain neck', 'no pain back']],
    // Must not: the person is, and not the ankle in mind.
    ['left ankle | he is pain free', ['visit left ankle', 'note: he is pain free']],
  ]);
});

describe('what nobody may lose', () => {
  checkStatements([
    [
      'csm good in both hands and the right foot no movement in the left foot',
      [
        'circulation both hand',
        'sensation both hand',
        'motion both hand',
        'circulation right foot',
        'sensation right foot',
        'motion right foot',
        'no motion left foot',
      ],
    ],
    ['sacrum has a pressure mark', ['visit sacrum', 'note: sacrum has a pressure mark']],
    [
      "swelling left wrist | that's the left not the right",
      ['swelling left wrist', "note: that's the left not the right"],
    ],
    ['left clavicle nada', ['no abnormality left clavicle']],
    ['right leg completely fine', ['no abnormality right leg']],
    ['and mark that', ['mark: mark that']],
  ]);
});

describe('a correction that names both sides', () => {
  it('changes the side of what it names first', () => {
    expect(
      corrections('abrasion left cheek | back is clean | make that left cheek abrasion the right cheek'),
    ).toEqual(['side side=right ← kind=finding finding=abrasion site=cheek side=left']);
  });
});
