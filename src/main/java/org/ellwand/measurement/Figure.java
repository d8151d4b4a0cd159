package org.ellwand.measurement;

import java.util.Optional;
import org.ellwand.amount.Amount;
import org.ellwand.input.Place;

/**
 * A single measured figure.
 *
 * @param of what was measured: battery life, mass, …
 * @param value with its unit
 * @param uncertainty standard uncertainty (k = 1), of the value's dimension
 * @param conditions everything known of it
 * @param place where it begins in the session file
 */
public record Figure(String of, Amount value, Optional<Amount> uncertainty, Conditions conditions, Place place) {}
