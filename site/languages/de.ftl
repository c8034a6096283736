# Was das Programm auf Deutsch sagt. Schreibweise: Project Fluent, dieselben Meldungen und Werte wie in en.ftl.

decimal-mark = ,

## Rahmen jeder Seite

frame-course = Kurs
frame-practice = Üben
frame-bench = Mischtisch
frame-bottles = Flaschen
frame-clients = Kundschaft
frame-misconceptions = Irrtümer
frame-glossary = Glossar
frame-cautions = Vorsicht
frame-model = Modell
frame-search = Suche

## Eine Farbe in Worten, neben der Haut der Person

reading-words = { $depth }, { $tone }
reading-depth-far-deeper-than-the-skin = sehr viel dunkler als die Haut
reading-depth-much-deeper-than-the-skin = viel dunkler als die Haut
reading-depth-deeper-than-the-skin = dunkler als die Haut
reading-depth-a-little-deeper-than-the-skin = etwas dunkler als die Haut
reading-depth-as-light-as-the-skin = so hell wie die Haut
reading-depth-a-little-lighter-than-the-skin = etwas heller als die Haut
reading-depth-lighter-than-the-skin = heller als die Haut
reading-tone-skin = hautähnlich
reading-tone-black-blue = schwarzblau
reading-tone-blue-grey = blaugrau
reading-tone-grey = grau
reading-tone-green-grey = grüngrau
reading-tone-ashy = aschig
reading-tone-neutral = neutrales Braun
reading-tone-warm = warmes Braun
reading-tone-orange = orange
reading-tone-salmon = lachsfarben
reading-tone-red = rot
reading-tone-pink-violet = rosaviolett

## Was Mischtisch und Üben gleich sagen

screen-light-d65 = Tageslicht
screen-light-a = Glühlampenlicht
screen-light-led-b3 = weißes LED-Licht
screen-light-fl2 = kaltes Leuchtstofflampenlicht
# Ebenso, wie es hinter „bei“ steht.
screen-light-d65-in = Tageslicht
screen-light-a-in = Glühlampenlicht
screen-light-led-b3-in = weißem LED-Licht
screen-light-fl2-in = kaltem Leuchtstofflampenlicht
screen-light-named = { $light } ({ $code })
screen-in-light = bei { $light }
# Wann die Arbeit betrachtet wird: ein Name für eine Spalte, und eine Antwort auf „wann?“.
screen-time-day = am selben Tag
screen-time-six-weeks = sechs Wochen
screen-time-years = { $years ->
    [one] 1 Jahr
   *[other] { $years } Jahre
 }
screen-when-day = am selben Tag
screen-when-six-weeks = nach sechs Wochen
screen-when-years = { $years ->
    [one] nach 1 Jahr
   *[other] nach { $years } Jahren
 }
screen-when-later = nach { $age }
screen-judged = { $when }, bei { $light }
# Ein Alter: Die Zahl entscheidet, der Text wird geschrieben.
screen-age-months = { $months ->
    [one] 1 Monat
   *[other] { $number } Monate
 }
screen-age-years = { $years ->
    [one] 1 Jahr
   *[other] { $number } Jahre
 }
screen-age-months-after = { $months ->
    [one] 1 Monat
   *[other] { $number } Monaten
 }
screen-age-years-after = { $years ->
    [one] 1 Jahr
   *[other] { $number } Jahren
 }
screen-old = { $age } alt
screen-percent = { $number } %
screen-in-mm = { $number } mm
screen-drops = { $count ->
    [one] 1 Tropfen
   *[other] { $count } Tropfen
 }
screen-drops-of = { $count ->
    [one] 1 Tropfen { $name }
   *[other] { $count } Tropfen { $name }
 }
screen-drops-label = Tropfen { $name }
screen-drop-less = Ein Tropfen { $name } weniger
screen-drop-more = Ein Tropfen { $name } mehr
screen-lab = L* { $l }; a* { $a }; b* { $b }
screen-in-a-row = { $first } und { $last }
screen-from-goal = ΔE00 { $distance } vom Ziel entfernt
screen-goal = Ziel: { $name }
screen-within = erreicht bis ΔE00 { $tolerance }
screen-bare = bloße Haut
screen-named = { $name }: { $words }
screen-beyond = auf diesem Bildschirm nicht darstellbar
screen-beyond-nearest = auf diesem Bildschirm nicht darstellbar: gezeigt ist die nächste Farbe, die er darstellt
screen-beyond-srgb = außerhalb von sRGB: gezeigt im größeren Farbumfang dieses Bildschirms
screen-undertone-cool = kühler Unterton
screen-undertone-neutral = neutraler Unterton
screen-undertone-warm = warmer Unterton
screen-undertone-olive = olivfarbener Unterton
screen-redness-calm = ruhig
screen-redness-rosy = rosig
screen-redness-flushed = gerötet
screen-redness-ruddy = stark gerötet
screen-restricted = Beschränkt.
screen-promise = <strong>Die Vorhersagen dienen dem Unterricht und versprechen nie ein Ergebnis an einem Menschen.</strong> Sie stammen aus einem <a href="{ $model }">Modell von Pigment in Haut</a>. Die Gesundheit geht vor: siehe <a href="{ $cautions }">Vorsicht</a>.
screen-starting = Das Rechenwerk startet …

## Der Mischtisch

bench-title = Der Mischtisch
bench-about = Tropfen mischen, in die Haut einer Kundin oder eines Kunden setzen und sehen, wozu sie über die Jahre und unter vier Lichtarten verheilen.
bench-lead = Wählen Sie eine Person, setzen Sie eine Mischung und sehen Sie zu, was die Haut daraus macht: am selben Tag, verheilt und nach Jahren.
bench-without-scripts = Der Mischtisch rechnet, während Sie seine Regler bewegen; dazu braucht er Skripte und WebAssembly, die Ihr Browser abgeschaltet oder nicht hat. Alles Übrige hier geht ohne: <a href="{ $lessons }">weiter mit den Lektionen</a>.
bench-years = Über die Jahre
bench-case = Der Fall
bench-mix = Mischung
bench-mix-empty = Mischung leeren
bench-in-bottle = Farben und Zahlen neben einem Namen gelten in der Flasche, bei Tageslicht.
bench-bottles = Flaschen
bench-modifiers = Korrektoren
bench-client = Person
bench-start-from = Beginnen mit
bench-skin-below = einer unten beschriebenen Haut
bench-phototype = Phototyp
bench-undertone = Unterton
bench-undertone-cool = kühl
bench-undertone-neutral = neutral
bench-undertone-warm = warm
bench-undertone-olive = oliv
bench-redness = Rötung
bench-site = Stelle
bench-site-brow = Braue
bench-site-eyelid = Augenlid
bench-site-lip = Lippe
bench-site-areola = Warzenhof
bench-site-scalp = Kopfhaut
bench-skin-words = Diese Wörter ergeben eine typische Haut als Anfang. Ein Phototyp handelt von der Sonne, nicht von der Farbe: Bewegen Sie die Regler, bis die Haut aussieht wie die vor Ihnen. Eine selbst eingestellte Zahl gilt als so gut bekannt, wie das Auge sie kennt.
bench-melanin = Melanin
bench-blood = Rötung: Blut
bench-background = Unterton: Gelb des Gewebes
bench-skin-back = Zurück zu den Wörtern
bench-old = Alte Arbeit
bench-old-add = Alte Arbeit hinzufügen
bench-technique-and-placement = Technik und Lage
bench-technique = Technik
bench-technique-both = Schattierung mit Härchen
bench-technique-strokes = Härchenzeichnung
bench-technique-powder = Schattierung
bench-depth = Tiefe der Oberkante
bench-thickness = Dicke
bench-load = Beladung
bench-load-help = 1 ist ein voller Durchgang.
bench-coverage = Deckung
bench-coverage-help = Der Anteil der Fläche, der Farbe trägt. Das Farbmuster zeigt, was das Auge aus der Entfernung daraus macht.
bench-wear = Beanspruchung
bench-sun = Sonne
bench-sun-sheltered = geschützt
bench-sun-everyday = alltäglich
bench-sun-outdoors = viel im Freien
bench-oil = Haut
bench-oil-dry = trocken
bench-oil-balanced = ausgeglichen
bench-oil-oily = fettig
bench-aftercare = Nachsorge
bench-aftercare-followed = eingehalten
bench-aftercare-neglected = vernachlässigt
bench-goal = Ziel
bench-goal-wished = Gewünschte verheilte Farbe
bench-goal-named = { $name } (L* { $l }; a* { $a }; b* { $b })
bench-goal-own = eine eigene Farbe
bench-tolerance = Toleranz, ΔE00
bench-pass-on = Diesen Fall weitergeben
bench-link = Link zu diesem Fall
bench-link-copy = Link kopieren
bench-link-about = Der ganze Fall steht in der Adresse hinter dem #. Er wird nirgendwohin gesendet.
bench-request-about = Derselbe Fall als Anfrage; <code>healedhue foresee DATEI --json</code> beantwortet sie mit denselben Zahlen:
bench-request = Der Fall als Anfrage
bench-again = Neu beginnen
bench-judged = Beurteilt
bench-when = Wann
bench-in-which-light = Bei welchem Licht
bench-four-lights = Unter vier Lichtarten
bench-all-times = Jeder Zeitpunkt unter jeder Lichtart
bench-planes = Wo die Farben liegen
bench-marks-skin = <strong>Haut</strong>, <strong>jetzt</strong>: bloße Haut, und Haut mit alter Arbeit, wie sie zu Ihnen kommt
bench-marks-work = <strong>Tag</strong>, <strong>6 W</strong>, <strong>1 J</strong>, <strong>2 J</strong>, <strong>3 J</strong>: die Arbeit, in der Folge der Zeit verbunden; umringt ist der beurteilte Zeitpunkt
bench-marks-goal = <strong>Ziel</strong>, gestrichelte Linie: so nah am Ziel wie seine Toleranz, unter Farben seiner Helligkeit (links) und seines Bunttons (rechts)
bench-marks-likely = <strong>90 %</strong>, volle Linie: wo zum beurteilten Zeitpunkt neun von zehn Ergebnissen liegen
bench-marks-beyond = *: auf diesem Bildschirm nicht darstellbar
bench-sure = Wie sicher das ist
bench-best = Was am besten wäre
bench-most-bottles = Flaschen je Mischung, höchstens
bench-most-drops = Tropfen insgesamt, höchstens
bench-best-about = Jede Mischung innerhalb dieser Grenzen, aus Flaschen ohne beschränkte Inhaltsstoffe, wird in diese Haut gesetzt und zum beurteilten Zeitpunkt und Licht mit dem Ziel verglichen. Keine wird ausgelassen.
bench-best-mixes = Die besten Mischungen

# Was die Seite sagt, während sie läuft.
bench-mark-skin = Haut
bench-mark-now = jetzt
bench-mark-goal = Ziel
bench-mark-likely = 90 %
bench-mark-day = Tag
bench-mark-six-weeks = 6 W
bench-mark-years = { $years } J
bench-as-it-is = Zustand jetzt
bench-plane-ab = a*b*: nach rechts röter, nach oben gelber
bench-plane-cl = L*C*: nach rechts bunter, nach oben heller
bench-plane-described = { $title }. { $marks }
bench-plane-mark = { $name } (L* { $l }; a* { $a }; b* { $b })
bench-of-epidermis = { $share } der Epidermis
bench-of-dermis = { $share } der Dermis
bench-times-typical = { $number }-mal so viel wie typisch
bench-of-full-pass = { $number } eines vollen Durchgangs
bench-mix-nothing = Noch nichts in der Mischung.
bench-caution = Vorsicht.
bench-caution-see = { $note } Siehe { $caution }. Die Farbe kommt danach.
bench-old-none = (keine)
bench-old-count = ({ $count })
bench-old-number = Alte Arbeit { $number }
bench-old-made-of = Besteht aus
bench-old-age = Alter
bench-old-remove = Entfernen
bench-old-remove-number = Alte Arbeit { $number } entfernen
bench-angle = Typologischer Winkel dieser Haut (ITA): { $degrees }°.
bench-colourant = { $name } ({ $id })
bench-restriction = { $id } ({ $name }): { $place }, { $rule } seit { $since } ({ $source })
bench-link-copied = Der Link ist kopiert.
bench-link-marked = Der Link ist markiert: Kopieren Sie ihn mit Ihrem Browser.
bench-link-amiss = Teile dieses Links wurden nicht verstanden und ausgelassen: { $parts }.
bench-no-case = Das Rechenwerk kann diesen Fall nicht beantworten: { $why }.
bench-working = Es wird gerechnet …
bench-no-answer = Es gibt keine Antwort: { $why }.
bench-cannot-run = Der Mischtisch läuft hier nicht: Ihr Browser hat kein WebAssembly oder ein zu altes (ab 2023 haben sie es). Die Lektionen gehen ohne. ({ $why })
bench-worker-failed = ein Hintergrundprozess ist ausgefallen
bench-seen = { $judged }: { $words }.
bench-goal-reached = Das Ziel „{ $name }“ ist erreicht: Farbabstand ΔE00 { $distance }, erlaubt sind { $tolerance }.
bench-goal-missed = Das Ziel „{ $name }“ ist nicht erreicht: Farbabstand ΔE00 { $distance }, erlaubt sind { $tolerance }.
bench-later = Nach { $years } Jahren: { $words }.
bench-later-same = Nach { $years } Jahren: Es gelten noch dieselben Wörter.
bench-tone-in = { $tone } bei { $lights }
bench-other-light = Anderes Licht ändert das Wort: { $tones }.
bench-no-work = Keine neue Arbeit: Die Mischung ist leer.
bench-likely = { $judged }: wahrscheinlich innerhalb von ΔE00 { $distance } um die erwartete Farbe; am unsichersten: { $one } oder { $other }. Haut, Tiefe, Beladung und Haltbarkeit jedes Farbmittels wurden so weit verändert, wie man sich darin irren kann.
bench-likely-several = { $judged }: wahrscheinlich innerhalb von ΔE00 { $distance } um die erwartete Farbe; am unsichersten: { $one } oder aber { $other }. Haut, Tiefe, Beladung und Haltbarkeit jedes Farbmittels wurden so weit verändert, wie man sich darin irren kann.
bench-likely-nothing = { $judged }: wie erwartet, nichts schwankt. Haut, Tiefe, Beladung und Haltbarkeit jedes Farbmittels wurden so weit verändert, wie man sich darin irren kann.
bench-sense-lighter = heller
bench-sense-deeper = dunkler
bench-sense-redder = röter
bench-sense-greener = grüner
bench-sense-warmer = wärmer
bench-sense-cooler = kühler
bench-excess-lighter = zu hell
bench-excess-deeper = zu dunkel
bench-excess-redder = zu rot
bench-excess-greener = zu grün
bench-excess-warmer = zu warm
bench-excess-cooler = zu kühl
bench-best-reached = Die beste von { $mixes } Mischungen ist { $mix }, ΔE00 { $distance } vom Ziel entfernt
bench-best-missed = Keine von { $mixes } Mischungen erreicht das Ziel: Die beste, { $mix }, liegt ΔE00 { $distance } davon entfernt, { $beyond } mehr als die Toleranz, { $ways } (ΔL* { $l }; Δa* { $a }; Δb* { $b })
bench-best-ties = { $count ->
    [one] 1 weitere kann ein Auge nicht darunter einordnen
   *[other] { $count } weitere kann ein Auge nicht darunter einordnen
 }
bench-best-gap = jede andere Mischung ist um mindestens ΔE00 { $distance } schlechter
bench-best-gap-further = jede weitere Mischung ist um mindestens ΔE00 { $distance } schlechter
bench-best-untouched = ganz ohne neue Arbeit liegt die Haut näher daran (ΔE00 { $distance })
bench-own-best = Keine geprüfte Mischung kommt näher als Ihre (ΔE00 { $distance }).
bench-own-nearer = { $nearer } von { $mixes } Mischungen kommen näher als Ihre (ΔE00 { $distance }).
bench-judged-at = Beurteilt { $judged }.
bench-place = Rang
bench-distance = ΔE00 vom Ziel
bench-lab-head = L* a* b*
bench-lab-cell = { $l }; { $a }; { $b }
bench-take = Übernehmen
bench-take-mix = Übernehmen: { $mix }
bench-time-in-light = { $time }, { $light }

## Üben

practice-title = Üben
practice-about = Frisch gemachte Aufgaben, bewiesen und danach bewertet, wozu Ihre Antwort verheilen würde. Als Nächstes kommt, was Sie am nötigsten haben.
practice-lead = Frisch gemachte Aufgaben, jede bewiesen, bevor Sie sie sehen. Als Nächstes kommt, was Sie am nötigsten haben.
practice-without-scripts = Jede Aufgabe wird erst gemacht, wenn Sie sie anfordern; dazu braucht es Skripte und WebAssembly, die Ihr Browser abgeschaltet oder nicht hat. Aufgaben mit ihren Antworten stehen in den <a href="{ $lessons }">Lektionen</a>.
practice-without-scripts-sheets = Jede Aufgabe wird erst gemacht, wenn Sie sie anfordern; dazu braucht es Skripte und WebAssembly, die Ihr Browser abgeschaltet oder nicht hat. Aufgaben mit ihren Antworten stehen in den <a href="{ $lessons }">Lektionen</a> und auf den Arbeitsblättern: { $sheets }.
practice-session = Eine Sitzung
practice-what = Üben
practice-everything = alles, das Nötigste zuerst
practice-one-skill = Eine Fertigkeit
practice-how-long = Wie lange
practice-exercises = { $count ->
    [one] 1 Aufgabe
   *[other] { $count } Aufgaben
 }
practice-minutes = etwa { $minutes ->
    [one] 1 Minute
   *[other] { $minutes } Minuten
 }
practice-until-stop = bis ich aufhöre
practice-begin = Beginnen
practice-mark = Meine Antwort bewerten
practice-next = Nächste Aufgabe
practice-end = Sitzung beenden
practice-shown = Was diese Sitzung gezeigt hat
practice-known = Was Sie können
practice-percentages = Die Prozentwerte sind aus Ihren Antworten geschätzt. Sie sinken mit den Tagen ohne Übung, langsamer nach richtigen Antworten an verschiedenen Tagen.
practice-record = Ihre Aufzeichnung
practice-save = In eine Datei sichern
practice-load = Aus einer Datei laden
practice-wipe = Löschen
practice-file = Datei mit dem Lernstand

# Was die Seite sagt, während sie läuft.
practice-level-little = ein wenig
practice-level-part = zum Teil
practice-level-well = gut
practice-level-mastered = sicher
practice-level-none = noch nicht geübt
practice-yours = Ihre Antwort
practice-best = Die beste
practice-at = { $who }, { $time }
practice-person = { $name }, { $age }
practice-skin-now = { $name }: die Haut jetzt
practice-work-now = { $name }: Zustand jetzt
practice-skin = Haut
practice-hair = Haar
practice-placement = Lage
practice-judged = Beurteilt
practice-old = Alte Arbeit
practice-health = Gesundheit
practice-skin-words = Phototyp { $phototype }, { $undertone }, { $redness }
practice-placed = { $depth } mm tief, { $thickness } mm dick, Beladung { $load }, { $share } der Fläche gedeckt
practice-placed-full = { $depth } mm tief, { $thickness } mm dick, ein voller Durchgang, { $share } der Fläche gedeckt
practice-old-told = { $age } alt. { $note }
practice-several = Wählen Sie alles, was zutrifft.
practice-order = Bringen Sie die Schritte in ihre Reihenfolge.
practice-earlier = Früher: { $step }
practice-later = Später: { $step }
practice-now-step = { $step }: jetzt Schritt { $place } von { $count }
practice-drops-how = { $count ->
    [one] Eine Flasche, insgesamt 1 Tropfen, davon höchstens { $most } von Korrektoren.
   *[other] Eine Flasche, insgesamt { $count } Tropfen, davon höchstens { $most } von Korrektoren.
 }
practice-drops-sum = { $count ->
    [one] { $sum } von 1 Tropfen gezählt
   *[other] { $sum } von { $count } Tropfen gezählt
 }
practice-modifier = Korrektor
practice-number = { $name }, in { $unit }
practice-number-degrees = { $name }, in Grad
practice-health-first = Die Gesundheit geht vor: Gibt eine Antwort Anlass zur { $caution }, so wiegt das schwerer als jede Farbe.
practice-caution = Vorsicht
practice-choose-first = Wählen Sie zuerst eine Antwort.
practice-right = Richtig. Wertung { $share }.
practice-part = Nicht die beste Antwort. Wertung { $share }.
practice-nothing = Keine Wertung.
practice-outcome = Was folgt
practice-yours-said = Ihre Antwort: { $said }.
practice-best-said = Die beste: { $said }.
practice-also-good = Ebenso gut: { $said }.
practice-over-time = Im Lauf der Zeit, auf dieser Haut
practice-belief = Verlockender Irrtum
practice-truth = Was wirklich geschieht
practice-belief-more = Mehr zu diesem Irrtum
practice-reread = Zum Nachlesen: { $lesson }
practice-worth = Alle Antworten, und warum
practice-credit = Wertung { $share }
practice-proof-colours = Wie das bewiesen wurde: Das Rechenwerk hat jede Möglichkeit berechnet. Die nächste falsche liegt ΔE00 { $margin } entfernt; was wirklich zu sehen ist, bleibt der richtigen am nächsten, in { $held } von { $worlds } Versuchen mit veränderter Haut, Tiefe und Beladung.
practice-proof-mixes = Wie das bewiesen wurde: Von { $searched } geprüften Mischungen kommt keine dem Ziel näher als ΔE00 { $error }. Die beste bleibt die beste in { $held } von { $worlds } Versuchen mit veränderter Haut, Tiefe und Beladung.
practice-proof-mixes-margin = Wie das bewiesen wurde: Von { $searched } geprüften Mischungen kommt keine dem Ziel näher als ΔE00 { $error }. Die nächste falsche Möglichkeit ist um { $margin } schlechter. Die beste bleibt die beste in { $held } von { $worlds } Versuchen mit veränderter Haut, Tiefe und Beladung.
practice-source = Quelle: { $source }. Aufgabe { $drill } { $number }.
practice-now-little = { $name }: jetzt ein wenig bekannt, { $share } (vor dieser Antwort { $before }).
practice-now-part = { $name }: jetzt zum Teil bekannt, { $share } (vor dieser Antwort { $before }).
practice-now-well = { $name }: jetzt gut bekannt, { $share } (vor dieser Antwort { $before }).
practice-now-mastered = { $name }: jetzt sicher beherrscht, { $share } (vor dieser Antwort { $before }).
practice-exercise = Aufgabe { $number }: { $skill }
practice-exercise-of = Aufgabe { $number } von { $count }: { $skill }
practice-exercise-left = Aufgabe { $number }: { $skill }. Noch etwa { $minutes } min.
practice-plan = Der Plan, der sich mit Ihren Antworten ändert: { $skills }.
practice-plan-skill = { $skill } ({ $count })
practice-making = Die Aufgabe wird gemacht und bewiesen …
practice-fits-none = In die verbleibenden Minuten passt keine weitere Aufgabe.
practice-impossible = Es ließ sich keine Aufgabe machen: { $why }.
practice-summary-none = Keine Aufgabe wurde beantwortet.
practice-summary-skills = Gefragte Fertigkeiten
practice-head-skill = Fertigkeit
practice-head-answers = Antworten
practice-head-credit = Wertung
practice-head-before = Zuvor bekannt
practice-head-now = Jetzt bekannt
practice-known-share = { $level }, { $share }
practice-summary-next = Als Nächstes üben
practice-summary-reread = Zum Nachlesen
practice-summary-beliefs = Irrtümer, die sich zeigten
practice-lesson-answers = { $lesson } ({ $count ->
    [one] eine Antwort
   *[other] { $count } Antworten
 })
practice-answers = { $count ->
    [one] eine Antwort
   *[other] { $count } Antworten
 }
practice-chosen-once = gewählt das eine Mal, als er angeboten wurde.
practice-chosen-always = gewählt alle { $offered } Male, die er angeboten wurde.
practice-chosen = gewählt { $chosen } von { $offered } Malen, die er angeboten wurde.
practice-habit = Er scheint eine Gewohnheit zu sein.
practice-standing-none = Noch nichts: Ihre ersten Antworten beginnen die Aufzeichnung.
practice-standing = { $answers ->
    [one] Bisher eine Antwort, in { $skills ->
        [one] einer Fertigkeit
       *[other] { $skills } Fertigkeiten
     }.
   *[other] Bisher { $answers } Antworten, in { $skills ->
        [one] einer Fertigkeit
       *[other] { $skills } Fertigkeiten
     }.
 }
practice-needed = Jetzt am nötigsten: { $skills }.
practice-due = jetzt fällig
practice-due-within = innerhalb eines Tages fällig
practice-due-tomorrow = morgen fällig
practice-due-in = { $days ->
    [one] in 1 Tag fällig
   *[other] in { $days } Tagen fällig
 }
practice-average = mittlere Wertung { $share }
practice-last-on = zuletzt am { $date }
practice-practise = üben
practice-practise-this = Üben: { $name }
practice-others = { $count ->
    [one] Eine Fertigkeit in Ihrer Aufzeichnung gehört nicht zu diesem Kurs; sie bleibt erhalten.
   *[other] { $count } Fertigkeiten in Ihrer Aufzeichnung gehören nicht zu diesem Kurs; sie bleiben erhalten.
 }
practice-kept = Ihr Lernstand bleibt auf diesem Gerät, in diesem Browser, und wird nirgendwohin gesendet. Eine Datei davon lässt sich auch beim Üben im Terminal öffnen.
practice-not-kept = Dieser Browser bewahrt für diese Seite nichts auf dem Gerät auf; beim Verlassen ist Ihr Lernstand fort. Sichern Sie ihn in eine Datei und laden Sie diese beim nächsten Mal.
practice-not-kept-now = Die letzte Antwort ließ sich auf diesem Gerät nicht aufbewahren: Es fehlt Platz, oder die Speicherung ist abgeschaltet. Sichern Sie Ihren Lernstand in eine Datei.
practice-unreadable = Die Aufzeichnung auf diesem Gerät ist nicht zu gebrauchen: { $why }. Sie bleibt, wie sie ist, und nichts wird aufbewahrt, bis Sie eine andere laden oder sie löschen.
practice-elsewhere = Auch in einem anderen Fenster wurde geübt; dessen Antworten sind übernommen.
practice-saved = Gesichert als { $name }.
practice-loaded = Die Datei ist geladen.
practice-refused = Diese Datei wurde nicht geladen: { $why }.
practice-wiped = Die Aufzeichnung ist gelöscht.
practice-ask-wipe = Ihre Aufzeichnung löschen? Alles, was Sie in diesem Kurs beantwortet haben, ist dann auf diesem Gerät vergessen.
practice-ask-wipe-yes = Löschen
practice-ask-wipe-no = Behalten
practice-ask-load = Diese Datei anstelle der Aufzeichnung auf diesem Gerät laden?
practice-ask-load-yes = Laden
practice-ask-load-no = Meine behalten
practice-needs = Üben läuft hier nicht: Ihr Browser hat kein WebAssembly oder ein zu altes (ab 2023 haben sie es). Die Lektionen und die Arbeitsblätter gehen ohne. ({ $why })
practice-worker-failed = der Hintergrundprozess ist ausgefallen
practice-link-unknown = Dieser Link nennt eine Lektion oder Fertigkeit, die der Kurs nicht hat; wählen Sie eine andere.
practice-failed = Etwas ist schiefgegangen: { $why }. Laden Sie die Seite neu; Ihre aufbewahrten Antworten sind sicher.

## Aufgaben, die eine Seite bewertet: Lernseiten und Prüfungsbogen

drill-choose-one = Wählen Sie zuerst eine Möglichkeit.
drill-choose-some = Wählen Sie mindestens eine.
drill-number-steps = Nummerieren Sie die Schritte von 1 bis { $count }, jede Zahl einmal.
drill-whole-drops = Tropfen sind ganze Zahlen.
drill-drops-counted = { $drops ->
    [one] Die Mischung hat 1 Tropfen; gezählt haben Sie { $counted }.
   *[other] Die Mischung hat { $drops } Tropfen; gezählt haben Sie { $counted }.
 }
drill-most-modifiers = { $count ->
    [one] Höchstens 1 Tropfen von Korrektoren.
   *[other] Höchstens { $count } Tropfen von Korrektoren.
 }
drill-one-bottle = Nehmen Sie eine Flasche, und Tropfen von Korrektoren.
drill-compare = Vergleichen Sie Ihre Mischung mit den Antworten unten.
drill-mix-heals-to = Ihre Mischung verheilt zu: { $words } (ΔE00 { $distance } vom Ziel entfernt).
drill-write-number = Schreiben Sie eine Zahl.
drill-right = Richtig.
drill-not-best = Nicht die beste Antwort.
drill-best-letter = { $letter } ist die beste Antwort.
drill-not-best-letter = { $letter } ist nicht die beste Antwort.
drill-credit = Wertung: { $credit }
drill-percent = { $number } %

## Prüfungsbogen

paper-skip = Direkt zu den Fragen
paper-time = Zeit
paper-time-facts = { $minutes ->
    [one] 1 Minute ab Beginn; eine geschlossene Seite hält sie nicht an
   *[other] { $minutes } Minuten ab Beginn; eine geschlossene Seite hält sie nicht an
 }
paper-questions = Fragen
paper-questions-facts = { $count }; was leer bleibt, zählt nichts
paper-to-pass = Bestanden
paper-to-pass-facts = ab { $mark } % der ganzen Wertung
paper-answers = Antworten
paper-answers-facts = bleiben laufend auf diesem Gerät und werden am Ende als Antwortzettel abgegeben: eine Datei zum Senden oder ein Code zum Kopieren
paper-person = { $name } ({ $id })
paper-promise = Die Vorhersagen dienen dem Unterricht und versprechen nie ein Ergebnis an einem Menschen. Bildschirme zeigen Farben verschieden: Lesen Sie die Wörter und Zahlen neben jedem Farbmuster. Die Gesundheit geht vor: Gibt eine Antwort Anlass zur Vorsicht, so wiegt das schwerer als jede Farbe.
paper-without-scripts = Ohne Skripte kann diese Seite keinen Antwortzettel machen. Bitten Sie um den gedruckten Bogen.
paper-forgets = Dieser Browser lässt die Seite nichts auf dem Gerät aufbewahren: Was Sie antworten, ist verloren, wenn die Seite geschlossen wird. Lassen Sie sie offen, bis Sie Ihren Zettel haben.
paper-begin = Beginnen
paper-weight = { $weight } % der Wertung
paper-weight-short = { $weight } %
paper-bottles = Die Flaschen in diesem Bogen
paper-bottle-about = { $about } In der Flasche { $lab }; { $contents }.
paper-bottle-modifier = (Korrektor)
paper-hand-in = Abgeben
paper-slip = Ihr Antwortzettel
paper-save = Zettel als Datei sichern
paper-copy = Code kopieren
paper-back = Zurück zu den Fragen
paper-send = Senden Sie eines von beiden Ihrer Lehrkraft: die Datei oder diesen Code.
paper-code = Code des Zettels
paper-no-advice = Nichts hier ist ärztlicher Rat. Es entscheiden die örtlichen Vorschriften und zugelassene Fachleute.
paper-version = Bogen { $digest }, Startwert { $seed }; { $course }, Fassung { $version }
paper-name = Name
paper-id = Kennung
paper-date = Datum
paper-sheet-how = { $minutes ->
    [one] 1 Minute
   *[other] { $minutes } Minuten
 }, { $count ->
    [one] 1 Frage
   *[other] { $count } Fragen
 }; bestanden ist ab { $mark } % der ganzen Wertung, und was leer bleibt, zählt nichts. Alle Antworten hier eintragen: einen Buchstaben ankreuzen, oder so viele, wie zutreffen; in leere Felder Buchstaben der Reihe nach, Tropfen oder eine Zahl schreiben. Nur diese Seite wird bewertet.
paper-sheet-foot = Bogen { $digest }, Startwert { $seed }; Fassung des Kurses { $version }. Die Vorhersagen dienen dem Unterricht und versprechen nie ein Ergebnis an einem Menschen. Nichts hier ist ärztlicher Rat. Die Wörter und Zahlen unter einem Farbmuster sagen alles, was seine Farbe sagt.
paper-bottle-colour = Die Farbe ist die in der Flasche, ohne Haut.
paper-head-bottle = Flasche
paper-head-in-bottle = In der Flasche
paper-head-contents = Farbmittel nach Anteil
paper-modifier = Korrektor.
paper-modifier-word = Korrektor
paper-lab = L*&nbsp;{ $l }; a*&nbsp;{ $a }; b*&nbsp;{ $b }
paper-every-one = alles, was zutrifft
paper-in-order = Buchstaben der Reihe nach
paper-drops = Tropfen

# Was die Seite sagt, während sie läuft.
paper-copied = Kopiert
paper-over = Die Zeit ist um
paper-over-said = Die Zeit ist um. { $said }
paper-minutes-left = noch { $minutes } min
paper-clock-left = noch { $clock }
paper-late = Noch fünf Minuten oder weniger.
paper-all-answered = Jede Frage ist beantwortet.
paper-without-answer = Ohne Antwort: { $numbers }.
paper-go-back = { $said } Solange Zeit ist, können Sie noch zurückgehen und etwas ändern.

## Zugewiesene Übungen

assignment-for = Zugewiesen an { $person }
assignment-due = Fällig am { $date }. { $extent }.
assignment-lessons = { $count ->
    [one] 1 Lektion
   *[other] { $count } Lektionen
 }
assignment-exercises = { $count ->
    [one] 1 Aufgabe
   *[other] { $count } Aufgaben
 }
assignment-extent = { $lessons } ({ $time }), { $exercises }
assignment-date = { $day }. { $month } { $year }
assignment-month-1 = Januar
assignment-month-2 = Februar
assignment-month-3 = März
assignment-month-4 = April
assignment-month-5 = Mai
assignment-month-6 = Juni
assignment-month-7 = Juli
assignment-month-8 = August
assignment-month-9 = September
assignment-month-10 = Oktober
assignment-month-11 = November
assignment-month-12 = Dezember
assignment-read = Diese Lektionen lesen
assignment-then = Dann dies beantworten
assignment-how = Beantworten Sie, was Sie können; sichern Sie am Ende Ihren Antwortzettel und geben Sie diese Datei ab. Diese Seite bewahrt nichts auf: Sichern Sie, bevor Sie sie schließen. Sie können die Seite auch drucken und von Hand ausfüllen.
assignment-health-first = Die Gesundheit geht vor: Gibt eine Antwort Anlass zur <a href="{ $cautions }">Vorsicht</a>, so wiegt das schwerer als jede Farbe.
assignment-save = Meinen Antwortzettel sichern
assignment-no-file = Falls keine Datei gesichert wurde
assignment-copy = Kopieren Sie diesen Text und senden Sie ihn stattdessen.
assignment-without-scripts = Einen Zettel zu sichern braucht Skripte. Ohne sie: diese Seite drucken, ausfüllen und auf Papier abgeben.
assignment-bottles = Die Flaschen in diesen Aufgaben
assignment-saved = Gesichert als { $name }: { $answered } von { $count } beantwortet. Geben Sie diese Datei ab.
assignment-open = Ohne Antwort: { $numbers }.
assignment-amiss = Nicht vollständig und deshalb ausgelassen: { $numbers }. Nummerieren Sie alle Schritte, jede Zahl einmal.
assignment-again = Sie können fortfahren und noch einmal sichern; geben Sie die letzte Datei ab.

## Die Suche

search-title = Suche
search-about = Ein Wort in den Lektionen, Begriffen, Flaschen, Personen, Irrtümern und Warnungen dieses Kurses finden.
search-without-scripts = Die Suche braucht Skripte. Das <a href="glossary.html">Glossar</a> und die <a href="index.html">Liste der Lektionen</a> gehen ohne.
search-words = Gesuchte Wörter
search-help = Der Anfang eines Wortes genügt, und ein Tippfehler wird verziehen.
search-lesson = Lektion
search-term = Begriff
search-bottle = Flasche
search-client = Person
search-misconception = Irrtum
search-caution = Vorsicht
search-part = { $title }: { $part }
search-nothing = Nichts gefunden. Versuchen Sie weniger oder andere Wörter.
search-found = { $count ->
    [one] 1 Stelle gefunden.
   *[other] { $count } Stellen gefunden.
 }
search-found-many = { $count ->
    [one] 1 Stelle gefunden, die ersten { $most } sind gezeigt.
   *[other] { $count } Stellen gefunden, die ersten { $most } sind gezeigt.
 }

## Berichte

report-title = Bericht
report-skip = Direkt zum Text
report-main = Hauptnavigation
report-of-group = Bericht der Gruppe
report-everybody = Alle
report-foot-likely = „Wahrscheinlich“ meint ein 95-%-Intervall (Wilson): je weniger Antworten, desto breiter. Die Zahlen dienen dem Unterricht; kein Mensch ist eine Zahl.
report-foot-advice = Nichts hier ist ärztlicher Rat. Es entscheiden die örtlichen Vorschriften und zugelassene Fachleute.
report-percent = { $number } %
report-range = { $low } bis { $high }
report-of = { $part } von { $whole }
report-people = { $count ->
    [one] 1 Person
   *[other] { $count } Personen
 }
report-sheets = { $count ->
    [one] 1 Blatt
   *[other] { $count } Blätter
 }
report-papers = { $count ->
    [one] 1 Prüfung
   *[other] { $count } Prüfungen
 }
report-sets = { $count ->
    [one] 1 zugewiesener Aufgabensatz
   *[other] { $count } zugewiesene Aufgabensätze
 }
report-answers = { $count ->
    [one] 1 Antwort
   *[other] { $count } Antworten
 }
report-extent = { $people }, { $sheets }, { $papers }
report-extent-sets = { $people }, { $sheets }, { $papers }, { $sets }
report-glance = Auf einen Blick
report-on-page = Auf dieser Seite
report-marks = Noten und Zuverlässigkeit
report-skills = Fertigkeiten
report-skills-by-person = Fertigkeiten nach Lernenden
report-misconceptions = Irrtümer
report-look-again = Noch einmal ansehen
report-items = Alle Übungen und Fragen
report-options = Wie oft jede Möglichkeit gewählt wurde
report-how-to-read = Wie die Zahlen zu lesen sind

## Berichte: Noten und Zuverlässigkeit

report-fact-sheets = Blätter
report-fact-questions = Fragen
report-fact-mean = Mittlere Note
report-fact-passed = Bestanden
report-fact-close = Knapp
report-fact-score = Punktzahl
report-fact-alpha = Alpha
report-fact-kr20 = KR-20
report-fact-reliability = Zuverlässigkeit
report-fact-left-out = Dabei ausgelassen
report-passed-of = { $passed } von { $decided }
report-passed-of-mark = { $passed } von { $decided } (Bestehensgrenze { $mark } %)
report-close = { $count } innerhalb eines Standardfehlers um die Bestehensgrenze
report-score = im Mittel { $mean } von { $items }, Standardabweichung { $deviation }
report-coefficient = { $value }, Standardfehler { $error } Fragen
report-answer-missing = { $count ->
    [one] 1 Blatt, auf dem eine Antwort fehlt
   *[other] { $count } Blätter, auf denen eine Antwort fehlt
 }
report-by-mark = Blätter nach Note
report-mark = Note
report-bar = Balken
report-mark-range = { $low } bis { $high } %
report-mark-bar = { $count ->
    [one] Noten von { $range }: 1 Blatt
   *[other] Noten von { $range }: { $count } Blätter
 }
report-pass-mark = Bestehensgrenze

## Berichte: Fertigkeiten und Personen

report-group-skills = Fertigkeiten der Gruppe
report-group-skills-about = Mittlere Wertung mit ihrem wahrscheinlichen Bereich, die am sichersten schwachen zuerst. Der Punkt ist das Mittel, die Linie der Bereich. Antworten einer Person gleichen sich, so dass der Bereich einer Gruppe eher zu schmal ist.
report-number = Nr.
report-skill = Fertigkeit
report-credit = Wertung
report-likely = Wahrscheinlich
report-answers-head = Antworten
report-people-below = Personen deutlich darunter
report-no-skill = Keine Antworten: Über keine Fertigkeit lässt sich etwas sagen.
report-matrix-about = Mittlere Wertung in Prozent; die Spalten sind die Nummern der Fertigkeiten oben. <span class="sign">▼</span> der ganze wahrscheinliche Bereich liegt unter dem Mittel der Gruppe, <span class="sign">△</span> darüber; kein Zeichen: Es lässt sich kein Unterschied feststellen, oft weil die Antworten wenige sind.
report-matrix-left-out = Gezeigt sind die mit der geringsten Wertung; { $count } weitere stehen auf der <a href="{ $everybody }">Seite aller</a>.
report-apprentice = Lernende
report-all = Alle
report-below-group = unter der Gruppe
report-above-group = über der Gruppe
report-no-difference = kein klarer Unterschied
report-no-answers = keine Antworten
report-known-as = Bekannt als
report-practise-first = Zuerst üben
report-nothing-first = nichts
report-share-likely = { $what }: { $share }, wahrscheinlich { $low } bis { $high }
report-share-likely-beside = { $what }: { $share }, wahrscheinlich { $low } bis { $high }; { $beside } { $other }
report-the-group = die Gruppe

## Berichte: Irrtümer

report-group-misconceptions = Irrtümer der Gruppe
report-group-misconceptions-about = Wie oft ein Irrtum gewählt wurde, wo eine Möglichkeit zu ihm führte. Der Punkt ist der Anteil mit seinem wahrscheinlichen Bereich, die senkrechte Linie, was blindes Raten ergäbe. Auffällige sind gekennzeichnet: öfter gewählt als durch Raten, über den Bereich hinaus.
report-stands-out = auffällig
report-chosen = Gewählt
report-by-guessing-head = Durch Raten
report-by-guessing = durch Raten
report-people-head = Personen
report-lesson = Lektion: { $lesson }
report-no-misconception = Keine Frage bot einen Irrtum an.
report-chosen-of = { $chosen } von { $offered }
report-chosen-of-freely = { $chosen } von { $offered }; { $times } weitere ohne Auswahl
report-not-offered = nicht angeboten
report-not-offered-freely = nicht angeboten; { $times } weitere ohne Auswahl

## Berichte: Übungen und Fragen

report-revise = Übungen und Fragen, die noch einmal anzusehen sind
report-revise-none = Keine: Nichts, was oft genug beantwortet wurde, um beurteilt zu werden, gibt einen Anlass.
report-drill = Übung
report-question = Frage
report-scatter-about = Jedes Zeichen ist eine Übung oder eine Frage; die Nummern sind die der Tabelle. Quadrate (gefüllt) sind noch einmal anzusehen, Kreise nicht. Gestrichelt: Lösungsgrad 20 % und 95 %, Trennschärfe 0,20.
report-scatter-left-out = { $count ->
    [one] 1 ohne eine der beiden Zahlen ist ausgelassen.
   *[other] { $count } ohne eine der beiden Zahlen sind ausgelassen.
 }
report-scatter = { $count ->
    [one] 1 Item nach Lösungsgrad und Trennschärfe; { $flagged } noch einmal anzusehen
   *[other] { $count } Items nach Lösungsgrad und Trennschärfe; { $flagged } noch einmal anzusehen
 }
report-scatter-described = Nach rechts: Lösungsgrad von 0 bis 100 %. Nach oben: Trennschärfe. Gestrichelte Linien sind die Grenzen von beiden. Quadrate sind Items, die noch einmal anzusehen sind, Kreise die übrigen; die Tabelle aller Items enthält die Zahlen.
report-axis-facility = Lösungsgrad (mittlere Wertung)
report-axis-discrimination = Trennschärfe
report-all-statistics = Statistik aller Übungen und Fragen
report-item = Item
report-facility = Lösungs&shy;grad
report-discrimination = Trenn&shy;schärfe
report-difficulty-logits = Schwierig&shy;keit, Logits
report-infit = Infit
report-outfit = Outfit
report-verdict = Urteil
report-square-t = { $square } (t { $t })
report-plus-minus = { $value } ± { $error }
report-look = noch einmal ansehen
report-fine = in Ordnung
report-no-difficulties = Keine Schwierigkeiten: { $why }.
report-errors-inexact = Die Prüfungsbogen sind so verschieden, dass die Standardfehler der Schwierigkeiten allein aus den Antworten auf jedes Item stammen; sie sind ein wenig zu klein.
report-scale = Personen und Items auf einer Skala
report-scale-about = Gefüllt: Blätter nach Fähigkeit. Umrandet: Items nach Schwierigkeit. Wo beide in einer Zeile stehen, ist eine richtige Antwort etwa so wahrscheinlich wie eine falsche; Items weit über oder unter allen Personen sagen wenig über sie.
report-logits = Logits
report-bar-sheets = Balken der Blätter
report-bar-items = Balken der Items
report-items-head = Items
report-scale-sheets = { $count } Blätter bei { $logits }
report-scale-items = { $count } Items bei { $logits }
report-and-above = { $logits } und darüber
report-below = unter { $logits }
report-options-about = Bei einer Übung sind die Möglichkeiten aller ihrer Aufgaben danach gesammelt, was zu ihnen führt. „Sonst richtig“ ist die mittlere Wertung aller übrigen Antworten derer, die sie wählten: Zieht eine falsche Möglichkeit die Fähigeren an, ist das ein Grund, den Schlüssel anzusehen.
report-options-left-out = { $count } weitere mit wenigen Antworten sind hier ausgelassen; die Tabellen in CSV enthalten sie.
report-put-drill = { $answers ->
    [one] (1 Antwort aus { $exercises ->
        [one] 1 Aufgabe
       *[other] { $exercises } Aufgaben
     })
   *[other] ({ $answers } Antworten aus { $exercises ->
        [one] 1 Aufgabe
       *[other] { $exercises } Aufgaben
     })
 }
report-put-question = { $answers ->
    [one] (1 Antwort)
   *[other] ({ $answers } Antworten)
 }
report-options-of = Möglichkeiten von Item { $number }
report-option = Möglichkeit
report-offered = Angeboten
report-share = Anteil
report-right-elsewhere = Sonst richtig
report-right = richtig
report-chosen-times = { $count }-mal gewählt
report-no-options = Keine Antwort wird aus Möglichkeiten gewählt.
report-right-answer = die richtige Antwort
report-no-belief = eine falsche Antwort ohne benannten Irrtum
report-option-time = { $what } (Möglichkeit { $time } davon)

## Berichte: was die Zahlen bedeuten

report-read-facility = Lösungsgrad
report-read-facility-about = Mittlere Wertung eines Items. Von 20 % bis 95 % kann es Personen unterscheiden; was alle wissen müssen, darf durchaus darüber liegen.
report-read-discrimination = Trennschärfe
report-read-discrimination-about = Korrigierte punktbiseriale Korrelation: ob hier gut abschneidet, wer sonst gut abschneidet. Unter 0,20 trennt ein Item kaum; deutlich unter 0 kann der Schlüssel falsch sein.
report-read-alpha = Alpha und KR-20
report-read-alpha-about = Wie weit die Noten auf einem anderen Bogen dieser Art dieselben wären, bestenfalls 1; KR-20 zählt nur volle Wertung. Der Standardfehler sagt, wie weit eine Punktzahl danebenliegen kann: bei einer von drei Personen um mehr als das.
report-read-difficulty = Schwierigkeit
report-read-difficulty-about = Auf der Rasch-Skala, in Logits um 0: Bei einem Item der eigenen Stufe ist die Aussicht ein halb, bei einem um ein Logit leichteren fast drei Viertel.
report-read-fit = Infit, Outfit
report-read-fit-about = Etwa 1, wo die Antworten so unregelmäßig sind wie erwartet. Über 1,3 (t über 2) sind sie sprunghaft, unter 0,7 regelmäßiger, als eine Frage allein sein kann.
report-read-item = Item
report-read-item-about = Eine Übung mit allen ihren Aufgaben oder eine Frage der Fragensammlung. Die Zuverlässigkeit gilt den Plätzen auf dem Bogen.

## Berichte: die Seite einer lernenden Person

report-next = Was als Nächstes zu üben ist
report-practice = Übung
report-paper = Prüfung
report-sheet-of = { $blueprint }: { $result }
report-sheet-attempt = { $blueprint }, Versuch { $attempt }: { $result }
report-reread = Nachlesen: { $lessons }
report-then = Dann: { $command }
report-think-over = Des Nachdenkens wert
report-chosen-the-one = Gewählt in der einen Frage, die ihn anbot; blindes Raten würde ihn in { $guessing } wählen.
report-chosen-in = Gewählt in { $chosen } der { $offered } Fragen, die ihn anboten; blindes Raten würde ihn in { $guessing } wählen.
report-shown-freely = { $count ->
    [one] Gezeigt in 1 Antwort ohne Auswahl.
   *[other] Gezeigt in { $count } Antworten ohne Auswahl.
 }
report-every-skill = Jede Fertigkeit der Prüfung
report-every-skill-about = Der Punkt ist die mittlere Wertung, die Linie ihr wahrscheinlicher Bereich. Geordnet nach dem oberen Ende des Bereichs, damit nicht eine unglückliche Antwort vorne steht.
report-every-skill-about-group = Der Punkt ist die mittlere Wertung, die Linie ihr wahrscheinlicher Bereich, die senkrechte Linie die Gruppe. Geordnet nach dem oberen Ende des Bereichs, damit nicht eine unglückliche Antwort vorne steht.
report-every-skill-table = Jede Fertigkeit
report-group = Gruppe
report-decision-clear-passed = klar bestanden
report-decision-clear-failed = klar nicht bestanden
report-decision-close-passed = bestanden, innerhalb eines Standardfehlers um die Bestehensgrenze
report-decision-close-failed = nicht bestanden, innerhalb eines Standardfehlers um die Bestehensgrenze
report-decision-unknown-passed = bestanden; wie sicher das ist, lässt sich nicht sagen
report-decision-unknown-failed = nicht bestanden; wie sicher das ist, lässt sich nicht sagen

## Berichte: Sätze

report-note-empty = Es gibt noch keine Blätter: Es ist nichts zu berichten.
report-note-alone = Es ist nur eine Person: Niemand lässt sich vergleichen, und Fragen lassen sich nicht nach einer Antwort beurteilen.
report-note-few = Bei { $people } Personen ist jede Statistik von Fragen ein erster Blick: Etwa ab { $few } beginnt sie zu tragen.
report-note-again = Einige haben mehr als ein Blatt abgegeben. In der Statistik von Prüfungen und Fragen zählt jedes für sich, bei Fertigkeiten und Irrtümern zählen alle einer Person zusammen.
report-note-sets = { $count ->
    [one] Unter den Blättern ist 1 zugewiesener Aufgabensatz: Übung zählt für Fertigkeiten, Irrtümer und was als Nächstes zu üben ist, aber weder für Noten noch für die Statistik von Prüfungen und Fragen, weil sie in Ruhe beantwortet wurde.
   *[other] Unter den Blättern sind { $count } zugewiesene Aufgabensätze: Übung zählt für Fertigkeiten, Irrtümer und was als Nächstes zu üben ist, aber weder für Noten noch für die Statistik von Prüfungen und Fragen, weil sie in Ruhe beantwortet wurde.
 }
report-note-versions = Die Blätter stammen aus { $count } Fassungen des Kurses: Eine dazwischen geänderte Aufgabe zählt als eine.
report-note-changed = Der Kurs hat sich geändert, seit einige Prüfungsbogen gemacht wurden: Namen, Richtigstellungen und Lektionen sind hier die von heute.
report-note-no-answer = { $count ->
    [one] 1 Blatt hat keine Antwort, die zählt; daraus folgt nichts, weder dafür noch dagegen.
   *[other] { $count } Blätter haben keine Antwort, die zählt; daraus folgt nichts, weder dafür noch dagegen.
 }
report-all-right = Jede Antwort war ganz richtig: Keine Fertigkeit fällt auf.
report-weakest = { $answers ->
    [one] Schwächste Fertigkeit: { $skill }, { $share } der Wertung über 1 Antwort (wahrscheinlich { $low } bis { $high }).
   *[other] Schwächste Fertigkeit: { $skill }, { $share } der Wertung über { $answers } Antworten (wahrscheinlich { $low } bis { $high }).
 }
report-widespread = Am sichersten verbreiteter Irrtum: „{ $belief }“, gewählt in { $share } der Antworten, die ihn anboten (blindes Raten: { $guessing }).
report-more-stand-out = { $count ->
    [one] Ein weiterer fällt auf.
   *[other] { $count } weitere fallen auf.
 }
report-none-widespread = Soweit sich das sagen lässt, wird kein Irrtum öfter gewählt als durch blindes Raten.
report-again-drills = { $drills ->
    [one] Noch einmal anzusehen: 1 Übung; die Gründe stehen unten.
   *[other] Noch einmal anzusehen: { $drills } Übungen; die Gründe stehen unten.
 }
report-again-questions = { $questions ->
    [one] Noch einmal anzusehen: 1 Frage der Fragensammlung; die Gründe stehen unten.
   *[other] Noch einmal anzusehen: { $questions } Fragen der Fragensammlung; die Gründe stehen unten.
 }
report-again-both = Noch einmal anzusehen: { $drills ->
    [one] 1 Übung
   *[other] { $drills } Übungen
 } und { $questions ->
    [one] 1 Frage der Fragensammlung
   *[other] { $questions } Fragen der Fragensammlung
 }; die Gründe stehen unten.
report-again-nothing = Keine Übung und keine Frage muss noch einmal angesehen werden.
report-again-too-few = Noch hat keine Übung und keine Frage genug Antworten, um beurteilt zu werden.
report-paper-sheets = { $blueprint }: { $count ->
    [one] 1 Blatt
   *[other] { $count } Blätter
 }
report-paper-mean = mittlere Note { $mean } %
report-paper-passed = { $passed } von { $decided } bestanden
report-paper-passed-close = { $passed } von { $decided } bestanden ({ $close ->
    [one] 1 Blatt
   *[other] { $close } Blätter
 } innerhalb eines Standardfehlers um die Bestehensgrenze)
report-paper-alpha = Alpha { $alpha }, Standardfehler { $error } von { $items } Fragen
report-why = { $answers ->
    [one] { $share } der Wertung über 1 Antwort; wahrscheinlich zwischen { $low } und { $high }.
   *[other] { $share } der Wertung über { $answers } Antworten; wahrscheinlich zwischen { $low } und { $high }.
 }
report-why-below = { $answers ->
    [one] { $share } der Wertung über 1 Antwort; wahrscheinlich zwischen { $low } und { $high }, deutlich unter den { $group } der Gruppe.
   *[other] { $share } der Wertung über { $answers } Antworten; wahrscheinlich zwischen { $low } und { $high }, deutlich unter den { $group } der Gruppe.
 }
report-why-above = { $answers ->
    [one] { $share } der Wertung über 1 Antwort; wahrscheinlich zwischen { $low } und { $high }, über den { $group } der Gruppe, und doch ist hier am meisten zu gewinnen.
   *[other] { $share } der Wertung über { $answers } Antworten; wahrscheinlich zwischen { $low } und { $high }, über den { $group } der Gruppe, und doch ist hier am meisten zu gewinnen.
 }
report-next-no-answer = Es gibt noch keine Antwort, aus der sich lernen ließe.
report-next-one-right = Die eine Antwort war ganz richtig. Das ist zu wenig, um etwas zu raten.
report-next-all-right = Alle { $answers } Antworten waren ganz richtig: Nichts hier verlangt Übung. Was nicht gebraucht wird, wird vergessen; eine kurze Sitzung dann und wann erhält es.

## Berichte: warum eine Zahl fehlt, und warum ein Item noch einmal anzusehen ist

report-unreliable-repeats = Zuverlässigkeit gilt den Plätzen auf einem Bogen, nicht Übungen, die mehrmals gestellt werden
report-unreliable-few-questions = Zuverlässigkeit braucht mindestens zwei Fragen
report-unreliable-few-people = Zuverlässigkeit braucht mindestens zwei Personen, die alle { $items } Fragen beantwortet haben; hier sind es { $people }
report-unreliable-same-score = nichts unterscheidet die Personen: Alle haben dieselbe Punktzahl
report-no-links = Schwierigkeiten brauchen mindestens zwei Fragen, von denen Personen bald die eine, bald die andere richtig hatten
report-unsettled = die Schätzung der Schwierigkeiten kam zu keinem Ende
report-flag-few-answers = nur { $answers } Antworten: zu wenige, um es zu beurteilen (ab { $least })
report-flag-too-easy = zu leicht: mittlere Wertung { $facility }; es unterscheidet kaum jemanden
report-flag-too-hard = zu schwer: mittlere Wertung { $facility }
report-flag-below-guessing = { $right } hatten es richtig, weniger als die { $guessing } durch blindes Raten: Die Frage führt in die Irre, oder der Schlüssel ist falsch
report-flag-negative = Schwächere schneiden dabei besser ab als Stärkere (Trennschärfe { $discrimination }): den Schlüssel prüfen
report-flag-weak = es trennt Stärkere kaum von Schwächeren (Trennschärfe { $discrimination })
report-flag-draws-better = die falsche Möglichkeit „{ $option }“ zieht Bessere an ({ $rest } sonst richtig) als der Schlüssel ({ $key })
report-flag-unchosen = niemand von { $offered } wählte die Möglichkeit „{ $option }“: Sie verlockt niemanden
report-flag-erratic = die Antworten sind sprunghaft (mittleres Quadrat { $square }): Fähige verfehlen es, oder Schwache treffen es
report-flag-too-regular = die Antworten sind zu regelmäßig (mittleres Quadrat { $square }): Es wiederholt vielleicht, was andere Fragen fragen
report-flag-unlinked = keine Schwierigkeit: { $why }
report-unlinked-unanswered = niemand hat es beantwortet
report-unlinked-all-right = alle hatten es richtig: Es ist leichter, als diese Personen zeigen können
report-unlinked-none-right = niemand hatte es richtig: Es ist schwerer, als diese Personen zeigen können
report-unlinked-apart = zu wenige Antworten verbinden es mit den anderen Fragen
