package org.tugtest.report;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Collection;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonEncoding;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.exc.JacksonIOException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;

/**
 * Writes JSON piece by piece, never the whole of it in memory: UTF-8, two spaces, LF, each number
 * and text the same on every machine. A text that UTF-8 cannot carry is mended; a number that JSON
 * cannot carry is null.
 */
public final class JsonStream {
  private static final double MOST_WHOLE = 1e15;
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();

  private final JsonGenerator out;

  private JsonStream(JsonGenerator out) {
    this.out = out;
  }

  /**
   * Writes a file and closes its stream.
   *
   * @throws IOException when the stream cannot take it
   */
  public static void write(OutputStream stream, Consumer<JsonStream> content) throws IOException {
    try (stream;
        JsonGenerator out = FACTORY.createGenerator(new Layout(), stream, JsonEncoding.UTF8)) {
      content.accept(new JsonStream(out));
      out.writeRaw('\n');
    } catch (JacksonIOException failed) {
      throw failed.getCause();
    }
  }

  /** Begins an object: the file's, or an entry of an array. */
  public JsonStream object() {
    out.writeStartObject();
    return this;
  }

  /** Begins an object that is a property. */
  public JsonStream object(String name) {
    name(name);
    return object();
  }

  /** Begins an array: the file's, or an entry of an array. */
  public JsonStream array() {
    out.writeStartArray();
    return this;
  }

  /** Begins an array that is a property. */
  public JsonStream array(String name) {
    name(name);
    return array();
  }

  /** Ends what was begun last. */
  public JsonStream end() {
    if (out.streamWriteContext().inObject()) {
      out.writeEndObject();
    } else {
      out.writeEndArray();
    }
    return this;
  }

  /** A property that is a text, or null. */
  public JsonStream text(String name, @Nullable String value) {
    name(name);
    return text(value);
  }

  /** An entry that is a text, or null. */
  public JsonStream text(@Nullable String value) {
    if (value == null) {
      out.writeNull();
    } else {
      out.writeString(PrintableText.wellFormed(value));
    }
    return this;
  }

  /** A property that is a list of texts. */
  public JsonStream texts(String name, Collection<String> values) {
    array(name);
    values.forEach(this::text);
    return end();
  }

  /** A property that is a count. */
  public JsonStream count(String name, int value) {
    name(name);
    out.writeNumber(value);
    return this;
  }

  /** A property that is a number, or null; a whole one is written without a decimal point. */
  public JsonStream number(String name, @Nullable Double value) {
    name(name);
    if (value == null || !Double.isFinite(value)) {
      out.writeNull();
    } else if (value == Math.rint(value) && Math.abs(value) < MOST_WHOLE) {
      out.writeNumber(value.longValue());
    } else {
      out.writeNumber(value.doubleValue());
    }
    return this;
  }

  /** A property that is true, false, or null. */
  public JsonStream flag(String name, @Nullable Boolean value) {
    name(name);
    if (value == null) {
      out.writeNull();
    } else {
      out.writeBoolean(value);
    }
    return this;
  }

  private void name(String name) {
    out.writeName(PrintableText.wellFormed(name));
  }

  /** Two spaces, a line for every entry, {@code "name": value}. */
  private static final class Layout extends ObjectWriteContext.Base {
    private static final DefaultIndenter LINES = new DefaultIndenter("  ", "\n");

    @Override
    public PrettyPrinter getPrettyPrinter() {
      return new DefaultPrettyPrinter(
              Separators.createDefaultInstance()
                  .withObjectNameValueSpacing(Separators.Spacing.AFTER)
                  .withObjectEmptySeparator("")
                  .withArrayEmptySeparator(""))
          .withObjectIndenter(LINES)
          .withArrayIndenter(LINES);
    }

    @Override
    public boolean hasPrettyPrinter() {
      return true;
    }
  }
}
