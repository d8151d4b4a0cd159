package org.ellwand.claim;

import java.util.Map;
import java.util.Optional;

/**
 * Where and when a maker's words were published.
 *
 * @param id unique in its file
 * @param source what was published, as box, datasheet or letter, in the auditor's words
 * @param dated ISO date, year-month or year, as written
 * @param kept where the auditor keeps the evidence
 * @param conditions what this edition speaks of, as {@code firmware: "2.1"}; restricts the readings of its claims
 * @param mayBeQuoted {@code false} for a private letter: its quotes are never printed
 */
public record Edition(
        String id,
        String source,
        String dated,
        Optional<String> kept,
        Map<String, String> conditions,
        boolean mayBeQuoted) {}
