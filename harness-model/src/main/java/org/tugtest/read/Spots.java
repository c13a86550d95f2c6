package org.tugtest.read;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.JsonPointer;
import org.tugtest.text.JsonTokens;
import org.tugtest.text.JsonTokens.Kind;
import org.tugtest.text.Place;
import org.tugtest.text.SourceText;

/**
 * Finds many values of one file in one walk over its tokens, however many there are and wherever
 * they stand. Of a name given twice the first counts.
 */
final class Spots {
  private final SourceText source;
  private final Spot root = new Spot();

  Spots(SourceText source) {
    this.source = source;
  }

  /** One wanted value, or one on the way to it. */
  private static final class Spot {
    private final Map<String, Spot> inside = new HashMap<>();
    private int nameStart = -1;
    private int nameEnd;
    private int valueStart = -1;
    private int valueEnd;
    private boolean opens;
  }

  /** Wants the place of the value that these names lead to. */
  void want(List<String> names) {
    Spot spot = root;
    for (String name : names) {
      spot = spot.inside.computeIfAbsent(name, inside -> new Spot());
    }
  }

  /** Walks over the file. */
  void find() {
    JsonTokens tokens = new JsonTokens(source.text(), 0);
    Deque<Level> levels = new ArrayDeque<>();
    tokens.next();
    enter(root, tokens, levels);
    while (!levels.isEmpty()) {
      Level level = levels.getFirst();
      Kind kind = tokens.next();
      if (kind == Kind.CLOSE_OBJECT || kind == Kind.CLOSE_LIST || kind == Kind.END) {
        levels.pop();
      } else if (kind != Kind.COMMA) {
        Spot spot = level.list ? level.item() : level.member(tokens);
        if (spot == null) {
          tokens.skipValue();
        } else {
          enter(spot, tokens, levels);
        }
      }
    }
  }

  private static void enter(Spot spot, JsonTokens tokens, Deque<Level> levels) {
    spot.valueStart = tokens.start();
    spot.valueEnd = tokens.end();
    spot.opens = tokens.kind() == Kind.OPEN_OBJECT || tokens.kind() == Kind.OPEN_LIST;
    if (!spot.opens) {
      return;
    }
    if (spot.inside.isEmpty()) {
      tokens.skipValue();
    } else {
      levels.push(new Level(spot, tokens.kind() == Kind.OPEN_LIST));
    }
  }

  /** An object or list that the walk is inside of. */
  private static final class Level {
    private final Spot spot;
    private final boolean list;
    private int index;

    Level(Spot spot, boolean list) {
      this.spot = spot;
      this.list = list;
    }

    @Nullable Spot item() {
      return spot.inside.get(Integer.toString(index++));
    }

    /** Goes from the name to the value; null when nobody wants it. */
    @Nullable Spot member(JsonTokens tokens) {
      Spot member = spot.inside.get(tokens.value());
      int start = tokens.start();
      int end = tokens.end();
      tokens.next();
      tokens.next();
      if (member == null || member.valueStart >= 0) {
        return null;
      }
      member.nameStart = start;
      member.nameEnd = end;
      return member;
    }
  }

  /**
   * The place of a wanted value, or of its name; of the nearest around it when it is not written.
   * An object or list is shown by its name, in a list by its bracket.
   */
  Place at(List<String> names, boolean byName) {
    Spot spot = root;
    int used = 0;
    while (used < names.size()) {
      Spot next = spot.inside.get(names.get(used));
      if (next == null || next.valueStart < 0) {
        break;
      }
      spot = next;
      used++;
    }
    if (used == 0) {
      return Place.point(source.path(), 1, 1, "");
    }
    String pointer = JsonPointer.of(names.subList(0, used).toArray(String[]::new));
    boolean name = spot.nameStart >= 0 && (byName || spot.opens || used < names.size());
    return name
        ? source.place(spot.nameStart, spot.nameEnd, pointer)
        : source.place(spot.valueStart, spot.valueEnd, pointer);
  }
}
