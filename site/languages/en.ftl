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

## A colour in words, beside the client’s skin

reading-words = { $depth }, { $tone }
reading-depth-far-deeper-than-the-skin = far deeper than the skin
reading-depth-much-deeper-than-the-skin = much deeper than the skin
reading-depth-deeper-than-the-skin = deeper than the skin
reading-depth-a-little-deeper-than-the-skin = a little deeper than the skin
reading-depth-as-light-as-the-skin = as light as the skin
reading-depth-a-little-lighter-than-the-skin = a little lighter than the skin
reading-depth-lighter-than-the-skin = lighter than the skin
reading-depth-far-deeper-than-the-bare-lip = far deeper than the bare lip
reading-depth-much-deeper-than-the-bare-lip = much deeper than the bare lip
reading-depth-deeper-than-the-bare-lip = deeper than the bare lip
reading-depth-a-little-deeper-than-the-bare-lip = a little deeper than the bare lip
reading-depth-as-light-as-the-bare-lip = as light as the bare lip
reading-depth-a-little-lighter-than-the-bare-lip = a little lighter than the bare lip
reading-depth-lighter-than-the-bare-lip = lighter than the bare lip
reading-depth-far-deeper-than-the-bare-skin-there = far deeper than the bare skin there
reading-depth-much-deeper-than-the-bare-skin-there = much deeper than the bare skin there
reading-depth-deeper-than-the-bare-skin-there = deeper than the bare skin there
reading-depth-a-little-deeper-than-the-bare-skin-there = a little deeper than the bare skin there
reading-depth-as-light-as-the-bare-skin-there = as light as the bare skin there
reading-depth-a-little-lighter-than-the-bare-skin-there = a little lighter than the bare skin there
reading-depth-lighter-than-the-bare-skin-there = lighter than the bare skin there
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
reading-tone-near-black = near black
reading-tone-violet = violet
reading-tone-bluish-red = bluish red
reading-tone-bluish-pink = bluish pink
reading-tone-pink = pink
reading-tone-rose = rose
reading-tone-dull-rose = dull rose
reading-tone-brownish-red = brownish red
reading-tone-brownish-pink = brownish pink
reading-tone-reddish-brown = reddish brown
reading-tone-brown = brown
reading-tone-greyish-brown = greyish brown
reading-tone-yellowish-brown = yellowish brown
reading-tone-beige = beige

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
exercise-case-age = { $age } years old.
exercise-case-scar = { $skin }; the place is a flat, pale scar
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
# Said of a bottle alone: longer than any bottle with drops of one modifier
exercise-mix-alone = { $mix }, and no drop of a modifier
exercise-row = { $first } and { $last }
exercise-goal = { LOWER($name) } (L*{"\u00A0"}{ $l }, a*{"\u00A0"}{ $a }, b*{"\u00A0"}{ $b })

## What an answer comes to

exercise-reaches = { $when }: { $reading }. It reaches the goal (ΔE00 { $error } from it).
exercise-reaches-though = { $when }: { $reading }. It reaches the goal; if anything it is { $miss } (ΔE00 { $error } from it).
exercise-misses = { $when }: { $reading }. It misses the goal (ΔE00 { $error } from it).
exercise-misses-how = { $when }: { $reading }. It misses the goal: { $miss } (ΔE00 { $error } from it).
exercise-too-dark = too dark
exercise-too-light = too light
exercise-too-red = too red
exercise-too-green = too green
exercise-hardly-red = not red enough
exercise-too-yellow = too yellow
exercise-too-blue = too blue
exercise-hardly-yellow = not yellow enough
exercise-too-grey = too grey
exercise-too-strong = too strong in colour
exercise-holds-restricted = Holds { $colourant }, restricted in the { $place } since { $since }: { $rule } ({ $source }).
exercise-restricted = { $colourant } in { $place } since { $since }: { $rule } ({ $source })
exercise-colour = { $reading } (L*{"\u00A0"}{ $l }, a*{"\u00A0"}{ $a }, b*{"\u00A0"}{ $b })
exercise-several-right = Exactly those that hold.
exercise-several-wrong = “{ $statement }” does not hold: { $why }
exercise-several-missed = “{ $statement }” holds, and was missed: { $why }
exercise-order-right = The right order.
exercise-order-amiss = Wrong from step { $turn } on. What belongs there: { $step } – { $why }
exercise-number-right = It is { $number }. { $why }
exercise-not-answered = Not answered.
exercise-not-a-mix = Not a mix that may be given: { $why }.
exercise-by-the-engine = computed by the engine

## Why something is no answer

exercise-asks-one = this exercise asks for one option: write its letter, such as `B`
exercise-asks-several = this exercise asks for every option that holds: write their letters, such as `A C`
exercise-asks-order = this exercise asks for an order: write the letters in their order, such as `B A C E D`
exercise-asks-drops = this exercise asks for whole drops of bottles: write them as `a5 d1`
exercise-asks-number = this exercise asks for a number: write it as `41.5`
exercise-no-option = there is no option { $letter }; there are { $count }
exercise-not-an-order = an order names each of the { $count } steps once, by its letter
exercise-not-a-number = the answer is not a number; write it as `41.5`
exercise-no-bottle = there is no bottle `{ $bottle }` here; there are { $known }; write drops as `a5 d1`
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
exercise-foresight-little = That would be a tenth of the colour. Nearly as pale it may look in the third week, under new skin; it comes back.
exercise-foresight-third = That would be a third of the colour. What flakes off lay in the epidermis; of what lies in the dermis no fixed share is lost.
exercise-foresight-black = That would be seen if only the black of the mix were left.
exercise-foresight-stronger = So strong it would be if the colour had deepened while it settled. From six weeks on pigment is only carried off.
exercise-foresight-veiled = So veiled it would be with the work twice as deep.
exercise-foresight-warmth = So grey it would be if half of what makes it a brown had gone with the crusts.
exercise-foresight-milky = So pale and dull it would be if the cloud of the new skin never cleared.
exercise-foresight-richer = So deep and full it would be if the skin gave chroma instead of taking it.
exercise-foresight-bottle = That is the colour in the bottle, without any skin above it.

## What a residual comes from

exercise-hindsight-ask = In skin like { $client }’s, old work looks like this. What was it most likely made with?
exercise-hindsight-left = What is left in skin like { $client }’s
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

## Correcting old work. Of the ways to say the two options without colour, two are longer than any mix, and two shorter: "Lighten first" stands
## between the brief ones of doing nothing in length, as the whole sentence does between the whole ones

exercise-remedy-ask = { $client } comes with old work and wishes for { $goal }. What do you do?
exercise-remedy-lighten = Place no colour yet: have the old work lightened or removed first, by somebody licensed for it
exercise-remedy-lighten-briefly = Lighten first
exercise-remedy-lighten-right = No mix you have reaches the goal over this work; transparent colour cannot lighten. Over work lightened to about a tenth, the best mix would come within ΔE00 { $distance }. Iron oxide and titanium white can darken under a laser: a test spot first, by a licensed practitioner, under your local code.
exercise-remedy-lighten-needless = Colour alone reaches the goal here. Lightening would put the skin through a treatment it does not need, and iron oxide or titanium white can darken under a laser.
exercise-remedy-lighten-unsafe = Not before this is settled: { LOWER($caution) }. { $say }
exercise-remedy-refrain = Do nothing to the skin today: explain why, and refer or wait until it is cleared
exercise-remedy-refrain-fully = Do nothing to the skin today: explain why, write it down, and refer or wait until it has been cleared
exercise-remedy-refrain-briefly = Refer, or wait
exercise-remedy-refrain-in-a-word = Do no work
exercise-remedy-wait = Wait: { LOWER($caution) }. { $say } Who to ask: { $who }. Colour comes after that. Source: { $source }.
exercise-remedy-refer = Refer: { LOWER($caution) }. { $say } Who to ask: { $who }. Colour comes after that. Source: { $source }.
exercise-remedy-refrain-needless = Nothing in the answers on health calls for it. No harm is done, but the client goes away without help that could be given.
exercise-remedy-unsafe = Unsafe, whatever it would heal to: { LOWER($caution) }. { $say } Who to ask: { $who }.

## What was proved

exercise-proof-seen = The engine computed every option. The nearest wrong one is ΔE00 { $margin } away; what is really seen stays nearest to the right one in { $held } of { $worlds } trials with skin, depth and load varied.
exercise-proof-best = Of { $searched } mixes tried, none comes nearer to the goal than ΔE00 { $error }. The best stays ahead of the wrong answers in { $held } of { $worlds } trials with skin, depth and load varied.
exercise-proof-margin = Of { $searched } mixes tried, none comes nearer to the goal than ΔE00 { $error }. The nearest wrong option is worse by { $margin }. The best stays ahead of the wrong answers in { $held } of { $worlds } trials with skin, depth and load varied.
exercise-proof-lighten = Of { $searched } mixes tried over the work as it is, none comes nearer to the goal than ΔE00 { $before }; over the lightened work the best comes within ΔE00 { $error }. To lighten first stays right in { $held } of { $worlds } trials with skin, depth and load varied.
exercise-proof-next = { $over ->
    [lightened] Next best over the lightened work (ΔE00): { $next }.
   *[same] Next best (ΔE00): { $next }.
 }
exercise-proof-next-one = { $label } ({ $error })

## Reading skin

exercise-skin-ask = This is { $client }’s bare skin. Which reading of undertone and redness fits it best?
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
exercise-angle-ask = A device reads L*{"\u00A0"}{ $l } and b*{"\u00A0"}{ $b } on { $client }’s bare skin. What is the individual typology angle, in degrees?
exercise-angle-name = individual typology angle
exercise-angle-why = ITA = atan((L* - 50) / b*) = atan({ $above } / { $b }).
exercise-angle-upside-down = The fraction stands upside down: L* minus 50 goes above b*.
exercise-angle-without-fifty = 50 has to be taken off L* first: the angle is counted from middle grey.
exercise-angle-radians = That is the angle in radians; 180/π times as many degrees.
exercise-angle-source = ITA as defined by Chardon, Cretois and Hourseau (1991)
exercise-skin-read = { $client }’s skin, as the device reads it
exercise-skin-read-beside = { $client }’s skin beside the old work, as the device reads it
exercise-skin-beside = { $client }’s { $site ->
    [lip] lip
   *[other] skin
 } beside the old work

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
exercise-lamp-washes-out = So it would look if the lamp washed it out. The eye sets itself by the white around it.
exercise-lamp-dims = So it would look if the lamp made it darker and greyer. The eye sets itself by the white around it.
exercise-lamp-enriches = So it would look if the lamp made it so much deeper and fuller. What lamp and pigment make of it together is less.
exercise-lamp-hardens = So it would look if the lamp made it stand out from the skin. The eye sets itself by the white around it, and the skin is lit by the same lamp.
exercise-lamp-greys = So it would look if the lamp made it so much paler and duller. The eye sets itself by the white around it.
exercise-lamp-softens = Soft light hides edges. The colour has turned, but it is as strong as it was.
exercise-lamp-tint = That is the tint of the lamp itself. The eye adapts to it within minutes, as a camera may not.

## Safety

exercise-triage-ask = { $client } wants the work done today. By the answers on health alone: what do you do?
exercise-triage-go-on = Go on: patch test, consent and records as always
exercise-triage-go-on-briefly = Go on as always
exercise-triage-go-on-fully = Go on: patch test as the maker and the local code ask for it, consent in writing, and a record of every step as always
exercise-triage-nothing = Nothing in the answers on health calls for waiting or referring.
exercise-triage-unsafe = Not safe. { $why }
exercise-triage-elsewhere = It is right not to go on today, but this answer is for somebody else’s condition. { $why }
exercise-triage-needless = Not needed. { $why }
exercise-triage-not-yours = Advice on medicines and treatments is for whoever prescribes them, not for you. { $why }
exercise-triage-no-signature = A signature replaces neither patch test nor records, and makes nothing safe. { $why }
exercise-triage-wait = Wait, and explain why; for questions: { $who }
exercise-triage-wait-briefly = Wait; for questions: { $who }
exercise-triage-wait-fully = Do not work today; explain why, note it in the records, and wait; for questions: { $who }
exercise-triage-refer = Do not work today; refer to { $who }
exercise-triage-refer-briefly = Refer to { $who }
exercise-triage-refer-fully = Do not work today; explain why, note it in the records, and refer to { $who }
exercise-triage-reason = { $caution }: { $say } Who to ask: { $who }. Source: { $source }.
exercise-triage-advise = Advise the client what to take or leave out, and go on once that is done
exercise-triage-advise-briefly = Advise what to take or leave out
exercise-triage-advise-fully = Advise the client what to take or leave out while the area heals, note in the records what was said, and go on once that is done
exercise-triage-two-weeks = Wait two weeks, then go on if the client feels well
exercise-triage-two-weeks-briefly = Wait two weeks, then go on
exercise-triage-two-weeks-fully = Wait two weeks, note in the records how the client feels then, and go on without asking anybody else if the client feels well
exercise-triage-signed = Go on; with a signed consent neither patch test nor records are needed
exercise-triage-signed-briefly = Go on with a signature alone
exercise-triage-signed-fully = Go on; once the client has read and signed the consent in front of you, neither patch test nor records are needed for the work
exercise-triage-source = the course’s list of cautions
exercise-caution = { $why } Caution: { $caution }. Who to ask: { $who }.

## Records of practice that cannot be used

exercise-record-none = this is no record of progress: { $why }
exercise-record-newer = this record of progress has format { $found }; this program reads up to { $known }: use the program that wrote it, or a newer one
exercise-record-unused = progress in `{ $skill }` cannot be used and counts as none: { $why }
exercise-record-empty = it is empty
exercise-record-other = it is another kind of file; a record is a `.json` file that practice has kept or saved
exercise-record-ends = it ends early, at line { $line }, column { $column }; perhaps it was not copied whole
exercise-record-broken = what stands at line { $line }, column { $column } makes it unreadable; take the file as it was saved, or an earlier copy
exercise-record-no-format = `format` is missing, which every record has; perhaps it is another kind of file
exercise-record-no-object = it is no JSON object
exercise-record-missing = `{ $field }` is missing
exercise-record-field = `{ $field }` must be { $wanted ->
    [format] the number { $known }
    [object] a JSON object
    [count] a whole number from 0 to { $most }
    [seconds] a whole number of seconds, or `null`
   *[number] a number
 }
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
term-skin-alone = { $undertone }, { $redness }
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

## A colour by itself: bottles, and bare skin

colour-white = near white
colour-black = near black
colour-very-light = very light { $colour }
colour-light = light { $colour }
colour-middle = { $colour }
colour-dark = dark { $colour }
colour-very-dark = very dark { $colour }
colour-grey = grey
colour-pink = pink
colour-pink-beige = pink-beige
colour-coral = coral
colour-red = red
colour-red-brown = red-brown
colour-orange = orange
colour-brown = brown
colour-beige = beige
colour-golden-yellow = golden yellow
colour-yellow-brown = yellow-brown
colour-yellow = yellow
colour-olive = olive
colour-green = green
colour-blue = blue
colour-violet = violet
colour-purple = purple
colour-skin-very-light = pale beige
colour-skin-light = light beige
colour-skin-middle = beige
colour-skin-tan = light brown
colour-skin-brown = brown
colour-skin-deep = deep brown
colour-skin-very-deep = very deep brown

## Swatches

swatch-lab = L* { $l } a* { $a } b* { $b }
swatch-beyond = beyond this screen: the nearest colour it can show
swatch-bare = { $label }: { $site ->
    [lip] bare lip
   *[other] bare skin
 }, { $words }
swatch-bottle = { $name }: the colour in the bottle, { $words }
swatch-in-bottle = In the bottle
swatch-alone = By itself
swatch-colourant = { $name }: the colourant by itself, { $words }
swatch-work = { $label }: { $words }
swatch-goal = Goal: { $name }
swatch-goal-note = counts as reached within ΔE00 { $distance }; { $site ->
    [lip] in this lip
   *[other] on this skin
 }: { $tone }

## Exercises on pages and on paper

question-old-work = Old work
question-health = Health
question-health-nothing = no to every question that was asked
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
question-on-bench = { $name } on the bench
question-choose-one = Choose one.
question-choose-several = Choose every one that holds.
question-number-steps = Number them in their order: 1 is the first.
question-order-letters = Write their letters in their order on the first page, the first one first.
question-drops = One bottle, alone or with modifiers: { $drops } drops in all, at most { $modifiers } of them of modifiers.
question-number = Give the { $name } in { $unit }.
question-step = Number { $turn }. { $why }
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
question-skin-now = { $name }’s { $site ->
    [lip] lip
   *[other] skin
 } now
question-as-now = { $name }, as it is now
question-rule = { $colourant } in { $place }: { $rule }

## Texts of the course

text-no-exercises = The exercises of this drill are not part of this build.
text-neighbours = Before and after
text-before = Before this
text-after = After this
text-print = To print:
text-on-bench = On the bench
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
text-bottles = The bottles of these exercises, in the library:
text-practice = More of the same, made afresh: <a href="{ $href }">practise this lesson</a>.

## Home page

home-begin = Begin here:
home-example = One bottle, { $bottle }, and what it heals to at six weeks on different skins
home-module-list = The modules
home-modules = What you will learn
home-instructors = For instructors
home-instructors-about = Pages to plan and teach by, and blank sheets to print.
home-cautions = Before you put anything in anybody’s skin
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
model-marks-goal = Of a question about colour no list of right answers is looked up. Your answer is put into the client’s skin, healed, and compared with the goal. The distance is CIEDE2000, written ΔE00: about 1 is the least that a trained eye sees side by side. Credit falls as the distance grows beyond the best that was possible. Where health is at stake, an answer is right or it is not.
model-marks-proof = Such an exercise is only shown when it has been proved: every mix that you could have made was tried, each wrong option is worse by a margin that an eye can see, and the best option stays the best in at least 95% of 200 trials in which skin, depth and amount vary half as far again as they do in practice. Other questions, on health, hygiene, law, order and words, follow the source that stands below each of them, or common practice.
model-limit-client = <strong>Your client.</strong> Skin differs in ways that nobody sees beforehand: healing, oil, sun, age, aftercare, illness, scars.
model-limit-bottles = <strong>Your bottles.</strong> The colourants here have smooth, representative curves. An academy can put its own measurements in their place. Makers change recipes.
model-limit-hand = <strong>Your hand.</strong> Depth and amount are numbers here. In life they change from stroke to stroke.
model-limit-texture = <strong>Texture.</strong> A brow is predicted as one even colour. The strokes of a swatch are drawn for its shape alone; pores and hair are not there.
model-limit-harm = <strong>Harm.</strong> Allergy, infection and scarring are not part of it. The <a href="{ $href }">cautions</a> are.
model-limit-time = <strong>How long exactly.</strong> The order in which colourants leave is common practice. The months are representative.
model-limit-compared = Nobody has yet compared its healed colours with a large number of healed brows. It shows which way things go and roughly how far. Between two mixes that lie close together, trust a swatch on practice skin and your eyes.
model-screens-about = Every screen shows colours a little differently, and changes with its brightness, its age, a night setting and the light in the room. A printer differs more. So every swatch carries words and numbers, and lies on the same neutral grey by day and by night. A colour that no ordinary screen can show is marked, and drawn as the nearest one it can. Compare swatches with each other, not with skin.
model-screens-check = <a href="{ $href }">Check your screen</a> before you judge.
model-screens-white = L*, a* and b* are given relative to the white of the stated light, so that they describe what an eye sees that has got used to that light.
model-words-about = In the <a href="{ $href }">table of colourants</a> each entry says where its numbers come from. <em>Measured</em>: by the academy. <em>Published</em>: from a named source. <em>Representative</em>: plausible, invented for teaching.
model-source-layers = Light between layers: adding and doubling, after van de Hulst; Prahl, van Gemert and Welch, <cite>Applied Optics</cite>, 1993.
model-source-tissue = Melanin and bloodless tissue: S. L. Jacques, 1998. Scattering of skin: S. L. Jacques, <cite>Physics in Medicine and Biology</cite>, 2013.
model-source-blood = Blood: S. Prahl’s compilation of haemoglobin spectra. Blood in vessels: van Veen, Verkruysse and Sterenborg, 2002.
model-source-covered = Partly covered skin: Yule and Nielsen, 1951.
model-source-colour = Colour: CIE 15:2018; CIELAB, ISO/CIE 11664-4; CIEDE2000, ISO/CIE 11664-6. Screens: sRGB, IEC 61966-2-1.
model-source-angle = Typology angle: Chardon, Cretois and Hourseau, 1991; Del Bino and Bernerd, 2013.
model-source-fading = Fading, drift and healing: common practice, no source.

## Bottles

bottles-description = Every bottle of the course: its colour, its colourants by Colour Index name, and where they are restricted.
colourants-lead = What is in the bottles, one by one. The swatch is the colourant by itself, in a layer through which nothing is seen. Strong ones look nearly black there; thinned, and in skin, they do not.
bottles-restricted = <strong>Restricted in { $place }.</strong> { $index }: { $rule }, since { $since }. Source: { $source }.
bottles-lead = What is in each bottle of this course. The swatch is the colour in the bottle: pigment without skin. It is not what heals.
bottles-about = Colourants are named by their Colour Index names, the way a maker has to declare them, and each by its share of the pigment. The half-life is the time after which half of what healed is left. Numbers marked <em>representative</em> are plausible and not measured: see <a href="{ $href }">about the model</a>. Rules differ from place to place and change: check your local code before you buy or use anything.
bottles-go-to = Go to
bottles-table = the <a href="{ $href }">table of colourants</a>
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
colourants-description = Every colourant of the course: its Colour Index name and number, how it looks, how long it stays, and where it is restricted.
bottles-colourant = Class: { $class }. Half-life: { $months } months. Wanders deeper: { $drift }. Basis: { $basis }.
bottles-in-bottles = { $count ->
    [one] In one bottle of { $of }
   *[other] In { $count } bottles of { $of }
 }
bottles-in-none = In no bottle of this course.
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
clients-lead = Everybody here is invented. If a client of yours resembles one of them: the real person decides, not the resemblance.
clients-angle = Phototype is about sun, the typology angle about colour
clients-angle-about = The phototype (Fitzpatrick I to VI) records how skin answers to sun. The individual typology angle, ITA, is worked out from L* and b* of bare skin; the larger it is, the lighter the skin. Where people were measured, the two correlate poorly, so neither stands in for the other. The table goes from the lightest skin to the deepest, and phototypes do not quite follow. Even so it understates how far the two part: the skin of these clients was estimated from phototype, undertone and redness, which makes the two look closer than they are.
clients-angle-table = Phototype and typology angle of the skin, where it is no lip, areola or scar
clients-find = Find a client
clients-of-phototype = Phototype { $phototype }
clients-part = { $title }, page { $part } of { $of }
clients-on-bench = { $name } on the bench
clients-in-short = { $age }; { $skin }; { $site }
clients-with-old-work = old work
clients-with-caution = a health answer raises a caution
clients-by-residual = Old work, by what is left of it
clients-by-site = Other sites than the brow
clients-client = Client
clients-phototype = Phototype
clients-ita-class = Class of ITA
clients-seen = Seen
clients-site = Site
clients-no-caution = none raised by these answers
clients-cautions = Cautions
clients-caution = <strong>Caution.</strong> { $note } See <a href="{ $href }">{ $caution }</a>.
clients-bare = { $site ->
    [lip] Bare lip
   *[other] Bare skin
 }
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
display-room = No sun and no coloured lamp on the screen. A room a little darker than the screen’s white is best.
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
display-eyes-about = About one man in twelve and one woman in two hundred of European descent tell fewer colours apart than most people (from memory; shares differ between populations). If you do, you can still work by the words and numbers, by a measuring device, and with a colleague’s eyes for warm against ashy. If you do not, this is what a colleague or a client may see. The numbers are those of the colour itself. Simulated for the full deficiency after Machado, Oliveira and Fernandes (2009); most people with one see something between the rows. It is no test of your eyes: for that, see an optometrist.
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
sheet-last-page = What is in each bottle stands at the end of the sheet.
sheet-print = Print this page on A4 or Letter.
sheet-why = Why?
sheet-bottles = The bottles in this worksheet
sheet-drops = Write into each box how many drops; a bottle you leave out stays empty.
sheet-number = { $name }: <span class="line" aria-hidden="true"></span> { $unit }
sheet-title = Worksheet: { $module }
sheet-key-title = Key: { $module }
sheet-to-key = Key to this worksheet
sheet-to-sheet = The worksheet
key-kicker = Key to the worksheet of module { $number }
key-about = For the instructor. ΔE00 is the distance between what an option heals to and the goal, in CIEDE2000: the smaller the better. Credit follows from it.
key-in-short = In short:
key-goal = { $goal }, L*&nbsp;{ $l } a*&nbsp;{ $a } b*&nbsp;{ $b }, { $note }.
key-options = Options of question { $number }
key-option = Option
key-heals-to = Heals to
key-would-look = Would look
key-credit = Credit
key-why = Why
key-best = (best)
key-no-colour = no colour
key-best-answer = Best answer.
key-as-good = As good as the best.
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
consult-patch-about = A calm test lowers the risk and proves nothing. Where, when and how long: as your code and the maker’s instructions say.
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
sources-kind-practice = Practice, and this project’s own choices
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
progress-about = What your answers say that you know, skill by skill, and what is due for practice.
progress-lead = What your answers say that you know, and what is due. Each skill stands at the module that trains it first.
progress-no-script = Progress is read from the record that practice keeps in your browser, so this page needs scripts. The <a href="{ $lessons }">lessons</a> do not.
progress-wait = The record is being read …
progress-due = Due now
progress-mixed = Practise what you need most
progress-estimates = Percentages are estimates from your answers. They fall with the days without practice, more slowly after right answers on different days.
progress-known = { $count ->
    [one] { $known } of one skill known well.
   *[other] { $known } of { $count } skills known well.
 }
progress-nothing = Nothing is due.
progress-nothing-until = Nothing is due now; the next skill is { $when }.

## What cannot be practised

exercise-no-lesson = there is no lesson `{ $id }`
exercise-no-skill = there is no skill `{ $id }`
exercise-no-drill = no drill trains that
## What the bench and practice say alike

screen-light-d65 = daylight
screen-light-a = tungsten light
screen-light-led-b3 = white LED light
screen-light-fl2 = cool fluorescent light
# The same as it stands after "in".
screen-light-d65-in = daylight
screen-light-a-in = tungsten light
screen-light-led-b3-in = white LED light
screen-light-fl2-in = cool fluorescent light
screen-light-named = { $light } ({ $code })
screen-in-light = in { $light }
# When work is looked at: a name for a column, and an answer to "when?".
screen-time-day = on the day
screen-time-six-weeks = six weeks
screen-time-years = { $years ->
    [one] 1 year
   *[other] { $years } years
 }
screen-when-day = on the day
screen-when-six-weeks = six weeks
screen-when-years = { $years ->
    [one] 1 year
   *[other] { $years } years
 }
screen-when-later = { $age }
screen-judged = { $when }, in { $light }
# An age: the number decides, the text is written.
screen-age-months = { $months ->
    [one] 1 month
   *[other] { $number } months
 }
screen-age-years = { $years ->
    [one] 1 year
   *[other] { $number } years
 }
# After how long: the same, where a language says it otherwise.
screen-age-months-after = { $months ->
    [one] 1 month
   *[other] { $number } months
 }
screen-age-years-after = { $years ->
    [one] 1 year
   *[other] { $number } years
 }
screen-old = { $age } old
screen-percent = { $number }%
screen-in-mm = { $number } mm
screen-drops = { $count ->
    [one] 1 drop
   *[other] { $count } drops
 }
screen-drops-of = { $count ->
    [one] 1 drop { $name }
   *[other] { $count } drops { $name }
 }
screen-drops-label = Drops of { $name }
screen-drop-less = One drop of { $name } less
screen-drop-more = One drop of { $name } more
screen-lab = L* { $l } a* { $a } b* { $b }
screen-in-a-row = { $first } and { $last }
screen-from-goal = ΔE00 { $distance } from the goal
screen-goal = Goal: { $name }
screen-within = counts as reached within ΔE00 { $tolerance }
screen-bare = { $site ->
    [lip] bare lip
   *[other] bare skin
 }
screen-named = { $name }: { $words }
screen-beyond = beyond this screen
screen-beyond-nearest = beyond this screen: the nearest colour it can show
screen-beyond-srgb = beyond sRGB: shown in this screen’s wider range
screen-undertone-cool = cool undertone
screen-undertone-neutral = neutral undertone
screen-undertone-warm = warm undertone
screen-undertone-olive = olive undertone
screen-redness-calm = calm
screen-redness-rosy = rosy
screen-redness-flushed = flushed
screen-redness-ruddy = ruddy
screen-restricted = Restricted.
screen-promise = <strong>Predictions are for teaching, never a promise of a result on a person.</strong> They come from a <a href="{ $model }">model of pigment in skin</a>. Health comes first: see the <a href="{ $cautions }">cautions</a>.
screen-starting = The engine is starting …
screen-goal-tone = { $site ->
    [lip] in this lip
   *[other] on this skin
 }: { $tone }
screen-eyes = As seen by
screen-eyes-told = Swatches as seen by: { $eyes }.
screen-eyes-note = Swatches are shown as such eyes see them, simulated for the full deficiency: most people who have it see something between this and the usual. Words and numbers stay those of the colour itself. <a href="{ $href }">More about other eyes</a>.

## The bench

bench-title = The bench
bench-about = Mix drops, place them in a client’s skin, and see what they heal to over the years and under four lights.
bench-lead = Choose a client, place a mix, and watch what the skin makes of it: on the day, healed, and years later.
bench-without-scripts = The bench computes as you move its sliders, so it needs scripts and WebAssembly, which your browser has switched off or does not have. All that is to be read here works without, and so do the worksheets: <a href="{ $lessons }">go on with the lessons</a>.
bench-years = Over the years
bench-case = The case
bench-mix = Mix
bench-mix-empty = Empty the mix
bench-most-reached = { $name }: more than { $count } drops of one bottle cannot be taken.
bench-in-bottle = Colours and numbers beside a name are those in the bottle, in daylight.
bench-bottles = Bottles
bench-modifiers = Modifiers
bench-line = { $name } ({ $count })
bench-client = Client
bench-start-from = Start from
bench-skin-below = a skin described below
bench-phototype = Phototype
bench-undertone = Undertone
bench-undertone-cool = cool
bench-undertone-neutral = neutral
bench-undertone-warm = warm
bench-undertone-olive = olive
bench-redness = Redness
bench-site = Site
bench-site-brow = brow
bench-site-eyelid = eyelid
bench-site-lip = lip
bench-site-areola = areola
bench-site-scalp = scalp
bench-skin-words = These words give a typical skin to start from. A phototype is about sun, not about colour: move the sliders until the skin looks like your client’s. A number you set yourself counts as known as well as the eye knows it.
bench-melanin = Melanin
bench-blood = Redness: blood
bench-background = Undertone: yellow of the tissue
bench-scar = The place is a flat, pale scar
bench-skin-back = Back to the words
bench-old = Old work
bench-to-results = To the results
bench-old-add = Add old work
bench-technique-and-placement = Technique and placement
bench-technique = Technique
bench-technique-both = Powder with strokes
bench-technique-strokes = Hair strokes
bench-technique-powder = Powder
bench-depth = Depth of its top
bench-thickness = Thickness
bench-load = Load
bench-load-help = 1 is one full pass.
bench-coverage = Coverage
bench-coverage-help = The share of the area that carries colour. The swatch shows what the eye makes of it from a distance.
bench-wear = Wear and touch-up
bench-touch-up = Touch-up
bench-touch-up-help = The same mix once more, in the same place.
bench-touch-up-none = none
bench-touch-up-after = after { $age }
bench-touched-up = Touched up with the same mix after { $age }.
bench-sun = Sun
bench-sun-sheltered = sheltered
bench-sun-everyday = everyday
bench-sun-outdoors = outdoors
bench-oil = Skin
bench-oil-dry = dry
bench-oil-balanced = balanced
bench-oil-oily = oily
bench-aftercare = Aftercare
bench-aftercare-followed = followed
bench-aftercare-neglected = neglected
bench-goal = Goal
bench-goal-wished = Healed colour wished for
bench-goal-named = { $name } (L* { $l }, a* { $a }, b* { $b })
bench-goal-own = a colour of my own
bench-tolerance = Tolerance, ΔE00
bench-pass-on = Pass this case on
bench-link = Link to this case
bench-link-copy = Copy the link
bench-link-about = The whole case stands in the address behind the #. It is sent nowhere.
bench-request-about = The same case as a request; <code>healedhue foresee FILE --json</code> answers it with the same numbers:
bench-request = The case as a request
bench-again = Start afresh
bench-judged = Judged
bench-when = When
bench-in-which-light = In which light
bench-four-lights = Under four lights
bench-all-times = Every time under every light
bench-planes = Where the colours lie
bench-marks-skin = <strong>skin</strong> or <strong>lip</strong>, <strong>now</strong>: bare, and with old work as it comes in
bench-marks-work = <strong>day</strong>, <strong>6 w</strong>, <strong>1 y</strong>, <strong>2 y</strong>, <strong>3 y</strong>: the work, joined in order of time; the ringed one is the time judged
bench-marks-goal = <strong>goal</strong>, dashed line: as near to the goal as its tolerance, among colours of its lightness (left) and of its hue (right)
bench-marks-likely = <strong>90%</strong>, full line: where nine of ten outcomes lie at the time judged
bench-marks-beyond = *: beyond what this screen can show
bench-sure = How sure it is
bench-best = What would be best
bench-most-bottles = Bottles in a mix, at most
bench-most-drops = Drops in all, at most
bench-best-about = Every mix within these limits, of bottles that are meant for the site and hold nothing restricted, is looked at in this skin and compared with the goal at the time and in the light judged. Those that can come near it are computed in full, the others only closely enough to tell that they do not.
bench-best-touch-up = The touch-up is made with the mix on the bench; other mixes are tried in the first placement.
bench-best-mixes = The best mixes

# What the page says as it runs.
bench-mark-skin = { $site ->
    [lip] lip
   *[other] skin
 }
bench-mark-now = now
bench-mark-goal = goal
bench-mark-likely = 90%
bench-mark-day = day
bench-mark-six-weeks = 6 w
bench-mark-years = { $years } y
bench-as-it-is = as it is now
bench-plane-ab = a*b*: towards red to the right, towards yellow upwards
bench-plane-cl = L*C*: more colourful to the right, lighter upwards
bench-plane-described = { $title }. { $marks }
bench-plane-mark = { $name }: L* { $l }, a* { $a }, b* { $b }
bench-of-epidermis = { $share } of the epidermis
bench-of-dermis = { $share } of the dermis
bench-times-typical = { $number } times typical
bench-of-full-pass = { $number } of a full pass
bench-mix-instead = Another mix, since the last one is not meant for this site ({ $site }): { $mix }.
bench-mix-nothing = Nothing in the mix yet.
bench-caution = Caution.
bench-caution-see = { $note } See { $caution }. Colour comes after that.
bench-old-none = (none)
bench-old-count = ({ $count })
bench-old-number = Old work { $number }
bench-old-made-of = Made of
bench-old-age = Age
bench-old-remove = Remove it
bench-old-remove-number = Remove it: old work { $number }
bench-old-told = { $what }; { $age }; { $placed }
bench-sun-and-care = { $sun }; { $oil }; { $aftercare }
bench-angle = Typology angle of this skin (ITA): { $degrees }°.
bench-colourant = { $name } ({ $id })
bench-restriction = { $id } ({ $name }): { $place }, { $rule } since { $since } ({ $source })
bench-link-copied = The link is copied.
bench-link-marked = The link is marked: copy it with your browser.
bench-link-amiss = Parts of this link were not understood and left out: { $parts }.
bench-no-case = The engine cannot answer this case: { $why }.
bench-working = Working …
bench-too-many = These are more mixes than can be tried: allow fewer bottles or fewer drops in a mix.
bench-no-answer = There is no answer: { $why }.
bench-cannot-run = The bench cannot run here: your browser has no WebAssembly, or one that is too old (from 2023 on they do). The lessons work without it. ({ $why })
bench-worker-failed = a worker failed
bench-seen = { $judged }: { $words }.
bench-goal-reached = The goal, { $name }, is reached: ΔE00 { $distance } from it, { $tolerance } allowed.
bench-goal-missed = The goal, { $name }, is not reached: ΔE00 { $distance } from it, { $tolerance } allowed.
bench-later = After { $years } years: { $words }.
bench-later-same = After { $years } years: the same words still hold.
bench-tone-in = { $tone } in { $lights }
bench-other-light = Other light changes the word: { $tones }.
bench-no-work = No new work: the mix is empty.
bench-likely = { $judged }: likely within { $distance } ΔE00 of the expected colour; most in doubt: { $one } or { $other }. Skin, depth, load and the life of every colourant were varied within what one can be wrong about.
bench-likely-several = { $judged }: likely within { $distance } ΔE00 of the expected colour; most in doubt: { $one }, or { $other }. Skin, depth, load and the life of every colourant were varied within what one can be wrong about.
bench-likely-nothing = { $judged }: as expected: nothing varies. Skin, depth, load and the life of every colourant were varied within what one can be wrong about.
bench-sense-lighter = lighter
bench-sense-deeper = deeper
bench-sense-redder = redder
bench-sense-greener = greener
bench-sense-warmer = warmer
bench-sense-cooler = cooler
bench-excess-lighter = too light
bench-excess-deeper = too deep
bench-excess-redder = too red
bench-excess-greener = too green
bench-excess-warmer = too warm
bench-excess-cooler = too cool
bench-best-reached = The best of { $mixes } mixes is { $mix }, ΔE00 { $distance } from the goal
bench-best-missed = None of { $mixes } mixes reaches the goal: the best, { $mix }, is ΔE00 { $distance } from it, { $beyond } more than the tolerance, { $ways } (ΔL* { $l }, Δa* { $a }, Δb* { $b })
bench-best-ties = { $count ->
    [one] an eye cannot rank 1 other below it
   *[other] an eye cannot rank { $count } others below it
 }
bench-best-gap = every other mix is worse by ΔE00 { $distance } or more
bench-best-gap-further = every further mix is worse by ΔE00 { $distance } or more
bench-best-untouched = without any new work the skin is nearer to it (ΔE00 { $distance })
bench-own-best = No mix tried comes nearer than yours (ΔE00 { $distance }).
bench-own-nearer = { $nearer } of { $mixes } mixes come nearer than yours (ΔE00 { $distance }).
bench-judged-at = Judged { $judged }.
bench-place = Place
bench-distance = ΔE00
bench-lab-head = L* a* b*
bench-lab-cell = { $l }  { $a }  { $b }
bench-take = Take it
bench-take-mix = Take it: { $mix }
bench-time-in-light = { $time }, { $light }

## Practice

practice-title = Practice
practice-about = Exercises made afresh, proved and marked by what your answer would heal to. What comes next is what you need most.
practice-lead = Exercises made afresh; those about colour are each proved before you see them. What comes next is what you need most.
practice-without-scripts = Practice makes each exercise as you ask for it, so it needs scripts and WebAssembly, which your browser has switched off or does not have. Exercises with their answers stand in the <a href="{ $lessons }">lessons</a>.
practice-without-scripts-sheets = Practice makes each exercise as you ask for it, so it needs scripts and WebAssembly, which your browser has switched off or does not have. Exercises with their answers stand in the <a href="{ $lessons }">lessons</a>, and on the worksheets: { $sheets }.
practice-session = A session
practice-what = Practise
practice-everything = everything, what you need most first
practice-one-skill = One skill
practice-how-long = How long
practice-exercises = { $count ->
    [one] 1 exercise
   *[other] { $count } exercises
 }
practice-minutes = about { $minutes ->
    [one] 1 minute
   *[other] { $minutes } minutes
 }
practice-until-stop = until I stop
practice-begin = Begin
practice-mark = Mark my answer
practice-next = Next exercise
practice-end = End the session
practice-end-last = See what the session has shown
practice-left = A session you left
practice-left-of = { $answers ->
    [one] You left at exercise { $number } of { $count } ({ $skill }). Your { $answers } answer is in your record; you can go on where you were.
   *[other] You left at exercise { $number } of { $count } ({ $skill }). Your { $answers } answers are in your record; you can go on where you were.
}
practice-left-at = { $answers ->
    [one] You left at exercise { $number } ({ $skill }). Your { $answers } answer is in your record; you can go on where you were.
   *[other] You left at exercise { $number } ({ $skill }). Your { $answers } answers are in your record; you can go on where you were.
}
practice-left-other = the session that was left cannot be made again
practice-go-on = Go on
practice-let-go = End it
practice-bottles = { $count ->
    [one] The bottle of this question
   *[other] The { $count } bottles of this question
}
practice-bottles-about = Colours are those in the bottle, without skin; colourants stand by share. Each name leads to its place in the library. If you leave this page, you can go on with the session when you come back.
practice-shown = What this session has shown
practice-known = What you know
practice-percentages = Percentages are estimates from your answers. They fall with the days without practice, more slowly after right answers on different days.
practice-record = Your record
practice-save = Save to a file
practice-load = Load from a file
practice-wipe = Wipe
practice-file = File of progress to load

# What the page says as it runs.
practice-level-little = a little
practice-level-part = in part
practice-level-well = well
practice-level-mastered = mastered
practice-level-none = not yet practised
practice-yours = Yours
practice-yours-best = Yours is the best
practice-best = The best
practice-also-good = Just as good
practice-right-number = The right number
practice-within = Up to { $tolerance } off: full credit.
practice-at = { $who }, { $time }
practice-today = today
practice-person = { $name }, { $age }
practice-skin-now = { $name }’s { $site ->
    [lip] lip
   *[other] skin
 } now
practice-work-now = { $name }, as it is now
practice-skin = Skin
practice-hair = Hair
practice-placement = Placement
practice-judged = Judged
practice-old = Old work
practice-health = Health
practice-health-nothing = no to every question that was asked
practice-skin-words = phototype { $phototype }, { $undertone }, { $redness }
practice-placed = { $depth } mm deep, { $thickness } mm thick, load { $load }, { $share } of the area covered
practice-placed-full = { $depth } mm deep, { $thickness } mm thick, one full pass, { $share } of the area covered
practice-old-told = { $age } old. { $note }
practice-several = Choose every one that holds.
practice-order = Put these in their order, the first at the top.
practice-earlier = Earlier: { $step }
practice-later = Later: { $step }
practice-now-step = { $step }: now number { $place } of { $count }
practice-drops-how = { $count ->
    [one] One bottle, alone or with modifiers: 1 drop in all, at most { $most } of them of modifiers.
   *[other] One bottle, alone or with modifiers: { $count } drops in all, at most { $most } of them of modifiers.
 }
practice-drops-sum = { $count ->
    [one] { $sum } of 1 drop counted
   *[other] { $sum } of { $count } drops counted
 }
practice-modifier = modifier
practice-number = The { $name }, in { $unit }
practice-number-degrees = The { $name }, in degrees
practice-health-first = Health comes first: if an answer of the client raises a { $caution }, it outweighs any colour.
practice-caution = caution
practice-choose-first = Choose an answer first.
practice-right = Right. Credit { $share }.
practice-part = Not the best answer. Credit { $share }.
practice-nothing = No credit.
practice-outcome = What follows
practice-over-time = Over time, on this skin
practice-over-time-of = { $who }, over time on this skin
practice-not-to-do = What yours would come to, if it were done. It should not be
practice-one-moment = On this skin, at the one moment that is asked about
practice-one-moment-of = { $who }, on this skin at the one moment that is asked about
practice-belief = Tempting belief
practice-truth = What really happens
practice-belief-more = More about this misconception
practice-reread = To reread: { $lesson }
practice-worth = All answers, and why
practice-credit = credit { $share }
practice-proved = How this was proved: { $proof }
practice-source = Source: { $source }. Exercise { $drill } { $number }.
practice-now-little = { $name }: now known a little, { $share } (before this answer { $before }).
practice-now-part = { $name }: now known in part, { $share } (before this answer { $before }).
practice-now-well = { $name }: now looks well known, { $share } (before this answer { $before }).
practice-now-mastered = { $name }: now mastered, { $share } (before this answer { $before }).
practice-exercise = Exercise { $number }: { $skill }
practice-exercise-of = Exercise { $number } of { $count }: { $skill }
practice-exercise-left = Exercise { $number }: { $skill }. About { $minutes } min left.
practice-plan = Plan, which changes with your answers: { $skills }.
practice-plan-skill = { $skill } ({ $count })
practice-making = The exercise is being made and proved …
practice-fits-none = No further exercise fits into the minutes that are left.
practice-impossible = No exercise could be made: { $why }.
practice-summary-none = No exercise was answered.
practice-summary-skills = Skills that were asked for
practice-head-skill = Skill
practice-head-answers = Answers
practice-head-credit = Credit
practice-head-before = Known before
practice-head-now = Known now
practice-known-share = { $level }, { $share }
practice-summary-next = To practise next
practice-summary-reread = To reread
practice-summary-beliefs = Beliefs that showed
practice-lesson-answers = { $lesson } ({ $count ->
    [one] one answer
   *[other] { $count } answers
 })
practice-answers = { $count ->
    [one] one answer
   *[other] { $count } answers
 }
practice-chosen-once = chosen the one time it was offered.
practice-chosen-always = chosen each of the { $offered } times it was offered.
practice-chosen = chosen { $chosen } of the { $offered } times it was offered.
practice-habit = It seems to be a habit.
practice-standing-none = Nothing yet: your first answers begin the record.
practice-standing = { $answers ->
    [one] One answer so far, in { $skills ->
        [one] one skill
       *[other] { $skills } skills
     }.
   *[other] { $answers } answers so far, in { $skills ->
        [one] one skill
       *[other] { $skills } skills
     }.
 }
practice-needed = Most needed now: { $skills }.
practice-due = due now
practice-due-within = due within a day
practice-due-tomorrow = due tomorrow
practice-due-in = due in { $days ->
    [one] 1 day
   *[other] { $days } days
 }
practice-average = mean credit { $share }
practice-last-on = last on { $date }
practice-practise = practise
practice-practise-this = Practise: { $name }
practice-others = { $count ->
    [one] One skill in your record is not in this course; it is kept.
   *[other] { $count } skills in your record are not in this course; they are kept.
 }
practice-kept = Your progress is kept on this device, in this browser, and sent nowhere. A file of it opens in the terminal’s practice too.
practice-not-kept = This browser keeps nothing on this device for this page, so your progress is gone when you leave it. Save it to a file, and load that next time.
practice-not-kept-new = This device takes nothing new for this page: there is no room, or storage is switched off. What it kept before is still there. Save your progress to a file before you leave, and load that next time.
practice-not-kept-now = This answer could not be kept on this device: there is no room, or storage is switched off. Save your progress to a file when the session has ended.
practice-unreadable = The record on this device cannot be used: { $why }. It is left as it is, and nothing is kept, until you load another or wipe it.
practice-elsewhere = Another window has practised too; its answers are taken up.
practice-elsewhere-wiped = The record was wiped in another window; it begins anew with this answer.
practice-saved = Saved as { $name }.
practice-loaded = The file is loaded.
practice-file-empty = it is empty
practice-refused = This file was not loaded: { $why }.
practice-wiped = The record is wiped.
practice-ask-wipe = Wipe your record? All that you have answered in this course is forgotten on this device.
practice-ask-wipe-yes = Wipe it
practice-ask-wipe-no = Keep it
practice-ask-load = Load this file in place of the record on this device?
practice-ask-load-yes = Load it
practice-ask-load-no = Keep mine
practice-needs = Practice cannot run here: your browser has no WebAssembly, or one that is too old (from 2023 on they do). The lessons and the worksheets work without it. ({ $why })
practice-worker-failed = the worker failed
practice-link-unknown = This link names a lesson or a skill that the course does not have; choose another.
practice-failed = Something went wrong: { $why }. Load the page again; your kept answers are safe.

## Exercises that a page marks: study pages and papers

drill-choose-one = Choose one option first.
drill-bottles = The bottles, in the library:
drill-choose-some = Choose at least one.
drill-number-steps = Give each a number from 1 to { $count }, each number once.
drill-whole-drops = Drops are whole numbers.
drill-drops-counted = { $drops ->
    [one] The mix has 1 drop; you have counted { $counted }.
   *[other] The mix has { $drops } drops; you have counted { $counted }.
 }
drill-most-modifiers = { $count ->
    [one] At most 1 drop of modifiers.
   *[other] At most { $count } drops of modifiers.
 }
drill-one-bottle = Take one bottle, and drops of modifiers.
drill-compare = Compare your mix with the answers below.
drill-mix-heals-to = Your mix heals to: { $words } (ΔE00 { $distance } from the goal).
drill-write-number = Write a number.
drill-right = Right.
drill-not-best = Not the best answer.
drill-best-letter = { $letter } is the best answer.
drill-not-best-letter = { $letter } is not the best answer.
drill-credit = Credit: { $credit }
drill-percent = { $number }%

## Papers

paper-skip = Skip to the questions
paper-time = Time
paper-time-facts = { $minutes ->
    [one] 1 minute from when you begin; a closed page does not stop it
   *[other] { $minutes } minutes from when you begin; a closed page does not stop it
 }
paper-questions = Questions
paper-questions-facts = { $count }; what is left empty earns nothing
paper-to-pass = To pass
paper-to-pass-facts = { $mark }% of the whole mark
paper-answers = Answers
paper-answers-facts = kept on this device as you go, and handed in as a slip at the end: a file to send, or a code to copy
paper-person = { $name } ({ $id })
paper-promise = Predictions are for teaching, never a promise of a result on a person. Screens show colours differently: read the words and numbers beside each swatch. Health comes first: if an answer of the client raises a caution, it outweighs any colour.
paper-without-scripts = Without scripts this page cannot make an answer slip. Ask for the printed sheet.
paper-forgets = This browser lets the page keep nothing on the device: what you answer is lost if the page is closed. Leave it open until you have your slip.
paper-begin = Begin
paper-weight = { $weight }% of the mark
paper-weight-short = { $weight }%
paper-bottles = The bottles in this paper
paper-bottle-about = { $about } In the bottle { $words }, { $lab }; { $contents }.
paper-bottle-modifier = (modifier)
paper-hand-in = Hand in
paper-slip = Your answer slip
paper-save = Save the slip as a file
paper-copy = Copy the code
paper-back = Back to the questions
paper-send = Send one of the two to your instructor: the file, or this code.
paper-code = Code of the slip
paper-no-advice = Nothing here is medical advice. Your local code and licensed practitioners decide.
paper-version = Paper { $digest }; { $course }, version { $version }
paper-name = Name
paper-id = Id
paper-date = Date
paper-sheet-how = { $minutes ->
    [one] 1 minute
   *[other] { $minutes } minutes
 }, { $count ->
    [one] 1 question
   *[other] { $count } questions
 }; { $mark }% of the whole mark passes, and what is left empty earns nothing. Write all answers here: cross one letter, or as many as hold; write letters in order, drops or a number where there are empty boxes. Only what is written here is marked.
paper-sheet-foot = Paper { $digest }; course version { $version }. Predictions are for teaching, never a promise of a result on a person. Nothing here is medical advice. The words and numbers below a swatch say all that its colour says.
paper-bottle-colour = The colour is that in the bottle, without skin.
paper-head-bottle = Bottle
paper-head-in-bottle = In the bottle
paper-head-contents = Colourants by share
paper-modifier = Modifier.
paper-modifier-word = modifier
paper-lab = L*&nbsp;{ $l } a*&nbsp;{ $a } b*&nbsp;{ $b }
paper-every-one = every one that holds
paper-in-order = letters in order
paper-drops = drops

# What the page says as it runs.
paper-copied = Copied
paper-over = Time is over
paper-over-said = Time is over. { $said }
paper-minutes-left = { $minutes } min left
paper-clock-left = { $clock } left
paper-late = Five minutes left, or less.
paper-all-answered = Every question is answered.
paper-without-answer = Without an answer: { $numbers }.
paper-incomplete = Begun, but not complete, so that it does not count: { $numbers }.
paper-your-answers = Your answers: { $answers }.
paper-bottles-short = Bottles
paper-bottles-where = what is in each stands below the last question
paper-go-back = { $said } You can still go back and change something while there is time.

## Assignments

assignment-for = Assignment for { $person }
assignment-due = Due { $date }. { $extent }.
assignment-lessons = { $count ->
    [one] 1 lesson
   *[other] { $count } lessons
 }
assignment-exercises = { $count ->
    [one] 1 exercise
   *[other] { $count } exercises
 }
assignment-extent = { $lessons } ({ $time }), { $exercises }
assignment-date = { $day } { $month } { $year }
assignment-month-1 = January
assignment-month-2 = February
assignment-month-3 = March
assignment-month-4 = April
assignment-month-5 = May
assignment-month-6 = June
assignment-month-7 = July
assignment-month-8 = August
assignment-month-9 = September
assignment-month-10 = October
assignment-month-11 = November
assignment-month-12 = December
assignment-read = Read these lessons
assignment-then = Then answer these
assignment-how = Answer what you can; at the end save your answer slip and hand that file in. This page keeps nothing: save before you close it. You can also print the page and fill it in by hand.
assignment-health-first = Health comes first: if an answer of a client raises a <a href="{ $cautions }">caution</a>, it outweighs any colour.
assignment-save = Save my answer slip
assignment-no-file = If no file was saved
assignment-copy = Copy this text and send it instead.
assignment-without-scripts = Saving a slip needs scripts. Without them, print this page, fill it in and hand in the paper.
assignment-bottles = The bottles in these exercises
assignment-saved = Saved as { $name }: { $answered } of { $count } answered. Hand this file in.
assignment-open = Without an answer: { $numbers }.
assignment-amiss = Not whole, and so left out: { $numbers }. Number them all, each number once.
assignment-again = You can go on and save again; hand in the last file.

## The search

search-title = Search
search-about = Find a word in the lessons, terms, bottles, colourants, clients, misconceptions, cautions, worksheets and other pages of this course.
search-without-scripts = Searching needs scripts. The <a href="glossary.html">glossary</a> and the <a href="index.html">list of lessons</a> work without.
search-words = Words to look for
search-help = The beginning of a word is enough, and a slip of the pen is forgiven.
search-lesson = Lesson
search-term = Term
search-bottle = Bottle
search-client = Client
search-misconception = Misconception
search-caution = Caution
search-colourant = Colourant
search-page = Page
search-worksheet = Worksheet
search-part = { $title }: { $part }
search-nothing = Nothing is found. Try fewer or other words.
search-found = { $count ->
    [one] 1 place found.
   *[other] { $count } places found.
 }
search-found-many = { $count ->
    [one] 1 place found, the first { $most } are shown.
   *[other] { $count } places found, the first { $most } are shown.
 }

## Reports

report-title = Report
report-skip = Skip to the text
report-main = Main
report-of-group = Report of the group
report-everybody = Everybody
report-foot-likely = Likely means a 95% interval (Wilson): the fewer answers, the wider. Figures are for teaching; no person is a number.
report-foot-advice = Nothing here is medical advice. Your local code and licensed practitioners decide.
report-percent = { $number }%
report-range = { $low } to { $high }
report-of = { $part } of { $whole }
report-people = { $count ->
    [one] 1 person
   *[other] { $count } people
 }
report-sheets = { $count ->
    [one] 1 sheet
   *[other] { $count } sheets
 }
report-papers = { $count ->
    [one] 1 paper
   *[other] { $count } papers
 }
report-sets = { $count ->
    [one] 1 assigned set
   *[other] { $count } assigned sets
 }
report-answers = { $count ->
    [one] 1 answer
   *[other] { $count } answers
 }
report-extent = { $people }, { $sheets }, { $papers }
report-extent-sets = { $people }, { $sheets }, { $papers }, { $sets }
report-glance = At a glance
report-on-page = On this page
report-marks = Marks and reliability
report-skills = Skills
report-skills-by-person = Skills by apprentice
report-misconceptions = Misconceptions
report-look-again = Look at again
report-items = All drills and questions
report-options = What each option drew
report-how-to-read = How to read the figures

## Reports: marks and reliability

report-fact-sheets = Sheets
report-fact-questions = Questions
report-fact-mean = Mean mark
report-fact-passed = Passed
report-fact-close = Close
report-fact-score = Score
report-fact-alpha = Alpha
report-fact-kr20 = KR-20
report-fact-reliability = Reliability
report-fact-left-out = Left out of it
report-passed-of = { $passed } of { $decided }
report-passed-of-mark = { $passed } of { $decided } (pass mark { $mark }%)
report-close = { $count } within one standard error of the pass mark
report-score = { $mean } of { $items } on average, deviation { $deviation }
report-coefficient = { $value }, standard error { $error } questions
report-answer-missing = { $count ->
    [one] 1 sheet with an answer missing
   *[other] { $count } sheets with an answer missing
 }
report-by-mark = Sheets by mark
report-mark = Mark
report-marks-of = Marks: { $paper }
report-marks-about = Everybody’s mark, what it means, and the mean credit of each section in percent.
report-marks-left-out = Shown are those nearest to the pass mark; { $count } more stand in the tables in CSV.
report-decided-head = Passed
report-passed = passed
report-passed-closely = passed, closely
report-not-passed = not passed
report-not-passed-closely = not passed, closely
report-attempt = attempt { $attempt }
report-bar = Bar
report-mark-range = { $low } to { $high }%
report-mark-bar = { $count ->
    [one] Marks of { $range }: 1 sheet
   *[other] Marks of { $range }: { $count } sheets
 }
report-pass-mark = pass mark

## Reports: skills and people

report-group-skills = Skills of the group
report-group-skills-about = Mean credit with its likely range, the most surely weak first. The dot is the mean, the line the range. Answers of one person are alike, so that the range of a group is rather too narrow.
report-number = No.
report-skill = Skill
report-credit = Credit
report-likely = Likely
report-answers-head = Answers
report-people-below = People clearly below
report-no-skill = No answers: no skill can be told.
report-matrix-about = Mean credit in percent; the columns are the numbers of the skills above. “All skills” is the mean of all answers, each counting alike: not the mark, to which sections count by their weight. <span class="sign">▼</span> the whole likely range lies below the group’s mean, <span class="sign">△</span> above it; no sign: no difference can be told, often because the answers are few.
report-matrix-left-out = Shown are those with the least credit; { $count } more stand on the <a href="{ $everybody }">page of everybody</a>.
report-apprentice = Apprentice
report-all = All skills
report-below-group = below the group
report-above-group = above the group
report-no-difference = no clear difference
report-no-answers = no answers
report-known-as = Known as
report-practise-first = To practise first
report-nothing-first = none
report-share-likely = { $what }: { $share }, likely { $low } to { $high }
report-share-likely-beside = { $what }: { $share }, likely { $low } to { $high }; { $beside } { $other }
report-the-group = the group

## Reports: misconceptions

report-group-misconceptions = Misconceptions of the group
report-group-misconceptions-about = How often a wrong belief was chosen where an option led to it. The dot is the share with its likely range, the upright line what blind guessing would give. Those that stand out are marked: chosen more often than by guessing, beyond the range.
report-stands-out = stands out
report-chosen = Chosen
report-by-guessing-head = By guessing
report-by-guessing = by guessing
report-people-head = People
report-lesson = Lesson: { $lesson }
report-no-misconception = No question offered a misconception.
report-chosen-of = { $chosen } of { $offered }
report-chosen-of-freely = { $chosen } of { $offered }; { $times } more without options
report-not-offered = not offered
report-not-offered-freely = not offered; { $times } more without options

## Reports: drills and questions

report-revise = Drills and questions to look at again
report-revise-none = None: nothing that was answered often enough to be judged gives a reason.
report-drill = drill
report-question = question
report-scatter-about = Each mark is a drill or a question; the numbers are those of the table. Squares (filled) are to be looked at again, circles are not; small circles have too few answers to be judged. Dashed: facility 20% and 95%, discrimination 0.20.
report-scatter-left-out = { $count ->
    [one] 1 without one of the two figures is left out.
   *[other] { $count } without one of the two figures are left out.
 }
report-scatter = { $count ->
    [one] 1 item by facility and discrimination; { $flagged } to look at again
   *[other] { $count } items by facility and discrimination; { $flagged } to look at again
 }
report-scatter-described = Across: facility from 0 to 100%. Up: discrimination. Dashed lines are the limits of both. Squares are items to look at again, small circles those with too few answers to be judged, circles the others; the table of all items holds the numbers.
report-axis-facility = facility (mean credit)
report-axis-discrimination = discrimination
report-all-statistics = Statistics of all drills and questions
report-item = Item
report-facility = Facility
report-discrimination = Discrimi&shy;nation
report-difficulty-logits = Difficulty, logits
report-infit = Infit
report-outfit = Outfit
report-verdict = Verdict
report-time = Median time
report-time-about = Minutes and seconds from the answer before to this one, as the pages of the papers told: the middle of all answers. It is counted in the candidate’s hands, and says where time goes rather than who is quick.
report-took = { $minutes } min
report-square-t = { $square } (t { $t })
report-plus-minus = { $value } ± { $error }
report-look = look again
report-fine = fine
report-too-few = too few ({ $answers })
report-items-about = With fewer than { $least } answers no item is judged: their verdict is “too few”, with how many there are.
report-scroll = Scroll sideways to see all columns.
report-no-difficulties = No difficulties: { $why }.
report-errors-inexact = The papers differ so much that the standard errors of difficulties come from each item’s own answers alone; they are a little too small.
report-scale = People and items on one scale
report-scale-about = Filled: sheets by ability. Outlined: items by difficulty. Where both stand in one row, the chance of a right answer is about a half; items far above or below all people tell little about them.
report-logits = Logits
report-bar-sheets = Bar of sheets
report-bar-items = Bar of items
report-items-head = Items
report-scale-sheets = { $count } sheets at { $logits }
report-scale-items = { $count } items at { $logits }
report-and-above = { $logits } and above
report-below = below { $logits }
report-options-about = For a drill, the options of all its exercises are gathered by what leads to them. The bar is the share: how often it was chosen of the times it was offered. “Right elsewhere” is the mean credit for all other answers of those who chose it: a wrong option that draws the abler is a reason to look at the key.
report-options-left-out = { $count } more with few answers are left out here; the tables in CSV hold them.
report-put-drill = { $answers ->
    [one] (1 answer from { $exercises ->
        [one] 1 exercise
       *[other] { $exercises } exercises
     })
   *[other] ({ $answers } answers from { $exercises ->
        [one] 1 exercise
       *[other] { $exercises } exercises
     })
 }
report-put-question = { $answers ->
    [one] (1 answer)
   *[other] ({ $answers } answers)
 }
report-options-of = Options of item { $number }
report-option = Option
report-offered = Offered
report-share = Share
report-right-elsewhere = Right elsewhere
report-right = right
report-chosen-share = Chosen in { $share }
report-no-options = No answer is chosen from options.
report-right-answer = the right answer
report-no-belief = a wrong answer of no named belief
report-option-time = { $what } (option { $time } of it)

## Reports: what the figures mean

report-read-facility = Facility
report-read-facility-about = Mean credit for an item. From 20% to 95% it can tell people apart; what everybody must know may well lie above.
report-read-discrimination = Discrimination
report-read-discrimination-about = Corrected point-biserial: whether those who do well elsewhere do well on this too. Below 0.20 an item hardly separates them; clearly below 0 the key may be wrong.
report-read-alpha = Alpha and KR-20
report-read-alpha-about = How far the marks would be the same on another paper like it, at best 1; KR-20 counts only full credit. The standard error says how far a score may be off: by more than that for one person in three.
report-read-difficulty = Difficulty
report-read-difficulty-about = On the Rasch scale, in logits around 0: on an item of one’s own level the chance is a half, on one a logit easier nearly three quarters.
report-read-fit = Infit, outfit
report-read-fit-about = About 1 where answers are as irregular as expected. Above 1.3 (t above 2) they are erratic, below 0.7 more regular than one question alone can be.
report-read-item = Item
report-read-item-about = A drill with all its exercises, or one question of the bank. Reliability is of the places on the paper.

## Reports: the page of an apprentice

report-next = What to practise next
report-next-by = What to practise next, by { $date }
report-practice = Practice
report-paper = Paper
report-sheet-of = { $blueprint }: { $result }
report-sheet-attempt = { $blueprint }, attempt { $attempt }: { $result }
report-sections = Sections
report-section-earned = { $section } { $credit }
report-decided = { $decision } (pass mark { $mark }%)
report-decided-with-error = { $decision } (pass mark { $mark }%, standard error { $error })
report-reread = Reread: { $lessons }
report-then = Then: { $command }
report-then-there = Then practise: <a href="{ $practice }">{ $skill }</a>
report-think-over = Worth thinking over
report-chosen-the-one = Chosen in the one question that offered it; blind guessing would choose it in { $guessing }.
report-chosen-in = Chosen in { $chosen } of the { $offered } questions that offered it; blind guessing would choose it in { $guessing }.
report-shown-freely = { $count ->
    [one] Shown in 1 answer without options.
   *[other] Shown in { $count } answers without options.
 }
report-every-skill = Every skill asked
report-every-skill-about = The dot is the mean credit, the line its likely range. Ordered by the upper end of the range, so that one unlucky answer does not lead.
report-every-skill-about-group = The dot is the mean credit, the line its likely range, the upright line the group. Ordered by the upper end of the range, so that one unlucky answer does not lead.
report-every-skill-table = Every skill
report-group = Group
report-decision-clear-passed = clearly passed
report-decision-clear-failed = clearly not passed
report-decision-close-passed = passed, within one standard error of the pass mark
report-decision-close-failed = not passed, within one standard error of the pass mark
report-decision-unknown-passed = passed; how sure that is cannot be said
report-decision-unknown-failed = not passed; how sure that is cannot be said

## Reports: sentences

report-note-empty = There are no sheets yet: there is nothing to report.
report-note-alone = There is one person only: nobody can be compared, and questions cannot be judged by one answer.
report-note-few = With { $people } people all statistics of questions are a first look: from about { $few } on they begin to hold.
report-note-again = Some people handed in more than one sheet. Each counts by itself in the statistics of papers and questions, and all of a person’s count together for skills and misconceptions.
report-note-sets = { $count ->
    [one] 1 assigned set is among the sheets: practice counts for skills, misconceptions and what to practise next, and for neither marks nor the statistics of papers and questions, since it was answered at leisure.
   *[other] { $count } assigned sets are among the sheets: practice counts for skills, misconceptions and what to practise next, and for neither marks nor the statistics of papers and questions, since it was answered at leisure.
 }
report-note-versions = The sheets come from { $count } versions of the course: an exercise that was changed in between counts as one.
report-note-changed = The course has changed since some papers were made: names, truths and lessons here are those of today.
report-note-no-answer = { $count ->
    [one] 1 sheet has no answer that counts; nothing follows from that, for or against.
   *[other] { $count } sheets have no answer that counts; nothing follows from that, for or against.
 }
report-all-right = Every answer was right to the full: no skill stands out.
report-weakest = { $answers ->
    [one] Weakest skill: { $skill }, { $share } of the credit over 1 answer (likely { $low } to { $high }).
   *[other] Weakest skill: { $skill }, { $share } of the credit over { $answers } answers (likely { $low } to { $high }).
 }
report-widespread = Most surely widespread misconception: “{ $belief }”, chosen in { $share } of the answers that offered it (blind guessing: { $guessing }).
report-more-stand-out = { $count ->
    [one] One more stands out.
   *[other] { $count } more stand out.
 }
report-none-widespread = No misconception is chosen more often than by blind guessing, as far as can be told.
report-again-drills = { $drills ->
    [one] To look at again: 1 drill; the report says why.
   *[other] To look at again: { $drills } drills; the report says why.
 }
report-again-questions = { $questions ->
    [one] To look at again: 1 question of the bank; the report says why.
   *[other] To look at again: { $questions } questions of the bank; the report says why.
 }
report-again-both = To look at again: { $drills ->
    [one] 1 drill
   *[other] { $drills } drills
 } and { $questions ->
    [one] 1 question of the bank
   *[other] { $questions } questions of the bank
 }; the report says why.
report-again-nothing = No drill and no question needs to be looked at again.
report-again-too-few = No drill and no question has enough answers to be judged yet.
report-paper-sheets = { $blueprint }: { $count ->
    [one] 1 sheet
   *[other] { $count } sheets
 }
report-paper-mean = mean mark { $mean }%
report-paper-passed = { $passed } of { $decided } passed
report-paper-passed-close = { $passed } of { $decided } passed ({ $close ->
    [one] 1 sheet
   *[other] { $close } sheets
 } within one standard error of the pass mark)
report-paper-alpha = alpha { $alpha }, standard error { $error } of { $items } questions
report-why = { $answers ->
    [one] { $share } of the credit over 1 answer; likely between { $low } and { $high }.
   *[other] { $share } of the credit over { $answers } answers; likely between { $low } and { $high }.
 }
report-why-below = { $answers ->
    [one] { $share } of the credit over 1 answer; likely between { $low } and { $high }, clearly below the group’s { $group }.
   *[other] { $share } of the credit over { $answers } answers; likely between { $low } and { $high }, clearly below the group’s { $group }.
 }
report-why-above = { $answers ->
    [one] { $share } of the credit over 1 answer; likely between { $low } and { $high }, above the group’s { $group }, and still the place to gain most.
   *[other] { $share } of the credit over { $answers } answers; likely between { $low } and { $high }, above the group’s { $group }, and still the place to gain most.
 }
report-next-no-answer = There is no answer to learn from yet.
report-next-one-right = The one answer was right to the full. That is too little to advise anything.
report-next-all-right = All { $answers } answers were right to the full: nothing here asks for practice. What is not used is forgotten; a short session now and then keeps it.

## Reports: what the command prints

report-told-pages = { $count ->
    [one] 1 page, { $size } MB in { $folder }; read { $read } s, counted { $counted } s, wrote { $wrote } s
   *[other] { $count } pages, { $size } MB in { $folder }; read { $read } s, counted { $counted } s, wrote { $wrote } s
 }
report-told-open = open { $page } in a browser
report-told-assignments = { $count ->
    [one] 1 assignment in { $folder }; hand it out with `healedhue assign FOLDER`
   *[other] { $count } assignments in { $folder }; hand them out with `healedhue assign FOLDER`
 }

## What `mark` and `assign` print of marks

mark-told = { $who }: { $total }%, pass mark { $mark }% with a standard error of { $error }: { $decided }; { $sections }
mark-told-nothing-answered = { $decided }, nothing answered
mark-told-close = { $decided }, within one standard error of the pass mark
mark-told-already = { $decided }; in the book already
mark-told-further = { $decided }; a further attempt
mark-told-answer = { $given }, best { $best }, credit { $credit }
mark-told-nothing = nothing
mark-told-rests = { $question }; source: { $source }.
mark-told-missing = Nothing handed in by
mark-told-count = { $marked } marked, { $refused } refused
mark-told-count-passed-over = { $marked } marked, { $refused } refused, { $passed } passed over
assign-told-pages = { $title }, due { $date }: { $pages ->
    [one] 1 page
   *[other] { $pages } pages
 } in { $folder }
assign-told-next = give each person their folder; collect their slips with `healedhue assign FILE --collect SLIP…`
assign-told-handed-in = { $title }: { $count } of { $all ->
    [one] 1 person
   *[other] { $all } people
 } handed in.
assign-told-credit = credit { $credit }, { $answered } of { $all } answered
assign-told-answer = { $number }. { $given }, credit { $credit }.
assign-told-blank = blank
assign-told-habit = A habit, it seems: “{ $belief }”
assign-told-reread = To reread: { $lessons }
assign-told-belief = “{ $belief }” { $often }, by { $people } of { $all ->
    [one] 1 person
   *[other] { $all } people
 }.

## Reports: why there is no figure, and why to look at an item again

report-unreliable-repeats = reliability is of the places on a paper, not of drills put several times
report-unreliable-few-questions = reliability needs at least two questions
report-unreliable-few-people = reliability needs at least two people who answered all { $items } questions; there are { $people }
report-unreliable-same-score = there is nothing to tell people apart by: all have the same score
report-no-links = difficulties need at least two questions that people got right and wrong the one way and the other
report-unsettled = the estimation of difficulties did not settle
report-flag-few-answers = only { $answers } answers: too few to judge it by (from { $least } on)
report-flag-too-easy = too easy: mean credit { $facility }; it tells hardly anybody apart
report-flag-too-hard = too hard: mean credit { $facility }
report-flag-below-guessing = { $right } got it right, fewer than the { $guessing } by blind guessing: the question misleads, or the key is wrong
report-flag-negative = weaker candidates do better on it than stronger ones (discrimination { $discrimination }): check the key
report-flag-weak = it hardly separates stronger from weaker candidates (discrimination { $discrimination })
report-flag-draws-better = the wrong option “{ $option }” draws better candidates ({ $rest } right elsewhere) than the key ({ $key })
report-flag-unchosen = nobody of { $offered } chose the option “{ $option }”: it tempts nobody
report-flag-erratic = answers are erratic (mean square { $square }): able candidates miss it or weak ones get it
report-flag-too-regular = answers are too regular (mean square { $square }): it may repeat what other questions ask
report-flag-unlinked = no difficulty: { $why }
report-unlinked-unanswered = nobody answered it
report-unlinked-all-right = everybody got it right: it is easier than these people can show
report-unlinked-none-right = nobody got it right: it is harder than these people can show
report-unlinked-apart = too few answers link it to the other questions

## Practice in the terminal

terminal-exercises = { $count ->
    [one] one exercise
   *[other] { $count } exercises
 }
terminal-at-most = { $minutes ->
    [one] { $exercises }, at most one minute
   *[other] { $exercises }, at most { $minutes } minutes
 }
terminal-minutes = { $minutes ->
    [one] one minute
   *[other] { $minutes } minutes
 }
terminal-greeting = { $course }: practice, { $extent }. Type your answer and press Enter; ? tells what is in the bottles that are named, q ends the session.
terminal-bottle = { $name }: { $about } { $contents }.
terminal-colourant = { $id } { $share }%
terminal-no-bottle = No bottle is named here.
terminal-promise = Colours are predictions for teaching, never a promise of a result on a person.
terminal-record = { $file }: { $why }; it was left as it is: move it away, or name another file with --progress
terminal-kept = Your progress is kept in
terminal-number = { $number } of { $count }
terminal-number-minute = { $number }, minute { $passed } of { $minutes }
terminal-prompt = Your answer ({ $how }, q to end):
terminal-again = Please answer with { $how }, or q: { $why }.
terminal-so-far-one = So far: one answer.
terminal-so-far = { $skills ->
    [one] So far: { $answers } answers in one skill.
   *[other] So far: { $answers } answers in { $skills } skills.
 }
terminal-plan = { $count ->
    [one] Plan: one exercise: { $skills }. It changes with your answers.
   *[other] Plan: about { $count } exercises: { $skills }. It changes with your answers.
 }
terminal-summary = Summary
terminal-change = { $count ->
    [one] one answer, credit { $credit }. Known before: { $before } ({ $share_before }), now: { $after } ({ $share_after }).
   *[other] { $count } answers, credit { $credit }. Known before: { $before } ({ $share_before }), now: { $after } ({ $share_after }).
 }
terminal-reread = { $count ->
    [one] { $lesson } (one answer)
   *[other] { $lesson } ({ $count } answers)
 }
terminal-belief = “{ $belief }” { $often }.
terminal-chosen-once = Chosen the one time it was offered
terminal-chosen-always = Chosen all { $offered } times it was offered
terminal-chosen = Chosen { $chosen } of the { $offered } times it was offered
terminal-percentages = Percentages are estimates of how well a skill is known. They fall with the days without practice.
terminal-person = { $name }, { $age }; hair: { $hair }.
terminal-person-skin = { $name }, { $age }: phototype { $phototype }, undertone { $undertone }, { $redness } skin; hair: { $hair }.
terminal-wish = “{ $wish }”
terminal-health = Health: { $note }
terminal-bare = { $site ->
    [lip] lip without work
   *[other] skin without work
 }
terminal-old-work = Old work: { $told }
terminal-now = as it is now
terminal-goal = goal
terminal-goal-words = { $depth }; { $site ->
    [lip] in this lip
   *[other] on this skin
 }: { $tone }
terminal-within = { $b }, within ΔE00 { $tolerance }
terminal-beyond = (beyond sRGB)
terminal-placed = Placed { $depth } mm deep, { $thickness } mm thick, load { $load }, coverage { $coverage }%.
terminal-drops-limits = One bottle ({ $bottles }), alone or with modifiers: { $drops } drops in all, at most { $modifiers } of them of modifiers.
terminal-right = Right
terminal-part = Not the best answer
terminal-nothing = No credit
terminal-credit = { $verdict }, credit { $share }
terminal-yours = yours
terminal-best = the best
terminal-behind = Behind it often: “{ $belief }”
terminal-truth = What really happens: { $truth }
terminal-read-again = Read again: { $lesson }
terminal-right-order = The right order: { $steps }.
terminal-these-hold = These hold: { $statements }.
terminal-best-is = Best: { $best }. { $why }
terminal-letters = { $from } to { $to }
terminal-how-several = every one of { $letters } that holds
terminal-how-order = { $letters } in their order
terminal-how-drops = drops by letter, such as { $example }
terminal-how-number = a number in { $unit }
terminal-one-letter = one letter alone is asked for
terminal-letters-alone = letters alone are asked for, such as { $example }
terminal-whole-drops = of each bottle its letter and whole drops are asked for
terminal-no-letter = there is no { $letter } here, only { $letters }
terminal-each-once = each of { $letters } stands once in an order
terminal-no-bottle-here = there is no bottle “{ $bottle }” here, only { $letters }
