// The parts of HL7 FHIR R4 (4.0.1) that this project writes, as readonly shapes; nothing else of the standard is here.

export interface Coding {
  readonly extension?: readonly Extension[];
  readonly system: string;
  readonly code: string;
  readonly display?: string;
}

export interface Extension {
  readonly url: string;
  readonly valueCode?: string;
  readonly valueDecimal?: number;
}

export interface CodeableConcept {
  readonly coding?: readonly Coding[];
  readonly text?: string;
}

export interface Reference {
  readonly reference?: string;
  readonly display?: string;
}

export interface Quantity {
  readonly value: number;
  readonly unit: string;
  readonly system: string;
  readonly code: string;
}

export interface Narrative {
  readonly status: 'generated';
  readonly div: string;
}

export interface Annotation {
  readonly text: string;
}

/** What can carry notes; the standard has no empty lists. */
export interface Noted {
  readonly note?: readonly Annotation[];
}

interface Facts {
  readonly id: string;
  readonly meta?: { readonly profile?: readonly string[]; readonly tag?: readonly Coding[] };
  readonly text?: Narrative;
}

export interface Value {
  readonly valueBoolean?: boolean;
  readonly valueInteger?: number;
  readonly valueString?: string;
  readonly valueQuantity?: Quantity;
  readonly valueCodeableConcept?: CodeableConcept;
  readonly dataAbsentReason?: CodeableConcept;
}

export interface Component extends Value {
  readonly code: CodeableConcept;
}

export interface Observation extends Facts, Value {
  readonly resourceType: 'Observation';
  readonly status: 'preliminary' | 'final';
  readonly category?: readonly CodeableConcept[];
  readonly code: CodeableConcept;
  readonly subject: Reference;
  readonly encounter: Reference;
  readonly effectiveDateTime: string;
  /** when it was said */
  readonly issued?: string;
  readonly performer?: readonly Reference[];
  /** what worked it out, where no person said it */
  readonly device?: Reference;
  readonly interpretation?: readonly CodeableConcept[];
  readonly note?: readonly Annotation[];
  readonly bodySite?: CodeableConcept;
  readonly method?: CodeableConcept;
  readonly hasMember?: readonly Reference[];
  readonly component?: readonly Component[];
}

export interface Procedure extends Facts {
  readonly resourceType: 'Procedure';
  readonly status: 'completed' | 'unknown';
  readonly code: CodeableConcept;
  readonly subject: Reference;
  readonly encounter: Reference;
  readonly performedDateTime: string;
  readonly recorder: Reference;
  readonly bodySite?: readonly CodeableConcept[];
  readonly note?: readonly Annotation[];
}

export interface MedicationAdministration extends Facts {
  readonly resourceType: 'MedicationAdministration';
  readonly status: 'completed' | 'unknown';
  readonly medicationCodeableConcept: CodeableConcept;
  readonly subject: Reference;
  readonly context: Reference;
  readonly effectiveDateTime: string;
  readonly note?: readonly Annotation[];
}

export interface MedicationStatement extends Facts {
  readonly resourceType: 'MedicationStatement';
  readonly status: 'active' | 'unknown';
  readonly medicationCodeableConcept: CodeableConcept;
  readonly subject: Reference;
  readonly context: Reference;
  readonly dateAsserted: string;
  readonly note?: readonly Annotation[];
}

export interface AllergyIntolerance extends Facts {
  readonly resourceType: 'AllergyIntolerance';
  readonly clinicalStatus: CodeableConcept;
  readonly verificationStatus: CodeableConcept;
  readonly code: CodeableConcept;
  readonly patient: Reference;
  readonly encounter: Reference;
  readonly recordedDate: string;
  readonly recorder: Reference;
  readonly note?: readonly Annotation[];
}

export interface Patient extends Facts {
  readonly resourceType: 'Patient';
  readonly name: readonly {
    readonly extension?: readonly Extension[];
    readonly use?: 'temp';
    readonly text?: string;
  }[];
  readonly gender: 'male' | 'female' | 'unknown';
}

export interface Encounter extends Facts {
  readonly resourceType: 'Encounter';
  readonly status: 'in-progress';
  readonly class: Coding;
  readonly subject: Reference;
  readonly period: { readonly start: string };
}

export interface Practitioner extends Facts {
  readonly resourceType: 'Practitioner';
  readonly name: Patient['name'];
}

export interface Device extends Facts {
  readonly resourceType: 'Device';
  readonly deviceName: readonly { readonly name: string; readonly type: 'user-friendly-name' }[];
}

export interface Provenance extends Facts {
  readonly resourceType: 'Provenance';
  readonly target: readonly Reference[];
  readonly recorded: string;
  readonly activity: CodeableConcept;
  readonly agent: readonly { readonly type: CodeableConcept; readonly who: Reference }[];
}

export interface Section {
  readonly title: string;
  readonly code: CodeableConcept;
  readonly text: Narrative;
  readonly entry?: readonly Reference[];
  readonly emptyReason?: CodeableConcept;
}

export interface Composition extends Facts {
  readonly resourceType: 'Composition';
  readonly status: 'preliminary' | 'final';
  readonly type: CodeableConcept;
  readonly subject: Reference;
  readonly encounter: Reference;
  readonly date: string;
  readonly author: readonly Reference[];
  readonly title: string;
  readonly section: readonly Section[];
}

export type Resource =
  | AllergyIntolerance
  | Composition
  | Device
  | Encounter
  | MedicationAdministration
  | MedicationStatement
  | Observation
  | Patient
  | Practitioner
  | Procedure
  | Provenance;

export interface Bundle {
  readonly resourceType: 'Bundle';
  readonly id: string;
  readonly identifier: { readonly system: string; readonly value: string };
  readonly type: 'document';
  readonly timestamp: string;
  readonly entry: readonly { readonly fullUrl: string; readonly resource: Resource }[];
}

export interface CodeSystem {
  readonly resourceType: 'CodeSystem';
  readonly id: string;
  readonly url: string;
  readonly version: string;
  readonly name: string;
  readonly title: string;
  readonly status: 'active';
  readonly description: string;
  readonly caseSensitive: true;
  readonly content: 'complete';
  readonly count: number;
  readonly concept: readonly { readonly code: string; readonly display: string }[];
}
