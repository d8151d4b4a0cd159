package org.ellwand.claim;

import java.util.Optional;

/**
 * A tested unit and whence it came.
 *
 * @param unit its name, as sessions write it
 * @param obtained how the auditor came by it, as bought or lent by the maker
 */
public record Sample(String unit, Optional<String> obtained) {}
