package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What becomes of a result on standard output that does not get through. */
class OutletTest {
    private final StringWriter err = new StringWriter();

    @Test
    void whatGetsThroughIsWhole() {
        ByteArrayOutputStream target = new ByteArrayOutputStream();
        assertThat(schemaTo(target)).isZero();
        assertThat(target.toString(StandardCharsets.UTF_8)).isEqualTo("{}" + System.lineSeparator());
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void aFullDiskIsAFailureOfTheMachine() {
        assertThat(schemaTo(refusing("No space left on device"))).isEqualTo(3);
        assertThat(err.toString()).isEqualTo("standard output: No space left on device" + System.lineSeparator());
    }

    @Test
    void aReaderThatHasSeenEnoughIsNoFailure() {
        assertThat(schemaTo(refusing("Broken pipe"))).isZero();
        assertThat(err.toString()).isEmpty();
    }

    private int schemaTo(OutputStream target) {
        List<Object> commands = List.of(new SchemaCommand(Map.of("claims", declared -> "{}")));
        return Main.run(commands, new Outlet(target), new PrintWriter(err, true), "schema", "claims");
    }

    private static OutputStream refusing(String why) {
        return new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(why);
            }
        };
    }
}
