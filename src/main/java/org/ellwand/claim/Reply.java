package org.ellwand.claim;

/**
 * The maker's answer, printed as it came.
 *
 * @param dated date of the answer, as written
 * @param text the maker's words
 */
public record Reply(String dated, String text) {}
