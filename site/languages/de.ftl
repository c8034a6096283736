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
