package org.tugtest.write;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.SourceText;
import org.tugtest.write.JsonText.Items;
import org.tugtest.write.JsonText.Member;
import org.tugtest.write.JsonText.Members;
import org.tugtest.write.JsonText.Value;

/** The rows of a sheet as the files of a harness have them now. */
final class SheetRows {
  private final SheetKind kind;
  private final Map<String, JsonText> trees = new TreeMap<>(NaturalOrder.NATURAL);
  private final WiredPoints points;
  private final Map<String, Set<String>> cavities;
  private final List<Row> rows = new ArrayList<>();

  /**
   * One row.
   *
   * @param id of the entry of the section
   * @param name of the entry inside it; empty for the entry itself
   * @param file where the entry of the section is written
   * @param written whether the object of the row is written, and not only named elsewhere
   * @param cells guarded cells by field, those of fields not given left out
   */
  record Row(
      SheetLevel level,
      String id,
      String name,
      String file,
      boolean written,
      Map<String, String> cells) {

    String cell(String field) {
      return cells.getOrDefault(field, "");
    }

    /** The row as a place string. */
    String place() {
      String entry = level.section() + "/" + id;
      boolean point = level == SheetLevel.CAVITY || level == SheetLevel.PIN;
      return name.isEmpty() ? entry : entry + (point ? ":" : ".") + name;
    }

    /** A short sum of all cells, by which a merge sees whether the file has changed since. */
    String stamp() {
      CRC32 sum = new CRC32();
      for (String field : level.fields()) {
        sum.update((field + '\u001F' + cell(field) + '\u001E').getBytes(StandardCharsets.UTF_8));
      }
      return String.format(Locale.ROOT, "x%08x", sum.getValue());
    }
  }

  SheetRows(SheetKind kind, Map<String, SourceText> texts) {
    this.kind = kind;
    texts.forEach(
        (path, text) -> {
          JsonText tree = JsonText.parse(text).text();
          if (tree != null) {
            trees.put(path, tree);
          }
        });
    this.points = new WiredPoints(trees.values());
    this.cavities = housings(trees.values());
    trees.forEach(this::addFile);
    rows.sort(
        Comparator.comparing(Row::id, NaturalOrder.NATURAL)
            .thenComparing(Row::file, NaturalOrder.NATURAL)
            .thenComparing(Row::level)
            .thenComparing(Row::name, NaturalOrder.NATURAL));
  }

  List<Row> rows() {
    return rows;
  }

  /** The files that can be read, by path. */
  Map<String, JsonText> trees() {
    return trees;
  }

  /** What a column shows that cannot be edited. */
  String shown(Row row, String column) {
    if (row.name().isEmpty()
        || (row.level() != SheetLevel.CAVITY && row.level() != SheetLevel.PIN)) {
      return "";
    }
    String text = points.shown(row.id() + ":" + row.name(), column);
    return text.isEmpty() ? "" : SheetCell.of(text);
  }

  private void addFile(String file, JsonText tree) {
    SheetLevel top = kind.levels().get(0);
    Members section = tree.objectAt(top.section());
    if (section == null) {
      return;
    }
    for (Member entry : section.byName().values()) {
      if (!(entry.value() instanceof Members fields)) {
        continue;
      }
      String id = entry.name();
      rows.add(row(tree, file, top, id, ""));
      for (SheetLevel level : kind.levels().subList(1, kind.levels().size())) {
        for (String name : names(tree, level, id, fields)) {
          rows.add(row(tree, file, level, id, name));
        }
      }
    }
  }

  private static Row row(JsonText tree, String file, SheetLevel level, String id, String name) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (String field : level.fields()) {
      Value value = tree.at(level.path(id, name, field).toArray(String[]::new));
      if (value != null) {
        cells.put(field, cell(tree, value, SheetType.of(field)));
      }
    }
    boolean written = tree.at(level.entry(id, name).toArray(String[]::new)) != null;
    boolean aside = level.aside() != null && cells.containsKey(level.aside());
    return new Row(level, id, name, file, written || aside, cells);
  }

  private static String cell(JsonText tree, Value value, SheetType type) {
    if (type == SheetType.LIST && value instanceof Items items) {
      return SheetCell.of(String.join(", ", items.values().stream().map(tree::plain).toList()));
    }
    String raw = tree.raw(value);
    return raw.startsWith("\"") ? SheetCell.of(tree.plain(value)) : SheetCell.ofToken(raw);
  }

  /** The names of the rows inside an entry: what is written, and what wires or a housing name. */
  private Set<String> names(JsonText tree, SheetLevel level, String id, Members entry) {
    Set<String> names = new TreeSet<>(NaturalOrder.NATURAL);
    addNames(names, entry, level.inner());
    addNames(names, entry, level.aside());
    if (level == SheetLevel.CAVITY || level == SheetLevel.PIN) {
      names.addAll(points.of(id));
    }
    Value housing = level == SheetLevel.CAVITY ? entry.get("housing") : null;
    if (housing != null) {
      names.addAll(cavities.getOrDefault(tree.plain(housing), Set.of()));
    }
    return names;
  }

  private static Map<String, Set<String>> housings(Collection<JsonText> trees) {
    Map<String, Set<String>> housings = new HashMap<>();
    for (JsonText tree : trees) {
      Members section = tree.objectAt("parts", "housings");
      if (section == null) {
        continue;
      }
      for (String id : section.byName().keySet()) {
        Set<String> names = housings.computeIfAbsent(id, first -> new TreeSet<>());
        if (tree.at("parts", "housings", id, "rows") instanceof Items rows) {
          rows.values().forEach(row -> addCavities(tree, row, names));
        }
      }
    }
    return housings;
  }

  private static void addCavities(JsonText tree, Value row, Set<String> names) {
    if (row instanceof Items cavities) {
      cavities.values().stream().map(tree::plain).filter(n -> !n.isEmpty()).forEach(names::add);
    }
  }

  private static void addNames(Set<String> names, Members entry, @Nullable String map) {
    if (map != null && entry.get(map) instanceof Members inner) {
      names.addAll(inner.byName().keySet());
    }
  }
}
