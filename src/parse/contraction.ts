// Contractions that a recogniser writes without their sign, in full; talk and grammar are read with the same ones.

const LATE = new Map<string, readonly string[]>(
  Object.entries({
    cannot: ['can', 'not'],
    dont: ['do', 'not'],
    doesnt: ['does', 'not'],
    didnt: ['did', 'not'],
    isnt: ['is', 'not'],
    arent: ['are', 'not'],
    wasnt: ['was', 'not'],
    cant: ['can', 'not'],
    wont: ['will', 'not'],
    havent: ['have', 'not'],
    hasnt: ['has', 'not'],
    thats: ['that', 'is'],
    theres: ['there', 'is'],
    hes: ['he', 'is'],
    shes: ['she', 'is'],
    youre: ['you', 'are'],
    im: ['i', 'am'],
    ive: ['i', 'have'],
    youve: ['you', 'have'],
    whats: ['what', 'is'],
    lets: ['let', 'us'],
    shouldnt: ['should', 'not'],
    wouldnt: ['would', 'not'],
    couldnt: ['could', 'not'],
    hadnt: ['had', 'not'],
    werent: ['were', 'not'],
    theyre: ['they', 'are'],
    theyve: ['they', 'have'],
    weve: ['we', 'have'],
    dunno: ['do', 'not', 'know'],
    gonna: ['going', 'to'],
    paining: ['hurting'],
    aint: ['is', 'not'],
    "ain't": ['is', 'not'],
    'ain’t': ['is', 'not'],
  }),
);

/** The words of a contraction written as one ("cannot", "doesnt"), or undefined. */
export const lateContraction = (written: string): readonly string[] | undefined =>
  LATE.get(written.toLowerCase());
