<#ftl output_format="XML">
<#-- One figure. Colours are presentation attributes of the light scheme; the style sheet turns them for the dark one. -->
<#import "figure-style.ftl" as look>
<#import "figure-words.ftl" as say>
<#assign c = look.light>
<#assign p = figure.plot>
<#assign left = p.left?number top = p.top?number right = p.right?number bottom = p.bottom?number>
<#assign rowed = figure.kind == "range" || figure.kind == "margin">
<#assign legend = say.wrapped(say.legend(figure), 66)>
<#assign axisAt = 18 + (figure.kind == "editions")?then(34 * (figure.shows.dateLines!1) - 16, 0)>
<#assign legendAt = axisAt + (say.xLabel(figure) == "")?then(24, 44)>
<#assign height = bottom + legendAt + 17 * legend?size - 4>
<#function colour number><#return c.lines[number % c.lines?size]></#function>
<#function k number><#return number % c.lines?size></#function>
<#macro stroke number width>class="e-line-${k(number)}" stroke="${colour(number)}" stroke-width="${width}"</#macro>
<#macro mark shape x y>
<#local i = k(shape)>
<#switch shape % 4>
<#case 0><circle class="e-fill-${i}" cx="${x}" cy="${y}" r="3.2" fill="${colour(shape)}"/><#break>
<#case 1><rect class="e-paper e-line-${i}" x="-2.9" y="-2.9" width="5.8" height="5.8" transform="translate(${x} ${y})" fill="${c.paper}" stroke="${colour(shape)}" stroke-width="1.6"/><#break>
<#case 2><path class="e-fill-${i}" d="M0 -4.2 L4 3 L-4 3 Z" transform="translate(${x} ${y})" fill="${colour(shape)}"/><#break>
<#default><path class="e-paper e-line-${i}" d="M0 -4.2 L4.2 0 L0 4.2 L-4.2 0 Z" transform="translate(${x} ${y})" fill="${c.paper}" stroke="${colour(shape)}" stroke-width="1.6"/>
</#switch>
</#macro>
<#-- A bar with caps. -->
<#macro bar r number y><path <@stroke number 1.8/> d="M${r.from} ${y} H${r.to} M${r.from} ${y?number - 4} v8 M${r.to} ${y?number - 4} v8" fill="none"/></#macro>
<#-- An arrow to the side where the true value of a bound lies. -->
<#macro aside bound x y number><#local s = (bound == "at least")?then(1, -1)><path <@stroke number 1.8/> d="M${x} ${y} h${24 * s} m${-5 * s} -4 l${5 * s} 4 l${-5 * s} 4" fill="none"/></#macro>
<#macro line points number width opacity="1" dashed=true><polyline <@stroke number width/> points="${points}" fill="none" stroke-linejoin="round"<#if opacity != "1"> stroke-opacity="${opacity}"</#if><#if dashed && look.dashes[number % look.dashes?size] != ""> stroke-dasharray="${look.dashes[number % look.dashes?size]}"</#if>/></#macro>
<svg xmlns="http://www.w3.org/2000/svg" width="${figure.width}" height="${height}" viewBox="0 0 ${figure.width} ${height}" role="img" aria-labelledby="${figure.id}-title ${figure.id}-desc" font-family="Helvetica Neue, Helvetica, Arial, Liberation Sans, DejaVu Sans, sans-serif" font-size="13">
<title id="${figure.id}-title">${figure.title}</title>
<desc id="${figure.id}-desc">${figure.alt}</desc>
<style><@look.darkRules/></style>
<defs><clipPath id="${figure.id}-plot"><rect x="${left - 8}" y="${top - 0.5}" width="${p.width?number + 16}" height="${p.height?number + 1}"/></clipPath></defs>
<rect class="e-paper" width="${figure.width}" height="${height}" fill="${c.paper}"/>
<#-- What was claimed, behind everything. -->
<#list figure.claimed as range>
<#if figure.kind == "curve">
<rect class="e-claimed" x="${left}" y="${range.from}" width="${p.width}" height="${range.size}" fill="${c.claimed}" clip-path="url(#${figure.id}-plot)"/>
<#else>
<rect class="e-claimed" x="${range.from}" y="${top}" width="${range.size}" height="${p.height}" fill="${c.claimed}" clip-path="url(#${figure.id}-plot)"/>
</#if>
</#list>
<#list figure.rows as r><#if figure.kind == "editions">
<#if r.hasBar><rect class="e-fill-0" x="${r.left}" y="${r.from}" width="${r.right?number - r.left?number}" height="${r.to?number - r.from?number}" fill="${colour(0)}" fill-opacity="0.2"/></#if>
</#if></#list>
<g class="e-grid" stroke="${c.grid}" stroke-width="0.7">
<#list figure.xTicks as t><line x1="${t.at}" y1="${top}" x2="${t.at}" y2="${bottom}"/></#list>
<#list figure.yTicks as t><line x1="${left}" y1="${t.at}" x2="${right}" y2="${t.at}"/></#list>
</g>
<#list figure.claimed as range>
<path class="e-rule" d="<#if figure.kind == "curve"><#if range.hasFrom>M${left} ${range.from} H${right} </#if><#if range.hasTo>M${left} ${range.to} H${right}</#if><#else><#if range.hasFrom>M${range.from} ${top} V${bottom} </#if><#if range.hasTo>M${range.to} ${top} V${bottom}</#if></#if>" fill="none" stroke="${c.ink}" stroke-width="1" stroke-dasharray="1.5 3"/>
<rect class="e-claimed e-rule" x="${rowed?then(12, left)}" y="${top - 23}" width="16" height="11" fill="${c.claimed}" stroke="${c.ink}" stroke-width="0.8" stroke-dasharray="1.5 2"/>
<text class="e-ink" x="${rowed?then(12, left) + 23}" y="${top - 13}" fill="${c.ink}">${say.claimed(figure)}</text>
</#list>
<#-- Lines and what belongs to them. -->
<#if figure.kind == "trace"><line class="e-rule" x1="${figure.stepX}" y1="${top}" x2="${figure.stepX}" y2="${bottom}" stroke="${c.ink}" stroke-width="1"/></#if>
<g clip-path="url(#${figure.id}-plot)">
<#list figure.series as s>
<#list s.areas![] as area><polygon class="e-fill-${k(s.number)}" points="${area}" fill="${colour(s.number)}" fill-opacity="0.14"/></#list>
<#list s.thin![] as points><@line points=points number=s.number width=(s.thin?size gt 12)?then(0.6, 0.8) opacity=(s.thin?size gt 12)?then("0.35", "0.6") dashed=false/></#list>
<#if figure.kind == "trace"><#list s.lines as points><@line points s.number 1.1 "1" false/></#list><#elseif figure.kind == "levels" && s.lines?size gt 1><#list s.lines as points><@line points s.number 1.3 "0.85"/></#list><#else><#list s.lines as points><@line points s.number 2/></#list></#if>
<#list s.arrows![] as a><path <@stroke s.number 1.6/> d="M${a.x} ${a.y} V${a.tip} M${a.x?number - 3.5} ${a.barb} L${a.x} ${a.tip} L${a.x?number + 3.5} ${a.barb}" fill="none"/></#list>
<#list s.markers![] as m><@mark shape=s.number x=m.x y=m.y/></#list>
</#list>
</g>
<#list figure.series as s>
<#if s.mark??>
<#if figure.kind == "series"><path <@stroke s.number 1/> d="M${s.mark.x} ${s.mark.y} V${bottom}" fill="none" stroke-dasharray="1.5 3"/></#if>
<#if (s.mark.hasBar!false)><@bar s.mark s.number s.mark.y/></#if>
<#if (s.mark.bound!"") != ""><@aside s.mark.bound s.mark.x s.mark.y s.number/></#if>
<circle <@stroke s.number 1.8/> cx="${s.mark.x}" cy="${s.mark.y}" r="6.5" fill="none"/>
</#if>
<#if s.label?? && say.label(figure, s) != "">
<#assign away = (s.label.y?number - s.label.fromY?number)?abs>
<#if away gt 3 || s.label.x?number - s.label.fromX?number gt 50><line <@stroke s.number 0.7/> x1="${s.label.fromX?number + 5}" y1="${s.label.fromY}" x2="${s.label.x?number - 2}" y2="${s.label.y}"/></#if>
<@mark shape=s.number x=(s.label.x?number + 4) y=s.label.y/><text class="e-ink" x="${s.label.x?number + 13}" y="${s.label.y}" dy="4.5" fill="${c.ink}">${say.label(figure, s)}</text>
</#if>
</#list>
<#-- Rows of single numbers. -->
<#if rowed>
<#list figure.rows as r>
<text class="e-ink" x="${left - 12}" y="${r.y}" dy="4.5" text-anchor="end" fill="${c.ink}">${say.rowLabel(figure, r)}</text>
<#if r.bound != ""><@aside r.bound r.x r.y r.number/></#if>
<#if r.hasBar><@bar r r.number r.y/></#if>
<@mark shape=r.number x=r.x y=r.y/>
</#list>
</#if>
<#-- Claimed numbers over dates. -->
<#if figure.kind == "editions">
<#list figure.rows as r>
<#assign x = r.x?number>
<rect class="e-claimed e-rule" x="${x - 8}" y="${r.claimed.from}" width="16" height="${r.claimed.size}" fill="${c.claimed}" stroke="${c.ink}" stroke-width="0.8" stroke-dasharray="1.5 2"/>
<path class="e-rule" d="<#if r.claimed.hasFrom>M${x - 11} ${r.claimed.from} h22 <#else>M${x - 5} ${r.claimed.from?number + 7} l5 -6 l5 6 </#if><#if r.claimed.hasTo>M${x - 11} ${r.claimed.to} h22<#else>M${x - 5} ${r.claimed.to?number - 7} l5 6 l5 -6</#if>" fill="none" stroke="${c.ink}" stroke-width="1.6"/>
<path class="e-rule" d="M${r.dateX} ${bottom} v4 L${x} ${bottom + 9}" fill="none" stroke="${c.ink}" stroke-width="0.8"/>
<text class="e-ink" x="${x}" y="${bottom + 22 + 34 * r.dateLine}" text-anchor="middle" fill="${c.ink}">${r.dated}</text>
<text class="e-ink" x="${x}" y="${bottom + 37 + 34 * r.dateLine}" text-anchor="middle" fill="${c.ink}">${say.claimNumber(r)}</text>
</#list>
<#list figure.rows as r>
<path <@stroke 0 2/> d="M${r.left} ${r.y} H${r.right}" fill="none"/>
<#if r.bound != ""><#assign s = (r.bound == "at least")?then(-1, 1)><path <@stroke 0 1.8/> d="M${r.x?number + 18} ${r.y} v${18 * s} m-4 ${-5 * s} l4 ${5 * s} l4 ${-5 * s}" fill="none"/></#if>
<#if r?is_last><text class="e-ink" x="${right + 8}" y="${r.y}" dy="4.5" fill="${c.ink}">${say.measured()}</text></#if>
</#list>
</#if>
<#-- Axes. -->
<path class="e-rule" d="M${left} ${bottom} H${right}<#if !rowed> M${left} ${top} V${bottom}</#if>" fill="none" stroke="${c.ink}" stroke-width="1"/>
<g class="e-ink" fill="${c.ink}">
<#list figure.xTicks as t><text x="${t.at}" y="${bottom + 18}" text-anchor="middle"><#if figure.kind == "curve" || figure.kind == "levels">${say.octave(t.value)}<#else>${t.value}</#if></text></#list>
<#list figure.yTicks as t><text x="${left - 7}" y="${t.at}" dy="4.5" text-anchor="end">${t.value}</text></#list>
<#if say.xLabel(figure) != ""><text x="${rowed?then(right, (left + right) / 2)}" y="${bottom + axisAt + 20}" text-anchor="${rowed?then("end", "middle")}">${say.xLabel(figure)}</text></#if>
<#if say.yLabel(figure) != ""><text x="12" y="18">${say.yLabel(figure)}</text></#if>
<#if figure.panel != ""><text x="${figure.width?number - 12}" y="18" text-anchor="end" font-style="italic">${say.cut(figure.panel, 30)}</text></#if>
<#list legend as words><text x="12" y="${bottom + legendAt + 17 * words?index}">${words}</text></#list>
</g>
</svg>
