package org.ellwand.amount;

import java.util.Optional;

/**
 * An interval as somebody wrote it.
 *
 * @param interval the range; for a bare number both ends are that number
 * @param bare the number, where the phrase is nothing but one ("30 hours"): it does not say how it is meant
 */
public record IntervalPhrase(Interval interval, Optional<Amount> bare) {}
