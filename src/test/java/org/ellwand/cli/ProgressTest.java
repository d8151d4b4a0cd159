package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class ProgressTest {
    /** Counts down when something is printed. */
    private static final class Heard extends StringWriter {
        private final CountDownLatch lines;

        Heard(int lines) {
            this.lines = new CountDownLatch(lines);
        }

        @Override
        public void flush() {
            lines.countDown();
        }

        boolean heard() throws InterruptedException {
            return lines.await(30, TimeUnit.SECONDS);
        }
    }

    @Test
    void longWorkIsToldWithItsSecondsAndTheLineGoesAway() throws Exception {
        Heard err = new Heard(2);
        boolean told = new Progress(new PrintWriter(err), true).during("reading ...", err::heard);
        assertThat(told).isTrue();
        assertThat(err.toString())
                .startsWith("\r\u001B[Kreading ... 1 s\r\u001B[Kreading ... 2 s")
                .endsWith("\r\u001B[K");
    }

    @Test
    void shortWorkAndWorkInAPipeSayNothing() throws Exception {
        Heard err = new Heard(1);
        assertThat(new Progress(new PrintWriter(err), true).during("reading ...", () -> 7))
                .isEqualTo(7);
        assertThat(new Progress(new PrintWriter(err), false).during("reading ...", () -> 7))
                .isEqualTo(7);
        assertThat(err.toString()).isEmpty();
    }
}
