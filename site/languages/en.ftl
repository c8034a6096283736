# What the program says in English. Syntax: Project Fluent. Every language has the same messages with the same values (a test compares).
# The beginning of an id says where its message stands.

decimal-mark = .

## The frame of every page

frame-course = Course
frame-practice = Practice
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

## What cannot be practised

exercise-no-lesson = there is no lesson `{ $id }`
exercise-no-skill = there is no skill `{ $id }`
exercise-no-drill = no drill trains that
