// Promises the patients of an incident worst first by stated rules; it decides for nobody and clears nobody.

export { type PatientRank, type RankedPatient, rankOfPatient, worstFirst } from './worst-first.ts';
