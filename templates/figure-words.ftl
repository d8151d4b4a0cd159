<#ftl output_format="undefined">
<#-- All words of the figures, made of the numbers and keys that a figure's model gives. Functions give plain text; what prints it escapes it. -->

<#function withUnit number unit><#return (unit == "")?then(number, number + " " + unit)></#function>

<#-- A few of many, so that a sentence stays one. -->
<#function few items between="; ">
  <#if items?size lte 6><#return items?join(between)></#if>
  <#return items[0..5]?join(between) + between + "and " + (items?size - 6) + " more">
</#function>

<#function cut text most><#return (text?length gt most)?then(text[0..<(most - 1)] + "…", text)></#function>

<#-- Lines of at most so many characters; a longer word is a line by itself. -->
<#function wrapped text most>
  <#local lines = []>
  <#local line = "">
  <#list text?split(" ") as word>
    <#if line != "" && line?length + 1 + word?length gt most>
      <#local lines += [line]>
      <#local line = word>
    <#else>
      <#local line = (line == "")?then(word, line + " " + word)>
    </#if>
  </#list>
  <#return lines + [line]>
</#function>

<#-- What is drawn -->

<#function quantity a>
  <#if a.first == ""><#return a.quantity></#if>
  <#return a.quantity + ", " + a.first + a.ratio?then(" over ", " less ") + a.second>
</#function>

<#function subject a>
  <#switch a.statistic>
    <#case "every band"><#return "every band">
    <#case "mean"><#return "mean of the bands">
    <#case "median"><#return "median of the bands">
    <#case "lowest"><#return "lowest band">
    <#case "highest"><#return "highest band">
    <#case "spread"><#return "highest less lowest band">
    <#case "slope"><#return "slope">
    <#case "overall"><#return "all bands together">
    <#default><#return "">
  </#switch>
</#function>

<#function whole a><#return quantity(a) + (subject(a) == "" || !(f_named(a)))?then("", ", " + subject(a))></#function>
<#-- The level looked for in a series is one number of its own. -->
<#function f_named a><#return !["onset level", "criterion level", "attack time", "release time"]?seq_contains(a.quantity)></#function>

<#function axis a>
  <#local unit = (a.quantity == "insertion gain" && a.first == "")?then("dB re open ear", a.unit)>
  <#return quantity(a)?cap_first + (unit == "")?then("", " (" + unit + ")")>
</#function>

<#function hertz number>
  <#local hz = number?number>
  <#return (hz gte 1000)?then((hz / 1000) + " kHz", number + " Hz")>
</#function>

<#-- Labels of an axis over frequency give the unit once, beside it. -->
<#function octave number>
  <#local hz = number?number>
  <#return (hz gte 1000)?then((hz / 1000) + "k", number)>
</#function>

<#-- The claimed range -->

<#function limit l>
  <#switch l.kind>
    <#case "between"><#return withUnit(l.lower + " to " + l.upper, l.unit)>
    <#case "exactly"><#return withUnit(l.lower, l.unit)>
    <#case "at least"><#return withUnit("at least " + l.lower, l.unit)>
    <#case "above"><#return withUnit("above " + l.lower, l.unit)>
    <#case "at most"><#return withUnit("at most " + l.upper, l.unit)>
    <#case "below"><#return withUnit("below " + l.upper, l.unit)>
    <#default><#return "any value">
  </#switch>
</#function>

<#function claimed figure>
  <#if figure.kind == "margin"><#return "inside what was claimed"></#if>
  <#local subject = f_named(figure.about)?then(subject(figure.about), "")>
  <#return "claimed: " + limit(figure.claim) + (subject == "")?then("", ", " + subject)>
</#function>

<#-- Numbers with what is known of them -->

<#function value r>
  <#return (r.bound == "")?then("", r.bound + " ") + r.value?replace(" ", " ") + (r.expanded == "")?then("", " (U = " + r.expanded?replace(" ", " ") + ")")>
</#function>

<#function named name figure>
  <#if name != ""><#return name></#if>
  <#return (figure.about.calculated!false)?then("calculated", "measured")>
</#function>

<#function end e unit><#return ((e.bound!"") == "")?then("", e.bound + " ") + withUnit(e.value, unit) + " at " + hertz(e.hz)></#function>

<#-- Axes -->

<#function xLabel figure>
  <#switch figure.kind>
    <#case "curve"><#case "levels"><#return "Frequency (Hz)">
    <#case "range"><#return axis(figure.about)>
    <#case "margin"><#return "Distance from the nearest end of what was claimed (dB)">
    <#case "series"><#return "Level of the test sound (" + figure.about.unit + ")">
    <#case "trace"><#return "Time after the step (" + figure.about.unit + ")">
    <#default><#return "">
  </#switch>
</#function>

<#function yLabel figure>
  <#switch figure.kind>
    <#case "curve"><#case "editions"><#return axis(figure.about)>
    <#case "levels"><#return "Level (" + figure.levelUnit + ")">
    <#case "series"><#return (figure.about.quantity == "criterion level")?then("Level at the ear (dB(A))", "Gain (dB)")>
    <#case "trace"><#return "Level (" + figure.levelUnit + ")">
    <#default><#return "">
  </#switch>
</#function>

<#-- Names of lines -->

<#function label figure s>
  <#if figure.kind == "levels"><#return (s.name == "open ear")?then("open ear", "in place")></#if>
  <#return s.label.text>
</#function>

<#function rowLabel figure r>
  <#if figure.kind == "margin"><#return r.claimNumber + ". " + r.label + ": " + r.verdict></#if>
  <#return named(r.label, figure)>
</#function>

<#function claimNumber r><#return "No. " + r.claimNumber></#function>

<#function measured><#return "measured"></#function>

<#-- Below the plot -->

<#function repeats key>
  <#switch key>
    <#case "head"><#return "Heavy: mean over the people; thin: each of them. ">
    <#case "unit"><#return "Heavy: mean of the samples; thin: each sample. ">
    <#case "insertion"><#return "Heavy: mean of the insertions; thin: each insertion. ">
    <#default><#return "">
  </#switch>
</#function>

<#function scale figure><#return "Scale: " + figure.shows.dbPerDecade + " dB to a decade.">
</#function>

<#function arrow figure><#return figure.shows.bounds?then(" Arrow: only a bound was measured; the true value lies in this direction.", "")></#function>

<#function curveLegend figure>
  <#switch figure.shows.interval>
    <#case "drawn"><#local interval = "Tinted: 95 % interval of the measured value. "><#break>
    <#case "left out"><#local interval = "Means only: intervals and insertions of so many would hide each other. "><#break>
    <#default><#local interval = "The spread is not known. ">
  </#switch>
  <#return repeats(figure.shows.repeats) + interval + scale(figure) + arrow(figure)>
</#function>

<#function rangeLegend figure>
  <#if figure.about.calculated><#return "Dot: calculated value."></#if>
  <#if figure.shows.interval == "unknown"><#return "Dot: measured value. The spread is not known." + arrow(figure)></#if>
  <#local bar = figure.shows.others?then("bar: 95 % interval of the deciding one, U (k = 2) of the others.", "bar: its 95 % interval.")>
  <#return "Dot: measured value; " + bar + arrow(figure)>
</#function>

<#function seriesLegend figure>
  <#local bar = (figure.shows.interval == "drawn")?then(" with U (k = 2)", "")>
  <#local found = figure.series?map(s -> ((s.name == "")?then("", s.name + " ")) + value(s.mark))>
  <#return "Ring: " + figure.about.quantity + bar + ": " + few(found) + "." + arrow(figure)>
</#function>

<#function editionLegend figure>
  <#local band = (figure.shows.interval == "drawn")?then("Line and tint: measured value and its 95 % interval", "Line: measured value")>
  <#return "Bars: claimed. " + band + ", of the least favourable ear or sound." + figure.shows.moved?then(" Bars that would touch stand apart from their dates.", "") + arrow(figure)>
</#function>

<#function levelsLegend figure>
  <#local lines = (figure.shows.lines == 1)?then("Mean of the insertions", "A line for each ear (" + few(figure.wearers) + "), mean of its insertions")>
  <#return lines + ". " + scale(figure)>
</#function>

<#function traceLegend figure>
  <#local many = figure.series?size gt 1>
  <#return "Ring: settled" + many?then(", trace by trace; mean ", ", ") + figure.value + (figure.expanded == "")?then("", " (U = " + figure.expanded + ")") + ".">
</#function>

<#-- Of a lot only the worst are shown. -->
<#function worst figure><#return ((figure.cellsInAll!0) gt (figure.cells!0))?then(" The " + figure.cells + " least probable of " + figure.cellsInAll + ".", "")></#function>

<#function legendOf figure>
  <#switch figure.kind>
    <#case "curve"><#return curveLegend(figure)>
    <#case "range"><#return rangeLegend(figure)>
    <#case "margin"><#return "Dot: the number that decides; bar: U (k = 2). Right of zero it lies inside." + arrow(figure)>
    <#case "series"><#return seriesLegend(figure)>
    <#case "editions"><#return editionLegend(figure)>
    <#case "levels"><#return levelsLegend(figure)>
    <#case "trace"><#return traceLegend(figure)>
    <#default><#return "">
  </#switch>
</#function>

<#function legend figure><#return legendOf(figure) + worst(figure)></#function>

<#-- The title, and the figure in words -->

<#function title figure>
  <#local panel = (figure.panel == "")?then("", ", " + figure.panel)>
  <#switch figure.kind>
    <#case "margin"><#return figure.product + ": how far inside or outside what was claimed">
    <#case "editions"><#return figure.product + ", " + figure.topic + ": claimed, edition by edition, and measured">
    <#case "levels"><#return figure.product + panel + ": levels of the open ear and in place">
    <#case "series"><#return figure.product + ", " + figure.claimId + ": " + (figure.about.quantity == "criterion level")?then("level at the ear", "gain") + " against level">
    <#case "trace"><#return figure.product + ", " + figure.claimId + panel + ": " + figure.about.quantity>
    <#case "range"><#return figure.product + ", " + figure.claimId + panel + ": " + whole(figure.about)>
    <#default><#return figure.product + ", " + figure.claimId + panel + ": " + quantity(figure.about)>
  </#switch>
</#function>

<#function curves figure>
  <#return few(figure.series?map(s -> named(s.name, figure) + " between " + end(s.lowest, figure.about.unit) + " and " + end(s.highest, figure.about.unit)))>
</#function>

<#function levels figure>
  <#return few(figure.series?map(s -> label(figure, s) + " between " + end(s.lowest, figure.levelUnit) + " and " + end(s.highest, figure.levelUnit)))>
</#function>

<#function edition r>
  <#return r.dated + " (" + r.source + "): claimed " + limit(r.claimed.limit) + ", measured " + value(r) + ", " + r.verdict>
</#function>

<#function margins figure>
  <#return figure.rows?map(r -> r.claimNumber + ". " + r.name + ": " + r.verdict + " " + ((r.bound == "")?then("", r.bound + " ")) + r.value + (r.expanded == "")?then("", " ± " + r.expanded))?join("; ")>
</#function>

<#function alt figure>
  <#switch figure.kind>
    <#case "margin"><#return title(figure) + ", in dB: " + margins(figure) + ". Claimed: 0 dB or more.">
    <#case "editions"><#return quantity(figure.about)?cap_first + " against date: " + figure.rows?map(r -> edition(r))?join("; ") + ".">
    <#case "levels"><#return title(figure) + ": " + levels(figure) + ".">
    <#case "series"><#return title(figure) + ". " + seriesLegend(figure) + " " + claimed(figure)?cap_first + ".">
    <#case "trace"><#return title(figure) + ". " + traceLegend(figure) + " " + claimed(figure)?cap_first + ".">
    <#case "range"><#return whole(figure.about)?cap_first + ": " + few(figure.rows?map(r -> named(r.name, figure) + " " + value(r))) + ". " + claimed(figure)?cap_first + ".">
    <#default><#return quantity(figure.about)?cap_first + (figure.panel == "")?then("", ", " + figure.panel) + ": " + curves(figure) + ". " + claimed(figure)?cap_first + ".">
  </#switch>
</#function>
