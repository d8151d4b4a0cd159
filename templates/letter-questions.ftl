<#ftl output_format="undefined">
<#-- What is asked where a sentence is silent, by the key of the rule that had to be assumed. -->
<#assign questions = {
"quantity": "Which quantity is meant?",
"limit": "Which figure do you stand by?",
"sense": "Is the figure the least, the most, or the middle of what a buyer may expect?",
"tolerance": "How far from the printed figure may a product that is in order lie?",
"limit weighting": "Is the printed level unweighted (dB SPL), A-weighted or C-weighted?",
"bands": "Over which frequencies does the figure hold?",
"resolution": "In bands of which width was it measured?",
"statistic": "Is the figure a mean over the frequency bands, the weakest band, the best band, or an overall level?",
"weighting": "With which frequency weighting were the levels summed?",
"setting": "In which setting?",
"fit": "With which tip or seal?",
"firmware": "With which firmware?",
"ear": "In which ears was it measured?",
"side": "On which side?",
"head": "On which people was it measured?",
"unit": "Of which samples does it speak?",
"session": "From which sitting does it come?",
"stimulus": "With which test sound?",
"level": "At which level of the sound outside?",
"level weighting": "Is the level of the test sound unweighted (dB SPL), A-weighted or C-weighted?",
"referred to": "Is the level meant at the eardrum, or as a level in the sound field outside?",
"between": "Between which two states does the difference lie?",
"compared by": "Are the two compared by their difference or by their ratio?",
"ears": "Does the sentence hold for every ear, for the mean of people, or for a share of them?",
"units": "Does it hold for every sample, for the mean of the production, or for a share of it?",
"of": "Which figure is meant?",
"method": "By which edition of which standard was it computed?",
"performance": "For which share of wearers was it computed?",
"drop": "By how much must the gain have fallen before you call it the onset?",
"criterion": "At which level inside was it determined?",
"within": "To within how many dB of the new level is the time counted?",
"harmonics": "Which harmonics were counted?",
"exposure": "By which rule for exposure?",
"duration": "For how long a sound?",
"reference": "Relative to which frequency or range is the curve given?",
"target": "Compared with which curve?"
}>
<#-- What is asked about a word that leaves the same thing open wherever it stands. -->
<#assign wordQuestions = {
"natural": "over which frequencies, within how many dB, and for sound of which level?",
"up to": "at which frequency is it reached, and by what share of wearers?",
"typical": "is it the mean or the median, of how many ears and samples?",
"about": "within how many dB (or per cent)?",
"flat": "between which frequencies, and within how many dB?",
"instant": "within how many milliseconds, to within how many dB, after a step from which level to which?",
"half": "half the sound pressure (6 dB), half the power (3 dB), or half the loudness (some 10 dB)?",
"safe": "by which rule, and for which level and time of exposure?",
"certified": "by whom, to which edition of which standard, and under which report number?",
"same": "in which quantities, and within what margin?"
}>
<#-- What an assumption means, where the word for it is ours. -->
<#assign meanings = {
"statistic": {"every band": "every band by itself", "mean": "the mean of the bands in dB", "median": "the median band: half of the bands reach it", "lowest": "the weakest band", "highest": "the best band", "spread": "the difference between the highest and the lowest band", "slope": "the slope of the curve in dB per octave", "overall": "the overall level, summed over the bands"},
"ears": {"each": "every ear that is measured, by itself", "mean": "the mean of people"},
"units": {"each": "every sample that is measured, by itself", "mean": "the mean of the production"},
"tolerance": {"rounding": "half of the last printed digit"},
"referred to": {"eardrum": "at the eardrum", "field": "the level in the field outside: the ear’s own gain taken off"},
"limit weighting": {"Z": "unweighted, dB SPL", "A": "A-weighted, dB(A)", "C": "C-weighted, dB(C)"},
"level weighting": {"Z": "unweighted, dB SPL", "A": "A-weighted, dB(A)", "C": "C-weighted, dB(C)"},
"weighting": {"Z": "none", "A": "A", "C": "C"},
"target": {"open ear": "the same ear, open"}
}>
<#function question key><#return questions[key]!("What is to be understood by “" + key + "”?")></#function>
<#function meaning taken><#return (meanings[taken.key]!{})[taken.text]!taken.text></#function>
<#-- Names what was assumed only where one question covers several things. -->
<#function meanwhile all>
<#local parts = []>
<#list all as taken><#local parts = parts + [(all?size gt 1)?then(taken.key + ": ", "") + meaning(taken)]></#list>
<#return parts?join("; ")>
</#function>
<#function numbers all>
<#if all?size gt 1><#return all[0..<(all?size - 1)]?join(", ") + " and " + all?last></#if>
<#return all?join("")>
</#function>
