<#ftl output_format="undefined">
<#-- The title of a figure on the first line, the figure in words on the second. -->
<#import "figure-words.ftl" as say>
${say.title(figure)?replace("\n", " ")}
${say.alt(figure)?replace("\n", " ")}
