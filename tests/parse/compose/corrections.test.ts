// A correction changes what it means and nothing else; a strike takes back the last thing or the thing it names. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { corrections, read } from '../read.ts';

describe('a correction', () => {
  it.each([
    ['left knee swollen | make that the right', ['side side=right ← last']],
    ['left knee swollen | no, the right', ['side side=right ← last']],
    [
      'left knee swollen | correction, right knee',
      ['side side=right ← kind=finding site=knee finding=swelling side=left'],
    ],
    [
      'left hand bruised | I mean the right hand',
      ['side side=right ← kind=finding site=hand finding=contusion side=left'],
    ],
    ['tender at T four | make that T five', ['site site=thoracic-spine level=T5 ← last']],
    ['swelling left elbow | correction, absent', ['present present=false ← last']],
    ['pulse eighty two | make that seventy eight', ['number value=78 ← last']],
    ['pulse ninety | no, eighty', ['number value=80 ← last']],
    ['sats eighty eight, no, ninety one', ['number value=91 ← last']],
    ['pulse one thirty, correction one oh four', ['number value=104 ← last']],
    [
      'pressure one ten over seventy | correction, pressure one twenty over eighty',
      ['statement blood-pressure systolic=120 diastolic=80 ← kind=vital vital=blood-pressure'],
    ],
    [
      'glucose five point one | make that six point one',
      ['statement glucose mgPerDl=110 ← kind=vital vital=glucose'],
    ],
    [
      'abrasion on the chin | sorry, laceration',
      ['statement laceration jaw ← kind=finding finding=abrasion site=jaw'],
    ],
    [
      'left thigh is tender | correction, mild',
      ['statement tenderness left thigh severity=mild ← kind=finding finding=tenderness site=thigh'],
    ],
    [
      'bruise right ribs | correction it was left',
      ['side side=left ← kind=finding site=ribs finding=contusion side=right'],
    ],
    [
      'bruise right ribs | no it was the left',
      ['side side=left ← kind=finding site=ribs finding=contusion side=right'],
    ],
    [
      'bruise left thigh | actually the bruise was on the right thigh',
      ['statement contusion right thigh ← kind=finding finding=contusion site=thigh'],
    ],
    ['cut on the left shin scratch that right shin', ['site site=lower-leg side=right ← last']],
    ['bruise right ribs | scratch that, it was on the left', ['side side=left ← last']],
    ['pulse eighty two | correction: seventy eight', ['number value=78 ← last']],
    [
      'left hip bruised | correction. Right hip.',
      ['side side=right ← kind=finding site=hip finding=contusion side=left'],
    ],
    [
      'left elbow cut | actually the cut is on the right elbow',
      ['statement laceration right elbow ← kind=finding finding=laceration site=elbow'],
    ],
    ['bruise right ribs | not right, left', ['side side=left ← side=right']],
    [
      'bruise right forearm | correction, right elbow, not right forearm',
      ['site site=elbow side=right ← kind=finding site=forearm side=right'],
    ],
    [
      'swelling left ankle | no, the swelling is on the knee, not the ankle',
      ['statement swelling left knee ← kind=finding finding=swelling site=ankle'],
    ],
    [
      'tender at T six and T seven | correction: tenderness was T seven and T eight, not T six',
      [
        'statement tenderness thoracic-spine level=T7 ← kind=finding finding=tenderness site=thoracic-spine level=T7',
        'statement tenderness thoracic-spine level=T8 ← kind=finding finding=tenderness site=thoracic-spine level=T6',
      ],
    ],
    [
      'tender at L two and L three | make that L three and L four',
      [
        'statement tenderness lumbar-spine level=L3 ← kind=finding finding=tenderness site=lumbar-spine level=L3',
        'statement tenderness lumbar-spine level=L4 ← kind=finding finding=tenderness site=lumbar-spine level=L2',
      ],
    ],
    ['remembers the fall | no wait he does not', ['present present=false ← last']],
    [
      "cut on the left elbow | hang on, that's the right elbow, not the left",
      ['side side=right ← kind=finding site=elbow finding=laceration side=left'],
    ],
    [
      "right foot | heel bruised | big toe cut | wait, that's the left foot",
      [
        'side side=left ← kind=visit site=foot side=right',
        'side side=left ← kind=finding site=heel finding=contusion side=right',
        'side side=left ← kind=finding site=big-toe finding=laceration side=right',
      ],
    ],
    [
      "right shin bruised | it's the left shin that's bruised",
      ['side side=left ← kind=finding site=lower-leg finding=contusion side=right'],
    ],
    [
      'graze on the right hip | correction, right knee and right shin',
      [
        'site site=knee side=right ← kind=finding finding=abrasion site=hip side=right',
        'statement abrasion right lower-leg ← kind=finding finding=abrasion site=lower-leg',
      ],
    ],
    ['no swelling right elbow | oh wait there is', ['present present=true ← last']],
    [
      'left wrist bruised | correction, not bruised',
      ['statement no contusion left wrist ← kind=finding finding=contusion'],
    ],
  ])('puts its own words in the place of the earlier ones: %s', (talk, expected) => {
    expect(corrections(talk)).toEqual(expected);
  });

  it('is none where its words say something new', () => {
    expect(corrections('left knee swollen | no right knee pain')).toEqual([]);
    expect(read('left knee swollen | no right knee pain')).toEqual([
      'swelling left knee',
      'no pain right knee',
    ]);
  });

  it.each([
    'left ankle swollen | sorry, what was that',
    'left ankle swollen | sorry about the cold hands',
    'left ankle swollen | no',
    'left ankle swollen | actually there was deformity',
    "right ribs bruised | does your left arm hurt | no it's the right",
    'bruise on the left thigh, not left shin',
    'any elbow pain? | no wait there is',
    'left elbow cut | actually the cut is deeper',
    "right shin bruised | now that's the left shin done",
    'left knee fine | right knee sore | that is the right knee',
    'correction',
  ])('is none where nothing follows that could be put in the place of anything: %s', (talk) => {
    expect(corrections(talk)).toEqual([]);
  });

  it('of a site before anything was said of it leaves one finding', () => {
    expect(read('swelling on the left, no, the right ankle', 'finding')).toEqual(['swelling right ankle']);
  });
});

describe('a strike', () => {
  it.each([
    ['bruise on the left shin | strike that', ['strike ← last']],
    ['swelling left knee | scratch that left knee', ['strike ← site=knee side=left']],
    ['bruise on the left shin | scratch that bruise', ['strike ← kind=finding finding=contusion']],
    ['bruise on the left arm | strike the tourniquet', ['strike ← kind=care care=tourniquet']],
  ])('takes back the last thing or what it names: %s', (talk, expected) => {
    expect(corrections(talk)).toEqual(expected);
  });

  it('leaves what is said after it standing', () => {
    expect(corrections('pulse ninety | scratch that, pulse eighty')).toEqual(['strike ← last']);
    expect(read('pulse ninety | scratch that, pulse eighty')).toEqual(['pulse rate=90', 'pulse rate=80']);
  });

  it('is none where a scratch is found', () => {
    expect(corrections('scratch on the left arm')).toEqual([]);
    expect(read('scratch on the left arm')).toEqual(['abrasion left arm']);
  });
});
