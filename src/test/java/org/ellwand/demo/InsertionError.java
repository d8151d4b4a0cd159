package org.ellwand.demo;

/** What one insertion does to every level behind the plug; each argument a draw of standard deviation 1. */
record InsertionError(double depth, double seal, double tube) {
    private static final double INSERTION_DB = 1.2;

    double atDb(double frequencyHz) {
        double sealDb = frequencyHz < 450 ? 0.6 : 0.1;
        double tubeDb = frequencyHz < 3000 ? 0.2 : frequencyHz < 6000 ? 0.5 : 1.2;
        return INSERTION_DB * depth + sealDb * seal + tubeDb * tube;
    }
}
