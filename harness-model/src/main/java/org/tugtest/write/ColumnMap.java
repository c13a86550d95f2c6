package org.tugtest.write;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tugtest.text.Nearest;
import org.tugtest.text.Problem;
import org.tugtest.text.SourceText;
import org.tugtest.write.JsonText.Member;
import org.tugtest.write.JsonText.Members;

/**
 * What a person says about the columns of a wire list: {@code {"from": "Column A", "colours": {"B":
 * "BK"}}}. A column is named by its header, by its letter or by its number.
 *
 * @param columns header, letter or number by what the column holds
 * @param colours codes of the list, in lower case, to codes of IEC 60757
 */
record ColumnMap(Map<WireColumn, String> columns, Map<String, String> colours) {
  static final ColumnMap NONE = new ColumnMap(Map.of(), Map.of());

  private static final String COLOURS = "colours";
  private static final String REMEDY =
      "Write an object of texts, such as {\"from\": \"Column A\", \"to\": \"Column B\"}.";

  ColumnMap {
    columns = Map.copyOf(columns);
    colours = Map.copyOf(colours);
  }

  /** What came of reading a map: the map, or else the problems. */
  record Parsed(ColumnMap map, List<Problem> problems) {}

  /** Reads the JSON text of a map. */
  static Parsed parse(String path, String json) {
    JsonText.Parsed parsed = JsonText.parse(SourceText.of(path, TidyWriter.withoutMark(json)));
    JsonText text = parsed.text();
    if (text == null) {
      return new Parsed(NONE, parsed.problems());
    }
    List<Problem> problems = new ArrayList<>();
    Map<WireColumn, String> columns = new EnumMap<>(WireColumn.class);
    Map<String, String> colours = new HashMap<>();
    for (Member member : text.root().byName().values()) {
      if (member.name().equals(COLOURS) && member.value() instanceof Members codes) {
        for (Member code : codes.byName().values()) {
          String iec = ColourWords.code(text.plain(code.value()));
          if (iec == null) {
            problems.add(
                wrong(text, code, "\"" + code.name() + "\" stands for no IEC 60757 colour"));
          } else {
            colours.put(ColourWords.folded(code.name()), iec);
          }
        }
        continue;
      }
      WireColumn column = column(member.name());
      if (column == null) {
        problems.add(wrong(text, member, unknown(member.name())));
      } else if (!text.raw(member.value()).startsWith("\"")) {
        problems.add(wrong(text, member, "\"" + member.name() + "\" is not a text"));
      } else {
        columns.put(column, text.plain(member.value()));
      }
    }
    return new Parsed(new ColumnMap(columns, colours), List.copyOf(problems));
  }

  private static @org.jspecify.annotations.Nullable WireColumn column(String word) {
    for (WireColumn column : WireColumn.values()) {
      if (column.word().equals(word)) {
        return column;
      }
    }
    return null;
  }

  private static String unknown(String name) {
    List<String> words =
        new ArrayList<>(Arrays.stream(WireColumn.values()).map(WireColumn::word).toList());
    words.add(COLOURS);
    String near = Nearest.question(name, words);
    return "\"" + name + "\" is nothing a column can hold" + (near.isEmpty() ? "" : "; " + near);
  }

  private static Problem wrong(JsonText text, Member member, String message) {
    SourceText source = text.source();
    return new Problem(
        Problem.Kind.SHAPE_WRONG,
        "files/" + source.path(),
        message,
        REMEDY,
        List.of(source.place(member.start(), member.nameEnd(), "")));
  }

  /** The column (from 0) that a letter or number names, {@code Column} before it or not. */
  static int position(String named) {
    String bare = named.strip().replaceFirst("(?i)^(column|col|spalte)\\s+", "");
    if (bare.matches("[1-9]\\d{0,3}")) {
      return Integer.parseInt(bare) - 1;
    }
    if (!bare.matches("[A-Za-z]{1,2}")) {
      return -1;
    }
    int at = 0;
    for (char letter : bare.toUpperCase(Locale.ROOT).toCharArray()) {
      at = at * 26 + letter - 'A' + 1;
    }
    return at - 1;
  }
}
