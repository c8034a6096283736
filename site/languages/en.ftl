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
