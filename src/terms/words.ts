// The fixed identifiers of the record besides the sites; all are terms of the trade.

export const SIDES = ['left', 'right', 'both', 'midline'] as const;
export type Side = (typeof SIDES)[number];

export const PARTS = [
  'proximal',
  'mid',
  'distal',
  'anterior',
  'posterior',
  'medial',
  'lateral',
  'upper',
  'lower',
] as const;
export type Part = (typeof PARTS)[number];

export const FINDINGS = [
  'deformity',
  'contusion',
  'abrasion',
  'puncture',
  'burn',
  'tenderness',
  'laceration',
  'swelling',
  'pain',
  'bleeding',
  'crepitus',
  'instability',
  'rigidity',
  'guarding',
  'distension',
  'numbness',
  'tingling',
  'weakness',
  'paralysis',
  'fluid',
  'avulsion',
  'amputation',
  'impaled-object',
  'bite',
  'sting',
  'rash',
  'discoloration',
  'asymmetry',
  'tracheal-deviation',
  'jugular-distension',
  'paradoxical-motion',
  'limited-motion',
  'loose-teeth',
  'missing-teeth',
  'incontinence',
  'priapism',
  'abnormality',
] as const;
export type Finding = (typeof FINDINGS)[number];

export const SEVERITIES = ['mild', 'moderate', 'severe'] as const;
export type SeverityWord = (typeof SEVERITIES)[number];

export const ASPECTS = ['circulation', 'sensation', 'motion'] as const;
export type Aspect = (typeof ASPECTS)[number];

export const PULSE_POINTS = ['radial', 'brachial', 'femoral', 'posterior-tibial', 'dorsalis-pedis'] as const;
export type PulsePoint = (typeof PULSE_POINTS)[number];

export const WARMTHS = ['warm', 'cool', 'cold'] as const;
export type Warmth = (typeof WARMTHS)[number];

export const DIGITS = [
  'thumb',
  'index-finger',
  'middle-finger',
  'ring-finger',
  'little-finger',
  'big-toe',
  'little-toe',
] as const;
export type Digit = (typeof DIGITS)[number];

export const STRENGTHS = ['equal', 'unequal', 'strong', 'weak'] as const;
export type StrengthWord = (typeof STRENGTHS)[number];

export const VITALS = [
  'pulse',
  'respirations',
  'blood-pressure',
  'oxygen-saturation',
  'temperature',
  'glucose',
  'skin',
  'pupils',
  'responsiveness',
  'gcs',
  'pain-score',
  'capillary-refill',
] as const;
export type Vital = (typeof VITALS)[number];

export const TOPICS = [
  'chief-complaint',
  'mechanism',
  'name',
  'age',
  'sex',
  'weight',
  'symptoms',
  'allergies',
  'medications',
  'past-history',
  'last-intake',
  'events',
  'onset',
  'provocation',
  'quality',
  'radiation',
  'severity',
  'time',
] as const;
export type Topic = (typeof TOPICS)[number];

export const CARES = [
  'tourniquet',
  'direct-pressure',
  'wound-packing',
  'dressing',
  'bandage',
  'splint',
  'sling',
  'traction-splint',
  'pelvic-binder',
  'spine-protection',
  'collar',
  'oxygen',
  'airway-opened',
  'recovery-position',
  'chest-seal',
  'cooling',
  'warming',
  'fluids',
  'food',
  'medication',
  'cpr',
  'irrigation',
  'reduction',
] as const;
export type Care = (typeof CARES)[number];
