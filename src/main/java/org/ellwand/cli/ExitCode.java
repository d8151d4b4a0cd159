package org.ellwand.cli;

/** What the program tells its caller. */
final class ExitCode {
    static final int DONE = 0;
    /** A condition of {@code --fail-on} was met. */
    static final int CONDITION_MET = 1;
    /** Bad input or usage: nothing was written. */
    static final int BAD_INPUT = 2;
    /** A failure of the program or the machine. */
    static final int FAILURE = 3;

    private ExitCode() {}
}
