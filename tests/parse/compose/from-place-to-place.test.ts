// "Grazed from wrist to elbow": a range on one limb is both places that it names and what lies between them. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { checkStatements } from '../rows.ts';
import { found } from '../standing.ts';

describe('a range between two places', () => {
  it.each([
    ['grazed from wrist to elbow on the right', 'right', ['wrist', 'forearm', 'elbow'], 'abrasion'],
    [
      'there is a scald from the ankle up to the knee on her left leg',
      'left',
      ['ankle', 'lower-leg', 'knee'],
      'burn',
    ],
    [
      'bruising from the shoulder to the elbow, left side',
      'left',
      ['shoulder', 'upper-arm', 'elbow'],
      'contusion',
    ],
    ['right leg | gash running from the hip to the knee', 'right', ['hip', 'thigh', 'knee'], 'laceration'],
    ['burn from the right wrist to the fingertips', 'right', ['wrist', 'hand', 'fingers'], 'burn'],
    ['left hip to knee is swollen', 'left', ['hip', 'thigh', 'knee'], 'swelling'],
    ['swollen between the wrist and the elbow on the left', 'left', ['forearm'], 'swelling'],
    ['scratch from the right knee to the shin', 'right', ['knee', 'lower-leg'], 'abrasion'],
  ] as const)('is all of it: %s', (talk, side, sites, finding) => {
    expect(found(talk)).toEqual(sites.map((site) => [site, side, finding, true]));
  });

  checkStatements([
    [
      'no swelling from the knee to the ankle on the right',
      ['no swelling right knee', 'no swelling right lower-leg', 'no swelling right ankle'],
    ],
    [
      'no tenderness from the neck to the lumbar spine',
      ['no tenderness neck', 'no tenderness thoracic-spine', 'no tenderness lumbar-spine'],
    ],
    // How long it is, is told once; what was done, too.
    [
      'twenty centimetre gash from the right elbow to the wrist',
      ['laceration right elbow', 'laceration right forearm size=20+cm', 'laceration right wrist'],
    ],
    ['splint from wrist to elbow on the right', ['splint right forearm']],
    ['halfway between the right knee and ankle there is a cut', ['laceration right lower-leg part=mid']],
    // Each place keeps the side that it was said with.
    ['bruise from the left shoulder to the right hip', ['contusion left shoulder', 'contusion right hip']],
    [
      'feeling from the right hip down to the knee',
      ['visit right hip', 'visit right thigh', 'visit right knee'],
    ],
  ]);

  it('has one side, which is put right for all of it', () => {
    expect(
      found("grazed from the left wrist to the elbow | hang on that's the right").map(([, side]) => side),
    ).toEqual(['right', 'right', 'right']);
  });
});

describe('two places that are no range', () => {
  checkStatements([
    // What has moved is there no longer, what runs comes from one place, and how far it goes is told of another.
    ['blood from the right ear to the shoulder', ['bleeding right ear', 'visit shoulder']],
    ['right heel to left shin is fine', ['no abnormality left lower-leg', 'visit right heel']],
    ['knee to chest hurts', ['pain chest', 'visit knee']],
    ['right arm numb from the elbow down', ['numbness right arm', 'note: from the elbow down']],
  ]);

  it('leaves out what lies between them where it moved', () => {
    expect(found('pain moved from the right hip to the knee').map(([site]) => site)).not.toContain('thigh');
  });
});
