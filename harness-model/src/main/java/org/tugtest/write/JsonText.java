package org.tugtest.write;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.read.ReadLimits;
import org.tugtest.read.SyntaxTrouble;
import org.tugtest.text.JsonPointer;
import org.tugtest.text.JsonTokens;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;
import org.tugtest.text.Quoted;
import org.tugtest.text.SourceText;
import org.tugtest.text.Thing;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.json.JsonFactory;

/**
 * One JSON text as a tree of token spans: what stands where, and nothing turned into numbers or
 * text, so that whoever writes it back writes what was written. Offsets are UTF-16 units of {@link
 * SourceText#text()}; ends are one past the last character.
 */
final class JsonText {
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
    return raw.startsWith("\"") ? unquoted(raw) : raw;
  }

  private static String unquoted(String token) {
    JsonTokens tokens = new JsonTokens(token, 0);
    tokens.next();
    return tokens.value();
  }

  /**
   * Parses a text; refused are broken syntax, names given twice in one object, a text that is no
   * object, and one deeper or longer than {@link ReadLimits#STANDARD} allows.
   */
  static Parsed parse(SourceText source) {
    Builder builder = new Builder(source);
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), source.text())) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        return broken(source);
      }
      Members root = builder.object(parser);
      if (parser.nextToken() != null) {
        return broken(source);
      }
      return builder.problems.isEmpty()
          ? new Parsed(new JsonText(source, root), List.of())
          : new Parsed(null, List.copyOf(builder.problems));
    } catch (JacksonException e) {
      return broken(source);
    }
  }

  private static Parsed broken(SourceText source) {
    SyntaxTrouble trouble = SyntaxTrouble.find(source, ReadLimits.STANDARD);
    Problem problem =
        new Problem(
            Problem.Kind.FILE_UNREADABLE,
            "files/" + source.path(),
            Quoted.name(source.path())
                + " "
                + (trouble == null ? "does not begin with {" : trouble.message())
                + ".",
            trouble == null ? "A file is one object: { \"format\": 1, ... }." : trouble.remedy(),
            trouble == null ? List.of(Place.point(source.path(), 1, 1, "")) : trouble.at());
    return new Parsed(null, List.of(problem));
  }

  /** Most characters of one number. */
  private static final int NUMBER_LENGTH = 1_000;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(ReadLimits.STANDARD.depth())
                  .maxStringLength(ReadLimits.STANDARD.textLength())
                  .maxNameLength(ReadLimits.STANDARD.textLength())
                  .maxNumberLength(NUMBER_LENGTH)
                  .build())
          .build();

  /** Walks the characters in step with the parser, which vouches for the syntax. */
  private static final class Builder {
    private final SourceText source;
    private final String text;
    private final List<Problem> problems = new ArrayList<>();
    private final Deque<String> names = new ArrayDeque<>();
    private int at;

    Builder(SourceText source) {
      this.source = source;
      this.text = source.text();
    }

    private Value value(JsonParser parser, JsonToken token) {
      return switch (token) {
        case START_OBJECT -> object(parser);
        case START_ARRAY -> list(parser);
        default -> {
          int start = begin();
          parser.finishToken();
          at = endOfScalar(start);
          yield new Scalar(start, at);
        }
      };
    }

    Members object(JsonParser parser) {
      int start = begin();
      at = start + 1;
      Map<String, Member> members = new LinkedHashMap<>();
      for (JsonToken t = parser.nextToken(); t != JsonToken.END_OBJECT; t = parser.nextToken()) {
        String name = parser.currentName();
        names.addLast(name);
        int nameStart = begin();
        int nameEnd = endOfScalar(nameStart);
        at = nameEnd;
        Value value = value(parser, parser.nextToken());
        Member member = new Member(name, nameStart, nameEnd, value);
        Member before = members.putIfAbsent(name, member);
        if (before != null) {
          problems.add(twice(before, member));
        }
        names.removeLast();
      }
      at = begin() + 1;
      return new Members(start, at, members);
    }

    private Items list(JsonParser parser) {
      int start = begin();
      at = start + 1;
      List<Value> values = new ArrayList<>();
      for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
        names.addLast(String.valueOf(values.size()));
        values.add(value(parser, t));
        names.removeLast();
      }
      at = begin() + 1;
      return new Items(start, at, List.copyOf(values));
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
      String pointer = JsonPointer.of(names.toArray(String[]::new));
      Place again = source.place(second.start(), second.nameEnd(), pointer);
      Place before = source.place(first.start(), first.nameEnd(), pointer);
      Thing around = Thing.of(List.copyOf(names).subList(0, names.size() - 1));
      String lines =
          before.line() == again.line()
              ? "both in line " + again.line()
              : "in line " + before.line() + " and in line " + again.line();
      return new Problem(
          Problem.Kind.SHAPE_WRONG,
          "files/" + source.path(),
          Quoted.text(second.name())
              + " is given twice in "
              + around.inWords()
              + ", "
              + lines
              + ".",
          "Delete or rename one of the two.",
          List.of(again, before));
    }
  }
}
