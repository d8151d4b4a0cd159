package org.ellwand.demo;

/**
 * Gain that falls with level: {@code gainDb} up to the onset, then each dB more outside is 1/ratio dB more inside. One
 * gain for all bands, steady state.
 */
public record Compressor(double gainDb, double onsetDb, double ratio) {
    public double atDb(double levelDb) {
        return gainDb - Math.max(0, levelDb - onsetDb) * (1 - 1 / ratio);
    }
}
