package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.statistics.Errors;
import org.ellwand.statistics.NormalErrors;
import org.junit.jupiter.api.Test;

class ShareErrorsTest {
    private static final Errors OF_MEAN = new NormalErrors(0.3);

    /** By hand: all three inside says "half or more" with 1 − 0.5³, two of three with 1 − 0.5³ − 3 · 0.5³. */
    @Test
    void valuesAreCountedInOrOut() {
        Interval so = Interval.atLeast(1, Unit.NONE);
        ShareErrors all = ShareErrors.inOrOut(OF_MEAN, List.of(1.0, 1.0, 1.0), 0.5);
        assertThat(all.ends(so).holds()).isCloseTo(0.875, within(1e-12));
        assertThat(all.shareAtLeast(so, 0.95)).isCloseTo(Math.cbrt(0.05), within(1e-9));
        assertThat(all.count()).isEqualTo(3);
        ShareErrors two = ShareErrors.inOrOut(OF_MEAN, List.of(1.0, 0.0, 1.0), 0.5);
        assertThat(two.ends(so).holds()).isCloseTo(0.5, within(1e-12));
    }

    /** 80.3 − 79.07 is 1.2300000000000040 in binary numbers, and still on the limit. */
    @Test
    void equalValuesOnTheirLimitAreInside() {
        ShareErrors errors = ShareErrors.normal(OF_MEAN, Collections.nCopies(3, 80.3 - 79.07), 0.5, 0);
        assertThat(errors.ends(Interval.atMost(1.23, Unit.DB)).holds()).isEqualTo(1);
        assertThat(errors.ends(Interval.atMost(1.22, Unit.DB)).holds()).isZero();
    }

    /** What is said of the mean is the mean's own. */
    @Test
    void theMeanKeepsItsErrors() {
        Errors errors = ShareErrors.normal(OF_MEAN, List.of(14.0, 16.0), 0.5, 0);
        assertThat(errors.atMost(0.3)).isEqualTo(OF_MEAN.atMost(0.3));
        assertThat(errors.atLeast(0.3)).isEqualTo(OF_MEAN.atLeast(0.3));
        assertThat(errors.quantile(0.9)).isEqualTo(OF_MEAN.quantile(0.9));
        assertThat(errors.standardUncertainty()).isEqualTo(0.3);
    }
}
