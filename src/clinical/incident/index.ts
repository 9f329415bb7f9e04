// Promises the patients of an incident worst first by stated rules; it decides for nobody and clears nobody.

export {
  ORDER_RULES,
  ORDER_WITHIN,
  type PatientRank,
  type RankedPatient,
  rankOfPatient,
  worstFirst,
} from './worst-first.ts';
