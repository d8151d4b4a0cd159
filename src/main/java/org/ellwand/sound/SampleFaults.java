package org.ellwand.sound;

/**
 * What the samples of a recording say of it.
 *
 * @param clipped stretches in which the sound was cut off at its top
 * @param clippedS where the first of them begins, in s; NaN where there is none
 * @param clippedAt the level of the cut, full scale 1
 * @param dropped stretches of equal samples in the middle of sound
 * @param droppedS where the first of them begins, in s; NaN where there is none
 * @param longestDropS how long the longest of them lasts, in s
 * @param offset mean of the samples, full scale 1
 * @param peak largest sample, full scale 1
 * @param meanSquare of the samples without their mean
 */
public record SampleFaults(
        int clipped,
        double clippedS,
        double clippedAt,
        int dropped,
        double droppedS,
        double longestDropS,
        double offset,
        double peak,
        double meanSquare) {}
