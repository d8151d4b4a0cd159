package org.ellwand.cli;

/** Where the program starts. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(2);
    }
}
