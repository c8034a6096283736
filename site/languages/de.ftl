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
reading-depth-far-deeper-than-the-bare-lip = sehr viel dunkler als die unbehandelte Lippe
reading-depth-much-deeper-than-the-bare-lip = viel dunkler als die unbehandelte Lippe
reading-depth-deeper-than-the-bare-lip = dunkler als die unbehandelte Lippe
reading-depth-a-little-deeper-than-the-bare-lip = etwas dunkler als die unbehandelte Lippe
reading-depth-as-light-as-the-bare-lip = so hell wie die unbehandelte Lippe
reading-depth-a-little-lighter-than-the-bare-lip = etwas heller als die unbehandelte Lippe
reading-depth-lighter-than-the-bare-lip = heller als die unbehandelte Lippe
reading-depth-far-deeper-than-the-bare-skin-there = sehr viel dunkler als die unbehandelte Haut dort
reading-depth-much-deeper-than-the-bare-skin-there = viel dunkler als die unbehandelte Haut dort
reading-depth-deeper-than-the-bare-skin-there = dunkler als die unbehandelte Haut dort
reading-depth-a-little-deeper-than-the-bare-skin-there = etwas dunkler als die unbehandelte Haut dort
reading-depth-as-light-as-the-bare-skin-there = so hell wie die unbehandelte Haut dort
reading-depth-a-little-lighter-than-the-bare-skin-there = etwas heller als die unbehandelte Haut dort
reading-depth-lighter-than-the-bare-skin-there = heller als die unbehandelte Haut dort
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
reading-tone-near-black = fast schwarz
reading-tone-violet = violett
reading-tone-bluish-red = bläuliches Rot
reading-tone-bluish-pink = bläuliches Rosa
reading-tone-pink = rosa
reading-tone-rose = altrosa
reading-tone-dull-rose = graurosa
reading-tone-brownish-red = bräunliches Rot
reading-tone-brownish-pink = bräunliches Rosa
reading-tone-reddish-brown = rötliches Braun
reading-tone-brown = Braun
reading-tone-greyish-brown = gräuliches Braun
reading-tone-yellowish-brown = gelbliches Braun
reading-tone-beige = Beige

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
exercise-case-skin = Fototyp { $phototype }, Unterton { $undertone }, Haut { $redness }
exercise-case-age = { $age } Jahre alt.
exercise-case-scar = { $skin }; die Stelle ist eine flache, helle Narbe
exercise-case-old-work = Alter: { $age }. { $note }
exercise-case-judged = { $when }, unter { $light }
exercise-case-placement = { $depth } mm tief, { $thickness } mm dick, Pigmentmenge { $load }, { $coverage } % der Fläche gedeckt
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
# Von einer Flasche allein gesagt: länger als jede Flasche mit Tropfen eines Korrektors
exercise-mix-alone = { $mix }, und kein Tropfen Korrektor
exercise-row = { $first } und { $last }
exercise-goal = „{ $name }“ (L*{"\u00A0"}{ $l }; a*{"\u00A0"}{ $a }; b*{"\u00A0"}{ $b })

## Wozu eine Antwort führt

exercise-reaches = { $when }: { $reading }. Das Ziel ist erreicht (Farbabstand ΔE00 { $error }).
exercise-reaches-though = { $when }: { $reading }. Das Ziel ist erreicht, allenfalls ist es { $miss } (Farbabstand ΔE00 { $error }).
exercise-misses = { $when }: { $reading }. Das Ziel ist verfehlt (Farbabstand ΔE00 { $error }).
exercise-misses-how = { $when }: { $reading }. Das Ziel ist verfehlt: { $miss } (Farbabstand ΔE00 { $error }).
exercise-too-dark = zu dunkel
exercise-too-light = zu hell
exercise-too-red = zu rot
exercise-too-green = zu grün
exercise-hardly-red = nicht rot genug
exercise-too-yellow = zu gelb
exercise-too-blue = zu blau
exercise-hardly-yellow = nicht gelb genug
exercise-too-grey = zu grau
exercise-too-strong = zu bunt
exercise-holds-restricted = Enthält { $colourant }, beschränkt ({ $place }, seit { $since }): { $rule } ({ $source }).
exercise-restricted = { $colourant }, { $place }, seit { $since }: { $rule } ({ $source })
exercise-colour = { $reading } (L*{"\u00A0"}{ $l }; a*{"\u00A0"}{ $a }; b*{"\u00A0"}{ $b })
exercise-several-right = Genau die, die zutreffen.
exercise-several-wrong = „{ $statement }“ trifft nicht zu: { $why }
exercise-several-missed = „{ $statement }“ trifft zu und wurde übersehen: { $why }
exercise-order-right = Die richtige Reihenfolge.
exercise-order-amiss = Ab Schritt { $turn } stimmt die Reihenfolge nicht. Was dorthin gehört: { $step } – { $why }
exercise-number-right = Richtig ist { $number }. { $why }
exercise-not-answered = Nicht beantwortet.
exercise-not-a-mix = Keine zulässige Mischung: { $why }.
exercise-by-the-engine = vom Rechenwerk berechnet

## Warum etwas keine Antwort ist

exercise-asks-one = diese Aufgabe verlangt eine der Möglichkeiten: ihren Buchstaben schreiben, etwa `B`
exercise-asks-several = diese Aufgabe verlangt alles, was zutrifft: die Buchstaben schreiben, etwa `A C`
exercise-asks-order = diese Aufgabe verlangt eine Reihenfolge: die Buchstaben der Reihe nach schreiben, etwa `B A C E D`
exercise-asks-drops = diese Aufgabe verlangt ganze Tropfen aus Flaschen: sie als `a5 d1` schreiben
exercise-asks-number = diese Aufgabe verlangt eine Zahl: sie als `41,5` schreiben
exercise-no-option = { $count ->
    [one] eine Möglichkeit { $letter } gibt es nicht; es gibt nur 1
   *[other] eine Möglichkeit { $letter } gibt es nicht; es gibt { $count }
 }
exercise-not-an-order = { $count ->
    [one] eine Reihenfolge nennt den Schritt einmal, mit seinem Buchstaben
   *[other] eine Reihenfolge nennt jeden der { $count } Schritte einmal, mit seinem Buchstaben
 }
exercise-not-a-number = die Antwort ist keine Zahl; als `41,5` schreiben
exercise-no-bottle = eine Flasche `{ $bottle }` gibt es hier nicht; es gibt { $known }; Tropfen als `a5 d1` schreiben
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
exercise-foresight-little = Das wäre ein Zehntel der Farbe. Fast so blass kann es in der dritten Woche unter neuer Haut aussehen; sie kommt wieder.
exercise-foresight-third = Das wäre ein Drittel der Farbe. Was abschuppt, lag in der Epidermis; von dem, was in der Dermis liegt, geht kein fester Anteil verloren.
exercise-foresight-black = Das wäre zu sehen, wenn nur das Schwarz der Mischung übrig wäre.
exercise-foresight-stronger = So kräftig wäre sie, wenn die Farbe sich beim Setzen verstärkt hätte. Von der sechsten Woche an wird Pigment nur noch abgetragen.
exercise-foresight-veiled = So verschleiert wäre sie, wenn die Arbeit doppelt so tief läge.
exercise-foresight-warmth = So grau wäre sie, wenn mit den Krusten die Hälfte dessen ginge, was sie zum Braun macht.
exercise-foresight-milky = So blass und stumpf wäre sie, wenn die Trübung der neuen Haut nie verginge.
exercise-foresight-richer = So tief und satt wäre sie, wenn die Haut Buntheit gäbe, statt sie zu nehmen.
exercise-foresight-bottle = Das ist die Farbe in der Flasche, ohne Haut darüber.

## Woher ein Rückstand kommt

exercise-hindsight-ask = In Haut wie der von { $client } sieht alte Arbeit so aus. Womit wurde sie höchstwahrscheinlich gemacht?
exercise-hindsight-left = Was in Haut wie der von { $client } übrig ist
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

## Alte Arbeit korrigieren. Die zwei Antworten ohne Farbe sind in der Hälfte ihrer Fassungen länger als jede Mischung, sonst kürzer; "Erst aufhellen" liegt in der
## Länge zwischen den kurzen Fassungen des Nichtstuns, der ganze Satz zwischen den ganzen

exercise-remedy-ask = { $client } kommt mit alter Arbeit und wünscht sich { $goal }. Was tun Sie?
exercise-remedy-lighten = Noch keine Farbe einbringen: die alte Arbeit zuerst aufhellen oder entfernen lassen, von jemandem mit Zulassung dafür
exercise-remedy-lighten-briefly = Erst aufhellen
exercise-remedy-lighten-right = Keine Ihrer Mischungen erreicht das Ziel über dieser Arbeit; durchscheinende Farbe kann nicht aufhellen. Über der Arbeit, auf etwa ein Zehntel aufgehellt, käme die beste Mischung dem Ziel bis auf ΔE00 { $distance } nahe. Eisenoxid und Titanweiß können unter dem Laser nachdunkeln: zuerst eine Probestelle, durch jemanden mit Zulassung, nach den Vorschriften an Ihrem Ort.
exercise-remedy-lighten-needless = Hier erreicht Farbe allein das Ziel. Das Aufhellen würde der Haut eine Behandlung zumuten, die sie nicht braucht, und Eisenoxid oder Titanweiß können unter dem Laser nachdunkeln.
exercise-remedy-lighten-unsafe = Nicht, bevor dies geklärt ist: { $caution }. { $say }
exercise-remedy-refrain = Heute nichts an der Haut tun: erklären, warum, und weiterverweisen oder warten, bis es geklärt ist
exercise-remedy-refrain-fully = Heute nichts an der Haut tun: erklären, warum, es aufschreiben, und weiterverweisen oder warten, bis es ganz geklärt ist
exercise-remedy-refrain-briefly = Warten, abklären
exercise-remedy-refrain-in-a-word = Nichts tun
exercise-remedy-wait = Warten: { $caution }. { $say } Wer zu fragen ist: { $who }. Farbe kommt danach. Quelle: { $source }.
exercise-remedy-refer = Weiterverweisen: { $caution }. { $say } Wer zu fragen ist: { $who }. Farbe kommt danach. Quelle: { $source }.
exercise-remedy-refrain-needless = Nichts in den Angaben zur Gesundheit verlangt das. Es schadet nicht, aber die Person geht ohne die Hilfe, die möglich wäre.
exercise-remedy-unsafe = Nicht sicher, wozu es auch abheilen würde: { $caution }. { $say } Wer zu fragen ist: { $who }.

## Was bewiesen wurde

exercise-proof-seen = Das Rechenwerk hat jede Antwort berechnet. Die nächste falsche liegt ΔE00 { $margin } entfernt; was wirklich zu sehen ist, bleibt in { $held } von { $worlds } Versuchen mit veränderter Haut, Tiefe und Pigmentmenge der richtigen am nächsten.
exercise-proof-best = Von { $searched } durchprobierten Mischungen kommt keine dem Ziel näher als ΔE00 { $error }. Die beste bleibt in { $held } von { $worlds } Versuchen mit veränderter Haut, Tiefe und Pigmentmenge vor den falschen Antworten.
exercise-proof-margin = Von { $searched } durchprobierten Mischungen kommt keine dem Ziel näher als ΔE00 { $error }. Die nächste falsche Antwort ist um { $margin } schlechter. Die beste bleibt in { $held } von { $worlds } Versuchen mit veränderter Haut, Tiefe und Pigmentmenge vor den falschen Antworten.
exercise-proof-lighten = Über der Arbeit, wie sie ist, kommt von { $searched } durchprobierten Mischungen keine dem Ziel näher als ΔE00 { $before }; über der aufgehellten kommt ihm die beste bis auf ΔE00 { $error } nahe. Erst aufzuhellen bleibt in { $held } von { $worlds } Versuchen mit veränderter Haut, Tiefe und Pigmentmenge richtig.
exercise-proof-next = { $over ->
    [lightened] Danach kommen über der aufgehellten Arbeit (ΔE00): { $next }.
   *[same] Danach kommen (ΔE00): { $next }.
 }
exercise-proof-next-one = { $label } ({ $error })

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
exercise-angle-ask = Ein Messgerät zeigt auf der bloßen Haut von { $client } L*{"\u00A0"}{ $l } und b*{"\u00A0"}{ $b } an. Wie groß ist der individuelle typologische Winkel, in Grad?
exercise-angle-name = individueller typologischer Winkel
exercise-angle-why = ITA = arctan((L* - 50) / b*) = arctan({ $above } / { $b }).
exercise-angle-upside-down = Der Bruch steht auf dem Kopf: L* minus 50 gehört über b*.
exercise-angle-without-fifty = Von L* sind zuerst 50 abzuziehen: Der Winkel zählt vom mittleren Grau aus.
exercise-angle-radians = Das ist der Winkel im Bogenmaß; in Grad sind es 180/π-mal so viel.
exercise-angle-source = ITA nach der Definition von Chardon, Cretois und Hourseau (1991)
exercise-skin-read = { $client }: die Haut, wie das Messgerät sie liest
exercise-skin-read-beside = { $client }: die Haut neben der alten Arbeit, wie das Messgerät sie liest
exercise-skin-beside = { $client }: die { $site ->
    [lip] Lippe
   *[other] Haut
 } neben der alten Arbeit

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
exercise-lamp-washes-out = So sähe es aus, wenn die Lampe es auswüsche. Das Auge richtet sich nach dem Weiß ringsum.
exercise-lamp-dims = So sähe es aus, wenn die Lampe es dunkler und grauer machte. Das Auge richtet sich nach dem Weiß ringsum.
exercise-lamp-enriches = So sähe es aus, wenn die Lampe es um so viel tiefer und satter machte. Was Lampe und Pigment zusammen bewirken, ist weniger.
exercise-lamp-hardens = So sähe es aus, wenn die Lampe es von der Haut abhöbe. Das Auge richtet sich nach dem Weiß ringsum, und dieselbe Lampe beleuchtet die Haut.
exercise-lamp-greys = So sähe es aus, wenn die Lampe es um so viel blasser und stumpfer machte. Das Auge richtet sich nach dem Weiß ringsum.
exercise-lamp-softens = Weiches Licht verbirgt Ränder. Die Farbe hat sich verschoben, ist aber so kräftig wie zuvor.
exercise-lamp-tint = Das ist der Farbstich der Lampe selbst. Das Auge passt sich ihm in wenigen Minuten an, eine Kamera vielleicht nicht.

## Sicherheit

exercise-triage-ask = { $client } möchte die Arbeit heute machen lassen. Nach den Angaben zur Gesundheit allein: Was tun Sie?
exercise-triage-go-on = Beginnen: Verträglichkeitsprobe, Einwilligung und Aufzeichnungen wie immer
exercise-triage-go-on-briefly = Beginnen wie immer
exercise-triage-go-on-fully = Beginnen: Verträglichkeitsprobe, wie Hersteller und örtliche Vorschrift sie verlangen, schriftliche Einwilligung und Aufzeichnung jedes Schritts wie immer
exercise-triage-nothing = Nichts in den Angaben zur Gesundheit verlangt, zu warten oder weiterzuverweisen.
exercise-triage-unsafe = Nicht sicher. { $why }
exercise-triage-elsewhere = Heute nicht weiterzumachen ist richtig, aber diese Antwort gehört zu einem anderen Befund. { $why }
exercise-triage-needless = Nicht nötig. { $why }
exercise-triage-not-yours = Rat zu Arzneien und Behandlungen gibt, wer sie verschreibt, nicht Sie. { $why }
exercise-triage-no-signature = Eine Unterschrift ersetzt weder Verträglichkeitsprobe noch Aufzeichnungen und macht nichts sicher. { $why }
exercise-triage-wait = Warten und erklären, warum; bei Fragen: { $who }
exercise-triage-wait-briefly = Warten; bei Fragen: { $who }
exercise-triage-wait-fully = Heute nicht arbeiten; erklären, warum, es aufzeichnen und warten; bei Fragen: { $who }
exercise-triage-refer = Heute nicht arbeiten; weiterverweisen an: { $who }
exercise-triage-refer-briefly = Weiterverweisen an: { $who }
exercise-triage-refer-fully = Heute nicht arbeiten; erklären, warum, es aufzeichnen und weiterverweisen an: { $who }
exercise-triage-reason = { $caution }: { $say } Wer zu fragen ist: { $who }. Quelle: { $source }.
exercise-triage-advise = Der Person raten, was sie einnehmen oder weglassen soll, und weitermachen, sobald das getan ist
exercise-triage-advise-briefly = Raten, was einzunehmen oder wegzulassen ist
exercise-triage-advise-fully = Der Person raten, was sie während der Heilung einnehmen oder weglassen soll, das Gesagte aufzeichnen und weitermachen, sobald das getan ist
exercise-triage-two-weeks = Zwei Wochen warten und weitermachen, wenn sich die Person wohlfühlt
exercise-triage-two-weeks-briefly = Zwei Wochen warten, dann weitermachen
exercise-triage-two-weeks-fully = Zwei Wochen warten, aufzeichnen, wie sich die Person dann fühlt, und ohne weitere Rückfrage weitermachen, wenn sie sich wohlfühlt
exercise-triage-signed = Weitermachen; mit unterschriebener Einwilligung braucht es weder Verträglichkeitsprobe noch Aufzeichnungen
exercise-triage-signed-briefly = Mit einer Unterschrift allein weitermachen
exercise-triage-signed-fully = Weitermachen; sobald die Person die Einwilligung vor Ihren Augen gelesen und unterschrieben hat, braucht es für die Arbeit weder Verträglichkeitsprobe noch Aufzeichnungen
exercise-triage-source = die Liste der Vorsichtshinweise im Kurs
exercise-caution = { $why } Vorsicht: { $caution }. Wer zu fragen ist: { $who }.

## Aufzeichnungen des Übens, die nicht brauchbar sind

exercise-record-none = das ist keine Aufzeichnung eines Lernstands: { $why }
exercise-record-newer = diese Aufzeichnung hat das Format { $found }; dieses Programm liest höchstens { $known }: Nehmen Sie das Programm, das sie geschrieben hat, oder ein neueres
exercise-record-unused = der Lernstand in `{ $skill }` ist unbrauchbar und gilt als leer: { $why }
exercise-record-empty = sie ist leer
exercise-record-other = es ist eine Datei anderer Art; eine Aufzeichnung ist eine `.json`-Datei, die beim Üben aufbewahrt oder gespeichert wurde
exercise-record-ends = sie endet zu früh, in Zeile { $line }, Spalte { $column }; vielleicht wurde sie nicht ganz kopiert
exercise-record-broken = was in Zeile { $line }, Spalte { $column } steht, macht sie unlesbar; nehmen Sie die Datei, wie sie gespeichert wurde, oder eine frühere Kopie
exercise-record-no-format = es fehlt `format`, das in jeder Aufzeichnung steht; vielleicht ist es eine Datei anderer Art
exercise-record-no-object = das ist kein JSON-Objekt
exercise-record-missing = `{ $field }` fehlt
exercise-record-field = `{ $field }` muss { $wanted ->
    [format] die Zahl { $known }
    [object] ein JSON-Objekt
    [count] eine ganze Zahl von 0 bis { $most }
    [seconds] eine ganze Zahl von Sekunden oder `null`
   *[number] eine Zahl
 } sein
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
term-light-fl2 = kaltes Leuchtstofflicht (FL2)
term-in-light-d65 = bei Tageslicht (D65)
term-in-light-a = bei Glühlampenlicht (A)
term-in-light-led-b3 = bei weißem LED-Licht (LED-B3)
term-in-light-fl2 = bei kaltem Leuchtstofflicht (FL2)
term-basis-measured = gemessen
term-basis-published = veröffentlicht
term-basis-representative = repräsentativ
term-skin = Fototyp { $phototype }, { $undertone }, { $redness }
term-skin-alone = { $undertone }, { $redness }
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

## Eine Farbe für sich: Flaschen und unbehandelte Haut

colour-white = fast weiß
colour-black = fast schwarz
colour-very-light = sehr helles { $colour }
colour-light = helles { $colour }
colour-middle = { $colour }
colour-dark = dunkles { $colour }
colour-very-dark = sehr dunkles { $colour }
colour-grey = Grau
colour-pink = Rosa
colour-pink-beige = Rosabeige
colour-coral = Korallenrot
colour-red = Rot
colour-red-brown = Rotbraun
colour-orange = Orange
colour-brown = Braun
colour-beige = Beige
colour-golden-yellow = Goldgelb
colour-yellow-brown = Gelbbraun
colour-yellow = Gelb
colour-olive = Oliv
colour-green = Grün
colour-blue = Blau
colour-violet = Violett
colour-purple = Purpur
colour-skin-very-light = blasses Beige
colour-skin-light = helles Beige
colour-skin-middle = Beige
colour-skin-tan = helles Braun
colour-skin-brown = Braun
colour-skin-deep = tiefes Braun
colour-skin-very-deep = sehr tiefes Braun

## Farbmuster

swatch-lab = L* { $l }; a* { $a }; b* { $b }
swatch-beyond = von diesem Bildschirm nicht darstellbar: die nächstliegende Farbe, die er zeigen kann
swatch-bare = { $label }: { $site ->
    [lip] unbehandelte Lippe
   *[other] unbehandelte Haut
 }, { $words }
swatch-bottle = { $name }: die Farbe in der Flasche, { $words }
swatch-in-bottle = In der Flasche
swatch-alone = Für sich
swatch-colourant = { $name }: das Farbmittel für sich, { $words }
swatch-work = { $label }: { $words }
swatch-goal = Ziel: { $name }
swatch-goal-note = gilt bis ΔE00 { $distance } als erreicht; { $site ->
    [lip] in dieser Lippe
   *[other] auf dieser Haut
 }: { $tone }

## Aufgaben auf Seiten und auf Papier

question-old-work = Alte Arbeit
question-health = Gesundheit
question-health-nothing = nein auf jede Frage, die gestellt wurde
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
question-on-bench = { $name } am Mischtisch
question-choose-one = Eine Antwort wählen.
question-choose-several = Alle wählen, die zutreffen.
question-number-steps = Nummerieren Sie in der richtigen Reihenfolge: 1 ist das Erste.
question-order-letters = Schreiben Sie die Buchstaben in der richtigen Reihenfolge auf die erste Seite, das Erste zuerst.
question-drops = Eine Flasche, allein oder mit Korrektoren: insgesamt { $drops } Tropfen, davon höchstens { $modifiers } von Korrektoren.
question-number = Gesucht: { $name } in { $unit }.
question-step = Nummer { $turn }. { $why }
question-best-heals-to = Wie die beste Antwort abheilt
question-heals-to = Wie das abheilt
question-would-look = Wie das aussehen würde
question-really-seen = Was wirklich zu sehen ist
question-is-really-seen = was wirklich zu sehen ist
question-from-goal = ΔE00 { $distance } vom Ziel
question-from-seen = ΔE00 { $distance } von dem, was wirklich zu sehen ist
question-skin = Haut
question-hair = Haar
question-placement = Pigmentierung
question-judged = Beurteilt
question-judged-at = { $time }, { $light }
question-placed = { $depth } mm tief, { $thickness } mm dick, ein voller Durchgang, { $coverage } der Fläche gedeckt
question-placed-load = { $depth } mm tief, { $thickness } mm dick, Pigmentmenge { $load }, { $coverage } der Fläche gedeckt
question-skin-now = { $site ->
    [lip] Die Lippe jetzt
   *[other] Die Haut jetzt
 }: { $name }
question-as-now = { $name }, so wie es jetzt ist
question-rule = { $colourant }, { $place }: { $rule }

## Texte des Kurses

text-no-exercises = Die Aufgaben dieser Übung sind nicht Teil dieser Ausgabe.
text-neighbours = Davor und danach
text-before = Davor
text-after = Danach
text-print = Zum Drucken:
text-on-bench = Am Mischtisch
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
text-bottles = Die Flaschen dieser Aufgaben, zum Nachsehen:
text-practice = Mehr davon, frisch erstellt: <a href="{ $href }">diese Lektion üben</a>.

## Startseite

home-begin = Hier beginnen:
home-example = Eine Flasche, { $bottle }, und wie sie nach sechs Wochen auf verschiedener Haut abgeheilt ist
home-module-list = Die Module
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
model-marks-goal = Bei einer Frage nach Farbe wird in keiner Liste richtiger Antworten nachgeschlagen. Ihre Antwort wird in die Haut der Person gebracht, heilt ab und wird mit dem Ziel verglichen. Der Farbabstand ist CIEDE2000, geschrieben ΔE00: Etwa 1 ist das Kleinste, was ein geübtes Auge nebeneinander sieht. Die Wertung sinkt, je weiter der Abstand über das Bestmögliche hinausgeht. Wo es um die Gesundheit geht, ist eine Antwort richtig oder sie ist es nicht.
model-marks-proof = Eine solche Aufgabe wird nur gezeigt, wenn sie bewiesen ist: Jede Mischung, die Sie hätten ansetzen können, wurde durchprobiert, jede falsche Antwort ist um einen sichtbaren Abstand schlechter, und die beste bleibt in mindestens 95 % von 200 Versuchen die beste, in denen Haut, Tiefe und Menge anderthalbmal so weit schwanken wie in der Praxis. Andere Fragen, nach Gesundheit, Hygiene, Recht, Reihenfolge und Begriffen, folgen der Quelle, die unter jeder steht, oder allgemeiner Erfahrung.
model-limit-client = <strong>Ihre Kundschaft.</strong> Haut unterscheidet sich auf Weisen, die niemand vorher sieht: Heilung, Talg, Sonne, Alter, Pflege, Krankheit, Narben.
model-limit-bottles = <strong>Ihre Flaschen.</strong> Die Farbmittel hier haben glatte, repräsentative Kurven. Eine Akademie kann ihre eigenen Messungen an deren Stelle setzen. Hersteller ändern Rezepturen.
model-limit-hand = <strong>Ihre Hand.</strong> Tiefe und Menge sind hier Zahlen. In Wirklichkeit ändern sie sich von Strich zu Strich.
model-limit-texture = <strong>Struktur.</strong> Eine Augenbraue wird als eine gleichmäßige Farbe vorhergesagt. Die Striche eines Farbfelds zeigen nur die Form; Poren und Haare fehlen.
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
colourants-lead = Was in den Flaschen ist, eines nach dem anderen. Das Farbfeld zeigt das Farbmittel für sich, in einer Schicht, durch die nichts mehr zu sehen ist. Starke sehen dort fast schwarz aus; verdünnt und in der Haut tun sie das nicht.
bottles-restricted = <strong>Eingeschränkt: { $place }.</strong> { $index }: { $rule }, seit { $since }. Quelle: { $source }.
bottles-lead = Was in jeder Flasche dieses Kurses ist. Das Farbmuster zeigt die Farbe in der Flasche: Pigment ohne Haut. So heilt es nicht ab.
bottles-about = Farbmittel stehen mit ihren Colour-Index-Namen da, wie ein Hersteller sie angeben muss, und jedes mit seinem Anteil am Pigment. Die Halbwertszeit ist die Zeit, nach der vom Abgeheilten die Hälfte übrig ist. Als <em>repräsentativ</em> gekennzeichnete Zahlen sind plausibel und nicht gemessen: siehe <a href="{ $href }">Über das Modell</a>. Regeln sind von Ort zu Ort verschieden und ändern sich: Sehen Sie in den örtlichen Vorschriften nach, bevor Sie etwas kaufen oder verwenden.
bottles-go-to = Weiter zu:
bottles-table = <a href="{ $href }">Tabelle der Farbmittel</a>
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
colourants-description = Alle Farbmittel des Kurses: Name und Nummer im Colour Index, wie sie aussehen, wie lange sie bleiben und wo sie beschränkt sind.
bottles-colourant = Klasse: { $class }. Halbwertszeit: { $months } Monate. Wandert tiefer: { $drift }. Grundlage: { $basis }.
bottles-in-bottles = { $count ->
    [one] In einer Flasche von { $of }
   *[other] In { $count } Flaschen von { $of }
 }
bottles-in-none = In keiner Flasche dieses Kurses.
bottles-drift = { $distance } mm
bottles-hardly = kaum
bottles-without-skin = Die Farbe ist die in der Flasche, ohne Haut.
bottles-listed = { $title }, als Tabelle
bottles-bottle = Flasche
bottles-by-share = Farbmittel nach Anteil
bottles-modifier = Korrektor.
bottles-restricted-in = <strong>Eingeschränkt ({ $place }):</strong> { $index }

## Kundschaft

clients-description = Die erfundene Kundschaft des Kurses: Haut, Haar, Wünsche, Auskünfte zur Gesundheit und alte Arbeit.
clients-lead = Alle hier sind erfunden. Ähnelt ihnen jemand aus Ihrer Kundschaft: Es entscheidet der wirkliche Mensch, nicht die Ähnlichkeit.
clients-angle = Der Fototyp betrifft die Sonne, der Typologiewinkel die Farbe
clients-angle-about = Der Fototyp (Fitzpatrick I bis VI) hält fest, wie Haut auf Sonne reagiert. Der individuelle Typologiewinkel, ITA, wird aus L* und b* der unbehandelten Haut berechnet; je größer er ist, desto heller die Haut. Wo Menschen gemessen wurden, hängen beide nur schwach zusammen; keiner ersetzt also den anderen. Die Tabelle geht von der hellsten Haut zur tiefsten, und die Fototypen folgen dem nicht ganz. Auch das untertreibt, wie weit beide auseinandergehen: Die Haut dieser Personen wurde aus Fototyp, Unterton und Rötung geschätzt, was beide näher beieinander erscheinen lässt, als sie sind.
clients-angle-table = Fototyp und Typologiewinkel der Haut, wo sie nicht Lippe, Warzenhof oder Narbe ist
clients-find = Person finden
clients-of-phototype = Fototyp { $phototype }
clients-part = { $title }, Seite { $part } von { $of }
clients-on-bench = { $name } am Mischtisch
clients-in-short = { $age }; { $skin }; { $site }
clients-with-old-work = alte Arbeit
clients-with-caution = eine Auskunft mahnt zur Vorsicht
clients-by-residual = Alte Arbeit, nach dem, was von ihr bleibt
clients-by-site = Andere Stellen als die Braue
clients-client = Person
clients-phototype = Fototyp
clients-ita-class = ITA-Klasse
clients-seen = Gesehen
clients-site = Stelle
clients-no-caution = keine, zu der diese Auskünfte mahnen
clients-cautions = Vorsicht
clients-caution = <strong>Vorsicht.</strong> { $note } Siehe <a href="{ $href }">{ $caution }</a>.
clients-bare = { $site ->
    [lip] Unbehandelte Lippe
   *[other] Unbehandelte Haut
 }
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
sheet-last-page = Was in jeder Flasche ist, steht am Ende des Blatts.
sheet-print = Diese Seite auf A4 oder Letter drucken.
sheet-why = Warum?
sheet-bottles = Die Flaschen auf diesem Arbeitsblatt
sheet-drops = In jedes Kästchen kommt die Zahl der Tropfen; was nicht in die Mischung soll, bleibt leer.
sheet-number = { $name }: <span class="line" aria-hidden="true"></span> { $unit }
sheet-title = Arbeitsblatt: { $module }
sheet-key-title = Lösungen: { $module }
sheet-to-key = Lösungen zu diesem Arbeitsblatt
sheet-to-sheet = Das Arbeitsblatt
key-kicker = Lösungen zum Arbeitsblatt von Modul { $number }
key-about = Für die Lehrkraft. ΔE00 ist der Farbabstand nach CIEDE2000 zwischen dem, wie eine Antwort abheilt, und dem Ziel: je kleiner, desto besser. Die Wertung folgt daraus.
key-in-short = Kurz:
key-goal = { $goal }, L*&nbsp;{ $l }; a*&nbsp;{ $a }; b*&nbsp;{ $b }, { $note }.
key-options = Antworten zu Frage { $number }
key-option = Antwort
key-heals-to = Heilt ab zu
key-would-look = Sähe so aus
key-credit = Wertung
key-why = Warum
key-best = (beste)
key-no-colour = keine Farbe
key-best-answer = Beste Antwort.
key-as-good = So gut wie die beste.
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
consult-ask-there = Was ist schon da: alte Arbeit, wann, von wem, womit?
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
consult-old-work = Alte Arbeit: Wörter, Stärke
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
progress-about = Was Ihre Antworten über Ihr Können sagen, Fertigkeit für Fertigkeit, und was zum Üben fällig ist.
progress-lead = Was Ihre Antworten über Ihr Können sagen, und was fällig ist. Jede Fertigkeit steht bei dem Modul, das sie zuerst übt.
progress-no-script = Der Lernstand wird aus den Aufzeichnungen gelesen, die das Üben in Ihrem Browser führt; diese Seite braucht deshalb Skripte. Die <a href="{ $lessons }">Lektionen</a> brauchen keine.
progress-wait = Die Aufzeichnungen werden gelesen …
progress-due = Jetzt fällig
progress-mixed = Üben, was am nötigsten ist
progress-estimates = Die Prozentzahlen sind Schätzungen aus Ihren Antworten. Sie sinken mit den Tagen ohne Übung, langsamer nach richtigen Antworten an verschiedenen Tagen.
progress-known = { $count ->
    [one] { $known } von einer Fertigkeit sicher.
   *[other] { $known } von { $count } Fertigkeiten sicher.
 }
progress-nothing = Nichts ist fällig.
progress-nothing-until = Jetzt ist nichts fällig; die nächste Fertigkeit ist { $when }.

## Was sich nicht üben lässt

exercise-no-lesson = eine Lektion `{ $id }` gibt es nicht
exercise-no-skill = eine Fertigkeit `{ $id }` gibt es nicht
exercise-no-drill = keine Übung trainiert das
## Was Mischtisch und Üben gleich sagen

screen-light-d65 = Tageslicht
screen-light-a = Glühlampenlicht
screen-light-led-b3 = weißes LED-Licht
screen-light-fl2 = kaltes Leuchtstofflicht
# Ebenso, wie es hinter „bei“ steht.
screen-light-d65-in = Tageslicht
screen-light-a-in = Glühlampenlicht
screen-light-led-b3-in = weißem LED-Licht
screen-light-fl2-in = kaltem Leuchtstofflicht
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
screen-percent = { $number } %
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
screen-within = gilt bis ΔE00 { $tolerance } als erreicht
screen-bare = { $site ->
    [lip] bloße Lippe
   *[other] bloße Haut
 }
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
screen-goal-tone = { $site ->
    [lip] in dieser Lippe
   *[other] auf dieser Haut
 }: { $tone }
screen-eyes = Gesehen mit
screen-eyes-told = Farbfelder, gesehen mit: { $eyes }.
screen-eyes-note = Die Farbfelder stehen da, wie solche Augen sie sehen, simuliert für die volle Farbsehschwäche: Die meisten, die eine haben, sehen etwas zwischen diesem und dem Gewohnten. Wörter und Zahlen bleiben die der Farbe selbst. <a href="{ $href }">Mehr über andere Augen</a>.

## Der Mischtisch

bench-title = Der Mischtisch
bench-about = Tropfen mischen, in die Haut einer Kundin oder eines Kunden setzen und sehen, wozu sie über die Jahre und unter vier Lichtarten verheilen.
bench-lead = Wählen Sie eine Person, setzen Sie eine Mischung und sehen Sie zu, was die Haut daraus macht: am selben Tag, verheilt und nach Jahren.
bench-without-scripts = Der Mischtisch rechnet, während Sie seine Regler bewegen; dazu braucht er Skripte und WebAssembly, die Ihr Browser abgeschaltet oder nicht hat. Alles, was hier zu lesen ist, geht ohne, auch die Arbeitsblätter: <a href="{ $lessons }">weiter mit den Lektionen</a>.
bench-years = Über die Jahre
bench-case = Der Fall
bench-mix = Mischung
bench-mix-empty = Mischung leeren
bench-most-reached = { $name }: Mehr als { $count } Tropfen aus einer Flasche lassen sich nicht nehmen.
bench-in-bottle = Farben und Zahlen neben einem Namen gelten in der Flasche, bei Tageslicht.
bench-bottles = Flaschen
bench-modifiers = Korrektoren
bench-line = { $name } ({ $count })
bench-client = Person
bench-start-from = Beginnen mit
bench-skin-below = einer unten beschriebenen Haut
bench-phototype = Fototyp
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
bench-skin-words = Diese Wörter ergeben eine typische Haut als Anfang. Ein Fototyp handelt von der Sonne, nicht von der Farbe: Bewegen Sie die Regler, bis die Haut aussieht wie die vor Ihnen. Eine selbst eingestellte Zahl gilt als so gut bekannt, wie das Auge sie kennt.
bench-melanin = Melanin
bench-blood = Rötung: Blut
bench-background = Unterton: Gelb des Gewebes
bench-scar = Die Stelle ist eine flache, blasse Narbe
bench-skin-back = Zurück zu den Wörtern
bench-old = Alte Arbeit
bench-to-results = Zu den Ergebnissen
bench-old-add = Alte Arbeit hinzufügen
bench-technique-and-placement = Technik und Pigmentierung
bench-technique = Technik
bench-technique-both = Schattierung mit Härchen
bench-technique-strokes = Härchenzeichnung
bench-technique-powder = Schattierung
bench-depth = Tiefe der Oberkante
bench-thickness = Dicke
bench-load = Pigmentmenge
bench-load-help = 1 ist ein voller Durchgang.
bench-coverage = Deckung
bench-coverage-help = Der Anteil der Fläche, der Farbe trägt. Das Farbmuster zeigt, was das Auge aus der Entfernung daraus macht.
bench-wear = Beanspruchung und Nacharbeit
bench-touch-up = Nacharbeit
bench-touch-up-help = Dieselbe Mischung noch einmal, an derselben Stelle.
bench-touch-up-none = keine
bench-touch-up-after = nach { $age }
bench-touched-up = Nach { $age } mit derselben Mischung nachgearbeitet.
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
bench-marks-skin = <strong>Haut</strong> oder <strong>Lippe</strong>, <strong>jetzt</strong>: bloß, und mit alter Arbeit, wie sie zu Ihnen kommt
bench-marks-work = <strong>Tag</strong>, <strong>6 W</strong>, <strong>1 J</strong>, <strong>2 J</strong>, <strong>3 J</strong>: die Arbeit, in der Folge der Zeit verbunden; umringt ist der beurteilte Zeitpunkt
bench-marks-goal = <strong>Ziel</strong>, gestrichelte Linie: so nah am Ziel wie seine Toleranz, unter Farben seiner Helligkeit (links) und seines Bunttons (rechts)
bench-marks-likely = <strong>90 %</strong>, volle Linie: wo zum beurteilten Zeitpunkt neun von zehn Ergebnissen liegen
bench-marks-beyond = *: auf diesem Bildschirm nicht darstellbar
bench-sure = Wie sicher das ist
bench-best = Was am besten wäre
bench-most-bottles = Flaschen je Mischung, höchstens
bench-most-drops = Tropfen insgesamt, höchstens
bench-best-about = Jede Mischung innerhalb dieser Grenzen, aus Flaschen, die für die Stelle gedacht sind und nichts Beschränktes enthalten, wird in dieser Haut betrachtet und zum beurteilten Zeitpunkt und Licht mit dem Ziel verglichen. Was ihm nahekommen kann, wird ganz berechnet, alles andere nur so genau, dass man sieht, dass es das nicht tut.
bench-best-touch-up = Nachgearbeitet wird mit der Mischung auf dem Tisch; andere Mischungen werden nur beim ersten Setzen versucht.
bench-best-mixes = Die besten Mischungen

# Was die Seite sagt, während sie läuft.
bench-mark-skin = { $site ->
    [lip] Lippe
   *[other] Haut
 }
bench-mark-now = jetzt
bench-mark-goal = Ziel
bench-mark-likely = 90 %
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
bench-mix-instead = Eine andere Mischung, weil die letzte nicht für diese Stelle gedacht ist ({ $site }): { $mix }.
bench-mix-nothing = Noch nichts in der Mischung.
bench-caution = Vorsicht.
bench-caution-see = { $note } Siehe { $caution }. Die Farbe kommt danach.
bench-old-none = (keine)
bench-old-count = ({ $count })
bench-old-number = Alte Arbeit { $number }
bench-old-made-of = Besteht aus
bench-old-age = Alter
bench-old-remove = Entfernen
bench-old-remove-number = Entfernen: alte Arbeit { $number }
bench-old-told = { $what }; { $age }; { $placed }
bench-sun-and-care = { $sun }; { $oil }; { $aftercare }
bench-angle = Typologischer Winkel dieser Haut (ITA): { $degrees }°.
bench-colourant = { $name } ({ $id })
bench-restriction = { $id } ({ $name }): { $place }, { $rule } seit { $since } ({ $source })
bench-link-copied = Der Link ist kopiert.
bench-link-marked = Der Link ist markiert: Kopieren Sie ihn mit Ihrem Browser.
bench-link-amiss = Teile dieses Links wurden nicht verstanden und ausgelassen: { $parts }.
bench-no-case = Das Rechenwerk kann diesen Fall nicht beantworten: { $why }.
bench-working = Es wird gerechnet …
bench-too-many = Das sind mehr Mischungen, als sich durchprobieren lassen: Lassen Sie weniger Flaschen oder weniger Tropfen in einer Mischung zu.
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
bench-likely = { $judged }: wahrscheinlich innerhalb von ΔE00 { $distance } um die erwartete Farbe; am unsichersten: { $one } oder { $other }. Haut, Tiefe, Pigmentmenge und Haltbarkeit jedes Farbmittels wurden so weit verändert, wie man sich darin irren kann.
bench-likely-several = { $judged }: wahrscheinlich innerhalb von ΔE00 { $distance } um die erwartete Farbe; am unsichersten: { $one } oder aber { $other }. Haut, Tiefe, Pigmentmenge und Haltbarkeit jedes Farbmittels wurden so weit verändert, wie man sich darin irren kann.
bench-likely-nothing = { $judged }: wie erwartet, nichts schwankt. Haut, Tiefe, Pigmentmenge und Haltbarkeit jedes Farbmittels wurden so weit verändert, wie man sich darin irren kann.
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
bench-distance = ΔE00
bench-lab-head = L* a* b*
bench-lab-cell = { $l }; { $a }; { $b }
bench-take = Übernehmen
bench-take-mix = Übernehmen: { $mix }
bench-time-in-light = { $time }, { $light }

## Üben

practice-title = Üben
practice-about = Frisch gemachte Aufgaben, bewiesen und danach bewertet, wozu Ihre Antwort verheilen würde. Als Nächstes kommt, was Sie am nötigsten haben.
practice-lead = Frisch gemachte Aufgaben; was nach Farbe fragt, ist bewiesen, bevor Sie es sehen. Als Nächstes kommt, was Sie am nötigsten haben.
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
practice-end-last = Ansehen, was die Sitzung gezeigt hat
practice-left = Eine Sitzung, die Sie verlassen haben
practice-left-of = { $answers ->
    [one] Sie waren bei Aufgabe { $number } von { $count } ({ $skill }). Ihre { $answers } Antwort steht in Ihrem Lernstand; Sie können dort weitermachen, wo Sie waren.
   *[other] Sie waren bei Aufgabe { $number } von { $count } ({ $skill }). Ihre { $answers } Antworten stehen in Ihrem Lernstand; Sie können dort weitermachen, wo Sie waren.
}
practice-left-at = { $answers ->
    [one] Sie waren bei Aufgabe { $number } ({ $skill }). Ihre { $answers } Antwort steht in Ihrem Lernstand; Sie können dort weitermachen, wo Sie waren.
   *[other] Sie waren bei Aufgabe { $number } ({ $skill }). Ihre { $answers } Antworten stehen in Ihrem Lernstand; Sie können dort weitermachen, wo Sie waren.
}
practice-left-other = die verlassene Sitzung lässt sich nicht noch einmal herstellen
practice-go-on = Weitermachen
practice-let-go = Beenden
practice-bottles = { $count ->
    [one] Die Flasche dieser Aufgabe
   *[other] Die { $count } Flaschen dieser Aufgabe
}
practice-bottles-about = Die Farben sind die in der Flasche, ohne Haut; Farbmittel stehen mit ihrem Anteil da. Jeder Name führt an seinen Platz in der Flaschensammlung. Wenn Sie diese Seite verlassen, können Sie mit der Sitzung weitermachen, sobald Sie zurückkommen.
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
practice-yours-best = Ihre Antwort ist die beste
practice-best = Die beste
practice-also-good = Ebenso gut
practice-right-number = Die richtige Zahl
practice-within = Bis { $tolerance } Abweichung: volle Wertung.
practice-at = { $who }, { $time }
practice-today = heute
practice-person = { $name }, { $age }
practice-skin-now = { $name }: { $site ->
    [lip] die Lippe jetzt
   *[other] die Haut jetzt
 }
practice-work-now = { $name }: Zustand jetzt
practice-skin = Haut
practice-hair = Haar
practice-placement = Pigmentierung
practice-judged = Beurteilt
practice-old = Alte Arbeit
practice-health = Gesundheit
practice-health-nothing = nein auf jede Frage, die gestellt wurde
practice-skin-words = Fototyp { $phototype }, { $undertone }, { $redness }
practice-placed = { $depth } mm tief, { $thickness } mm dick, Pigmentmenge { $load }, { $share } der Fläche gedeckt
practice-placed-full = { $depth } mm tief, { $thickness } mm dick, ein voller Durchgang, { $share } der Fläche gedeckt
practice-old-told = { $age } alt. { $note }
practice-several = Wählen Sie alles, was zutrifft.
practice-order = Bringen Sie dies in die richtige Reihenfolge, das Erste nach oben.
practice-earlier = Früher: { $step }
practice-later = Später: { $step }
practice-now-step = { $step }: jetzt Nummer { $place } von { $count }
practice-drops-how = { $count ->
    [one] Eine Flasche, allein oder mit Korrektoren: insgesamt 1 Tropfen, davon höchstens { $most } von Korrektoren.
   *[other] Eine Flasche, allein oder mit Korrektoren: insgesamt { $count } Tropfen, davon höchstens { $most } von Korrektoren.
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
practice-nothing = Nicht richtig. Wertung 0{"\u00A0"}%.
practice-outcome = Was folgt
practice-over-time = Im Lauf der Zeit, auf dieser Haut
practice-over-time-of = { $who }, im Lauf der Zeit auf dieser Haut
practice-not-to-do = Wozu Ihre Antwort führen würde. Getan werden sollte es nicht
practice-one-moment = Auf dieser Haut, zu dem einen Zeitpunkt, nach dem gefragt ist
practice-one-moment-of = { $who }, auf dieser Haut zu dem einen Zeitpunkt, nach dem gefragt ist
practice-belief = Verlockender Irrtum
practice-truth = Was wirklich geschieht
practice-belief-more = Mehr zu diesem Irrtum
practice-reread = Zum Nachlesen: { $lesson }
practice-worth = Alle Antworten, und warum
practice-credit = Wertung { $share }
practice-proved = Wie das bewiesen wurde: { $proof }
practice-source = Quelle: { $source }. Aufgabe { $drill } { $number }.
practice-now-little = { $name }: jetzt ein wenig bekannt, { $share } (vor dieser Antwort { $before }).
practice-now-part = { $name }: jetzt zum Teil bekannt, { $share } (vor dieser Antwort { $before }).
practice-now-well = { $name }: scheint jetzt gut bekannt, { $share } (vor dieser Antwort { $before }).
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
practice-not-kept-new = Dieses Gerät nimmt für diese Seite nichts Neues auf: Es ist kein Platz, oder der Speicher ist ausgeschaltet. Was es schon aufbewahrt, ist noch da. Sichern Sie Ihren Lernstand in eine Datei, bevor Sie gehen, und laden Sie diese beim nächsten Mal.
practice-not-kept-now = Diese Antwort ließ sich auf diesem Gerät nicht aufbewahren: Es ist kein Platz, oder der Speicher ist ausgeschaltet. Sichern Sie Ihren Lernstand in eine Datei, wenn die Sitzung zu Ende ist.
practice-unreadable = Die Aufzeichnung auf diesem Gerät ist nicht zu gebrauchen: { $why }. Sie bleibt, wie sie ist, und nichts wird aufbewahrt, bis Sie eine andere laden oder sie löschen.
practice-elsewhere = Auch in einem anderen Fenster wurde geübt; dessen Antworten sind übernommen.
practice-elsewhere-wiped = In einem anderen Fenster wurde die Aufzeichnung gelöscht; mit dieser Antwort beginnt sie von Neuem.
practice-saved = Gesichert als { $name }.
practice-loaded = Die Datei ist geladen.
practice-file-empty = sie ist leer
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
drill-bottles = Die Flaschen, zum Nachsehen:
drill-choose-some = Wählen Sie mindestens eine.
drill-number-steps = Jedes bekommt eine Nummer von 1 bis { $count }, jede Nummer einmal.
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
drill-percent = { $number } %

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
paper-to-pass-facts = ab { $mark } % der ganzen Wertung
paper-answers = Antworten
paper-answers-facts = bleiben laufend auf diesem Gerät und werden am Ende als Antwortzettel abgegeben: eine Datei zum Senden oder ein Code zum Kopieren
paper-person = { $name } ({ $id })
paper-promise = Die Vorhersagen dienen dem Unterricht und versprechen nie ein Ergebnis an einem Menschen. Bildschirme zeigen Farben verschieden: Lesen Sie die Wörter und Zahlen neben jedem Farbmuster. Die Gesundheit geht vor: Gibt eine Antwort Anlass zur Vorsicht, so wiegt das schwerer als jede Farbe.
paper-without-scripts = Ohne Skripte kann diese Seite keinen Antwortzettel machen. Bitten Sie um den gedruckten Bogen.
paper-forgets = Dieser Browser lässt die Seite nichts auf dem Gerät aufbewahren: Was Sie antworten, ist verloren, wenn die Seite geschlossen wird. Lassen Sie sie offen, bis Sie Ihren Zettel haben.
paper-begin = Beginnen
paper-weight = { $weight } % der Wertung
paper-weight-short = { $weight } %
paper-bottles = Die Flaschen in diesem Bogen
paper-bottle-about = { $about } In der Flasche { $words }, { $lab }; { $contents }.
paper-bottle-modifier = (Korrektor)
paper-hand-in = Abgeben
paper-slip = Ihr Antwortzettel
paper-save = Zettel als Datei sichern
paper-copy = Code kopieren
paper-back = Zurück zu den Fragen
paper-send = Senden Sie eines von beiden Ihrer Lehrkraft: die Datei oder diesen Code.
paper-code = Code des Zettels
paper-no-advice = Nichts hier ist ärztlicher Rat. Es entscheiden die örtlichen Vorschriften und zugelassene Fachleute.
paper-version = Bogen { $digest }; { $course }, Fassung { $version }
paper-name = Name
paper-id = Kennung
paper-date = Datum
paper-sheet-how = { $minutes ->
    [one] 1 Minute
   *[other] { $minutes } Minuten
 }, { $count ->
    [one] 1 Frage
   *[other] { $count } Fragen
 }; bestanden ist ab { $mark } % der ganzen Wertung, und was leer bleibt, zählt nichts. Alle Antworten hier eintragen: einen Buchstaben ankreuzen, oder so viele, wie zutreffen; in leere Felder Buchstaben der Reihe nach, Tropfen oder eine Zahl schreiben. Nur was hier eingetragen ist, wird bewertet.
paper-sheet-foot = Bogen { $digest }; Fassung des Kurses { $version }. Die Vorhersagen dienen dem Unterricht und versprechen nie ein Ergebnis an einem Menschen. Nichts hier ist ärztlicher Rat. Die Wörter und Zahlen unter einem Farbmuster sagen alles, was seine Farbe sagt.
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
paper-incomplete = Begonnen, aber nicht vollständig, und deshalb nicht gezählt: { $numbers }.
paper-your-answers = Ihre Antworten: { $answers }.
paper-bottles-short = Flaschen
paper-bottles-where = was in jeder ist, steht unter der letzten Frage
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
assignment-amiss = Nicht vollständig und deshalb ausgelassen: { $numbers }. Nummerieren Sie alles, jede Zahl einmal.
assignment-again = Sie können fortfahren und noch einmal sichern; geben Sie die letzte Datei ab.

## Die Suche

search-title = Suche
search-about = Ein Wort in den Lektionen, Begriffen, Flaschen, Farbmitteln, Personen, Irrtümern, Warnungen, Arbeitsblättern und übrigen Seiten dieses Kurses finden.
search-without-scripts = Die Suche braucht Skripte. Das <a href="glossary.html">Glossar</a> und die <a href="index.html">Liste der Lektionen</a> gehen ohne.
search-words = Gesuchte Wörter
search-help = Der Anfang eines Wortes genügt, und ein Tippfehler wird verziehen.
search-lesson = Lektion
search-term = Begriff
search-bottle = Flasche
search-client = Person
search-misconception = Irrtum
search-caution = Vorsicht
search-colourant = Farbmittel
search-page = Seite
search-worksheet = Arbeitsblatt
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
report-percent = { $number } %
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
report-passed-of-mark = { $passed } von { $decided } (Bestehensgrenze { $mark } %)
report-close = { $count } innerhalb eines Standardfehlers um die Bestehensgrenze
report-score = im Mittel { $mean } von { $items }, Standardabweichung { $deviation }
report-coefficient = { $value }, Standardfehler { $error } Fragen
report-answer-missing = { $count ->
    [one] 1 Blatt, auf dem eine Antwort fehlt
   *[other] { $count } Blätter, auf denen eine Antwort fehlt
 }
report-by-mark = Blätter nach Note
report-mark = Note
report-marks-of = Noten: { $paper }
report-marks-about = Die Noten aller, was sie bedeuten, und die mittlere Wertung jedes Abschnitts in Prozent.
report-marks-left-out = Gezeigt sind die, die der Bestehensgrenze am nächsten liegen; { $count } weitere stehen in den Tabellen als CSV.
report-decided-head = Bestanden
report-passed = bestanden
report-passed-closely = knapp bestanden
report-not-passed = nicht bestanden
report-not-passed-closely = knapp nicht bestanden
report-attempt = Versuch { $attempt }
report-bar = Balken
report-mark-range = { $low } bis { $high } %
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
report-matrix-about = Mittlere Wertung in Prozent; die Spalten sind die Nummern der Fertigkeiten oben. „Alle Fertigkeiten“ ist das Mittel aller Antworten, von denen jede gleich zählt: nicht die Note, in die die Abschnitte mit ihrem Gewicht eingehen. <span class="sign">▼</span> der ganze wahrscheinliche Bereich liegt unter dem Mittel der Gruppe, <span class="sign">△</span> darüber; kein Zeichen: Es lässt sich kein Unterschied feststellen, oft weil die Antworten wenige sind.
report-matrix-left-out = Gezeigt sind die mit der geringsten Wertung; { $count } weitere stehen auf der <a href="{ $everybody }">Seite aller</a>.
report-apprentice = Lernende
report-all = Alle Fertigkeiten
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
report-scatter-about = Jedes Zeichen ist eine Übung oder eine Frage; die Nummern sind die der Tabelle. Quadrate (gefüllt) sind noch einmal anzusehen, Kreise nicht; kleine Kreise haben zu wenige Antworten, um beurteilt zu werden. Gestrichelt: Lösungsgrad 20 % und 95 %, Trennschärfe 0,20.
report-scatter-left-out = { $count ->
    [one] 1 ohne eine der beiden Zahlen ist ausgelassen.
   *[other] { $count } ohne eine der beiden Zahlen sind ausgelassen.
 }
report-scatter = { $count ->
    [one] 1 Item nach Lösungsgrad und Trennschärfe; { $flagged } noch einmal anzusehen
   *[other] { $count } Items nach Lösungsgrad und Trennschärfe; { $flagged } noch einmal anzusehen
 }
report-scatter-described = Nach rechts: Lösungsgrad von 0 bis 100 %. Nach oben: Trennschärfe. Gestrichelte Linien sind die Grenzen von beiden. Quadrate sind Items, die noch einmal anzusehen sind, kleine Kreise solche mit zu wenigen Antworten, Kreise die übrigen; die Tabelle aller Items enthält die Zahlen.
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
report-time = Zeit im Median
report-time-about = Minuten und Sekunden von der vorigen Antwort bis zu dieser, wie die Seiten der Prüfungen sie melden: die Mitte aller Antworten. Gezählt wird sie bei der geprüften Person; sie zeigt, wohin die Zeit geht, und nicht, wer schnell ist.
report-took = { $minutes } min
report-square-t = { $square } (t { $t })
report-plus-minus = { $value } ± { $error }
report-look = noch einmal ansehen
report-fine = in Ordnung
report-too-few = zu wenige ({ $answers })
report-items-about = Mit weniger als { $least } Antworten wird kein Item beurteilt: Sein Urteil lautet dann „zu wenige“, mit ihrer Zahl.
report-scroll = Seitwärts rollen, um alle Spalten zu sehen.
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
report-options-about = Bei einer Übung sind die Möglichkeiten aller ihrer Aufgaben danach gesammelt, was zu ihnen führt. Der Balken ist der Anteil: wie oft sie gewählt wurde, sooft sie angeboten war. „Sonst richtig“ ist die mittlere Wertung aller übrigen Antworten derer, die sie wählten: Zieht eine falsche Möglichkeit die Fähigeren an, ist das ein Grund, den Schlüssel anzusehen.
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
report-chosen-share = In { $share } gewählt
report-no-options = Keine Antwort wird aus Möglichkeiten gewählt.
report-right-answer = die richtige Antwort
report-no-belief = eine falsche Antwort ohne benannten Irrtum
report-option-time = { $what } (Möglichkeit { $time } davon)

## Berichte: was die Zahlen bedeuten

report-read-facility = Lösungsgrad
report-read-facility-about = Mittlere Wertung eines Items. Von 20 % bis 95 % kann es Personen unterscheiden; was alle wissen müssen, darf durchaus darüber liegen.
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
report-next-by = Was als Nächstes zu üben ist, bis { $date }
report-practice = Übung
report-paper = Prüfung
report-sheet-of = { $blueprint }: { $result }
report-sheet-attempt = { $blueprint }, Versuch { $attempt }: { $result }
report-sections = Abschnitte
report-section-earned = { $section } { $credit }
report-decided = { $decision } (Bestehensgrenze { $mark } %)
report-decided-with-error = { $decision } (Bestehensgrenze { $mark } %, Standardfehler { $error })
report-reread = Nachlesen: { $lessons }
report-then = Dann: { $command }
report-then-there = Dann üben: <a href="{ $practice }">{ $skill }</a>
report-think-over = Des Nachdenkens wert
report-chosen-the-one = Gewählt in der einen Frage, die ihn anbot; blindes Raten würde ihn in { $guessing } wählen.
report-chosen-in = Gewählt in { $chosen } der { $offered } Fragen, die ihn anboten; blindes Raten würde ihn in { $guessing } wählen.
report-shown-freely = { $count ->
    [one] Gezeigt in 1 Antwort ohne Auswahl.
   *[other] Gezeigt in { $count } Antworten ohne Auswahl.
 }
report-every-skill = Jede geprüfte Fertigkeit
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
    [one] Noch einmal anzusehen: 1 Übung; der Bericht sagt, warum.
   *[other] Noch einmal anzusehen: { $drills } Übungen; der Bericht sagt, warum.
 }
report-again-questions = { $questions ->
    [one] Noch einmal anzusehen: 1 Frage der Fragensammlung; der Bericht sagt, warum.
   *[other] Noch einmal anzusehen: { $questions } Fragen der Fragensammlung; der Bericht sagt, warum.
 }
report-again-both = Noch einmal anzusehen: { $drills ->
    [one] 1 Übung
   *[other] { $drills } Übungen
 } und { $questions ->
    [one] 1 Frage der Fragensammlung
   *[other] { $questions } Fragen der Fragensammlung
 }; der Bericht sagt, warum.
report-again-nothing = Keine Übung und keine Frage muss noch einmal angesehen werden.
report-again-too-few = Noch hat keine Übung und keine Frage genug Antworten, um beurteilt zu werden.
report-paper-sheets = { $blueprint }: { $count ->
    [one] 1 Blatt
   *[other] { $count } Blätter
 }
report-paper-mean = mittlere Note { $mean } %
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

## Berichte: was der Befehl ausgibt

report-told-pages = { $count ->
    [one] 1 Seite, { $size } MB in { $folder }; gelesen in { $read } s, gezählt in { $counted } s, geschrieben in { $wrote } s
   *[other] { $count } Seiten, { $size } MB in { $folder }; gelesen in { $read } s, gezählt in { $counted } s, geschrieben in { $wrote } s
 }
report-told-open = Öffnen Sie { $page } in einem Browser
report-told-assignments = { $count ->
    [one] 1 Zuweisung in { $folder }; verteilen Sie sie mit `healedhue assign ORDNER`
   *[other] { $count } Zuweisungen in { $folder }; verteilen Sie sie mit `healedhue assign ORDNER`
 }

## Was `mark` und `assign` von Noten ausgeben

mark-told = { $who }: { $total } %, Bestehensgrenze { $mark } % mit einem Standardfehler von { $error }: { $decided }; { $sections }
mark-told-nothing-answered = { $decided }, nichts beantwortet
mark-told-close = { $decided }, innerhalb eines Standardfehlers um die Bestehensgrenze
mark-told-already = { $decided }; steht schon im Notenbuch
mark-told-further = { $decided }; ein weiterer Versuch
mark-told-answer = { $given }, am besten { $best }, Wertung { $credit }
mark-told-nothing = nichts
mark-told-rests = { $question }; Quelle: { $source }.
mark-told-missing = Ohne Abgabe
mark-told-count = { $marked } bewertet, { $refused } abgelehnt
mark-told-count-passed-over = { $marked } bewertet, { $refused } abgelehnt, { $passed } übergangen
assign-told-pages = { $title }, fällig am { $date }: { $pages ->
    [one] 1 Seite
   *[other] { $pages } Seiten
 } in { $folder }
assign-told-next = Geben Sie jeder Person ihren Ordner; sammeln Sie die Antwortzettel mit `healedhue assign DATEI --collect ZETTEL…` ein
assign-told-handed-in = { $title }; Abgaben: { $count } von { $all ->
    [one] 1 Person
   *[other] { $all } Personen
 }.
assign-told-credit = Wertung { $credit }, { $answered } von { $all } beantwortet
assign-told-answer = { $number }. { $given }, Wertung { $credit }.
assign-told-blank = leer
assign-told-habit = Wohl eine Gewohnheit: „{ $belief }“
assign-told-reread = Wieder lesen: { $lessons }
assign-told-belief = „{ $belief }“ { $often }, bei { $people } von { $all ->
    [one] 1 Person
   *[other] { $all } Personen
 }.

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

## Üben im Terminal

terminal-exercises = { $count ->
    [one] eine Aufgabe
   *[other] { $count } Aufgaben
 }
terminal-at-most = { $minutes ->
    [one] { $exercises }, höchstens eine Minute
   *[other] { $exercises }, höchstens { $minutes } Minuten
 }
terminal-minutes = { $minutes ->
    [one] eine Minute
   *[other] { $minutes } Minuten
 }
terminal-greeting = { $course }: Üben, { $extent }. Geben Sie Ihre Antwort ein und drücken Sie die Eingabetaste; ? sagt, was in den genannten Flaschen ist, q beendet die Sitzung.
terminal-bottle = { $name }: { $about } { $contents }.
terminal-colourant = { $id } { $share } %
terminal-no-bottle = Hier ist keine Flasche genannt.
terminal-promise = Farben sind Vorhersagen zum Lernen, nie das Versprechen eines Ergebnisses an einem Menschen.
terminal-record = { $file }: { $why }; die Datei blieb, wie sie ist: Legen Sie sie anderswohin, oder nennen Sie mit --progress eine andere
terminal-kept = Ihr Lernstand liegt in
terminal-number = { $number } von { $count }
terminal-number-minute = { $number }, Minute { $passed } von { $minutes }
terminal-prompt = Ihre Antwort ({ $how }, q zum Beenden):
terminal-again = Bitte antworten Sie so: { $how }, oder q ({ $why }).
terminal-so-far-one = Bisher: eine Antwort.
terminal-so-far = { $skills ->
    [one] Bisher: { $answers } Antworten in einer Fertigkeit.
   *[other] Bisher: { $answers } Antworten in { $skills } Fertigkeiten.
 }
terminal-plan = { $count ->
    [one] Plan: eine Aufgabe: { $skills }. Er ändert sich mit Ihren Antworten.
   *[other] Plan: etwa { $count } Aufgaben: { $skills }. Er ändert sich mit Ihren Antworten.
 }
terminal-summary = Zusammenfassung
terminal-change = { $count ->
    [one] eine Antwort, Wertung { $credit }. Vorher gekonnt: { $before } ({ $share_before }), jetzt: { $after } ({ $share_after }).
   *[other] { $count } Antworten, Wertung { $credit }. Vorher gekonnt: { $before } ({ $share_before }), jetzt: { $after } ({ $share_after }).
 }
terminal-reread = { $count ->
    [one] { $lesson } (eine Antwort)
   *[other] { $lesson } ({ $count } Antworten)
 }
terminal-belief = „{ $belief }“ { $often }.
terminal-chosen-once = Das eine Mal gewählt, das es angeboten war
terminal-chosen-always = Alle { $offered } Male gewählt, die es angeboten war
terminal-chosen = { $chosen } der { $offered } Male gewählt, die es angeboten war
terminal-percentages = Prozente sind Schätzungen, wie gut eine Fertigkeit gekonnt ist. Sie sinken mit den Tagen ohne Übung.
terminal-person = { $name }, { $age }; Haar: { $hair }.
terminal-person-skin = { $name }, { $age }: Fototyp { $phototype }, Unterton { $undertone }, Rötung { $redness }; Haar: { $hair }.
terminal-wish = „{ $wish }“
terminal-health = Gesundheit: { $note }
terminal-bare = { $site ->
    [lip] Lippe ohne Arbeit
   *[other] Haut ohne Arbeit
 }
terminal-old-work = Alte Arbeit: { $told }
terminal-now = wie es jetzt ist
terminal-goal = Ziel
terminal-goal-words = { $depth }; { $site ->
    [lip] in dieser Lippe
   *[other] auf dieser Haut
 }: { $tone }
terminal-within = { $b }, innerhalb von ΔE00 { $tolerance }
terminal-beyond = (außerhalb von sRGB)
terminal-placed = Pigmentierung: { $depth } mm tief, { $thickness } mm dick, Pigmentmenge { $load }, { $coverage } % der Fläche gedeckt.
terminal-drops-limits = Eine Flasche ({ $bottles }), allein oder mit Korrektoren: insgesamt { $drops } Tropfen, davon höchstens { $modifiers } von Korrektoren.
terminal-right = Richtig
terminal-part = Nicht die beste Antwort
terminal-nothing = Keine Punkte
terminal-credit = { $verdict }, Wertung { $share }
terminal-yours = Ihre
terminal-best = die beste
terminal-behind = Dahinter steht oft: „{ $belief }“
terminal-truth = Was wirklich geschieht: { $truth }
terminal-read-again = Wieder lesen: { $lesson }
terminal-right-order = Die richtige Reihenfolge: { $steps }.
terminal-these-hold = Diese treffen zu: { $statements }.
terminal-best-is = Am besten: { $best }. { $why }
terminal-letters = { $from } bis { $to }
terminal-how-several = alle von { $letters }, die zutreffen
terminal-how-order = { $letters } in ihrer Reihenfolge
terminal-how-drops = Tropfen je Buchstabe, etwa { $example }
terminal-how-number = eine Zahl in { $unit }
terminal-one-letter = nur ein einzelner Buchstabe ist gefragt
terminal-letters-alone = nur Buchstaben sind gefragt, etwa { $example }
terminal-whole-drops = je Flasche sind ihr Buchstabe und ganze Tropfen gefragt
terminal-no-letter = { $letter } gibt es hier nicht, nur { $letters }
terminal-each-once = in einer Reihenfolge steht jeder Buchstabe einmal: { $letters }
terminal-no-bottle-here = eine Flasche „{ $bottle }“ gibt es hier nicht, nur { $letters }
