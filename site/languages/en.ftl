# What the program says in English. Syntax: Project Fluent. Every language has the same messages with the same values (a test compares).
# The beginning of an id says where its message stands.

decimal-mark = .

## The frame of every page

frame-course = Course
frame-practice = Practice
frame-progress = Progress
frame-bench = Bench
frame-bottles = Bottles
frame-clients = Clients
frame-misconceptions = Misconceptions
frame-glossary = Glossary
frame-cautions = Cautions
frame-model = Model
frame-search = Search

## A colour in words, beside the client's skin

reading-words = { $depth }, { $tone }
reading-depth-far-deeper-than-the-skin = far deeper than the skin
reading-depth-much-deeper-than-the-skin = much deeper than the skin
reading-depth-deeper-than-the-skin = deeper than the skin
reading-depth-a-little-deeper-than-the-skin = a little deeper than the skin
reading-depth-as-light-as-the-skin = as light as the skin
reading-depth-a-little-lighter-than-the-skin = a little lighter than the skin
reading-depth-lighter-than-the-skin = lighter than the skin
reading-tone-skin = close to the skin
reading-tone-black-blue = black-blue
reading-tone-blue-grey = blue-grey
reading-tone-grey = grey
reading-tone-green-grey = green-grey
reading-tone-ashy = ashy
reading-tone-neutral = neutral brown
reading-tone-warm = warm brown
reading-tone-orange = orange
reading-tone-salmon = salmon
reading-tone-red = red
reading-tone-pink-violet = pink-violet

## Words of cases: skins, times, mixes. LOWER( ) writes a name in small letters, as English does inside a sentence

exercise-undertone-cool = cool
exercise-undertone-neutral = neutral
exercise-undertone-warm = warm
exercise-undertone-olive = olive
exercise-redness-calm = calm
exercise-redness-rosy = rosy
exercise-redness-flushed = flushed
exercise-redness-ruddy = ruddy
exercise-case-now = { $client } now
exercise-case-goal = Goal: { $name }, reached within ΔE00 { $tolerance }
exercise-case-skin = phototype { $phototype }, { $undertone } undertone, { $redness }
exercise-case-old-work = { $age } old. { $note }
exercise-case-judged = { $when }, under { $light }
exercise-case-placement = { $depth } mm deep, { $thickness } mm thick, load { $load }, { $coverage }% of the area covered
exercise-time-today = on the day
exercise-time-healed = six weeks
exercise-time-years = { $years ->
    [one] 1 year
   *[other] { $years } years
 }
exercise-time-months = { $months } months
exercise-after-today = on the day
exercise-after-healed = after six weeks
exercise-after-years = after { $years ->
    [one] one year
   *[other] { $years } years
 }
exercise-after-months = after { $months } months
exercise-drops = { $count ->
    [one] 1 drop
   *[other] { $count } drops
 } { $bottle }
exercise-row = { $first } and { $last }
exercise-goal = { LOWER($name) } (L* { $l }, a* { $a }, b* { $b })

## What an answer comes to

exercise-reaches = { $when }: { $reading }. It reaches the goal (ΔE00 { $error } from it).
exercise-reaches-though = { $when }: { $reading }. It reaches the goal, though a little { $miss } (ΔE00 { $error } from it).
exercise-misses = { $when }: { $reading }. It misses the goal (ΔE00 { $error } from it).
exercise-misses-how = { $when }: { $reading }. It misses the goal: { $miss } (ΔE00 { $error } from it).
exercise-too-dark = too dark
exercise-too-light = too light
exercise-too-red = too red
exercise-too-green = too green
exercise-too-yellow = too yellow
exercise-too-blue = too blue
exercise-too-grey = too grey
exercise-too-strong = too strong in colour
exercise-holds-restricted = Holds { $colourant }, restricted in the { $place } since { $since }: { $rule } ({ $source }).
exercise-restricted = { $colourant } in { $place } since { $since }: { $rule } ({ $source })
exercise-colour = { $reading } (L* { $l }, a* { $a }, b* { $b })
exercise-several-right = Exactly those that hold.
exercise-several-amiss = { $statement }: { $why }
exercise-order-right = The right order.
exercise-order-amiss = Out of order from step { $turn }: there belongs “{ $step }”. { $why }
exercise-number-right = It is { $number }. { $why }
exercise-not-answered = Not answered.
exercise-not-a-mix = Not a mix that may be given: { $why }.
exercise-by-the-engine = computed by the engine

## Why something is no answer

exercise-asks-one = this exercise asks for one option
exercise-asks-several = this exercise asks for every option that holds
exercise-asks-order = this exercise asks for an order
exercise-asks-drops = this exercise asks for whole drops of bottles
exercise-asks-number = this exercise asks for a number
exercise-no-option = there is no option { $number }; there are { $count }
exercise-not-an-order = an order names each of the { $count } steps once
exercise-not-a-number = the answer is not a number
exercise-no-bottle = there is no bottle `{ $bottle }` here; there are { $known }
exercise-other-total = { $given ->
    [one] 1 drop is
   *[other] { $given } drops are
 } given; the mix has { $wanted }
exercise-one-bottle = a mix has one bottle and drops of modifiers
exercise-many-modifiers = { $given } drops of modifiers are more than { $most }
exercise-course-changed = the course no longer has the client, goal or lesson of this exercise

## Choosing and counting out a mix

exercise-bottle-ask = { $client } wishes for { $goal }. Which mix comes nearest to it, judged { $when }?
exercise-drops-ask = { $client } wishes for { $goal }. Mix { $drops } drops that come as near to it as you can, judged { $when }.

## Foreseeing a colour

exercise-foresight-ask = { $client } gets { $mix }. Which colour will the work have { $when }?
exercise-foresight-right = { $when }, seen through this skin.
exercise-foresight-fresh = That is how it looks on the day, with colour in the epidermis and the skin reddened.
exercise-foresight-unfaded = That is how it looks after six weeks, before the colourants have faded, each at its own pace.
exercise-foresight-bare = That would be seen on bare skin; the old work beneath is seen with it.
exercise-foresight-textbook = That is how it heals on the calm, neutral skin of a textbook, which this client does not have.
exercise-foresight-little = That would be a quarter of the colour. So pale it may look in the third week, under new skin; it comes back.
exercise-foresight-bottle = That is the colour in the bottle, without any skin above it.

## What a residual comes from

exercise-hindsight-ask = { $client } comes with old work that looks like this. What was it most likely made with?
exercise-hindsight-left = What is left on { $client }
exercise-hindsight-cause = { $mix }, { $years ->
    [one] a year ago
   *[other] { $years } years ago
 }
exercise-hindsight-right = This is what it leaves: { $reading }.
exercise-hindsight-label = Its colour in the bottle resembles the residual, but that is not what it leaves in skin. It would leave: { $reading }.
exercise-hindsight-healed = It looked like this when it had healed; each colourant has left at its own pace since. It would leave: { $reading }.
exercise-hindsight-blue = The bluest colour in the bottle need not leave the bluest residual: it is black that turns blue under skin. It would leave: { $reading }.
exercise-hindsight-fresh = It looked like this on the day; what lay in the epidermis was shed within weeks. It would leave: { $reading }.
exercise-hindsight-textbook = In the calm, neutral skin of a textbook it would leave what you see; this client has another skin. Here it would leave: { $reading }.

## Correcting old work

exercise-remedy-ask = { $client } comes with old work and wishes for { $goal }. What do you do?
exercise-remedy-lighten = Place no colour yet: have the old work lightened or removed first, by somebody licensed for it
exercise-remedy-lighten-right = No mix you have reaches the goal over this work; transparent colour cannot lighten. Over work lightened to about a tenth, the best mix would come within ΔE00 { $distance }. Iron oxide and titanium white can darken under a laser: a test spot first, by a licensed practitioner, under your local code.
exercise-remedy-lighten-needless = Colour alone reaches the goal here. Lightening would put the skin through a treatment it does not need, and iron oxide or titanium white can darken under a laser.
exercise-remedy-lighten-unsafe = Not before this is settled: { LOWER($caution) }. { $say }
exercise-remedy-refrain = Do nothing to the skin today: explain why, and refer or wait until it is cleared
exercise-remedy-wait = Wait: { LOWER($caution) }. { $say } Who to ask: { $who }. Colour comes after that. Source: { $source }.
exercise-remedy-refer = Refer: { LOWER($caution) }. { $say } Who to ask: { $who }. Colour comes after that. Source: { $source }.
exercise-remedy-refrain-needless = Nothing in the answers on health calls for it. No harm is done, but the client goes away without help that could be given.
exercise-remedy-unsafe = Unsafe, whatever it would heal to: { LOWER($caution) }. { $say } Who to ask: { $who }.

## Reading skin

exercise-skin-ask = This is { $client }'s bare skin. Which reading of undertone and redness fits it best?
exercise-skin-pair = { $undertone } undertone, { $redness } skin
exercise-skin-right = Of all pairs of undertone and redness, this one comes nearest to the skin that is shown.
exercise-skin-red = What is red here is blood, not a cool undertone: it pales when pressed.
exercise-skin-pink = The pink lies in the undertone; pressing hardly changes it.
exercise-skin-dark = Depth is not warmth: b* tells how golden skin is, whatever its L*.
exercise-skin-olive = It is yellow, but it lacks the red that would make it golden.
exercise-skin-golden = It is yellow, and it has the red that olive skin lacks.
exercise-skin-flush = That is how it looks after a quick walk; judge it again after ten minutes.
exercise-skin-light = Lightness is L*; what makes skin cool is a lack of yellow, and this skin has its yellow.
exercise-skin-leans = It leans: compare a* and b* with those of neutral skin as light as this.
exercise-angle-ask = A device reads L* { $l } and b* { $b } on { $client }'s bare skin. What is the individual typology angle, in degrees?
exercise-angle-name = individual typology angle
exercise-angle-why = ITA = atan((L* - 50) / b*) = atan({ $above } / { $b }).
exercise-angle-upside-down = The fraction stands upside down: L* minus 50 goes above b*.
exercise-angle-without-fifty = 50 has to be taken off L* first: the angle is counted from middle grey.
exercise-angle-radians = That is the angle in radians; 180/π times as many degrees.
exercise-angle-source = ITA as defined by Chardon, Cretois and Hourseau (1991)

## Another light

exercise-lamp-ask = This work on { $client } was judged by daylight, { $when }. How does it look under { $lamp }, to an eye that has got used to that light?
exercise-lamp-d65 = daylight (D65)
exercise-lamp-a = tungsten light (A)
exercise-lamp-led-b3 = a salon LED (LED-B3)
exercise-lamp-fl2 = cool fluorescent light (FL2)
exercise-lamp-day = The work by day: { $mix }
exercise-lamp-right = So the eye sees it once it has adapted to this light.
exercise-lamp-same = That is its colour by day. Under another light another part of its spectrum is lit.
exercise-lamp-opposite = The colour turns, but the other way round.
exercise-lamp-double = The colour turns this way, but half as far: the rest of it is what a camera makes of the lamp.
exercise-lamp-softens = Soft light hides edges. The colour has turned, but it is as strong as it was.
exercise-lamp-tint = That is the tint of the lamp itself. The eye adapts to it within minutes, as a camera may not.

## Safety

exercise-triage-ask = { $client } wants the work done today. What do you do?
exercise-triage-go-on = Go on: patch test, consent and records as always
exercise-triage-nothing = Nothing in the answers on health calls for waiting or referring.
exercise-triage-unsafe = Not safe. { $why }
exercise-triage-wait = Wait, and explain why; for questions: { $who }
exercise-triage-refer = Do not work today; refer to { $who }
exercise-triage-reason = { $caution }: { $say } Who to ask: { $who }. Source: { $source }.
exercise-triage-advise = Advise the client what to do about it, and go on once it has been done
exercise-triage-two-weeks = Wait two weeks, then go on if the client feels well
exercise-triage-signed = Have the client sign for the risk, then go on
exercise-triage-safe-side = Wait two weeks, to be on the safe side
exercise-triage-signed-needless = Go on; with a signed consent neither patch test nor records are needed
exercise-triage-source = the course's list of cautions
exercise-caution = { $why } Caution: { $caution }. Who to ask: { $who }.

## Records of practice that cannot be used

exercise-record-none = this is no record of progress: { $why }
exercise-record-newer = this record of progress has format { $found }; this program reads up to { $known }: use the program that wrote it, or a newer one
exercise-record-unused = progress in `{ $skill }` cannot be used and counts as none: { $why }
exercise-record-no-object = it is no JSON object
exercise-record-known = `known` is { $known }, outside 0 to 1
exercise-record-credit = `credit` is { $credit }, outside 0 to the number of answers, { $answers }
## What stands around every page

frame-skip = Skip to the text
frame-navigation = Main
frame-way = Where you are
frame-promise = Predictions are for teaching, never a promise of a result on a person. Screens and printers show colours differently: read the words and the numbers beside each swatch. <a href="{ $model }">What the model knows and does not know</a>.
frame-promise-display = Predictions are for teaching, never a promise of a result on a person. Screens and printers show colours differently: read the words and the numbers beside each swatch, and <a href="{ $display }">check your screen</a>. <a href="{ $model }">What the model knows and does not know</a>.
frame-no-advice = Nothing here is medical advice. Your local code and licensed practitioners decide. <a href="{ $href }">The cautions of this course</a>.
frame-version = { $course }, version { $version }

## Numbers, times and lists

figure-percent = { $number }%
figure-minutes = { $minutes } min
figure-hours = { $hours } h
figure-hours-minutes = { $hours } h { $minutes } min
figure-next = { $before }, { $next }
figure-and = { $others } and { $last }
figure-extent = { $modules ->
    [one] { $modules } module
   *[other] { $modules } modules
 }, { $lessons ->
    [one] { $lessons } lesson
   *[other] { $lessons } lessons
 }, { $time }
time-on-the-day = on the day
time-healed = six weeks
time-months = { $count ->
    [one] 1 month
   *[other] { $months } months
 }
time-years = { $years ->
    [one] 1 year
   *[other] { $years } years
 }
age-on-the-day = On the day old. { $note }
age-healed = Six weeks old. { $note }
age-months = { $count ->
    [one] 1 month
   *[other] { $months } months
 } old. { $note }
age-years = { $years ->
    [one] 1 year
   *[other] { $years } years
 } old. { $note }

## What the engine tells apart

term-light-d65 = daylight (D65)
term-light-a = tungsten light (A)
term-light-led-b3 = white LED light (LED-B3)
term-light-fl2 = cool fluorescent light (FL2)
term-in-light-d65 = in daylight (D65)
term-in-light-a = in tungsten light (A)
term-in-light-led-b3 = in white LED light (LED-B3)
term-in-light-fl2 = in cool fluorescent light (FL2)
term-basis-measured = measured
term-basis-published = published
term-basis-representative = representative
term-skin = phototype { $phototype }, { $undertone }, { $redness }
term-undertone-cool = cool undertone
term-undertone-neutral = neutral undertone
term-undertone-warm = warm undertone
term-undertone-olive = olive undertone
term-redness-calm = calm
term-redness-rosy = rosy
term-redness-flushed = flushed
term-redness-ruddy = ruddy
term-ita-very-light = very light
term-ita-light = light
term-ita-intermediate = intermediate
term-ita-tan = tan
term-ita-brown = brown
term-ita-dark = dark
term-site-brow = brow
term-site-eyelid = eyelid
term-site-lip = lip
term-site-areola = areola
term-site-scalp = scalp
term-class-white = white
term-class-iron-oxide = iron oxide
term-class-chromium-oxide = chromium oxide
term-class-carbon = carbon
term-class-organic = organic
term-class-other-inorganic = other inorganic
term-class-mixture = mixture

## Swatches

swatch-lab = L*&nbsp;{ $l } <span>a*&nbsp;{ $a }</span> <span>b*&nbsp;{ $b }</span>
swatch-lab-plain = L*&nbsp;{ $l } a*&nbsp;{ $a } b*&nbsp;{ $b }
swatch-beyond = beyond this screen: the nearest colour it can show
swatch-bare = { $label }: bare skin
swatch-bottle = { $name }: the colour in the bottle
swatch-in-bottle = In the bottle
swatch-work = { $label }: { $words }
swatch-goal = Goal: { $name }
swatch-goal-within = reached within ΔE00 { $distance }

## Exercises on pages and on paper

question-old-work = Old work
question-health = Health
question-belief = Tempting belief
question-truth = What really happens
question-belief-more = More about this misconception
question-restricted = <strong>Restricted.</strong> { $rule }.
question-reread = To reread: <a href="{ $href }">{ $title }</a>
question-holds = holds
question-holds-not = does not hold
question-best = best answer, credit { $credit }
question-credit = credit { $credit }
question-modifier = modifier
question-title = Exercise { $number }
question-health-first = Health comes first: if an answer of the client raises a <a href="{ $href }">caution</a>, it outweighs any colour.
question-mark = Mark my answer
question-again = Try again
question-answers-healed = Answers and what each would heal to
question-answers-seen = Answers and how each would look
question-answers-why = Answers and why
question-order = The right order: <strong>{ $key }</strong>.
question-proved = How this was proved: { $proof }
question-source = Source: { $source }. Exercise { $identity }.
question-choose-one = Choose one.
question-choose-several = Choose every one that holds.
question-number-steps = Number the steps in their order.
question-drops = One bottle, { $drops } drops in all, at most { $modifiers } of them modifiers.
question-number = Give the { $name } in { $unit }.
question-step = Step { $turn }. { $why }
question-best-heals-to = What the best answer heals to
question-heals-to = What this heals to
question-would-look = How this would look
question-really-seen = What is really seen
question-is-really-seen = what is really seen
question-from-goal = ΔE00 { $distance } from the goal
question-from-seen = ΔE00 { $distance } from what is really seen
question-skin = Skin
question-hair = Hair
question-placement = Placement
question-judged = Judged
question-judged-at = { $time }, { $light }
question-placed = { $depth } mm deep, { $thickness } mm thick, one full pass, { $coverage } of the area covered
question-placed-load = { $depth } mm deep, { $thickness } mm thick, load { $load }, { $coverage } of the area covered
question-skin-now = { $name }'s skin now
question-as-now = { $name }, as it is now
question-rule = { $colourant } in { $place }: { $rule }
question-proof-seen = The engine computed every option. The nearest wrong one is ΔE00 { $margin } away; what is really seen stays nearest to the right one in { $held } of { $worlds } trials with skin, depth and load varied.
question-proof-best = Of { $searched } mixes tried, none comes nearer to the goal than ΔE00 { $error }. The best stays best in { $held } of { $worlds } trials with skin, depth and load varied.
question-proof-margin = Of { $searched } mixes tried, none comes nearer to the goal than ΔE00 { $error }. The nearest wrong option is worse by { $margin }. The best stays best in { $held } of { $worlds } trials with skin, depth and load varied.

## Texts of the course

text-no-exercises = The exercises of this drill are not part of this build.
text-neighbours = Before and after
text-before = Before this
text-after = After this
text-print = To print:
text-outline = On this page
text-caution = Caution
text-picture = Picture:
text-table = Table
text-worksheet = Worksheet
text-key = Key to the worksheet
text-module = Module { $number }
text-lessons = Lessons
text-lesson = Lesson { $number }
text-objectives = After this lesson you can
text-needs = Read before
text-skills = Trains
text-practice = More of the same, made afresh: <a href="{ $href }">practise this lesson</a>.

## Home page

home-begin = Begin here:
home-example = One bottle, { $bottle }, and what it heals to at six weeks on different skins
home-modules = What you will learn
home-instructors = For instructors
home-instructors-about = Pages to plan and teach by, and blank sheets to print.
home-cautions = Before you put anything in anybody's skin
home-cautions-about = Needles, blood and eyes are no small matter. Ask about allergies and test for them, prevent infection, and wait or refer where health asks for it: the <a href="{ $href }">cautions</a> list what is usual. This course gives no medical advice. What you may do, and to whom, is decided by your local code and your licence.
home-model = Every colour shown here is computed by a <a href="{ $href }">model of pigment in skin</a>. It teaches which way things go and roughly how far. It is never a promise of a result on a person.
home-syllabus = Syllabus, with a teaching note for each module
home-swatch-book = Swatch book: a blank sheet
home-consultation = Consultation: a sheet for the first talk
home-correction-planner = Correction planner: a blank sheet
home-sources = Sources of this course and its engine

## The page about the model

model-title = About the model
model-description = How the colours in this course are predicted, and what the prediction does not know.
model-lead = Nobody ever sees pigment by itself. The swatches and the marks in this course come from a calculation that follows light into the skin and out again.
model-steps = How a colour is predicted
model-marks = How an answer is marked
model-limits = What the model does not know
model-screens = What a screen or a printer cannot promise
model-words = Measured, published, representative
model-sources = Sources
model-teaching = <strong>Predictions are for teaching, never a promise of a result on a person.</strong> Do not show them to a client as one.
model-step-skin = <strong>Skin becomes numbers.</strong> Six of them for each person: melanin, blood, how much of the blood carries oxygen, how strongly the skin scatters, what else it absorbs, and how wide its vessels are. For the invented clients they are estimated from phototype, undertone and redness.
model-step-pigment = <strong>Pigment becomes numbers.</strong> For each colourant, how much light it absorbs and how much it scatters at every wavelength. A mix is the sum of what its drops hold.
model-step-time = <strong>Time passes.</strong> On the day, part of the colour lies in the epidermis and the skin is red; by six weeks the epidermis has shed it. Then every colourant leaves at its own pace, and fine carbon wanders deeper.
model-step-light = <strong>Light goes through.</strong> The skin is cut into layers, and the light that comes back is worked out in { $bands } bands from 400 to 700 nm, with every scattering back and forth between the layers.
model-step-eye = <strong>An eye looks.</strong> The spectrum, under a stated light, becomes L*, a* and b*, the words below a swatch, and the nearest colour a screen can show.
model-layers = The layers of the model
model-layer = Layer
model-layer-content = What is in it
model-layer-surface = Surface
model-layer-surface-content = a smooth boundary that reflects a little of the light
model-layer-epidermis = Epidermis
model-layer-epidermis-content = melanin; less than a tenth of a millimetre on the brow
model-layer-upper = Upper dermis
model-layer-upper-content = blood and the tissue around it, down to the work
model-layer-work = The work
model-layer-work-content = the same dermis with colourants, old and new together
model-layer-deep = Deep dermis
model-layer-deep-content = as above, so thick that no light comes out below
model-marks-goal = No list of right answers is looked up. Your answer is put into the client's skin, healed, and compared with the goal. The distance is CIEDE2000, written ΔE00: about 1 is the least that a trained eye sees side by side. Credit falls as the distance grows beyond the best that was possible. Where health is at stake, an answer is right or it is not.
model-marks-proof = An exercise is only shown when it has been proved: every mix that you could have made was tried, each wrong option is worse by a margin that an eye can see, and the best option stays the best in at least 95% of 200 trials in which skin, depth and amount vary half as far again as they do in practice.
model-limit-client = <strong>Your client.</strong> Skin differs in ways that nobody sees beforehand: healing, oil, sun, age, aftercare, illness, scars.
model-limit-bottles = <strong>Your bottles.</strong> The colourants here have smooth, representative curves. An academy can put its own measurements in their place. Makers change recipes.
model-limit-hand = <strong>Your hand.</strong> Depth and amount are numbers here. In life they change from stroke to stroke.
model-limit-texture = <strong>Texture.</strong> A brow is predicted as one even colour. Strokes, pores and hair are not drawn.
model-limit-harm = <strong>Harm.</strong> Allergy, infection and scarring are not part of it. The <a href="{ $href }">cautions</a> are.
model-limit-time = <strong>How long exactly.</strong> The order in which colourants leave is common practice. The months are representative.
model-limit-compared = Nobody has yet compared its healed colours with a large number of healed brows. It shows which way things go and roughly how far. Between two mixes that lie close together, trust a swatch on practice skin and your eyes.
model-screens-about = Every screen shows colours a little differently, and changes with its brightness, its age, a night setting and the light in the room. A printer differs more. So every swatch carries words and numbers, and lies on the same neutral grey by day and by night. A colour that no ordinary screen can show is marked, and drawn as the nearest one it can. Compare swatches with each other, not with skin.
model-screens-check = <a href="{ $href }">Check your screen</a> before you judge.
model-screens-white = L*, a* and b* are given relative to the white of the stated light, so that they describe what an eye sees that has got used to that light.
model-words-about = In the <a href="{ $href }">table of colourants</a> each entry says where its numbers come from. <em>Measured</em>: by the academy. <em>Published</em>: from a named source. <em>Representative</em>: plausible, invented for teaching.
model-source-layers = Light between layers: adding and doubling, after van de Hulst; Prahl, van Gemert and Welch, <cite>Applied Optics</cite>, 1993.
model-source-tissue = Melanin and bloodless tissue: S. L. Jacques, 1998. Scattering of skin: S. L. Jacques, <cite>Physics in Medicine and Biology</cite>, 2013.
model-source-blood = Blood: S. Prahl's compilation of haemoglobin spectra. Blood in vessels: van Veen, Verkruysse and Sterenborg, 2002.
model-source-covered = Partly covered skin: Yule and Nielsen, 1951.
model-source-colour = Colour: CIE 15:2018; CIELAB, ISO/CIE 11664-4; CIEDE2000, ISO/CIE 11664-6. Screens: sRGB, IEC 61966-2-1.
model-source-angle = Typology angle: Chardon, Cretois and Hourseau, 1991; Del Bino and Bernerd, 2013.
model-source-fading = Fading, drift and healing: common practice, no source.

## Bottles

bottles-description = Every bottle of the course: its colour, its colourants by Colour Index name, and where they are restricted.
bottles-restricted = <strong>Restricted in { $place }.</strong> { $index }: { $rule }, since { $since }. Source: { $source }.
bottles-lead = What is in each bottle of this course. The swatch is the colour in the bottle: pigment without skin. It is not what heals.
bottles-about = Colourants are named by their Colour Index names, the way a maker has to declare them, and each by its share of the pigment. The half-life is the time after which half of what healed is left. Numbers marked <em>representative</em> are plausible and not measured: see <a href="{ $href }">about the model</a>. Rules differ from place to place and change: check your local code before you buy or use anything.
bottles-go-to = Go to
bottles-table = the <a href="#colourants_">table of colourants</a>
bottles-no-line = Without a line
bottles-size = { $bottles ->
    [one] { $bottles } bottle
   *[other] { $bottles } bottles
 }
bottles-size-modifiers = { $modifiers ->
    [one] { $modifiers } modifier
   *[other] { $modifiers } modifiers
 }
bottles-modifier-warmer = A modifier: it makes a mix warmer, and is never used alone.
bottles-modifier-cooler = A modifier: it makes a mix cooler, and is never used alone.
bottles-modifier-darker = A modifier: it makes a mix darker, and is never used alone.
bottles-modifier-lighter = A modifier: it makes a mix lighter, and is never used alone.
bottles-sites = Meant for: { $sites }.
bottles-contents = What is in { $name }
bottles-content = <strong>{ $share }</strong> <a href="{ $href }">{ $index }</a> { $name }, half-life { $months } months
bottles-whole = the paint as a whole
bottles-colourants = Colourants
bottles-colourant = Class: { $class }. Half-life: { $months } months. Wanders deeper: { $drift }. Basis: { $basis }.
bottles-in-bottles = In:
bottles-drift = { $distance } mm
bottles-hardly = hardly
bottles-without-skin = The colour is that in the bottle, without skin.
bottles-listed = { $title }, listed
bottles-bottle = Bottle
bottles-by-share = Colourants by share
bottles-modifier = Modifier.
bottles-restricted-in = <strong>Restricted in { $place }:</strong> { $index }

## Clients

clients-description = The invented clients of the course: skin, hair, wishes, health answers and old work.
clients-lead = Everybody here is invented. If a client of yours resembles one of them, start from your client.
clients-angle = Phototype is about sun, the typology angle about colour
clients-angle-about = The phototype (Fitzpatrick I to VI) records how skin answers to sun. The individual typology angle, ITA, is worked out from L* and b* of bare skin; the larger it is, the lighter the skin. Where people were measured, the two correlate poorly, so neither stands in for the other. The table goes from the lightest skin to the deepest, and phototypes do not quite follow. Even so it understates how far the two part: the skin of these clients was estimated from phototype, undertone and redness, which makes the two look closer than they are.
clients-angle-table = Phototype and typology angle of every client
clients-client = Client
clients-phototype = Phototype
clients-ita-class = Class of ITA
clients-seen = Seen
clients-site = Site
clients-no-caution = no answer that raises a caution
clients-caution = <strong>Caution.</strong> { $note } See <a href="{ $href }">{ $caution }</a>.
clients-bare = Bare skin
clients-now = As it is now

## Misconceptions

misconceptions-description = Wrong ways of thinking that lead to wrong colours: why each is tempting, and what really happens.
misconceptions-lead = Wrong ways of thinking that sound right. Nearly every wrong option in the exercises comes from one of them.
misconceptions-tempting = Why it is tempting
misconceptions-lesson = Lesson

## Glossary

glossary-description = The words of the trade and of this course, each in a sentence or two.
glossary-letters = Letters
glossary-see = See also:

## Cautions

cautions-description = What usually asks a practitioner to wait or to refer. Not medical advice.
cautions-lead = What usually asks a practitioner to wait or to refer. It is for teaching. It is neither medical advice nor law, and no list is complete.
cautions-about = If an answer of a client raises one of these, stop there, kindly, until somebody qualified has said yes. Do not diagnose. Do not advise on medicines, and never ask anybody to leave one out. In an emergency call the emergency services. Your local code has the last word.
cautions-wait = Wait
cautions-refer = Refer
cautions-refer-to = Who can say more: { $whom }.
cautions-source = Source: { $source }.

## The check of a screen

display-title = Check your screen
display-description = What your screen shows of dark, light, near-neutral and skin colours, and what it cannot.
display-from-left = From the left: { $steps }.
display-lead = Two minutes, before you judge colours: what your screen shows, what it hides, and what no screen can promise.
display-tints = Switch off whatever tints the screen: night settings, reading modes, power saving, automatic brightness.
display-room = No sun and no coloured lamp on the screen. A room a little darker than the screen's white is best.
display-rest = Let your eyes rest on the grey for a minute.
display-dark = Dark steps
display-dark-about = Patches on black. If you cannot tell the third from its ground, the room is too bright for the screen or the screen swallows what is dark: deep browns and blacks will look alike here.
display-light = Light steps
display-light-about = Patches on white. If you cannot tell the third from its ground, very light skin will lose its differences.
display-neutral = Near-neutral steps
display-neutral-about = Patches on the grey that surrounds every swatch, each off by 2 and by 4 in a* or b*. The grey should look like nothing at all, neither pink nor green nor blue. If the patches of 4 are all invisible, do not judge ashy against neutral on this screen; if the grey itself looks tinted, the screen is.
display-skin = Steps on skin
display-skin-about = Darker patches on the skin of three clients. About ΔE00 1 is the least that a trained eye sees side by side; a marked difference in this course is 2 or more. From which patch on do you see it?
display-print = A print beside it
display-print-about = Print this page, and look at the print in daylight beside the screen. Compare each patch with its neighbour on paper, then on the screen: the <em>steps</em> should be alike. The colours themselves will not be. Paper is lit by your lamp, a screen lights itself, and every printer and paper differ. In black and white the numbers below each swatch still tell you what you need.
display-reach = What sRGB cannot show
display-reach-about = The pages give colours in sRGB, the colour space that ordinary screens aim at (IEC 61966-2-1). Healed skin is a quiet subject: of the { $healed } healed colours of every bottle alone on every client of this course, { $healed_beyond ->
    [0] all lie within sRGB
   *[other] { $healed_beyond } lie beyond it
 }. Of the { $bottles } bottles without skin, { $beyond ->
    [0] all lie within sRGB as well
    [one] { $beyond } lies beyond it, and a screen with the wider Display P3 can show { $wide } of those
   *[other] { $beyond } lie beyond it, and a screen with the wider Display P3 can show { $wide } of those
 }. A colour beyond sRGB is marked under its swatch and drawn as the nearest one; the bench uses Display P3 where the screen has it.
display-still-off = What is within sRGB may still be off on your screen: by its age, its settings, the angle you look from. A screen shows one even colour. Gloss, pores, hair and the depth that you see in skin are missing.
display-eyes = Other eyes
display-eyes-about = About one man in twelve and one woman in two hundred of European descent tell fewer colours apart than most people (from memory; shares differ between populations). If you do, you can still work by the words and numbers, by a measuring device, and with a colleague's eyes for warm against ashy. If you do not, this is what a colleague or a client may see. The numbers are those of the colour itself. Simulated for the full deficiency after Machado, Oliveira and Fernandes (2009); most people with one see something between the rows. It is no test of your eyes: for that, see an optometrist.
display-model = About the model behind these colours
display-level = { $value } of 255
display-greys = Greys beside the ground: { $steps }
display-neutrals = Near-neutral patches on neutral grey: { $steps }
display-darker = Darker patches on this skin: { $steps }
display-shift-redder = redder by { $by }
display-shift-greener = greener by { $by }
display-shift-yellower = yellower by { $by }
display-shift-bluer = bluer by { $by }
display-apart = ΔE00 { $distance }
display-eyes-most = Most eyes
display-eyes-most-about = As the other pages show them.
display-eyes-deutan = Deutan
display-eyes-deutan-about = The most common kind: red and green lie close together.
display-eyes-protan = Protan
display-eyes-protan-about = As above, and red is darker than others see it.
display-eyes-tritan = Tritan
display-eyes-tritan-about = Rare: blue and green, yellow and pink lie close together.

## Worksheets and their keys

sheet-kicker = Worksheet to module { $number }
sheet-name = Name
sheet-date = Date
sheet-group = Group
sheet-about = Tick, number or fill the boxes as each question asks, and write down why. The words and numbers below a swatch say all that its colour says, so the sheet can be worked from a black-and-white print.
sheet-last-page = What is in each bottle stands on the last page.
sheet-print = Print this page on A4 or Letter.
sheet-why = Why?
sheet-bottles = The bottles in this worksheet
sheet-number = { $name }: <span class="line" aria-hidden="true"></span> { $unit }
sheet-title = Worksheet: { $module }
sheet-key-title = Key: { $module }
sheet-to-key = Key to this worksheet
sheet-to-sheet = The worksheet
key-kicker = Key to the worksheet of module { $number }
key-about = For the instructor. ΔE00 is the distance between what an option heals to and the goal, in CIEDE2000: the smaller the better. Credit follows from it.
key-in-short = In short:
key-goal = { $client }. { $goal }, L*&nbsp;{ $l } a*&nbsp;{ $a } b*&nbsp;{ $b }, { $note }.
key-options = Options of question { $number }
key-option = Option
key-heals-to = Heals to
key-would-look = Would look
key-credit = Credit
key-why = Why
key-best = (best)
key-no-colour = no colour
key-best-answer = Best answer.
key-misconception = Misconception: <q>{ $belief }</q>

## For instructors

teach-syllabus = Syllabus
teach-syllabus-description = Modules, lessons, hours, objectives and skills of this course.
teach-minutes = Minutes are what an apprentice needs to read a lesson and do its exercises alone. Practice on practice skin, and work on people under supervision, come on top; how many hours of each, your local code says.
teach-skills = Skills: { $skills }.
teach-papers = Papers
teach-paper = Paper
teach-time = Time
teach-questions = Questions
teach-what-for = What it is for
teach-note-kicker = Teaching note to module { $number }
teach-note = Teaching note
teach-note-title = Teaching note: { $module }
teach-lessons = Lessons and what they are for
teach-tempts = What the drills tempt into, and what to say
teach-why = Why it tempts.
teach-say = What to say.
teach-treated = Treated in <a href="{ $href }">{ $title }</a>.
teach-drills = { $count ->
    [one] { $count } drill
   *[other] { $count } drills
 }

## A page of the swatch book

book-title = Swatch book
book-page = Page
book-begun = Begun on
book-about = One row for each mix. Write it down before you work, in whole drops. Draw it out thin and thick, stitch a patch on practice skin, and come back to the row when work with it has healed on a person who agreed to be noted. Say under which light you looked: { $lights }.
book-print = Print this page on A4 or Letter, as many as you need.
book-mixes = Mixes
book-number = No.
book-drops = Bottles and drops
book-batch = Batch, opened on
book-thin = Thin
book-thick = Thick
book-practice = On practice skin
book-healed = Healed: on whom, after how long, what is seen
book-light = Light
book-practice-skin = Practice skin has no blood, no melanin and no healing: it shows what a mix is made of, not what it will heal to. No initials or photographs without consent.

## A consultation

consult-title = Consultation
consult-client = Client
consult-practitioner = Practitioner
consult-about = A sheet to learn the talk by. It is no medical advice, no diagnosis and no legal form: your local code says what must be asked, signed and kept, and it has the last word. Health answers are private. Keep them locked away, no longer than the code asks for.
consult-wish = The wish
consult-ask-see = What would you like to see in the mirror, in your own words?
consult-ask-not = What would you not like at all?
consult-ask-there = What is there already: old work, when, by whom, with what?
consult-ask-skin = How is your skin on a usual day: sun, oil, redness that comes and goes?
consult-ask-return = When can you come back in six weeks, and after a year or two?
consult-health = Health answers that stop the talk
consult-health-about = Ask each one, at every visit. A yes means: not today, until somebody qualified has answered. Never ask anybody to leave out a medicine.
consult-health-in-full = The cautions in full
consult-health-table = Health answers
consult-asked = Asked about
consult-no = No
consult-yes = Yes
consult-if-yes = If yes
consult-anything = Anything else I should know?
consult-skin = The skin, read today
consult-phototype = Phototype
consult-undertone = Undertone
consult-redness = Redness
consult-measured = Measured L*, a*, b*
consult-site = Site and light
consult-old-work = Old work: words, strength
consult-patch = Patch test
consult-patch-about = A calm test lowers the risk and proves nothing. Where, when and how long: as your code and the maker's instructions say.
consult-product = Product and batch
consult-place = Place, date, hour
consult-read-on = Read on, by
consult-seen = Seen
consult-consent = Consent
consult-told = I was told what will be done, with what, and what may go wrong.
consult-told-fading = I was told that colours heal differently on each skin, fade, and are not promised.
consult-told-alternatives = I was told what the alternatives are, doing nothing among them.
consult-time = I had time to think, and I may stop at any moment.
consult-photographs = Photographs for my record: yes / no. Shown to others: yes / no.
consult-ask-whom = { $action }; ask { $whom }
consult-wait = wait
consult-refer = refer
consult-decision = Decision: <span class="box" aria-hidden="true"></span> go on <span class="box" aria-hidden="true"></span> wait until <span class="line" aria-hidden="true"></span> <span class="box" aria-hidden="true"></span> refer to <span class="line" aria-hidden="true"></span> <span class="box" aria-hidden="true"></span> no

## The plan of a correction

planner-title = Correction planner
planner-about = Read first, plan second, and write both down before any bottle is opened. This sheet gives no medical advice. Lightening and removal belong to those who are licensed for it; iron oxide and titanium white may darken under a laser.
planner-cautions = <a href="{ $href }">The cautions</a> come before the plan.
planner-seen-table = What is seen under each light
planner-seen = 1. What is seen
planner-residual = Residual in words
planner-against-skin = Against the skin beside it: lightness, red, yellow
planner-edges = Edges, depth, strength
planner-pressed = pressed with clear plastic
planner-cause = 2. The probable cause
planner-cause-about = Which colourant is left, which has gone, how old, how deep; what the record says, and what you only guess
planner-answers = 3. The five answers
planner-answers-table = The five answers
planner-light = Light
planner-answer = Answer
planner-for = For it
planner-against = Against it
planner-refer = refer first
planner-leave = leave it
planner-lighten = lighten, by the licensed
planner-remove = remove, by the licensed
planner-neutralise = neutralise with colour
planner-mix = Mix
planner-visit = Visit
planner-foreseen = Foreseen at six weeks
planner-years = And after years
planner-distance = Distance from the goal
planner-visits = 4. Visits and waiting
planner-what = What, and how little of it
planner-wait = Wait until
planner-look = Look for
planner-only-if = Go on only if
planner-stop = 5. When I stop
planner-stop-sore = The skin is sore, raised, hot, scaling, or has not healed from the last visit.
planner-stop-health = A health answer has changed, or nobody qualified has answered yet.
planner-stop-dark = Work is too dark or too dense for colour to reach the goal.
planner-stop-unseen = The next step would change less than one can see.
planner-stop-client = The client wishes to stop, or wishes for what cannot be had.
planner-mixes = Mixes thought through
planner-visits-table = Visits
planner-stop-else = Something else:
planner-not-promised = What I told the client cannot be promised:

## Sources

sources-description = What this course and its engine lean on, and which values nobody published.
sources-lead = What this course and its engine lean on, what was taken from it, and how: reproduced by a test, copied, remembered, or made up for teaching.
sources-about = Whatever is called <em>from memory</em> was not looked up again, and may be wrong in a detail. Whatever is called <em>representative</em> is of the right kind and size and was measured on nothing. A law is named to show that there is one: read the version that binds you.
sources-source = Source
sources-taken = What was taken
sources-how = How
sources-optics = Optics of the colourants
sources-questions = What the question bank names
sources-questions-about = Counted over every question. A source named here was not looked up for the question unless the lists above say so.
sources-questions-table = Sources of questions
sources-named-by = Named by
sources-asked = { $count ->
    [one] { $count } question
   *[other] { $count } questions
 }
sources-kind-standard = Standards
sources-kind-regulation = Regulations
sources-kind-guideline = Guidelines
sources-kind-paper = Papers
sources-kind-book = Books
sources-kind-table = Tables and data
sources-kind-practice = Practice, and this project's own choices
sources-basis-checked = tests reproduce numbers quoted from it
sources-basis-copied = copied from a file that carries it
sources-basis-from-memory = from memory, not looked up
sources-basis-common-practice = common practice, no source
sources-basis-representative = representative, invented for teaching
## Home: what is due

home-due = Due for practice
home-due-later = Nothing is due before <time></time>.
home-due-progress = All that you know, skill by skill

## Progress

progress-title = Progress
progress-about = What your answers say that you know, module by module, and what is due for practice.
progress-lead = What your answers say that you know, module by module, and what is due.
progress-no-script = Progress is read from the record that practice keeps in your browser, so this page needs scripts. The <a href="{ $lessons }">lessons</a> do not.
progress-wait = The record is being read …
progress-due = Due now
progress-mixed = Practise what you need most
progress-estimates = Percentages are estimates from your answers. They fall with the days without practice, more slowly after right answers on different days.
progress-record = Your record
progress-save = Save to a file
progress-load = Load from a file
progress-wipe = Wipe
progress-load-file = File of progress to load

## What cannot be practised

exercise-no-lesson = there is no lesson `{ $id }`
exercise-no-skill = there is no skill `{ $id }`
exercise-no-drill = no drill trains that
