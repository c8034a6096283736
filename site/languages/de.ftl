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

## Was sich nicht üben lässt

exercise-no-lesson = eine Lektion `{ $id }` gibt es nicht
exercise-no-skill = eine Fertigkeit `{ $id }` gibt es nicht
exercise-no-drill = keine Übung trainiert das
