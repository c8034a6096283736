"""Bayes factor of tests/assess/diagnosis.rs: the plain product of every answer's chance, averaged over grids of skill and firmness."""

SKILLS = [0.05 + 0.1 * i for i in range(10)]
FIRMNESSES = [0.35 + 0.1 * i for i in range(7)]

OPTIONS = ["right", "black", "opposite", "wrong"]
PAIR = ["right", "black", "black"]
PLAIN = ["right", "opposite"]
ASKED = [(OPTIONS, 1), (OPTIONS, 1), (OPTIONS, 3), (PAIR, 2), (PAIR, 0), (PLAIN, 0), (PLAIN, 0)]


def chance(options, chosen, belief, firmness, skill):
    """Chance of one answer: by the belief where it is offered, else by skill, else any wrong option."""
    held = [at for at, option in enumerate(options) if option == belief]
    wrong = [at for at, option in enumerate(options) if option != "right"]
    by_skill = skill if chosen not in wrong else (1 - skill) / len(wrong)
    if not held:
        return by_skill
    return (firmness / len(held) if chosen in held else 0) + (1 - firmness) * by_skill


def likelihood(belief, firmness, skill):
    product = 1.0
    for options, chosen in ASKED * 3:
        product *= chance(options, chosen, belief, firmness, skill)
    return product


for belief in ("black", "opposite"):
    held = sum(likelihood(belief, f, s) for f in FIRMNESSES for s in SKILLS) / len(FIRMNESSES)
    print(belief, held / sum(likelihood(belief, 0, s) for s in SKILLS))
