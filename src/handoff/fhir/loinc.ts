// The LOINC codes that a document may carry, each with the display its source shows; no other part of LOINC is here.

/** To stand wherever these codes are shown or shipped (the licence asks for it; wording from memory). */
export const LOINC_NOTICE =
  'This material contains content from LOINC (http://loinc.org). LOINC is copyright © Regenstrief Institute, Inc. and the Logical Observation Identifiers Names and Codes (LOINC) Committee and is available at no cost under the license at http://loinc.org/license. LOINC® is a registered United States trademark of Regenstrief Institute, Inc.';

/**
 * Sources: the vital-signs profiles of HL7 FHIR 4.0.1 and its example Observations (seen); for level of responsiveness
 * and pain, listings of LOINC (seen); for capillary refill HISO 10052:2026, section 2.6 (seen; one other mapping has
 * 44971-0).
 */
export const LOINC = {
  'vital-signs-panel': {
    code: '85353-1',
    display: 'Vital signs, weight, height, head circumference, oxygen saturation and BMI panel',
  },
  'heart-rate': { code: '8867-4', display: 'Heart rate' },
  'respiratory-rate': { code: '9279-1', display: 'Respiratory rate' },
  'oxygen-saturation': { code: '2708-6', display: 'Oxygen saturation in Arterial blood' },
  'pulse-oximetry': {
    code: '59408-5',
    display: 'Oxygen saturation in Arterial blood by Pulse oximetry',
  },
  'body-temperature': { code: '8310-5', display: 'Body temperature' },
  'body-weight': { code: '29463-7', display: 'Body weight' },
  'blood-pressure': { code: '85354-9', display: 'Blood pressure panel with all children optional' },
  systolic: { code: '8480-6', display: 'Systolic blood pressure' },
  diastolic: { code: '8462-4', display: 'Diastolic blood pressure' },
  'gcs-total': { code: '9269-2', display: 'Glasgow coma score total' },
  'gcs-eye': { code: '9267-6', display: 'Glasgow coma score eye opening' },
  'gcs-verbal': { code: '9270-0', display: 'Glasgow coma score verbal' },
  'gcs-motor': { code: '9268-4', display: 'Glasgow coma score motor' },
  responsiveness: { code: '67775-7', display: 'Level of responsiveness' },
  pain: {
    code: '72514-3',
    display: 'Pain severity - 0-10 verbal numeric rating [Score] - Reported',
  },
  'capillary-refill': { code: '44963-7', display: 'Capillary refill [Time]' },
} as const;

export type LoincName = keyof typeof LOINC;

/** The answers of the GCS components that HL7's example Observation/glasgow shows (seen); of the others none was seen. */
export const GCS_ANSWERS: Readonly<Record<string, { readonly code: string; readonly display: string }>> = {
  E4: { code: 'LA6556-0', display: 'Eyes open spontaneously' },
  V4: { code: 'LA6560-2', display: 'Confused' },
  M5: { code: 'LA6566-9', display: 'Localizing pain' },
};
