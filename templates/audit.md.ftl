<#ftl output_format="Markdown">
<#import "words.ftl" as w>
<#-- Data are escaped by the output format; a line of a table must stay one line. -->
# <#list products as product>${product.name}<#sep><#if product?counter == products?size - 1> and <#else>, </#if></#list>: what was claimed, and what was measured

<#if dated != "">
Dated ${dated}

</#if>
## The short answer

<#list products as product>
<#if products?size gt 1>
### ${product.name}, in short

</#if>
**${w.counts(product.counts)}.** ${w.inShort(product)}

- **For whom:** <#if product.recommendation != "">${w.full(product.recommendation)} </#if>${w.notForWhom()}
- **How sure:** ${w.sure(product)}
- **Not tested:** ${w.untestedOf(product)}.

</#list>
**Before you rely on this**

<#list cautions as caution>
- ${w.caution(caution)}
</#list>

<#list products as product>
<a id="${product.anchor}"></a>

## ${product.name}

<#if product.maker != "">
- Maker: ${product.maker}
</#if>
<#if product.about != "">
- Product: ${product.about}
</#if>
- Samples: <#if product.samples?has_content><#list product.samples as s>${s.unit}<#if s.obtained != ""> (${s.obtained})</#if><#sep>; </#list><#else>not stated</#if>
- Disclosure: <#if product.disclosure != "">${product.disclosure}<#else>none given</#if>
- ${w.basis(product.sample)}: ${w.sample(product.sample)}
<#if product.asked != "">
- Maker asked: ${product.asked}
</#if>

| No. | Claim | Source | Measured | Difference from the claim | Verdict | Probability |
| --: | --- | --- | --- | --- | --- | --- |
<#list product.claims as c>
| [${c.number}](#${c.anchor}) | ${w.words(c)} | ${w.source(c)} | ${w.measured(c.measured)} | <#if w.difference(c) != "">${w.difference(c)} ${w.differenceFrom(c)}<#if w.againstU(c) != "">; ${w.againstU(c)}</#if></#if> | **${c.verdict}** | ${w.probability(c.probability)} |
</#list>

Probability: that the claim, as we read it, is true. U: expanded uncertainty (k = 2).

<#list product.figures as f>
![${f.alt}](${f.path?no_esc})

</#list>
<#list product.claims as c>
<a id="${c.anchor}"></a>

### ${c.number}. ${c.topic}

> ${w.words(c)}
>
> ${w.source(c)}<#if c.editionConditions != ""> (${c.editionConditions})</#if>

**${c.verdict}** ${w.verdictLine(c)}

<#if c.rule != "">
- Our rule: ${w.rule(c)}
<#if c.stated?has_content>
- The sentence states: ${w.pairs(c.stated)}
</#if>
- We assumed: ${w.pairs(c.assumed)}
</#if>
<#if c.because != "">
- Because: ${c.because}
</#if>
<#if w.condition(c.conditions) != "">
- Condition: ${w.condition(c.conditions)}
</#if>
<#if c.measured.value != "">
- <#if c.measured.kind == "calculated">Calculated<#else>Measured</#if>: ${w.measured(c.measured)}<#if c.measured.own && w.where(c.measured.point) != "">; ${w.where(c.measured.point)}</#if><#if w.decides(c.measured) != "">; ${w.decides(c.measured)}</#if><#if w.correction(c.measured) != "">; ${w.correction(c.measured)}</#if>
<#if w.gap(c) != "">
- Against the claim: ${w.gap(c)}
</#if>
<#if w.curve(c.measured) != "">
- Over the bands: ${w.curve(c.measured)}
</#if>
</#if>
<#if w.sample(c.sample) != "">
- ${w.basis(c.sample)}: ${w.sample(c.sample)}
</#if>
<#list c.notes as note>
- Note: ${note.text}
</#list>
<#list c.findings as f>
- Finding: ${w.finding(f)}
</#list>
<#if c.impression != "">
- Impression, not measured: ${c.impression}
</#if>
<#if w.answer(product, c) != "">
- Maker: ${w.answer(product, c)}
</#if>
<#if c.reply.text != "">
- Maker's reply (${c.reply.dated}): ${c.reply.text}
</#if>

<#list c.figures as f>
![${f.alt}](${f.path?no_esc})

</#list>
<#if c.otherwise?has_content>
The sentence read otherwise:

| Name | Rule | Measured | Verdict | Probability |
| --- | --- | --- | --- | --- |
<#list c.otherwise as o>
| ${o.name} | ${w.rule(o)}<#if o.reasons?has_content>; ${w.reasons(o.reasons)}</#if><#list o.notes as note>; ${note.text}</#list> | ${w.measured(o.measured)} | **${o.verdict}** | ${w.probability(o.probability)} |
</#list>

</#if>
<#if c.cells?size gt 1>
<#if c.cellsInAll gt c.cells?size>The ${c.cells?size} least probable of ${c.cellsInAll}, all of which stand in cells.csv<#else>One by one</#if><#if ["lowest", "highest", "median", "spread"]?seq_contains(c.measured.statistic)> (U is that of the number that decides in each row, which may be another band than the value’s)</#if>:

| Conditions | Insertions | Value | U (k = 2) | Probability |
| --- | --: | --: | --: | --- |
<#list c.cells as cell>
| ${cell.name} | ${cell.insertions} | ${cell.value} | <#if cell.expandedUncertainty != "">${cell.expandedUncertainty}<#else>not known</#if> | ${w.probability(cell.probability)} |
</#list>

</#if>
<#if c.contributions?has_content>
What the uncertainty is made of (standard uncertainty, k = 1):

| Cause | Drawn | Effect |
| --- | --- | --: |
<#list c.contributions as k>
| ${k.cause} | ${w.times(k.instances)} | ${w.effect(k.effect)} |
</#list>

</#if>
</#list>
</#list>
<#if shared?has_content>
## The products side by side

| Topic |<#list products as product> ${product.name} |</#list>
| --- |<#list products as product> --- |</#list>
<#list shared as t>
| ${t.topic} |<#list products as product> <#list t.of?filter(e -> e.product == product?counter) as entry><#list w.claimsOf(entry) as c>${w.shownAs(c)}: **${c.verdict}**<#sep>;<br></#list><#else>nothing claimed</#list> |</#list>
</#list>

${w.whatDecides()}

<#list w.compared(shared) as line>
- ${line}
</#list>

</#if>
## How it was measured

<#if !sessions?has_content>
${w.noSessions()}

</#if>
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
<#if w.chain(s.chain) != "">
- Measuring chain: ${w.chain(s.chain)}
</#if>
<#if s.resolution != "" || s.stimuli?has_content>
- ${w.basis(s.sample)}: ${w.sample(s.sample)}
<#if s.resolution != "">
- Bands: ${s.resolution}<#if s.levelsIn != "">, levels in ${s.levelsIn}</#if>
</#if>
- Open ear: ${w.openEar(s)}
- Settings: ${w.settings(s)}
</#if>
<#list s.stimuli as t>
- Stimulus ${t.id}: ${t.text}<#if t.peak != "">, peak ${t.peak}</#if>
</#list>
- Uncertainty: ${w.uncertainty(s.uncertainty)}
- Files: ${s.file}<#list s.dataFiles as f>, ${f}</#list>

<#if s.causes?has_content>
| Cause (standard uncertainty, k = 1) | Size | Shared by | Across bands |
| --- | --- | --- | --- |
<#list s.causes as k>
| ${k.name} | ${w.sizes(k.sizes)} | ${k.sharedBy} | ${k.acrossBands} |
</#list>

</#if>
</#list>
## How sure

${w.howDecided()}

<#list ["pass", "fail", "marginal", "untested"] as word>
- **${word}**: ${w.verdictMeans(word)}
</#list>

${w.promise(products)}

${w.howToReadU()}

### What the data say of themselves

<#if findings?has_content>
| Check | Where | Finding | How it errs | What follows |
| --- | --- | --- | --- | --- |
<#list findings as f>
| ${f.check} | ${w.foundWhere(f)} | ${f.text}${w.more(f)} | ${w.errs(f.errs)} | ${w.consequence(f.consequence)} |
</#list>
<#else>
${w.noFindings()}
</#if>

## What was not tested

<#list products as product>
<#list product.claims?filter(c -> c.verdict == "untested") as c>
- ${product.name}, [${c.number}](#${c.anchor}). ${w.called(c)}: ${w.reasons(c.reasons)}
</#list>
</#list>
- ${w.neverTested()}

## What the maker replied

<#list products as product>
- ${product.name}: <#if product.reply.text != "">“${product.reply.text}” (${product.reply.dated})<#else>no reply is on record</#if><#list product.claims?filter(c -> c.reply.text != "") as c>; about No. ${c.number}: “${c.reply.text}” (${c.reply.dated})</#list>
<#list product.claims?filter(c -> c.answer.kind == "edition" || c.answer.kind == "none") as c>
- ${product.name}, [${c.number}](#${c.anchor}): ${w.answer(product, c)}
</#list>
</#list>

## The editions side by side

The same data, held against what each edition says.

<#list products as product>
<#list product.topics as t>
### ${product.name}: ${t.topic}

| Edition | Words | Limit | Measured | Verdict | Changed |
| --- | --- | --- | --- | --- | --- |
<#list t.steps as step><#assign c = product.claims[step.number - 1]>
| ${w.source(c)} (No. ${c.number}) | ${w.words(c)} | ${w.limit(c.limit)} | ${w.shortWhole(c.measured)} | **${c.verdict}** | <#if step?is_first>–<#else>${w.changed(product.claims[t.steps[step?index - 1].number - 1], c)}</#if> |
</#list>

</#list>
### ${product.name}: where the words come from

| Edition | Source | Dated | Speaks of | Kept |
| --- | --- | --- | --- | --- |
<#list product.editions as e>
| ${e.id} | ${e.source}<#if !e.mayBeQuoted> (not to be quoted; in our words)</#if> | ${e.dated} | ${e.conditions} | ${e.kept} |
</#list>

</#list>
## Data record

Everything above follows from these files; the SHA-256 of each tells whether yours are the same.

| File | SHA-256 |
| --- | --- |
<#list inputs as i>
| ${i.file} | ${i.sha256} |
</#list>
