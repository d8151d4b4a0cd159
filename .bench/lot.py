#!/usr/bin/python3
"""What a maker with a spreadsheet habit would do with a lot instead of Ellwand: pandas.

    .bench/lot.py SHEET.csv OUT.csv

Reads the sheet, averages the insertions, takes the attenuation against the open ear band by band, averages 125 Hz to
8 kHz, and holds every unit against the limits of the claims that org.ellwand.scale.LotFolder writes: the mean in flood
between 14 and 22 dB, every band in ebb at least 8 dB, the mean difference flood less ebb between 3 and 7 dB, and the
means over the units in storm and calm. Writes one row a unit and claim: claim, unit, value. No uncertainty, no verdict.
"""
import sys

import pandas as pd

sheet, out = sys.argv[1:]
data = pd.read_csv(
    sheet,
    dtype={name: "category" for name in ("device", "setting", "unit", "firmware", "stimulus", "insertion")},
)
data = data.rename(columns={"frequency (Hz)": "hz", "level (dB SPL)": "level"})
data = data[(data.hz >= 125) & (data.hz <= 8000)]
is_open = data.device == "open ear"
open_ear = data[is_open].groupby("hz")["level"].mean()
worn = data[~is_open].groupby(["setting", "unit", "hz"], observed=True)["level"].mean().unstack("hz")
attenuation = open_ear - worn
mean = attenuation.mean(axis=1)
lowest = attenuation.min(axis=1)
step = mean["flood"] - mean["ebb"]
units = pd.concat(
    {"every-unit": mean["flood"], "every-band": lowest["ebb"], "step": step}, names=["claim", "unit"]
).rename("value")
units.to_csv(out)
judged = {
    "every-unit": (mean["flood"], 14, 22),
    "every-band": (lowest["ebb"], 8, float("inf")),
    "step": (step, 3, 7),
}
for claim, (values, lower, upper) in judged.items():
    margin = pd.concat([values - lower, upper - values], axis=1).min(axis=1)
    print(f"{claim}: {(margin >= 0).sum()} of {len(margin)} inside, worst {margin.idxmin()} at {values[margin.idxmin()]:.2f} dB")
for claim, setting in (("usual", "storm"), ("most", "calm")):
    print(f"{claim}: mean {mean[setting].mean():.12f} dB, standard deviation {mean[setting].std():.12f} dB")
