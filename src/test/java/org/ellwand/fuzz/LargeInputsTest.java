package org.ellwand.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Ten megabytes of nothing good: read or refused while somebody waits, whatever the form. */
@Tag("slow")
class LargeInputsTest {
    private static final int BYTES = 10_000_000;

    /** Ten times what ten megabytes may take, for a machine that does other things beside. */
    private static final Duration PATIENCE = Duration.ofSeconds(50);

    @TempDir
    private Path folder;

    private static String filled(String start, String again) {
        return start + again.repeat((BYTES - start.length()) / again.length());
    }

    private static String counted(String start, String each, int bytes) {
        StringBuilder text = new StringBuilder(start);
        for (int i = 0; text.length() < bytes; i++) {
            text.append(each.replace("#", Integer.toString(i)));
        }
        return text.toString();
    }

    static Stream<Arguments> inputs() {
        Stream<Arguments> yaml = Stream.of(
                        filled("product: x\nclaims: ", "- "),
                        filled("product: ", "x"),
                        counted("product: x\n", "k#: 1\n", 990_000),
                        counted("product: x\n", "k#:\n", 990_000),
                        counted("{product: x", ", k#", 990_000) + "}",
                        counted("product: x\nclaims:\n", "- {id: c#, edition: e}\n", 990_000),
                        counted(
                                "product: x\nclaims:\n",
                                "- {id: c, edition: e, quote: q, rule: {quantity: attenuation}}\n",
                                990_000),
                        "[".repeat(990_000),
                        "a: &x {b: [".repeat(90_000),
                        "product: \"" + "x".repeat(990_000) + "\"",
                        "- ".repeat(490_000),
                        "? ".repeat(490_000))
                .flatMap(text -> Stream.of(Target.CLAIMS, Target.SESSION).map(target -> Arguments.of(target, text)));
        Stream<Arguments> sheets = Stream.of(
                        filled("", "x"),
                        filled("", ","),
                        filled("", "\n"),
                        filled("", "\""),
                        filled("hz,level\n", "1,2\n"),
                        counted("hz,", "c#,", BYTES),
                        filled("setting,stimulus,insertion,hz,level\n", "flood,p80,1,1000,80\n"),
                        counted("setting,stimulus,insertion,hz,level\n", "flood,p80,#,1000,80\n", BYTES),
                        filled("hz,level\n\"", "a\n"),
                        filled("time,level\n", "1e-300,9e299\n"),
                        counted("time,level\n", "#,80\n", BYTES))
                .flatMap(text -> Stream.of(Target.ROWS, Target.COLUMNS, Target.TRACE, Target.HARMONICS)
                        .map(target -> Arguments.of(target, text)));
        Stream<Arguments> records = Stream.of(
                        filled("", "["),
                        filled("{\"format\": \"ellwand-audit\", \"version\": 1, \"inputs\": [", "{},"),
                        filled("{\"format\": \"", "x"),
                        filled("", "{\"a\":"),
                        "9".repeat(BYTES))
                .map(text -> Arguments.of(Target.RECORD, text));
        Stream<Arguments> remarks = Stream.of(filled("", "a = {b}\n"), filled("no-rule = ", "{a} "), filled("", "x"))
                .map(text -> Arguments.of(Target.REMARKS, text));
        Stream<Arguments> sounds = sounds().map(sound -> Arguments.of(Target.WAV, sound));
        Stream<Arguments> all =
                Stream.of(yaml, sheets, records, remarks, sounds).flatMap(s -> s);
        // Names of ten megabytes help nobody: the number of the input stands for it.
        List<Arguments> list = all.toList();
        return IntStream.range(0, list.size())
                .mapToObj(i -> Arguments.of(
                        i, list.get(i).get()[0], new Input((String) list.get(i).get()[1])));
    }

    /** As bytes in ISO 8859-1: chunks without end, samples that are no numbers, many channels, sizes beyond the file. */
    private static Stream<String> sounds() {
        String pcm = "fmt \20\0\0\0\1\0\1\0\200\273\0\0\0\167\1\0\2\0\20\0";
        String floats = "fmt \20\0\0\0\3\0\1\0\200\273\0\0\0\356\2\0\4\0\40\0";
        String wide = "fmt \20\0\0\0\1\0\0\1\200\273\0\0\0\0\167\1\0\2\20\0";
        return Stream.of(
                        filled("", "none\0\0\0\0"),
                        filled(pcm, "data\0\0\0\0"),
                        filled(pcm + "data" + size(BYTES - 100), "\0\200"),
                        filled(floats + "data" + size(BYTES - 100), "\377\377\377\177"),
                        filled(floats + "data" + size(BYTES - 100), "\0\0\200\177"),
                        filled(wide + "data" + size((BYTES - 100) / 512 * 512), "\1\2"),
                        filled(pcm + "data\377\377\377\377", "\0"),
                        filled("", pcm))
                .map(chunks -> "RIFF" + size(chunks.length() + 4) + "WAVE" + chunks);
    }

    private static String size(int bytes) {
        byte[] ends = ByteBuffer.allocate(4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(bytes)
                .array();
        return new String(ends, StandardCharsets.ISO_8859_1);
    }

    private record Input(String text) {
        @Override
        public String toString() {
            return text.substring(0, Math.min(40, text.length())).replaceAll("[^ -~]", " ");
        }

        byte[] bytes(Target target) {
            return text.getBytes(target == Target.WAV ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8);
        }
    }

    @ParameterizedTest
    @MethodSource("inputs")
    void nothingHangs(int number, Target target, Input input) throws IOException {
        target.prepare(folder);
        byte[] bytes = input.bytes(target);
        Files.write(folder.resolve(target.file()), bytes);
        assertTimeoutPreemptively(PATIENCE, () -> {
            try {
                target.read(folder, bytes);
            } catch (InputException e) {
                assertThat(e.problems())
                        .hasSizeBetween(1, 20)
                        .allSatisfy(p -> assertThat(p.text()).hasSizeLessThan(20_000));
            }
        });
    }
}
