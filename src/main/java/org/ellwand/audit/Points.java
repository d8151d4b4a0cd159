package org.ellwand.audit;

import java.util.List;
import java.util.OptionalDouble;
import org.ellwand.acoustics.Bound;
import org.ellwand.statistics.Errors;

/**
 * The judged numbers of a rule, over all of its subjects, ready for a statement about them.
 *
 * @param all in order of subject, then of band
 */
record Points(List<One> all) {
    Points {
        all = List.copyOf(all);
    }

    int size() {
        return all.size();
    }

    One get(int i) {
        return all.get(i);
    }

    /** The points of one subject. */
    List<One> of(int subject) {
        int low = 0;
        int high = all.size() - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int at = all.get(middle).subject();
            if (at == subject) {
                return run(middle, subject);
            }
            low = at < subject ? middle + 1 : low;
            high = at < subject ? high : middle - 1;
        }
        return List.of();
    }

    /** They stand side by side. */
    private List<One> run(int within, int subject) {
        int from = within;
        while (from > 0 && all.get(from - 1).subject() == subject) {
            from--;
        }
        int to = within;
        while (to < all.size() && all.get(to).subject() == subject) {
            to++;
        }
        return all.subList(from, to);
    }

    /**
     * One judged number.
     *
     * @param subject which subject it belongs to
     * @param local its place among the subject's points
     * @param sign −1 where the number was turned round to be positive (a pair of bands)
     * @param hz nominal band centre
     * @param lessHz band that is subtracted
     * @param value unit of the limit
     * @param errors what is to be added to the value
     * @param observed whether observed scatter stands for declared sizes
     * @param bound whether the value is measured, or only bounds the true number
     */
    record One(
            int subject,
            int local,
            int sign,
            OptionalDouble hz,
            OptionalDouble lessHz,
            double value,
            Errors errors,
            boolean observed,
            Bound bound) {
        One ofSubject(int other) {
            return new One(other, local, sign, hz, lessHz, value, errors, observed, bound);
        }
    }
}
