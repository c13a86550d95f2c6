package org.tugtest.read;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.JsonTokens;
import org.tugtest.text.JsonTokens.Kind;
import org.tugtest.text.Place;
import org.tugtest.text.Quoted;
import org.tugtest.text.SourceText;

/**
 * Finds the first place where a text leaves the grammar of JSON (RFC 8259) or the limits, and says
 * what was expected there. It walks the tokens with a stack of its own, so no text is too deep.
 *
 * @param message one sentence that goes on after the path
 * @param at the first being where a person would edit
 */
public record SyntaxTrouble(String message, String remedy, List<Place> at) {

  public SyntaxTrouble {
    at = List.copyOf(at);
  }

  /** The trouble of a text; null when the text is JSON within the limits. */
  public static @Nullable SyntaxTrouble find(SourceText source, ReadLimits limits) {
    SyntaxTrouble conflict = conflict(source);
    return conflict != null ? conflict : new Walk(source, limits).find();
  }

  private static @Nullable SyntaxTrouble conflict(SourceText source) {
    for (String mark : List.of("<<<<<<< ", ">>>>>>> ")) {
      int at = source.text().startsWith(mark) ? 0 : source.text().indexOf("\n" + mark) + 1;
      if (at > 0 || source.text().startsWith(mark)) {
        return new SyntaxTrouble(
            "holds an unfinished merge: line " + source.lineAt(at) + " is a conflict marker",
            "Decide which side stays, and delete the lines that begin with <<<<<<<, ======= and"
                + " >>>>>>>.",
            List.of(source.place(at, at + mark.length() - 1, "")));
      }
    }
    return null;
  }

  /** What the grammar allows next. */
  private enum Next {
    VALUE,
    VALUE_OR_CLOSE,
    NAME,
    NAME_OR_CLOSE,
    COLON,
    COMMA_OR_CLOSE,
    NOTHING
  }

  /** One walk over the tokens. */
  private static final class Walk {
    private final SourceText source;
    private final ReadLimits limits;
    private final JsonTokens tokens;
    private final Deque<Integer> open = new ArrayDeque<>();
    private Next next = Next.VALUE;
    private int before;
    private int beforeStart;
    private Kind beforeKind = Kind.END;
    private int suspect = -1;
    private int count;

    Walk(SourceText source, ReadLimits limits) {
      this.source = source;
      this.limits = limits;
      this.tokens = new JsonTokens(source.text(), 0);
    }

    @Nullable SyntaxTrouble find() {
      while (true) {
        Kind kind = tokens.next();
        if (kind == Kind.END && next == Next.NOTHING) {
          return null;
        }
        count += kind == Kind.COMMA || kind == Kind.COLON ? 0 : 1;
        SyntaxTrouble trouble = count > FileParser.TOKENS ? tooMany() : step(kind);
        if (trouble != null) {
          return trouble;
        }
        before = tokens.end();
        beforeStart = tokens.start();
        beforeKind = kind;
      }
    }

    private @Nullable SyntaxTrouble step(Kind kind) {
      if (kind == Kind.WRONG && (next != Next.NOTHING || isComment())) {
        WrongToken wrong = WrongToken.of(source.text(), tokens.start(), tokens.end(), isName());
        return trouble(wrong.message(), wrong.remedy(), wrong.start(), wrong.end());
      }
      if (kind == Kind.END) {
        return ended();
      }
      return switch (next) {
        case VALUE, VALUE_OR_CLOSE -> value(kind);
        case NAME, NAME_OR_CLOSE -> name(kind);
        case COLON -> colon(kind);
        case COMMA_OR_CLOSE -> comma(kind);
        case NOTHING ->
            withSuspect(
                "goes on after the end of its outermost brackets, with " + shown(),
                "Delete what follows, or the closing bracket that stands too early.",
                tokens.start(),
                tokens.end());
      };
    }

    private SyntaxTrouble tooMany() {
      return trouble(
          "holds more than " + FileParser.TOKENS + " names, values and brackets",
          "Split it, and name the pieces under \"uses\".",
          tokens.start(),
          tokens.start() + 1);
    }

    private boolean isComment() {
      char first = source.text().charAt(tokens.start());
      return first == '/' || first == '#';
    }

    private boolean isName() {
      return next == Next.NAME || next == Next.NAME_OR_CLOSE;
    }

    private @Nullable SyntaxTrouble value(Kind kind) {
      if (kind == Kind.CLOSE_LIST && next == Next.VALUE_OR_CLOSE) {
        return close(kind);
      }
      if (!kind.beginsValue()) {
        return beforeKind == Kind.COMMA
            ? afterComma(kind)
            : trouble(
                "lacks a value before " + shown(),
                "Write the value, or delete what leads to it.",
                tokens.start(),
                tokens.end());
      }
      return begin(kind);
    }

    private @Nullable SyntaxTrouble begin(Kind kind) {
      if (kind == Kind.OPEN_OBJECT || kind == Kind.OPEN_LIST) {
        open.push(tokens.start());
        if (open.size() > limits.depth()) {
          return trouble(
              "is nested deeper than " + limits.depth() + " levels",
              "No harness needs that; look for brackets that should have been closed.",
              tokens.start(),
              tokens.end());
        }
        next = kind == Kind.OPEN_OBJECT ? Next.NAME_OR_CLOSE : Next.VALUE_OR_CLOSE;
        return null;
      }
      next = open.isEmpty() ? Next.NOTHING : Next.COMMA_OR_CLOSE;
      return length(kind);
    }

    private @Nullable SyntaxTrouble length(Kind kind) {
      int length = kind == Kind.TEXT ? tokens.value().length() : tokens.end() - tokens.start();
      boolean tooLong = kind == Kind.TEXT && length > limits.textLength();
      if (!tooLong && (kind != Kind.NUMBER || length <= FileParser.NUMBER_LENGTH)) {
        return null;
      }
      String what = kind == Kind.TEXT ? "text" : "number";
      int most = kind == Kind.TEXT ? limits.textLength() : FileParser.NUMBER_LENGTH;
      return trouble(
          "holds a " + what + " of " + length + " characters; at most " + most + " are read",
          "Shorten it.",
          tokens.start(),
          tokens.start() + 1);
    }

    private @Nullable SyntaxTrouble name(Kind kind) {
      if (kind == Kind.CLOSE_OBJECT && next == Next.NAME_OR_CLOSE) {
        return close(kind);
      }
      if (kind == Kind.TEXT) {
        next = Next.COLON;
        return length(kind);
      }
      if (beforeKind == Kind.COMMA && !kind.beginsValue()) {
        return afterComma(kind);
      }
      return trouble(
          "has " + shown() + " where a name in quotes is expected",
          kind == Kind.NUMBER
              ? "Numbers have a decimal point, not a comma; names stand in double quotes."
              : "Write a name in double quotes and a colon before the value.",
          tokens.start(),
          tokens.end());
    }

    private @Nullable SyntaxTrouble colon(Kind kind) {
      if (kind == Kind.COLON) {
        next = Next.VALUE;
        return null;
      }
      String name = source.text().substring(beforeStart, before);
      return trouble(
          "lacks a colon after " + Quoted.name(name) + " in line " + source.lineAt(beforeStart),
          "Write " + Quoted.name(name) + ": and the value.",
          beforeStart,
          before);
    }

    private @Nullable SyntaxTrouble comma(Kind kind) {
      boolean inObject = source.text().charAt(open.getFirst()) == '{';
      if (kind == Kind.COMMA) {
        next = inObject ? Next.NAME : Next.VALUE;
        return null;
      }
      if (kind == Kind.CLOSE_OBJECT || kind == Kind.CLOSE_LIST) {
        return close(kind);
      }
      if (kind == Kind.COLON) {
        return trouble(
            "has a colon after a value",
            inObject
                ? "Put a comma between two fields, and the name of each in double quotes."
                : "A list holds values only; use { } for names with values.",
            tokens.start(),
            tokens.end());
      }
      int line = source.lineAt(before - 1);
      return trouble(
          "lacks a comma after "
              + (line == source.lineAt(tokens.start())
                  ? Quoted.name(source.text().substring(beforeStart, before))
                  : "line " + line),
          "Put a comma there, or close the bracket that ends there.",
          before - 1,
          before);
    }

    private @Nullable SyntaxTrouble close(Kind kind) {
      int opener = open.getFirst();
      boolean fits = (source.text().charAt(opener) == '{') == (kind == Kind.CLOSE_OBJECT);
      if (!fits) {
        String right = kind == Kind.CLOSE_OBJECT ? "]" : "}";
        return withSuspect(
            "has "
                + shown()
                + " where the "
                + bracket(opener)
                + " is still to be closed by "
                + right,
            "Close it with " + right + " first, or correct the bracket.",
            tokens.start(),
            tokens.end());
      }
      open.pop();
      if (suspect < 0 && indent(opener) != indent(tokens.start()) && startsLine(tokens.start())) {
        suspect = opener;
      }
      next = open.isEmpty() ? Next.NOTHING : Next.COMMA_OR_CLOSE;
      return null;
    }

    private SyntaxTrouble afterComma(Kind kind) {
      boolean twice = kind == Kind.COMMA;
      return trouble(
          twice
              ? "has two commas with nothing between"
              : "has a comma before the closing " + shown(),
          "Delete the comma in line " + source.lineAt(beforeStart) + ".",
          beforeStart,
          before);
    }

    private SyntaxTrouble ended() {
      if (open.isEmpty()) {
        return trouble("is empty", "A file begins with { and says \"format\": 1.", 0, 0);
      }
      int opener = suspect >= 0 ? suspect : open.getFirst();
      String right = source.text().charAt(opener) == '{' ? "}" : "]";
      return new SyntaxTrouble(
          "ends before all brackets are closed; the " + bracket(opener) + " lacks its " + right,
          "Close it with " + right + " where it should end.",
          List.of(source.place(opener, opener + 1, ""), end()));
    }

    private Place end() {
      int last = Math.max(0, before - 1);
      return source.place(last, before, "");
    }

    private String bracket(int offset) {
      return source.text().charAt(offset) + " of line " + source.lineAt(offset);
    }

    private String shown() {
      return Quoted.name(source.text().substring(tokens.start(), tokens.end()));
    }

    private SyntaxTrouble withSuspect(String message, String remedy, int start, int end) {
      if (suspect < 0) {
        return trouble(message, remedy, start, end);
      }
      return new SyntaxTrouble(
          message,
          remedy + " The " + bracket(suspect) + " looks as if it were not closed.",
          List.of(source.place(start, end, ""), source.place(suspect, suspect + 1, "")));
    }

    private SyntaxTrouble trouble(String message, String remedy, int start, int end) {
      return new SyntaxTrouble(message, remedy, List.of(source.place(start, end, "")));
    }

    private int indent(int offset) {
      return spaces(source.line(source.lineAt(offset)));
    }

    private boolean startsLine(int offset) {
      return spaces(source.line(source.lineAt(offset))) == source.columnAt(offset) - 1;
    }

    private static int spaces(String line) {
      int at = 0;
      while (at < line.length() && (line.charAt(at) == ' ' || line.charAt(at) == '\t')) {
        at++;
      }
      return at;
    }
  }
}
