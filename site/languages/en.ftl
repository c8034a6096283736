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
screen-within = reached within ΔE00 { $tolerance }
screen-bare = bare skin
screen-named = { $name }: { $words }
screen-beyond = beyond this screen
screen-beyond-nearest = beyond this screen: the nearest colour it can show
screen-beyond-srgb = beyond sRGB: shown in this screen's wider range
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

## The bench

bench-title = The bench
bench-about = Mix drops, place them in a client's skin, and see what they heal to over the years and under four lights.
bench-lead = Choose a client, place a mix, and watch what the skin makes of it: on the day, healed, and years later.
bench-without-scripts = The bench computes as you move its sliders, so it needs scripts and WebAssembly, which your browser has switched off or does not have. Everything else here works without: <a href="{ $lessons }">go on with the lessons</a>.
bench-years = Over the years
bench-case = The case
bench-mix = Mix
bench-mix-empty = Empty the mix
bench-in-bottle = Colours and numbers beside a name are those in the bottle, in daylight.
bench-bottles = Bottles
bench-modifiers = Modifiers
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
bench-skin-words = These words give a typical skin to start from. A phototype is about sun, not about colour: move the sliders until the skin looks like your client's. A number you set yourself counts as known as well as the eye knows it.
bench-melanin = Melanin
bench-blood = Redness: blood
bench-background = Undertone: yellow of the tissue
bench-skin-back = Back to the words
bench-old = Old work
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
bench-wear = Wear
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
bench-marks-skin = <strong>skin</strong>, <strong>now</strong>: bare skin, and skin with old work as it comes in
bench-marks-work = <strong>day</strong>, <strong>6 w</strong>, <strong>1 y</strong>, <strong>2 y</strong>, <strong>3 y</strong>: the work, joined in order of time; the ringed one is the time judged
bench-marks-goal = <strong>goal</strong>, dashed line: as near to the goal as its tolerance, among colours of its lightness (left) and of its hue (right)
bench-marks-likely = <strong>90%</strong>, full line: where nine of ten outcomes lie at the time judged
bench-marks-beyond = *: beyond what this screen can show
bench-sure = How sure it is
bench-best = What would be best
bench-most-bottles = Bottles in a mix, at most
bench-most-drops = Drops in all, at most
bench-best-about = Every mix within these limits, of bottles that hold nothing restricted, is placed in this skin and compared with the goal at the time and in the light judged. None is left out.
bench-best-mixes = The best mixes

# What the page says as it runs.
bench-mark-skin = skin
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
bench-mix-nothing = Nothing in the mix yet.
bench-caution = Caution.
bench-caution-see = { $note } See { $caution }. Colour comes after that.
bench-old-none = (none)
bench-old-count = ({ $count })
bench-old-number = Old work { $number }
bench-old-made-of = Made of
bench-old-age = Age
bench-old-remove = Remove it
bench-old-remove-number = Remove old work { $number }
bench-angle = Typology angle of this skin (ITA): { $degrees }°.
bench-colourant = { $name } ({ $id })
bench-restriction = { $id } ({ $name }): { $place }, { $rule } since { $since } ({ $source })
bench-link-copied = The link is copied.
bench-link-marked = The link is marked: copy it with your browser.
bench-link-amiss = Parts of this link were not understood and left out: { $parts }.
bench-no-case = The engine cannot answer this case: { $why }.
bench-working = Working …
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
bench-distance = ΔE00 from the goal
bench-lab-head = L* a* b*
bench-lab-cell = { $l }  { $a }  { $b }
bench-take = Take it
bench-take-mix = Take it: { $mix }
bench-time-in-light = { $time }, { $light }

## Practice

practice-title = Practice
practice-about = Exercises made afresh, proved and marked by what your answer would heal to. What comes next is what you need most.
practice-lead = Exercises made afresh, each proved before you see it. What comes next is what you need most.
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
practice-best = The best
practice-at = { $who }, { $time }
practice-person = { $name }, { $age }
practice-skin-now = { $name }'s skin now
practice-work-now = { $name }, as it is now
practice-skin = Skin
practice-hair = Hair
practice-placement = Placement
practice-judged = Judged
practice-old = Old work
practice-health = Health
practice-skin-words = phototype { $phototype }, { $undertone }, { $redness }
practice-placed = { $depth } mm deep, { $thickness } mm thick, load { $load }, { $share } of the area covered
practice-placed-full = { $depth } mm deep, { $thickness } mm thick, one full pass, { $share } of the area covered
practice-old-told = { $age } old. { $note }
practice-several = Choose every one that holds.
practice-order = Put the steps in their order.
practice-earlier = Earlier: { $step }
practice-later = Later: { $step }
practice-now-step = { $step }: now step { $place } of { $count }
practice-drops-how = { $count ->
    [one] One bottle, 1 drop in all, at most { $most } of them modifiers.
   *[other] One bottle, { $count } drops in all, at most { $most } of them modifiers.
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
practice-yours-said = Yours: { $said }.
practice-best-said = The best: { $said }.
practice-also-good = Just as good: { $said }.
practice-over-time = Over time, on this skin
practice-belief = Tempting belief
practice-truth = What really happens
practice-belief-more = More about this misconception
practice-reread = To reread: { $lesson }
practice-worth = All answers, and why
practice-credit = credit { $share }
practice-proof-colours = How this was proved: the engine computed every option. The nearest wrong one is ΔE00 { $margin } away; what is really seen stays nearest to the right one in { $held } of { $worlds } trials with skin, depth and load varied.
practice-proof-mixes = How this was proved: of { $searched } mixes tried, none comes nearer to the goal than ΔE00 { $error }. The best stays best in { $held } of { $worlds } trials with skin, depth and load varied.
practice-proof-mixes-margin = How this was proved: of { $searched } mixes tried, none comes nearer to the goal than ΔE00 { $error }. The nearest wrong option is worse by { $margin }. The best stays best in { $held } of { $worlds } trials with skin, depth and load varied.
practice-source = Source: { $source }. Exercise { $drill } { $number }.
practice-now-little = { $name }: now known a little, { $share } (before this answer { $before }).
practice-now-part = { $name }: now known in part, { $share } (before this answer { $before }).
practice-now-well = { $name }: now known well, { $share } (before this answer { $before }).
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
practice-chosen-always = chosen all { $offered } times it was offered.
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
practice-kept = Your progress is kept on this device, in this browser, and sent nowhere. A file of it opens in the terminal's practice too.
practice-not-kept = This browser keeps nothing on this device for this page, so your progress is gone when you leave it. Save it to a file, and load that next time.
practice-not-kept-now = The last answer could not be kept on this device: there is no room, or storage is switched off. Save your progress to a file.
practice-unreadable = The record on this device cannot be used: { $why }. It is left as it is, and nothing is kept, until you load another or wipe it.
practice-elsewhere = Another window has practised too; its answers are taken up.
practice-saved = Saved as { $name }.
practice-loaded = The file is loaded.
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
drill-choose-some = Choose at least one.
drill-number-steps = Number the steps from 1 to { $count }, each number once.
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
paper-bottle-about = { $about } In the bottle { $lab }; { $contents }.
paper-bottle-modifier = (modifier)
paper-hand-in = Hand in
paper-slip = Your answer slip
paper-save = Save the slip as a file
paper-copy = Copy the code
paper-back = Back to the questions
paper-send = Send one of the two to your instructor: the file, or this code.
paper-code = Code of the slip
paper-no-advice = Nothing here is medical advice. Your local code and licensed practitioners decide.
paper-version = Paper { $digest }, seed { $seed }; { $course }, version { $version }
paper-name = Name
paper-id = Id
paper-date = Date
paper-sheet-how = { $minutes ->
    [one] 1 minute
   *[other] { $minutes } minutes
 }, { $count ->
    [one] 1 question
   *[other] { $count } questions
 }; { $mark }% of the whole mark passes, and what is left empty earns nothing. Write all answers here: cross one letter, or as many as hold; write letters in order, drops or a number where there are empty boxes. Only this page is marked.
paper-sheet-foot = Paper { $digest }, seed { $seed }; course version { $version }. Predictions are for teaching, never a promise of a result on a person. Nothing here is medical advice. The words and numbers below a swatch say all that its colour says.
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
assignment-amiss = Not whole, and so left out: { $numbers }. Number all steps, each number once.
assignment-again = You can go on and save again; hand in the last file.

## The search

search-title = Search
search-about = Find a word in the lessons, terms, bottles, clients, misconceptions and cautions of this course.
search-without-scripts = Searching needs scripts. The <a href="glossary.html">glossary</a> and the <a href="index.html">list of lessons</a> work without.
search-words = Words to look for
search-help = The beginning of a word is enough, and a slip of the pen is forgiven.
search-lesson = Lesson
search-term = Term
search-bottle = Bottle
search-client = Client
search-misconception = Misconception
search-caution = Caution
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
report-matrix-about = Mean credit in percent; the columns are the numbers of the skills above. <span class="sign">▼</span> the whole likely range lies below the group’s mean, <span class="sign">△</span> above it; no sign: no difference can be told, often because the answers are few.
report-matrix-left-out = Shown are those with the least credit; { $count } more stand on the <a href="{ $everybody }">page of everybody</a>.
report-apprentice = Apprentice
report-all = All
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
report-scatter-about = Each mark is a drill or a question; the numbers are those of the table. Squares (filled) are to be looked at again, circles are not. Dashed: facility 20% and 95%, discrimination 0.20.
report-scatter-left-out = { $count ->
    [one] 1 without one of the two figures is left out.
   *[other] { $count } without one of the two figures are left out.
 }
report-scatter = { $count ->
    [one] 1 item by facility and discrimination; { $flagged } to look at again
   *[other] { $count } items by facility and discrimination; { $flagged } to look at again
 }
report-scatter-described = Across: facility from 0 to 100%. Up: discrimination. Dashed lines are the limits of both. Squares are items to look at again, circles the others; the table of all items holds the numbers.
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
report-square-t = { $square } (t { $t })
report-plus-minus = { $value } ± { $error }
report-look = look again
report-fine = fine
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
report-options-about = For a drill, the options of all its exercises are gathered by what leads to them. “Right elsewhere” is the mean credit for all other answers of those who chose it: a wrong option that draws the abler is a reason to look at the key.
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
report-chosen-times = Chosen { $count } times
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
report-practice = Practice
report-paper = Paper
report-sheet-of = { $blueprint }: { $result }
report-sheet-attempt = { $blueprint }, attempt { $attempt }: { $result }
report-reread = Reread: { $lessons }
report-then = Then: { $command }
report-think-over = Worth thinking over
report-chosen-the-one = Chosen in the one question that offered it; blind guessing would choose it in { $guessing }.
report-chosen-in = Chosen in { $chosen } of the { $offered } questions that offered it; blind guessing would choose it in { $guessing }.
report-shown-freely = { $count ->
    [one] Shown in 1 answer without options.
   *[other] Shown in { $count } answers without options.
 }
report-every-skill = Every skill on the paper
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
report-note-again = Some people handed in more than one sheet. Each counts by itself in the statistics of papers and questions, and all of a person's count together for skills and misconceptions.
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
    [one] To look at again: 1 drill; the reasons stand below.
   *[other] To look at again: { $drills } drills; the reasons stand below.
 }
report-again-questions = { $questions ->
    [one] To look at again: 1 question of the bank; the reasons stand below.
   *[other] To look at again: { $questions } questions of the bank; the reasons stand below.
 }
report-again-both = To look at again: { $drills ->
    [one] 1 drill
   *[other] { $drills } drills
 } and { $questions ->
    [one] 1 question of the bank
   *[other] { $questions } questions of the bank
 }; the reasons stand below.
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
    [one] { $share } of the credit over 1 answer; likely between { $low } and { $high }, clearly below the group's { $group }.
   *[other] { $share } of the credit over { $answers } answers; likely between { $low } and { $high }, clearly below the group's { $group }.
 }
report-why-above = { $answers ->
    [one] { $share } of the credit over 1 answer; likely between { $low } and { $high }, above the group's { $group }, and still the place to gain most.
   *[other] { $share } of the credit over { $answers } answers; likely between { $low } and { $high }, above the group's { $group }, and still the place to gain most.
 }
report-next-no-answer = There is no answer to learn from yet.
report-next-one-right = The one answer was right to the full. That is too little to advise anything.
report-next-all-right = All { $answers } answers were right to the full: nothing here asks for practice. What is not used is forgotten; a short session now and then keeps it.

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
