package org.ellwand.input;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads a YAML file into {@link YamlNode}s. Plain files only: no aliases, anchors, tags, merge keys or second documents,
 * no key twice, not nested deeper than {@value #DEEPEST}, not longer than {@value #LONGEST} characters.
 */
public final class YamlReader {
    static final int DEEPEST = 30;
    static final int LONGEST = 1_000_000;
    static final int LONGEST_SCALAR = 100_000;

    private static final Pattern TAB = Pattern.compile("(?m)^ *\t");

    private final String file;
    private final Iterator<Event> events;
    private Event current;

    private YamlReader(String file, Iterator<Event> events) {
        this.file = file;
        this.events = events;
        this.current = events.next();
    }

    /**
     * Reads a file.
     *
     * @param folder the audited folder
     * @param relative path of the file below it, with forward slashes; the places of the nodes carry it
     * @return the root of the document
     * @throws InputException where it cannot be read, leads out of the folder, or is no plain YAML
     */
    public static YamlNode read(Path folder, String relative) throws InputException {
        return parse(text(folder, relative), relative);
    }

    private static String text(Path folder, String relative) throws InputException {
        try {
            Inside.check(folder, relative, relative);
            if (Files.size(folder.resolve(relative)) > 4L * LONGEST) {
                throw tooLong(relative);
            }
            byte[] bytes = Files.readAllBytes(folder.resolve(relative));
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new InputException(Place.ofFile(relative), "not UTF-8 text: save the file as UTF-8");
        } catch (IOException e) {
            throw new InputException(Place.ofFile(relative), "cannot be read: " + e.getMessage());
        }
    }

    /**
     * {@return the root of the document in a YAML text}
     *
     * @param text the whole document
     * @param file what places name
     * @throws InputException where it is no plain YAML, or larger than is read
     */
    public static YamlNode parse(String text, String file) throws InputException {
        if (text.length() > LONGEST) {
            throw tooLong(file);
        }
        refuseTab(text, file);
        LoadSettings settings =
                LoadSettings.builder().setCodePointLimit(LONGEST + 1).build();
        try {
            return new YamlReader(file, new Parse(settings).parseString(text).iterator()).document();
        } catch (MarkedYamlEngineException e) {
            throw YamlFault.of(e, file);
        } catch (YamlEngineException e) {
            throw YamlFault.of(String.valueOf(e.getMessage()), file);
        }
    }

    private static InputException tooLong(String file) {
        return new InputException(
                Place.ofFile(file), "longer than " + LONGEST + " characters, which is more than is read from one file");
    }

    private static void refuseTab(String text, String file) throws InputException {
        Matcher tab = TAB.matcher(text);
        if (tab.find()) {
            int line = (int) text.substring(0, tab.end()).lines().count();
            throw new InputException(
                    new Place(file, line, tab.end() - tab.start()), "a tab indents this line: use spaces");
        }
    }

    private YamlNode document() throws InputException {
        next(Event.ID.StreamStart);
        if (current.getEventId() == Event.ID.StreamEnd) {
            throw new InputException(Place.ofFile(file), "empty");
        }
        next(Event.ID.DocumentStart);
        YamlNode node = node(0);
        next(Event.ID.DocumentEnd);
        if (current.getEventId() != Event.ID.StreamEnd) {
            throw new InputException(here(), "a second document begins here: one file holds one");
        }
        return node;
    }

    private void next(Event.ID expected) {
        if (current.getEventId() == expected && events.hasNext()) {
            current = events.next();
        }
    }

    private YamlNode node(int depth) throws InputException {
        if (depth > DEEPEST) {
            throw new InputException(here(), "nested deeper than " + DEEPEST + " levels");
        }
        if (current instanceof AliasEvent) {
            throw new InputException(here(), "an alias ('*') is not accepted: write the value out");
        }
        if (current instanceof ScalarEvent scalar) {
            return scalar(scalar);
        }
        if (current instanceof CollectionStartEvent start) {
            refuse(start.getAnchor().isPresent(), start.getTag());
            return start.getEventId() == Event.ID.SequenceStart ? sequence(depth) : mapping(depth);
        }
        throw new InputException(here(), "not readable as YAML");
    }

    private YamlNode scalar(ScalarEvent scalar) throws InputException {
        refuse(scalar.getAnchor().isPresent(), scalar.getTag());
        if (scalar.getValue().length() > LONGEST_SCALAR) {
            throw new InputException(here(), "a text longer than " + LONGEST_SCALAR + " characters");
        }
        YamlNode node = new YamlNode.Scalar(text(scalar), here());
        current = events.next();
        return node;
    }

    /** Nothing, {@code ~} and {@code null}, unquoted, are nothing. */
    private static String text(ScalarEvent scalar) {
        String value = scalar.getValue();
        return scalar.isPlain() && (value.equals("~") || value.equals("null")) ? "" : value;
    }

    private void refuse(boolean anchor, Optional<String> tag) throws InputException {
        if (anchor) {
            throw new InputException(here(), "an anchor ('&') is not accepted: write the value out where it is needed");
        }
        if (tag.isPresent()) {
            throw new InputException(here(), "a tag ('" + tag.get() + "') is not accepted");
        }
    }

    private YamlNode sequence(int depth) throws InputException {
        Place place = here();
        current = events.next();
        List<YamlNode> items = new ArrayList<>();
        while (current.getEventId() != Event.ID.SequenceEnd) {
            items.add(node(depth + 1));
        }
        current = events.next();
        return new YamlNode.Sequence(items, place);
    }

    private YamlNode mapping(int depth) throws InputException {
        Place place = here();
        current = events.next();
        Map<String, YamlNode.Entry> entries = new LinkedHashMap<>();
        while (current.getEventId() != Event.ID.MappingEnd) {
            YamlNode.Entry entry = entry(depth, entries);
            entries.put(entry.key(), entry);
        }
        current = events.next();
        return new YamlNode.Mapping(List.copyOf(entries.values()), place);
    }

    private YamlNode.Entry entry(int depth, Map<String, YamlNode.Entry> before) throws InputException {
        Place place = here();
        if (!(node(depth + 1) instanceof YamlNode.Scalar key) || key.text().isEmpty()) {
            throw new InputException(place, "a key is text");
        }
        if (key.text().equals("<<")) {
            throw new InputException(place, "a merge key ('<<') is not accepted: write the values out");
        }
        YamlNode.Entry earlier = before.get(key.text());
        if (earlier != null) {
            throw new InputException(
                    place,
                    "'" + key.text() + "' stands here a second time (first in line "
                            + earlier.keyPlace().line() + ")");
        }
        return new YamlNode.Entry(key.text(), place, node(depth + 1));
    }

    private Place here() {
        return current.getStartMark().map(mark -> YamlFault.place(file, mark)).orElse(Place.ofFile(file));
    }
}
