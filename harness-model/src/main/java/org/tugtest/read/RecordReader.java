package org.tugtest.read;

import static org.tugtest.read.Fields.flag;
import static org.tugtest.read.Fields.map;
import static org.tugtest.read.Fields.number;
import static org.tugtest.read.Fields.object;
import static org.tugtest.read.Fields.text;
import static org.tugtest.read.Fields.texts;
import static org.tugtest.read.Fields.word;
import static org.tugtest.read.Fields.words;
import static org.tugtest.read.IntentBinder.date;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.BuildRecord;
import org.tugtest.schema.PublishedSchema;
import org.tugtest.text.NaturalOrder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Reads as-built records ({@code *.record.json}). Safe for several threads. */
public final class RecordReader {
  private static final String RECORD_END = ".record.json";
  private static final Map<String, BuildRecord.Kind> KINDS = words(BuildRecord.Kind.values());
  private static final Map<String, BuildRecord.Cause> CAUSES = words(BuildRecord.Cause.values());
  private static final Map<String, BuildRecord.Safe> SAFE = words(BuildRecord.Safe.values());
  private static final Map<String, BuildRecord.Life> LIVES = words(BuildRecord.Life.values());

  private final SourceFiles files;
  private final FileParser parser;

  /** A reader of these files within these limits. */
  public RecordReader(SourceFiles files, ReadLimits limits) {
    this.files = files;
    this.parser = new FileParser(limits, PublishedSchema.RECORD);
  }

  /** The paths of all records, sorted. */
  public List<String> paths() {
    return files.paths().stream()
        .filter(RecordReader::isRecord)
        .sorted(NaturalOrder.NATURAL)
        .toList();
  }

  static boolean isRecord(String path) {
    return path.endsWith(RECORD_END);
  }

  /** Reads one record. Whatever is wrong is a problem of the result; nothing is thrown. */
  public ReadFile<BuildRecord> read(String path) {
    ParsedFile parsed = parser.parse(path, files.open(path));
    return parsed.as(bind(path, parsed.tree()));
  }

  private static BuildRecord bind(String path, ObjectNode file) {
    ObjectNode record = object(file, "record");
    return new BuildRecord(
        path,
        text(record, "plan"),
        text(record, "loom"),
        text(record, "revision"),
        text(record, "vehicle"),
        text(record, "by"),
        date(record, "date"),
        map(file, "entries", RecordReader::entry));
  }

  private static BuildRecord.Entry entry(String id, ObjectNode fields) {
    return new BuildRecord.Entry(
        id,
        word(fields, "kind", KINDS),
        text(fields, "at"),
        value(fields.get("planned")),
        value(fields.get("built")),
        number(fields, "builtMm"),
        text(fields, "reason"),
        text(fields, "by"),
        date(fields, "date"),
        text(fields, "note"),
        word(fields, "cause", CAUSES),
        word(fields, "safe", SAFE),
        word(fields, "state", LIVES),
        flag(fields, "accepted", false),
        date(fields, "until"));
  }

  /** A text, number, truth value or map of such and lists of texts. */
  private static @Nullable Object value(@Nullable JsonNode node) {
    if (node == null) {
      return null;
    }
    if (!(node instanceof ObjectNode object)) {
      return IntentBinder.scalar(node);
    }
    Map<String, Object> fields = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> entry : object.properties()) {
      JsonNode inner = entry.getValue();
      Object value = inner.isArray() ? List.copyOf(texts(inner)) : IntentBinder.scalar(inner);
      if (value != null) {
        fields.put(entry.getKey(), value);
      }
    }
    return Collections.unmodifiableMap(fields);
  }
}
