package org.tugtest.report.sheets.ringout;

import java.io.StringWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.network.Point;
import org.tugtest.report.PrintableText;
import org.tugtest.report.html.PageJson;
import org.tugtest.rule.built.ReadingBounds;
import tools.jackson.core.JsonGenerator;

/**
 * What the script of the sheet knows: {@code key} under which a browser keeps readings, {@code
 * file} to save, and of each row its kind, from, to, greatest good ohms, from where on it is not
 * high but open, from where on it is open, under which insulation it is joined, and what it parts.
 */
final class RowJson {
  private RowJson() {}

  static String of(Facts facts, List<Row> rows, String key, String file) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = PageJson.to(text)) {
      json.writeStartObject();
      json.writeStringProperty("key", PrintableText.of(key));
      json.writeStringProperty("file", PrintableText.of(file));
      json.writeArrayPropertyStart("rows");
      for (Row row : rows) {
        Point first = row.from() == null ? row.one().get(0) : row.from();
        ReadingBounds bounds = ReadingBounds.of(facts.harness(), first);
        boolean joined = row.kind() == Row.Kind.JOINED;
        json.writeStartArray();
        json.writeString(row.kind().word());
        json.writeString(row.from() == null ? "" : row.from().text());
        json.writeString(row.to() == null ? "" : row.to().text());
        number(json, row.limitOhms());
        json.writeNumber(joined ? bounds.openOhms() : bounds.joinedOhms());
        json.writeNumber(bounds.insulationOhms());
        json.writeString(
            row.kind() == Row.Kind.TIE
                ? PrintableText.of(
                    row.says() + ", " + row.one().size() + " against " + row.other().size())
                : "");
        json.writeEndArray();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    return text.toString();
  }

  private static void number(JsonGenerator json, @Nullable Double value) {
    if (value == null) {
      json.writeNull();
    } else {
      json.writeNumber(value);
    }
  }
}
