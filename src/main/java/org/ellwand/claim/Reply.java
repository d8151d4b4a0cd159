package org.ellwand.claim;

/** The maker's answer, printed as it came. */
public record Reply(String dated, String text) {}
