<#ftl output_format="undefined">
<#-- The report's sentences, made of the model's numbers and keys. Functions give plain text; the page that prints it escapes it. -->

<#-- Small things -->

<#function count number one several><#return number + " " + (number == 1)?then(one, several)></#function>

<#function join items word="and">
  <#local text = "">
  <#list items as item><#local text += item><#if item?has_next><#local text += (item?index == items?size - 2)?then(" " + word + " ", ", ")></#if></#list>
  <#return text>
</#function>

<#function unit number symbol><#return (symbol == "")?then(number, number + " " + symbol)></#function>

<#function full text><#return text?ends_with(".")?then(text, text + ".")></#function>

<#function bare text><#return text?remove_ending(".")></#function>

<#function capital text><#return text?cap_first></#function>

<#-- What the maker says -->

<#function words c><#return c.verbatim?then("“" + c.words + "”", c.words + " (in our words)")></#function>

<#function source c><#return c.source + ", " + c.dated></#function>

<#function limit l>
  <#switch l.kind>
    <#case "between"><#return unit(l.lower + " to " + l.upper, l.unit)>
    <#case "exactly"><#return unit(l.lower, l.unit)>
    <#case "at least"><#return "at least " + unit(l.lower, l.unit)>
    <#case "above"><#return "above " + unit(l.lower, l.unit)>
    <#case "at most"><#return "at most " + unit(l.upper, l.unit)>
    <#case "below"><#return "below " + unit(l.upper, l.unit)>
    <#case "any"><#return "any value">
    <#default><#return "">
  </#switch>
</#function>

<#function rule r><#return (r.rule == "")?then("", r.rule + ": " + limit(r.limit))></#function>

<#function pairs list>
  <#return list?map(pair -> pair.key + ": " + pair.text)?join("; ", "nothing")>
</#function>

<#-- The names of things that the model gives as keys -->

<#function verdictMeans key>
  <#switch key>
    <#case "pass"><#return "The probability that the limit holds reaches the confidence at every point that the claim speaks of.">
    <#case "fail"><#return "Some point lies beyond its limit by more than errors of this size would bring about by chance. A measured value inside the limit never fails.">
    <#case "marginal"><#return "The readings do not decide; the reason stands beside the verdict.">
    <#default><#return "No reading can say anything about it.">
  </#switch>
</#function>

<#function statistic key>
  <#switch key>
    <#case "lowest"><#return "the lowest band">
    <#case "highest"><#return "the highest band">
    <#case "spread"><#return "highest less lowest band">
    <#case "median"><#return "the middle band">
    <#case "every band"><#return "the least favourable band">
    <#case "mean"><#return "mean of the bands">
    <#case "slope"><#return "slope">
    <#case "overall"><#return "all bands together">
    <#default><#return "">
  </#switch>
</#function>

<#-- What the session says of its measuring chain; empty where nothing. -->
<#function chain c>
  <#local parts = []>
  <#if c.before != "" || c.after != ""><#local parts += ["a calibrator read " + [c.before + " before", c.after + " after"]?filter(part -> !part?starts_with(" "))?join(" and ")]></#if>
  <#if c.dated != ""><#local parts += ["calibrator certified " + c.dated]></#if>
  <#if c.averaging != ""><#local parts += ["levels averaged over " + c.averaging]></#if>
  <#if c.overload != ""><#local parts += ["the chain follows up to " + c.overload]></#if>
  <#return parts?join("; ")>
</#function>

<#function consequence key>
  <#switch key>
    <#case "noted"><#return "noted">
    <#case "widened"><#return "widened: used, with more uncertainty">
    <#case "bounded"><#return "bounded: used as a bound only">
    <#case "unusable"><#return "unusable: no verdict that it could have caused is firm">
    <#default><#return key>
  </#switch>
</#function>

<#function errs key><#return (key == "either")?then("may err either way", key)></#function>

<#-- What was counted -->

<#function basis s><#return (s.kind == "ears")?then("Ears, insertions", "Taken from")></#function>

<#function earsWith s><#return count(s.ears, "ear", "ears") + " with " + count(s.insertions, "insertion", "insertions")></#function>

<#-- Where nothing speaks of an ear: before a microphone, on a fixture. -->
<#function placings s><#return count(s.placings, "placing", "placings")></#function>

<#function sample s>
  <#switch s.kind>
    <#case "ears"><#return count(s.ears, "ear", "ears") + ", " + count(s.insertions, "insertion", "insertions") + (s.placings == 0)?then("", "; " + placings(s) + " without an ear")>
    <#case "placings"><#return placings(s) + ", no ear named">
    <#case "figures"><#return count(s.count, "single figure", "single figures")>
    <#case "trials"><#return count(s.count, "trial of a panel", "trials of a panel")>
    <#default><#return "">
  </#switch>
</#function>

<#function onSample s>
  <#if s.kind == "ears"><#return " in " + earsWith(s) + (s.placings == 0)?then("", " and in " + placings(s) + " without an ear")></#if>
  <#if s.kind == "placings"><#return " in " + placings(s)></#if>
  <#if s.kind == "figures" && s.count gt 1><#return " as the mean of " + s.count + " single figures"></#if>
  <#return "">
</#function>

<#function condition conditions>
  <#local parts = []>
  <#list conditions as one>
    <#local values = one.values?map(v -> (v.sound == "")?then(v.name, v.name + " (" + v.sound + ")"))>
    <#local named = (values?size gt 30)?then(values?size + " of them, " + values?first + " to " + values?last, join(values))>
    <#local parts += [one.name + " " + named]>
  </#list>
  <#return parts?join(", ")>
</#function>

<#-- What was measured -->

<#-- Beyond what could be measured a value is an end and no number. -->
<#function value m>
  <#if m.value == ""><#return "not measured"></#if>
  <#return (m.bound == "at least")?then("above ", (m.bound == "at most")?then("below ", "")) + m.value>
</#function>

<#function interval i>
  <#if i.lower == "" && i.upper == ""><#return ""></#if>
  <#if i.lower == ""><#return "up to " + unit(i.upper, i.unit)></#if>
  <#if i.upper == ""><#return "from " + unit(i.lower, i.unit)></#if>
  <#return unit(i.lower + " to " + i.upper, i.unit)>
</#function>

<#function where point>
  <#if point.hz == ""><#return ""></#if>
  <#return "at " + point.hz + (point.lessHz == "")?then("", " less " + point.lessHz)>
</#function>

<#function spread m>
  <#local parts = []>
  <#if m.expandedUncertainty != ""><#local parts += ["U = " + m.expandedUncertainty + " (k = 2)"]></#if>
  <#if interval(m.interval) != ""><#local parts += ["95 % interval " + interval(m.interval)]></#if>
  <#return parts?join("; ")>
</#function>

<#-- 16.6 dB; U = 1.0 dB (k = 2); 95 % interval 15.6 to 17.6 dB. Where another number decides, it is named before U. -->
<#function measured m>
  <#if m.kind == "none"><#return "not measured"></#if>
  <#if m.kind == "calculated"><#return value(m) + ", calculated"></#if>
  <#if m.own><#return value(m) + (spread(m) == "")?then("", "; " + spread(m))></#if>
  <#return value(m) + aside(statistic(m.statistic)) + "; " + decidedBy(m)>
</#function>

<#function aside text><#return (text == "")?then("", " (" + text + ")")></#function>

<#function decidedBy m>
  <#return "decided by " + decidingPoint(m) + ": " + m.point.value + (spread(m) == "")?then("", "; " + spread(m))>
</#function>

<#function decides m>
  <#return (m.decides.of gt 1)?then(m.decides.name + ", the least favourable of " + m.decides.of, "")>
</#function>

<#-- 17.9 ± 1.0 dB: for a table. -->
<#function short m>
  <#if m.kind == "calculated"><#return value(m) + ", calculated"></#if>
  <#return (m.own && m.bound == "" && m.withUncertainty != "")?then(m.withUncertainty, value(m))>
</#function>

<#-- What the number beside it is, and which one decides; empty where they are the same. -->
<#function shortDecided m>
  <#if m.own || m.kind != "measured"><#return ""></#if>
  <#return [statistic(m.statistic), "decided by " + decidingPoint(m) + ": " + (m.point.withUncertainty == "")?then(m.point.value, m.point.withUncertainty)]?filter(part -> part != "")?join("; ")>
</#function>

<#function shortWhole m><#return short(m) + aside(shortDecided(m))></#function>

<#function decidingPoint m>
  <#if m.point.hz == ""><#return "another number"></#if>
  <#return (m.point.lessHz == "")?then("the band at " + m.point.hz, "the bands " + m.point.hz + " less " + m.point.lessHz)>
</#function>

<#function correction m>
  <#if m.correction.size == ""><#return ""></#if>
  <#return "noise alone makes this value read " + m.correction.size + " too " + m.correction.reads + " on average">
</#function>

<#function curve m>
  <#if m.curve.bands lt 2><#return ""></#if>
  <#if m.curve.lowest.value == m.curve.highest.value><#return "throughout " + m.curve.lowest.value></#if>
  <#return "from " + m.curve.lowest.value + " at " + m.curve.lowest.hz + " to " + m.curve.highest.value + " at " + m.curve.highest.hz>
</#function>

<#-- How far it is from the claim -->

<#-- What lies between two percentages is no percentage of either. -->
<#function points text><#return text?ends_with(" %")?then(text?remove_ending("%") + "percentage points", text)></#function>

<#function difference c>
  <#local d = c.claimed>
  <#if d.side == "" || d.kind == "none"><#return ""></#if>
  <#if d.side == "inside"><#return "inside"></#if>
  <#if d.side == "equal"><#return points(d.difference)></#if>
  <#return (c.measured.bound == "")?then("", "beyond ") + (d.side == "below")?then("−", "+") + points(d.difference)>
</#function>

<#function differenceFrom c>
  <#if c.claimed.side == "inside"><#return "the claimed range"></#if>
  <#return (c.claimed.kind == "range")?then("against the end of the claimed range", "against " + c.claimed.value)>
</#function>

<#function againstU c>
  <#switch c.claimed.againstUncertainty>
    <#case "more"><#return "more than U">
    <#case "less"><#return "not more than U">
    <#default><#return "">
  </#switch>
</#function>

<#function gap c>
  <#local d = c.claimed>
  <#if d.side == "" || d.kind == "none"><#return ""></#if>
  <#if d.side == "equal"><#return "That is the claimed " + d.value + ", to the digits printed."></#if>
  <#if d.side == "inside"><#return "That lies inside the claimed range of " + limit(c.limit) + ".">
  </#if>
  <#switch d.kind>
    <#case "range"><#local than = "the " + (d.side == "below")?then("lower", "upper") + " end of the claimed range"><#break>
    <#case "least"><#local than = "the claimed minimum of " + d.value><#break>
    <#case "most"><#local than = "the claimed maximum of " + d.value><#break>
    <#default><#local than = "the claimed " + d.value>
  </#switch>
  <#local beyond = (d.againstUncertainty == "")?then("", (d.againstUncertainty == "more")?then(", more than the uncertainty of ", ", not more than the uncertainty of ") + points(c.measured.expandedUncertainty))>
  <#return "That is " + (c.measured.bound == "")?then("", "more than ") + points(d.difference) + " " + d.side + " " + than + beyond + ".">
</#function>

<#-- Why -->

<#function reason r><#return r.text></#function>

<#function reasons list><#return list?map(r -> reason(r))?join("; ")></#function>

<#function probability p><#return (p == "")?then("not given", p)></#function>

<#function verdictLine c>
  <#local p = (c.probability == "")?then("no probability given", (c.measured.kind == "calculated")?then("by arithmetic, which has no probability to speak of", "with probability " + c.probability + " that the claim, as we read it, is true"))>
  <#return p + (c.reasons?size == 0)?then("", ": " + bare(reasons(c.reasons)))>
</#function>

<#-- Sentences for an article: they speak of these measurements, never of intent. -->

<#function said p c>
  <#local maker = (p.maker == "")?then("The maker", p.maker)>
  <#if c.verbatim><#return maker + " says of " + p.name + ": “" + c.words + "” (" + source(c) + ")."></#if>
  <#return maker + " told us of " + p.name + ", in our words (" + source(c) + "): " + full(c.words)>
</#function>

<#function found c>
  <#local m = c.measured>
  <#if m.kind == "calculated">
    <#local from = c.printedTable?then("from the maker's own table; we measured nothing for it", "from " + sample(c.sample))>
    <#return "Calculated by this rule it comes to " + value(m) + " " + from + ".">
  </#if>
  <#if c.quantity == "onset level" && m.bound == "at least"><#return "Up to " + m.value + ", the highest level tested" + onSample(c.sample) + ", it did not begin to act: the onset lies above " + m.value + "."></#if>
  <#if c.quantity == "onset level" && m.bound == "at most"><#return "At " + m.value + ", the lowest level tested" + onSample(c.sample) + ", it acted already: the onset lies below " + m.value + "."></#if>
  <#if m.bound != ""><#return "It lies " + value(m) + ", where the measurement ends" + (onSample(c.sample) == "")?then("", "," + onSample(c.sample)) + "."></#if>
  <#local details = []>
  <#if m.own && interval(m.interval) != ""><#local details += ["95 % interval " + interval(m.interval)]></#if>
  <#if decides(m) != ""><#local details += [decides(m)]></#if>
  <#local text = "We measured " + value(m)>
  <#if m.own><#local text += (where(m.point) == "")?then("", " " + where(m.point))><#else><#local text += (statistic(m.statistic) == "")?then("", " as " + statistic(m.statistic))></#if>
  <#return text + onSample(c.sample) + (details?size == 0)?then("", " (" + details?join("; ") + ")") + ".">
</#function>

<#function decided c>
  <#local m = c.measured>
  <#if m.own || m.kind != "measured"><#return ""></#if>
  <#return "The number that decides is " + m.point.value + aboutPoint(m) + (interval(m.interval) == "")?then("", " (95 % interval " + interval(m.interval) + ")") + ".">
</#function>

<#function aboutPoint m><#return (where(m.point) == "")?then("", " " + where(m.point))></#function>

<#function ranged c>
  <#if curve(c.measured) == ""><#return ""></#if>
  <#return "Over the bands" + (c.measured.decides.of gt 1)?then(" (" + c.measured.decides.name + ")", "") + (c.measured.curve.lowest.value == c.measured.curve.highest.value)?then(" it was ", " it ran ") + curve(c.measured) + ".">
</#function>

<#function outcome c>
  <#local these = (c.measured.kind == "calculated")?then("These numbers", "These measurements")>
  <#local why = (c.reasons?size == 0)?then("", ": " + bare(reasons(c.reasons)))>
  <#switch c.verdict>
    <#case "pass"><#return these + " support the claim as we read it (pass).">
    <#case "fail"><#return these + " do not support the claim as we read it (fail).">
    <#case "marginal"><#return these + " do not decide it (marginal)" + why + ".">
    <#default><#return "It was not tested" + why + ".">
  </#switch>
</#function>

<#function otherRules c>
  <#if c.otherwise?size == 0><#return ""></#if>
  <#local differing = c.otherwise?filter(o -> o.verdict != c.verdict)>
  <#if differing?size == 0><#return (c.otherwise?size == 1)?then("One other fair reading of the sentence comes to the same verdict.", "The " + c.otherwise?size + " other fair readings of the sentence come to the same verdict.")></#if>
  <#return "Read otherwise the verdict changes (" + differing?map(o -> o.name + ": " + o.verdict)?join(", ") + ").">
</#function>

<#-- What the sentences of an article do not say already, as texts. -->
<#function caveats c>
  <#local shifted = c.notes?filter(note -> note.key == "scaled-open-ear")>
  <#local others = c.notes?filter(note -> !["differs-under", "same-under-all", "scaled-open-ear"]?seq_contains(note.key))>
  <#return (shifted?size == 0)?then([], [openEars(shifted)]) + others?map(note -> note.text)>
</#function>

<#-- One open ear after another would be a sentence each; which was shifted by how much stands in the audit. -->
<#function openEars notes>
  <#if notes?size == 1><#return notes?first.text></#if>
  <#return "open ears measured under " + join(told(notes, "stimulus")) + " and shifted by " + join(told(notes, "shift")) + " dB (" + join(told(notes, "session")) + ")">
</#function>

<#-- What several notes tell under one name, each once. -->
<#function told notes name>
  <#local texts = []>
  <#list notes as note><#list note.figures?filter(figure -> figure.name == name && !texts?seq_contains(figure.text)) as figure><#local texts += [figure.text]></#list></#list>
  <#return texts>
</#function>

<#function sentence p c>
  <#if c.measured.value == ""><#return said(p, c) + " " + outcome(c)></#if>
  <#local parts = [said(p, c), "We read this as " + rule(c) + ".", found(c), gap(c), decided(c), ranged(c), outcome(c), otherRules(c)]>
  <#return parts?filter(part -> part != "")?join(" ")>
</#function>

<#-- The short answer -->

<#function counts n><#return n.pass + " pass, " + n.marginal + " marginal, " + n.fail + " fail, " + n.untested + " untested"></#function>

<#-- With nothing tested nothing is said of what measurements support. -->
<#function tested p><#return p.claims?size gt p.counts.untested></#function>

<#function inShort p>
  <#if tested(p)><#return verdictsOf(p) + " " + decisive(p)></#if>
  <#if p.claims?size == 0><#return "No claim about " + p.name + " is judged here."></#if>
  <#return (p.claims?size == 1)?then("The one claim about " + p.name + " could not be tested.", "None of the " + p.claims?size + " claims about " + p.name + " could be tested.")>
</#function>

<#function verdictsOf p><#return "Of " + count(p.claims?size, "claim", "claims") + " about " + p.name + ", these measurements support " + p.counts.pass + ", do not support " + p.counts.fail + " and leave " + p.counts.marginal + " open; " + p.counts.untested + " could not be tested."></#function>

<#function shortened text><#return (text?length lte 80)?then(text, text[0..78] + "…")></#function>

<#-- A topic of its own says more than the words; one that is only the claim's name does not. -->
<#function called c><#return (c.topic == c.id)?then(c.verbatim?then("“" + shortened(c.words) + "”", shortened(bare(c.words))), shortened(c.topic))></#function>

<#function named c><#return "No. " + c.number + " (" + called(c) + ")"></#function>

<#-- The first two in numbers, the others by name. -->
<#function decisive p>
  <#if p.failed?size == 0><#return "No claim was refuted."></#if>
  <#local failed = p.failed?map(n -> p.claims[n - 1])>
  <#local text = "Not supported:">
  <#list failed as c><#if c?index lt 2>
    <#local text += " " + named(c) + ", " + claimedNumber(c) + " claimed (" + source(c) + "), " + shortWhole(c.measured) + (c.measured.kind == "calculated")?then("", " measured") + (c?index == 0 && failed?size gt 1)?then(";", ".")>
  </#if></#list>
  <#if failed?size gt 2><#local text += " Nor: " + join(failed[2..]?map(c -> named(c))) + "."></#if>
  <#return text>
</#function>

<#function claimedNumber c>
  <#switch c.claimed.kind>
    <#case "number"><#return c.claimed.value>
    <#case "least"><#return "at least " + c.claimed.value>
    <#case "most"><#return "at most " + c.claimed.value>
    <#default><#return limit(c.limit)>
  </#switch>
</#function>

<#function sure p>
  <#local firm = (p.counts.pass + p.counts.fail == 0)?then("", "; a firm verdict is wrong at most " + p.doubt + " of the time, if the declared sizes of the uncertainty are right")>
  <#return measuredIn(p.sample) + firm + "." + otherWays(p)>
</#function>

<#function measuredIn s>
  <#if s.ears gt 0><#return "Measured" + onSample(s)></#if>
  <#return (s.placings gt 0)?then("Measured in " + placings(s) + ", no ear named", "Nothing of it was measured in an ear")>
</#function>

<#function otherWays p>
  <#if p.robust.of == 0 || !tested(p)><#return ""></#if>
  <#local changing = p.robust.of - p.robust.same>
  <#return " " + count(p.robust.of, "sentence", "sentences") + " can fairly be read in other ways; " + (changing == 0)?then("no verdict", "the verdict" + (p.robust.of == 1)?then("", " of " + (changing == p.robust.of)?then("each", changing + " of them"))) + " depends on which.">
</#function>

<#function untestedOf p>
  <#local list = p.claims?filter(c -> c.verdict == "untested")>
  <#return (list?size == 0)?then("every claim listed was tested", join(list?map(c -> named(c))))>
</#function>

<#function neverTested><#return "Comfort, wearing time, hearing warning signals, speech and music through the product, and other units than the samples were not judged unless a claim here says so."></#function>

<#function notForWhom><#return "Nobody should choose hearing protection for work by this report."></#function>

<#-- Products side by side -->

<#function claimsOf entry><#return entry.numbers?map(n -> .data_model.products[entry.product - 1].claims[n - 1])></#function>

<#function shownAs c>
  <#return "No. " + c.number + " (" + c.dated + "), " + ((c.limit.kind == "none")?then("no rule", "read as " + limit(c.limit))) + "; measured " + ((c.measured.value == "")?then("nothing", shortWhole(c.measured)))>
</#function>

<#-- What each product's newest claim on the topic came to. -->
<#function newest entry><#return claimsOf(entry)?last></#function>

<#function nameOf number><#return .data_model.products[number - 1].name></#function>

<#function foundIn entry>
  <#local c = newest(entry)>
  <#return nameOf(entry.product) + " " + ((c.measured.value == "")?then("not measured", shortWhole(c.measured))) + " (" + c.verdict + ")">
</#function>

<#function apart t>
  <#local start = "On “" + t.topic + "”, by the newest claims: " + join(t.of?map(e -> foundIn(e)))>
  <#switch t.apart.againstUncertainty>
    <#case "more"><#return start + "; " + points(t.apart.size) + " apart, more than the uncertainty of the difference. For whom this matters, it decides.">
    <#case "less"><#return start + "; " + points(t.apart.size) + " apart, not more than the uncertainty of the difference. It does not decide.">
    <#default><#return start + ". The rules differ, or an uncertainty is not known, so no difference is given.">
  </#switch>
</#function>

<#function whatDecides><#return "What decides between them, and for whom:"></#function>

<#-- One line for each topic, and what to make of them. -->
<#function compared shared>
  <#local advice = .data_model.products?filter(p -> p.recommendation != "")?map(p -> p.name + ": " + full(p.recommendation))>
  <#return shared?map(t -> apart(t)) + ["A verdict is about a maker's sentence: who claims less passes more easily, so the measured values count here."] + (advice?size == 0)?then([], ["Our recommendations. " + advice?join(" ")])>
</#function>

<#-- Editions -->

<#function changed before now>
  <#local parts = []>
  <#if limit(before.limit) != limit(now.limit)><#local parts += ["limit " + orNone(limit(now.limit)) + ", before " + orNone(limit(before.limit))]></#if>
  <#local newly = now.stated?filter(s -> before.assumed?map(b -> b.key)?seq_contains(s.key))?map(s -> s.key)>
  <#if newly?size gt 0><#local parts += ["now says itself: " + join(newly)]></#if>
  <#list now.stated + now.assumed as s>
    <#list before.stated + before.assumed as b>
      <#if s.key == b.key && s.text != b.text && s.key != "limit"><#local parts += [s.key + " " + s.text + ", before " + b.text]></#if>
    </#list>
  </#list>
  <#if before.editionConditions != now.editionConditions><#local parts += ["speaks of " + orNone(now.editionConditions) + ", before of " + orNone(before.editionConditions)]></#if>
  <#local parts += [(before.verdict == now.verdict)?then("verdict the same", "verdict " + now.verdict + ", before " + before.verdict)]>
  <#return parts?join("; ")>
</#function>

<#-- What came of the question to the maker, and what it changed -->
<#function answer product c>
  <#switch c.answer.kind>
    <#case "none"><#return "asked on " + c.asked + "; no answer is on record">
    <#case "reply"><#return (c.asked != "")?then("asked on " + c.asked + ", answered on ", "wrote on ") + c.reply.dated + "; the answer is printed and not judged: what we assumed above is assumed still">
    <#case "edition"><#local by = product.claims[c.answer.number - 1]><#return "asked on " + c.asked + "; answered by No. " + c.answer.number + " (" + source(by) + "): " + changed(c, by)>
    <#default><#return "">
  </#switch>
</#function>

<#function orNone text><#return (text == "")?then("nothing", text)></#function>

<#-- How it was measured -->

<#function noSessions><#return "Nothing was measured: there are claims only."></#function>

<#function openEar s><#return s.openEarScaled?then("measured; where a level was spared, shifted from another level", "measured at every level")></#function>

<#function settings s><#return s.settingsSwitchedInPlace?then("switched without taking the product out", "switched between insertions")></#function>

<#function uncertainty key>
  <#switch key>
    <#case "declared"><#return "Sizes declared by the auditor.">
    <#case "typical probe tube"><#return "Typical probe tube: sizes of common practice, without a source.">
    <#case "no cause"><#return "No cause declared.">
    <#default><#return "The size of the uncertainty is not known.">
  </#switch>
</#function>

<#function sizes list>
  <#return list?map(s -> s.size + (s.from == "")?then((s.to == "")?then("", " below " + s.to), " from " + s.from + (s.to == "")?then("", " to " + s.to)))?join(", ")>
</#function>

<#function times n><#return (n == 1)?then("once", n + " times")></#function>

<#function effect text><#return (text == "")?then("cancels", text)></#function>

<#function finding f><#return f.text + " (" + errs(f.errs) + "; " + consequence(f.consequence) + ")" + more(f)></#function>

<#-- Of one kind in one session only the first are listed. -->
<#function more f><#return (f.more == 0)?then("", "; and " + f.more + " more of this kind in session " + f.session)></#function>

<#function foundWhere f><#return f.session + (f.reading == "")?then("", ": " + f.reading) + (f.bands == "")?then("", "; " + f.bands)></#function>

<#function noFindings><#return "There are no findings about the data. Where no check looked, their absence says nothing."></#function>

<#function howDecided><#return "Each sentence was turned into a rule: what it states, and what we had to assume to make it testable. The rule is held against the readings together with their uncertainty."></#function>

<#function promise products>
  <#return "This is a promise about how often it is wrong, if the declared sizes of the uncertainty are right: " + products?map(p -> "for " + p.name + ", decided at " + p.confidence + ", a claim that is not true passes, and a claim that is true fails, at most " + p.doubt + " of the time")?join("; ") + ".">
</#function>

<#function howToReadU><#return "A claim of the kind “up to” is met where one point meets it, and a claim about the median where half of the points do; the promise is the same. U is the expanded uncertainty, twice the standard uncertainty (k = 2). The 95 % interval is the central one; the two differ where few repeats were made. For a lowest, highest or middle band, and for a spread, the value is the one observed, and U and interval are those of the number that decides, which may be another band."></#function>

<#-- What must be said wherever protection is spoken of. -->
<#function caution c>
  <#switch c.key>
    <#case "measured on">
      <#local aside = (c.placings == 0)?then("", " Measured besides in " + placings(c) + " without an ear.")>
      <#if c.ears gt 0><#return "Measured on " + earsWith(c) + ". The numbers describe these ears and these samples; other ears will differ." + aside></#if>
      <#if c.placings gt 0><#return "Measured in " + placings(c) + ", no ear named: the numbers describe these samples, and not what reaches an ear."></#if>
      <#return "Nothing was measured in an ear: no number here says what reaches an ear.">
    <#case "not a rating"><#return "This is not a rating. A rating needs the standard procedure and a qualified laboratory.">
    <#case "no impulses"><#return "Impulse noise was not measured. Nothing here says what shots, blows or explosions do to the ear.">
    <#case "some impulses"><#return "Impulse noise was measured only under the stimuli listed here; nothing is said of other impulses.">
    <#case "law decides"><#return "For exposure to noise at work, local law and a hearing professional decide. Do not choose protective equipment by this report.">
    <#default><#return "Ringing or dull hearing after noise: leave the noise and see a hearing professional.">
  </#switch>
</#function>
