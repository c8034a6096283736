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
