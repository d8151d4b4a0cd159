package org.ellwand.sound;

/**
 * Looks at raw samples for what goes wrong between microphone and file.
 *
 * <p>Clipped: two or more samples in a row at the last value of a whole-number format; or three or more equal ones at the
 * highest value of the recording, entered by a step that a smooth top would not make (1 % of that value and 8 steps of the
 * format). Dropped: equal samples in a row for 1 ms or more, with sound before them of at least 32 steps of the format.
 * Common practice, no source.
 */
final class SoundCheck {
    private static final int CLIPPED_RUN = 3;
    private static final double STEEP_SHARE = 0.01;
    private static final double STEEP_STEPS = 8;
    private static final double DROP_S = 0.001;
    private static final double LOUD_STEPS = 32;
    private static final double MEMORY_S = 0.02;

    private final double rateHz;
    private final double stepSize;
    private final double fullScale;
    private final int dropRun;
    private final double forget;
    private long seen;
    private double last = Double.NaN;
    private double entry;
    private double around;
    private double aroundAtRun;
    private int run = 1;
    private double top;
    private int clipped;
    private long clippedFrame = -1;
    private int dropped;
    private long droppedFrame = -1;
    private int longestDrop;
    private double sum;
    private double squares;

    SoundCheck(SampleFormat format, double rateHz) {
        this.rateHz = rateHz;
        this.stepSize = format.step();
        this.fullScale = format.isPcm() ? 1 - 1.5 * format.step() : Double.POSITIVE_INFINITY;
        this.dropRun = (int) Math.ceil(DROP_S * rateHz);
        this.forget = 1 / (MEMORY_S * rateHz);
    }

    void feed(double[] samples, int count) {
        for (int i = 0; i < count; i++) {
            double x = samples[i];
            sum += x;
            squares += x * x;
            if (x == last) {
                run++;
            } else {
                endRun(i);
                entry = Math.abs(x - last);
                last = x;
                run = 1;
                aroundAtRun = around;
            }
            around += forget * (x * x - around);
        }
        seen += count;
    }

    private void endRun(int inBlock) {
        double size = Math.abs(last) >= fullScale ? 1 : Math.abs(last);
        if (size > top) {
            // A higher top: what looked like one before was none, unless it was the end of the format.
            top = size;
            clipped = 0;
            clippedFrame = -1;
        }
        if (run == 1) {
            return;
        }
        long begins = seen + inBlock - run;
        if (size >= top && isCut(size)) {
            clippedFrame = clipped == 0 ? begins : clippedFrame;
            clipped++;
        } else if (run >= dropRun && Math.sqrt(aroundAtRun) >= LOUD_STEPS * stepSize) {
            droppedFrame = dropped == 0 ? begins : droppedFrame;
            dropped++;
            longestDrop = Math.max(longestDrop, run);
        }
    }

    private boolean isCut(double size) {
        boolean steep = entry > Math.max(STEEP_SHARE * size, STEEP_STEPS * stepSize);
        return size >= fullScale || (run >= CLIPPED_RUN && steep);
    }

    SampleFaults result() {
        endRun(0);
        run = 1;
        double mean = seen == 0 ? 0 : sum / seen;
        return new SampleFaults(
                clipped,
                seconds(clippedFrame),
                top,
                dropped,
                seconds(droppedFrame),
                longestDrop / rateHz,
                mean,
                top,
                seen == 0 ? 0 : Math.max(0, squares / seen - mean * mean));
    }

    private double seconds(long frame) {
        return frame < 0 ? Double.NaN : frame / rateHz;
    }
}
