package org.tugtest.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tugtest.schema.PublishedSchema;

/**
 * What every property of the format means, by its path: {@code wires.cutMm}, {@code
 * devices.elements.ratingA}, {@code parts.wires.areaMm2}. Ids and places in a list are left out of
 * a path. All of it comes from the published schemas.
 */
public final class FormatBook {
  private final Map<String, List<FieldMeaning>> fields;

  private FormatBook(Map<String, List<FieldMeaning>> fields) {
    this.fields = fields;
  }

  /** The book of harness files, as-built records and announced changes. */
  public static FormatBook published() {
    Map<String, List<FieldMeaning>> fields = new LinkedHashMap<>();
    Stream.of(PublishedSchema.HARNESS, PublishedSchema.RECORD, PublishedSchema.CHANGES)
        .map(schema -> new SchemaWalk(schema.text()).fields())
        .forEach(found -> found.forEach(fields::putIfAbsent));
    return new FormatBook(fields);
  }

  /** The paths of all properties, in the order of the schemas. */
  public Set<String> paths() {
    return Collections.unmodifiableSet(fields.keySet());
  }

  /** What the property at a path means, as plain text for a terminal; empty when there is none. */
  public Optional<String> explain(String path) {
    List<FieldMeaning> meanings = fields.get(path);
    return meanings == null ? Optional.empty() : Optional.of(page(path, meanings));
  }

  private String page(String path, List<FieldMeaning> meanings) {
    StringBuilder page = new StringBuilder(path).append('\n');
    for (FieldMeaning meaning : meanings) {
      String indent = "  ";
      if (!meaning.when().isEmpty()) {
        page.append("  where ").append(either(meaning.when())).append('\n');
        indent = "    ";
      }
      page.append(indent).append(meaning.description()).append('\n');
      page.append(indent).append("Value: ").append(meaning.value()).append(".\n");
      page.append(indent).append(meaning.required() ? "Required.\n" : "May be left out.\n");
    }
    children(path, page);
    int dot = path.lastIndexOf('.');
    if (dot > 0) {
      String around = path.substring(0, dot);
      page.append("\nStands in ").append(around).append(": ");
      page.append(fields.get(around).get(0).description()).append('\n');
    }
    return page.toString();
  }

  private void children(String path, StringBuilder page) {
    List<String> inner = new ArrayList<>();
    for (String other : fields.keySet()) {
      if (other.startsWith(path + ".") && other.indexOf('.', path.length() + 1) < 0) {
        inner.add(other.substring(path.length() + 1));
      }
    }
    if (inner.isEmpty()) {
      return;
    }
    int width = inner.stream().mapToInt(String::length).max().orElse(0);
    page.append("\nProperties of an entry\n");
    for (String name : inner) {
      page.append("  ").append(name).append(" ".repeat(width - name.length() + 2));
      page.append(fields.get(path + "." + name).get(0).description()).append('\n');
    }
  }

  private static String either(Collection<String> words) {
    List<String> all = List.copyOf(words);
    int last = all.size() - 1;
    return last == 0
        ? all.get(0)
        : String.join(", ", all.subList(0, last)) + " or " + all.get(last);
  }
}
