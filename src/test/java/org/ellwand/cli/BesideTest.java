package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.FileNotFoundException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BesideTest {
    static Throwable[] whatMayGoWrong() {
        return new Throwable[] {
            new InputException(Place.ofFile("claims/a.yaml"), "bad"),
            new AccessDeniedException("templates"),
            new UncheckedIOException(new FileNotFoundException("x")),
            new IllegalStateException("unforeseen"),
            new OutOfMemoryError("made up")
        };
    }

    /** Else bad input, a full disk or too little memory would be told as a fault of the program. */
    @ParameterizedTest
    @MethodSource("whatMayGoWrong")
    void whatWentWrongComesOutAsItIs(Throwable wrong) {
        Beside<String> work = Beside.begin(() -> {
            if (wrong instanceof Error fatal) {
                throw fatal;
            }
            throw (Exception) wrong;
        });
        assertThatThrownBy(work::get).isSameAs(wrong);
    }

    @org.junit.jupiter.api.Test
    void whatCameOfItComesOut() throws Exception {
        assertThat(Beside.begin(() -> "done").get()).isEqualTo("done");
    }
}
