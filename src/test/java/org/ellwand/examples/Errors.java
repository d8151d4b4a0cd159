package org.ellwand.examples;

/** Whether readings carry errors, or are the model's truth. */
enum Errors {
    AS_DECLARED(1),
    NONE(0);

    private final double size;

    Errors(double size) {
        this.size = size;
    }

    double size() {
        return size;
    }
}
