// "Hang on, that's the right": a clause that tells no more than that it was the other side. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { statementsOf } from '../read.ts';
import { found, standing } from '../standing.ts';

/** Each standing check of a limb, look and care with its place. */
const placed = (talk: string) =>
  standing(talk).flatMap((one) =>
    'site' in one && one.kind !== 'finding' ? [`${one.kind} ${one.side} ${one.site}`] : [],
  );

describe('the side of what was just said', () => {
  it.each([
    ['left calf is bruised | hold on, that’s the right', [['lower-leg', 'right', 'contusion', true]]],
    ['swelling at the left ankle | oh sorry that was the other one', [['ankle', 'right', 'swelling', true]]],
    ['right hip tender | no, other hip', [['hip', 'left', 'tenderness', true]]],
    ["cut on the left hand | it's the opposite hand actually", [['hand', 'right', 'laceration', true]]],
    ['left thigh is deformed | my mistake, other leg', [['thigh', 'right', 'deformity', true]]],
    ['left thigh deformed | sorry, other shin', [['lower-leg', 'right', 'deformity', true]]],
    ['no bruising on the left elbow | hang on that is the right', [['elbow', 'right', 'contusion', false]]],
    ["right shin is tender hang on that's the left", [['lower-leg', 'left', 'tenderness', true]]],
    ['left ear is cut | did I say left, it is the right', [['ear', 'right', 'laceration', true]]],
    ['left ear is cut | not that one, the other one', [['ear', 'right', 'laceration', true]]],
    ["graze on the left wrist | hang on that's my left, his right", [['wrist', 'right', 'abrasion', true]]],
    ["left forearm swollen, that's the right forearm sorry", [['forearm', 'right', 'swelling', true]]],
    ['left palm burned | the right, I mean', [['palm', 'right', 'burn', true]]],
    ['left palm burned | her right, sorry', [['palm', 'right', 'burn', true]]],
    ['left palm burned | right, not left', [['palm', 'right', 'burn', true]]],
    ['left palm burned | my left, her right', [['palm', 'right', 'burn', true]]],
    ["left palm burned | I've mixed up my sides, it's the right", [['palm', 'right', 'burn', true]]],
    ['left palm burned | I should have said right', [['palm', 'right', 'burn', true]]],
    ["left palm burned | hang on it's the right that's got the burn", [['palm', 'right', 'burn', true]]],
    ["left palm burned | no no, that's the right hand I'm looking at", [['palm', 'right', 'burn', true]]],
    ["both hips bruised | hang on, that's just the left", [['hip', 'left', 'contusion', true]]],
  ] as const)('is the other one in %s', (talk, entries) => expect(found(talk)).toEqual(entries));

  it('is that of all that was said of that place without a break', () => {
    expect(found("left ankle tender | swollen too | sorry that's the right")).toEqual([
      ['ankle', 'right', 'tenderness', true],
      ['ankle', 'right', 'swelling', true],
    ]);
  });

  it('is that of checks, looks and care as well', () => {
    expect(placed("right foot is cold, no sensation | hang on that's the left one")).toEqual([
      'csm left foot',
      'csm left foot',
    ]);
    expect(placed('sling on the left arm | hang on, that was the right')).toEqual(['care right arm']);
    expect(placed("right elbow | hang on that's the left")).toEqual(['visit left elbow']);
  });

  it('is that of what is said next', () => {
    expect(found("left elbow | hang on that's the right | bruised")).toEqual([
      ['elbow', 'right', 'contusion', true],
    ]);
    expect(found("left knee grazed, hang on that's the right one, and the shin's swollen")).toEqual([
      ['knee', 'right', 'abrasion', true],
      ['lower-leg', 'right', 'swelling', true],
    ]);
  });

  it('is put right while a question stands', () => {
    expect(found("tell me if it hurts | left heel | yes | hang on that's the right | no")).toEqual([
      ['heel', 'right', 'pain', true],
    ]);
  });

  it.each([
    ['left eye is bruised | hang on wrong side', 'right'],
    ['cut on the right thumb | wrong hand', 'left'],
    ['left ribs bruised | sorry other side', 'right'],
    ['left wrist bruised | pulse ninety | hang on that was the right', 'right'],
    ['left wrist bruised | the bruise is on the right', 'right'],
    ['left wrist bruised | is that the left or the right | right', 'right'],
    ['left wrist bruised | which wrist | the right', 'right'],
  ])('is asked about where it was not said outright: %s', (talk, side) => {
    const [one] = standing(talk).filter(({ kind }) => kind === 'finding');
    expect(one).toMatchObject({ side });
    expect(one?.doubt).toHaveLength(1);
  });

  it('leaves what was said of the limb before, and asks about it', () => {
    const [thigh, heel] = standing("left thigh bruised | heel tender | hang on that's the right").filter(
      ({ kind }) => kind === 'finding',
    );
    expect(
      [thigh, heel].map((one) => one?.kind === 'finding' && [one.site, one.side, one.doubt?.length ?? 0]),
    ).toEqual([
      ['heel', 'right', 0],
      ['thigh', 'left', 1],
    ]);
  });
});

describe('what goes on to the other side', () => {
  it.each([
    'left arm numb | other arm',
    'left arm numb | hang on, let me see the other arm',
    'left arm numb | sorry, give me your right arm',
    'left arm numb | sorry, back to the right arm',
    'left arm numb | sorry, does the other arm hurt',
    "left arm numb | hang on that's right",
    "left arm numb | hang on that's the left",
    "left arm numb | abdomen soft | hang on that's the right",
    'left arm numb | you are on the wrong side',
    'left arm numb | the right arm is numb too',
    'left arm numb | the numbness is in the right hand',
    'left arm numb | which hand do you write with | right',
  ])('puts nothing right: %s', (talk) => {
    expect(found(talk)[0]).toEqual(['arm', 'left', 'numbness', true]);
  });

  it('is another thing that is said', () => {
    expect(found("left arm numb | hang on the other arm's bruised")).toEqual([
      ['arm', 'left', 'numbness', true],
      ['arm', 'right', 'contusion', true],
    ]);
  });

  it('is kept in words where nothing fits it', () => {
    const notes = statementsOf("gave her ketamine | hang on that's the left").flatMap(({ statement }) =>
      statement.kind === 'note' ? [statement.text] : [],
    );
    expect(notes).toEqual(["that's the left"]);
  });
});

describe('an answer with the other one', () => {
  it('denies the one that was asked after', () => {
    expect(found('does your left hip hurt | no the other one')).toEqual([
      ['hip', 'left', 'pain', false],
      ['hip', 'right', 'pain', true],
    ]);
  });

  it('says nothing of it where it only goes on to it', () => {
    expect(found('tell me if it hurts | left knee | no, other knee | no')).toEqual([
      ['knee', 'left', 'pain', false],
      ['knee', 'right', 'pain', false],
    ]);
    expect(found('any pain in your left foot | no and the other one')).toEqual([
      ['foot', 'left', 'pain', false],
    ]);
  });
});

it('asks about what took its side from the place that is named', () => {
  const all = standing('left ankle is puffy, no tingling in that foot | hang on, that is the right ankle');
  expect(all).toMatchObject([
    { site: 'ankle', side: 'right', finding: 'swelling' },
    { site: 'foot', side: 'left', finding: 'tingling', doubt: [expect.stringContaining('which side')] },
  ]);
});
