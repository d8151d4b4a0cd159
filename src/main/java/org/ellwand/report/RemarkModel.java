package org.ellwand.report;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.words.Measure;
import org.ellwand.words.Remark;
import org.ellwand.words.Sentences;

/** Reasons and notes as templates see them: worded in the sentences of the report, in the unit of the limit. */
final class RemarkModel {
    private RemarkModel() {}

    static List<Object> of(List<Remark> remarks, Sentences sentences, Shown shown) {
        return remarks.stream()
                .map(remark -> of(shown(remark, shown), sentences))
                .toList();
    }

    static List<Object> of(List<Remark> remarks, Sentences sentences) {
        return remarks.stream().map(remark -> of(remark, sentences)).toList();
    }

    private static Object of(Remark remark, Sentences sentences) {
        return Fields.of("key", remark.key())
                .and("text", sentences.of(remark))
                .and("figures", figures(remark.figures(), sentences))
                .map();
    }

    /** In the order of their names. */
    static List<Object> figures(SortedMap<String, Object> figures, Sentences sentences) {
        return figures.entrySet().stream()
                .map(figure -> (Object) Fields.of("name", figure.getKey())
                        .and("text", sentences.figure(figure.getValue()))
                        .map())
                .toList();
    }

    /** A ratio whose limit was written in per cent is printed in per cent. */
    private static Remark shown(Remark remark, Shown shown) {
        SortedMap<String, Object> figures = new TreeMap<>();
        for (Map.Entry<String, Object> figure : remark.figures().entrySet()) {
            figures.put(figure.getKey(), shown(figure.getValue(), shown));
        }
        return new Remark(remark.key(), figures);
    }

    private static Object shown(Object figure, Shown shown) {
        if (figure instanceof Measure measure
                && shown.factor() != 1
                && measure.unit().isEmpty()) {
            return new Measure(measure.value() * shown.factor(), shown.unit().symbol());
        }
        if (figure instanceof List<?> several) {
            return several.stream().map(one -> shown(one, shown)).toList();
        }
        return figure instanceof Remark remark ? shown(remark, shown) : figure;
    }
}
