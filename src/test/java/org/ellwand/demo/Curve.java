package org.ellwand.demo;

import java.util.List;
import java.util.Map;

/** One reading: conditions by column name, and its levels in dB SPL in the order of {@link Bands#ALL}. */
record Curve(Map<String, String> conditions, List<Double> levelsDb) {}
