# Was das Programm auf Deutsch sagt. Schreibweise: Project Fluent, dieselben Meldungen und Werte wie in en.ftl.

decimal-mark = ,

## Rahmen jeder Seite

frame-course = Kurs
frame-practice = Üben
frame-progress = Lernstand
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

## Wörter eines Falls: Haut, Zeiten, Mischungen

exercise-undertone-cool = kühl
exercise-undertone-neutral = neutral
exercise-undertone-warm = warm
exercise-undertone-olive = oliv
exercise-redness-calm = ruhig
exercise-redness-rosy = rosig
exercise-redness-flushed = gerötet
exercise-redness-ruddy = stark gerötet
exercise-case-now = { $client } jetzt
exercise-case-goal = Ziel: { $name }, erreicht bis ΔE00 { $tolerance }
exercise-case-skin = Phototyp { $phototype }, Unterton { $undertone }, Haut { $redness }
exercise-case-old-work = Alter: { $age }. { $note }
exercise-case-judged = { $when }, unter { $light }
exercise-case-placement = { $depth } mm tief, { $thickness } mm dick, Beladung { $load }, { $coverage } % der Fläche gedeckt
exercise-time-today = am selben Tag
exercise-time-healed = sechs Wochen
exercise-time-years = { $years ->
    [one] 1 Jahr
   *[other] { $years } Jahre
 }
exercise-time-months = { $months ->
    [one] 1 Monat
   *[other] { $months } Monate
 }
exercise-after-today = am selben Tag
exercise-after-healed = nach sechs Wochen
exercise-after-years = { $years ->
    [one] nach einem Jahr
   *[other] nach { $years } Jahren
 }
exercise-after-months = { $months ->
    [one] nach einem Monat
   *[other] nach { $months } Monaten
 }
exercise-drops = { $count ->
    [one] 1 Tropfen
   *[other] { $count } Tropfen
 } { $bottle }
exercise-row = { $first } und { $last }
exercise-goal = „{ $name }“ (L* { $l }; a* { $a }; b* { $b })

## Wozu eine Antwort führt

exercise-reaches = { $when }: { $reading }. Das Ziel ist erreicht (Farbabstand ΔE00 { $error }).
exercise-reaches-though = { $when }: { $reading }. Das Ziel ist erreicht, wenn auch ein wenig { $miss } (Farbabstand ΔE00 { $error }).
exercise-misses = { $when }: { $reading }. Das Ziel ist verfehlt (Farbabstand ΔE00 { $error }).
exercise-misses-how = { $when }: { $reading }. Das Ziel ist verfehlt: { $miss } (Farbabstand ΔE00 { $error }).
exercise-too-dark = zu dunkel
exercise-too-light = zu hell
exercise-too-red = zu rot
exercise-too-green = zu grün
exercise-too-yellow = zu gelb
exercise-too-blue = zu blau
exercise-too-grey = zu grau
exercise-too-strong = zu bunt
exercise-holds-restricted = Enthält { $colourant }, beschränkt ({ $place }, seit { $since }): { $rule } ({ $source }).
exercise-restricted = { $colourant }, { $place }, seit { $since }: { $rule } ({ $source })
exercise-colour = { $reading } (L* { $l }; a* { $a }; b* { $b })
exercise-several-right = Genau die, die zutreffen.
exercise-several-amiss = „{ $statement }“: { $why }
exercise-order-right = Die richtige Reihenfolge.
exercise-order-amiss = Ab Schritt { $turn } stimmt die Reihenfolge nicht: Dorthin gehört „{ $step }“. { $why }
exercise-number-right = Richtig ist { $number }. { $why }
exercise-not-answered = Nicht beantwortet.
exercise-not-a-mix = Keine zulässige Mischung: { $why }.
exercise-by-the-engine = vom Rechenwerk berechnet

## Warum etwas keine Antwort ist

exercise-asks-one = diese Aufgabe verlangt eine der Möglichkeiten
exercise-asks-several = diese Aufgabe verlangt alles, was zutrifft
exercise-asks-order = diese Aufgabe verlangt eine Reihenfolge
exercise-asks-drops = diese Aufgabe verlangt ganze Tropfen aus Flaschen
exercise-asks-number = diese Aufgabe verlangt eine Zahl
exercise-no-option = { $count ->
    [one] eine Möglichkeit { $number } gibt es nicht; es gibt nur 1
   *[other] eine Möglichkeit { $number } gibt es nicht; es gibt { $count }
 }
exercise-not-an-order = { $count ->
    [one] eine Reihenfolge nennt den Schritt einmal
   *[other] eine Reihenfolge nennt jeden der { $count } Schritte einmal
 }
exercise-not-a-number = die Antwort ist keine Zahl
exercise-no-bottle = eine Flasche `{ $bottle }` gibt es hier nicht; es gibt { $known }
exercise-other-total = { $given ->
    [one] 1 Tropfen ist angegeben
   *[other] { $given } Tropfen sind angegeben
 }; die Mischung hat { $wanted }
exercise-one-bottle = eine Mischung besteht aus einer Flasche und Tropfen von Korrektoren
exercise-many-modifiers = { $given } Tropfen von Korrektoren sind mehr als { $most }
exercise-course-changed = die Person, das Ziel oder die Lektion dieser Aufgabe gibt es im Kurs nicht mehr

## Eine Mischung wählen und auszählen

exercise-bottle-ask = { $client } wünscht sich { $goal }. Welche Mischung kommt dem am nächsten, { $when } beurteilt?
exercise-drops-ask = { $drops ->
    [one] { $client } wünscht sich { $goal }. Wählen Sie den einen Tropfen so, dass er dem möglichst nahe kommt, { $when } beurteilt.
   *[other] { $client } wünscht sich { $goal }. Mischen Sie { $drops } Tropfen so, dass sie dem möglichst nahe kommen, { $when } beurteilt.
 }

## Eine Farbe vorhersehen

exercise-foresight-ask = { $client } bekommt { $mix }. Welche Farbe wird die Arbeit { $when } haben?
exercise-foresight-right = { $when }, durch diese Haut gesehen.
exercise-foresight-fresh = So sieht es am selben Tag aus, mit Farbe in der Epidermis und geröteter Haut.
exercise-foresight-unfaded = So sieht es nach sechs Wochen aus, bevor die Farbmittel verblasst sind, jedes in seinem eigenen Tempo.
exercise-foresight-bare = Das wäre auf bloßer Haut zu sehen; die alte Arbeit darunter sieht man mit.
exercise-foresight-textbook = So heilt es auf der ruhigen, neutralen Haut aus dem Lehrbuch ab, die diese Person nicht hat.
exercise-foresight-little = Das wäre ein Viertel der Farbe. So blass kann es in der dritten Woche unter neuer Haut aussehen; sie kommt wieder.
exercise-foresight-bottle = Das ist die Farbe in der Flasche, ohne Haut darüber.

## Woher ein Rückstand kommt

exercise-hindsight-ask = { $client } kommt mit alter Arbeit, die so aussieht. Womit wurde sie höchstwahrscheinlich gemacht?
exercise-hindsight-left = Was bei { $client } übrig ist
exercise-hindsight-cause = { $years ->
    [one] { $mix }, vor einem Jahr
   *[other] { $mix }, vor { $years } Jahren
 }
exercise-hindsight-right = Dies bleibt davon übrig: { $reading }.
exercise-hindsight-label = Die Farbe in der Flasche ähnelt dem Rückstand, aber das ist nicht, was davon in der Haut bleibt. Übrig bliebe: { $reading }.
exercise-hindsight-healed = So sah es aus, als es abgeheilt war; seither ist jedes Farbmittel in seinem eigenen Tempo verschwunden. Übrig bliebe: { $reading }.
exercise-hindsight-blue = Die blaueste Farbe in der Flasche hinterlässt nicht unbedingt den blauesten Rückstand: Es ist Schwarz, das unter der Haut blau wird. Übrig bliebe: { $reading }.
exercise-hindsight-fresh = So sah es am Tag selbst aus; was in der Epidermis lag, wurde binnen Wochen abgestoßen. Übrig bliebe: { $reading }.
exercise-hindsight-textbook = In der ruhigen, neutralen Haut aus dem Lehrbuch bliebe das, was zu sehen ist; diese Person hat eine andere Haut. Hier bliebe übrig: { $reading }.

## Alte Arbeit korrigieren

exercise-remedy-ask = { $client } kommt mit alter Arbeit und wünscht sich { $goal }. Was tun Sie?
exercise-remedy-lighten = Noch keine Farbe einbringen: die alte Arbeit zuerst aufhellen oder entfernen lassen, von jemandem mit Zulassung dafür
exercise-remedy-lighten-right = Keine Ihrer Mischungen erreicht das Ziel über dieser Arbeit; durchscheinende Farbe kann nicht aufhellen. Über der Arbeit, auf etwa ein Zehntel aufgehellt, käme die beste Mischung dem Ziel bis auf ΔE00 { $distance } nahe. Eisenoxid und Titanweiß können unter dem Laser nachdunkeln: zuerst eine Probestelle, durch jemanden mit Zulassung, nach den Vorschriften an Ihrem Ort.
exercise-remedy-lighten-needless = Hier erreicht Farbe allein das Ziel. Das Aufhellen würde der Haut eine Behandlung zumuten, die sie nicht braucht, und Eisenoxid oder Titanweiß können unter dem Laser nachdunkeln.
exercise-remedy-lighten-unsafe = Nicht, bevor dies geklärt ist: { $caution }. { $say }
exercise-remedy-refrain = Heute nichts an der Haut tun: erklären, warum, und weiterverweisen oder warten, bis es geklärt ist
exercise-remedy-wait = Warten: { $caution }. { $say } Wer zu fragen ist: { $who }. Farbe kommt danach. Quelle: { $source }.
exercise-remedy-refer = Weiterverweisen: { $caution }. { $say } Wer zu fragen ist: { $who }. Farbe kommt danach. Quelle: { $source }.
exercise-remedy-refrain-needless = Nichts in den Angaben zur Gesundheit verlangt das. Es schadet nicht, aber die Person geht ohne die Hilfe, die möglich wäre.
exercise-remedy-unsafe = Nicht sicher, wozu es auch abheilen würde: { $caution }. { $say } Wer zu fragen ist: { $who }.

## Haut lesen

exercise-skin-ask = Dies ist die bloße Haut von { $client }. Welche Deutung von Unterton und Rötung passt am besten dazu?
exercise-skin-pair = Unterton { $undertone }, Haut { $redness }
exercise-skin-right = Von allen Paaren aus Unterton und Rötung kommt dieses der gezeigten Haut am nächsten.
exercise-skin-red = Was hier rot ist, ist Blut und kein kühler Unterton: Auf Druck verblasst es.
exercise-skin-pink = Das Rosa liegt im Unterton; Druck ändert es kaum.
exercise-skin-dark = Dunkel heißt nicht warm: b* sagt, wie golden eine Haut ist, bei jedem L*.
exercise-skin-olive = Sie ist gelb, aber ihr fehlt das Rot, das sie golden machen würde.
exercise-skin-golden = Sie ist gelb, und sie hat das Rot, das olivfarbener Haut fehlt.
exercise-skin-flush = So sieht sie nach einem schnellen Gang aus; nach zehn Minuten noch einmal beurteilen.
exercise-skin-light = Helligkeit ist L*; kühl ist Haut, der Gelb fehlt, und diese Haut hat ihr Gelb.
exercise-skin-leans = Sie neigt zu einer Seite: a* und b* mit denen neutraler, ebenso heller Haut vergleichen.
exercise-angle-ask = Ein Messgerät zeigt auf der bloßen Haut von { $client } L* { $l } und b* { $b } an. Wie groß ist der individuelle typologische Winkel, in Grad?
exercise-angle-name = individueller typologischer Winkel
exercise-angle-why = ITA = arctan((L* - 50) / b*) = arctan({ $above } / { $b }).
exercise-angle-upside-down = Der Bruch steht auf dem Kopf: L* minus 50 gehört über b*.
exercise-angle-without-fifty = Von L* sind zuerst 50 abzuziehen: Der Winkel zählt vom mittleren Grau aus.
exercise-angle-radians = Das ist der Winkel im Bogenmaß; in Grad sind es 180/π-mal so viel.
exercise-angle-source = ITA nach der Definition von Chardon, Cretois und Hourseau (1991)

## Anderes Licht

exercise-lamp-ask = Diese Arbeit bei { $client } wurde { $when } bei Tageslicht beurteilt. Wie sieht sie bei { $lamp } für ein Auge aus, das sich an dieses Licht gewöhnt hat?
exercise-lamp-d65 = Tageslicht (D65)
exercise-lamp-a = Glühlampenlicht (A)
exercise-lamp-led-b3 = LED-Licht im Studio (LED-B3)
exercise-lamp-fl2 = Kaltweiß-Leuchtstofflicht (FL2)
exercise-lamp-day = Die Arbeit bei Tag: { $mix }
exercise-lamp-right = So sieht das Auge sie, sobald es sich an dieses Licht angepasst hat.
exercise-lamp-same = Das ist ihre Farbe bei Tag. Ein anderes Licht beleuchtet einen anderen Teil ihres Spektrums.
exercise-lamp-opposite = Die Farbe verschiebt sich, aber in die andere Richtung.
exercise-lamp-double = In diese Richtung verschiebt sich die Farbe, aber nur halb so weit: Den Rest macht die Kamera aus der Lampe.
exercise-lamp-softens = Weiches Licht verbirgt Ränder. Die Farbe hat sich verschoben, ist aber so kräftig wie zuvor.
exercise-lamp-tint = Das ist der Farbstich der Lampe selbst. Das Auge passt sich ihm in wenigen Minuten an, eine Kamera vielleicht nicht.

## Sicherheit

exercise-triage-ask = { $client } möchte die Arbeit heute machen lassen. Was tun Sie?
exercise-triage-go-on = Beginnen: Verträglichkeitsprobe, Einwilligung und Aufzeichnungen wie immer
exercise-triage-nothing = Nichts in den Angaben zur Gesundheit verlangt, zu warten oder weiterzuverweisen.
exercise-triage-unsafe = Nicht sicher. { $why }
exercise-triage-wait = Warten und erklären, warum; bei Fragen: { $who }
exercise-triage-refer = Heute nicht arbeiten; weiterverweisen an: { $who }
exercise-triage-reason = { $caution }: { $say } Wer zu fragen ist: { $who }. Quelle: { $source }.
exercise-triage-advise = Der Person raten, was dagegen zu tun ist, und weitermachen, sobald es getan ist
exercise-triage-two-weeks = Zwei Wochen warten und weitermachen, wenn sich die Person wohlfühlt
exercise-triage-signed = Die Person für das Risiko unterschreiben lassen und weitermachen
exercise-triage-safe-side = Zur Sicherheit zwei Wochen warten
exercise-triage-signed-needless = Weitermachen; mit unterschriebener Einwilligung braucht es weder Verträglichkeitsprobe noch Aufzeichnungen
exercise-triage-source = die Liste der Vorsichtshinweise im Kurs
exercise-caution = { $why } Vorsicht: { $caution }. Wer zu fragen ist: { $who }.

## Aufzeichnungen des Übens, die nicht brauchbar sind

exercise-record-none = das ist keine Aufzeichnung eines Lernstands: { $why }
exercise-record-newer = diese Aufzeichnung hat das Format { $found }; dieses Programm liest höchstens { $known }: Nehmen Sie das Programm, das sie geschrieben hat, oder ein neueres
exercise-record-unused = der Lernstand in `{ $skill }` ist unbrauchbar und gilt als leer: { $why }
exercise-record-no-object = das ist kein JSON-Objekt
exercise-record-known = `known` ist { $known }, nicht von 0 bis 1
exercise-record-credit = `credit` ist { $credit }, nicht von 0 bis zur Zahl der Antworten, { $answers }
## Was um jede Seite steht

frame-skip = Zum Text springen
frame-navigation = Hauptnavigation
frame-way = Standort
frame-promise = Vorhersagen dienen dem Lernen und sind nie ein Versprechen, wie es bei einem Menschen wird. Bildschirme und Drucker geben Farben verschieden wieder: Lesen Sie die Wörter und Zahlen neben jedem Farbmuster. <a href="{ $model }">Was das Modell weiß und was nicht</a>.
frame-promise-display = Vorhersagen dienen dem Lernen und sind nie ein Versprechen, wie es bei einem Menschen wird. Bildschirme und Drucker geben Farben verschieden wieder: Lesen Sie die Wörter und Zahlen neben jedem Farbmuster, und <a href="{ $display }">prüfen Sie Ihren Bildschirm</a>. <a href="{ $model }">Was das Modell weiß und was nicht</a>.
frame-no-advice = Nichts davon ist medizinischer Rat. Es entscheiden die örtlichen Vorschriften und zugelassene Fachkräfte. <a href="{ $href }">Was in diesem Kurs zur Vorsicht mahnt</a>.
frame-version = { $course }, Fassung { $version }

## Zahlen, Zeiten und Aufzählungen

figure-percent = { $number } %
figure-minutes = { $minutes } Min.
figure-hours = { $hours } Std.
figure-hours-minutes = { $hours } Std. { $minutes } Min.
figure-next = { $before }; { $next }
figure-and = { $others } und { $last }
figure-extent = { $modules ->
    [one] { $modules } Modul
   *[other] { $modules } Module
 }, { $lessons ->
    [one] { $lessons } Lektion
   *[other] { $lessons } Lektionen
 }, { $time }
time-on-the-day = am selben Tag
time-healed = nach sechs Wochen
time-months = { $count ->
    [one] nach 1 Monat
   *[other] nach { $months } Monaten
 }
time-years = { $years ->
    [one] nach 1 Jahr
   *[other] nach { $years } Jahren
 }
age-on-the-day = Vom selben Tag. { $note }
age-healed = Sechs Wochen alt. { $note }
age-months = { $count ->
    [one] 1 Monat
   *[other] { $months } Monate
 } alt. { $note }
age-years = { $years ->
    [one] 1 Jahr
   *[other] { $years } Jahre
 } alt. { $note }

## Was das Rechenwerk unterscheidet

term-light-d65 = Tageslicht (D65)
term-light-a = Glühlampenlicht (A)
term-light-led-b3 = weißes LED-Licht (LED-B3)
term-light-fl2 = kaltes Leuchtstofflampenlicht (FL2)
term-in-light-d65 = bei Tageslicht (D65)
term-in-light-a = bei Glühlampenlicht (A)
term-in-light-led-b3 = bei weißem LED-Licht (LED-B3)
term-in-light-fl2 = bei kaltem Leuchtstofflampenlicht (FL2)
term-basis-measured = gemessen
term-basis-published = veröffentlicht
term-basis-representative = repräsentativ
term-skin = Fototyp { $phototype }, { $undertone }, { $redness }
term-undertone-cool = kühler Unterton
term-undertone-neutral = neutraler Unterton
term-undertone-warm = warmer Unterton
term-undertone-olive = olivfarbener Unterton
term-redness-calm = ruhig
term-redness-rosy = rosig
term-redness-flushed = gerötet
term-redness-ruddy = stark gerötet
term-ita-very-light = sehr hell
term-ita-light = hell
term-ita-intermediate = mittel
term-ita-tan = gebräunt
term-ita-brown = braun
term-ita-dark = dunkel
term-site-brow = Augenbraue
term-site-eyelid = Augenlid
term-site-lip = Lippe
term-site-areola = Warzenhof
term-site-scalp = Kopfhaut
term-class-white = Weiß
term-class-iron-oxide = Eisenoxid
term-class-chromium-oxide = Chromoxid
term-class-carbon = Kohlenstoff
term-class-organic = organisch
term-class-other-inorganic = sonstig anorganisch
term-class-mixture = Mischung

## Farbmuster

swatch-lab = L*&nbsp;{ $l }; <span>a*&nbsp;{ $a };</span> <span>b*&nbsp;{ $b }</span>
swatch-lab-plain = L*&nbsp;{ $l }; a*&nbsp;{ $a }; b*&nbsp;{ $b }
swatch-beyond = von diesem Bildschirm nicht darstellbar: die nächstliegende Farbe, die er zeigen kann
swatch-bare = { $label }: unbehandelte Haut
swatch-bottle = { $name }: die Farbe in der Flasche
swatch-in-bottle = In der Flasche
swatch-work = { $label }: { $words }
swatch-goal = Ziel: { $name }
swatch-goal-within = erreicht bis ΔE00 { $distance }

## Aufgaben auf Seiten und auf Papier

question-old-work = Altpigmentierung
question-health = Gesundheit
question-belief = Verlockender Irrtum
question-truth = Was wirklich geschieht
question-belief-more = Mehr zu diesem Irrtum
question-restricted = <strong>Eingeschränkt.</strong> { $rule }.
question-reread = Zum Nachlesen: <a href="{ $href }">{ $title }</a>
question-holds = trifft zu
question-holds-not = trifft nicht zu
question-best = beste Antwort, Wertung { $credit }
question-credit = Wertung { $credit }
question-modifier = Korrektor
question-title = Aufgabe { $number }
question-health-first = Die Gesundheit geht vor: Gibt eine Auskunft Anlass zur <a href="{ $href }">Vorsicht</a>, wiegt sie schwerer als jede Farbe.
question-mark = Antwort bewerten
question-again = Noch einmal
question-answers-healed = Antworten und wie jede abheilen würde
question-answers-seen = Antworten und wie jede aussehen würde
question-answers-why = Antworten und Begründungen
question-order = Die richtige Reihenfolge: <strong>{ $key }</strong>.
question-proved = Wie das bewiesen wurde: { $proof }
question-source = Quelle: { $source }. Aufgabe { $identity }.
question-choose-one = Eine Antwort wählen.
question-choose-several = Alle wählen, die zutreffen.
question-number-steps = Die Schritte in ihrer Reihenfolge nummerieren.
question-drops = Eine Flasche, insgesamt { $drops } Tropfen, davon höchstens { $modifiers } von Korrektoren.
question-number = Gesucht: { $name } in { $unit }.
question-step = Schritt { $turn }. { $why }
question-best-heals-to = Wie die beste Antwort abheilt
question-heals-to = Wie das abheilt
question-would-look = Wie das aussehen würde
question-really-seen = Was wirklich zu sehen ist
question-is-really-seen = was wirklich zu sehen ist
question-from-goal = ΔE00 { $distance } vom Ziel
question-from-seen = ΔE00 { $distance } von dem, was wirklich zu sehen ist
question-skin = Haut
question-hair = Behaarung
question-placement = Pigmentierung
question-judged = Beurteilt
question-judged-at = { $time }, { $light }
question-placed = { $depth } mm tief, { $thickness } mm dick, ein voller Durchgang, { $coverage } der Fläche gedeckt
question-placed-load = { $depth } mm tief, { $thickness } mm dick, Pigmentmenge { $load }, { $coverage } der Fläche gedeckt
question-skin-now = Die Haut jetzt: { $name }
question-as-now = { $name }, so wie es jetzt ist
question-rule = { $colourant }, { $place }: { $rule }
question-proof-seen = Das Rechenwerk hat jede Antwort berechnet. Die nächste falsche liegt ΔE00 { $margin } entfernt; was wirklich zu sehen ist, bleibt in { $held } von { $worlds } Versuchen mit veränderter Haut, Tiefe und Pigmentmenge der richtigen am nächsten.
question-proof-best = Von { $searched } durchprobierten Mischungen kommt keine dem Ziel näher als ΔE00 { $error }. Die beste bleibt in { $held } von { $worlds } Versuchen mit veränderter Haut, Tiefe und Pigmentmenge die beste.
question-proof-margin = Von { $searched } durchprobierten Mischungen kommt keine dem Ziel näher als ΔE00 { $error }. Die nächste falsche Antwort ist um { $margin } schlechter. Die beste bleibt in { $held } von { $worlds } Versuchen mit veränderter Haut, Tiefe und Pigmentmenge die beste.

## Texte des Kurses

text-no-exercises = Die Aufgaben dieser Übung sind nicht Teil dieser Ausgabe.
text-neighbours = Davor und danach
text-before = Davor
text-after = Danach
text-print = Zum Drucken:
text-outline = Auf dieser Seite
text-caution = Vorsicht
text-picture = Bild:
text-table = Tabelle
text-worksheet = Arbeitsblatt
text-key = Lösungen zum Arbeitsblatt
text-module = Modul { $number }
text-lessons = Lektionen
text-lesson = Lektion { $number }
text-objectives = Nach dieser Lektion können Sie
text-needs = Vorher lesen
text-skills = Übt
text-practice = Mehr davon, frisch erstellt: <a href="{ $href }">diese Lektion üben</a>.

## Startseite

home-begin = Hier beginnen:
home-example = Eine Flasche, { $bottle }, und wie sie nach sechs Wochen auf verschiedener Haut abgeheilt ist
home-modules = Was Sie lernen
home-instructors = Für Lehrkräfte
home-instructors-about = Seiten zum Planen und Unterrichten und leere Blätter zum Drucken.
home-cautions = Bevor Sie etwas in die Haut eines Menschen bringen
home-cautions-about = Nadeln, Blut und Augen sind keine Kleinigkeit. Fragen Sie nach Allergien und testen Sie darauf, beugen Sie Infektionen vor, und warten Sie oder verweisen Sie weiter, wo die Gesundheit es verlangt: Unter <a href="{ $href }">Vorsicht</a> steht, was üblich ist. Dieser Kurs gibt keinen medizinischen Rat. Was Sie tun dürfen, und bei wem, bestimmen die örtlichen Vorschriften und Ihre Zulassung.
home-model = Jede Farbe hier ist von einem <a href="{ $href }">Modell des Pigments in der Haut</a> berechnet. Es lehrt, in welche Richtung es geht und ungefähr wie weit. Es verspricht nie, wie es bei einem Menschen wird.
home-syllabus = Lehrplan mit Unterrichtshinweisen zu jedem Modul
home-swatch-book = Musterbuch: ein leeres Blatt
home-consultation = Beratung: ein Blatt für das erste Gespräch
home-correction-planner = Korrekturplan: ein leeres Blatt
home-sources = Quellen dieses Kurses und seines Rechenwerks

## Die Seite über das Modell

model-title = Über das Modell
model-description = Wie die Farben in diesem Kurs vorhergesagt werden und was die Vorhersage nicht weiß.
model-lead = Niemand sieht je Pigment für sich allein. Die Farbmuster und Wertungen in diesem Kurs stammen aus einer Rechnung, die dem Licht in die Haut und wieder heraus folgt.
model-steps = Wie eine Farbe vorhergesagt wird
model-marks = Wie eine Antwort bewertet wird
model-limits = Was das Modell nicht weiß
model-screens = Was Bildschirm und Drucker nicht versprechen können
model-words = Gemessen, veröffentlicht, repräsentativ
model-sources = Quellen
model-teaching = <strong>Vorhersagen dienen dem Lernen und sind nie ein Versprechen, wie es bei einem Menschen wird.</strong> Zeigen Sie sie niemandem als ein solches.
model-step-skin = <strong>Haut wird zu Zahlen.</strong> Sechs für jeden Menschen: Melanin, Blut, wie viel des Blutes Sauerstoff trägt, wie stark die Haut streut, was sie sonst absorbiert und wie weit ihre Gefäße sind. Für die erfundenen Personen sind sie aus Fototyp, Unterton und Rötung geschätzt.
model-step-pigment = <strong>Pigment wird zu Zahlen.</strong> Für jedes Farbmittel, wie viel Licht es bei jeder Wellenlänge absorbiert und wie viel es streut. Eine Mischung ist die Summe dessen, was ihre Tropfen enthalten.
model-step-time = <strong>Zeit vergeht.</strong> Am selben Tag liegt ein Teil der Farbe in der Oberhaut, und die Haut ist rot; nach sechs Wochen hat die Oberhaut ihn abgestoßen. Danach schwindet jedes Farbmittel in seinem eigenen Tempo, und feiner Kohlenstoff wandert tiefer.
model-step-light = <strong>Licht geht hindurch.</strong> Die Haut wird in Schichten geteilt, und das zurückkehrende Licht wird in { $bands } Bändern von 400 bis 700 nm berechnet, mit jeder Streuung hin und her zwischen den Schichten.
model-step-eye = <strong>Ein Auge sieht hin.</strong> Aus dem Spektrum werden unter einem genannten Licht L*, a* und b*, die Wörter unter einem Farbmuster und die nächstliegende Farbe, die ein Bildschirm zeigen kann.
model-layers = Die Schichten des Modells
model-layer = Schicht
model-layer-content = Was darin ist
model-layer-surface = Oberfläche
model-layer-surface-content = eine glatte Grenzfläche, die ein wenig Licht zurückwirft
model-layer-epidermis = Oberhaut (Epidermis)
model-layer-epidermis-content = Melanin; an der Augenbraue weniger als ein Zehntelmillimeter
model-layer-upper = obere Lederhaut (Dermis)
model-layer-upper-content = Blut und das Gewebe darum, bis hinab zur Pigmentierung
model-layer-work = Die Pigmentierung
model-layer-work-content = dieselbe Lederhaut mit Farbmitteln, alten und neuen zusammen
model-layer-deep = tiefe Lederhaut
model-layer-deep-content = wie oben, so dick, dass unten kein Licht austritt
model-marks-goal = Es wird in keiner Liste richtiger Antworten nachgeschlagen. Ihre Antwort wird in die Haut der Person gebracht, heilt ab und wird mit dem Ziel verglichen. Der Farbabstand ist CIEDE2000, geschrieben ΔE00: Etwa 1 ist das Kleinste, was ein geübtes Auge nebeneinander sieht. Die Wertung sinkt, je weiter der Abstand über das Bestmögliche hinausgeht. Wo es um die Gesundheit geht, ist eine Antwort richtig oder sie ist es nicht.
model-marks-proof = Eine Aufgabe wird nur gezeigt, wenn sie bewiesen ist: Jede Mischung, die Sie hätten ansetzen können, wurde durchprobiert, jede falsche Antwort ist um einen sichtbaren Abstand schlechter, und die beste bleibt in mindestens 95 % von 200 Versuchen die beste, in denen Haut, Tiefe und Menge anderthalbmal so weit schwanken wie in der Praxis.
model-limit-client = <strong>Ihre Kundschaft.</strong> Haut unterscheidet sich auf Weisen, die niemand vorher sieht: Heilung, Talg, Sonne, Alter, Pflege, Krankheit, Narben.
model-limit-bottles = <strong>Ihre Flaschen.</strong> Die Farbmittel hier haben glatte, repräsentative Kurven. Eine Akademie kann ihre eigenen Messungen an deren Stelle setzen. Hersteller ändern Rezepturen.
model-limit-hand = <strong>Ihre Hand.</strong> Tiefe und Menge sind hier Zahlen. In Wirklichkeit ändern sie sich von Strich zu Strich.
model-limit-texture = <strong>Struktur.</strong> Eine Augenbraue wird als eine gleichmäßige Farbe vorhergesagt. Striche, Poren und Haare sind nicht gezeichnet.
model-limit-harm = <strong>Schaden.</strong> Allergie, Infektion und Narbenbildung gehören nicht dazu. Dafür gibt es die Seite <a href="{ $href }">Vorsicht</a>.
model-limit-time = <strong>Wie lange genau.</strong> Die Reihenfolge, in der Farbmittel schwinden, ist allgemeine Erfahrung. Die Monate sind repräsentativ.
model-limit-compared = Noch hat niemand die abgeheilten Farben des Modells mit einer großen Zahl abgeheilter Augenbrauen verglichen. Es zeigt, in welche Richtung es geht und ungefähr wie weit. Zwischen zwei Mischungen, die dicht beieinanderliegen, vertrauen Sie einem Muster auf Übungshaut und Ihren Augen.
model-screens-about = Jeder Bildschirm zeigt Farben ein wenig anders und ändert sich mit seiner Helligkeit, seinem Alter, einem Nachtmodus und dem Licht im Raum. Drucker weichen stärker ab. Darum trägt jedes Farbmuster Wörter und Zahlen und liegt bei Tag und Nacht auf demselben neutralen Grau. Eine Farbe, die kein gewöhnlicher Bildschirm zeigen kann, ist gekennzeichnet und als die nächstliegende gezeichnet. Vergleichen Sie Farbmuster miteinander, nicht mit Haut.
model-screens-check = <a href="{ $href }">Prüfen Sie Ihren Bildschirm</a>, bevor Sie urteilen.
model-screens-white = L*, a* und b* beziehen sich auf das Weiß des genannten Lichts; sie beschreiben also, was ein Auge sieht, das sich an dieses Licht gewöhnt hat.
model-words-about = In der <a href="{ $href }">Tabelle der Farbmittel</a> sagt jeder Eintrag, woher seine Zahlen stammen. <em>Gemessen</em>: von der Akademie. <em>Veröffentlicht</em>: aus einer genannten Quelle. <em>Repräsentativ</em>: plausibel, für den Unterricht erfunden.
model-source-layers = Licht zwischen Schichten: Adding-Doubling-Verfahren nach van de Hulst; Prahl, van Gemert und Welch, <cite>Applied Optics</cite>, 1993.
model-source-tissue = Melanin und blutleeres Gewebe: S. L. Jacques, 1998. Streuung der Haut: S. L. Jacques, <cite>Physics in Medicine and Biology</cite>, 2013.
model-source-blood = Blut: Zusammenstellung von Hämoglobinspektren von S. Prahl. Blut in Gefäßen: van Veen, Verkruysse und Sterenborg, 2002.
model-source-covered = Teilweise gedeckte Haut: Yule und Nielsen, 1951.
model-source-colour = Farbe: CIE 15:2018; CIELAB, ISO/CIE 11664-4; CIEDE2000, ISO/CIE 11664-6. Bildschirme: sRGB, IEC 61966-2-1.
model-source-angle = Typologiewinkel: Chardon, Cretois und Hourseau, 1991; Del Bino und Bernerd, 2013.
model-source-fading = Verblassen, Wandern und Heilung: allgemeine Erfahrung, keine Quelle.

## Flaschen

bottles-description = Jede Flasche des Kurses: ihre Farbe, ihre Farbmittel mit Colour-Index-Namen und wo sie eingeschränkt sind.
bottles-restricted = <strong>Eingeschränkt: { $place }.</strong> { $index }: { $rule }, seit { $since }. Quelle: { $source }.
bottles-lead = Was in jeder Flasche dieses Kurses ist. Das Farbmuster zeigt die Farbe in der Flasche: Pigment ohne Haut. So heilt es nicht ab.
bottles-about = Farbmittel stehen mit ihren Colour-Index-Namen da, wie ein Hersteller sie angeben muss, und jedes mit seinem Anteil am Pigment. Die Halbwertszeit ist die Zeit, nach der vom Abgeheilten die Hälfte übrig ist. Als <em>repräsentativ</em> gekennzeichnete Zahlen sind plausibel und nicht gemessen: siehe <a href="{ $href }">Über das Modell</a>. Regeln sind von Ort zu Ort verschieden und ändern sich: Sehen Sie in den örtlichen Vorschriften nach, bevor Sie etwas kaufen oder verwenden.
bottles-go-to = Weiter zu:
bottles-table = <a href="#colourants_">Tabelle der Farbmittel</a>
bottles-no-line = Ohne Linie
bottles-size = { $bottles ->
    [one] { $bottles } Flasche
   *[other] { $bottles } Flaschen
 }
bottles-size-modifiers = { $modifiers ->
    [one] { $modifiers } Korrektor
   *[other] { $modifiers } Korrektoren
 }
bottles-modifier-warmer = Ein Korrektor: Er macht eine Mischung wärmer und wird nie allein verwendet.
bottles-modifier-cooler = Ein Korrektor: Er macht eine Mischung kühler und wird nie allein verwendet.
bottles-modifier-darker = Ein Korrektor: Er macht eine Mischung dunkler und wird nie allein verwendet.
bottles-modifier-lighter = Ein Korrektor: Er macht eine Mischung heller und wird nie allein verwendet.
bottles-sites = Gedacht für: { $sites }.
bottles-contents = Was in { $name } ist
bottles-content = <strong>{ $share }</strong> <a href="{ $href }">{ $index }</a> { $name }, Halbwertszeit { $months } Monate
bottles-whole = die Farbe als Ganzes
bottles-colourants = Farbmittel
bottles-colourant = Klasse: { $class }. Halbwertszeit: { $months } Monate. Wandert tiefer: { $drift }. Grundlage: { $basis }.
bottles-in-bottles = In:
bottles-drift = { $distance } mm
bottles-hardly = kaum
bottles-without-skin = Die Farbe ist die in der Flasche, ohne Haut.
bottles-listed = { $title }, als Tabelle
bottles-bottle = Flasche
bottles-by-share = Farbmittel nach Anteil
bottles-modifier = Korrektor.
bottles-restricted-in = <strong>Eingeschränkt ({ $place }):</strong> { $index }

## Kundschaft

clients-description = Die erfundene Kundschaft des Kurses: Haut, Behaarung, Wünsche, Auskünfte zur Gesundheit und Altpigmentierungen.
clients-lead = Alle hier sind erfunden. Ähnelt ihnen jemand aus Ihrer Kundschaft, gehen Sie von diesem Menschen aus.
clients-angle = Der Fototyp betrifft die Sonne, der Typologiewinkel die Farbe
clients-angle-about = Der Fototyp (Fitzpatrick I bis VI) hält fest, wie Haut auf Sonne reagiert. Der individuelle Typologiewinkel, ITA, wird aus L* und b* der unbehandelten Haut berechnet; je größer er ist, desto heller die Haut. Wo Menschen gemessen wurden, hängen beide nur schwach zusammen; keiner ersetzt also den anderen. Die Tabelle geht von der hellsten Haut zur tiefsten, und die Fototypen folgen dem nicht ganz. Auch das untertreibt, wie weit beide auseinandergehen: Die Haut dieser Personen wurde aus Fototyp, Unterton und Rötung geschätzt, was beide näher beieinander erscheinen lässt, als sie sind.
clients-angle-table = Fototyp und Typologiewinkel aller Personen
clients-client = Person
clients-phototype = Fototyp
clients-ita-class = ITA-Klasse
clients-seen = Gesehen
clients-site = Stelle
clients-no-caution = keine Auskunft, die zur Vorsicht mahnt
clients-caution = <strong>Vorsicht.</strong> { $note } Siehe <a href="{ $href }">{ $caution }</a>.
clients-bare = Unbehandelte Haut
clients-now = So wie es jetzt ist

## Irrtümer

misconceptions-description = Irrtümer, die zu falschen Farben führen: warum jeder verlockt und was wirklich geschieht.
misconceptions-lead = Falsche Gedanken, die richtig klingen. Fast jede falsche Antwort in den Aufgaben kommt von einem davon.
misconceptions-tempting = Warum es verlockt
misconceptions-lesson = Lektion

## Glossar

glossary-description = Die Wörter des Fachs und dieses Kurses, jedes in ein, zwei Sätzen.
glossary-letters = Buchstaben
glossary-see = Siehe auch:

## Vorsicht

cautions-description = Was eine Fachkraft üblicherweise warten oder weiterverweisen lässt. Kein medizinischer Rat.
cautions-lead = Was eine Fachkraft üblicherweise warten oder weiterverweisen lässt. Es dient dem Lernen. Es ist weder medizinischer Rat noch Recht, und keine Liste ist vollständig.
cautions-about = Weist eine Auskunft auf etwas davon hin, halten Sie dort freundlich inne, bis jemand mit der nötigen Befugnis zugestimmt hat. Stellen Sie keine Diagnose. Raten Sie nichts zu Medikamenten, und bitten Sie nie jemanden, eines wegzulassen. Rufen Sie im Notfall den Rettungsdienst. Die örtlichen Vorschriften haben das letzte Wort.
cautions-wait = Warten
cautions-refer = Weiterverweisen
cautions-refer-to = Wer mehr sagen kann: { $whom }.
cautions-source = Quelle: { $source }.

## Die Prüfung des Bildschirms

display-title = Den Bildschirm prüfen
display-description = Was Ihr Bildschirm von dunklen, hellen, fast neutralen und Hautfarben zeigt und was er nicht kann.
display-from-left = Von links: { $steps }.
display-lead = Zwei Minuten, bevor Sie Farben beurteilen: was Ihr Bildschirm zeigt, was er verbirgt und was kein Bildschirm versprechen kann.
display-tints = Schalten Sie alles ab, was den Bildschirm tönt: Nachtmodus, Lesemodus, Stromsparen, automatische Helligkeit.
display-room = Keine Sonne und keine farbige Lampe auf dem Bildschirm. Am besten ist ein Raum, der etwas dunkler ist als das Weiß des Bildschirms.
display-rest = Lassen Sie die Augen eine Minute lang auf dem Grau ruhen.
display-dark = Dunkle Stufen
display-dark-about = Felder auf Schwarz. Können Sie das dritte nicht vom Grund unterscheiden, ist der Raum zu hell für den Bildschirm, oder der Bildschirm schluckt Dunkles: Tiefe Brauntöne und Schwarz werden hier gleich aussehen.
display-light = Helle Stufen
display-light-about = Felder auf Weiß. Können Sie das dritte nicht vom Grund unterscheiden, verliert sehr helle Haut ihre Unterschiede.
display-neutral = Fast neutrale Stufen
display-neutral-about = Felder auf dem Grau, das jedes Farbmuster umgibt, um je 2 und 4 in a* oder b* verschoben. Das Grau soll nach gar nichts aussehen, weder rosa noch grün noch blau. Sind alle Felder um 4 unsichtbar, urteilen Sie auf diesem Bildschirm nicht über aschig gegen neutral; wirkt das Grau selbst getönt, dann ist es der Bildschirm.
display-skin = Stufen auf Haut
display-skin-about = Dunklere Felder auf der Haut von drei Personen. Etwa ΔE00 1 ist das Kleinste, was ein geübtes Auge nebeneinander sieht; ein deutlicher Unterschied ist in diesem Kurs 2 oder mehr. Ab welchem Feld sehen Sie ihn?
display-print = Ein Ausdruck daneben
display-print-about = Drucken Sie diese Seite, und betrachten Sie den Ausdruck bei Tageslicht neben dem Bildschirm. Vergleichen Sie jedes Feld mit seinem Nachbarn auf dem Papier, dann auf dem Bildschirm: Die <em>Stufen</em> sollten gleich sein. Die Farben selbst werden es nicht sein. Papier wird von Ihrer Lampe beleuchtet, ein Bildschirm leuchtet selbst, und jeder Drucker und jedes Papier ist anders. In Schwarz-Weiß sagen die Zahlen unter jedem Farbmuster immer noch, was Sie brauchen.
display-reach = Was sRGB nicht zeigen kann
display-reach-about = Die Seiten geben Farben in sRGB an, dem Farbraum, den gewöhnliche Bildschirme anstreben (IEC 61966-2-1). Abgeheilte Haut ist ein stiller Gegenstand: Von den { $healed } abgeheilten Farben jeder Flasche für sich bei jeder Person dieses Kurses { $healed_beyond ->
    [0] liegen alle innerhalb von sRGB
    [one] liegt { $healed_beyond } außerhalb
   *[other] liegen { $healed_beyond } außerhalb
 }. Von den { $bottles } Flaschen ohne Haut { $beyond ->
    [0] liegen ebenfalls alle innerhalb von sRGB
    [one] liegt { $beyond } außerhalb, und ein Bildschirm mit dem weiteren Display P3 kann davon { $wide } zeigen
   *[other] liegen { $beyond } außerhalb, und ein Bildschirm mit dem weiteren Display P3 kann davon { $wide } zeigen
 }. Eine Farbe außerhalb von sRGB ist unter ihrem Farbmuster gekennzeichnet und als die nächstliegende gezeichnet; der Mischtisch nutzt Display P3, wo der Bildschirm es hat.
display-still-off = Was innerhalb von sRGB liegt, kann auf Ihrem Bildschirm dennoch danebenliegen: durch sein Alter, seine Einstellungen, den Blickwinkel. Ein Bildschirm zeigt eine gleichmäßige Farbe. Glanz, Poren, Haare und die Tiefe, die man in Haut sieht, fehlen.
display-eyes = Andere Augen
display-eyes-about = Etwa einer von zwölf Männern und eine von zweihundert Frauen europäischer Herkunft unterscheiden weniger Farben als die meisten (aus dem Gedächtnis; Anteile unterscheiden sich zwischen Bevölkerungen). Gehören Sie dazu, können Sie dennoch nach den Wörtern und Zahlen arbeiten, mit einem Messgerät und mit den Augen anderer für warm gegen aschig. Gehören Sie nicht dazu, sehen Sie hier, was jemand aus dem Kollegium oder der Kundschaft sehen mag. Die Zahlen sind die der Farbe selbst. Simuliert für den vollständigen Ausfall nach Machado, Oliveira und Fernandes (2009); die meisten Betroffenen sehen etwas zwischen den Reihen. Es ist kein Sehtest: Den macht, wer Optometrie gelernt hat.
display-model = Über das Modell hinter diesen Farben
display-level = { $value } von 255
display-greys = Grautöne neben dem Grund: { $steps }
display-neutrals = Fast neutrale Felder auf neutralem Grau: { $steps }
display-darker = Dunklere Felder auf dieser Haut: { $steps }
display-shift-redder = um { $by } röter
display-shift-greener = um { $by } grüner
display-shift-yellower = um { $by } gelber
display-shift-bluer = um { $by } blauer
display-apart = ΔE00 { $distance }
display-eyes-most = Die meisten Augen
display-eyes-most-about = Wie die anderen Seiten sie zeigen.
display-eyes-deutan = Deutan
display-eyes-deutan-about = Die häufigste Art: Rot und Grün liegen dicht beieinander.
display-eyes-protan = Protan
display-eyes-protan-about = Wie oben, und Rot ist dunkler, als andere es sehen.
display-eyes-tritan = Tritan
display-eyes-tritan-about = Selten: Blau und Grün, Gelb und Rosa liegen dicht beieinander.

## Arbeitsblätter und ihre Lösungen

sheet-kicker = Arbeitsblatt zu Modul { $number }
sheet-name = Name
sheet-date = Datum
sheet-group = Gruppe
sheet-about = Die Kästchen ankreuzen, nummerieren oder ausfüllen, wie es die Frage verlangt, und die Begründung aufschreiben. Die Wörter und Zahlen unter einem Farbmuster sagen alles, was seine Farbe sagt; das Blatt lässt sich also auch nach einem Schwarz-Weiß-Druck bearbeiten.
sheet-last-page = Was in jeder Flasche ist, steht auf der letzten Seite.
sheet-print = Diese Seite auf A4 oder Letter drucken.
sheet-why = Warum?
sheet-bottles = Die Flaschen auf diesem Arbeitsblatt
sheet-number = { $name }: <span class="line" aria-hidden="true"></span> { $unit }
sheet-title = Arbeitsblatt: { $module }
sheet-key-title = Lösungen: { $module }
sheet-to-key = Lösungen zu diesem Arbeitsblatt
sheet-to-sheet = Das Arbeitsblatt
key-kicker = Lösungen zum Arbeitsblatt von Modul { $number }
key-about = Für die Lehrkraft. ΔE00 ist der Farbabstand nach CIEDE2000 zwischen dem, wie eine Antwort abheilt, und dem Ziel: je kleiner, desto besser. Die Wertung folgt daraus.
key-in-short = Kurz:
key-goal = { $client }. { $goal }, L*&nbsp;{ $l }; a*&nbsp;{ $a }; b*&nbsp;{ $b }, { $note }.
key-options = Antworten zu Frage { $number }
key-option = Antwort
key-heals-to = Heilt ab zu
key-would-look = Sähe so aus
key-credit = Wertung
key-why = Warum
key-best = (beste)
key-no-colour = keine Farbe
key-best-answer = Beste Antwort.
key-misconception = Irrtum: <q>{ $belief }</q>

## Für Lehrkräfte

teach-syllabus = Lehrplan
teach-syllabus-description = Module, Lektionen, Stunden, Lernziele und Fertigkeiten dieses Kurses.
teach-minutes = Die Minuten sind, was Lernende brauchen, um eine Lektion allein zu lesen und ihre Aufgaben zu lösen. Das Üben auf Übungshaut und das Arbeiten am Menschen unter Aufsicht kommen hinzu; wie viele Stunden, sagen die örtlichen Vorschriften.
teach-skills = Fertigkeiten: { $skills }.
teach-papers = Prüfungen
teach-paper = Prüfung
teach-time = Zeit
teach-questions = Fragen
teach-what-for = Wofür sie ist
teach-note-kicker = Unterrichtshinweise zu Modul { $number }
teach-note = Unterrichtshinweise
teach-note-title = Unterrichtshinweise: { $module }
teach-lessons = Lektionen und wofür sie sind
teach-tempts = Wozu die Übungen verlocken und was zu sagen ist
teach-why = Warum es verlockt.
teach-say = Was zu sagen ist.
teach-treated = Behandelt in <a href="{ $href }">{ $title }</a>.
teach-drills = { $count ->
    [one] { $count } Übung
   *[other] { $count } Übungen
 }

## Eine Seite des Musterbuchs

book-title = Musterbuch
book-page = Seite
book-begun = Begonnen am
book-about = Eine Zeile für jede Mischung. Vor der Arbeit aufschreiben, in ganzen Tropfen. Dünn und dick ausstreichen, ein Feld auf Übungshaut pigmentieren und zu der Zeile zurückkehren, wenn eine Pigmentierung damit bei jemandem abgeheilt ist, der der Aufzeichnung zugestimmt hat. Angeben, unter welchem Licht betrachtet wurde: { $lights }.
book-print = Diese Seite auf A4 oder Letter drucken, so oft wie nötig.
book-mixes = Mischungen
book-number = Nr.
book-drops = Flaschen und Tropfen
book-batch = Charge, geöffnet am
book-thin = Dünn
book-thick = Dick
book-practice = Auf Übungshaut
book-healed = Abgeheilt: bei wem, nach welcher Zeit, was zu sehen ist
book-light = Licht
book-practice-skin = Übungshaut hat kein Blut, kein Melanin und keine Heilung: Sie zeigt, woraus eine Mischung besteht, nicht, wie sie abheilt. Keine Initialen und keine Fotos ohne Einwilligung.

## Eine Beratung

consult-title = Beratung
consult-client = Kundin/Kunde
consult-practitioner = Fachkraft
consult-about = Ein Blatt, um das Gespräch zu lernen. Es ist kein medizinischer Rat, keine Diagnose und kein rechtliches Formular: Die örtlichen Vorschriften sagen, was gefragt, unterschrieben und aufbewahrt werden muss, und sie haben das letzte Wort. Auskünfte zur Gesundheit sind vertraulich. Bewahren Sie sie verschlossen auf, nicht länger als vorgeschrieben.
consult-wish = Der Wunsch
consult-ask-see = Was möchten Sie im Spiegel sehen, mit Ihren eigenen Worten?
consult-ask-not = Was möchten Sie auf keinen Fall?
consult-ask-there = Was ist schon da: Altpigmentierung, wann, von wem, womit?
consult-ask-skin = Wie ist Ihre Haut an einem gewöhnlichen Tag: Sonne, Talg, Rötung, die kommt und geht?
consult-ask-return = Wann können Sie in sechs Wochen wiederkommen, und nach ein, zwei Jahren?
consult-health = Auskünfte zur Gesundheit, die das Gespräch anhalten
consult-health-about = Jede fragen, bei jedem Termin. Ein Ja heißt: heute nicht, bis jemand mit der nötigen Befugnis geantwortet hat. Nie jemanden bitten, ein Medikament wegzulassen.
consult-health-in-full = Alles zur Vorsicht
consult-health-table = Auskünfte zur Gesundheit
consult-asked = Gefragt nach
consult-no = Nein
consult-yes = Ja
consult-if-yes = Wenn ja
consult-anything = Sollte ich noch etwas wissen?
consult-skin = Die Haut, heute gelesen
consult-phototype = Fototyp
consult-undertone = Unterton
consult-redness = Rötung
consult-measured = Gemessen: L*, a*, b*
consult-site = Stelle und Licht
consult-old-work = Altpigmentierung: Wörter, Stärke
consult-patch = Hauttest
consult-patch-about = Ein ruhiger Test senkt das Risiko und beweist nichts. Wo, wann und wie lange: nach den Vorschriften und den Angaben des Herstellers.
consult-product = Produkt und Charge
consult-place = Stelle, Datum, Uhrzeit
consult-read-on = Abgelesen am, von
consult-seen = Gesehen
consult-consent = Einwilligung
consult-told = Mir wurde gesagt, was gemacht wird, womit, und was schiefgehen kann.
consult-told-fading = Mir wurde gesagt, dass Farben auf jeder Haut anders abheilen, verblassen und nicht versprochen sind.
consult-told-alternatives = Mir wurde gesagt, welche Alternativen es gibt, darunter, nichts zu tun.
consult-time = Ich hatte Zeit zum Nachdenken und darf jederzeit aufhören.
consult-photographs = Fotos für meine Unterlagen: ja / nein. Anderen gezeigt: ja / nein.
consult-ask-whom = { $action }; zu fragen: { $whom }
consult-wait = warten
consult-refer = weiterverweisen
consult-decision = Entscheidung: <span class="box" aria-hidden="true"></span> weitermachen <span class="box" aria-hidden="true"></span> warten bis <span class="line" aria-hidden="true"></span> <span class="box" aria-hidden="true"></span> verweisen an <span class="line" aria-hidden="true"></span> <span class="box" aria-hidden="true"></span> nein

## Der Plan einer Korrektur

planner-title = Korrekturplan
planner-about = Erst lesen, dann planen, und beides aufschreiben, bevor eine Flasche geöffnet wird. Dieses Blatt gibt keinen medizinischen Rat. Aufhellen und Entfernen gehören in die Hände derer, die dafür zugelassen sind; Eisenoxid und Titanweiß können unter einem Laser nachdunkeln.
planner-cautions = <a href="{ $href }">Vorsicht</a> kommt vor dem Plan.
planner-seen-table = Was unter jedem Licht zu sehen ist
planner-seen = 1. Was zu sehen ist
planner-residual = Rückstand in Worten
planner-against-skin = Gegen die Haut daneben: Helligkeit, Rot, Gelb
planner-edges = Ränder, Tiefe, Stärke
planner-pressed = mit klarem Kunststoff angedrückt
planner-cause = 2. Die wahrscheinliche Ursache
planner-cause-about = Welches Farbmittel übrig ist, welches fort, wie alt, wie tief; was die Aufzeichnung sagt und was nur vermutet ist
planner-answers = 3. Die fünf Antworten
planner-answers-table = Die fünf Antworten
planner-light = Licht
planner-answer = Antwort
planner-for = Dafür
planner-against = Dagegen
planner-refer = erst weiterverweisen
planner-leave = lassen, wie es ist
planner-lighten = aufhellen, durch Zugelassene
planner-remove = entfernen, durch Zugelassene
planner-neutralise = mit Farbe neutralisieren
planner-mix = Mischung
planner-visit = Termin
planner-foreseen = Vorhergesehen nach sechs Wochen
planner-years = Und nach Jahren
planner-distance = Farbabstand vom Ziel
planner-visits = 4. Termine und Wartezeiten
planner-what = Was, und wie wenig davon
planner-wait = Warten bis
planner-look = Achten auf
planner-only-if = Nur weiter, wenn
planner-stop = 5. Wann ich aufhöre
planner-stop-sore = Die Haut ist wund, erhaben, heiß, schuppt oder ist vom letzten Termin nicht verheilt.
planner-stop-health = Eine Auskunft zur Gesundheit hat sich geändert, oder noch niemand mit der nötigen Befugnis hat geantwortet.
planner-stop-dark = Die Pigmentierung ist zu dunkel oder zu dicht, als dass Farbe das Ziel erreichen könnte.
planner-stop-unseen = Der nächste Schritt würde weniger ändern, als man sehen kann.
planner-stop-client = Die Kundin oder der Kunde möchte aufhören oder wünscht, was nicht zu haben ist.
planner-mixes = Durchdachte Mischungen
planner-visits-table = Termine
planner-stop-else = Etwas anderes:
planner-not-promised = Was ich als nicht versprechbar gesagt habe:

## Quellen

sources-description = Worauf sich dieser Kurs und sein Rechenwerk stützen und welche Werte niemand veröffentlicht hat.
sources-lead = Worauf sich dieser Kurs und sein Rechenwerk stützen, was daraus genommen wurde, und wie: durch einen Test nachgerechnet, kopiert, erinnert oder für den Unterricht erfunden.
sources-about = Was <em>aus dem Gedächtnis</em> heißt, wurde nicht nachgeschlagen und kann in einer Einzelheit falsch sein. Was <em>repräsentativ</em> heißt, ist von der richtigen Art und Größe und an nichts gemessen. Ein Gesetz ist genannt, um zu zeigen, dass es eines gibt: Lesen Sie die Fassung, die für Sie gilt.
sources-source = Quelle
sources-taken = Was genommen wurde
sources-how = Wie
sources-optics = Optik der Farbmittel
sources-questions = Was die Fragensammlung nennt
sources-questions-about = Gezählt über alle Fragen. Eine hier genannte Quelle wurde für die Frage nicht nachgeschlagen, sofern es die Listen oben nicht sagen.
sources-questions-table = Quellen der Fragen
sources-named-by = Genannt von
sources-asked = { $count ->
    [one] { $count } Frage
   *[other] { $count } Fragen
 }
sources-kind-standard = Normen
sources-kind-regulation = Vorschriften
sources-kind-guideline = Leitlinien
sources-kind-paper = Fachartikel
sources-kind-book = Bücher
sources-kind-table = Tabellen und Daten
sources-kind-practice = Erfahrung und eigene Entscheidungen dieses Projekts
sources-basis-checked = Tests rechnen daraus zitierte Zahlen nach
sources-basis-copied = aus einer Datei kopiert, die es enthält
sources-basis-from-memory = aus dem Gedächtnis, nicht nachgeschlagen
sources-basis-common-practice = allgemeine Erfahrung, keine Quelle
sources-basis-representative = repräsentativ, für den Unterricht erfunden
## Startseite: was ansteht

home-due = Zum Üben fällig
home-due-later = Vor dem <time></time> ist nichts fällig.
home-due-progress = Alles, was Sie können, nach Fertigkeiten

## Lernstand

progress-title = Lernstand
progress-about = Was Ihre Antworten über Ihr Können sagen, Modul für Modul, und was zum Üben fällig ist.
progress-lead = Was Ihre Antworten über Ihr Können sagen, Modul für Modul, und was fällig ist.
progress-no-script = Der Lernstand wird aus den Aufzeichnungen gelesen, die das Üben in Ihrem Browser führt; diese Seite braucht deshalb Skripte. Die <a href="{ $lessons }">Lektionen</a> brauchen keine.
progress-wait = Die Aufzeichnungen werden gelesen …
progress-due = Jetzt fällig
progress-mixed = Üben, was am nötigsten ist
progress-estimates = Die Prozentzahlen sind Schätzungen aus Ihren Antworten. Sie sinken mit den Tagen ohne Übung, langsamer nach richtigen Antworten an verschiedenen Tagen.
progress-record = Ihre Aufzeichnungen
progress-save = In Datei speichern
progress-load = Aus Datei laden
progress-wipe = Löschen
progress-load-file = Datei mit Lernstand

## Was sich nicht üben lässt

exercise-no-lesson = eine Lektion `{ $id }` gibt es nicht
exercise-no-skill = eine Fertigkeit `{ $id }` gibt es nicht
exercise-no-drill = keine Übung trainiert das
