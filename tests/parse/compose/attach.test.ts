// A finding belongs to the site before it, the one it leads to, or the one in mind; lists share theirs. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read } from '../read.ts';

describe('a finding', () => {
  it.each([
    [
      'left knee swollen and bruised and tender',
      ['swelling left knee', 'contusion left knee', 'tenderness left knee'],
    ],
    ['the elbow, swollen and tender, then the wrist', ['swelling elbow', 'tenderness elbow']],
    ['tenderness over the right hip and the left knee', ['tenderness right hip', 'tenderness left knee']],
    ['swollen left wrist, bruised right elbow', ['swelling left wrist', 'contusion right elbow']],
    ['neck, chest and back are tender', ['tenderness neck', 'tenderness chest', 'tenderness back']],
    ['bruise, size of a plum, right hip', ['contusion right hip']],
    ['ankles swollen, left foot grazed', ['swelling both ankle', 'abrasion left foot']],
  ])('belongs to the sites said with it: %s', (talk, expected) => {
    expect(read(talk, 'finding')).toEqual(expected);
  });

  it.each([
    ['right leg, bruising over the knee', ['contusion right knee', 'visit right leg']],
    ['the left arm has a graze at the elbow', ['abrasion left elbow', 'visit left arm']],
  ])(
    'belongs to the narrower place that it leads to, and the wider one is no finding: %s',
    (talk, expected) => {
      expect(read(talk)).toEqual(expected);
    },
  );

  it.each([
    ['trachea deviated to the left', ['tracheal-deviation left trachea']],
    ['left knee | tracheal deviation', ['visit left knee', 'tracheal-deviation trachea']],
    ['jugular veins distended', ['jugular-distension neck-veins']],
    ['loose teeth', ['loose-teeth teeth']],
  ])('is at its own home where it has one: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it('with no site said or in mind makes no entry but a note', () => {
    expect(read('swelling, left side')).toEqual(['note: swelling, left side']);
  });
});

describe('what is said of a finding', () => {
  it.each([
    ['mild swelling of the left ankle', 'swelling left ankle severity=mild'],
    ['four centimetre laceration on the right forearm', 'laceration right forearm size=4+cm'],
    ['two inch gash on the forehead', 'laceration forehead size=5.08+cm'],
    ['two abrasions on the left shin', 'abrasion left lower-leg count=2'],
    ['deep puncture in the right palm', 'puncture right palm quality=deep'],
    ['left ankle painful, eight out of ten', 'pain left ankle severity=8'],
    ['swelling of the distal right thigh', 'swelling right thigh part=distal'],
    ['deformity mid shaft left femur', 'deformity left thigh part=mid'],
    ['tenderness, severe, left flank', 'tenderness left flank severity=severe'],
    ['tender at C four', 'tenderness cervical-spine level=C4'],
    ['midline tenderness at T four', 'tenderness midline thoracic-spine level=T4'],
  ])('stays with it: %s', (talk, expected) => {
    expect(read(talk)).toEqual([expected]);
  });

  it('names each rib of a range', () => {
    expect(read('ribs six to eight tender on the right')).toEqual([
      'tenderness right ribs level=rib-6',
      'tenderness right ribs level=rib-7',
      'tenderness right ribs level=rib-8',
    ]);
  });

  it('is kept in words where it cannot be: a cut longer than a body', () => {
    expect(read('three hundred centimetre cut on the arm')).toEqual([
      'laceration arm',
      'note: three hundred centimetre',
    ]);
  });
});
