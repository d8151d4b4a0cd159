package org.ellwand.amount;

/** How far from a bare number a value may lie. */
public sealed interface Tolerance {
    /**
     * {@return the range around a nominal value, in the nominal's unit}
     *
     * @param nominal the number that was printed
     * @throws IllegalArgumentException where the tolerance's unit cannot be turned into the nominal's
     */
    Interval around(Amount nominal);

    /**
     * {@code 3 dB} or {@code +3 dB / -2 dB}.
     *
     * @param below how far below, not negative, in {@code unit}
     * @param above how far above, not negative, in {@code unit}
     * @param unit unit of both; a plain dB goes with every kind of level
     */
    record Absolute(double below, double above, Unit unit) implements Tolerance {
        /**
         * Refuses what is negative.
         *
         * @param below how far below, not negative, in {@code unit}
         * @param above how far above, not negative, in {@code unit}
         * @param unit unit of both
         * @throws IllegalArgumentException where a distance is negative or NaN
         */
        public Absolute {
            if (!(below >= 0) || !(above >= 0)) {
                throw new IllegalArgumentException("a tolerance is not negative");
            }
        }

        @Override
        public Interval around(Amount nominal) {
            // A plain dB is a difference of levels and so fits every kind of level.
            boolean levels = unit == Unit.DB && (nominal.unit().isLevel() || nominal.unit() == Unit.DB_PER_OCTAVE);
            double down = levels ? below : unit.convert(below, nominal.unit());
            double up = levels ? above : unit.convert(above, nominal.unit());
            return Interval.of(nominal.value() - down, nominal.value() + up, nominal.unit());
        }
    }

    /**
     * {@code 10 %} or {@code +10 % / -5 %} of the nominal value.
     *
     * @param belowPercent how far below, of the size of the nominal value, not negative
     * @param abovePercent how far above, of the size of the nominal value, not negative
     */
    record Relative(double belowPercent, double abovePercent) implements Tolerance {
        /**
         * Refuses what is negative.
         *
         * @param belowPercent how far below, of the size of the nominal value, not negative
         * @param abovePercent how far above, of the size of the nominal value, not negative
         * @throws IllegalArgumentException where a share is negative or NaN
         */
        public Relative {
            if (!(belowPercent >= 0) || !(abovePercent >= 0)) {
                throw new IllegalArgumentException("a tolerance is not negative");
            }
        }

        @Override
        public Interval around(Amount nominal) {
            double size = Math.abs(nominal.value());
            return Interval.of(
                    nominal.value() - size * belowPercent / 100,
                    nominal.value() + size * abovePercent / 100,
                    nominal.unit());
        }
    }

    /** {@code rounding}: half of the last digit that was printed. */
    record Rounding() implements Tolerance {
        @Override
        public Interval around(Amount nominal) {
            double half = nominal.halfLastDigit();
            return Interval.of(nominal.value() - half, nominal.value() + half, nominal.unit());
        }
    }
}
