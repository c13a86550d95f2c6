package org.tugtest.write;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tugtest.schema.Mismatch;
import org.tugtest.schema.PublishedSchema;
import org.tugtest.text.Quoted;
import org.tugtest.text.SourceText;
import tools.jackson.databind.json.JsonMapper;

/**
 * Changes to single values of one file of a harness or of one record. All that is not changed stays
 * character for character. Not for several threads.
 */
public final class PlanEdit {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private final SourceText source;
  private final PublishedSchema schema;
  private final @Nullable JsonText tree;
  private final @Nullable JsonEdit edit;

  /**
   * Changes to a file.
   *
   * @param source as it was read; a file that is no JSON cannot be changed
   * @param schema what the file has to keep to
   */
  public PlanEdit(SourceText source, PublishedSchema schema) {
    this.source = source;
    this.schema = schema;
    this.tree = JsonText.parse(source).text();
    this.edit = tree == null ? null : new JsonEdit(tree);
  }

  /**
   * Writes a value at the place that these names lead to, with the objects that are missing on the
   * way. A map becomes an object, field by field.
   *
   * @param value text, number, truth value, or list or map of such
   * @return whether it could be written: no other value is in the way
   */
  public boolean set(List<String> names, Object value) {
    JsonEdit changes = edit;
    if (changes == null || !changes.fits(names)) {
      return false;
    }
    if (value instanceof Map<?, ?> fields) {
      fields.forEach(
          (name, inner) -> {
            if (name != null && inner != null) {
              changes.set(with(names, name.toString()), token(inner));
            }
          });
    } else {
      changes.set(names, token(value));
    }
    return true;
  }

  /** Takes out the value at that place; nothing happens where there is none. */
  public void remove(List<String> names) {
    if (edit != null) {
      edit.remove(names);
    }
  }

  /** The names of the members of the object at that place; none where there is no object. */
  public Set<String> members(String... names) {
    JsonText.Members members = tree == null ? null : tree.objectAt(names);
    return members == null ? Set.of() : Set.copyOf(members.byName().keySet());
  }

  /** The text with all changes made. */
  public String text() {
    return edit == null ? source.text() : edit.text();
  }

  /** What the schema does not allow in the new text and allowed in the old one, as sentences. */
  public List<String> problems() {
    if (tree == null) {
      return List.of();
    }
    Set<String> before = new HashSet<>(mismatches(source.text()));
    return mismatches(text()).stream().filter(problem -> !before.contains(problem)).toList();
  }

  private List<String> mismatches(String text) {
    return schema.check(MAPPER.readTree(TidyWriter.withoutMark(text))).stream()
        .map(Mismatch::message)
        .toList();
  }

  private static List<String> with(List<String> names, String name) {
    return Stream.concat(names.stream(), Stream.of(name)).toList();
  }

  private static String token(Object value) {
    if (value instanceof Number number) {
      return Quoted.number(number.doubleValue());
    }
    if (value instanceof Boolean) {
      return value.toString();
    }
    if (value instanceof List<?> list) {
      return list.stream().map(PlanEdit::token).collect(Collectors.joining(", ", "[", "]"));
    }
    return Quoting.quote(value.toString());
  }
}
