package org.ellwand.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is said where nothing of the input is wrong. */
class FailuresTest {
    /** The default is a share of the machine's memory: a fixed size would be less on a large one. */
    @Test
    void whereMemoryRanOutTheAdviceIsMoreThanThereWas() {
        StringWriter err = new StringWriter();
        assertThat(new Failures(new PrintWriter(err), false).print(new OutOfMemoryError()))
                .isEqualTo(ExitCode.FAILURE);
        Matcher sizes = Pattern.compile("it had (\\d+) MiB; ELLWAND_JAVA_OPTIONS=-Xmx(\\d+)m .* java -Xmx(\\d+)m -jar")
                .matcher(err.toString());
        assertThat(sizes.find()).as(err.toString()).isTrue();
        assertThat(Long.parseLong(sizes.group(2)))
                .isEqualTo(2 * Long.parseLong(sizes.group(1)))
                .isEqualTo(Long.parseLong(sizes.group(3)));
    }
}
