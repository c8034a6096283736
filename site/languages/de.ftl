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
