package org.ellwand.demo;

import java.util.ArrayList;
import java.util.List;

/**
 * What is read in a sitting. The open ear twice, and music no louder than 77 dB SPL in it; in place three insertions of
 * each tip, counted through the sitting, both settings switched in place; the field microphone once.
 *
 * @param open sounds for the open ear
 * @param inPlace sounds with the product in place
 */
record Programme(List<Sound> open, List<Sound> inPlace) {
    static final int INSERTIONS = 3;

    List<Curve> outside(Sitting sitting) {
        List<Curve> curves = new ArrayList<>();
        inPlace.stream()
                .filter(sound -> sound.levelDb() > 0)
                .map(sitting::fieldMicrophone)
                .forEach(curves::add);
        open.stream()
                .filter(sound -> sound.levelDb() > 0 && !inPlace.contains(sound))
                .map(sitting::fieldMicrophone)
                .forEach(curves::add);
        return curves;
    }

    List<Curve> openEar(Sitting sitting) {
        return open.stream()
                .flatMap(sound -> List.of(sitting.openEar(sound, 1), sitting.openEar(sound, 2)).stream())
                .toList();
    }

    List<Curve> inPlace(Sitting sitting, Fit fit) {
        List<Curve> curves = new ArrayList<>();
        int before = fit.ordinal() * INSERTIONS;
        for (int insertion = before + 1; insertion <= before + INSERTIONS; insertion++) {
            for (String setting : sitting.device().settings()) {
                for (Sound sound : inPlace) {
                    curves.add(sitting.inPlace(sound, fit, setting, insertion));
                }
            }
        }
        return curves;
    }
}
