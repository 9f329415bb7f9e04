// The words by which a fall is told: who falls, what falls on somebody, and lengths that are no height. Common practice, no source.

/** Words of falling. */
export const FALL = /\b(?:fall(?:en|s)?|fell|dropped|tumbled|slipped)\b/;

/** Whoever is told of so is the patient; a foot that slips is theirs. */
export const PERSON =
  /^(?:he|she|i|they|we|you|patient|casualty|victim|person|pt|man|woman|lady|gentleman|gent|guy|chap|bloke|lad|lass|girl|boy|child|kid|baby|infant|toddler|teenager|male|female|old|yo|pensioner|climber|hiker|walker|skier|boarder|snowboarder|scrambler|runner|rider|cyclist|biker|mountaineer|caver|paddler|kayaker|roofer|painter|builder|worker|labourer|laborer|electrician|scaffolder|window|cleaner|farmer|driver|student|soldier|foot|feet|boot|hand|grip|crampon)s?$/;

/** What falls and is nobody; a person beside the patient is no patient either. */
export const NOT_PATIENT =
  /^(?:rock|boulder|stone|scree|block|slab|tree|branch|bough|trunk|log|ice|icicle|snow|avalanche|cornice|serac|debris|rubble|earth|mud|brick|slate|tile|roof|ceiling|wall|beam|girder|joist|plank|timber|pole|post|pipe|bar|plate|weight|barbell|ladder|scaffold|scaffolding|crane|load|pallet|crate|box|barrel|bale|container|hammer|tool|spanner|wrench|knife|saw|chainsaw|axe|axle|jack|engine|door|gate|window|glass|fence|shelf|cupboard|wardrobe|bookcase|dresser|television|tv|fridge|piano|furniture|horse|pony|cow|bull|bike|bicycle|motorbike|motorcycle|quad|atv|tractor|trailer|car|truck|van|vehicle|boat|canoe|rope|carabiner|karabiner|piton|rack|something|anything|thing|it|stuff|object|everything|pulse|pressure|bp|sats|saturation|temperature|gcs|friend|mate|partner|husband|wife|father|mother|dad|mum|mom|brother|sister|son|daughter|colleague|buddy|someone|somebody|another|other|leader|belayer|bystander)(?:s|es)?$/;

/** It came down on somebody, who is not the one who fell. */
export const ON_SOMEBODY =
  /\b(?:on|onto|on to|on top of|hit|hitting|struck|striking|crushed|crushing|trapped|trapping|pinned|pinning|caught|landed on) (?:him|me|them|us|the (?:patient|casualty)|her(?=\s*(?:$|[.,;]|and\b|from\b|while\b|as\b|with\b)))\b/;

/** It came down on a part of somebody, which may be the faller's own. */
export const ON_A_PART =
  /\b(?:onto|on to|on|hit|struck|crushed|trapped) (?:his|her|my|their) (?:(?:left|right) )?(?:head|skull|chest|leg|foot|ankle|hand|arm|back)\b/;

/** Ground on which a way is measured and no height: "fifty metres from the car park", "down the path". */
const GROUND =
  '(?:car ?park|parking|road|roadside|path|trail|track|trailhead|hut|camp|tent|house|car|vehicle|gate|fence|lake|river|shore|stream|street|bridge|village|junction|entrance|station|here|there|us|where|piste|lift|valley|slope|hill)';

/** Behind a length: it is of another kind. */
export const OTHER_LENGTH = new RegExp(
  `^\\s*(?:away|along|apart|wide|long|across|thick|deep|further|of (?:rope|line|water|snow)|(?:in)?to the (?:left|right|north|south|east|west)|(?:from|off|up|down|past|beyond|before|short of|inside|into|outside|behind|in front of|towards) (?:(?:the|a|an|his|her|our|their|my)\\s+)?(?:\\w+\\s+)?${GROUND}\\b)`,
);

/** Before a length: it was gone, or lies between two places. */
export const OTHER_MOVE =
  /\b(?:found|located|lying|lay|thrown|dragged|walk\w*|ran|run|running|crawl\w*|carried|hik\w*|rode|riding|drove|driving|swam|slid|slides?|sliding|moved|washed|swept|parked|standing|stood|within|depth)\b/;

/** Behind a length: it is a height. */
export const HEIGHT_LENGTH =
  /^\s*(?:high|tall|up(?! (?:the|a)\b)|in height|drop|fall|below|lower|off the (?:ground|floor))\b/;
