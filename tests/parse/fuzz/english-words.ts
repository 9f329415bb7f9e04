// Ordinary English words with nothing of medicine in most of them, for talk that means nothing.

export const ENGLISH_WORDS: readonly string[] = `
  apple apricot banana barley basil bean beetroot biscuit bramble bread broccoli butter cabbage cactus
  cake candle caramel carrot cashew celery cheese cherry chestnut chive cider cinnamon clover coconut
  coriander cranberry cream cucumber currant custard daisy dandelion dumpling fennel fig flour fudge
  garlic ginger grape grapefruit gravel gravy hazelnut honey jelly juniper kale kettle lavender leek lemon
  lentil lettuce lilac lime lobster mango maple marmalade melon mint mushroom mustard nectarine nettle
  noodle nutmeg oats olive onion orchard oregano pancake papaya parsley parsnip pastry peach peanut pear
  pepper pickle pineapple plum potato pudding pumpkin quince radish raisin raspberry rhubarb rosemary
  saffron salad sesame spinach squash strawberry sultana swede syrup thyme toffee tomato treacle turnip
  vanilla vinegar walnut yoghurt acorn alley anchor antler anvil apron arch attic autumn avenue awning
  badge bakery balcony ballad bamboo banjo banner barge barrel basket beach beacon beaver beetle bell
  bench birch blossom bonfire bonnet boulder bouquet bracket brass breeze brick bridge broom bucket
  buffalo buggy bulb bureau butterfly button cabin cable camel camera canal candlestick canoe canvas
  canyon caravan cargo carpet cart castle catalogue cathedral cattle cedar ceiling cello cellar chalk
  chapel chariot chimney chisel choir cinema circus clarinet cliff clock cloth cloud coal cobble coin
  comet compass concert copper coral corridor cottage cotton courtyard crane crayon creek cricket crow
  crystal cupboard curtain cushion cyclone dairy dam dawn deer desert desk diary dinghy dish dolphin
  donkey doorway dragon drawer drizzle drum duck dune dusk eagle easel echo eclipse elbowroom elephant elm
  ember envelope estuary factory falcon farm feather fence fern ferry festival fiddle fjord flagpole
  flamingo flannel flask fleece flute foal fog forest forge fossil fountain fox frame frog frost furnace
  furrow galaxy gallery garage garden garland gate gazebo geyser glacier goat goose gorge granite grass
  grasshopper greenhouse guitar gull gutter hail hammer hammock harbour hare harp harvest hawk hay hedge
  hedgehog heron hill hinge hive hornbeam hotel hurdle hut iceberg igloo ink iris island ivory ivy jackal
  jar jersey jetty jigsaw journal jungle kayak kennel keyboard kingfisher kiosk kite kitten ladder ladle
  lagoon lake lamb lamp lantern larch lark lawn ledger leopard library lighthouse lily lizard loaf loft
  loom lorry lynx magnet magpie mansion marble market marsh meadow medal meerkat mill mirror mist mitten
  moat mole monsoon moon moor moose mosaic moss moth motor mountain mural museum napkin newspaper
  nightingale notebook novel oak oar oasis ocean octopus opera orange orbiting organ orphan osprey otter
  oven owl oyster paddle paint palace panda panther paper parade parcel parrot pasture path pavement
  peacock pebble pelican pen pencil penguin pheasant piano picnic pigeon pillow pine pipe pirate planet
  plank plaza plough pocket poem pond pony poppy porch portrait postcard pottery prairie prism puddle
  puffin puppet puzzle quarry quartz quilt rabbit radar raft railway rainbow rake ranch raven reef ribbon
  riddle ridge robin rocket rooftop rope rug ruler saddle sail salmon sand sandal satellite saucer sawdust
  scarf school scooter sculpture seagull seaweed shadow shed shelf shell shepherd shop shovel shrub signal
  silk silver sketch slate sledge sleet slope snail snow snowdrift soap sofa sparrow spruce squirrel
  stable stadium stamp star station statue steam stool stork storm stove stream street suitcase summit
  sundial sunset swan tablecloth tapestry teapot telescope temple tent terrace theatre thistle thunder
  tide tiger timber toad token torch tower tractor train trampoline tram tree trellis trolley trumpet
  tulip tundra tunnel turret turtle twig umbrella valley vase velvet veranda vessel viaduct village
  vineyard violet violin volcano vulture waggon wallet walrus wardrobe waterfall weasel whale wheat wheel
  whistle willow windmill window wizard wolf wool workshop yacht yard yew zebra zinc announce argue
  arrange arrive balance borrow brew broadcast browse build bury calculate celebrate chatter choose clap
  climb collect compare compete compose construct cook count dance dangle decide decorate deliver design
  dig discover discuss dive divide donate draw dream drive earn embroider encourage enjoy enter escape
  estimate explain explore fetch fish float fold forgive gallop gather giggle glide grow guess hesitate
  hum imagine improve invent invite juggle knit launch laugh lend listen mention mend mow multiply
  negotiate nibble obey offer order perform persuade plant polish postpone practise predict print promise
  publish quarrel race recite recommend refuse rehearse repair rescue ride rinse scatter sew shiver shout
  sing ski skip sleep sneeze solve stir stroll study stumble subtract suggest surrender swim teach thank
  translate trudge unpack vanish vote wander weave whisper wonder yawn ancient angry annual bitter bold
  brave bright broad busy calm careful cheap cheerful clever cloudy coarse colourful comical crowded
  curious dusty eager early elegant empty famous fierce fluffy foggy foreign friendly frosty gentle golden
  graceful grand greedy handsome hollow honest humble icy idle jolly keen lazy lively lonely loyal lucky
  merry mighty modern muddy narrow neat noble noisy odd ornate peaceful polite proud purple quaint quiet
  rapid rare rusty secret shallow shiny silent sleepy slim smooth snowy solemn sour splendid square steep
  stormy sturdy sunny sweet tame thin tidy tranquil vast vivid wealthy windy wise witty wooden young
`
  .trim()
  .split(/\s+/);
