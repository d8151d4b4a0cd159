<#ftl output_format="undefined">
<#-- Colours of the figures, for light and for dark surroundings. Every colour of a line keeps its distance from the others for all kinds of
colour vision and from every ground it stands on; dashes and markers tell lines apart besides. -->
<#assign light = {"paper": "#ffffff", "ink": "#2b2f33", "grid": "#dcdddb", "claimed": "#e9e4d6",
  "lines": ["#1f4490", "#c0660c", "#97669c", "#168a5c", "#33262f", "#6c3a08"]}>
<#assign dark = {"paper": "#17191c", "ink": "#e2e0da", "grid": "#34383c", "claimed": "#33312a",
  "lines": ["#5a8fe0", "#df7a3a", "#a98a9e", "#86dcb4", "#d5d6f0", "#f0c772"]}>
<#assign dashes = ["", "9 4", "2 4", "12 4 2 4", "5 3"]>
<#-- The rules of one scheme. The attributes of a figure are those of the light one. -->
<#macro rules scheme>
.e-paper{fill:${scheme.paper}}.e-ink{fill:${scheme.ink}}.e-claimed{fill:${scheme.claimed}}.e-rule{stroke:${scheme.ink}}.e-grid{stroke:${scheme.grid}}
<#list scheme.lines as colour>.e-line-${colour?index}{stroke:${colour}}.e-fill-${colour?index}{fill:${colour}}</#list>
</#macro>
<#macro darkRules>
@media screen and (prefers-color-scheme:dark){
<@rules dark/>
}
</#macro>
