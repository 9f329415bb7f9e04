// The words of the grammar for the parts of the body name the site, the side and the part that a medic means by them.

import { describe, expect, it } from 'vitest';
import { SITES } from '../../src/terms/index.ts';
import { siteGrammar, siteWords } from './site-words.ts';

/** "clavicle", "clavicle left", "knee right +medial", "foot right palm": sites with the side and parts of the line. */
const named = (line: string): string => {
  const { sites, sides, parts } = siteWords(line);
  return [...sites, ...sides, ...parts.map((part) => `+${part}`)].join(' ');
};

type Row = readonly [line: string, meant: string];

// All phrases are invented.
const HEAD: readonly Row[] = [
  ['head', 'head'],
  ['the back of his head', 'head +posterior'],
  ['top of the head', 'head +upper'],
  ['feel of your scalp', 'skull'],
  ['base of the skull', 'skull +lower'],
  ['occiput', 'skull +posterior'],
  ['left temple', 'skull left +lateral'],
  ['facial bones', 'face'],
  ['left side of his face', 'face left'],
  ['forehead', 'forehead'],
  ['her brow', 'forehead'],
  ['cut above the left eyebrow', 'forehead left'],
  ['left eye socket', 'eye left'],
  ['right orbit', 'eye right'],
  ['around both eyes', 'eye both'],
  ['the inner ear', 'ear'],
  ['right earlobe', 'ear right'],
  ['behind the ear', 'behind-ear'],
  ['behind his left ear', 'behind-ear left'],
  ['behind both ears', 'behind-ear both'],
  ['back of the right ear', 'behind-ear right'],
  ['right mastoid', 'behind-ear right'],
  ['bridge of the nose', 'nose'],
  ['nostrils', 'nose'],
  ['left cheekbone', 'cheek left'],
  ['right zygoma', 'cheek right'],
  ['the inside of his cheek', 'mouth'],
  ['upper lip', 'mouth'],
  ['tongue', 'mouth'],
  ['front teeth', 'teeth +anterior'],
  ['molars', 'teeth'],
  ['mandible', 'jaw'],
  ['chin', 'jaw'],
  ['maxilla', 'jaw +upper'],
  ['T M J on the left', 'jaw left'],
];

const NECK_AND_SHOULDER: readonly Row[] = [
  ['nape of the neck', 'neck +posterior'],
  ['the back of the neck', 'neck +posterior'],
  ["Adam's apple", 'trachea'],
  ['windpipe', 'trachea'],
  ['jugular veins', 'neck-veins'],
  ['C-spine', 'cervical-spine'],
  ['cervical vertebrae', 'cervical-spine'],
  ['midline c spine', 'cervical-spine midline'],
  ['left collar bone', 'clavicle left'],
  ['both clavicles', 'clavicle both'],
  ['collarbone on the right', 'clavicle right'],
  ['A C joint', 'shoulder'],
  ['point of the left shoulder', 'shoulder left'],
  ['right deltoid', 'shoulder right'],
  ['head of the left humerus', 'shoulder left'],
  ['right shoulder blade', 'scapula right'],
  ['scapulae', 'scapula'],
];

const ARM: readonly Row[] = [
  ['left upper extremity', 'arm left'],
  ['the upper arm', 'upper-arm'],
  ['upper left arm', 'upper-arm left'],
  ['proximal third of the right humerus', 'upper-arm right +proximal'],
  ['left biceps', 'upper-arm left +anterior'],
  ['back of her right upper arm', 'upper-arm right +posterior'],
  ['two inches above the right elbow', 'upper-arm right +distal'],
  ['olecranon', 'elbow'],
  ['right medial epicondyle', 'elbow right +medial'],
  ['crook of the left arm', 'elbow left +anterior'],
  ['antecubital fossa', 'elbow +anterior'],
  ['fore arm', 'forearm'],
  ['distal end of the left radius', 'forearm left +distal'],
  ['both bones of the left forearm', 'forearm left'],
  ['radius and ulna', 'forearm'],
  ['just below the elbow', 'forearm +proximal'],
  ['carpals', 'wrist'],
  ['anatomical snuffbox on the right', 'wrist right'],
  ['scaphoid', 'wrist'],
  ['back of the left hand', 'hand left +posterior'],
  ['knuckles', 'hand'],
  ['fifth metacarpal', 'hand'],
  ['heel of the right hand', 'palm right'],
  ['thenar eminence', 'palm'],
  ['base of the left thumb', 'thumb left +proximal'],
  ['forefinger', 'index-finger'],
  ['the middle finger', 'middle-finger'],
  ['tip of her left ring finger', 'ring-finger left +distal'],
  ['pinky', 'little-finger'],
  ['fifth finger on the left', 'little-finger left'],
  ['third finger', 'fingers'],
  ['fingertips', 'fingers'],
];

const TRUNK: readonly Row[] = [
  ['chest wall', 'chest'],
  ['left hand side of the chest', 'chest left'],
  ['left pec', 'chest left'],
  ['breastbone', 'sternum'],
  ['xiphoid process', 'sternum +lower'],
  ['sternal notch', 'sternum +upper'],
  ['rib cage', 'ribs'],
  ['left costal margin', 'ribs left +lower'],
  ['lower ribs on the left', 'ribs left +lower'],
  ['right axilla', 'armpit right'],
  ['under the left arm', 'armpit left'],
  ['belly', 'abdomen'],
  ['below the belly button', 'abdomen +lower'],
  ['epigastrium', 'abdomen +upper'],
  ['LUQ', 'upper-quadrant left'],
  ['upper left quadrant', 'upper-quadrant left'],
  ['right lower quadrant', 'lower-quadrant right'],
  ["McBurney's point", 'lower-quadrant right'],
  ['all four quadrants', 'upper-quadrant lower-quadrant'],
  ['iliac crests', 'pelvis'],
  ['pubic symphysis', 'pelvis'],
  ['left ileum', 'pelvis left'],
  ['right greater trochanter', 'hip right'],
  ['neck of the left femur', 'hip left'],
  ['left inguinal crease', 'groin left'],
  ['perineum', 'genitals'],
  ['testicles', 'genitals'],
  ['left glute', 'buttock left'],
  ['his backside', 'buttock'],
  ['torso', 'chest abdomen back'],
  ['abrasions of the trunk', 'chest abdomen back'],
];

const LEG: readonly Row[] = [
  ['lower limb', 'leg'],
  ['femur', 'thigh'],
  ['front of the left thigh', 'thigh left +anterior'],
  ['right hamstring', 'thigh right +posterior'],
  ['inner left thigh', 'thigh left +medial'],
  ['upper inner thigh', 'thigh +upper +medial'],
  ['just above the right knee', 'thigh right +distal'],
  ['kneecap', 'knee'],
  ['back of the left knee', 'knee left +posterior'],
  ['popliteal fossa', 'knee +posterior'],
  ['lateral aspect of the right knee', 'knee right +lateral'],
  ['lower left leg', 'lower-leg left'],
  ['shin', 'lower-leg'],
  ['right calf', 'lower-leg right'],
  ['distal tib/fib', 'lower-leg +distal'],
  ['head of the fibula', 'lower-leg +proximal'],
  ['just below the left knee', 'lower-leg left +proximal'],
  ['right lateral malleolus', 'ankle right +lateral'],
  ['inside of the right ankle', 'ankle right +medial'],
  ['left Achilles', 'ankle left +posterior'],
  ['sole of his right foot', 'foot right +lower'],
  ['the top of the left foot', 'foot left +upper'],
  ['metatarsals', 'foot'],
  ['arch of the foot', 'foot'],
  ['heel bone', 'heel'],
  ['left calcaneus', 'heel left'],
  ['great toe', 'big-toe'],
  ['little toe on the right', 'little-toe right'],
  ['left second toe', 'toes left'],
  ['toenails', 'toes'],
];

const BACK: readonly Row[] = [
  ['his back', 'back'],
  ['upper back', 'back +upper'],
  ['small of the back', 'back +lower'],
  ['between the shoulder blades', 'back +upper'],
  ['rest of the back', 'back'],
  ['spinous processes', 'spine'],
  ['thoracic spine', 'thoracic-spine'],
  ['L-spine', 'lumbar-spine'],
  ['sacrum', 'sacrum'],
  ['left S I joint', 'sacrum left'],
  ['coccyx', 'tailbone'],
  ['tail bone', 'tailbone'],
  ['left flank', 'flank left'],
  ['tender in her left side', 'flank left'],
];

const REGIONS = { HEAD, NECK_AND_SHOULDER, ARM, TRUNK, LEG, BACK };

describe('the words for the parts of the body', () => {
  it('are read without error, every tag a site, side or part of the record', () => {
    expect(siteGrammar.kind === 'errors' ? siteGrammar.errors : []).toEqual([]);
  });

  for (const [region, rows] of Object.entries(REGIONS))
    it.each(rows)(`name a site of the ${region.toLowerCase().replaceAll('_', ' ')}: %s`, (line, meant) => {
      expect(named(line)).toBe(meant);
    });

  it('name every site of the record by its own name', () => {
    const unnamed = SITES.filter((site) => !siteWords(site.replaceAll('-', ' ')).sites.includes(site));
    expect(unnamed).toEqual([]);
  });

  it.each([
    ['collar bones', 'clavicle'],
    ['hands', 'hand'],
    ['calves', 'lower-leg'],
    ['feet', 'foot'],
    ['mastoids', 'behind-ear'],
    ['shoulder blades', 'scapula'],
    ['glutes', 'buttock'],
    ['upper quadrants', 'upper-quadrant'],
  ])('mean both of a pair where the word is a plural: %s', (line, site) => {
    expect(siteWords(line)).toMatchObject({ sites: [site], marks: ['plural'] });
  });

  it.each(['collar bone', 'biceps', 'knuckles', 'ribs', 'fingers', 'toes', 'teeth'])(
    'do not mean both of a pair by a plural within one side: %s',
    (line) => {
      expect(siteWords(line).marks).not.toContain('plural');
    },
  );

  it.each([
    ['tender at C5', 'cervical-spine', 'C5'],
    ['c-five', 'cervical-spine', 'C5'],
    ['cervical vertebra six', 'cervical-spine', 'C6'],
    ['t four', 'thoracic-spine', 'T4'],
    ['T 12', 'thoracic-spine', 'T12'],
    ['thoracic vertebra four', 'thoracic-spine', 'T4'],
    ['L2', 'lumbar-spine', 'L2'],
    ['fifth lumbar', 'lumbar-spine', 'L5'],
    ['S one', 'sacrum', 'S1'],
    ['rib seven', 'ribs', 'rib-7'],
    ['rib number seven on the right', 'ribs', 'rib-7'],
    ['over the seventh rib', 'ribs', 'rib-7'],
    ['8th rib', 'ribs', 'rib-8'],
  ])('name a vertebra or a rib by its number: %s', (line, site, level) => {
    expect(siteWords(line)).toMatchObject({ sites: [site], levels: [level] });
  });

  it.each(['left four arm', 'right heal is tender', 'soul of the foot', 'lumber spine', 'write forearm'])(
    'are marked where a recogniser wrote another real word for them: %s',
    (line) => {
      expect(siteWords(line).marks).toContain('homophone');
      expect(siteWords(line).sites).toHaveLength(1);
    },
  );

  it.each([
    'over the brow of the hill',
    'he came off a quad bike',
    'a hairline fracture, they said',
    'the shock index is up',
    'he is in the arch of the tunnel',
    'there is waste in the bag',
    'it will heal',
    'the crown of the road',
    'he was trapped in a trap',
    'latitude and longitude',
    'sole survivor',
    'it is in the trunk of the car',
    'on the other side of the river',
    'bring it to this side please',
    'what have we got left',
  ])('do not hear a site in: %s', (line) => {
    expect(siteWords(line).sites).toEqual([]);
  });

  it.each([
    ['just above the knee', 'knee'],
    ['the inside of his cheek', 'cheek'],
    ['behind the ear', 'ear'],
    ['heel of the hand', 'heel'],
    ['shoulder blade', 'shoulder'],
    ['head of the fibula', 'head'],
    ['neck of the femur', 'neck'],
    ['back of the hand', 'back'],
    ['pit of the stomach', 'armpit'],
    ['upper arm', 'arm'],
  ])('do not take %s for the %s', (line, site) => {
    expect(siteWords(line).sites).not.toContain(site);
    expect(siteWords(line).sites).toHaveLength(1);
  });
});
