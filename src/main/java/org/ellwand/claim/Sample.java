package org.ellwand.claim;

import java.util.Optional;

/** A tested unit and whence it came. */
public record Sample(String unit, Optional<String> obtained) {}
