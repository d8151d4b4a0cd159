package org.ellwand.measurement;

import java.util.Map;
import java.util.Optional;
import org.ellwand.amount.Amount;
import org.ellwand.input.Place;

/** Levels in dB by harmonic order; order 1 is the fundamental. */
public record HarmonicReading(
        Conditions conditions, Optional<Amount> fundamental, Map<Integer, Double> levelDbByOrder, Place place) {}
