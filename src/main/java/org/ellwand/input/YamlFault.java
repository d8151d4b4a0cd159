package org.ellwand.input;

import java.util.List;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** What the parser complains of, in the words of who wrote the file: how it is mended, not which token was expected. */
final class YamlFault {
    private static final String UNREADABLE = "not readable as YAML: ";
    private static final String OPEN_QUOTE = "found unexpected end of stream";

    /** How a complaint begins, and what it means. */
    private record Meaning(String begins, String text) {}

    private static final List<Meaning> MEANINGS = List.of(
            new Meaning(
                    "mapping values are not allowed here",
                    "no ': ' is expected here; put text that holds ': ' in quotes, write keys with ': ' behind them, and"
                            + " begin those of one mapping in one column"),
            new Meaning(
                    "expected <block end>, but found '<scalar>'",
                    "text goes on behind a closing quotation mark; write a mark that belongs to the text twice"),
            new Meaning(
                    "expected <block end>",
                    "this line is indented otherwise than those it belongs to; begin keys of one mapping, and items of one"
                            + " list, in one column"),
            new Meaning(
                    "could not find expected ':'",
                    "this line or the one above has no ': '; write 'key: value', with a space behind the colon"),
            new Meaning(OPEN_QUOTE, "a quotation mark opens here and is not closed"),
            new Meaning(
                    "expected chomping or indentation indicators",
                    "a text does not begin with '>' or '|'; put it in quotes"),
            new Meaning("found character", "a text does not begin with this character; put it in quotes"),
            new Meaning("expected ',' or '}'", "a comma or the closing '}' is missing"),
            new Meaning("expected ',' or ']'", "a comma or the closing ']' is missing"));

    private YamlFault() {}

    static InputException of(MarkedYamlEngineException e, String file) {
        String complaint = plain(e.getProblem());
        String text = MEANINGS.stream()
                .filter(meaning -> complaint.startsWith(meaning.begins))
                .findFirst()
                .map(Meaning::text)
                .orElse(complaint);
        // An open quotation mark is missed at the end of the file, and mended where it stands.
        boolean where = complaint.startsWith(OPEN_QUOTE);
        Place place = (where ? e.getContextMark() : e.getProblemMark())
                .map(mark -> place(file, mark))
                .orElse(Place.ofFile(file));
        return new InputException(place, UNREADABLE + text);
    }

    /** The first line of what a parser says that may say nothing. */
    static InputException of(String message, String file) {
        return new InputException(Place.ofFile(file), UNREADABLE + plain(message));
    }

    private static String plain(String message) {
        return message.lines().findFirst().orElse("broken");
    }

    static Place place(String file, Mark mark) {
        return new Place(file, mark.getLine() + 1, mark.getColumn() + 1);
    }
}
