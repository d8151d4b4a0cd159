<#ftl output_format="Markdown">
<#-- Data are escaped by the output format; a line of a table must stay one line. -->
<#macro words c><#if c.verbatim>“${c.words}”<#else>${c.words} (in our words)</#if></#macro>
# What was claimed, and what was measured

<#list products as product>**${product.name}**<#if product.maker != ""> by ${product.maker}</#if><#sep>; </#list>

<#if dated != "">
Dated ${dated}

</#if>
**Before you rely on this**

<#list cautions as caution>
- ${caution}
</#list>

<#list products as product>
<a id="${product.anchor}"></a>

## ${product.name}

${product.claims?size} <#if product.claims?size == 1>claim<#else>claims</#if>: ${product.countsText}.

<#if product.recommendation != "">
**Our recommendation.** ${product.recommendation}

</#if>
<#if product.maker != "">
- Maker: ${product.maker}
</#if>
<#if product.about != "">
- Product: ${product.about}
</#if>
- Samples: <#if product.samples?has_content><#list product.samples as s>${s.unit}<#if s.obtained != ""> (${s.obtained})</#if><#sep>; </#list><#else>not stated</#if>
- Disclosure: <#if product.disclosure != "">${product.disclosure}<#else>none given</#if>
- Measured on: ${product.sample}
<#if product.asked != "">
- Maker asked: ${product.asked}
</#if>
<#if product.reply.text != "">
- Maker’s reply (${product.reply.dated}): ${product.reply.text}
</#if>

| No. | Claim | Source | Measured | Verdict | Probability |
| --: | --- | --- | --- | --- | --- |
<#list product.claims as c>
| [${c.number}](#${c.anchor}) | <@words c/> | ${c.source}, ${c.dated} | <#if c.measured.value != "">${c.measured.text}<#else>not measured</#if> | **${c.verdict}** | <#if c.probability != "">${c.probability}<#else>not given</#if> |
</#list>

Probability: that the claim, as we read it, is true.

<#list product.claims as c>
<a id="${c.anchor}"></a>

### ${c.number}. ${c.topic}

> <@words c/>
>
> ${c.source}, ${c.dated}<#if c.editionConditions != ""> (${c.editionConditions})</#if>

**${c.verdict}**<#if c.probability != "">, probability ${c.probability} that the claim, as we read it, is true<#else>, no probability given</#if><#if c.reason != "">: ${c.reason}</#if>

<#if c.rule != "">
- Our rule: ${c.rule}
<#if c.stated?has_content>
- The sentence states: <#list c.stated as s>${s.key}: ${s.text}<#sep>; </#list>
</#if>
- We assumed: <#if c.assumed?has_content><#list c.assumed as s>${s.key}: ${s.text}<#sep>; </#list><#else>nothing</#if>
</#if>
<#if c.because != "">
- Because: ${c.because}
</#if>
<#if c.condition != "">
- Condition: ${c.condition}
</#if>
<#if c.measured.value != "">
- Measured: ${c.measured.text}<#if c.measured.point != "">; ${c.measured.point}</#if><#if c.measured.decides != "">; ${c.measured.decides}</#if><#if c.measured.correction != "">; noise alone adds ${c.measured.correction} to this on average</#if>
</#if>
<#if c.sample != "">
- Ears, insertions: ${c.sample}
</#if>
<#list c.notes as note>
- Note: ${note}
</#list>
<#list c.findings as f>
- Finding: ${f.text} (${f.errs}; ${f.consequence})
</#list>
<#if c.impression != "">
- Impression, not measured: ${c.impression}
</#if>
<#if c.asked != "">
- Maker asked: ${c.asked}
</#if>
<#if c.reply.text != "">
- Maker’s reply (${c.reply.dated}): ${c.reply.text}
</#if>

<#list c.figures as f>
![${f.alt}](${f.path?no_esc})

</#list>
<#if c.otherwise?has_content>
The sentence read otherwise:

| Name | Rule | Measured | Verdict | Probability |
| --- | --- | --- | --- | --- |
<#list c.otherwise as o>
| ${o.name} | ${o.rule}<#if o.reason != "">; ${o.reason}</#if><#list o.notes as note>; ${note}</#list> | <#if o.measured.value != "">${o.measured.text}<#else>not measured</#if> | **${o.verdict}** | <#if o.probability != "">${o.probability}<#else>not given</#if> |
</#list>

</#if>
<#if c.cells?size gt 1>
One by one:

| Conditions | Insertions | Value | U (k = 2) | Probability |
| --- | --: | --: | --: | --- |
<#list c.cells as cell>
| ${cell.name} | ${cell.insertions} | ${cell.value} | <#if cell.expandedUncertainty != "">${cell.expandedUncertainty}<#else>not known</#if> | <#if cell.probability != "">${cell.probability}<#else>not given</#if> |
</#list>

</#if>
<#if c.contributions?has_content>
What the uncertainty is made of (standard uncertainty, k = 1):

| Cause | Drawn | Effect |
| --- | --- | --: |
<#list c.contributions as k>
| ${k.cause} | <#if k.instances == 1>once<#else>${k.instances} times</#if> | ${k.effect} |
</#list>

</#if>
</#list>
### What was not tested

<#assign untested = product.claims?filter(c -> c.verdict == "untested")>
<#list untested as c>
- [${c.number}](#${c.anchor}). ${c.topic}: ${c.reason}
<#else>
Every claim listed here was tested.
</#list>

Comfort, wearing time, hearing warning signals, speech and music through the product, and other units than the samples were not judged unless a claim above says so.

### Where the words come from

| Edition | Source | Dated | Speaks of | Kept |
| --- | --- | --- | --- | --- |
<#list product.editions as e>
| ${e.id} | ${e.source}<#if !e.mayBeQuoted> (not to be quoted; in our words)</#if> | ${e.dated} | ${e.conditions} | ${e.kept} |
</#list>

</#list>
## How it was decided

Each sentence was turned into a rule: what it states, and what we had to assume to make it testable. The rule is held against the readings together with their uncertainty.

- **pass**: the probability that the limit holds reaches the confidence at every point that the claim speaks of.
- **fail**: some point lies beyond its limit by more than errors of this size would bring about by chance. A measured value inside the limit never fails.
- **marginal**: the readings do not decide; the reason stands beside the verdict.
- **untested**: no reading can say anything about it.

This is a promise about how often it is wrong, if the declared sizes of the uncertainty are right: <#list products as product>for ${product.name}, decided at ${product.confidence}, a claim that is not true passes, and a claim that is true fails, at most ${product.doubt} of the time<#sep>; </#list>.

A claim of the kind “up to” is met where one point meets it, and a claim about the median where half of the points do; the promise is the same. U is the expanded uncertainty, twice the standard uncertainty (k = 2). The 95 % interval is the central one; the two differ where few repeats were made.

## How it was measured

<#list sessions as s>
<a id="${s.anchor}"></a>

### Session ${s.id}

<#if s.measured != "">
- Date: ${s.measured}
</#if>
<#if s.rig != "">
- Rig: ${s.rig}
</#if>
<#if s.place != "">
- Place: ${s.place}
</#if>
<#if s.resolution != "" || s.stimuli?has_content>
- Measured on: ${s.sample}
<#if s.resolution != "">
- Bands: ${s.resolution}<#if s.levelsIn != "">, levels in ${s.levelsIn}</#if>
</#if>
- Open ear: ${s.openEar}
- Settings: ${s.settings}
</#if>
<#list s.stimuli as t>
- Stimulus ${t.id}: ${t.text}<#if t.peak != "">, peak ${t.peak}</#if>
</#list>
- Uncertainty: ${s.uncertainty}
- Files: ${s.file}<#list s.dataFiles as f>, ${f}</#list>

<#if s.causes?has_content>
| Cause (standard uncertainty, k = 1) | Size | Shared by | Across bands |
| --- | --- | --- | --- |
<#list s.causes as k>
| ${k.name} | ${k.size} | ${k.sharedBy} | ${k.acrossBands} |
</#list>

</#if>
</#list>
## What the data say of themselves

<#if findings?has_content>
| Check | Where | Finding | How it errs | What follows |
| --- | --- | --- | --- | --- |
<#list findings as f>
| ${f.check} | ${f.session}<#if f.reading != "">: ${f.reading}</#if><#if f.bands != "">; ${f.bands}</#if> | ${f.text} | ${f.errs} | ${f.consequence} |
</#list>
<#else>
There are no findings. Ellwand does not yet check the data for leaks, tube placement, background noise or drift; their absence here says nothing about them.
</#if>

## Files

| File | SHA-256 |
| --- | --- |
<#list inputs as i>
| ${i.file} | ${i.sha256} |
</#list>
