package org.tugtest.write;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.read.ReadLimits;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;
import org.tugtest.text.SourceText;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;

/**
 * One JSON text as a tree of token spans: what stands where, and nothing turned into numbers or
 * text, so that whoever writes it back writes what was written. Offsets are UTF-16 units of {@link
 * SourceText#text()}; ends are one past the last character.
 */
final class JsonText {
  private static final String FORM =
      "Put the syntax right at this place; what follows it was not read.";

  private final SourceText source;
  private final Members root;

  private JsonText(SourceText source, Members root) {
    this.source = source;
    this.root = root;
  }

  /** What came of parsing: the tree, or else the problems. */
  record Parsed(@Nullable JsonText text, List<Problem> problems) {}

  /** A value and its span. */
  sealed interface Value {
    int start();

    int end();
  }

  /** A text, number, {@code true}, {@code false} or {@code null}. */
  record Scalar(int start, int end) implements Value {}

  /** A list. */
  record Items(int start, int end, List<Value> values) implements Value {}

  /** An object; its members in the order written. */
  record Members(int start, int end, Map<String, Member> byName) implements Value {
    @Nullable Value get(String name) {
      Member member = byName.get(name);
      return member == null ? null : member.value();
    }
  }

  /**
   * One member of an object.
   *
   * @param name without escapes
   * @param start of the name's token
   * @param nameEnd end of the name's token
   */
  record Member(String name, int start, int nameEnd, Value value) {}

  SourceText source() {
    return source;
  }

  Members root() {
    return root;
  }

  /** The characters of a value as written. */
  String raw(Value value) {
    return source.text().substring(value.start(), value.end());
  }

  /** The characters of a member's name as written, quotes and escapes included. */
  String rawName(Member member) {
    return source.text().substring(member.start(), member.nameEnd());
  }

  /** The value that these names lead to from the root; null when there is none. */
  @Nullable Value at(String... names) {
    Value value = root;
    for (String name : names) {
      if (!(value instanceof Members members)) {
        return null;
      }
      value = members.get(name);
    }
    return value;
  }

  /** The object that these names lead to; null when there is none, or it is no object. */
  @Nullable Members objectAt(String... names) {
    return at(names) instanceof Members members ? members : null;
  }

  /** A scalar without quotes and escapes; {@code 2.50} stays {@code 2.50}. */
  String plain(Value value) {
    String raw = raw(value);
    return raw.startsWith("\"") ? Quoting.unquote(raw) : raw;
  }

  /** The text at these names; null when there is none, or it is no text. */
  @Nullable String textAt(String... names) {
    Value value = at(names);
    return value != null && raw(value).startsWith("\"") ? plain(value) : null;
  }

  /**
   * Parses a text; refused are broken syntax, names given twice in one object, a text that is no
   * object, and one deeper or longer than {@link ReadLimits#STANDARD} allows.
   */
  static Parsed parse(SourceText source) {
    Builder builder = new Builder(source);
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), source.text())) {
      JsonToken first = parser.nextToken();
      if (first == null) {
        return refused(source, 0, "is empty", "Write at least {\"format\": 1}.");
      }
      Value root = builder.value(parser, first);
      if (parser.nextToken() != null) {
        return refused(source, builder.at, "goes on after its end", FORM);
      }
      if (!builder.problems.isEmpty()) {
        return new Parsed(null, List.copyOf(builder.problems));
      }
      return root instanceof Members members
          ? new Parsed(new JsonText(source, members), List.of())
          : refused(source, root.start(), "holds no object", "Put all of it between { and }.");
    } catch (JacksonException e) {
      TokenStreamLocation location = e.getLocation();
      long offset = location == null ? builder.at : location.getCharOffset();
      int at = (int) Math.max(0, Math.min(offset, source.text().length()));
      return refused(source, at, "is not well-formed JSON: " + reason(e), FORM);
    }
  }

  private static String reason(JacksonException e) {
    String message = e.getOriginalMessage();
    int end = message.indexOf('\n');
    return end < 0 ? message : message.substring(0, end);
  }

  private static Parsed refused(SourceText source, int at, String what, String remedy) {
    Place place = Place.point(source.path(), source.lineAt(at), source.columnAt(at), "");
    Problem problem =
        new Problem(
            Problem.Kind.FILE_UNREADABLE,
            "files/" + source.path(),
            source.path() + " " + what,
            remedy,
            List.of(place));
    return new Parsed(null, List.of(problem));
  }

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(ReadLimits.STANDARD.depth())
                  .maxStringLength(ReadLimits.STANDARD.textLength())
                  .maxNameLength(ReadLimits.STANDARD.textLength())
                  .build())
          .build();

  /** Walks the characters in step with the parser, which vouches for the syntax. */
  private static final class Builder {
    private final SourceText source;
    private final String text;
    private final List<Problem> problems = new ArrayList<>();
    private int at;

    Builder(SourceText source) {
      this.source = source;
      this.text = source.text();
    }

    Value value(JsonParser parser, JsonToken token) {
      int start = begin();
      switch (token) {
        case START_OBJECT -> {
          at = start + 1;
          Map<String, Member> members = new LinkedHashMap<>();
          for (JsonToken t = parser.nextToken();
              t != JsonToken.END_OBJECT;
              t = parser.nextToken()) {
            Member member = member(parser);
            Member before = members.putIfAbsent(member.name(), member);
            if (before != null) {
              problems.add(twice(before, member));
            }
          }
          at = begin() + 1;
          return new Members(start, at, members);
        }
        case START_ARRAY -> {
          at = start + 1;
          List<Value> values = new ArrayList<>();
          for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
            values.add(value(parser, t));
          }
          at = begin() + 1;
          return new Items(start, at, List.copyOf(values));
        }
        default -> {
          parser.finishToken();
          at = endOfScalar(start);
          return new Scalar(start, at);
        }
      }
    }

    private Member member(JsonParser parser) {
      String name = parser.currentName();
      int start = begin();
      int nameEnd = endOfScalar(start);
      at = nameEnd;
      return new Member(name, start, nameEnd, value(parser, parser.nextToken()));
    }

    /** Skips blanks, commas and colons. */
    private int begin() {
      while (at < text.length() && " \t\r\n,:".indexOf(text.charAt(at)) >= 0) {
        at++;
      }
      return at;
    }

    private int endOfScalar(int start) {
      int end = start + 1;
      if (text.charAt(start) == '"') {
        while (text.charAt(end) != '"') {
          end += text.charAt(end) == '\\' ? 2 : 1;
        }
        return end + 1;
      }
      while (end < text.length() && " \t\r\n,:]}".indexOf(text.charAt(end)) < 0) {
        end++;
      }
      return end;
    }

    private Problem twice(Member first, Member second) {
      Place again = source.place(second.start(), second.nameEnd(), "");
      Place before = source.place(first.start(), first.nameEnd(), "");
      return new Problem(
          Problem.Kind.ID_GIVEN_TWICE,
          "files/" + source.path(),
          "\"" + second.name() + "\" is given twice in one object, first on line " + before.line(),
          "Rename one of the two, or take one away.",
          List.of(again, before));
    }
  }
}
