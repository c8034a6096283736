"""Makes item_statistics.json: a simulated cohort of 500 people by 60 items and its statistics by independent packages.

Needs the PyPI packages numpy (made with 2.4.6), scipy (1.17.1), pandas (3.1.1), pingouin (0.7.0), statsmodels (0.15.0), girth
(0.8.0) and mirt (1.2.0). Takes some minutes. Everything random comes from numpy's default_rng with the seed below.

The cohort. Abilities normal with mean 0.3 and deviation 1.1, difficulties even from -2 to 2 in a shuffled order, answers by
the Rasch model. Four items misbehave on purpose: 56 is guessed by everybody, 57 is got wrong by the able, 58 is far too easy,
59 far too hard. Each item has four options; option 0 is the key; who is wrong picks option 1, 2 or 3 with chances 0.5, 0.3
and 0.2, but nobody picks option 3 of item 0, and on item 1 the able who are wrong pick option 1. An answer is kept as the digit
of its option, a person as a string of 60 digits. In the second set of credits, option 1 is worth a half.

The sparse cohort: the first 200 people on the first 24 items, with a fifth of the answers taken away (kept as ".").

What is computed by whom:
  facility               numpy
  point-biserial         scipy.stats.pointbiserialr, item against the sum of the others
  item-rest correlation  scipy.stats.pearsonr, for the half credits
  KR-20, alpha           pingouin.cronbach_alpha
  difficulties, errors   statsmodels ConditionalLogit: a person is a group, an item a dummy; that is conditional maximum
                         likelihood of the Rasch model; centred at 0, errors through the covariance matrix
  difficulties again     girth.rasch_conditional (stops at changes of 1e-3, so it is only good to a few of those)
  measures, fit          mirt: Warm's weighted likelihood, infit, outfit and their Wilson-Hilferty t, at the difficulties above
  Wilson intervals       statsmodels proportion_confint
  knowledge tracing      mirt BKTModel.online_step, without forgetting
"""
import json
import warnings

from importlib.metadata import version

import girth
import numpy as np
import pandas
import pingouin
import scipy.stats
from mirt.diagnostics.itemfit import compute_itemfit
from mirt.diagnostics.personfit import compute_personfit
from mirt.models.dichotomous import TwoParameterLogistic
from mirt.models.dynamic import BKTModel
from mirt.scoring.wle import WLEScorer
from statsmodels.discrete.conditional_models import ConditionalLogit
from statsmodels.stats.proportion import proportion_confint

SEED, PEOPLE, ITEMS = 20240, 500, 60
rng = np.random.default_rng(SEED)


def chance(x):
    return 1 / (1 + np.exp(-x))


def rounded(values, digits=9):
    return [round(float(v), digits) for v in values]


ability = rng.normal(0.3, 1.1, PEOPLE)
difficulty = rng.permutation(np.linspace(-2, 2, ITEMS))
likely = chance(ability[:, None] - difficulty[None, :])
likely[:, 56] = 0.5
likely[:, 57] = chance(-0.8 * ability)
likely[:, 58] = chance(ability + 4)
likely[:, 59] = chance(ability - 4)
right = rng.random((PEOPLE, ITEMS)) < likely
wrong = rng.choice([1, 2, 3], p=[0.5, 0.3, 0.2], size=(PEOPLE, ITEMS))
wrong[:, 0] = np.where(wrong[:, 0] == 3, 2, wrong[:, 0])
wrong[:, 1] = np.where(ability > 1.0, 1, np.where(wrong[:, 1] == 1, 2, wrong[:, 1]))
# On item 1 the able are misled more often than not.
right[:, 1] &= ~((ability > 1.0) & (rng.random(PEOPLE) < 0.7))
option = np.where(right, 0, wrong)
half = np.select([option == 0, option == 1], [1.0, 0.5], 0.0)
x = right.astype(float)


def rest_correlation(credit, function):
    total = credit.sum(axis=1)
    return [function(credit[:, i], total - credit[:, i])[0] for i in range(credit.shape[1])]


def conditional(answers):
    """Difficulties centred at 0 and their standard errors; answers are 0, 1 or nan."""
    n = answers.shape[1]
    people, items = np.nonzero(~np.isnan(answers))
    # The last item is the reference: its dummy is left out.
    dummies = -(items[:, None] == np.arange(n - 1)[None, :]).astype(float)
    model = ConditionalLogit(answers[people, items].astype(int), dummies, groups=people)
    params = model.fit(method="bfgs", maxiter=500, disp=0, skip_hessian=True).params
    # BFGS stops at the third digit; Newton's steps with the package's own slope and curvature go on to the last.
    covariance = np.linalg.inv(-model.hessian(params))
    for _ in range(6):
        params = params + covariance @ model.score(params)
    covariance = np.linalg.inv(-model.hessian(params))
    print("largest last step", np.abs(covariance @ model.score(params)).max())
    to_all = np.vstack([np.eye(n - 1), np.zeros(n - 1)])
    to_all = (np.eye(n) - np.full((n, n), 1 / n)) @ to_all
    return to_all @ params, np.sqrt(np.diag(to_all @ covariance @ to_all.T))


def measured(answers, difficulties):
    """Warm's measures and the fit of items and people at the difficulties."""
    codes = np.where(np.isnan(answers), -1, answers).astype(int)
    model = TwoParameterLogistic(codes.shape[1])
    model.set_parameters(difficulty=np.asarray(difficulties), discrimination=np.ones(codes.shape[1]))
    model._is_fitted = True
    theta = np.asarray(WLEScorer(bounds=(-12.0, 12.0), tol=1e-10).score(model, codes).theta).ravel()
    p = chance(theta[:, None] - np.asarray(difficulties)[None, :])
    information = np.where(codes < 0, 0, p * (1 - p)).sum(axis=1)
    names = ["infit", "outfit", "z_infit", "z_outfit"]
    items = compute_itemfit(model, codes, names, theta=theta)
    people = compute_personfit(model, codes, theta, ["infit", "outfit"])
    return {
        "measures": rounded(theta),
        "measure_errors": rounded(1 / np.sqrt(information)),
        "item_infit": rounded(items["infit"]),
        "item_outfit": rounded(items["outfit"]),
        "item_infit_t": rounded(items["z_infit"]),
        "item_outfit_t": rounded(items["z_outfit"]),
        "person_infit": rounded(people["infit"]),
        "person_outfit": rounded(people["outfit"]),
    }


def rasch(answers):
    difficulties, errors = conditional(answers)
    return {"difficulties": rounded(difficulties), "difficulty_errors": rounded(errors), **measured(answers, difficulties)}


def alpha(credit):
    return float(pingouin.cronbach_alpha(pandas.DataFrame(credit))[0])


def chosen_means(i):
    """Share and mean rest share of who chose each option of an item; null where nobody did."""
    rest = (x.sum(axis=1) - x[:, i]) / (ITEMS - 1)
    rows = []
    for o in range(4):
        who = option[:, i] == o
        rows.append([round(float(who.mean()), 9), round(float(rest[who].mean()), 9) if who.any() else None])
    return rows


warnings.filterwarnings("ignore")
sparse = x[:200, :24].copy()
sparse[rng.random(sparse.shape) < 0.2] = np.nan

INITIAL, LEARN, GUESS, SLIP = 0.2, 0.15, 0.25, 0.1
traced = [1, 0, 1, 1, 0, 0, 1, 1, 1, 1, 0, 1]
bkt = BKTModel(1, **{f"p_{name}": np.array([v]) for name, v in
                     {"init": INITIAL, "learn": LEARN, "guess": GUESS, "slip": SLIP}.items()})
steps, known = [], INITIAL
for answer in traced:
    step = bkt.online_step(answer, 0, prior_mastery=known)
    known = step.next_mastery
    steps.append(rounded([step.response_probability, known], 12))

intervals = [(0, 1), (1, 1), (0, 5), (3, 5), (2.5, 4), (17, 20), (100, 100)]
full = rasch(x)
full["difficulties_girth"] = rounded(girth.rasch_conditional(right.T)["Difficulty"], 4)
out = {
    "made_by": "item_statistics.py",
    "made_with": {name: version(name) for name in ("numpy", "scipy", "pandas", "pingouin", "statsmodels", "girth", "mirt")},
    "people": ["".join(map(str, row)) for row in option],
    "classical": {
        "facility": rounded(x.mean(axis=0)),
        "point_biserial": rounded(rest_correlation(x, lambda item, rest: scipy.stats.pointbiserialr(item, rest))),
        "item_rest_half": rounded(rest_correlation(half, scipy.stats.pearsonr)),
        "kr20": round(alpha(x), 9),
        "alpha_half": round(alpha(half), 9),
        "deviation": round(float(x.sum(axis=1).std(ddof=1)), 9),
        "options": [chosen_means(i) for i in range(ITEMS)],
    },
    "rasch": full,
    "sparse_people": ["".join("." if np.isnan(a) else str(o) for a, o in zip(row, options))
                      for row, options in zip(sparse, option[:200, :24])],
    "sparse_rasch": rasch(sparse),
    "wilson": [[k, n, *rounded(proportion_confint(k, n, method="wilson"), 12)] for k, n in intervals],
    "tracing": {"initial": INITIAL, "learn": LEARN, "guess": GUESS, "slip": SLIP, "answers": traced, "steps": steps},
}


def written(value, depth=0):
    """One line for a list of plain values or a string, one line each for anything bigger."""
    pad = " " * (depth + 1)
    if isinstance(value, dict):
        rows = [f"{pad}{json.dumps(k)}: {written(v, depth + 1)}" for k, v in value.items()]
        return "{\n" + ",\n".join(rows) + "\n" + " " * depth + "}"
    if isinstance(value, list) and any(isinstance(v, (list, str)) for v in value):
        rows = [pad + json.dumps(v, separators=(",", ":")) for v in value]
        return "[\n" + ",\n".join(rows) + "\n" + " " * depth + "]"
    return json.dumps(value, separators=(",", ":"))


with open("item_statistics.json", "w") as file:
    file.write(written(out) + "\n")
